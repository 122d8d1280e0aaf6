package lastinch.solver.geometry.cavity;

import java.util.List;
import lastinch.solver.casting.Centreline;
import lastinch.solver.casting.GapMap.Kind;
import lastinch.solver.casting.GapMap.Part;
import lastinch.solver.casting.Limb;
import lastinch.solver.casting.Solid;
import lastinch.solver.geometry.solid.SolidTree;

/** A drawn piece: its gap is what lies inside along a line in the direction of the draw. */
public final class SolidRegion implements GapRegion {
  /** A line that touches less than this meets nothing [m]; chosen, as thin as the least gap. */
  private static final double LEAST = 1e-6;

  /** Share of lines through two bodies at once from which on faces count as buried [-]; chosen. */
  private static final double BURIED = 1e-3;

  private final Solid solid;
  private final List<Centreline> lines;
  private final SolidTree.Line line;
  private final Tally tally = new Tally();

  /** What the lines cast so far have met. */
  public static final class Tally {
    public long inside;
    public long torn;
    public long crossing;

    private Tally() {}
  }

  public SolidRegion(Solid solid, List<Centreline> lines) {
    this.solid = solid;
    this.lines = lines;
    line = new SolidTree(solid).line();
  }

  public Tally tally() {
    return tally;
  }

  /** Whether bodies lie in each other, so that faces are buried in metal. */
  public boolean isOverlapping() {
    return tally.crossing > BURIED * tally.inside;
  }

  public Solid solid() {
    return solid;
  }

  @Override
  public Part part() {
    return new Part(Kind.PIECE, lines.size() == 1 ? lines.get(0).limb() : Limb.ONLY);
  }

  @Override
  public double gapAt(double x, double y) {
    line.cast(x, y);
    boolean open = line.inside() > LEAST;
    if (line.isHit()) {
      tally.inside += open ? 1 : 0;
      tally.torn += line.isTorn() ? 1 : 0;
      tally.crossing += line.isCrossing() ? 1 : 0;
    }
    return open ? line.inside() : 0.0;
  }

  @Override
  public double middleAt(double x, double y) {
    line.cast(x, y);
    return line.middle();
  }

  @Override
  public double alongAt(double x, double y) {
    double along = x;
    double best = Double.POSITIVE_INFINITY;
    for (Centreline l : lines) {
      double s = l.nearest(x, y);
      double dx = l.xAt(s) - x;
      double dy = l.yAt(s) - y;
      if (dx * dx + dy * dy < best) {
        best = dx * dx + dy * dy;
        along = s;
      }
    }
    return along;
  }

  @Override
  public PlanBox box() {
    return new PlanBox(solid.low(0), solid.low(1), solid.high(0), solid.high(1));
  }
}
