package lastinch.solver.uncertainty;

import java.util.Optional;
import lastinch.solver.casting.Flask;
import lastinch.solver.casting.PourCase;
import lastinch.solver.material.Band;

/** Figures of the mould as it stands. */
final class MouldInputs {
  private MouldInputs() {}

  static Optional<Band> temperature(PourCase job) {
    return Optional.of(job.mould().temperature());
  }

  static PourCase withTemperature(PourCase job, Band heat) {
    return job.withMould(job.mould().withTemperature(heat));
  }

  static Optional<Band> out(PourCase job) {
    return job.mould().flask().map(Flask::out);
  }

  static PourCase withOut(PourCase job, Band out) {
    return withFlask(job, job.mould().flask().map(f -> f.withOut(out)));
  }

  static Optional<Band> edge(PourCase job) {
    return job.mould().flask().map(f -> within(f.edgeToWall(), f.inside() / 2));
  }

  private static Band within(Band edge, double most) {
    return new Band(edge.value(), edge.low(), Math.min(edge.high(), most), edge.source());
  }

  static PourCase withEdge(PourCase job, Band edge) {
    return withFlask(job, job.mould().flask().map(f -> f.withEdgeToWall(edge)));
  }

  private static PourCase withFlask(PourCase job, Optional<Flask> flask) {
    return job.withMould(job.mould().withFlask(flask));
  }

  static Optional<Band> wall(PourCase job) {
    Band wall = job.mould().wallThickness();
    return wall.value() > 0.0 ? Optional.of(wall) : Optional.empty();
  }

  static PourCase withWall(PourCase job, Band wall) {
    return job.withMould(job.mould().withWallThickness(wall));
  }

  static Optional<Band> crack(PourCase job) {
    Band crack = job.mould().partingCrack();
    return crack.value() > 0.0 ? Optional.of(crack) : Optional.empty();
  }

  static PourCase withCrack(PourCase job, Band crack) {
    return job.withMould(job.mould().withPartingCrack(crack));
  }
}
