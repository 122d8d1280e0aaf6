package lastinch.solver.diagnosis;

import java.util.List;
import java.util.Objects;
import java.util.function.BinaryOperator;
import java.util.function.Function;
import java.util.stream.Stream;
import lastinch.solver.casting.Flask;
import lastinch.solver.casting.Metal;
import lastinch.solver.casting.Mould;
import lastinch.solver.casting.Pour;
import lastinch.solver.casting.PourCase;
import lastinch.solver.casting.gating.Gating;
import lastinch.solver.casting.gating.Sprue;
import lastinch.solver.levers.JobParameter;
import lastinch.solver.material.Band;
import lastinch.solver.material.MouldMedium;

/**
 * A part of a plan that can be taken over from another plan by itself.
 *
 * @param key name of its words
 * @param part what is looked at to tell whether two plans differ in it
 * @param taken the first plan with this part of the second
 */
record PlanPart(String key, Function<PourCase, Object> part, BinaryOperator<PourCase> taken) {
  /** All parts, in the order of the day. */
  static final List<PlanPart> ALL =
      List.of(
          new PlanPart("piece", PourCase::piece, (a, b) -> a.withPiece(b.piece())),
          new PlanPart("medium", PlanPart::medium, PlanPart::madeOf),
          figures("mouldHeat", JobParameter.MOULD_TEMPERATURE, JobParameter.OUT_OF_KILN),
          new PlanPart(
              "stands",
              j -> j.mould().attitude(),
              (a, b) -> a.withMould(a.mould().withAttitude(b.mould().attitude()))),
          new PlanPart("sprue", PlanPart::sprue, PlanPart::sprued),
          new PlanPart(
              "gates",
              j ->
                  List.of(
                      j.gating().runner(),
                      j.gating().gates(),
                      j.gating().well(),
                      j.gating().sprue().into()),
              (a, b) -> a.withGating(gated(a.gating(), b.gating()))),
          new PlanPart(
              "vents",
              j -> List.of(j.gating().vents(), j.gating().overflows(), j.gating().feeders()),
              PlanPart::vented),
          new PlanPart("alloy", j -> j.metal().alloy().name(), PlanPart::ofMetal),
          figures("reading", JobParameter.READING),
          figures("waiting", JobParameter.WAITING),
          new PlanPart("pour", PlanPart::rate, PlanPart::poured));

  PlanPart {
    Objects.requireNonNull(key, "key");
    Objects.requireNonNull(part, "part");
    Objects.requireNonNull(taken, "taken");
  }

  private static PlanPart figures(String key, JobParameter... all) {
    return new PlanPart(
        key,
        j -> Stream.of(all).map(p -> p.in(j).map(Band::value)).toList(),
        (a, b) -> {
          PourCase taken = a;
          for (JobParameter p : all) {
            taken =
                p.in(a).isPresent() && p.in(b).isPresent() ? p.put(taken, p.in(b).get()) : taken;
          }
          return taken;
        });
  }

  /** Whether two plans differ in it. */
  boolean differs(PourCase a, PourCase b) {
    return !part.apply(a).equals(part.apply(b));
  }

  /** The first plan with this part of the second, and enough metal for either. */
  PourCase from(PourCase a, PourCase b) {
    return taken.apply(a, b);
  }

  /** What a mould is made of: curves read twice from one file are not the same object. */
  private static Object medium(PourCase job) {
    MouldMedium m = job.mould().medium();
    return List.of(
        m.name(),
        m.contactLiquid().value(),
        m.contactGap().value(),
        m.density().value(),
        m.permeability().value(),
        job.mould().wallThickness().value(),
        job.mould().flask().map(Flask::inside));
  }

  private static PourCase madeOf(PourCase a, PourCase b) {
    Mould own = a.mould();
    return a.withMould(b.mould().withTemperature(own.temperature()).withAttitude(own.attitude()));
  }

  private static Object sprue(PourCase job) {
    Sprue s = job.gating().sprue();
    return List.of(job.gating().cup(), s.tall(), s.top(), s.foot());
  }

  /** Cup and sprue, but the sprue opens into what it opened into before. */
  private static PourCase sprued(PourCase a, PourCase b) {
    Sprue sprue = b.gating().sprue().withInto(a.gating().sprue().into());
    return a.withGating(a.gating().withCup(b.gating().cup()).withSprue(sprue));
  }

  private static Gating gated(Gating a, Gating b) {
    return a.withSprue(a.sprue().withInto(b.sprue().into()))
        .withWell(b.well())
        .withRunner(b.runner())
        .withGates(b.gates());
  }

  private static PourCase vented(PourCase a, PourCase b) {
    Gating other = b.gating();
    return a.withGating(
        a.gating()
            .withVents(other.vents())
            .withOverflows(other.overflows())
            .withFeeders(other.feeders()));
  }

  /** How hard a mould pulls heat goes with the metal where both moulds are of one kind. */
  private static PourCase ofMetal(PourCase a, PourCase b) {
    PourCase other = a.withMetal(a.metal().withAlloy(b.metal().alloy()));
    return a.mould().medium().name().equals(b.mould().medium().name())
        ? other.withMould(other.mould().withMedium(b.mould().medium()))
        : other;
  }

  /** What the hand does, apart from how much is melted. */
  private static Object rate(PourCase job) {
    if (job.pour() instanceof Pour.Empties e) {
      return e.rate(job.metal().melted(), 0.0);
    }
    return job.pour();
  }

  /** The other hand: as many kilograms a second. */
  private static PourCase poured(PourCase a, PourCase b) {
    if (b.pour() instanceof Pour.Empties e) {
      double factor = a.metal().melted() / b.metal().melted();
      Band seconds = e.seconds().times(factor);
      return a.withPour(new Pour.Empties(seconds));
    }
    return a.withPour(b.pour());
  }

  /** The plan with the larger melt of two, poured at its own rate. */
  static PourCase withEnoughMetal(PourCase a, PourCase b) {
    Metal own = a.metal();
    return b.metal().melted() > own.melted() ? JobParameter.MELTED.move(a, b.metal().melted()) : a;
  }
}
