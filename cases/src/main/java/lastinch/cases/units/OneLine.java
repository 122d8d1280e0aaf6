package lastinch.cases.units;

/** Text as it counts: without space at its ends and with single spaces inside. */
public final class OneLine {
  private OneLine() {}

  /** The same words with single plain spaces between them. */
  public static String of(String text) {
    int n = text.length();
    StringBuilder plain = null;
    boolean space = true;
    for (int i = 0; i < n; i++) {
      char c = text.charAt(i);
      boolean blank = Character.isWhitespace(c) || Character.isSpaceChar(c);
      boolean kept = !blank || (c == ' ' && !space && i + 1 < n);
      if (!kept && plain == null) {
        plain = new StringBuilder(n).append(text, 0, i);
      }
      if (plain != null) {
        if (!blank) {
          plain.append(c);
        } else if (!space) {
          plain.append(' ');
        }
      }
      space = blank;
    }
    if (plain == null) {
      return text;
    }
    int end = plain.length();
    return end > 0 && plain.charAt(end - 1) == ' ' ? plain.substring(0, end - 1) : plain.toString();
  }
}
