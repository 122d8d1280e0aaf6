package lastinch.solver.plane.heat;

import lastinch.solver.casting.Checking;
import lastinch.solver.casting.PourCase;
import lastinch.solver.material.Alloy;
import lastinch.solver.material.MetalTable;
import lastinch.solver.material.MouldMedium;
import lastinch.solver.physics.Capillary;
import lastinch.solver.physics.ContactLaw;
import lastinch.solver.physics.Gravity;
import lastinch.solver.physics.Slurry;
import lastinch.solver.plane.flow.FlowingLiquid;

/** Figures of the poured metal and its wall that stay the same through a run of the plane. */
public final class PlaneMeltProperties {
  /** Water at 20 degC: density [kg/m3], viscosity [Pa s], White, Fluid Mechanics, from memory. */
  private static final double WATER_DENSITY = 998.0;

  private static final double WATER_VISCOSITY = 1.0e-3;

  public final MetalTable table;

  /** The same for whoever works on the upper half of a run. */
  private final MetalTable upperTable;

  public final Alloy alloy;
  public final boolean water;
  public final double density;
  public final double enthalpyIn;
  public final double enthalpyStop;
  public final double flowStop;
  public final double capillaryLength;
  public final double conductivity;
  public final double contactLiquid;
  final boolean perfectContact;
  private final MouldMedium medium;
  private final Checking checking;
  private final double rangeRatio;

  /** Factor on the spreading of heat along the flow [-]. */
  final double spreading;

  public PlaneMeltProperties(PourCase job, double coldest) {
    alloy = job.metal().alloy();
    checking = job.checking();
    medium = job.mould().medium();
    spreading = checking.spreading().orElse(job.laws().spreading().value());
    rangeRatio = job.laws().rangeRatio().value();
    water = checking.fluid() == Checking.Fluid.WATER;
    double entered = checking.lipLoss() ? job.metal().entered() : job.metal().reading().value();
    table =
        MetalTable.of(
            alloy,
            checking.freezingStraight(),
            coldest - 50.0,
            Math.max(entered, alloy.liquidus()) + 50.0);
    upperTable = table.twin();
    density = water ? WATER_DENSITY : alloy.density(entered);
    enthalpyIn = table.enthalpy(entered);
    flowStop = alloy.flowStop().value();
    enthalpyStop = table.enthalpyAtSolid(flowStop);
    capillaryLength = Capillary.length(Math.max(1e-6, alloy.surfaceTension().value()), density);
    conductivity = alloy.conductivityLiquid().value();
    contactLiquid = medium.contactLiquid().value();
    perfectContact = checking.perfectContact();
  }

  /** Table of one half of a run, 0 or 1. */
  public MetalTable table(int part) {
    return part == 0 ? table : upperTable;
  }

  /** Number of look-ups beyond the ends of the table so far. */
  public int clamps() {
    return table.clamps() + upperTable.clamps();
  }

  /** What a thin gap [m] asks for before metal goes in [Pa]. */
  public double capillary(double gap) {
    return checking.pushesBack() && !water ? strength() / gap : 0.0;
  }

  private double strength() {
    return Capillary.strength(
        alloy.surfaceTension().value(), alloy.wettingAngle().value(), alloy.filmFactor().value());
  }

  /** What flows, pulled along the plane. */
  public FlowingLiquid liquid(PourCase job) {
    boolean pushes = checking.pushesBack() && !water;
    double capillary = pushes ? strength() : 0.0;
    return new FlowingLiquid(
        density,
        water ? WATER_VISCOSITY : Math.max(1e-6, alloy.viscosity().value()),
        pushes ? alloy.surfaceTension().value() : 0.0,
        capillary,
        0.0,
        flowStop,
        -Gravity.G * job.mould().attitude().rise(),
        0.0,
        checking.frictionFactor().orElse(1.0) == 0.0);
  }

  /** Share of new solid that rides along in a gap [m] at a mould temperature [K]. */
  double mushShare(double gap, double mouldTemperature) {
    if (checking.mushShare().isPresent()) {
      return checking.mushShare().getAsDouble();
    }
    double effective = table.temperature(table.enthalpyAtSolid(Slurry.EFFECTIVE_SOLID));
    double range = alloy.liquidus() - effective;
    if (range < 1e-6) {
      return 0.0;
    }
    double flux = contactLiquid * Math.max(1.0, alloy.liquidus() - mouldTemperature);
    double separation =
        Slurry.separation(
            alloy.liquidus(), effective, flux, gap, alloy.conductivitySolid().value());
    return Slurry.mushShare(separation, rangeRatio);
  }

  /** Heat passed from lumped metal to the mould face per degree and area [W/(m2 K)]. */
  double conductance(double gap, double mostSolid) {
    double plate = ContactLaw.plateResistance(gap, conductivity);
    if (perfectContact) {
      return plate > 0.0 ? 1.0 / plate : Double.POSITIVE_INFINITY;
    }
    double share =
        ContactLaw.gapShare(mostSolid, medium.skinFrees().value(), medium.gapOpen().value());
    return ContactLaw.inSeries(
        share == 0.0
            ? contactLiquid
            : ContactLaw.conductance(share, contactLiquid, medium.contactGap().value()),
        plate);
  }
}
