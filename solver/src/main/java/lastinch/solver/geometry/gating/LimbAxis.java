package lastinch.solver.geometry.gating;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import lastinch.solver.casting.Limb;

/**
 * Where limbs lie along the piece's axis, which sets their heights. A limb whose end hangs free
 * follows its heading; one that joins another runs to where that one ends, evenly on its way, so
 * that heights agree round every ring.
 */
public final class LimbAxis {
  private final LimbEnds ends;

  /** Axis position by joint [m]. */
  private final Map<String, Double> joints = new LinkedHashMap<>();

  public LimbAxis(List<Limb> limbs) {
    ends = new LimbEnds(limbs);
    joints.put(LimbEnds.START, 0.0);
    for (Limb limb : limbs) {
      double start = joints.computeIfAbsent(ends.start(limb), j -> 0.0);
      joints.putIfAbsent(ends.end(limb), start + limb.length() * StrictMath.cos(limb.heading()));
    }
  }

  /** Axis position at a distance along a limb [m]. */
  public double at(Limb limb, double distance) {
    return joints.get(ends.start(limb)) + distance * along(limb);
  }

  /** Way along the axis per length of a limb [-]. */
  public double along(Limb limb) {
    double start = joints.get(ends.start(limb));
    return (joints.get(ends.end(limb)) - start) / limb.length();
  }
}
