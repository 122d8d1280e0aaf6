package lastinch.cases.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import lastinch.cases.plan.assembly.UsualValues;
import lastinch.cases.units.Dimension;
import lastinch.cases.units.DisplayUnits;
import lastinch.cases.units.Unit;
import lastinch.solver.casting.PourCase;
import lastinch.solver.levers.Marks;
import lastinch.solver.levers.Owned;
import lastinch.solver.material.Alloy;
import lastinch.solver.material.Band;
import lastinch.solver.material.FreezingCurve;
import lastinch.solver.material.MouldFamily;
import lastinch.solver.material.MouldMedium;

/** What a plan's shop owns and what could be taken instead, as values for the solver's levers. */
public final class OwnedThings {
  /**
   * Metals further off than this are no substitute: density [-] and start of freezing [K]; ours.
   */
  private static final double LIKE_DENSITY = 0.12;

  private static final double LIKE_HEAT = 120.0;

  private static final String GYPSUM = "gypsum";

  private OwnedThings() {}

  /**
   * The things of a plan.
   *
   * @param plan a plan read to the end
   * @param materials metals and mould media there are
   * @param units in which answers are rounded
   */
  public static Owned of(Plan plan, Materials materials, DisplayUnits units) {
    Optional<ShopFile> shop = plan.shop();
    boolean gypsum =
        plan.pourCase().mould().medium().name().toLowerCase(Locale.ROOT).contains(GYPSUM);
    return new Owned(
        marks(units),
        shop.map(ShopFile::gateCutters).orElse(List.of()),
        shop.map(ShopFile::spruePins).orElse(List.of()).stream()
            .map(p -> new Owned.Pin(p.top(), p.foot()))
            .toList(),
        shop.map(ShopFile::runnerStrips).orElse(List.of()).stream()
            .map(s -> new Owned.Strip(s.wide(), s.deep()))
            .toList(),
        largest(shop),
        gypsum
            ? shop.map(ShopFile::investmentCeiling).orElse(OptionalDouble.empty())
            : OptionalDouble.empty(),
        metals(plan, materials),
        moulds(plan, materials));
  }

  /** Whole tens of degrees, millimetres and tenths; or whole tens of degF, 1/16 and 0.01 in. */
  public static Marks marks(DisplayUnits units) {
    Unit heat = units.unit(Dimension.HEAT);
    Unit length = units.unit(Dimension.LENGTH);
    boolean metric = units == DisplayUnits.METRIC;
    return new Marks(
        heat.toSi(0.0),
        heat.toSi(10.0) - heat.toSi(0.0),
        length.toSi(metric ? 1.0 : 0.0625),
        length.toSi(metric ? 0.1 : 0.01));
  }

  private static OptionalDouble largest(Optional<ShopFile> shop) {
    return shop.map(ShopFile::crucibles).orElse(List.of()).stream()
        .mapToDouble(ShopFile.Crucible::holds)
        .max();
  }

  private static List<Owned.OtherMetal> metals(Plan plan, Materials materials) {
    Alloy now = plan.pourCase().metal().alloy();
    List<Owned.OtherMetal> all = new ArrayList<>();
    for (String name : materials.alloyNames()) {
      Optional<Alloy> alloy = materials.alloy(name).filter(a -> isLike(a, now));
      Optional<MouldMedium> medium = materials.medium(plan.mouldWords(), make(plan), name);
      if (alloy.isPresent() && medium.isPresent()) {
        all.add(new Owned.OtherMetal(alloy.get(), medium.get()));
      }
    }
    return all;
  }

  private static boolean isLike(Alloy other, Alloy now) {
    double density = now.densitySolid().value();
    return !(other.freezing() instanceof FreezingCurve.Isothermal)
        && Math.abs(other.densitySolid().value() - density) < LIKE_DENSITY * density
        && Math.abs(other.liquidus() - now.liquidus()) < LIKE_HEAT;
  }

  private static Materials.Make make(Plan plan) {
    return new Materials.Make(
        Optional.ofNullable(plan.typed().get("mould/bonded with")),
        Optional.ofNullable(plan.typed().get("mould/rammed")));
  }

  private static List<Owned.OtherMould> moulds(Plan plan, Materials materials) {
    PourCase job = plan.pourCase();
    String alloy = job.metal().alloy().name();
    Unit celsius = Dimension.HEAT.unit("degC").orElseThrow();
    List<Owned.OtherMould> all = new ArrayList<>();
    for (String name : materials.mediumNames()) {
      Optional<MouldMedium> medium = materials.medium(name, Materials.Make.NOT_SAID, alloy);
      if (medium.isEmpty() || medium.get().family() == MouldFamily.PERMANENT) {
        continue;
      }
      MouldFamily family = medium.get().family();
      Band heat = UsualValues.mouldHeat(family, celsius::toSi);
      Band wall = family == MouldFamily.SHELL ? UsualValues.SHELL_WALL : Band.typed(0.0);
      Band crack = family == MouldFamily.SAND ? materials.common().partingCrack() : Band.typed(0.0);
      all.add(new Owned.OtherMould(name, medium.get(), heat, wall, crack));
    }
    return all;
  }
}
