package lastinch.solver.shape;

import lastinch.solver.casting.Boss;
import lastinch.solver.casting.GapMap.Kind;
import lastinch.solver.casting.GapMap.Part;

/** The boss before the first station. */
record Block(Boss boss) implements Region {
  @Override
  public Part part() {
    return new Part(Kind.BOSS, "boss");
  }

  @Override
  public double gapAt(double x, double y) {
    boolean inside = x <= 0.0 && x >= -boss.length() && Math.abs(y) <= 0.5 * boss.width();
    return inside ? boss.depth() : 0.0;
  }

  @Override
  public Box box() {
    return new Box(-boss.length(), -0.5 * boss.width(), 0.0, 0.5 * boss.width());
  }
}
