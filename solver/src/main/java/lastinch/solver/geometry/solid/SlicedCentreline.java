package lastinch.solver.geometry.solid;

import lastinch.solver.casting.Centreline;
import lastinch.solver.geometry.cavity.LimbCourse;

/** The middle line of a drawn limb. */
public record SlicedCentreline(Centreline line) implements LimbCourse {
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
