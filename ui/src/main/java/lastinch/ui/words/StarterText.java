package lastinch.ui.words;

import java.util.List;
import java.util.Objects;

/** Words around the case files that people start from. */
public final class StarterText {
  private static final int KIND = 14;

  private final Sentences sentences;

  public StarterText(Sentences sentences) {
    this.sentences = Objects.requireNonNull(sentences, "sentences");
  }

  /** What there is to start from. */
  public List<String> offer(List<String> kinds) {
    Page page = new Page();
    page.line(sentences.say("new.offer"));
    for (String kind : kinds) {
      page.wrapped(
          "  " + Page.pad(kind, KIND), " ".repeat(KIND + 2), sentences.say("new.kind." + kind));
    }
    page.blank();
    page.line(sentences.say("new.offer.example"));
    return page.lines();
  }

  /** One sentence, broken to the width of a page. */
  public List<String> paragraph(String key, String... namesAndValues) {
    Page page = new Page();
    page.paragraph(sentences.say(key, namesAndValues));
    return plain(page);
  }

  /** What to do with a new file. */
  public List<String> written(String file) {
    Page page = new Page();
    page.paragraph(sentences.say("new.written", "file", file));
    page.line(sentences.say("new.written.next", "file", file));
    return plain(page);
  }

  private static List<String> plain(Page page) {
    return page.lines().stream().map(PlainLetters::of).toList();
  }
}
