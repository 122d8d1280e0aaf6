package lastinch.solver.charge;

import java.util.List;
import lastinch.solver.physics.AirEscape;
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

  /** A pocket counts as this old at least, so that its air has begun to press [s]; numerical. */
  private static final double YOUNGEST = 1e-3;

  /**
   * Mass flow over (p^2 - outside^2) through mould and crack round an empty stretch [kg/(s Pa2)].
   *
   * @param length of the stretch [m]
   * @param perimeter of its section [m]
   * @param at pressure of the air, absolute [Pa]
   * @param age since it was closed [s]
   */
  public double wallFactor(double length, double perimeter, double at, double age) {
    double factor = 0.0;
    if (permeability > 0.0) {
      double radius = perimeter / (2.0 * Math.PI);
      double depth =
          AirEscape.pressedDepth(
              radius,
              toSurface,
              permeability,
              porosity,
              start,
              DryAir.viscosity(temperature),
              Math.max(age, YOUNGEST));
      double shape = AirEscape.shapeFactor(length, radius, depth);
      factor += AirEscape.mouldFlow(permeability, shape, 1.0, temperature, 0.0);
    }
    return crack > 0.0 ? factor + crackFactor(2.0 * length, at) : factor;
  }

  /** Of a length [m] of the crack; its mouth may choke it. */
  private double crackFactor(double length, double at) {
    double laminar = AirEscape.crackFlow(crack, length, crackDepth, 1.0, temperature, 0.0);
    double free = laminar * ((at - outside) * (at + outside));
    double flow = AirEscape.crackFlow(crack, length, crackDepth, at, temperature, outside);
    return Math.abs(flow) < Math.abs(free) ? laminar * (flow / free) : laminar;
  }

  /**
   * A vent.
   *
   * @param cell it leaves from
   * @param opening discharge coefficient times area [m2]
   */
  public record Hole(int cell, double opening) {}
}
