package lastinch.solver.result;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * A stretch of the piece that stays empty right across. Places are along the limb.
 *
 * @param passage limb
 * @param from its end nearer the start of the limb [m]
 * @param to its other end [m]
 * @param hole whether there is metal of the limb at both ends of it
 */
public record Gap(String passage, double from, double to, boolean hole) {
  /** Less metal than a ruler shows is none [m]; chosen. */
  private static final double RULER = 1e-3;

  /** How long it is [m]. */
  public double length() {
    return to - from;
  }

  /** What stays empty in each limb, in the order of the limbs and along them. */
  static List<Gap> of(PourResult result) {
    List<Gap> gaps = new ArrayList<>();
    if (result.outcome() instanceof Outcome.Misrun) {
      result.passages().stream()
          .filter(p -> p.role() == PassageRecord.Role.PIECE)
          .forEach(p -> add(gaps, p, result.stops()));
    }
    return gaps;
  }

  private static void add(List<Gap> gaps, PassageRecord limb, List<Stop> all) {
    List<Stop> stops =
        all.stream()
            .filter(s -> s.passage().equals(limb.name()) && s.way() != Stop.Way.ASIDE)
            .sorted(Comparator.comparingDouble(Stop::at))
            .toList();
    double from = stops.isEmpty() && isDry(limb) ? 0.0 : Double.NaN;
    for (Stop stop : stops) {
      if (stop.way() == Stop.Way.UP) {
        from = stop.at();
      } else {
        add(gaps, limb, Double.isNaN(from) ? 0.0 : from, stop.at());
        from = Double.NaN;
      }
    }
    if (!Double.isNaN(from)) {
      add(gaps, limb, from, limb.length());
    }
  }

  private static void add(List<Gap> gaps, PassageRecord limb, double from, double to) {
    if (to > from) {
      boolean hole = from > RULER && to < limb.length() - RULER;
      gaps.add(new Gap(limb.name(), from, to, hole));
    }
  }

  private static boolean isDry(PassageRecord limb) {
    for (int cell = 0; cell < limb.size(); cell++) {
      if (limb.reached(cell)) {
        return false;
      }
    }
    return true;
  }
}
