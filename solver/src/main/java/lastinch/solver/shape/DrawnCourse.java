package lastinch.solver.shape;

import lastinch.solver.casting.MiddleLine;

/** The middle line of a drawn limb. */
record DrawnCourse(MiddleLine line) implements Course {
  @Override
  public String limb() {
    return line.limb();
  }

  @Override
  public double length() {
    return line.length();
  }

  @Override
  public double xAt(double along) {
    return line.xAt(along);
  }

  @Override
  public double yAt(double along) {
    return line.yAt(along);
  }

  @Override
  public double headingAt(double along) {
    return line.headingAt(along);
  }
}
