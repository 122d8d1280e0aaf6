package lastinch.ui.words;

import java.util.List;
import java.util.Objects;
import lastinch.cases.schema.Documentation;
import lastinch.cases.schema.NearestWord;
import lastinch.cases.schema.Vocabulary;

/** All words of a plan, from the rows that also check it. */
public final class WordsText {
  private static final int KEY = 30;

  private final Sentences sentences;

  public WordsText(Sentences sentences) {
    this.sentences = Objects.requireNonNull(sentences, "sentences");
  }

  /** Every word, in the order of a plan. */
  public List<String> all() {
    Page page = new Page();
    page.paragraph(sentences.say("words.title"));
    page.paragraph(sentences.say("words.intro"));
    for (Documentation.Row row : Documentation.rows(Vocabulary.CASE)) {
      if (depth(row) == 0) {
        page.blank();
      }
      add(page, row, depth(row));
    }
    return plain(page);
  }

  /**
   * One word, with the words it belongs to and all that may stand under it.
   *
   * @return empty where no word of a plan is meant
   */
  public List<String> about(String typed) {
    Page page = new Page();
    String under = null;
    int lead = 0;
    for (Documentation.Row row : Documentation.about(Vocabulary.CASE, typed)) {
      if (under == null || !row.path().startsWith(under)) {
        under = row.path() + "/";
        lead = depth(row);
        int slash = row.path().lastIndexOf('/');
        page.line(
            slash < 0
                ? sentences.say("words.top")
                : sentences.say(
                    "words.under", "words", row.path().substring(0, slash).replace("/", ", ")));
      }
      add(page, row, depth(row) - lead + 1);
    }
    return plain(page);
  }

  /** What is said of a word that no plan has. */
  public String unknown(String typed) {
    List<String> keys =
        Documentation.rows(Vocabulary.CASE).stream().map(r -> r.word().key()).toList();
    return NearestWord.of(typed, keys)
        .map(near -> sentences.say("words.unknown.nearest", "word", typed, "nearest", near))
        .orElseGet(() -> sentences.say("words.unknown", "word", typed));
  }

  /** The page to read in a browser. */
  public String page() {
    return "# "
        + sentences.say("words.title")
        + "\n\n"
        + sentences.say("words.intro")
        + "\n\n"
        + sentences.say("words.page.made")
        + "\n\n"
        + Documentation.markdown(Vocabulary.CASE);
  }

  private static void add(Page page, Documentation.Row row, int depth) {
    String next = " ".repeat(KEY);
    page.wrapped(
        Page.pad("  ".repeat(depth) + row.word().key() + ":", KEY), next, row.word().help());
    String how = Documentation.how(row.word());
    if (!how.isEmpty()) {
      page.wrapped(next, next + "  ", "[" + how + "]");
    }
  }

  private static int depth(Documentation.Row row) {
    return (int) row.path().chars().filter(c -> c == '/').count();
  }

  private static List<String> plain(Page page) {
    return page.lines().stream().map(PlainLetters::of).toList();
  }
}
