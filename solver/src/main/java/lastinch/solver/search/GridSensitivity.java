package lastinch.solver.search;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.DoubleFunction;
import java.util.function.Supplier;
import lastinch.solver.casting.PourCase;
import lastinch.solver.result.Outcome;
import lastinch.solver.result.PourResult;
import lastinch.solver.study.Pourer;
import lastinch.solver.study.RunCache;
import lastinch.solver.study.VerdictWord;

/**
 * How far the answers of the plane lie apart when nothing but its squares is a little finer or
 * coarser: a ragged front stops elsewhere with every grid, and one run does not show by how much.
 *
 * @param runs in rising order of their squares
 */
public record GridSensitivity(List<Run> runs) {
  /** Edges of the squares over that of the first pour [-]; a fixed list, our own choice. */
  private static final double[] EDGES = {0.94, 0.97, 1.0, 1.03, 1.06};

  public GridSensitivity {
    runs = List.copyOf(runs);
    if (runs.isEmpty()) {
      throw new IllegalArgumentException("no run");
    }
  }

  /**
   * What came of one size of squares.
   *
   * @param square their edge [m]
   * @param filled whether the piece filled
   * @param reach metal without a break on the piece's ruler [m]
   * @param unfilled share of the piece's volume that stayed empty [-]
   */
  public record Run(double square, boolean filled, double reach, double unfilled) {}

  /** Runs besides the first pour. */
  public static int more() {
    return EDGES.length - 1;
  }

  /**
   * Pours a job again with other squares.
   *
   * @param job the job
   * @param square edge of the squares of the first pour [m]
   * @param first what it found, filled or stopped short
   * @param over pours over the plane with squares of an edge [m]
   * @param studies makes the runs; its own pourer is not asked
   * @return empty when the first pour or one of the others gave no answer
   * @throws RunCache.Cancelled when asked to stop
   */
  public static Optional<GridSensitivity> around(
      PourCase job,
      double square,
      PourResult first,
      DoubleFunction<Pourer.Run> over,
      RunCache studies) {
    studies.expect(more());
    List<Supplier<PourResult>> tasks = new ArrayList<>();
    for (double edge : EDGES) {
      tasks.add(edge == 1.0 ? () -> first : () -> again(job, over.apply(edge * square), studies));
    }
    List<Run> runs = new ArrayList<>();
    List<Optional<PourResult>> results = studies.all(tasks);
    for (int i = 0; i < EDGES.length; i++) {
      PourResult result = results.get(i).orElseThrow(RunCache.Cancelled::new);
      boolean filled = VerdictWord.isFull(result);
      if (!filled && !(result.outcome() instanceof Outcome.Misrun)) {
        return Optional.empty();
      }
      runs.add(
          new Run(
              EDGES[i] * square,
              filled,
              result.reach(),
              Math.max(0.0, 1.0 - result.filledFraction())));
    }
    return Optional.of(new GridSensitivity(runs));
  }

  private static PourResult again(PourCase job, Pourer.Run run, RunCache studies) {
    PourResult result = run.of(job, studies::stopRequested);
    if (result.outcome() instanceof Outcome.Cancelled) {
      throw new RunCache.Cancelled();
    }
    studies.count();
    return result;
  }

  /** How many of the runs filled. */
  public int fills() {
    return (int) runs.stream().filter(Run::filled).count();
  }

  /** Whether some filled and some stopped. */
  public boolean isDivided() {
    return fills() > 0 && fills() < runs.size();
  }

  /** Shortest and furthest reach of the runs that stopped [m]; of all when none did. */
  public Ends reach() {
    List<Run> told =
        fills() == runs.size() ? runs : runs.stream().filter(r -> !r.filled()).toList();
    return new Ends(
        told.stream().mapToDouble(Run::reach).min().orElseThrow(),
        told.stream().mapToDouble(Run::reach).max().orElseThrow());
  }

  /** Least and largest share that stayed empty [-]. */
  public Ends unfilled() {
    return new Ends(
        runs.stream().mapToDouble(Run::unfilled).min().orElseThrow(),
        runs.stream().mapToDouble(Run::unfilled).max().orElseThrow());
  }

  /** From the least to the largest. */
  public record Ends(double low, double high) {}
}
