package lastinch.solver.casting;

import lastinch.solver.material.Checks;

/**
 * How the mould stands.
 *
 * @param upright whether the parting plane is vertical; else the sprue stands square to it
 * @param angle by which the tip lies above the thick end [rad]; plus or minus a right angle when
 *     upright
 */
public record Orientation(boolean upright, double angle) {
  public static final Orientation FLAT = new Orientation(false, 0.0);
  public static final Orientation UPRIGHT_TIP_DOWN = new Orientation(true, -Math.PI / 2);
  public static final Orientation UPRIGHT_TIP_UP = new Orientation(true, Math.PI / 2);

  public Orientation {
    Checks.within("angle", angle, -Math.PI / 2, Math.PI / 2, "rad");
  }

  /** Lying on a slope. */
  public static Orientation tilted(double tipUpAngle) {
    return new Orientation(false, tipUpAngle);
  }

  /** Height gained per length along the piece towards the tip [-]. */
  public double rise() {
    return upright ? StrictMath.signum(angle) : StrictMath.sin(angle);
  }
}
