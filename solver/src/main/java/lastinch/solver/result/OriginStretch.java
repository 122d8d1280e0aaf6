package lastinch.solver.result;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import lastinch.solver.result.PassageRecord.Role;

/**
 * A stretch of the piece whose first metal came through one gate.
 *
 * @param passage channel name
 * @param from [m]
 * @param to [m]
 * @param gate its name; empty for metal that came through none
 */
public record OriginStretch(String passage, double from, double to, String gate) {
  public OriginStretch {
    Objects.requireNonNull(passage, "passage");
    Objects.requireNonNull(gate, "gate");
  }

  /** The stretches of a result's piece, in the order of its passages. */
  public static List<OriginStretch> of(PourResult result) {
    List<OriginStretch> stretches = new ArrayList<>();
    for (PassageRecord p : result.passages()) {
      if (p.role() == Role.PIECE || p.role() == Role.BOSS) {
        add(stretches, p);
      }
    }
    return List.copyOf(stretches);
  }

  private static void add(List<OriginStretch> stretches, PassageRecord p) {
    double half = 0.5 * p.length() / p.size();
    int i = 0;
    while (i < p.size()) {
      int first = i;
      while (i < p.size() && p.reached(i) == p.reached(first) && p.gate(i).equals(p.gate(first))) {
        i++;
      }
      if (p.reached(first)) {
        stretches.add(
            new OriginStretch(p.name(), p.at(first) - half, p.at(i - 1) + half, p.gate(first)));
      }
    }
  }
}
