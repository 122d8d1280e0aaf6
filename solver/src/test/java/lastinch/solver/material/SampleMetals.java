package lastinch.solver.material;

/** Metals with round figures for checks; not recommended data. */
public final class SampleMetals {
  /**
   * Kelvin of the checks' zero; the checks are linear in temperature, so any shift serves and a
   * round one is taken.
   */
  public static final double ZERO = 273.0;

  private SampleMetals() {}

  /** A metal with given freezing and heats, everything else of no account. */
  public static Alloy alloy(FreezingCurve freezing, double latent, double cs, double cl) {
    Band one = Band.typed(1.0);
    return new Alloy(
        "sample",
        freezing,
        Band.typed(latent),
        Band.typed(cs),
        Band.typed(cl),
        Band.typed(60.0),
        Band.typed(120.0),
        Band.typed(8000.0),
        0.0,
        Band.typed(8500.0),
        Band.typed(0.003),
        one,
        Band.typed(Math.PI),
        one,
        FilmForming.NO,
        Band.typed(0.3),
        Band.typed(0.05),
        Band.typed(1400.0));
  }

  /** Freezing in proportion to degrees below the start, 1000 to 850 above the zero. */
  public static Alloy straightBronze() {
    return alloy(new FreezingCurve.Straight(1000.0 + ZERO, 850.0 + ZERO), 190e3, 450.0, 450.0);
  }

  /** Freezing along a curved liquidus with an arrest, unlike heats. */
  public static Alloy scheilBronze() {
    return alloy(
        new FreezingCurve.Scheil(1000.0 + ZERO, 798.0 + ZERO, 1084.6 + ZERO, 4.06, 0.328, 0.45),
        190e3,
        420.0,
        500.0);
  }

  /** Freezing by the lever rule with an arrest. */
  public static Alloy leverAlloy() {
    return alloy(
        new FreezingCurve.Lever(900.0 + ZERO, 779.0 + ZERO, 962.0 + ZERO, 0.4),
        105e3,
        290.0,
        310.0);
  }

  /** Pure metal. */
  public static Alloy pureMetal() {
    return alloy(new FreezingCurve.Isothermal(660.0 + ZERO), 397e3, 1100.0, 1080.0);
  }

  /** Freezing by points, the last fifth at an arrest. */
  public static Alloy tableAlloy() {
    return alloy(
        new FreezingCurve.Table(
            896.0 + ZERO,
            779.0 + ZERO,
            Curve.of(
                new double[] {780.0 + ZERO, 820.0 + ZERO, 860.0 + ZERO, 896.0 + ZERO},
                new double[] {0.8, 0.7, 0.45, 0.0})),
        105e3,
        290.0,
        310.0);
  }
}
