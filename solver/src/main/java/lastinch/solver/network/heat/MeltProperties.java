package lastinch.solver.network.heat;

import lastinch.solver.casting.Checking;
import lastinch.solver.casting.PourCase;
import lastinch.solver.material.Alloy;
import lastinch.solver.material.MetalTable;
import lastinch.solver.material.MouldMedium;
import lastinch.solver.physics.Capillary;
import lastinch.solver.physics.ContactLaw;
import lastinch.solver.physics.Slurry;

/** Figures of the flowing metal and its wall that stay the same through a run. */
public final class MeltProperties {
  /** Density of water at 20 degC [kg/m3]; White, Fluid Mechanics, from memory. */
  private static final double WATER_DENSITY = 998.0;

  /** Viscosity of water at 20 degC [Pa s]; White, Fluid Mechanics, from memory. */
  private static final double WATER_VISCOSITY = 1.0e-3;

  public final MetalTable table;
  public final boolean water;

  /** Density at the temperature of entry [kg/m3], held through filling. */
  public final double density;

  public final double viscosity;

  /** Twice the tension times its cosine, film counted [N/m]; 0 when nothing pushes back. */
  public final double capillaryStrength;

  public final double capillaryLength;
  public final double conductivity;
  public final double specificHeat;

  /** Of the liquid [m2/s]. */
  public final double diffusivity;

  public final double flowStop;

  /** Enthalpy on entry and at which the slurry stops [J/kg]. */
  public final double enthalpyIn;

  public final double enthalpyStop;
  final double contactLiquid;
  final double contactGap;
  public final double skinFrees;
  final double gapOpen;
  final boolean perfectContact;
  public final double spreading;
  private final double rangeRatio;
  private final Alloy alloy;
  private final Checking checking;

  public MeltProperties(PourCase job, double coldest) {
    alloy = job.metal().alloy();
    checking = job.checking();
    water = checking.fluid() == Checking.Fluid.WATER;
    double entered = checking.lipLoss() ? job.metal().entered() : job.metal().reading().value();
    table =
        MetalTable.of(
            alloy,
            checking.freezingStraight(),
            coldest - 50.0,
            Math.max(entered, alloy.liquidus()) + 50.0);
    density = water ? WATER_DENSITY : alloy.density(entered);
    viscosity = water ? WATER_VISCOSITY : alloy.viscosity().value();
    capillaryStrength =
        checking.pushesBack() && !water
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
    MouldMedium medium = job.mould().medium();
    contactLiquid = medium.contactLiquid().value();
    contactGap = medium.contactGap().value();
    skinFrees = medium.skinFrees().value();
    gapOpen = medium.gapOpen().value();
    perfectContact = checking.perfectContact();
    spreading = checking.spreading().orElse(job.laws().spreading().value());
    rangeRatio = job.laws().rangeRatio().value();
  }

  public double temperatureIn() {
    return table.temperature(enthalpyIn);
  }

  /** Share of new solid that rides along in a gap [m] at a mould temperature [K]. */
  public double mushShare(double gap, double mouldTemperature) {
    if (checking.mushShare().isPresent()) {
      return checking.mushShare().getAsDouble();
    }
    double effective = table.temperature(table.enthalpyAtSolid(Slurry.EFFECTIVE_SOLID));
    double flux = contactLiquid * Math.max(1.0, alloy.liquidus() - mouldTemperature);
    double range = alloy.liquidus() - effective;
    return range < 1e-6
        ? 0.0
        : Slurry.mushShare(
            Slurry.separation(
                alloy.liquidus(), effective, flux, gap, alloy.conductivitySolid().value()),
            rangeRatio);
  }

  /** Heat passed from lumped metal to the mould face per degree and area [W/(m2 K)]. */
  double conductance(double gap, double mostSolid) {
    double plate = ContactLaw.plateResistance(gap, conductivity);
    if (perfectContact) {
      return plate > 0.0 ? 1.0 / plate : Double.POSITIVE_INFINITY;
    }
    double share = ContactLaw.gapShare(mostSolid, skinFrees, gapOpen);
    return ContactLaw.inSeries(
        share == 0.0 ? contactLiquid : ContactLaw.conductance(share, contactLiquid, contactGap),
        plate);
  }

  /** The same from leading metal to fresh mould. */
  public double tipConductance(double gap) {
    return conductance(gap, 0.0);
  }
}
