package lastinch.solver.house;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** Guide, documents and pages of packages name only classes, and members, that there are. */
class DocumentedNamesLimitsTest {
  /**
   * A class in code marks, or a member of it; {@code .member} alone goes on with the last class.
   */
  private static final Pattern NAME =
      Pattern.compile("`(?:[a-z]+\\.)*([A-Z][A-Za-z]*[a-z][A-Za-z]*)?(?:\\.([A-Za-z_]+))?`");

  /** The same in the page of a package. */
  private static final Pattern LINK =
      Pattern.compile(
          "\\{@(?:link|code)\\s+(?:[a-z]+\\.)*([A-Z][A-Za-z]*[a-z][A-Za-z]*)(?:[.#]([A-Za-z_]+))?");

  /** Tells of classes by the names that they had then. */
  private static final String HISTORY = "changes.md";

  private static final List<String> MODULES = List.of("solver", "cases", "ui", "validation");

  /** Classes of the language that the documents name. */
  private static final List<String> FOREIGN =
      List.of("Math", "StrictMath", "IllegalArgumentException");

  @Test
  void everyClassAndMemberNamedInTheDocumentsIsThere() throws IOException {
    Map<String, String> sources = sources();
    List<String> missing = new ArrayList<>();
    int count = 0;
    for (Path document : documents()) {
      String said = Files.readString(document);
      String last = "";
      Pattern names = document.toString().endsWith(".md") ? NAME : LINK;
      Matcher name = names.matcher(document.endsWith(HISTORY) ? "" : said);
      while (name.find()) {
        last = name.group(1) == null ? last : name.group(1);
        if (FOREIGN.contains(last)) {
          continue;
        }
        String text = sources.getOrDefault(last, "");
        String member = name.group(2) == null ? last : name.group(2);
        if (!Pattern.compile("\\b" + member + "\\b").matcher(text).find()) {
          missing.add(document + ": " + name.group());
        }
        count++;
      }
    }
    assertThat(count).as("an empty scan must not pass").isGreaterThan(100);
    assertThat(missing).isEmpty();
  }

  @Test
  void aNameThatIsNotThereIsFound() {
    Matcher name = NAME.matcher("see `wall.WallColumns.noSuch`");
    assertThat(name.find()).isTrue();
    assertThat(name.group(1)).isEqualTo("WallColumns");
    assertThat(name.group(2)).isEqualTo("noSuch");
  }

  private static List<Path> documents() throws IOException {
    List<Path> all = new ArrayList<>(List.of(Path.of("..", "DEVELOPERS.md")));
    for (String module : MODULES) {
      all.addAll(files(Path.of("..", module, "docs"), ".md"));
      all.addAll(files(Path.of("..", module, "src", "main"), "package-info.java"));
    }
    return all;
  }

  private static Map<String, String> sources() throws IOException {
    Map<String, String> text = new HashMap<>();
    for (String module : MODULES) {
      for (Path file : files(Path.of("..", module, "src"), ".java")) {
        text.put(file.getFileName().toString().replace(".java", ""), Files.readString(file));
      }
    }
    return text;
  }

  private static List<Path> files(Path root, String ending) throws IOException {
    try (Stream<Path> all = Files.walk(root)) {
      return all.filter(f -> f.toString().endsWith(ending)).sorted().toList();
    }
  }
}
