package lastinch.solver.material;

/** Mould media with round figures for checks; not recommended data. */
public final class SampleMoulds {
  private SampleMoulds() {}

  /** A medium with given conduction and heat, everything else of no account. */
  public static MouldMedium medium(Curve conductivity, Curve specificHeat, double density) {
    return medium(conductivity, 1.0, specificHeat, density);
  }

  /** The same with a factor on the conductivity. */
  public static MouldMedium medium(
      Curve conductivity, double factor, Curve specificHeat, double density) {
    return new MouldMedium(
        "sample",
        MouldFamily.INVESTMENT,
        conductivity,
        Band.typed(factor),
        specificHeat,
        Band.typed(density),
        0.4,
        Band.typed(1e-12),
        Band.typed(1200.0),
        Band.typed(100.0),
        Band.typed(0.4),
        Band.typed(0.9),
        Band.typed(1000.0));
  }
}
