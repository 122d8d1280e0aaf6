package lastinch.validation;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;

/** Runs all studies and writes the page that lists them. */
public final class ValidationReport {
  private ValidationReport() {}

  /**
   * Writes the page.
   *
   * @param args one argument, the file to write; without it {@code
   *     validation/target/validation-report.html}
   */
  public static void main(String[] args) throws IOException {
    write(Path.of(args.length > 0 ? args[0] : "validation/target/validation-report.html"), run());
  }

  /** Runs all studies. */
  public static List<StudyOutcome> run() {
    return Studies.all().stream().map(StudyOutcome::of).toList();
  }

  /** Writes the page of studies that have been run. */
  public static void write(Path file, List<StudyOutcome> outcomes) throws IOException {
    Path folder = file.toAbsolutePath().getParent();
    if (folder != null) {
      Files.createDirectories(folder);
    }
    Files.writeString(file, StudyPage.of(outcomes), StandardCharsets.UTF_8);
  }
}
