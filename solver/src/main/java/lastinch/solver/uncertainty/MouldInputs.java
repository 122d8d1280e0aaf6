package lastinch.solver.uncertainty;

import java.util.Optional;
import lastinch.solver.casting.Flask;
import lastinch.solver.casting.Mould;
import lastinch.solver.casting.PourCase;
import lastinch.solver.levers.Copies;
import lastinch.solver.material.Band;
import lastinch.solver.material.MouldMedium;

/** Figures of the mould as it stands. */
final class MouldInputs {
  private MouldInputs() {}

  static Optional<Band> temperature(PourCase job) {
    return Optional.of(job.mould().temperature());
  }

  static PourCase withTemperature(PourCase job, Band heat) {
    Mould m = job.mould();
    return Copies.with(
        job, make(m, m.medium(), heat, m.wallThickness(), m.flask(), m.partingCrack()));
  }

  static Optional<Band> out(PourCase job) {
    return job.mould().flask().map(Flask::out);
  }

  static PourCase withOut(PourCase job, Band out) {
    Flask f = job.mould().flask().orElseThrow();
    return withFlask(job, f, f.edgeToWall(), out);
  }

  static Optional<Band> edge(PourCase job) {
    return job.mould().flask().map(f -> within(f.edgeToWall(), f.inside() / 2));
  }

  private static Band within(Band edge, double most) {
    return new Band(edge.value(), edge.low(), Math.min(edge.high(), most), edge.source());
  }

  static PourCase withEdge(PourCase job, Band edge) {
    Flask f = job.mould().flask().orElseThrow();
    return withFlask(job, f, edge, f.out());
  }

  private static PourCase withFlask(PourCase job, Flask f, Band edge, Band out) {
    Flask changed =
        new Flask(
            f.inside(),
            f.tall(),
            f.wall(),
            edge,
            out,
            f.steelDensity(),
            f.steelSpecificHeat(),
            f.emissivity());
    Mould m = job.mould();
    return Copies.with(
        job,
        make(
            m,
            m.medium(),
            m.temperature(),
            m.wallThickness(),
            Optional.of(changed),
            m.partingCrack()));
  }

  static Optional<Band> wall(PourCase job) {
    Band wall = job.mould().wallThickness();
    return wall.value() > 0.0 ? Optional.of(wall) : Optional.empty();
  }

  static PourCase withWall(PourCase job, Band wall) {
    Mould m = job.mould();
    return Copies.with(
        job, make(m, m.medium(), m.temperature(), wall, m.flask(), m.partingCrack()));
  }

  static Optional<Band> crack(PourCase job) {
    Band crack = job.mould().partingCrack();
    return crack.value() > 0.0 ? Optional.of(crack) : Optional.empty();
  }

  static PourCase withCrack(PourCase job, Band crack) {
    Mould m = job.mould();
    return Copies.with(
        job, make(m, m.medium(), m.temperature(), m.wallThickness(), m.flask(), crack));
  }

  static Mould withMedium(Mould m, MouldMedium medium) {
    return make(m, medium, m.temperature(), m.wallThickness(), m.flask(), m.partingCrack());
  }

  private static Mould make(
      Mould m, MouldMedium medium, Band temperature, Band wall, Optional<Flask> flask, Band crack) {
    return new Mould(medium, temperature, wall, flask, m.attitude(), crack, m.behindPressure());
  }
}
