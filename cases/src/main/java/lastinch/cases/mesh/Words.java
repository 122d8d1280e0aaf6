package lastinch.cases.mesh;

import java.nio.charset.StandardCharsets;

/** Words of a plain text file, one after the other, whatever the line ends. */
final class Words {
  private final byte[] bytes;
  private int at;
  private int start;
  private int end;
  private boolean newLine;

  Words(byte[] bytes) {
    this.bytes = bytes;
    boolean mark =
        bytes.length > 2
            && bytes[0] == (byte) 0xEF
            && bytes[1] == (byte) 0xBB
            && bytes[2] == (byte) 0xBF;
    at = mark ? 3 : 0;
  }

  /** Goes to the next word; false at the end. */
  boolean next() {
    newLine = start == end;
    while (at < bytes.length && isBlank(bytes[at])) {
      newLine |= bytes[at] == '\n' || bytes[at] == '\r';
      at++;
    }
    start = at;
    while (at < bytes.length && !isBlank(bytes[at])) {
      at++;
    }
    end = at;
    return end > start;
  }

  /** Whether the word is the first of its line. */
  boolean startsLine() {
    return newLine;
  }

  /** Goes to the end of the line. */
  void skipLine() {
    while (at < bytes.length && bytes[at] != '\n' && bytes[at] != '\r') {
      at++;
    }
  }

  private static boolean isBlank(byte b) {
    return b == ' ' || b == '\t' || b == '\n' || b == '\r' || b == '\f' || b == 0x0B;
  }

  /** Whether the word is a given one, written in lower case, in any case. */
  boolean is(String word) {
    if (end - start != word.length()) {
      return false;
    }
    for (int i = 0; i < word.length(); i++) {
      int c = bytes[start + i];
      int lower = c >= 'A' && c <= 'Z' ? c + 32 : c;
      if (lower != word.charAt(i)) {
        return false;
      }
    }
    return true;
  }

  String text() {
    return new String(bytes, start, Math.min(end - start, 80), StandardCharsets.ISO_8859_1);
  }

  /** The word as a number; a decimal comma counts as a point. */
  double number() throws MeshError {
    if (end - start > 60) {
      throw noNumber();
    }
    String text = text().replace(',', '.');
    char last = text.isEmpty() ? ' ' : text.charAt(text.length() - 1);
    if (last != '.' && (last < '0' || last > '9')) {
      throw noNumber();
    }
    try {
      return Double.parseDouble(text);
    } catch (NumberFormatException e) {
      throw noNumber();
    }
  }

  private MeshError noNumber() {
    String shown = text().replaceAll("[^\\x21-\\x7e]", "?");
    return new MeshError("wrong.whereSizeShouldStand", shown.isEmpty() ? "nothing" : shown);
  }
}
