package lastinch.solver.diagnosis;

import java.util.List;
import java.util.Objects;
import java.util.function.BinaryOperator;
import java.util.function.Function;
import lastinch.solver.casting.Flask;
import lastinch.solver.casting.Metal;
import lastinch.solver.casting.Mould;
import lastinch.solver.casting.Pour;
import lastinch.solver.casting.PourCase;
import lastinch.solver.casting.gating.Gating;
import lastinch.solver.casting.gating.Sprue;
import lastinch.solver.levers.ChangedJob;
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
          new PlanPart("piece", PourCase::piece, (a, b) -> ChangedJob.piece(a, b.piece())),
          new PlanPart("medium", PlanPart::medium, PlanPart::madeOf),
          new PlanPart(
              "mouldHeat",
              j -> List.of(j.mould().temperature().value(), outOfKiln(j)),
              PlanPart::asHot),
          new PlanPart(
              "stands",
              j -> j.mould().attitude(),
              (a, b) -> ChangedJob.mould(a, ChangedJob.attitude(a.mould(), b.mould().attitude()))),
          new PlanPart("sprue", PlanPart::sprue, PlanPart::sprued),
          new PlanPart(
              "gates",
              j ->
                  List.of(
                      j.gating().runner(),
                      j.gating().gates(),
                      j.gating().well(),
                      j.gating().sprue().into()),
              (a, b) -> ChangedJob.gating(a, gated(a.gating(), b.gating()))),
          new PlanPart(
              "vents",
              j -> List.of(j.gating().vents(), j.gating().overflows(), j.gating().feeders()),
              PlanPart::vented),
          new PlanPart("alloy", j -> j.metal().alloy().name(), PlanPart::ofMetal),
          new PlanPart(
              "reading",
              j -> j.metal().reading().value(),
              (a, b) -> ChangedJob.metal(a, ChangedJob.reading(a.metal(), b.metal().reading()))),
          new PlanPart("waiting", j -> j.metal().waiting().value(), PlanPart::waited),
          new PlanPart("pour", PlanPart::rate, PlanPart::poured));

  PlanPart {
    Objects.requireNonNull(key, "key");
    Objects.requireNonNull(part, "part");
    Objects.requireNonNull(taken, "taken");
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

  private static Object outOfKiln(PourCase job) {
    return job.mould().flask().map(f -> f.out().value());
  }

  private static PourCase madeOf(PourCase a, PourCase b) {
    Mould m = b.mould();
    Mould own = a.mould();
    return ChangedJob.mould(
        a,
        new Mould(
            m.medium(),
            own.temperature(),
            m.wallThickness(),
            m.flask(),
            own.attitude(),
            m.partingCrack(),
            m.behindPressure()));
  }

  private static PourCase asHot(PourCase a, PourCase b) {
    Mould hot = ChangedJob.temperature(a.mould(), b.mould().temperature());
    return ChangedJob.mould(
        a,
        ChangedJob.flask(
            hot,
            hot.flask()
                .map(f -> b.mould().flask().map(o -> ChangedJob.out(f, o.out())).orElse(f))));
  }

  private static Object sprue(PourCase job) {
    Sprue s = job.gating().sprue();
    return List.of(job.gating().cup(), s.tall(), s.top(), s.foot());
  }

  /** Cup and sprue, but the sprue opens into what it opened into before. */
  private static PourCase sprued(PourCase a, PourCase b) {
    Gating g = a.gating();
    Sprue s = b.gating().sprue();
    Sprue sprue = new Sprue(s.tall(), s.top(), s.foot(), g.sprue().into());
    return ChangedJob.gating(
        a,
        new Gating(
            b.gating().cup(),
            sprue,
            g.well(),
            g.runner(),
            g.gates(),
            g.vents(),
            g.overflows(),
            g.feeders()));
  }

  private static Gating gated(Gating a, Gating b) {
    return new Gating(
        a.cup(),
        intoOf(a.sprue(), b.sprue()),
        b.well(),
        b.runner(),
        b.gates(),
        a.vents(),
        a.overflows(),
        a.feeders());
  }

  private static Sprue intoOf(Sprue a, Sprue b) {
    return new Sprue(a.tall(), a.top(), a.foot(), b.into());
  }

  private static PourCase vented(PourCase a, PourCase b) {
    Gating g = a.gating();
    return ChangedJob.gating(
        a,
        new Gating(
            g.cup(),
            g.sprue(),
            g.well(),
            g.runner(),
            g.gates(),
            b.gating().vents(),
            b.gating().overflows(),
            b.gating().feeders()));
  }

  /** How hard a mould pulls heat goes with the metal where both moulds are of one kind. */
  private static PourCase ofMetal(PourCase a, PourCase b) {
    PourCase other = ChangedJob.metal(a, ChangedJob.alloy(a.metal(), b.metal().alloy()));
    return a.mould().medium().name().equals(b.mould().medium().name())
        ? ChangedJob.mould(other, ChangedJob.medium(other.mould(), b.mould().medium()))
        : other;
  }

  private static PourCase waited(PourCase a, PourCase b) {
    return ChangedJob.metal(a, ChangedJob.waiting(a.metal(), b.metal().waiting()));
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
      Band seconds = ChangedJob.times(e.seconds(), factor);
      return ChangedJob.pour(a, new Pour.Empties(seconds));
    }
    return ChangedJob.pour(a, b.pour());
  }

  /** The plan with the larger melt of two, poured at its own rate. */
  static PourCase withEnoughMetal(PourCase a, PourCase b) {
    Metal own = a.metal();
    return b.metal().melted() > own.melted()
        ? ChangedJob.meltedAtSameRate(a, b.metal().melted())
        : a;
  }
}
