package lastinch.solver.geometry.cavity;

import lastinch.solver.casting.GapMap.Part;

/** A part of the cavity as a gap over the parting plane. */
public interface GapRegion {
  /** What it is. */
  Part part();

  /** Gap at a place [m], 0 outside. */
  double gapAt(double x, double y);

  /** Distance along its middle line [m]; for gating the place x. */
  default double alongAt(double x, double y) {
    return x;
  }

  /** Height of the middle of the gap above the parting plane [m], along the draw. */
  default double middleAt(double x, double y) {
    return 0.0;
  }

  /** Rectangle outside of which the gap is 0. */
  PlanBox box();
}
