package lastinch.solver.charge;

import lastinch.solver.physics.Friction;

/** How walls hold flowing metal back: Darcy factor f, pressure gradient = f rho u^2/(2 Dh). */
@FunctionalInterface
public interface FrictionLaw {
  /**
   * Darcy factor times Reynolds number [-]; the laminar product at rest. Not checked: called in
   * time loops.
   *
   * @param reynolds on the hydraulic diameter [-], not negative
   * @param laminarProduct f Re of the section in laminar flow [-]
   * @param hydraulicDiameter [m], for laws that know a roughness
   */
  double product(double reynolds, double laminarProduct, double hydraulicDiameter);

  /** Reynolds number up to which the product is the laminar one [-]. */
  default double laminarEnd() {
    return Friction.LAMINAR_END;
  }

  /**
   * Pressure lost per length, divided by speed [Pa s/m2]; finite at rest.
   *
   * @param reynolds on the hydraulic diameter [-]
   * @param viscosity [Pa s]
   * @param hydraulicDiameter [m]
   * @param laminarProduct f Re of the section in laminar flow [-]
   */
  default double overSpeed(
      double reynolds, double viscosity, double hydraulicDiameter, double laminarProduct) {
    return product(reynolds, laminarProduct, hydraulicDiameter)
        * viscosity
        / (2.0 * hydraulicDiameter * hydraulicDiameter);
  }

  /** Darcy factor [-] at a Reynolds number above 0 [-]; the rest as in {@link #product}. */
  default double factor(double reynolds, double laminarProduct, double hydraulicDiameter) {
    return product(reynolds, laminarProduct, hydraulicDiameter) / reynolds;
  }
}
