package lastinch.cases.plan.check;

import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import lastinch.cases.format.Problems;
import lastinch.cases.plan.ShopFile;
import lastinch.cases.plan.assembly.Fields;
import lastinch.cases.schema.Limits;
import lastinch.cases.units.Dimension;
import lastinch.cases.units.Unit;
import lastinch.solver.casting.Orientation;

/** Whether the piece with its gating fits the flask, and the metal the crucible. */
final class FlaskChecks {
  private static final double SLACK = 1e-6;
  private static final double LEAST_WATER = 0.25;
  private static final double MOST_WATER = 0.60;

  private final Fields mould;
  private final Problems problems;

  FlaskChecks(Fields mould, Problems problems) {
    this.mould = mould;
    this.problems = problems;
  }

  /** Cup, sprue, boss, piece and what is under the tip against the height of the flask. */
  void height(Fields gating, Optional<Fields> boss, Map<String, Double> lengths) {
    Optional<Fields> flask = mould.group("flask");
    Optional<Orientation> stands = mould.compound("stands", Orientation.class);
    OptionalDouble tall = flask.map(f -> f.si("tall")).orElse(OptionalDouble.empty());
    if (tall.isEmpty() || stands.isEmpty() || !stands.get().upright()) {
      return;
    }
    double stack = mould.si("under the tip").orElse(0.0);
    stack += gating.group("cup").map(c -> c.si("deep").orElse(0.0)).orElse(0.0);
    stack += gating.group("sprue").map(s -> s.si("tall").orElse(0.0)).orElse(0.0);
    stack += boss.map(b -> b.si("long").orElse(0.0)).orElse(0.0);
    stack += lengths.getOrDefault("", 0.0);
    if (stack > tall.getAsDouble() + SLACK) {
      Unit unit = flask.get().amount("tall").orElseThrow().best().unit();
      problems.add(flask.get().span("tall"), "wrong.flaskTooShortCup", Limits.show(stack, unit));
    }
  }

  /** Width of the piece and the distance to the wall against the inside of the flask. */
  void width(double widest) {
    Optional<Fields> flask = mould.group("flask");
    OptionalDouble inside = flask.map(f -> f.si("inside")).orElse(OptionalDouble.empty());
    if (inside.isEmpty()) {
      return;
    }
    Unit unit = flask.get().amount("inside").orElseThrow().best().unit();
    double edge = mould.si("nearest edge to wall").orElse(0.0);
    if (widest + 2 * edge > inside.getAsDouble() + SLACK) {
      problems.add(
          flask.get().span("inside"),
          "wrong.flaskTooNarrowPiece",
          Limits.show(widest + 2 * edge, unit));
    } else if (edge >= inside.getAsDouble() / 2) {
      problems.add(
          mould.span("nearest edge to wall"),
          "wrong.moreThanHalfFlask",
          Limits.show(0.0, inside.getAsDouble() / 2, unit));
    }
  }

  /** Water against powder. */
  void slurry() {
    OptionalDouble powder = mould.si("powder");
    OptionalDouble water = mould.si("water");
    if (powder.isEmpty() || water.isEmpty()) {
      return;
    }
    double ratio = water.getAsDouble() / powder.getAsDouble();
    if (!(ratio >= LEAST_WATER && ratio <= MOST_WATER)) {
      problems.add(mould.span("water"), "wrong.waterPowderDoNot", Math.round(100 * ratio));
    }
  }

  /** What is melted against the crucible it is said to be in. */
  void crucible(Fields metal, Optional<ShopFile> shop) {
    Optional<String> name = metal.word("crucible");
    OptionalDouble melted = metal.si("melted");
    if (name.isEmpty() || shop.isEmpty()) {
      return;
    }
    Optional<ShopFile.Crucible> found =
        shop.get().crucibles().stream()
            .filter(c -> c.name().equalsIgnoreCase(name.get()))
            .findFirst();
    if (found.isEmpty()) {
      problems.add(
          metal.span("crucible"),
          "wrong.yourShopFileNo",
          String.join(", ", shop.get().crucibles().stream().map(ShopFile.Crucible::name).toList()));
    } else if (melted.isPresent() && melted.getAsDouble() > found.get().holds()) {
      Unit unit = Dimension.MASS.unit("kg").orElseThrow();
      problems.add(
          metal.span("melted"),
          "wrong.crucibleHoldsNoMore",
          found.get().name(),
          Limits.show(found.get().holds(), unit));
    }
  }
}
