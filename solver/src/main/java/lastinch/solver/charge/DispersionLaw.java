package lastinch.solver.charge;

/** How heat spreads along flowing metal [m2/s]. */
public interface DispersionLaw {
  /**
   * Between plates.
   *
   * @param speed mean, not negative [m/s]
   * @param hydraulicDiameter twice the gap [m]
   * @param laminarProduct f Re of the section in laminar flow [-]
   */
  double plates(double speed, double hydraulicDiameter, double laminarProduct);

  /** In a round passage; the parameters as in {@link #plates}. */
  double round(double speed, double hydraulicDiameter, double laminarProduct);
}
