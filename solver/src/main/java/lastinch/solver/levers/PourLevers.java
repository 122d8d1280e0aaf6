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
public final class PourLevers {
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
    if (!(job.pour() instanceof Pour.Empties now)) {
      return List.of();
    }
    return List.of(
        seconds("emptiesIn", now.seconds(), job.metal().melted())
            .sets(
                (j, v) ->
                    j.pour() instanceof Pour.Empties e
                        ? j.withPour(new Pour.Empties(e.seconds().scaledTo(v)))
                        : j));
  }

  private static List<Lever> cupFullAfter(PourCase job) {
    boolean both = job.pour() instanceof Pour.Both;
    if (!both && !(job.pour() instanceof Pour.CupFull)) {
      return List.of();
    }
    Band now =
        job.pour() instanceof Pour.Both b ? b.cupFull() : ((Pour.CupFull) job.pour()).seconds();
    return List.of(
        seconds("cupFullAfter", now, job.metal().melted())
            .sets(
                (j, v) -> {
                  if (j.pour() instanceof Pour.Both b) {
                    return j.withPour(new Pour.Both(b.empties(), b.cupFull().scaledTo(v)));
                  }
                  return j.pour() instanceof Pour.CupFull c
                      ? j.withPour(new Pour.CupFull(c.seconds().scaledTo(v)))
                      : j;
                }));
  }

  private static LeverMaker seconds(String key, Band now, double melted) {
    return lever(key, LeverUnit.TIME, now.value())
        .band(now)
        .physical(melted / 50.0, melted / 0.002)
        .practical(
            Bound.practice(Math.min(now.value(), melted / BRISK), Reason.BRISK_HAND),
            Bound.practice(Math.max(now.value(), melted / TRICKLE), Reason.TRICKLE))
        .marks(0.0, TENTH);
  }

  private static List<Lever> poursAt(PourCase job) {
    if (!(job.pour() instanceof Pour.AtRate now)) {
      return List.of();
    }
    double rate = now.kilogramsPerSecond().value();
    return List.of(
        lever("poursAt", LeverUnit.MASS_RATE, rate)
            .band(now.kilogramsPerSecond())
            .physical(0.002, 50.0)
            .practical(
                Bound.practice(Math.min(rate, TRICKLE), Reason.TRICKLE),
                Bound.practice(Math.max(rate, BRISK), Reason.BRISK_HAND))
            .marks(0.0, 0.01)
            .sets(
                (j, v) ->
                    j.pour() instanceof Pour.AtRate r
                        ? j.withPour(new Pour.AtRate(r.kilogramsPerSecond().scaledTo(v)))
                        : j));
  }

  private static List<Lever> reading(PourCase job, Owned owned) {
    Metal metal = job.metal();
    Alloy alloy = metal.alloy();
    double now = metal.reading().value();
    double coldest = Math.max(alloy.pourTemperature().low(), alloy.liquidus() + 1.0);
    return List.of(
        lever("reading", LeverUnit.HEAT, now)
            .band(metal.reading())
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
            .sets((j, v) -> j.withMetal(j.metal().withReading(j.metal().reading().shiftedTo(v)))));
  }

  private static List<Lever> waiting(PourCase job) {
    double now = job.metal().waiting().value();
    return List.of(
        lever("waiting", LeverUnit.TIME, now)
            .band(job.metal().waiting())
            .physical(0.0, 3600.0)
            .practical(
                Bound.practice(Math.min(now, QUICK_WALK), Reason.WALK),
                Bound.practice(Math.max(now, SLOW_WALK), Reason.PATIENCE))
            .marks(0.0, 1.0)
            .sets(
                (j, v) -> j.withMetal(j.metal().withWaiting(atLeastZero(j.metal().waiting(), v)))));
  }

  private static Band atLeastZero(Band band, double value) {
    Band moved = band.shiftedTo(value);
    return new Band(value, Math.max(0.0, moved.low()), moved.high(), moved.source());
  }

  private static List<Lever> melted(PourCase job, Owned owned) {
    double now = job.metal().melted();
    double most = owned.largestCrucible().orElse(LIFTED / CRUCIBLE_FILL) * CRUCIBLE_FILL;
    return List.of(
        lever("melted", LeverUnit.MASS, now)
            .physical(0.01, 500.0)
            .practical(
                Bound.practice(0.5 * now, Reason.TOO_LITTLE),
                Bound.practice(Math.max(now, most), Reason.CRUCIBLE))
            .marks(0.0, 0.05)
            .sets(PourLevers::meltedAtSameRate));
  }

  /**
   * The job with another weight melted, poured as many kilograms a second as before.
   *
   * @param melted [kg]
   */
  public static PourCase meltedAtSameRate(PourCase job, double melted) {
    double factor = melted / job.metal().melted();
    PourCase more = job.withMetal(LipLoss.otherMass(job.metal(), melted));
    if (job.pour() instanceof Pour.Empties e) {
      return more.withPour(new Pour.Empties(e.seconds().times(factor)));
    }
    if (job.pour() instanceof Pour.Both b) {
      return more.withPour(new Pour.Both(b.empties().times(factor), b.cupFull()));
    }
    return more;
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
        lever("alloy", LeverUnit.CHOICE, 0.0)
            .choices(metals.stream().map(m -> m.alloy().name()).toList())
            .effort(Effort.OTHER_METAL)
            .sets((j, v) -> poured(j, metals.get((int) v))));
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
        lever("flowStop", LeverUnit.SHARE, band.value())
            .band(band)
            .physical(0.02, 1.0)
            .practical(
                new Bound(band.low(), Reason.BAND, band.source()),
                new Bound(band.high(), Reason.BAND, band.source()))
            .marks(0.0, 0.01)
            .effort(Effort.NOT_BY_HAND)
            .sets(
                (j, v) ->
                    j.withMetal(
                        j.metal()
                            .withAlloy(
                                j.metal()
                                    .alloy()
                                    .with(
                                        Alloy.Figure.FLOW_STOP,
                                        j.metal().alloy().flowStop().at(v))))));
  }
}
