package lastinch.ui.cli;

import java.nio.file.Path;
import java.util.Optional;
import java.util.function.BooleanSupplier;
import lastinch.cases.plan.ReadResult;
import lastinch.solver.casting.PourCase;
import lastinch.solver.result.PourResult;
import lastinch.solver.run.DryPour;
import lastinch.solver.run.RunObserver;

/** The real thing. */
final class Shop implements Workshop {
  @Override
  public ReadResult read(Path file, Optional<Path> ownMaterials) {
    throw new UnsupportedOperationException("no catalogue yet");
  }

  @Override
  public PourResult pour(PourCase pourCase, RunObserver observer, BooleanSupplier stopRequested) {
    return DryPour.run(pourCase, observer, stopRequested);
  }
}
