package lastinch.solver.material;

import java.util.List;
import java.util.Objects;
import java.util.function.Function;

/**
 * A casting alloy: figures with their bands and sources.
 *
 * @param name as printed
 * @param freezing solid share against temperature
 * @param startOfFreezing liquidus with its range [K]; its best figure is that of {@code freezing}
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
 * @param givesOff what it gives off that hurts, in the order of {@link Hazard}
 */
public record Alloy(
    String name,
    FreezingCurve freezing,
    Band startOfFreezing,
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
    Band pourTemperature,
    List<Hazard> givesOff) {

  /** An alloy whose start of freezing is known exactly and that gives off nothing that hurts. */
  public Alloy(
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
    this(
        name,
        freezing,
        Band.typed(freezing.liquidus()),
        latentHeat,
        specificHeatLiquid,
        specificHeatSolid,
        conductivityLiquid,
        conductivitySolid,
        densityLiquid,
        densitySlope,
        densitySolid,
        viscosity,
        surfaceTension,
        wettingAngle,
        filmFactor,
        film,
        flowStop,
        shrinkage,
        pourTemperature,
        List.of());
  }

  public Alloy {
    Objects.requireNonNull(name, "name");
    Objects.requireNonNull(freezing, "freezing");
    if (startOfFreezing.value() != freezing.liquidus()) {
      throw new IllegalArgumentException(
          "startOfFreezing = "
              + startOfFreezing.value()
              + " K, must be the liquidus of the freezing curve, "
              + freezing.liquidus()
              + " K");
    }
    Objects.requireNonNull(film, "film");
    Objects.requireNonNull(shrinkage, "shrinkage");
    Objects.requireNonNull(pourTemperature, "pourTemperature");
    givesOff = givesOff.stream().sorted().distinct().toList();
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

  /** Figures of an alloy that carry a band and change how it flows and freezes. */
  @SuppressWarnings("ImmutableEnumChecker") // references to accessors hold nothing
  public enum Figure {
    START_OF_FREEZING(Alloy::startOfFreezing),
    LATENT_HEAT(Alloy::latentHeat),
    SPECIFIC_HEAT_LIQUID(Alloy::specificHeatLiquid),
    SPECIFIC_HEAT_SOLID(Alloy::specificHeatSolid),
    CONDUCTIVITY_LIQUID(Alloy::conductivityLiquid),
    CONDUCTIVITY_SOLID(Alloy::conductivitySolid),
    DENSITY_LIQUID(Alloy::densityLiquid),
    VISCOSITY(Alloy::viscosity),
    SURFACE_TENSION(Alloy::surfaceTension),
    WETTING_ANGLE(Alloy::wettingAngle),
    FILM_FACTOR(Alloy::filmFactor),
    FLOW_STOP(Alloy::flowStop);

    private final Function<Alloy, Band> of;

    Figure(Function<Alloy, Band> of) {
      this.of = of;
    }
  }

  /** A figure with its band. */
  public Band figure(Figure figure) {
    return figure.of.apply(this);
  }

  /** The same alloy with one figure changed; the freezing curve follows its start. */
  public Alloy with(Figure changed, Band band) {
    return new Alloy(
        name,
        changed == Figure.START_OF_FREEZING ? freezing.startingAt(band.value()) : freezing,
        either(changed, Figure.START_OF_FREEZING, band),
        either(changed, Figure.LATENT_HEAT, band),
        either(changed, Figure.SPECIFIC_HEAT_LIQUID, band),
        either(changed, Figure.SPECIFIC_HEAT_SOLID, band),
        either(changed, Figure.CONDUCTIVITY_LIQUID, band),
        either(changed, Figure.CONDUCTIVITY_SOLID, band),
        either(changed, Figure.DENSITY_LIQUID, band),
        densitySlope,
        densitySolid,
        either(changed, Figure.VISCOSITY, band),
        either(changed, Figure.SURFACE_TENSION, band),
        either(changed, Figure.WETTING_ANGLE, band),
        either(changed, Figure.FILM_FACTOR, band),
        film,
        either(changed, Figure.FLOW_STOP, band),
        shrinkage,
        pourTemperature,
        givesOff);
  }

  private Band either(Figure changed, Figure own, Band band) {
    return changed == own ? band : figure(own);
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
