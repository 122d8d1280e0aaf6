package lastinch.ui.words;

import java.text.Normalizer;
import java.util.ArrayList;
import java.util.List;

/** Text for terminals and files that know nothing but plain letters. */
public final class PlainLetters {
  private static final char NO_BREAK = '\u00a0';
  private static final int LAST_PLAIN = 126;
  private static final int FIRST_PLAIN = 32;

  private PlainLetters() {}

  /** The same for every line. */
  public static List<String> all(List<String> lines) {
    List<String> out = new ArrayList<>();
    for (String line : lines) {
      out.add(of(line));
    }
    return out;
  }

  /**
   * The same text with accents dropped and anything else foreign shown as a question mark; control
   * characters go, so a title cannot move the cursor.
   */
  public static String of(String text) {
    boolean foreign = false;
    for (int i = 0; i < text.length(); i++) {
      char c = text.charAt(i);
      foreign |= c < FIRST_PLAIN || c > LAST_PLAIN;
    }
    if (!foreign) {
      return text;
    }
    String bare = Normalizer.normalize(text.replace(NO_BREAK, ' '), Normalizer.Form.NFD);
    StringBuilder out = new StringBuilder(bare.length());
    bare.codePoints()
        .forEach(
            c -> {
              if (c >= FIRST_PLAIN && c <= LAST_PLAIN) {
                out.append((char) c);
              } else if (Character.getType(c) != Character.NON_SPACING_MARK) {
                out.append('?');
              }
            });
    return out.toString();
  }
}
