package lastinch.solver.geometry.solid;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import lastinch.solver.casting.Solid;

/**
 * How a drawn shape is laid into the mould: turned so that it is drawn along z and runs along x
 * with its thick end first, and moved so that x starts at 0, y = 0 is the middle of its volume and
 * the parting plane z = 0 locks the least or lies where the person wants it.
 *
 * @param solid the shape in the frame of the piece
 * @param up which way of the file points out of the cope: {@code x}, {@code -x}, {@code y} and so
 *     on, or {@code slanted} when the least extent lies between the axes
 * @param evenEnds whether both ends hold about the same, so that either may be the thick one
 * @param locked share of the plan area whose faces lean over the parting plane [-], so that the
 *     pattern locks in the mould
 */
public record PartOrientation(Solid solid, String up, boolean evenEnds, double locked) {
  /**
   * What the person says about it.
   *
   * @param up which way of the file points out of the cope, if said
   * @param thickEnd which way of the file the thick end lies, if said
   * @param otherEnd whether the thick end is the one that was not found
   * @param parting height of the parting plane above the lowest place of the piece as it lies [m],
   *     if said
   */
  public record Wish(
      Optional<String> up, Optional<String> thickEnd, boolean otherEnd, OptionalDouble parting) {
    /** Nothing said. */
    public static final Wish NONE =
        new Wish(Optional.empty(), Optional.empty(), false, OptionalDouble.empty());

    /**
     * The same wish for a piece made larger.
     *
     * @param factor every size times it [-]
     * @param perFace metal added on every face [m]
     */
    public Wish larger(double factor, double perFace) {
      return parting.isEmpty()
          ? this
          : new Wish(
              up, thickEnd, otherEnd, OptionalDouble.of(parting.getAsDouble() * factor + perFace));
    }
  }

  /** Names of the directions that {@link Wish} knows, in the order of preference. */
  public static final List<String> DIRECTIONS = List.of("z", "-z", "y", "-y", "x", "-x");

  private static final String SLANTED = "slanted";

  /**
   * A file axis is kept while no other direction is thinner by more than this share [-]; chosen.
   */
  private static final double KEEP = 0.03;

  /** Ends that differ by less than this share count as even [-]; chosen. */
  private static final double EVEN = 0.02;

  /**
   * Axes of the plan whose moments differ by less than this factor are left as the file has them
   * [-]; chosen.
   */
  private static final double ROUND = 1.2;

  /** Cosine of the angle, 5 degrees, within which an axis of the file is taken [-]; chosen. */
  private static final double SNAP = StrictMath.cos(StrictMath.toRadians(5.0));

  /** Points that are enough to find the thinnest direction [-]; chosen. */
  private static final int ENOUGH = 6000;

  /**
   * Lays a shape into the mould.
   *
   * @param points x, y, z of each point [m]
   * @param corners points of each triangle, anticlockwise from outside
   * @param wish what the person says
   */
  public static PartOrientation of(double[] points, int[] corners, Wish wish) {
    double[] up;
    String name;
    if (wish.up().isPresent()) {
      name = wish.up().get();
      up = direction(name);
    } else {
      up = thinnest(points, corners);
      name = nameOf(up);
    }
    double[][] turn = frame(up);
    double[] turned = apply(points, turn);
    double[] about = PlanMoments.of(turned, corners);
    Optional<double[]> said = wish.thickEnd().flatMap(d -> inPlan(direction(d), turn));
    double[] along = said.orElse(alongAxis(about, name));
    turned =
        apply(
            turned, new double[][] {{along[0], along[1], 0}, {-along[1], along[0], 0}, {0, 0, 1}});
    double[] ends = ends(turned, corners);
    boolean even = Math.abs(ends[0] - ends[1]) <= EVEN * (ends[0] + ends[1]);
    boolean found = said.isEmpty() && !even && ends[1] > ends[0];
    if (found != wish.otherEnd()) {
      turned = apply(turned, new double[][] {{-1, 0, 0}, {0, -1, 0}, {0, 0, 1}});
    }
    double right = low(turned, 1);
    double left = right + extent(turned, new double[] {0, 1, 0});
    // a surface with holes may have its middle anywhere
    double middle = Math.max(right, Math.min(left, PlanMoments.of(turned, corners)[1]));
    move(turned, -low(turned, 0), -middle, 0.0);
    PartingPlane parting =
        wish.parting().isPresent()
            ? PartingPlane.at(turned, corners, low(turned, 2) + wish.parting().getAsDouble())
            : PartingPlane.least(turned, corners);
    move(turned, 0.0, 0.0, -parting.plane());
    return new PartOrientation(
        new Solid(turned, corners), name, even && said.isEmpty(), parting.locked());
  }

