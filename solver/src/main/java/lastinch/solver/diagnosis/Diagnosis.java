package lastinch.solver.diagnosis;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.Supplier;
import lastinch.solver.casting.PourCase;
import lastinch.solver.result.Outcome;
import lastinch.solver.result.PourResult;
import lastinch.solver.study.Pourer;
import lastinch.solver.study.RunCache;

/**
 * What may explain a casting: single causes, each over its range and beyond, by how well runs with
 * them come out as was found.
 *
 * @param found on the casting
 * @param planned what the plan as it stands would have looked like
 * @param plannedMisfit how far that is from what was found [-]
 * @param causes every cause at its best value, best first; those that fit as well as the first come
 *     in order of how usual they are
 * @param alike how many of them cannot be told apart from the best
 * @param explained whether the best comes out as was found at all
 * @param tell what would tell those alike apart, if anything does
 * @param runs made for all this
 */
public record Diagnosis(
    Observation found,
    BrokenOut planned,
    double plannedMisfit,
    List<Cause> causes,
    int alike,
    boolean explained,
    Optional<Tell> tell,
    int runs) {
  /** Values tried on each range before the best is closed in on. */
  private static final int SCAN = 17;

  private static final int CLOSER = 10;
  private static final double GOLDEN = 0.5 * (Math.sqrt(5.0) - 1.0);

  /** Misfits closer than this cannot be told apart: two units of how well things are read. */
  static final double ALIKE = 4.0;

  /** A single thing found may be off by three units before a cause does not explain it. */
  static final double EXPLAINS = 9.0;

  public Diagnosis {
    Objects.requireNonNull(found, "found");
    Objects.requireNonNull(planned, "planned");
    causes = List.copyOf(causes);
    Objects.requireNonNull(tell, "tell");
  }

  /** Whether the plan as it stands explains what was found as well as any cause. */
  public boolean asPlanned() {
    return explained && plannedMisfit <= causes.get(0).misfit() + ALIKE && plannedMisfit < EXPLAINS;
  }

  /** Whether the best cause comes plainly nearer to what was found than the plan does. */
  public boolean isNearer() {
    return causes.get(0).misfit() < plannedMisfit - ALIKE;
  }

  /**
   * A cause at the value that fits best.
   *
   * @param suspect what was other than planned
   * @param value it must have had
   * @param seen what such a run looks like
   * @param misfit squares of distances from what was found [-]
   * @param worst of what was found, and its misfit
   */
  public record Cause(
      CandidateCause suspect,
      double value,
      BrokenOut seen,
      double misfit,
      Map.Entry<Observation.Kind, Double> worst) {
    public Cause {
      Objects.requireNonNull(suspect, "suspect");
      Objects.requireNonNull(seen, "seen");
      Objects.requireNonNull(worst, "worst");
    }

    /** Whether everything that was found comes out so. */
    public boolean explains() {
      return worst.getValue() <= EXPLAINS;
    }
  }

  /**
   * What would tell causes apart.
   *
   * @param look something else to look for on the casting, with the numbers of the two causes
   * @param measure a cause to find out about, by its number
   */
  public record Tell(Optional<Observation.Kind> look, int first, int second, int measure) {
    public Tell {
      Objects.requireNonNull(look, "look");
    }
  }

  /**
   * Runs that the search makes, as a rule.
   *
   * @param job the plan
   * @param asDrawn whether the model of the piece is poured as it was drawn
   */
  public static int usualRuns(PourCase job, boolean asDrawn) {
    return suspects(job, asDrawn).size() * (SCAN + CLOSER);
  }

  /** Where the model is poured as it was drawn, its thickness is no suspect. */
  private static List<CandidateCause> suspects(PourCase job, boolean asDrawn) {
    return CandidateCause.of(job).stream()
        .filter(s -> !asDrawn || !s.key().equals(CandidateCause.PIECE_THINNER))
        .toList();
  }

  /** Looks for causes where the stations of the piece are poured. */
  public static Diagnosis of(RunCache studies, Pourer.Run run, PourCase job, Observation found) {
    return of(studies, run, job, false, found);
  }

  /**
   * Looks for causes.
   *
   * @param studies gives threads, and says when to stop
   * @param run pours a job
   * @param job the plan
   * @param asDrawn whether the model of the piece is poured as it was drawn
   * @param found on the casting; without contradictions
   * @throws RunCache.Cancelled when stopped before its end
   */
  public static Diagnosis of(
      RunCache studies, Pourer.Run run, PourCase job, boolean asDrawn, Observation found) {
    BrokenOut planned = seen(studies, run, job, found);
    List<CandidateCause> suspects = suspects(job, asDrawn);
    studies.expect(usualRuns(job, asDrawn));
    List<Supplier<Search>> tasks = new ArrayList<>();
    for (CandidateCause suspect : suspects) {
      tasks.add(() -> new Search(studies, run, job, suspect, found));
    }
    List<Cause> causes = new ArrayList<>();
    for (Optional<Search> done : studies.all(tasks)) {
      causes.add(done.orElseThrow(RunCache.Cancelled::new).best());
    }
    causes.sort(Comparator.comparingDouble(Cause::misfit));
    double least = causes.get(0).misfit();
    int alike = (int) causes.stream().filter(c -> c.misfit() <= least + ALIKE).count();
    List<Cause> first = new ArrayList<>(causes.subList(0, alike));
    first.sort(Comparator.comparingDouble(c -> c.suspect().parts(c.value())));
    first.addAll(causes.subList(alike, causes.size()));
    return new Diagnosis(
        found,
        planned,
        sum(found.misfits(job, planned)),
        first,
        alike,
        first.get(0).explains(),
        alike > 1 ? Optional.of(tell(job, found, first.subList(0, alike))) : Optional.empty(),
        studies.runs());
  }

  private static BrokenOut seen(RunCache studies, Pourer.Run run, PourCase job, Observation found) {
    PourResult result = run.of(job, studies::stopRequested);
    if (result.outcome() instanceof Outcome.Cancelled) {
      throw new RunCache.Cancelled();
    }
    studies.count();
    return BrokenOut.of(job, result, found.limb());
  }

  private static double sum(Map<Observation.Kind, Double> misfits) {
    return misfits.values().stream().mapToDouble(Double::doubleValue).sum();
  }

  /**
   * Something else on the casting where the first two differ by three units, else a measurement.
   */
  private static Tell tell(PourCase job, Observation found, List<Cause> alike) {
    int measure = 0;
    for (int i = 1; i < Math.min(3, alike.size()); i++) {
      if (effort(alike.get(i)) < effort(alike.get(measure))) {
        measure = i;
      }
    }
    Optional<Observation.Kind> look = Optional.empty();
    double most = EXPLAINS;
    for (Observation.Kind kind : Observation.Kind.values()) {
      double apart = found.given().contains(kind) ? 0.0 : apart(job, kind, alike);
      if (apart > most) {
        most = apart;
        look = Optional.of(kind);
      }
    }
    return new Tell(look, 0, 1, measure);
  }

  private static double effort(Cause cause) {
    return cause.suspect().effort().weight();
  }

  private static double apart(PourCase job, Observation.Kind kind, List<Cause> alike) {
    BrokenOut a = alike.get(0).seen();
    BrokenOut b = alike.get(1).seen();
    double places =
        switch (kind) {
          case STOPPED -> (a.stopped() - b.stopped()) / Observation.RULER;
          case LAP ->
              a.plainLaps().isPresent() && b.plainLaps().isPresent()
                  ? (a.plainLaps().getAsDouble() - b.plainLaps().getAsDouble()) / Observation.VAGUE
                  : 0.0;
          case ROUNDED_FROM ->
              a.roundedFrom().isPresent() && b.roundedFrom().isPresent()
                  ? (a.roundedFrom().getAsDouble() - b.roundedFrom().getAsDouble())
                      / Observation.VAGUE
                  : 0.0;
          case WEIGHED -> (a.mass() - b.mass()) / (Observation.WEIGHT * BrokenOut.wholeMass(job));
          case LIP, GATE_CLOSED -> 0.0;
        };
    return places * places;
  }

  /** Search along one suspect: a scan, then closing in on its best. */
  private static final class Search {
    private final RunCache studies;
    private final Pourer.Run run;
    private final PourCase job;
    private final CandidateCause suspect;
    private final Observation found;
    private final TreeMap<Double, Cause> tried = new TreeMap<>();

    Search(
        RunCache studies, Pourer.Run run, PourCase job, CandidateCause suspect, Observation found) {
      this.studies = studies;
      this.run = run;
      this.job = job;
      this.suspect = suspect;
      this.found = found;
      for (int i = 0; i < SCAN; i++) {
        misfit(i / (SCAN - 1.0));
      }
      double middle = bestShare();
      double low = Math.max(0.0, middle - 1.0 / (SCAN - 1.0));
      double high = Math.min(1.0, middle + 1.0 / (SCAN - 1.0));
      double left = high - GOLDEN * (high - low);
      double right = low + GOLDEN * (high - low);
      for (int i = 0; i < CLOSER; i++) {
        // the inner value that stays is not poured again
        if (misfit(left) <= misfit(right)) {
          high = right;
          right = left;
          left = high - GOLDEN * (high - low);
        } else {
          low = left;
          left = right;
          right = low + GOLDEN * (high - low);
        }
      }
    }

    Cause best() {
      return tried.get(bestShare());
    }

    private double bestShare() {
      double best = 0.0;
      double least = Double.POSITIVE_INFINITY;
      for (Map.Entry<Double, Cause> e : tried.entrySet()) {
        if (e.getValue().misfit() < least) {
          least = e.getValue().misfit();
          best = e.getKey();
        }
      }
      return best;
    }

    private double misfit(double share) {
      return tried.computeIfAbsent(share, this::cause).misfit();
    }

    private Cause cause(double share) {
      double value = suspect.at(share);
      BrokenOut seen = seen(studies, run, suspect.set(job, value), found);
      Map<Observation.Kind, Double> misfits = new EnumMap<>(found.misfits(job, seen));
      Map.Entry<Observation.Kind, Double> worst =
          misfits.entrySet().stream().max(Map.Entry.comparingByValue()).orElseThrow();
      return new Cause(
          suspect, value, seen, sum(misfits), Map.entry(worst.getKey(), worst.getValue()));
    }
  }
}
