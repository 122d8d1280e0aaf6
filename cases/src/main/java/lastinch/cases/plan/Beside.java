package lastinch.cases.plan;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import lastinch.cases.format.Problem;
import lastinch.cases.format.Problems;
import lastinch.cases.format.SourceText;
import lastinch.cases.format.Span;
import lastinch.cases.schema.NearestWord;
import lastinch.cases.units.Saying;

/** Files that a plan names, found from its own folder. */
final class Beside {
  /** So many files of a folder are looked at for the name that was meant. */
  private static final int MOST_FILES = 2000;

  private Beside() {}

  /** A file found from the folder of another. */
  static Optional<Path> of(Path file, String name) {
    try {
      Path path = Path.of(name);
      Path folder = file.getParent();
      return Optional.of(folder == null ? path : folder.resolve(path));
    } catch (InvalidPathException e) {
      return Optional.empty();
    }
  }

  /**
   * Reads a file that another one names; what stands in the way is told at the place that names it.
   */
  static Optional<SourceText> read(Path file, Span asked, Problems problems) {
    Problems own = new Problems();
    Optional<SourceText> source = SourceText.read(file, own);
    boolean gone = Files.notExists(file);
    for (Problem problem : own.errors()) {
      problems.add(
          asked,
          "wrong.otherFile",
          problem.file(),
          problem.said(),
          gone ? Saying.of("wrong.copyWritePathLine") : Saying.NONE);
    }
    return source;
  }

  /** Reads the file that was asked for; where there is none, the nearest name is offered. */
  static Optional<SourceText> read(Path file, Problems problems) {
    Problems own = new Problems();
    Optional<SourceText> source = SourceText.read(file, own);
    Optional<String> near = Files.notExists(file) ? nearest(file) : Optional.empty();
    for (Problem p : own.errors()) {
      problems.add(new Problem(p.file(), 0, 0, "", p.said(), near));
    }
    return source;
  }

  private static Optional<String> nearest(Path file) {
    Path name = file.getFileName();
    Path parent = file.getParent();
    if (name == null) {
      return Optional.empty();
    }
    try (Stream<Path> files = Files.list(parent == null ? Path.of("") : parent)) {
      List<String> names =
          files.limit(MOST_FILES).map(p -> p.getFileName().toString()).sorted().toList();
      return NearestWord.of(name.toString(), names)
          .map(n -> parent == null ? n : parent.resolve(n).toString());
    } catch (IOException noFolder) {
      return Optional.empty();
    }
  }
}
