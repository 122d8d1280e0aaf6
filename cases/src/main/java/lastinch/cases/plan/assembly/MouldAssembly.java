package lastinch.cases.plan.assembly;

import java.util.Optional;
import lastinch.cases.plan.Materials;
import lastinch.cases.units.Dimension;
import lastinch.cases.units.Unit;
import lastinch.solver.casting.Flask;
import lastinch.solver.casting.Mould;
import lastinch.solver.casting.Orientation;
import lastinch.solver.material.Band;
import lastinch.solver.material.Citation;
import lastinch.solver.material.MouldFamily;
import lastinch.solver.material.MouldMedium;

/** Builds the mould. */
public final class MouldAssembly {
  private final Fields mould;
  private final String alloy;
  private final Materials materials;
  private final Assumptions taken;

  /**
   * An assembly.
   *
   * @param alloy name of the metal that comes in
   */
  MouldAssembly(Fields mould, String alloy, Materials materials, Assumptions taken) {
    this.mould = mould;
    this.alloy = alloy;
    this.materials = materials;
    this.taken = taken;
  }

  /** What the case says about how the mould was made. */
  public static Materials.Make make(Fields mould) {
    return new Materials.Make(mould.word("bonded with"), mould.word("rammed"));
  }

  Mould build() {
    MouldMedium medium =
        withPull(
            materials
                .medium(mould.typed("material").orElseThrow(), make(mould), alloy)
                .orElseThrow());
    MouldFamily family = medium.family();
    Unit celsius = Dimension.HEAT.unit("degC").orElseThrow();
    Band heat =
        taken.take(
            mould,
            "mould",
            "temperature",
            Dimension.HEAT,
            UsualValues.mouldHeat(family, celsius::toSi),
            UsualValues.mouldSpread(family, mould.si("temperature").orElse(0.0)));
    return new Mould(
        medium,
        heat,
        wall(family),
        mould.group("flask").map(this::flask),
        mould.compound("stands", Orientation.class).orElseThrow(),
        crack(family),
        mould.si("air behind").orElse(UsualValues.ATMOSPHERE));
  }

  private Band wall(MouldFamily family) {
    if (family == MouldFamily.SHELL) {
      return taken.take(mould, "mould", "wall", Dimension.LENGTH, UsualValues.SHELL_WALL);
    }
    return Band.typed(mould.si("wall").orElse(0.0));
  }

  private Band crack(MouldFamily family) {
    if (family != MouldFamily.SAND && family != MouldFamily.PERMANENT) {
      return Band.typed(0.0);
    }
    return taken.take(
        mould, "mould", "parting crack", Dimension.LENGTH, materials.common().partingCrack());
  }

  private Flask flask(Fields flask) {
    Materials.FlaskSteel steel =
        materials.flaskSteel(flask.word("steel").orElse("stainless")).orElseThrow();
    Band wall = taken.take(flask, "mould/flask", "wall", Dimension.LENGTH, UsualValues.FLASK_WALL);
    double inside = flask.need("inside");
    Band usualEdge = UsualValues.EDGE_TO_WALL;
    Band edge =
        taken.take(
            mould,
            "mould",
            "nearest edge to wall",
            Dimension.LENGTH,
            usualEdge.value() < inside / 2 ? usualEdge : Band.typed(inside / 4));
    Band out =
        taken.take(
            mould,
            "mould",
            "out of kiln to first metal",
            Dimension.TIME,
            UsualValues.OUT_OF_KILN,
            20.0);
    return new Flask(
        inside,
        flask.need("tall"),
        wall.value(),
        edge,
        out,
        steel.density(),
        steel.specificHeat(),
        steel.emissivity());
  }

  /** The medium with the person's own figure for how hard it pulls heat. */
  private MouldMedium withPull(MouldMedium m) {
    Optional<Band> own =
        mould
            .amount("mould pulls heat")
            .map(q -> new Band(q.best().si(), q.low(), q.high(), Citation.TYPED));
    if (own.isEmpty()) {
      return m;
    }
    return m.with(MouldMedium.Figure.CONTACT_LIQUID, own.get());
  }
}
