package lastinch.solver.uncertainty;

import java.util.Optional;
import lastinch.solver.casting.PourCase;
import lastinch.solver.material.Band;

/** Figures in the laws of the sum, unless a checking option holds them. */
final class ModelInputs {
  private ModelInputs() {}

  static Optional<Band> spreading(PourCase job) {
    return job.checking().spreading().isPresent()
        ? Optional.empty()
        : Optional.of(job.laws().spreading());
  }

  static PourCase withSpreading(PourCase job, Band factor) {
    return job.withLaws(job.laws().withSpreading(factor));
  }

  static Optional<Band> rangeRatio(PourCase job) {
    return job.checking().mushShare().isPresent()
        ? Optional.empty()
        : Optional.of(job.laws().rangeRatio());
  }

  static PourCase withRangeRatio(PourCase job, Band ratio) {
    return job.withLaws(job.laws().withRangeRatio(ratio));
  }
}
