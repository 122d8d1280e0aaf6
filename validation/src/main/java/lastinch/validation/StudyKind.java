package lastinch.validation;

/** What a study holds the product against. */
public enum StudyKind {
  /** A solution known in closed form or by quadrature. */
  EXACT("exact solution"),
  /** Figures someone measured or published. */
  PUBLISHED("published figures"),
  /** A direction or an order of size, no figure to be met. */
  TREND("trend only");

  private final String words;

  StudyKind(String words) {
    this.words = words;
  }

  /** As printed. */
  public String words() {
    return words;
  }
}
