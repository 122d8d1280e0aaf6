package lastinch.cases.catalogue;

/** How hard sand is rammed. */
public enum Ramming {
  SOFT("soft"),
  FIRM("firm"),
  HARD("hard");

  private final String words;

  Ramming(String words) {
    this.words = words;
  }

  /** As written in a case file. */
  public String words() {
    return words;
  }
}
