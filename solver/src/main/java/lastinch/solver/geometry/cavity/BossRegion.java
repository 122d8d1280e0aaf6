package lastinch.solver.geometry.cavity;

import lastinch.solver.casting.Boss;
import lastinch.solver.casting.GapMap.Kind;
import lastinch.solver.casting.GapMap.Part;

/** The boss before the first station. */
record BossRegion(Boss boss) implements GapRegion {
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
  public PlanBox box() {
    return new PlanBox(-boss.length(), -0.5 * boss.width(), 0.0, 0.5 * boss.width());
  }
}