  /** Height of the parting plane above the lowest place of the piece as it lies [m]. */
  public double parting() {
    return -solid.low(2);
  }

  /** Extent of the piece along the draw [m]. */
  public double height() {
    return solid.high(2) - solid.low(2);
  }

  /** Direction away from the thick end in the plan; empty when that is along the draw. */
  private static Optional<double[]> inPlan(double[] thickEnd, double[][] turn) {
    double x = 0.0;
    double y = 0.0;
    for (int d = 0; d < 3; d++) {
      x -= turn[0][d] * thickEnd[d];
      y -= turn[1][d] * thickEnd[d];
    }
    double norm = Math.sqrt(x * x + y * y);
    return norm > 0.1 ? Optional.of(new double[] {x / norm, y / norm}) : Optional.empty();
  }

  private static double[] direction(String name) {
    double sign = name.startsWith("-") ? -1.0 : 1.0;
    int axis = name.charAt(name.length() - 1) - 'x';
    double[] d = new double[3];
    d[axis] = sign;
    return d;
  }

  private static String nameOf(double[] up) {
    for (String name : DIRECTIONS) {
      double[] d = direction(name);
      if (d[0] * up[0] + d[1] * up[1] + d[2] * up[2] > 1.0 - 1e-12) {
        return name;
      }
    }
    return SLANTED;
  }

  /** Direction of the least extent. */
  private static double[] thinnest(double[] points, int[] corners) {
    double[] best = direction("z");
    double least = extent(points, best);
    for (String name : List.of("y", "x")) {
      double e = extent(points, direction(name));
      if (e < least * (1.0 - KEEP)) {
        least = e;
        best = direction(name);
      }
    }
    double[] free = refined(some(points), SurfaceAxes.thin(points, corners));
    if (extent(points, free) < least * (1.0 - KEEP)) {
      best = free;
    }
    return best;
  }

  /** So few of the points that trying many directions costs little. */
  private static double[] some(double[] points) {
    int every = Math.max(1, points.length / 3 / ENOUGH);
    double[] few = new double[3 * ((points.length / 3 + every - 1) / every)];
    for (int k = 0; k < few.length / 3; k++) {
      System.arraycopy(points, 3 * k * every, few, 3 * k, 3);
    }
    return few;
  }

  /** Turns a direction in ever smaller steps while the extent shrinks. */
  private static double[] refined(double[] points, double[] start) {
    double[] best = start;
    double least = extent(points, best);
    for (double step = 0.05; step > 2e-4; step *= 0.5) {
      boolean better = true;
      for (int round = 0; better && round < 20; round++) {
        better = false;
        double[][] f = frame(best);
        for (int k = 0; k < 4; k++) {
          double side = k % 2 == 0 ? step : -step;
          double[] tried = new double[3];
          for (int d = 0; d < 3; d++) {
            tried[d] = best[d] + side * f[k / 2][d];
          }
          double norm = Math.sqrt(tried[0] * tried[0] + tried[1] * tried[1] + tried[2] * tried[2]);
          for (int d = 0; d < 3; d++) {
            tried[d] /= norm;
          }
          double e = extent(points, tried);
          if (e < least) {
            least = e;
            best = tried;
            better = true;
          }
        }
      }
    }
    return best;
  }

