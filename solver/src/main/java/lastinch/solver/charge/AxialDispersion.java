package lastinch.solver.charge;

import lastinch.solver.physics.TaylorArisDispersion;

/** Dispersion of Taylor and Aris in a metal of given figures. */
final class AxialDispersion implements DispersionLaw {
  private final double diffusivity;
  private final double density;
  private final double viscosity;
  private final FrictionLaw friction;

  AxialDispersion(double diffusivity, double density, double viscosity, FrictionLaw friction) {
    this.diffusivity = diffusivity;
    this.density = density;
    this.viscosity = viscosity;
    this.friction = friction;
  }

  @Override
  public double plates(double speed, double hydraulicDiameter, double laminarProduct) {
    double reynolds = density * speed * hydraulicDiameter / viscosity;
    return TaylorArisDispersion.plates(
        diffusivity,
        speed,
        0.5 * hydraulicDiameter,
        reynolds,
        factor(reynolds, laminarProduct, hydraulicDiameter));
  }

  @Override
  public double round(double speed, double hydraulicDiameter, double laminarProduct) {
    double reynolds = density * speed * hydraulicDiameter / viscosity;
    return TaylorArisDispersion.round(
        diffusivity,
        speed,
        hydraulicDiameter,
        reynolds,
        factor(reynolds, laminarProduct, hydraulicDiameter));
  }

  private double factor(double reynolds, double laminarProduct, double hydraulicDiameter) {
    return reynolds > TaylorArisDispersion.TURBULENT
        ? friction.factor(reynolds, laminarProduct, hydraulicDiameter)
        : 0.0;
  }
}
