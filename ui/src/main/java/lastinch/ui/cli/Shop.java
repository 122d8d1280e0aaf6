package lastinch.ui.cli;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.function.BooleanSupplier;
import lastinch.cases.catalogue.Catalogue;
import lastinch.cases.catalogue.CatalogueMaterials;
import lastinch.cases.format.CaseText;
import lastinch.cases.format.Problem;
import lastinch.cases.format.Problems;
import lastinch.cases.format.SourceText;
import lastinch.cases.mesh.UnitAnswer;
import lastinch.cases.plan.CaseReader;
import lastinch.cases.plan.ReadResult;
import lastinch.solver.casting.PourCase;
import lastinch.solver.filling.Phase;
import lastinch.solver.filling.RunObserver;
import lastinch.solver.levers.Owned;
import lastinch.solver.result.PourResult;
import lastinch.solver.result.Poured;
import lastinch.solver.run.DryPour;
import lastinch.solver.search.NextStep;
import lastinch.solver.study.Measure;
import lastinch.solver.study.RunCache;
import lastinch.solver.uncertainty.BandStudy;
import lastinch.solver.uncertainty.Bands;

/** The real thing: files, catalogue and solver. */
final class Shop implements Workshop {
  @Override
  public ReadResult read(Path file, Optional<Path> ownMaterials) {
    return read(file, ownMaterials, UnitAnswer.NOBODY);
  }

  @Override
  public ReadResult read(Path file, Optional<Path> ownMaterials, UnitAnswer unit) {
    Shelf shelf = shelf(ownMaterials);
    return shelf.problems().isEmpty()
        ? CaseReader.read(file, new CatalogueMaterials(shelf.catalogue()), unit)
        : new ReadResult.Unsound(shelf.problems(), List.of());
  }

  @Override
  public Shelf shelf(Optional<Path> ownMaterials) {
    Catalogue builtIn = Catalogue.builtIn();
    if (ownMaterials.isEmpty()) {
      return new Shelf(builtIn, List.<Problem>of());
    }
    Problems problems = new Problems();
    Catalogue catalogue =
        SourceText.read(ownMaterials.get(), problems)
            .flatMap(source -> CaseText.parse(source, problems))
            .map(top -> builtIn.with(top, problems))
            .orElse(builtIn);
    return new Shelf(catalogue, problems.errors());
  }

  @Override
  public PourResult pour(PourCase pourCase, RunObserver observer, BooleanSupplier stopRequested) {
    return DryPour.run(pourCase, observer, stopRequested);
  }

  @Override
  public Poured toTheEnd(PourCase pourCase, RunObserver observer, BooleanSupplier stopRequested) {
    return DryPour.run(DryPour.NETWORK, pourCase, Phase.TOPPING_UP, observer, stopRequested);
  }

  @Override
  public Optional<BandStudy> bands(
      PourCase pourCase, PourResult best, BooleanSupplier stopRequested) {
    int workers = Math.max(1, Runtime.getRuntime().availableProcessors());
    return Bands.around(pourCase, best, Measure.MARGIN, workers, stopRequested);
  }

  @Override
  public Optional<NextStep> next(
      PourCase pourCase,
      BandStudy bands,
      Owned owned,
      double wanted,
      BooleanSupplier stopRequested) {
    try (RunCache studies = RunCache.onAllCores(RunCache.Watch.NONE, stopRequested)) {
      return NextStep.of(studies, pourCase, bands, owned, wanted);
    }
  }
}
