package lastinch.solver.physics;

import lastinch.solver.material.Basis;
import lastinch.solver.material.Checks;
import lastinch.solver.material.Citation;
import lastinch.solver.material.FilmForming;

/**
 * How much of the leading surface freezes before the front has rolled over it: below 0.3 nothing
 * shows, up to 1 laps stay on the casting, above it the front pulses or halts. Gaps of 0.2 to 60
 * mm; thresholds are ours and meant to be set from real pours.
 */
public final class LapIndex {
  /** Where the law comes from. */
  public static final Citation SOURCE =
      new Citation(
          Basis.ESTIMATE,
          "surface drop of a half-space under a steady flux, Carslaw & Jaeger; index is ours",
          "thresholds and film additions are estimates");

  /** Speed below which a front counts as standing [m/s]; ours, meant to be set from real pours. */
  public static final double STANDING = 2e-3;

  /** What an oxide film that forms adds to the index [-]; ours, an estimate. */
  private static final double FILM = 0.3;

  /** What a mild film adds to the index [-]; ours, half of that of a full one. */
  private static final double MILD_FILM = 0.15;

  private LapIndex() {}

  /**
   * Time the leading surface is cooled before metal rolls over it [s]: half the gap (at most a
   * capillary length) over the speed; for a standing front the time stood, if longer than that at
   * {@link #STANDING}.
   *
   * @param gap [m]
   * @param capillaryLength [m]
   * @param speed of the front [m/s], not negative
   * @param timeStood since the front was last faster than {@link #STANDING} [s]
   */
  public static double tau(double gap, double capillaryLength, double speed, double timeStood) {
    Checks.within("gap", gap, 0.0, Double.MAX_VALUE, "m");
    Checks.within("capillaryLength", capillaryLength, 0.0, Double.MAX_VALUE, "m");
    Checks.within("speed", speed, 0.0, Double.MAX_VALUE, "m/s");
    Checks.within("timeStood", timeStood, 0.0, Double.MAX_VALUE, "s");
    double roll = Math.min(gap / 2.0, capillaryLength);
    return speed >= STANDING ? roll / speed : Math.max(roll / STANDING, timeStood);
  }

  /**
   * Drop of the surface temperature of liquid metal under a steady flux [K].
   *
   * @param heatFlux contact times (tip - mould untouched) [W/m2]
   * @param tau from {@link #tau} [s]
   * @param conductivity liquid [W/(m K)]
   * @param density liquid [kg/m3]
   * @param specificHeat liquid [J/(kg K)]
   */
  public static double surfaceDrop(
      double heatFlux, double tau, double conductivity, double density, double specificHeat) {
    Checks.within("heatFlux", heatFlux, -Double.MAX_VALUE, Double.MAX_VALUE, "W/m2");
    Checks.within("tau", tau, 0.0, Double.MAX_VALUE, "s");
    double effusivitySquared = conductivity * density * specificHeat;
    Checks.within(
        "k rho c", effusivitySquared, Double.MIN_NORMAL, Double.MAX_VALUE, "W2 s/(m4 K2)");
    return 2.0 * heatFlux * Math.sqrt(tau / (Math.PI * effusivitySquared));
  }

  /**
   * Enthalpy of the leading surface [J/kg]; its solid share gives the index.
   *
   * @param tipEnthalpy [J/kg], 0 for liquid at the liquidus
   * @param specificHeat liquid [J/(kg K)]
   * @param surfaceDrop from {@link #surfaceDrop} [K]
   */
  public static double surfaceEnthalpy(
      double tipEnthalpy, double specificHeat, double surfaceDrop) {
    Checks.within("tipEnthalpy", tipEnthalpy, -Double.MAX_VALUE, Double.MAX_VALUE, "J/kg");
    Checks.within("specificHeat", specificHeat, 0.0, Double.MAX_VALUE, "J/(kg K)");
    Checks.within("surfaceDrop", surfaceDrop, -Double.MAX_VALUE, Double.MAX_VALUE, "K");
    return tipEnthalpy - specificHeat * surfaceDrop;
  }

  /**
   * The index [-].
   *
   * @param surfaceSolidShare solid share at the surface enthalpy [-]
   * @param stopShare share at which the metal stops flowing [-]
   * @param film whether an oxide film rides on the leading metal
   */
  public static double index(double surfaceSolidShare, double stopShare, FilmForming film) {
    Checks.within("surfaceSolidShare", surfaceSolidShare, 0.0, 1.0, "-");
    Checks.within("stopShare", stopShare, 0.01, 1.0, "-");
    return surfaceSolidShare / stopShare + filmAddition(film);
  }

  /** What a film adds to the index [-]. */
  public static double filmAddition(FilmForming film) {
    return switch (film) {
      case NO -> 0.0;
      case MILD -> MILD_FILM;
      case YES -> FILM;
    };
  }
}
