package lastinch.solver.charge;

import lastinch.solver.casting.Checking;
import lastinch.solver.casting.PourCase;
import lastinch.solver.material.Alloy;
import lastinch.solver.material.MetalTable;
import lastinch.solver.physics.Capillary;
import lastinch.solver.physics.Slurry;

/** What of the poured metal, and of its laws, stays the same through a run. */
public final class MeltProperties {
  /** Density of water at 20 degC [kg/m3]; White, Fluid Mechanics, from memory. */
  private static final double WATER_DENSITY = 998.0;

  /** Viscosity of water at 20 degC [Pa s]; White, Fluid Mechanics, from memory. */
  private static final double WATER_VISCOSITY = 1.0e-3;

  /** Keeps Reynolds numbers of a metal without viscosity finite [Pa s]; a thousandth of any. */
  private static final double LEAST_VISCOSITY = 1e-6;

  /** The table reaches this far beyond the coldest mould and the hottest metal [K]; chosen. */
  private static final double BEYOND = 50.0;

  public final MetalTable table;

  /** The same for whoever works on the upper half of a run. */
  private final MetalTable upperTable;

  public final Alloy alloy;
  public final boolean water;

  /** Density at the temperature of entry [kg/m3], held through filling. */
  public final double density;

  /** Of the liquid [Pa s]; 0 for a metal without. */
  public final double viscosity;

  /** Surface tension [N/m]; 0 when nothing pushes back. */
  public final double tension;

  /** Twice the tension times its cosine, film counted [N/m]; 0 when nothing pushes back. */
  public final double capillaryStrength;

  public final double capillaryLength;

  /** Of the liquid: conductivity [W/(m K)], specific heat [J/(kg K)], diffusivity [m2/s]. */
  public final double conductivity;

  public final double specificHeat;
  public final double diffusivity;

  /** Share of carried solid at which the slurry no longer flows [-]. */
  public final double flowStop;

  /** Enthalpy on entry and at which the slurry stops [J/kg]. */
  public final double enthalpyIn;

  public final double enthalpyStop;

  /** Factor on the dispersion of heat along the flow [-]. */
  public final double spreading;

  public final FrictionLaw friction;
  public final DispersionLaw dispersion;
  public final WallContact contact;

  /** Loss coefficient of the sprue's mouth [-]. */
  public final double entryLoss;

  private final double rangeRatio;
  private final Checking checking;

  /**
   * Of a job.
   *
   * @param coldest mould temperature that metal may meet [K]
   */
  public MeltProperties(PourCase job, double coldest) {
    alloy = job.metal().alloy();
    checking = job.checking();
    water = checking.fluid() == Checking.Fluid.WATER;
    double entered = checking.lipLoss() ? job.metal().entered() : job.metal().reading().value();
    table =
        MetalTable.of(
            alloy,
            checking.freezingStraight(),
            coldest - BEYOND,
            Math.max(entered, alloy.liquidus()) + BEYOND);
    upperTable = table.twin();
    density = water ? WATER_DENSITY : alloy.density(entered);
    viscosity = water ? WATER_VISCOSITY : alloy.viscosity().value();
    boolean pushes = checking.pushesBack() && !water;
    tension = pushes ? alloy.surfaceTension().value() : 0.0;
    capillaryStrength =
        pushes
            ? Capillary.strength(
                alloy.surfaceTension().value(),
                alloy.wettingAngle().value(),
                alloy.filmFactor().value())
            : 0.0;
    capillaryLength = Capillary.length(Math.max(1e-6, alloy.surfaceTension().value()), density);
    conductivity = alloy.conductivityLiquid().value();
    specificHeat = alloy.specificHeatLiquid().value();
    diffusivity = conductivity / (density * specificHeat);
    flowStop = alloy.flowStop().value();
    enthalpyIn = table.enthalpy(entered);
    enthalpyStop = table.enthalpyAtSolid(flowStop);
    spreading = checking.spreading().orElse(job.laws().spreading().value());
    rangeRatio = job.laws().rangeRatio().value();
    friction = Closures.friction(job);
    dispersion = Closures.dispersion(diffusivity, density, flowingViscosity(), friction);
    contact = Closures.contact(job, conductivity);
    entryLoss = Closures.entryLoss(job);
  }

  /** Viscosity that is never 0 [Pa s]. */
  public double flowingViscosity() {
    return Math.max(LEAST_VISCOSITY, viscosity);
  }

  /** Table of one half of a run, 0 or 1. */
  public MetalTable table(int half) {
    return half == 0 ? table : upperTable;
  }

  /** Number of look-ups beyond the ends of the table so far. */
  public int clamps() {
    return table.clamps() + upperTable.clamps();
  }

  public double temperatureIn() {
    return table.temperature(enthalpyIn);
  }

  /** What a thin gap [m] asks for before metal goes in [Pa]. */
  public double capillary(double gap) {
    return capillaryStrength / gap;
  }

  /** Share of new solid that rides along in a gap [m] at a mould temperature [K]. */
  public double mushShare(double gap, double mouldTemperature) {
    if (checking.mushShare().isPresent()) {
      return checking.mushShare().getAsDouble();
    }
    double effective = table.temperature(table.enthalpyAtSolid(Slurry.EFFECTIVE_SOLID));
    double flux = contact.liquid * Math.max(1.0, alloy.liquidus() - mouldTemperature);
    double range = alloy.liquidus() - effective;
    return range < 1e-6
        ? 0.0
        : Slurry.mushShare(
            Slurry.separation(
                alloy.liquidus(), effective, flux, gap, alloy.conductivitySolid().value()),
            rangeRatio);
  }

  /** Heat passed from leading metal in a gap [m] to fresh mould per degree [W/(m2 K)]. */
  public double tipConductance(double gap) {
    return contact.conductance(gap, 0.0);
  }
}
