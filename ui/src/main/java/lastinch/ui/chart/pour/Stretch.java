package lastinch.ui.chart.pour;

import java.util.ArrayList;
import java.util.List;
import lastinch.solver.result.FillHistory;
import lastinch.solver.result.PassageRecord;

/**
 * Metal along a channel at the end of a pour.
 *
 * @param from [m] along it
 * @param to [m]
 * @param flows whether it still flows
 * @param kelvin its heat [K]
 */
record Stretch(double from, double to, boolean flows, double kelvin) {
  private static final double LEAST = 1e-6;

  /**
   * Stretches of one channel, cell by cell, in its order.
   *
   * @param flowStop solid share at which metal stops flowing [-]
   */
  static List<Stretch> of(PassageRecord passage, FillHistory course, double flowStop) {
    List<Stretch> out = new ArrayList<>();
    boolean known = course.knows(passage.name());
    int last = course.size() - 1;
    int n = passage.size();
    for (int i = 0; i < n; i++) {
      double fill = known ? course.fill(passage.name(), last, i) : passage.reached(i) ? 1.0 : 0.0;
      if (fill <= LEAST) {
        continue;
      }
      double low = i == 0 ? 0.0 : 0.5 * (passage.at(i - 1) + passage.at(i));
      double high = i == n - 1 ? passage.length() : 0.5 * (passage.at(i) + passage.at(i + 1));
      boolean fromLow = i > 0 && (known ? course.fill(passage.name(), last, i - 1) > LEAST : true);
      boolean fromHigh = !fromLow && i < n - 1;
      double empty = (1.0 - Math.min(1.0, fill)) * (high - low);
      double solid = known ? course.solid(passage.name(), last, i) : passage.finalSolid(i);
      out.add(
          new Stretch(
              fromHigh ? low + empty : low,
              fromHigh ? high : high - empty,
              solid < flowStop,
              known ? course.temperature(passage.name(), last, i) : passage.finalTemperature(i)));
    }
    return out;
  }

  /** Metal without a break, whatever its heat. */
  static List<Stretch> joined(List<Stretch> stretches) {
    List<Stretch> out = new ArrayList<>();
    for (Stretch s : stretches) {
      Stretch before = out.isEmpty() ? s : out.get(out.size() - 1);
      if (!out.isEmpty() && s.from() - before.to() < LEAST) {
        out.set(
            out.size() - 1,
            new Stretch(before.from(), s.to(), before.flows() && s.flows(), s.kelvin()));
      } else {
        out.add(s);
      }
    }
    return out;
  }
}
