package lastinch.solver.geometry.solid;

/**
 * A flat parting plane across the draw, and what it locks. A face locks where it looks down above
 * the plane or up below it; one that lies within {@link #slack} of the plane does not.
 *
 * @param plane its height in the frame of the points [m]
 * @param locked share of the plan area that locks [-]
 */
record PartingPlane(double plane, double locked) {
  /**
   * Heights at which the plane is tried [-]; chosen: the plane is known to a 400th of the height.
   */
  private static final int LEVELS = 400;

  /**
   * How near to the plane a face counts as lying in it [m].
   *
   * @param height extent of the piece along the draw [m]
   */
  static double slack(double height) {
    return height / LEVELS;
  }

  /** A plane at a height that a person chose [m]. */
  static PartingPlane at(double[] points, int[] corners, double plane) {
    double[] range = range(points);
    double slack = slack(range[1] - range[0]);
    double plan = 0.0;
    double locks = 0.0;
    for (int t = 0; t < corners.length; t += 3) {
      double z = middle(points, corners, t);
      double area = PlanMoments.planArea(points, corners, t);
      plan += Math.max(area, 0.0);
      if (area < 0.0 && z > plane + slack) {
        locks -= area;
      } else if (area > 0.0 && z < plane - slack) {
        locks += area;
      }
    }
    return new PartingPlane(plane, plan > 0.0 ? locks / plan : 0.0);
  }

  /** The plane that locks the least plan area. */
  static PartingPlane least(double[] points, int[] corners) {
    double[] range = range(points);
    double low = range[0];
    double high = range[1];
    double step = slack(high - low);
    double[] up = new double[LEVELS + 2];
    double[] down = new double[LEVELS + 2];
    double plan = 0.0;
    double looksDownAbove = 0.0;
    for (int t = 0; t < corners.length; t += 3) {
      double area = PlanMoments.planArea(points, corners, t);
      double above = middle(points, corners, t) - low;
      int level = step > 0.0 ? (int) Math.min(LEVELS, above / step) : 0;
      plan += Math.max(area, 0.0);
      if (area > 0.0) {
        up[level] += area;
      } else {
        down[level] -= area;
        looksDownAbove -= area;
      }
    }
    double looksUpBelow = 0.0;
    double least = Double.POSITIVE_INFINITY;
    int first = 0;
    int last = 0;
    for (int level = 0; level <= LEVELS; level++) {
      looksDownAbove -= down[level];
      double locks = looksDownAbove + looksUpBelow;
      if (locks < least - 1e-9 * plan) {
        least = locks;
        first = level;
        last = level;
      } else if (locks <= least + 1e-9 * plan && last == level - 1) {
        last = level;
      }
      looksUpBelow += up[level];
    }
    double at = low + (0.5 * (first + last) + 0.5) * step;
    return new PartingPlane(Math.min(high, at), plan > 0.0 ? least / plan : 0.0);
  }

  private static double middle(double[] points, int[] corners, int t) {
    double z = 0.0;
    for (int k = 0; k < 3; k++) {
      z += points[3 * corners[t + k] + 2] / 3.0;
    }
    return z;
  }

  /** Lowest and highest z [m]. */
  private static double[] range(double[] points) {
    double low = Double.POSITIVE_INFINITY;
    double high = Double.NEGATIVE_INFINITY;
    for (int p = 2; p < points.length; p += 3) {
      low = Math.min(low, points[p]);
      high = Math.max(high, points[p]);
    }
    return new double[] {low, high};
  }
}
