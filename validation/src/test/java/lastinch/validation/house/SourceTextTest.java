package lastinch.validation.house;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** Rules of the source text that no compiled class shows. */
class SourceTextTest {
  private static final int MOST_LINES = 400;

  /** More than this and a newcomer does not find a class by its neighbours. */
  private static final int MOST_CLASSES = 25;

  private static final List<String> MODULES = List.of("solver", "cases", "ui", "validation");

  @Test
  void zeroOfTheDegreeScaleAndTheShopAreWrittenOnce() throws IOException {
    assertThat(linesWith("main", Pattern.compile("\\b273\\.15"))).hasSize(1);
    assertThat(linesWith("main", Pattern.compile("\\b293\\.15")))
        .as("temperature of the shop")
        .hasSize(1);
  }

  @Test
  void noUnfinishedBusiness() throws IOException {
    Pattern marks = Pattern.compile("\\b(TO" + "DO|FIX" + "ME|XX" + "X)\\b");
    assertThat(linesWith("main", marks)).isEmpty();
    assertThat(linesWith("test", marks)).isEmpty();
  }

  @Test
  void noLocalUnitsInTheSolver() throws IOException {
    Pattern names = Pattern.compile("\\b[a-z][A-Za-z]*(Mm|DegC|DegF)\\b");
    assertThat(linesWith("main", names)).noneMatch(line -> line.startsWith("solver"));
  }

  @Test
  void noClassIsTooLongToRead() throws IOException {
    List<String> tooLong = new ArrayList<>();
    for (Path file : sources("main")) {
      long lines = Files.readString(file).lines().count();
      if (lines > MOST_LINES) {
        tooLong.add(file.getFileName() + " has " + lines + " lines");
      }
    }
    assertThat(tooLong).isEmpty();
  }

  @Test
  void noSimpleNameStandsTwice() throws IOException {
    Map<String, Path> first = new HashMap<>();
    List<String> twice = new ArrayList<>();
    for (Path file : classes()) {
      Path other = first.put(file.getFileName().toString(), file);
      if (other != null) {
        twice.add(file + " and " + other);
      }
    }
    assertThat(twice).isEmpty();
    assertThat(first).hasSizeGreaterThan(500);
  }

  @Test
  void noRoomIsTooFullAndEveryOneIsDescribed() throws IOException {
    Map<Path, Integer> rooms = new HashMap<>();
    for (Path file : classes()) {
      rooms.merge(file.getParent(), 1, Integer::sum);
    }
    List<String> wrong = new ArrayList<>();
    rooms.forEach(
        (room, count) -> {
          if (count > MOST_CLASSES) {
            wrong.add(room + " has " + count + " classes");
          }
          if (!Files.exists(room.resolve("package-info.java"))) {
            wrong.add(room + " is not described");
          }
        });
    assertThat(wrong).isEmpty();
    assertThat(rooms).hasSizeGreaterThan(40);
  }

  private static List<Path> classes() throws IOException {
    return sources("main").stream()
        .filter(f -> !f.getFileName().toString().endsWith("-info.java"))
        .toList();
  }

  private static List<String> linesWith(String part, Pattern pattern) throws IOException {
    List<String> found = new ArrayList<>();
    Path root = Path.of("..");
    for (Path file : sources(part)) {
      List<String> lines = Files.readAllLines(file);
      for (int i = 0; i < lines.size(); i++) {
        if (pattern.matcher(lines.get(i)).find()) {
          found.add(root.relativize(file) + ":" + (i + 1) + " " + lines.get(i).strip());
        }
      }
    }
    return found;
  }

  private static List<Path> sources(String part) throws IOException {
    List<Path> all = new ArrayList<>();
    for (String module : MODULES) {
      Path root = Path.of("..", module, "src", part, "java");
      if (Files.isDirectory(root)) {
        try (Stream<Path> files = Files.walk(root)) {
          files.filter(f -> f.toString().endsWith(".java")).sorted().forEach(all::add);
        }
      }
    }
    assertThat(all).as("an empty scan must not pass").hasSizeGreaterThan(20);
    return all;
  }
}
