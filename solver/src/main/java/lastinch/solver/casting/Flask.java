package lastinch.solver.casting;

import java.util.Objects;
import lastinch.solver.material.Band;
import lastinch.solver.material.Checks;

/**
 * Steel can round an investment mould, taken hot from the kiln.
 *
 * @param inside inner diameter [m]
 * @param tall [m]
 * @param wall steel thickness [m]
 * @param edgeToWall from the nearest edge of the piece to the flask wall [m]
 * @param out time from opening the kiln to first metal [s]
 * @param steelDensity [kg/m3]
 * @param steelSpecificHeat [J/(kg K)]
 * @param emissivity of the outside [-]
 */
public record Flask(
    double inside,
    double tall,
    double wall,
    Band edgeToWall,
    Band out,
    double steelDensity,
    double steelSpecificHeat,
    double emissivity) {
  /** A can whose distance to the piece is known exactly [m]. */
  public Flask(
      double inside,
      double tall,
      double wall,
      double edgeToWall,
      Band out,
      double steelDensity,
      double steelSpecificHeat,
      double emissivity) {
    this(
        inside,
        tall,
        wall,
        Band.typed(edgeToWall),
        out,
        steelDensity,
        steelSpecificHeat,
        emissivity);
  }

  public Flask {
    Objects.requireNonNull(out, "out");
    Checks.within("inside", inside, 1e-2, 2.0, "m");
    Checks.within("tall", tall, 1e-2, 3.0, "m");
    Checks.within("wall", wall, 1e-4, 0.05, "m");
    Checks.within("edgeToWall", edgeToWall.value(), 0.0, inside / 2, "m");
    Checks.within("emissivity", emissivity, 0.05, 1.0, "-");
  }

  public Flask withEdgeToWall(Band other) {
    return new Flask(inside, tall, wall, other, out, steelDensity, steelSpecificHeat, emissivity);
  }

  public Flask withOut(Band other) {
    return new Flask(
        inside, tall, wall, edgeToWall, other, steelDensity, steelSpecificHeat, emissivity);
  }
}
