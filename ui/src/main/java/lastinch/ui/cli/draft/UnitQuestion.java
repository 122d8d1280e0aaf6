package lastinch.ui.cli.draft;

import java.nio.file.Path;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import lastinch.cases.mesh.Mesh;
import lastinch.cases.mesh.MeshUnit;
import lastinch.cases.mesh.UnitAnswer;
import lastinch.cases.units.DisplayUnits;
import lastinch.ui.cli.Console;
import lastinch.ui.words.Figures;
import lastinch.ui.words.ProblemText;

/** Asks the person at a terminal, once for each model; elsewhere nobody answers. */
public final class UnitQuestion implements UnitAnswer {
  private final Console surroundings;
  private final ProblemText problemText;
  private final boolean mayAsk;
  private final Map<Path, Optional<MeshUnit>> answers = new HashMap<>();

  /**
   * A question.
   *
   * @param json whether another program reads the answers; it is not asked
   */
  public UnitQuestion(Console surroundings, ProblemText problemText, boolean json) {
    this.surroundings = surroundings;
    this.problemText = problemText;
    mayAsk = surroundings.terminal() && !json;
  }

  public boolean mayAsk() {
    return mayAsk;
  }

  @Override
  public Optional<MeshUnit> of(Path file, Mesh mesh) {
    return mayAsk
        ? answers.computeIfAbsent(file.toAbsolutePath().normalize(), f -> ask(file, mesh))
        : Optional.empty();
  }

  private Optional<MeshUnit> ask(Path file, Mesh mesh) {
    String likely = likely(mesh);
    surroundings.complain(
        problemText.sentence(
            "shape.unit.ask", "file", file.toString(), "size", sizes(mesh), "likely", likely));
    String line = surroundings.readLine().orElse("").strip();
    Optional<MeshUnit> answer = MeshUnit.of(line.isEmpty() ? likely : line);
    if (answer.isEmpty()) {
      surroundings.complain(problemText.sentence("shape.wrong.unit", "word", line));
    }
    return answer;
  }

  /** The word of the unit that makes the likeliest size. */
  public static String likely(Mesh mesh) {
    return MeshUnit.plausible(mesh.longest()).map(MeshUnit::word).orElse("mm");
  }

  /** The three extents in units of the file. */
  public static String sizes(Mesh mesh) {
    Figures plain = new Figures(DisplayUnits.METRIC);
    String[] sizes = new String[3];
    for (int axis = 0; axis < 3; axis++) {
      sizes[axis] = plain.trimmed(mesh.extent(axis), 3);
    }
    return String.join(" x ", sizes);
  }
}
