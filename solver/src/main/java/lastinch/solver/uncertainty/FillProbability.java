package lastinch.solver.uncertainty;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.function.Supplier;
import java.util.stream.IntStream;
import lastinch.solver.casting.PourCase;
import lastinch.solver.study.Measure;
import lastinch.solver.study.RunCache;
import lastinch.solver.study.RunSummary;

/**
 * How sure a plan is: the job poured on many days drawn from its bands.
 *
 * @param plan with the best figures
 * @param chance share of the days on which it fills and comes out in one piece
 * @param days how many were poured
 * @param silent days on which the run gave no answer; they do not count
 * @param stopped what came of the days on which it stopped, in the order of the days
 * @param apart days on which the mould was full, but streams in it did not join
 * @param influences what the outcome's spread comes from, largest first
 * @param inAll the same with every interplay, in the order of {@code influences}, when asked for
 * @param measure what to measure first: much of the spread for little effort, if anything helps
 * @param runs made for all this
 */
public record FillProbability(
    RunSummary plan,
    ChanceInterval chance,
    int days,
    int silent,
    List<RunSummary> stopped,
    int apart,
    List<Influence> influences,
    List<Double> inAll,
    Optional<UncertainInput> measure,
    int runs) {
  /** Days when nothing else is asked for. */
  public static final int USUAL_DAYS = 1024;

  /** Days of each of the two samples that show interplay. */
  public static final int PAIRED_DAYS = 512;

  /** Samples that are independent of each other; their spread gives the interval. */
  private static final int SAMPLES = 16;

  /** Days that one task pours. */
  private static final int CHUNK = 16;

  private static final int OTHER_SEED = 1000;

  public FillProbability {
    Objects.requireNonNull(plan, "plan");
    Objects.requireNonNull(chance, "chance");
    stopped = List.copyOf(stopped);
    influences = List.copyOf(influences);
    inAll = List.copyOf(inAll);
    Objects.requireNonNull(measure, "measure");
  }

  /** Days on which it filled and came out in one piece. */
  public int fills() {
    return days - silent - stopped.size() - apart;
  }

  /**
   * Runs that {@link #of} makes.
   *
   * @param job as it stands
   * @param days asked for
   * @param thorough whether interplay is looked for
   */
  public static int runs(PourCase job, int days, boolean thorough) {
    int unknowns = UncertainInput.openIn(job).size();
    int drawn = SAMPLES * Math.max(1, (days + SAMPLES - 1) / SAMPLES);
    return unknowns == 0 ? 1 : drawn + (thorough ? (unknowns + 2) * PAIRED_DAYS : 0);
  }

  /**
   * Pours the days.
   *
   * @param studies makes the runs
   * @param job as it stands
   * @param measure whose spread is split among the unknowns
   * @param days how many, taken up to a whole number of samples
   * @param thorough whether to look for interplay as well; takes many more runs
   * @throws RunCache.Cancelled when stopped before its end
   */
  public static FillProbability of(
      RunCache studies, PourCase job, Measure measure, int days, boolean thorough) {
    List<UncertainInput> unknowns = UncertainInput.openIn(job);
    RunSummary plan = studies.pour(job);
    if (unknowns.isEmpty()) {
      return known(plan, studies.runs());
    }
    int each = Math.max(1, (days + SAMPLES - 1) / SAMPLES);
    List<double[]> points = new ArrayList<>();
    for (int s = 0; s < SAMPLES; s++) {
      points.addAll(Arrays.asList(ScrambledSobol.points(unknowns.size(), each, s)));
    }
    studies.expect(runs(job, days, thorough));
    List<RunSummary> glances = pour(studies, job, unknowns, points);
    int[] yes = new int[SAMPLES];
    int[] counted = new int[SAMPLES];
    List<RunSummary> stopped = new ArrayList<>();
    int apart = 0;
    for (int i = 0; i < glances.size(); i++) {
      RunSummary g = glances.get(i);
      if (g.answered()) {
        counted[i / each]++;
        yes[i / each] += g.filled() ? 1 : 0;
        apart += g.end() == RunSummary.End.APART ? 1 : 0;
        if (g.end() == RunSummary.End.STOPPED) {
          stopped.add(g);
        }
      }
    }
    List<Influence> influences = influences(measure, unknowns, points, glances);
    List<Double> inAll = thorough ? inAll(studies, job, measure, unknowns, influences) : List.of();
    return new FillProbability(
        plan,
        ChanceInterval.of(yes, counted),
        glances.size(),
        glances.size() - Arrays.stream(counted).sum(),
        stopped,
        apart,
        influences,
        inAll,
        measure(influences),
        studies.runs());
  }

  private static FillProbability known(RunSummary plan, int runs) {
    double share = plan.filled() ? 1.0 : 0.0;
    return new FillProbability(
        plan,
        new ChanceInterval(share, share, share),
        1,
        plan.answered() ? 0 : 1,
        plan.end() == RunSummary.End.STOPPED ? List.of(plan) : List.of(),
        plan.end() == RunSummary.End.APART ? 1 : 0,
        List.of(),
        List.of(),
        Optional.empty(),
        runs);
  }

  /** Pours days side by side, a few to a task. */
  static List<RunSummary> pour(
      RunCache studies, PourCase job, List<UncertainInput> unknowns, List<double[]> points) {
    List<Supplier<List<RunSummary>>> tasks = new ArrayList<>();
    for (int from = 0; from < points.size(); from += CHUNK) {
      List<double[]> chunk = points.subList(from, Math.min(points.size(), from + CHUNK));
      tasks.add(
          () -> chunk.stream().map(p -> studies.pour(SampledInputs.of(job, unknowns, p))).toList());
    }
    List<RunSummary> all = new ArrayList<>();
    for (Optional<List<RunSummary>> done : studies.all(tasks)) {
      all.addAll(done.orElseThrow(RunCache.Cancelled::new));
    }
    return all;
  }

  /**
   * The largest share first; what it explains is taken off the outcome before the next is looked
   * for, so that chance likenesses with a large one do not pass for a share of a small one.
   */
  private static List<Influence> influences(
      Measure measure,
      List<UncertainInput> unknowns,
      List<double[]> points,
      List<RunSummary> glances) {
    int[] kept =
        IntStream.range(0, glances.size()).filter(i -> glances.get(i).answered()).toArray();
    double[] left = Arrays.stream(kept).mapToDouble(i -> glances.get(i).get(measure)).toArray();
    double whole = FirstOrderIndex.variance(left);
    List<Influence> all = new ArrayList<>();
    List<UncertainInput> open = new ArrayList<>(unknowns);
    while (kept.length > 2 && !open.isEmpty()) {
      double part = whole > 0.0 ? FirstOrderIndex.variance(left) / whole : 0.0;
      Influence largest = null;
      for (UncertainInput unknown : open) {
        FirstOrderIndex.Share share =
            FirstOrderIndex.of(
                input(unknowns, unknown, points, kept), left, OTHER_SEED * all.size());
        if (largest == null || part * share.value() > largest.alone()) {
          largest =
              new Influence(unknown, part * share.value(), part * share.low(), part * share.high());
        }
      }
      all.add(largest);
      open.remove(largest.unknown());
      left = FirstOrderIndex.without(input(unknowns, largest.unknown(), points, kept), left);
    }
    all.sort(Comparator.comparingDouble(i -> -i.alone()));
    return all;
  }

  private static double[] input(
      List<UncertainInput> unknowns, UncertainInput unknown, List<double[]> points, int[] kept) {
    int at = unknowns.indexOf(unknown);
    return Arrays.stream(kept).mapToDouble(i -> points.get(i)[at]).toArray();
  }

  private static List<Double> inAll(
      RunCache studies,
      PourCase job,
      Measure measure,
      List<UncertainInput> unknowns,
      List<Influence> influences) {
    int d = unknowns.size();
    double[][] both = ScrambledSobol.points(2 * d, PAIRED_DAYS, OTHER_SEED);
    List<double[]> points = new ArrayList<>();
    for (double[] p : both) {
      points.add(Arrays.copyOfRange(p, 0, d));
    }
    for (double[] p : both) {
      points.add(Arrays.copyOfRange(p, d, 2 * d));
    }
    for (Influence influence : influences) {
      int at = unknowns.indexOf(influence.unknown());
      for (double[] p : both) {
        double[] mixed = Arrays.copyOfRange(p, 0, d);
        mixed[at] = p[d + at];
        points.add(mixed);
      }
    }
    double[] values =
        pour(studies, job, unknowns, points).stream().mapToDouble(g -> g.get(measure)).toArray();
    double[] a = Arrays.copyOfRange(values, 0, PAIRED_DAYS);
    double[] b = Arrays.copyOfRange(values, PAIRED_DAYS, 2 * PAIRED_DAYS);
    List<Double> all = new ArrayList<>();
    for (int i = 0; i < influences.size(); i++) {
      double[] mixed = Arrays.copyOfRange(values, (i + 2) * PAIRED_DAYS, (i + 3) * PAIRED_DAYS);
      all.add(PairedTrials.inAll(a, b, mixed));
    }
    return all;
  }

  /** Most of the spread for the effort. */
  private static Optional<UncertainInput> measure(List<Influence> influences) {
    return influences.stream()
        .filter(i -> i.alone() >= Bands.WORTH_NAMING)
        .filter(i -> i.unknown().effort() != UncertainInput.Effort.NONE)
        .max(Comparator.comparingDouble(i -> i.alone() / i.unknown().effort().weight()))
        .map(Influence::unknown);
  }
}
