package lastinch.solver.decide;

import java.util.List;
import java.util.Objects;
import java.util.function.BinaryOperator;
import java.util.function.Function;
import lastinch.solver.casting.Flask;
import lastinch.solver.casting.Gating;
import lastinch.solver.casting.Metal;
import lastinch.solver.casting.Mould;
import lastinch.solver.casting.Pour;
import lastinch.solver.casting.PourCase;
import lastinch.solver.casting.Sprue;
import lastinch.solver.material.Band;
import lastinch.solver.material.MouldMedium;

/**
 * A part of a plan that can be taken over from another plan by itself.
 *
 * @param key name of its words
 * @param part what is looked at to tell whether two plans differ in it
 * @param taken the first plan with this part of the second
 */
record Ingredient(String key, Function<PourCase, Object> part, BinaryOperator<PourCase> taken) {
  /** All parts, in the order of the day. */
  static final List<Ingredient> ALL =
      List.of(
          new Ingredient("piece", PourCase::piece, (a, b) -> Changed.piece(a, b.piece())),
          new Ingredient("medium", Ingredient::medium, Ingredient::madeOf),
          new Ingredient(
              "mouldHeat",
              j -> List.of(j.mould().temperature().value(), outOfKiln(j)),
              Ingredient::asHot),
          new Ingredient(
              "stands",
              j -> j.mould().attitude(),
              (a, b) -> Changed.mould(a, Changed.attitude(a.mould(), b.mould().attitude()))),
          new Ingredient("sprue", Ingredient::sprue, Ingredient::sprued),
          new Ingredient(
              "gates",
              j ->
                  List.of(
                      j.gating().runner(),
                      j.gating().gates(),
                      j.gating().well(),
                      j.gating().sprue().into()),
              (a, b) -> Changed.gating(a, gated(a.gating(), b.gating()))),
          new Ingredient(
              "vents",
              j -> List.of(j.gating().vents(), j.gating().overflows(), j.gating().feeders()),
              Ingredient::vented),
          new Ingredient("alloy", j -> j.metal().alloy().name(), Ingredient::ofMetal),
          new Ingredient(
              "reading",
              j -> j.metal().reading().value(),
              (a, b) -> Changed.metal(a, Changed.reading(a.metal(), b.metal().reading()))),
          new Ingredient("waiting", j -> j.metal().waiting().value(), Ingredient::waited),
          new Ingredient("pour", Ingredient::rate, Ingredient::poured));

  Ingredient {
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
    return Changed.mould(
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
    Mould hot = Changed.temperature(a.mould(), b.mould().temperature());
    return Changed.mould(
        a,
        Changed.flask(
            hot,
            hot.flask().map(f -> b.mould().flask().map(o -> Changed.out(f, o.out())).orElse(f))));
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
    return Changed.gating(
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
    return Changed.gating(
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
    PourCase other = Changed.metal(a, Changed.alloy(a.metal(), b.metal().alloy()));
    return a.mould().medium().name().equals(b.mould().medium().name())
        ? Changed.mould(other, Changed.medium(other.mould(), b.mould().medium()))
        : other;
  }

  private static PourCase waited(PourCase a, PourCase b) {
    return Changed.metal(a, Changed.waiting(a.metal(), b.metal().waiting()));
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
      Band seconds = Changed.times(e.seconds(), factor);
      return Changed.pour(a, new Pour.Empties(seconds));
    }
    return Changed.pour(a, b.pour());
  }

  /** The plan with the larger melt of two, poured at its own rate. */
  static PourCase withEnoughMetal(PourCase a, PourCase b) {
    Metal own = a.metal();
    return b.metal().melted() > own.melted() ? Changed.meltedAtSameRate(a, b.metal().melted()) : a;
  }
}
