package lastinch.solver.shape;

/** The middle line of a limb in the parting plane. */
interface Course {
  /** Name of the limb. */
  String limb();

  /** Length [m]. */
  double length();

  /** Place at a distance [m]. */
  double xAt(double along);

  /** Place at a distance [m]. */
  double yAt(double along);

  /** Direction at a distance [rad]. */
  double headingAt(double along);
}
