package lastinch.solver.plane.flow;

import lastinch.solver.casting.PourCase;
import lastinch.solver.charge.FrictionLaw;
import lastinch.solver.charge.MeltProperties;
import lastinch.solver.physics.Friction;
import lastinch.solver.physics.Gravity;

/**
 * Figures of what flows that stay the same through a run.
 *
 * @param density [kg/m3]
 * @param viscosity of the liquid without solid [Pa s]
 * @param tension of the surface, in the plane [N/m]
 * @param capillary what thin gaps push back with, times the gap [N/m]; 0 for none
 * @param keepsOpen share of that push with which a gap also drives metal out again [-]
 * @param flowStop share of solid at which it no longer flows [-]
 * @param gravityX pull along the plane [m/s2]
 * @param gravityY across [m/s2]
 * @param friction of the walls
 * @param frictionless whether the walls do not hold the metal
 */
public record FlowingLiquid(
    double density,
    double viscosity,
    double tension,
    double capillary,
    double keepsOpen,
    double flowStop,
    double gravityX,
    double gravityY,
    FrictionLaw friction,
    boolean frictionless) {

  /** A liquid that does not freeze. */
  public FlowingLiquid(
      double density,
      double viscosity,
      double tension,
      double capillary,
      double keepsOpen,
      double gravityX,
      double gravityY,
      boolean frictionless) {
    this(
        density,
        viscosity,
        tension,
        capillary,
        keepsOpen,
        1.0,
        gravityX,
        gravityY,
        (reynolds, laminarProduct, diameter) -> Friction.smooth(reynolds, laminarProduct),
        frictionless);
  }

  /** The poured metal, pulled along the plane as the mould stands. */
  public static FlowingLiquid of(PourCase job, MeltProperties melt) {
    return new FlowingLiquid(
        melt.density,
        melt.flowingViscosity(),
        melt.tension,
        melt.capillaryStrength,
        0.0,
        melt.flowStop,
        -Gravity.G * job.mould().attitude().rise(),
        0.0,
        melt.friction,
        job.checking().frictionFactor().orElse(1.0) == 0.0);
  }
}
