package lastinch.solver.decide;

import java.util.Optional;
import lastinch.solver.casting.Laws;
import lastinch.solver.casting.PourCase;
import lastinch.solver.material.Band;

/** Figures in the laws of the sum, unless a checking option holds them. */
final class OfLaws {
  private OfLaws() {}

  static Optional<Band> spreading(PourCase job) {
    return job.checking().spreading().isPresent()
        ? Optional.empty()
        : Optional.of(job.laws().spreading());
  }

  static PourCase withSpreading(PourCase job, Band factor) {
    return Copies.with(job, new Laws(factor, job.laws().rangeRatio()));
  }

  static Optional<Band> rangeRatio(PourCase job) {
    return job.checking().mushShare().isPresent()
        ? Optional.empty()
        : Optional.of(job.laws().rangeRatio());
  }

  static PourCase withRangeRatio(PourCase job, Band ratio) {
    return Copies.with(job, new Laws(job.laws().spreading(), ratio));
  }
}
