package lastinch.cases.catalogue;

/** Families of metal that a mould wall treats alike while the metal is liquid. */
public enum MetalKind {
  COPPER("copper alloy"),
  ALUMINIUM("aluminium alloy"),
  SILVER("silver alloy"),
  TIN("tin alloy"),
  ZINC("zinc alloy");

  private final String words;

  MetalKind(String words) {
    this.words = words;
  }

  /** As written in a materials file. */
  public String words() {
    return words;
  }
}
