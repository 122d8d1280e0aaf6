package lastinch.solver.charge;

import java.util.List;
import lastinch.solver.casting.PourCase;
import lastinch.solver.material.MouldMedium;
import lastinch.solver.physics.DryAir;
import lastinch.solver.physics.Friction;
import lastinch.solver.physics.Losses;

/** The laws of a run, chosen before its time loop; both filling solvers take them from here. */
public final class Closures {
  /** Keeps a division finite [-]. */
  private static final double LEAST_POROSITY = 1e-3;

  private Closures() {}

  static FrictionLaw friction(PourCase job) {
    double roughness = job.mould().medium().roughness().value();
    return roughness == 0.0
        ? (reynolds, laminarProduct, diameter) -> Friction.smooth(reynolds, laminarProduct)
        : (reynolds, laminarProduct, diameter) ->
            Friction.rough(reynolds, laminarProduct, roughness / diameter);
  }

  static DispersionLaw dispersion(
      double diffusivity, double density, double viscosity, FrictionLaw friction) {
    return new AxialDispersion(diffusivity, density, viscosity, friction);
  }

  static WallContact contact(PourCase job, double conductivity) {
    return new WallContact(job.mould().medium(), conductivity, job.checking().perfectContact());
  }

  /**
   * How air ahead of the metal gets away; one temperature for all of it, half-way between metal and
   * mould, and as far to a free surface as the sprue is tall.
   *
   * @param vents holes, where the solver knows them by its own places
   */
  public static AirEscapeLaw air(PourCase job, MeltProperties melt, List<AirEscapeLaw.Hole> vents) {
    MouldMedium medium = job.mould().medium();
    double reach = job.gating().sprue().tall();
    return new AirEscapeLaw(
        job.checking().pushesBack() && !melt.water,
        0.5 * (melt.temperatureIn() + job.mould().temperature().value()),
        DryAir.OPEN_AIR,
        job.mould().behindPressure(),
        medium.permeability().value(),
        Math.max(LEAST_POROSITY, medium.porosity()),
        reach,
        job.mould().partingCrack().value(),
        reach,
        vents);
  }

  /** Loss coefficient of the sprue's mouth [-], the factor on all such losses in it. */
  public static double entryLoss(PourCase job) {
    return job.checking().entryLoss().orElse(job.laws().turns().value() * Losses.SHARP_INLET);
  }
}