  private static double extent(double[] points, double[] d) {
    double low = Double.POSITIVE_INFINITY;
    double high = Double.NEGATIVE_INFINITY;
    for (int p = 0; p < points.length; p += 3) {
      double s = points[p] * d[0] + points[p + 1] * d[1] + points[p + 2] * d[2];
      low = Math.min(low, s);
      high = Math.max(high, s);
    }
    return high - low;
  }

  /** A right-handed frame whose third axis is given; rows are its axes. */
  private static double[][] frame(double[] up) {
    double[] across = Math.abs(up[0]) < 0.9 ? new double[] {1, 0, 0} : new double[] {0, 1, 0};
    double dot = across[0] * up[0] + across[1] * up[1] + across[2] * up[2];
    double[] x = {across[0] - dot * up[0], across[1] - dot * up[1], across[2] - dot * up[2]};
    double norm = Math.sqrt(x[0] * x[0] + x[1] * x[1] + x[2] * x[2]);
    for (int d = 0; d < 3; d++) {
      x[d] /= norm;
    }
    double[] y = {
      up[1] * x[2] - up[2] * x[1], up[2] * x[0] - up[0] * x[2], up[0] * x[1] - up[1] * x[0]
    };
    return new double[][] {x, y, up};
  }

  private static double[] apply(double[] points, double[][] rows) {
    double[] out = new double[points.length];
    for (int p = 0; p < points.length; p += 3) {
      for (int r = 0; r < 3; r++) {
        out[p + r] =
            points[p] * rows[r][0] + points[p + 1] * rows[r][1] + points[p + 2] * rows[r][2];
      }
    }
    return out;
  }

  private static void move(double[] points, double x, double y, double z) {
    for (int p = 0; p < points.length; p += 3) {
      points[p] += x;
      points[p + 1] += y;
      points[p + 2] += z;
    }
  }

  private static double low(double[] points, int axis) {
    double low = Double.POSITIVE_INFINITY;
    for (int p = axis; p < points.length; p += 3) {
      low = Math.min(low, points[p]);
    }
    return low;
  }

  /** Direction of the piece in its plan; the axes of the file where they nearly fit. */
  private static double[] alongAxis(double[] about, String name) {
    double xx = about[2];
    double xy = about[3];
    double yy = about[4];
    double mean = 0.5 * (xx + yy);
    double root = Math.sqrt(0.25 * (xx - yy) * (xx - yy) + xy * xy);
    double[] along = {1.0, 0.0};
    if (mean - root > 0.0 && mean + root < ROUND * (mean - root)) {
      return along;
    }
    double angle = 0.5 * StrictMath.atan2(2.0 * xy, xx - yy);
    along = new double[] {StrictMath.cos(angle), StrictMath.sin(angle)};
    if (!name.equals(SLANTED)) {
      if (Math.abs(along[0]) > SNAP) {
        along = new double[] {StrictMath.signum(along[0]), 0.0};
      } else if (Math.abs(along[1]) > SNAP) {
        along = new double[] {0.0, StrictMath.signum(along[1])};
      }
    }
    return along[0] < -1e-9 || (Math.abs(along[0]) <= 1e-9 && along[1] < 0.0)
        ? new double[] {-along[0], -along[1]}
        : along;
  }

  /** Volume within the first and the last third of the length [m3]. */
  private static double[] ends(double[] points, int[] corners) {
    double low = low(points, 0);
    double high = low + extent(points, new double[] {1, 0, 0});
    double third = (high - low) / 3.0;
    double all = PlanMoments.volumeBelow(points, corners, high + third);
    return new double[] {
      PlanMoments.volumeBelow(points, corners, low + third),
      all - PlanMoments.volumeBelow(points, corners, high - third)
    };
  }
}
