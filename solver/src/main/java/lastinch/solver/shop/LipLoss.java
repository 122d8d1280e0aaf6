package lastinch.solver.shop;

import lastinch.solver.casting.Metal;
import lastinch.solver.material.Alloy;
import lastinch.solver.material.Band;
import lastinch.solver.material.Basis;
import lastinch.solver.material.Checks;
import lastinch.solver.material.Citation;
import lastinch.solver.physics.DryAir;

/**
 * Heat a melt loses between the reading in the crucible and the cup: so much per second while it
 * waits, and a fixed loss over the lip and in the stream.
 *
 * <p>Common practice, no source, knows both for 1 to 2 kg of bronze at about 1150 degC. Other
 * masses, metals and temperatures follow as a ratio to that: the loss goes with what an open
 * surface gives off by radiation and to still air at that temperature, with surface over mass, and
 * against heat per degree. With mass at one shape surface over mass is mass to the power -1/3 and
 * density to -2/3.
 */
public final class LipLoss {
  /** Mass for which the figures of practice hold [kg]. */
  private static final double USUAL_MASS = 1.5;

  /**
   * The metal for which they hold, tin bronze: reading of 1150 degC [K], [J/(kg K)] and [kg/m3] as
   * in its file.
   */
  private static final double BRONZE_READING = 1423.15;

  private static final double BRONZE_HEAT = 480.0;
  private static final double BRONZE_DENSITY = 7880.0;

  /** Of the open crucible, metal under a little dross [-]: an estimate, no source. */
  private static final double EMISSIVITY = 0.8;

  private static final AirFilm SURFACE = AirFilm.facingUp(EMISSIVITY);

  private LipLoss() {}

  /**
   * A loss of practice, while waiting [K/s] or over the lip [K], for another mass.
   *
   * @param usual for 1 to 2 kg of bronze in the crucible
   * @param melted mass in the crucible [kg]
   */
  public static Band forMass(Band usual, double melted) {
    Checks.within("melted", melted, 1e-4, 1000.0, "kg");
    return scaled(
        usual,
        StrictMath.cbrt(USUAL_MASS / melted),
        "figures for 1.5 kg, taken to go with surface over mass");
  }

  /**
   * A loss of practice for another metal and temperature.
   *
   * @param usual for bronze at 1150 degC
   * @param alloy in the crucible
   * @param reading temperature in the crucible [K]
   */
  public static Band forMetal(Band usual, Alloy alloy, double reading) {
    return scaled(
        usual,
        share(alloy, reading),
        "figures for bronze at 1150 degC, taken to go with what an open surface gives off");
  }

  /**
   * The same melt as another metal at another temperature; what it loses follows.
   *
   * @param metal as it was
   * @param alloy in its place
   * @param reading of that [K], with its band
   */
  public static Metal exchanged(Metal metal, Alloy alloy, Band reading) {
    double factor = share(alloy, reading.value()) / share(metal.alloy(), metal.reading().value());
    return metal
        .withAlloy(alloy)
        .withReading(reading)
        .withCoolingRate(scaled(metal.coolingRate(), factor, metal.coolingRate().source().note()))
        .withLipLoss(scaled(metal.lipLoss(), factor, metal.lipLoss().source().note()));
  }

  /**
   * The same metal with another mass in the crucible; what it loses follows.
   *
   * @param melted mass in the crucible [kg]
   */
  public static Metal otherMass(Metal m, double melted) {
    return new Metal(
        m.alloy(),
        melted,
        m.reading(),
        m.waiting(),
        otherMass(m.coolingRate(), m.melted(), melted),
        otherMass(m.lipLoss(), m.melted(), melted));
  }

  /** Cooling of a metal at a temperature [K] over that of bronze at 1150 degC [-]. */
  static double share(Alloy alloy, double reading) {
    return givenOff(reading)
        / givenOff(BRONZE_READING)
        * (BRONZE_HEAT / alloy.specificHeatLiquid().value())
        * surface(BRONZE_DENSITY / alloy.densityLiquid().value());
  }

  /** Surface of a mass in another volume [-]. */
  private static double surface(double volume) {
    double edge = StrictMath.cbrt(volume);
    return edge * edge;
  }

  /** What an open surface gives off [W/m2]. */
  static double givenOff(double temperature) {
    return SURFACE.coefficient(temperature, DryAir.SHOP) * Math.max(0.0, temperature - DryAir.SHOP);
  }

  private static Band scaled(Band usual, double factor, String note) {
    Citation source = new Citation(usual.source().basis(), usual.source().reference(), note);
    return new Band(usual.value() * factor, usual.low() * factor, usual.high() * factor, source);
  }

  /**
   * A loss when another mass is in the crucible. One that was measured and typed stays as it is.
   *
   * @param loss with {@code before} in the crucible, while waiting [K/s] or over the lip [K]
   * @param before mass for which it holds [kg]
   * @param melted mass in the crucible [kg]
   */
  public static Band otherMass(Band loss, double before, double melted) {
    Checks.within("melted", melted, 1e-4, 1000.0, "kg");
    if (loss.source().basis() == Basis.TYPED) {
      return loss;
    }
    return loss.times(StrictMath.cbrt(before / melted));
  }
}
