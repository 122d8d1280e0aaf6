package lastinch.solver.material;

import java.util.Objects;

/**
 * A casting alloy: figures with their bands and sources.
 *
 * @param name as printed
 * @param freezing solid share against temperature
 * @param latentHeat heat given up over the whole of freezing [J/kg]
 * @param specificHeatLiquid [J/(kg K)]
 * @param specificHeatSolid [J/(kg K)]
 * @param conductivityLiquid [W/(m K)]
 * @param conductivitySolid near the end of freezing [W/(m K)]
 * @param densityLiquid at the liquidus [kg/m3]
 * @param densitySlope change of liquid density per kelvin [kg/(m3 K)], not positive
 * @param densitySolid at 20 degC [kg/m3]
 * @param viscosity at the liquidus [Pa s]
 * @param surfaceTension [N/m]
 * @param wettingAngle against the mould [rad], 180 degrees = no wetting at all
 * @param filmFactor what an oxide film multiplies the capillary push by [-], 1 = no film
 * @param film whether an oxide film rides on the leading metal
 * @param flowStop share of solid in the slurry at which it stops flowing [-]
 * @param shrinkage volume lost on freezing [-]
 * @param pourTemperature usual range in the crucible [K]
 */
public record Alloy(
    String name,
    FreezingCurve freezing,
    Band latentHeat,
    Band specificHeatLiquid,
    Band specificHeatSolid,
    Band conductivityLiquid,
    Band conductivitySolid,
    Band densityLiquid,
    double densitySlope,
    Band densitySolid,
    Band viscosity,
    Band surfaceTension,
    Band wettingAngle,
    Band filmFactor,
    FilmForming film,
    Band flowStop,
    Band shrinkage,
    Band pourTemperature) {

  public Alloy {
    Objects.requireNonNull(name, "name");
    Objects.requireNonNull(freezing, "freezing");
    Objects.requireNonNull(film, "film");
    Objects.requireNonNull(shrinkage, "shrinkage");
    Objects.requireNonNull(pourTemperature, "pourTemperature");
    Checks.within("latentHeat", latentHeat.value(), 1e4, 2e6, "J/kg");
    Checks.within("specificHeatLiquid", specificHeatLiquid.value(), 50.0, 5000.0, "J/(kg K)");
    Checks.within("specificHeatSolid", specificHeatSolid.value(), 50.0, 5000.0, "J/(kg K)");
    Checks.within("conductivityLiquid", conductivityLiquid.value(), 0.1, 1e9, "W/(m K)");
    Checks.within("conductivitySolid", conductivitySolid.value(), 0.1, 1e9, "W/(m K)");
    Checks.within("densityLiquid", densityLiquid.value(), 500.0, 25000.0, "kg/m3");
    Checks.within("densitySlope", densitySlope, -5.0, 0.0, "kg/(m3 K)");
    Checks.within("densitySolid", densitySolid.value(), 500.0, 25000.0, "kg/m3");
    Checks.within("viscosity", viscosity.value(), 0.0, 0.1, "Pa s");
    Checks.within("surfaceTension", surfaceTension.value(), 0.0, 5.0, "N/m");
    Checks.within("wettingAngle", wettingAngle.value(), Math.PI / 2, Math.PI, "rad");
    Checks.within("filmFactor", filmFactor.value(), 1.0, 5.0, "-");
    Checks.within("flowStop", flowStop.value(), 0.01, 1.0, "-");
  }

  /** Start of freezing [K]. */
  public double liquidus() {
    return freezing.liquidus();
  }

  /** Density of the liquid at a temperature [K], [kg/m3]. */
  public double density(double temperature) {
    return densityLiquid.value() + densitySlope * Math.max(0.0, temperature - liquidus());
  }
}
