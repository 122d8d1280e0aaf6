package lastinch.ui.words;

import java.util.Objects;

/**
 * A point of the short answer.
 *
 * @param label what it is about; empty where the text says so itself
 * @param text one sentence or two
 * @param command what to type for it; empty for none
 */
public record Point(String label, String text, String command) {
  public Point {
    Objects.requireNonNull(label, "label");
    Objects.requireNonNull(text, "text");
    Objects.requireNonNull(command, "command");
  }

  public Point(String label, String text) {
    this(label, text, "");
  }

  public void add(Page page) {
    if (label.isEmpty()) {
      page.wrapped("", " ".repeat(Page.LABEL), text);
    } else {
      page.entry(label, text);
    }
    if (!command.isEmpty()) {
      page.line(" ".repeat(Page.LABEL + 2) + command);
    }
  }
}
