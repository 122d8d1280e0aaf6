package lastinch.solver.judge;

import java.util.ArrayList;
import java.util.List;
import lastinch.solver.result.LapStretch;
import lastinch.solver.result.PassageRecord;
import lastinch.solver.result.PassageRecord.Role;

/** Stretches of the piece that show laps, by the lap index along its passages. */
public final class Laps {
  private Laps() {}

  /** Stretches of one grade each, in the order of the passages. */
  public static List<LapStretch> of(List<PassageRecord> passages) {
    List<LapStretch> laps = new ArrayList<>();
    for (PassageRecord p : passages) {
      if (p.role() != Role.PIECE && p.role() != Role.BOSS) {
        continue;
      }
      double half = 0.5 * p.length() / p.size();
      int i = 0;
      while (i < p.size()) {
        int from = i;
        double worst = 0.0;
        int grade = grade(p, i);
        while (i < p.size() && grade(p, i) == grade) {
          worst = Math.max(worst, p.lapIndex(i));
          i++;
        }
        if (grade > 0) {
          laps.add(new LapStretch(p.name(), p.at(from) - half, p.at(i - 1) + half, worst));
        }
      }
    }
    return laps;
  }

  /** 0 = clean or empty, 1 = faint, 2 = plain, 3 = pulses. */
  private static int grade(PassageRecord p, int i) {
    double index = p.lapIndex(i);
    if (!p.reached(i) || index < LapStretch.CLEAN) {
      return 0;
    }
    return index < LapStretch.PLAIN ? 1 : index < LapStretch.HALTS ? 2 : 3;
  }
}
