package lastinch.solver.casting;

import lastinch.solver.material.Checks;

/**
 * How the mould stands.
 *
 * @param upright whether the parting plane is vertical; else the sprue stands square to it
 * @param angle by which the tip lies above the thick end [rad]; plus or minus a right angle when
 *     upright
 */
public record Attitude(boolean upright, double angle) {
  public static final Attitude FLAT = new Attitude(false, 0.0);
  public static final Attitude UPRIGHT_TIP_DOWN = new Attitude(true, -Math.PI / 2);
  public static final Attitude UPRIGHT_TIP_UP = new Attitude(true, Math.PI / 2);

  public Attitude {
    Checks.within("angle", angle, -Math.PI / 2, Math.PI / 2, "rad");
  }

  /** Lying on a slope. */
  public static Attitude tilted(double tipUpAngle) {
    return new Attitude(false, tipUpAngle);
  }

  /** Height gained per length along the piece towards the tip [-]. */
  public double rise() {
    return upright ? StrictMath.signum(angle) : StrictMath.sin(angle);
  }
}
