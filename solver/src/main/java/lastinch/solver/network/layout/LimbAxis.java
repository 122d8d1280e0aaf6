package lastinch.solver.network.layout;

import java.util.LinkedHashMap;
import java.util.Map;
import lastinch.solver.casting.Limb;

/** Where limbs lie along the piece's axis, which sets their heights. */
final class LimbAxis {
  /** By limb name: axis position of its first and of its last station [m]. */
  private final Map<String, Double> from = new LinkedHashMap<>();

  private final Map<String, Double> to = new LinkedHashMap<>();

  /**
   * Places a limb after those that it sits on. One whose end hangs free follows its heading; one
   * that joins another runs to where that one ends, evenly on its way, so that heights agree round
   * every ring.
   */
  void place(Limb limb, boolean first) {
    boolean atStart = first || limb.from().isEmpty();
    double start = atStart ? 0.0 : endOfOther(limb.from(), 0.0);
    double free = start + limb.length() * StrictMath.cos(limb.heading());
    from.put(limb.name(), start);
    to.put(limb.name(), limb.to().isEmpty() ? free : endOfOther(limb.to(), free));
  }

  private double endOfOther(String name, double otherwise) {
    if ("boss".equals(name) || "start".equals(name)) {
      return 0.0;
    }
    if (name.endsWith(PartNames.THICK_END)) {
      return from.getOrDefault(without(name, PartNames.THICK_END), otherwise);
    }
    return to.getOrDefault(to.containsKey(name) ? name : without(name, PartNames.TIP), otherwise);
  }

  private static String without(String name, String end) {
    return name.endsWith(end) ? name.substring(0, name.length() - end.length()) : name;
  }

  /** Axis position at a distance along a limb [m]. */
  double at(Limb limb, double distance) {
    return from.get(limb.name()) + distance * along(limb);
  }

  /** Way along the axis per length of a limb [-]. */
  double along(Limb limb) {
    return (to.get(limb.name()) - from.get(limb.name())) / limb.length();
  }
}
