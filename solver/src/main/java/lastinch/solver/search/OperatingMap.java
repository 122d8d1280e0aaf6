package lastinch.solver.search;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import lastinch.solver.casting.PourCase;
import lastinch.solver.levers.Lever;
import lastinch.solver.levers.ParameterUnit;
import lastinch.solver.study.Goal;
import lastinch.solver.study.RunCache;
import lastinch.solver.study.RunSummary;

/**
 * Room to move: what becomes of a job over two levers.
 *
 * @param across lever along the bottom
 * @param up lever along the side
 * @param acrossValues rising, in the lever's unit
 * @param upValues rising
 * @param glances row by row from the lowest {@code up}; empty where the study was stopped before
 * @param lines where one outcome turns into another
 * @param goal what was asked for
 * @param plan the job as it stands
 * @param own each lever alone, all else as it stands: where filling begins or ends
 * @param runs made for all this
 */
public record OperatingMap(
    Lever across,
    Lever up,
    List<Double> acrossValues,
    List<Double> upValues,
    List<Optional<RunSummary>> glances,
    List<Line> lines,
    Goal goal,
    RunSummary plan,
    SmallestChange own,
    int runs) {
  public OperatingMap {
    Objects.requireNonNull(across, "across");
    Objects.requireNonNull(up, "up");
    acrossValues = List.copyOf(acrossValues);
    upValues = List.copyOf(upValues);
    glances = List.copyOf(glances);
    lines = List.copyOf(lines);
    Objects.requireNonNull(goal, "goal");
    Objects.requireNonNull(plan, "plan");
    Objects.requireNonNull(own, "own");
  }

  /** The glance in a column and a row, if it was made. */
  public Optional<RunSummary> at(int column, int row) {
    return glances.get(row * acrossValues.size() + column);
  }

  /** Whether the study was not stopped before its end. */
  public boolean whole() {
    return own.whole() && glances.stream().allMatch(Optional::isPresent);
  }

  /** What a line parts. */
  public enum Parts {
    /** Fills from does not fill. */
    FILLS,
    /** Fills as was asked for from fills otherwise. */
    SPARE
  }

  /**
   * A line on the map, point by point. Every point lies between two runs that came out differently,
   * a sixteenth of a step of the map apart or less.
   *
   * @param across values of the lever along the bottom
   * @param up values of the lever along the side, as many
   */
  public record Line(Parts parts, List<Double> across, List<Double> up) {
    public Line {
      Objects.requireNonNull(parts, "parts");
      across = List.copyOf(across);
      up = List.copyOf(up);
      if (across.size() != up.size()) {
        throw new IllegalArgumentException(across.size() + " and " + up.size() + " values");
      }
    }
  }

  /**
   * What to look at.
   *
   * @param across lever along the bottom
   * @param acrossFrom first value
   * @param acrossTo last value, larger
   * @param up lever along the side
   * @param upFrom first value
   * @param upTo last value, larger
   * @param columns how many values across
   * @param rows how many values up
   * @param goal of the second line
   */
  public record Question(
      Lever across,
      double acrossFrom,
      double acrossTo,
      Lever up,
      double upFrom,
      double upTo,
      int columns,
      int rows,
      Goal goal) {
    public Question {
      Objects.requireNonNull(across, "across");
      Objects.requireNonNull(up, "up");
      Objects.requireNonNull(goal, "goal");
      if (columns < 2 || rows < 2) {
        throw new IllegalArgumentException(columns + " by " + rows + " values, at least 2 by 2");
      }
      ends(across, acrossFrom, acrossTo);
      ends(up, upFrom, upTo);
      if (across.unit() == ParameterUnit.CHOICE || up.unit() == ParameterUnit.CHOICE) {
        throw new IllegalArgumentException("nothing lies between choices");
      }
    }

    private static void ends(Lever lever, double from, double to) {
      if (!(from < to) || !lever.physical().holds(from) || !lever.physical().holds(to)) {
        throw new IllegalArgumentException(lever.key() + " from " + from + " to " + to);
      }
    }
  }

  /** Runs that the map takes, as a rule: half as many again for its lines. */
  public static int usualRuns(Question q) {
    int all =
        values(q.across(), q.acrossFrom(), q.acrossTo(), q.columns()).size()
            * values(q.up(), q.upFrom(), q.upTo(), q.rows()).size();
    return all + all / 2;
  }

  /** Makes the map. */
  public static OperatingMap of(RunCache studies, PourCase job, Question q) {
    List<Double> xs = values(q.across(), q.acrossFrom(), q.acrossTo(), q.columns());
    List<Double> ys = values(q.up(), q.upFrom(), q.upTo(), q.rows());
    RunSummary plan = studies.pour(job);
    List<PourCase> jobs = new ArrayList<>();
    for (double y : ys) {
      for (double x : xs) {
        jobs.add(q.up().set(q.across().set(job, x), y));
      }
    }
    studies.expect(usualRuns(q));
    List<Optional<RunSummary>> glances = studies.pourAll(jobs);
    List<Line> lines = new ArrayList<>();
    MapLines maker = new MapLines(studies, job, q, xs, ys, glances);
    lines.addAll(maker.lines(Parts.FILLS));
    lines.addAll(maker.lines(Parts.SPARE));
    SmallestChange own =
        SmallestChange.of(studies, job, List.of(q.across(), q.up()), Goal.heat(0.0));
    return new OperatingMap(
        q.across(), q.up(), xs, ys, glances, lines, q.goal(), plan, own, studies.runs());
  }

  private static List<Double> values(Lever lever, double from, double to, int count) {
    List<Double> all = new ArrayList<>();
    if (lever.stepwise()) {
      for (double v = Math.ceil(from); v <= to; v++) {
        all.add(v);
      }
      return all;
    }
    for (int i = 0; i < count; i++) {
      all.add(i == count - 1 ? to : from + (to - from) * i / (count - 1));
    }
    return all;
  }
}
