package lastinch.ui.house;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import lastinch.ui.words.Sentences;
import org.junit.jupiter.api.Test;

/** What {@code cases} has to say is said in the one file of sentences. */
class SentencesOfCasesTest {
  private static final Path CASES = Path.of("..", "cases", "src", "main", "java");
  private static final Pattern LITERAL = Pattern.compile("\"((?:\\\\.|[^\"\\\\\\n])*)\"");

  /** A sentence for a person: begins with a capital and goes on for four words or more. */
  private static final Pattern SENTENCE = Pattern.compile("[A-Z+][^ ]*( +[^ ]+){3,}");

  /** Code, the tables of a file's words with their one line of help left out. */
  private static boolean isCode(Path file) {
    return file.toString().endsWith(".java")
        && !file.toString().matches(".*schema.(Piece|Mould|Gating|Metal|Shop)Words\\.java");
  }

  private static List<String> literals() throws IOException {
    List<String> all = new ArrayList<>();
    try (Stream<Path> files = Files.walk(CASES)) {
      for (Path file : files.filter(SentencesOfCasesTest::isCode).sorted().toList()) {
        String code = Files.readString(file).replaceAll("(?s)/\\*.*?\\*/", "");
        LITERAL.matcher(code).results().forEach(m -> all.add(m.group(1)));
      }
    }
    return all;
  }

  @Test
  void everySayingIsASentenceAndEverySentenceIsSaid() throws IOException {
    Set<String> said =
        literals().stream()
            .filter(l -> l.matches("wrong\\.\\w+"))
            .collect(Collectors.toCollection(TreeSet::new));
    Set<String> written =
        Sentences.english().keys().stream()
            .filter(k -> k.startsWith("wrong."))
            .collect(Collectors.toCollection(TreeSet::new));
    assertThat(said).hasSizeGreaterThan(200).isEqualTo(written);
  }

  @Test
  void noSentenceStandsInCases() throws IOException {
    assertThat(literals()).filteredOn(l -> SENTENCE.matcher(l).matches()).isEmpty();
  }
}
