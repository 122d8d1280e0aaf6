package lastinch.ui.chart.pour;

import java.util.List;
import java.util.Optional;
import lastinch.solver.result.PassageRecord;
import lastinch.solver.result.PourResult;
import lastinch.solver.result.Stop;

/** The part of the piece that a chart along the piece tells of: where it stops, or fills last. */
final class ToldLimb {
  private ToldLimb() {}

  static Optional<PassageRecord> of(PourResult result) {
    List<PassageRecord> limbs =
        result.passages().stream().filter(p -> p.role() == PassageRecord.Role.PIECE).toList();
    for (Stop stop : result.stops()) {
      for (PassageRecord p : limbs) {
        if (p.name().equals(stop.passage())) {
          return Optional.of(p);
        }
      }
    }
    Optional<PassageRecord> latest = limbs.stream().findFirst();
    for (PassageRecord p : limbs) {
      latest = latest(p) > latest(latest.get()) ? Optional.of(p) : latest;
    }
    return latest;
  }

  private static double latest(PassageRecord p) {
    double latest = 0.0;
    for (int i = 0; i < p.size(); i++) {
      latest = p.reached(i) ? Math.max(latest, p.arrivalTime(i)) : latest;
    }
    return latest;
  }
}
