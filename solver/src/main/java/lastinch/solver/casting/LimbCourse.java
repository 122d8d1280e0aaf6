package lastinch.solver.casting;

/** The middle line of a limb in the parting plane. */
public interface LimbCourse {
  /** Name of the limb. */
  String limb();

  /** Length [m]. */
  double length();

  /** Place at a distance [m]. */
  double xAt(double along);

  /** Place at a distance [m]. */
  double yAt(double along);

  /** Direction at a distance [rad], left positive. */
  double headingAt(double along);
}
