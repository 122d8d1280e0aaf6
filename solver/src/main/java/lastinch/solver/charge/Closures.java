package lastinch.solver.charge;

import lastinch.solver.casting.PourCase;
import lastinch.solver.physics.Friction;
import lastinch.solver.physics.Losses;

/** The laws of a run, chosen before its time loop; both filling solvers take them from here. */
final class Closures {
  private Closures() {}

  static FrictionLaw friction(PourCase job) {
    return (reynolds, laminarProduct, diameter) -> Friction.smooth(reynolds, laminarProduct);
  }

  static DispersionLaw dispersion(
      double diffusivity, double density, double viscosity, FrictionLaw friction) {
    return new AxialDispersion(diffusivity, density, viscosity, friction);
  }

  static WallContact contact(PourCase job, double conductivity) {
    return new WallContact(job.mould().medium(), conductivity, job.checking().perfectContact());
  }

  /** Loss coefficient of the sprue's mouth [-]. */
  static double entryLoss(PourCase job) {
    return job.checking().entryLoss().orElse(Losses.SHARP_INLET);
  }
}
