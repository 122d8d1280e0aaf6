package lastinch.solver.uncertainty;

import java.util.Optional;
import lastinch.solver.casting.Pour;
import lastinch.solver.casting.PourCase;
import lastinch.solver.material.Band;

/** How fast the hand is, as the case gives it. */
final class PourInputs {
  private PourInputs() {}

  /** Seconds that set the rate; where both are given, those to the full cup. */
  static Optional<Band> seconds(PourCase job) {
    if (job.pour() instanceof Pour.Empties e) {
      return Optional.of(e.seconds());
    }
    if (job.pour() instanceof Pour.CupFull c) {
      return Optional.of(c.seconds());
    }
    return job.pour() instanceof Pour.Both b ? Optional.of(b.cupFull()) : Optional.empty();
  }

  static PourCase withSeconds(PourCase job, Band seconds) {
    if (job.pour() instanceof Pour.CupFull) {
      return job.withPour(new Pour.CupFull(seconds));
    }
    return job.withPour(
        job.pour() instanceof Pour.Both b
            ? new Pour.Both(b.empties(), seconds)
            : new Pour.Empties(seconds));
  }

  static Optional<Band> rate(PourCase job) {
    return job.pour() instanceof Pour.AtRate r
        ? Optional.of(r.kilogramsPerSecond())
        : Optional.empty();
  }

  static PourCase withRate(PourCase job, Band rate) {
    return job.withPour(new Pour.AtRate(rate));
  }
}
