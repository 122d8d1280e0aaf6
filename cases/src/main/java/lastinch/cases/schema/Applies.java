package lastinch.cases.schema;

import java.util.Optional;
import lastinch.solver.material.MouldFamily;

/** When a word can mean anything. */
public enum Applies {
  ALWAYS("always"),
  SAND("in sand"),
  INVESTMENT("in investment"),
  WALLED("for a shell, graphite or steel mould"),
  PARTED("where the mould opens: sand, graphite, steel"),
  PRINT("when sizes are of the print");

  private final String words;

  Applies(String words) {
    this.words = words;
  }

  /** When, in words. */
  public String words() {
    return words;
  }

  /**
   * Whether a word applies.
   *
   * @param family of the mould; empty when it is not known, then nothing is held against a word
   * @param print whether sizes are those of a print
   */
  public boolean holds(Optional<MouldFamily> family, boolean print) {
    return switch (this) {
      case ALWAYS -> true;
      case PRINT -> print;
      case SAND -> family.map(f -> f == MouldFamily.SAND).orElse(true);
      case INVESTMENT -> family.map(f -> f == MouldFamily.INVESTMENT).orElse(true);
      case WALLED ->
          family.map(f -> f == MouldFamily.SHELL || f == MouldFamily.PERMANENT).orElse(true);
      case PARTED ->
          family.map(f -> f == MouldFamily.SAND || f == MouldFamily.PERMANENT).orElse(true);
    };
  }
}
