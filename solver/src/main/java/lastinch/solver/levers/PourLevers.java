package lastinch.solver.levers;

import static lastinch.solver.levers.LeverMaker.lever;

import java.util.List;
import lastinch.solver.casting.Metal;
import lastinch.solver.casting.Pour;
import lastinch.solver.casting.PourCase;
import lastinch.solver.levers.Bound.Reason;
import lastinch.solver.material.Alloy;
import lastinch.solver.material.Band;
import lastinch.solver.shop.LipLoss;

/** Levers at the furnace: how fast, how hot, how soon, how much, which metal. */
final class PourLevers {
  /** Slowest and fastest one person pours from tongs [kg/s]; common practice, no source. */
  private static final double TRICKLE = 0.1;

  private static final double BRISK = 1.2;

  /** Quickest skim and walk, and the slowest worth trying [s]; common practice, no source. */
  private static final double QUICK_WALK = 5.0;

  private static final double SLOW_WALK = 60.0;

  /** A crucible is filled to eight tenths; common practice, no source. */
  private static final double CRUCIBLE_FILL = 0.8;

  /** Metal one person lifts with ease [kg]; common practice, no source. */
  private static final double LIFTED = 6.0;

  /** Nobody reads a metal by more than this above its usual range [K]; the limit of case files. */
  private static final double FAR_TOO_HOT = 300.0;

  private static final double TENTH = 0.1;

  static final List<LeverEntry> ENTRIES =
      List.of(
          new LeverEntry("emptiesIn", (job, owned) -> emptiesIn(job)),
          new LeverEntry("cupFullAfter", (job, owned) -> cupFullAfter(job)),
          new LeverEntry("poursAt", (job, owned) -> poursAt(job)),
          new LeverEntry("reading", PourLevers::reading),
          new LeverEntry("waiting", (job, owned) -> waiting(job)),
          new LeverEntry("melted", PourLevers::melted),
          new LeverEntry("alloy", PourLevers::alloy),
          new LeverEntry("flowStop", (job, owned) -> flowStop(job)));

  private PourLevers() {}

  private static List<Lever> emptiesIn(PourCase job) {
    return job.pour() instanceof Pour.Empties ? seconds("emptiesIn", job) : List.of();
  }

  private static List<Lever> cupFullAfter(PourCase job) {
    return job.pour() instanceof Pour.Both || job.pour() instanceof Pour.CupFull
        ? seconds("cupFullAfter", job)
        : List.of();
  }

  private static List<Lever> seconds(String key, PourCase job) {
    double melted = job.metal().melted();
    double now = JobParameter.POUR_SECONDS.in(job).orElseThrow().value();
    return List.of(
        lever(key, JobParameter.POUR_SECONDS, job)
            .physical(melted / 50.0, melted / 0.002)
            .practical(
                Bound.practice(Math.min(now, melted / BRISK), Reason.BRISK_HAND),
                Bound.practice(Math.max(now, melted / TRICKLE), Reason.TRICKLE))
            .marks(0.0, TENTH)
            .make());
  }

  private static List<Lever> poursAt(PourCase job) {
    if (!(job.pour() instanceof Pour.AtRate now)) {
      return List.of();
    }
    double rate = now.kilogramsPerSecond().value();
    return List.of(
        lever("poursAt", JobParameter.POUR_RATE, job)
            .physical(0.002, 50.0)
            .practical(
                Bound.practice(Math.min(rate, TRICKLE), Reason.TRICKLE),
                Bound.practice(Math.max(rate, BRISK), Reason.BRISK_HAND))
            .marks(0.0, 0.01)
            .make());
  }

  private static List<Lever> reading(PourCase job, Owned owned) {
    Metal metal = job.metal();
    Alloy alloy = metal.alloy();
    double now = metal.reading().value();
    double coldest = Math.max(alloy.pourTemperature().low(), alloy.liquidus() + 1.0);
    return List.of(
        lever("reading", JobParameter.READING, job)
            .physical(alloy.liquidus() + 1.0, alloy.pourTemperature().high() + FAR_TOO_HOT)
            .practical(
                new Bound(
                    Math.min(now, coldest),
                    Reason.METAL_SLUGGISH,
                    alloy.pourTemperature().source()),
                new Bound(
                    Math.max(now, alloy.pourTemperature().high()),
                    Reason.METAL_GASSES,
                    alloy.pourTemperature().source()))
            .marks(owned.marks().heatZero(), owned.marks().heat())
            .make());
  }

  private static List<Lever> waiting(PourCase job) {
    double now = job.metal().waiting().value();
    return List.of(
        lever("waiting", JobParameter.WAITING, job)
            .physical(0.0, 3600.0)
            .practical(
                Bound.practice(Math.min(now, QUICK_WALK), Reason.WALK),
                Bound.practice(Math.max(now, SLOW_WALK), Reason.PATIENCE))
            .marks(0.0, 1.0)
            .make());
  }

  private static List<Lever> melted(PourCase job, Owned owned) {
    double now = job.metal().melted();
    double most = owned.largestCrucible().orElse(LIFTED / CRUCIBLE_FILL) * CRUCIBLE_FILL;
    return List.of(
        lever("melted", JobParameter.MELTED, job)
            .physical(0.01, 500.0)
            .practical(
                Bound.practice(0.5 * now, Reason.TOO_LITTLE),
                Bound.practice(Math.max(now, most), Reason.CRUCIBLE))
            .marks(0.0, 0.05)
            .make());
  }

  private static List<Lever> alloy(PourCase job, Owned owned) {
    List<Owned.OtherMetal> metals =
        Choices.withNow(
            owned.metals(),
            m -> m.alloy().name().equals(job.metal().alloy().name()),
            new Owned.OtherMetal(job.metal().alloy(), job.mould().medium()));
    if (metals.size() < 2) {
      return List.of();
    }
    return List.of(
        lever("alloy", ParameterUnit.CHOICE, 0.0, (j, v) -> poured(j, metals.get(v.intValue())))
            .choices(metals.stream().map(m -> m.alloy().name()).toList())
            .effort(Effort.OTHER_METAL)
            .make());
  }

  /** Another metal, read as hot as before where it is poured so hot, else at the nearest usual. */
  private static PourCase poured(PourCase job, Owned.OtherMetal other) {
    Alloy alloy = other.alloy();
    double reading = job.metal().reading().value();
    double usual =
        Math.max(
            alloy.liquidus() + 1.0,
            Math.min(
                alloy.pourTemperature().high(), Math.max(alloy.pourTemperature().low(), reading)));
    boolean same = alloy.name().equals(job.metal().alloy().name());
    Band read = job.metal().reading().shiftedTo(same ? reading : usual);
    Metal metal = LipLoss.exchanged(job.metal(), alloy, read);
    return job.withMould(job.mould().withMedium(other.medium())).withMetal(metal);
  }

  private static List<Lever> flowStop(PourCase job) {
    Band band = job.metal().alloy().flowStop();
    return List.of(
        lever("flowStop", JobParameter.FLOW_STOP, job)
            .physical(0.02, 1.0)
            .practical(
                new Bound(band.low(), Reason.BAND, band.source()),
                new Bound(band.high(), Reason.BAND, band.source()))
            .marks(0.0, 0.01)
            .effort(Effort.NOT_BY_HAND)
            .make());
  }
}
