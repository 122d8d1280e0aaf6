package lastinch.solver.plane.air;

import java.util.List;
import lastinch.solver.physics.DryAir;

/**
 * How the air ahead of the metal behaves.
 *
 * @param pushes whether it pushes back at all
 * @param temperature held through the run [K]
 * @param start pressure at the start, absolute [Pa]
 * @param outside pressure outside the mould, absolute [Pa]
 * @param permeability of the mould [m2]
 * @param porosity of the mould [-]
 * @param toSurface from the cavity to the nearest free surface of the mould [m]
 * @param crack leak along the outline [m], 0 for none
 * @param crackDepth way through it [m]
 * @param vents holes to the outside
 */
public record AirEscapeLaw(
    boolean pushes,
    double temperature,
    double start,
    double outside,
    double permeability,
    double porosity,
    double toSurface,
    double crack,
    double crackDepth,
    List<Hole> vents) {

  /** Air that never pushes back. */
  public static final AirEscapeLaw NONE =
      new AirEscapeLaw(
          false,
          DryAir.SHOP,
          DryAir.OPEN_AIR,
          DryAir.OPEN_AIR,
          0.0,
          0.5,
          0.05,
          0.0,
          0.05,
          List.of());

  public AirEscapeLaw {
    vents = List.copyOf(vents);
  }

  /** A tight mould with air in it. */
  public static AirEscapeLaw tight(double temperature) {
    return new AirEscapeLaw(
        true, temperature, DryAir.OPEN_AIR, DryAir.OPEN_AIR, 0.0, 0.5, 0.05, 0.0, 0.05, List.of());
  }

  /**
   * A vent.
   *
   * @param cell it leaves from
   * @param opening discharge coefficient times area [m2]
   */
  public record Hole(int cell, double opening) {}
}
