package lastinch.ui.words;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import lastinch.cases.schema.Documentation;
import lastinch.cases.schema.Vocabulary;
import org.junit.jupiter.api.Test;

/** The words of a plan, as printed and as the page beside the program has them. */
class WordsTextTest {
  private final WordsText text = new WordsText(Sentences.english());

  @Test
  void allWordsArePrintedWithinATerminal() {
    String all = String.join("\n", text.all());
    for (Documentation.Row row : Documentation.rows(Vocabulary.CASE)) {
      assertThat(all).contains(row.word().key() + ":");
    }
    assertThat(text.all()).allMatch(line -> line.matches("[ -~]{0,78}"));
  }

  @Test
  void oneWordIsToldWithTheWordItBelongsTo() {
    assertThat(String.join(" ", text.about("crucible empties in")).replaceAll(" +", " "))
        .contains("Under pour:")
        .contains("from first metal in the cup")
        .contains("may be: don't know]");
    assertThat(text.about("stove")).isEmpty();
    assertThat(text.unknown("secton")).contains("Did you mean: section");
  }

  @Test
  void thePageBesideTheProgramIsWhatTheProgramSays() {
    // made anew with: ui/lastinch words --markdown > ui/docs/words-of-a-plan.md
    assertThat(Path.of("docs", "words-of-a-plan.md")).hasContent(text.page());
  }
}
