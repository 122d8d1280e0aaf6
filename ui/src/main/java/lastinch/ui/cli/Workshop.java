package lastinch.ui.cli;

import java.nio.file.Path;
import java.util.Optional;
import java.util.function.BooleanSupplier;
import lastinch.cases.plan.ReadResult;
import lastinch.solver.casting.PourCase;
import lastinch.solver.result.PourResult;
import lastinch.solver.run.RunObserver;

/** What a command line needs from the other modules. */
interface Workshop {
  /**
   * Reads a case file.
   *
   * @param file the case file
   * @param ownMaterials a person's own metals and moulds, if any
   */
  ReadResult read(Path file, Optional<Path> ownMaterials);

  /** Pours a case dry. */
  PourResult pour(PourCase pourCase, RunObserver observer, BooleanSupplier stopRequested);
}
