package lastinch.ui.words;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;

/** Lines of a printed answer, broken at a width that fits every terminal. */
public final class Page {
  /** Widest line [characters]. */
  public static final int WIDTH = 78;

  /** Where the text beside a label begins [characters]. */
  public static final int LABEL = 11;

  private static final String GAP = "   ";
  private static final Pattern UNIT =
      Pattern.compile(
          "(?<=\\d) (?=(?:mm|in|degC|degF|s|g|kg|lb|oz|%|m/s|ft/s|ms|\\d+/\\d+)(?:\\W|$))");

  private final List<String> lines = new ArrayList<>();

  /** A line as it is. */
  public void line(String text) {
    lines.add(text.stripTrailing());
  }

  /** An empty line, never two in a row and never at the top. */
  public void blank() {
    if (!lines.isEmpty() && !lines.get(lines.size() - 1).isEmpty()) {
      lines.add("");
    }
  }

  /** A paragraph that starts at the margin. */
  public void paragraph(String text) {
    wrapped("", "", text);
  }

  /** What the answer is about, in capitals, and the name of the plan. */
  public void heading(String text) {
    if (text.length() <= WIDTH) {
      line(text);
    } else {
      wrapped("", "  ", text);
    }
  }

  /** A label in the first column with text beside it. */
  public void entry(String label, String text) {
    wrapped(pad(label, LABEL), " ".repeat(LABEL), text);
  }

  /** Text after {@code first}; its further lines start with {@code next}. */
  public void wrapped(String first, String next, String text) {
    String start = first;
    StringBuilder line = new StringBuilder(start);
    boolean empty = true;
    for (String word : glued(text).split(" +", -1)) {
      if (!empty && line.length() + 1 + word.length() > WIDTH) {
        line(line.toString());
        line = new StringBuilder(next);
        empty = true;
      }
      if (!empty) {
        line.append(' ');
      }
      line.append(word);
      empty = false;
    }
    line(line.toString());
  }

  /** Short pieces in a row with wide gaps. */
  public void row(String first, List<String> items) {
    StringBuilder line = new StringBuilder(first);
    boolean empty = true;
    for (String item : items) {
      if (!empty && line.length() + GAP.length() + item.length() > WIDTH) {
        line(line.toString());
        line = new StringBuilder(first);
        empty = true;
      }
      line.append(empty ? "" : GAP).append(item);
      empty = false;
    }
    line(line.toString());
  }

  /** Words that stay on one line together. */
  public static String kept(String words) {
    return words.replace(' ', '\u00a0');
  }

  /** Numbers keep their units on the same line. */
  private static String glued(String text) {
    return UNIT.matcher(text.strip()).replaceAll("\u00a0");
  }

  /** Lines so far. */
  public List<String> lines() {
    return List.copyOf(lines);
  }

  public static String pad(String text, int width) {
    return text.length() >= width ? text + " " : text + " ".repeat(width - text.length());
  }
}
