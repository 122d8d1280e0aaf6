package lastinch.cases.plan;

import java.nio.file.Path;
import java.util.List;
import lastinch.cases.format.CaseText;
import lastinch.cases.format.Problem;
import lastinch.cases.format.Problems;
import lastinch.cases.format.SourceText;

/** Reads a case file with all it is based on, checks it and turns it into a plan. */
public final class CaseReader {
  private CaseReader() {}

  /**
   * Reads a case file. Nothing a person can write makes this throw.
   *
   * @param file the case file
   * @param materials metals and mould media it may name
   */
  public static ReadResult read(Path file, Materials materials) {
    Problems problems = new Problems();
    if (SourceText.read(file, problems)
        .flatMap(source -> CaseText.parse(source, problems))
        .isPresent()) {
      problems.add(
          Problem.ofFile(
              file.toString(),
              "Plans cannot be read yet, only " + materials.alloyNames().size() + " alloys"));
    }
    return new ReadResult.Unsound(problems.errors(), List.of());
  }
}
