package lastinch.ui.chart.pour;

import java.util.List;
import lastinch.solver.casting.Limb;

/** Names of the places where limbs begin and end, the same for all that meet there. */
final class Joints {
  /** Where the piece begins: at its boss, or at the first station. */
  static final String START = "start";

  private static final String TIP = " tip";
  private static final String THICK_END = " thick end";

  private Joints() {}

  /** Joint at which a limb begins. */
  static String start(Limb limb, List<Limb> limbs) {
    return limb.from().isEmpty() ? START : named(limb.from(), limbs);
  }

  /** Joint at which a limb ends. */
  static String end(Limb limb, List<Limb> limbs) {
    return limb.to().isEmpty() ? limb.name() + TIP : named(limb.to(), limbs);
  }

  private static String named(String end, List<Limb> limbs) {
    if (end.equals("boss")) {
      return START;
    }
    for (Limb limb : limbs) {
      if (end.equals(limb.name() + THICK_END)) {
        return start(limb, limbs);
      }
      if (end.equals(limb.name() + TIP)) {
        return end(limb, limbs);
      }
    }
    return end;
  }
}
