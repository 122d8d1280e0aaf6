package lastinch.solver.casting;

import java.util.Objects;
import java.util.Optional;
import lastinch.solver.material.Band;
import lastinch.solver.material.Checks;
import lastinch.solver.material.MouldMedium;

/**
 * The mould as it stands when metal arrives.
 *
 * @param medium what it is made of
 * @param temperature through and through, before any cooling on the way from the kiln [K]
 * @param wallThickness of a shell [m], 0 for a mould with more wall than heat reaches
 * @param flask can round an investment mould
 * @param attitude how it stands
 * @param partingCrack width of the leak along the parting outline [m], 0 where there is none
 * @param behindPressure air pressure behind the mould [Pa], absolute
 */
public record Mould(
    MouldMedium medium,
    Band temperature,
    Band wallThickness,
    Optional<Flask> flask,
    Orientation attitude,
    Band partingCrack,
    double behindPressure) {
  /** A mould whose wall [m] and parting leak [m] are known exactly. */
  public Mould(
      MouldMedium medium,
      Band temperature,
      double wallThickness,
      Optional<Flask> flask,
      Orientation attitude,
      double partingCrack,
      double behindPressure) {
    this(
        medium,
        temperature,
        Band.typed(wallThickness),
        flask,
        attitude,
        Band.typed(partingCrack),
        behindPressure);
  }

  public Mould {
    Objects.requireNonNull(medium, "medium");
    Objects.requireNonNull(attitude, "attitude");
    Checks.within("temperature", temperature.value(), 200.0, 2000.0, "K");
    Checks.within("wallThickness", wallThickness.value(), 0.0, 1.0, "m");
    Checks.within("partingCrack", partingCrack.value(), 0.0, 1e-3, "m");
    Checks.within("behindPressure", behindPressure, 0.0, 5e5, "Pa");
  }

  public Mould withMedium(MouldMedium other) {
    return new Mould(
        other, temperature, wallThickness, flask, attitude, partingCrack, behindPressure);
  }

  public Mould withTemperature(Band other) {
    return new Mould(medium, other, wallThickness, flask, attitude, partingCrack, behindPressure);
  }

  public Mould withWallThickness(Band other) {
    return new Mould(medium, temperature, other, flask, attitude, partingCrack, behindPressure);
  }

  public Mould withFlask(Optional<Flask> other) {
    return new Mould(
        medium, temperature, wallThickness, other, attitude, partingCrack, behindPressure);
  }

  public Mould withAttitude(Orientation other) {
    return new Mould(
        medium, temperature, wallThickness, flask, other, partingCrack, behindPressure);
  }

  public Mould withPartingCrack(Band other) {
    return new Mould(medium, temperature, wallThickness, flask, attitude, other, behindPressure);
  }
}
