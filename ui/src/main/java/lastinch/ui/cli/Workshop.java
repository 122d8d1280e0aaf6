package lastinch.ui.cli;

import java.nio.file.Path;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.function.BooleanSupplier;
import lastinch.cases.catalogue.Catalogue;
import lastinch.cases.format.Problem;
import lastinch.cases.mesh.UnitAnswer;
import lastinch.cases.plan.ReadResult;
import lastinch.solver.casting.PourCase;
import lastinch.solver.filling.Phase;
import lastinch.solver.filling.PlaneSettings;
import lastinch.solver.filling.RunObserver;
import lastinch.solver.levers.Owned;
import lastinch.solver.result.PourResult;
import lastinch.solver.result.Poured;
import lastinch.solver.run.DryPour;
import lastinch.solver.search.NextStep;
import lastinch.solver.study.Pourer;
import lastinch.solver.uncertainty.BandStudy;
import lastinch.ui.words.study.HowPoured;

/** What a command line needs from the other modules. */
public interface Workshop {
  /**
   * Reads a case file.
   *
   * @param file the case file
   * @param ownMaterials a person's own metals and moulds, if any
   */
  ReadResult read(Path file, Optional<Path> ownMaterials);

  /**
   * Reads a case file beside somebody who may be asked.
   *
   * @param unit is asked for the unit of a model when no file says it
   */
  default ReadResult read(Path file, Optional<Path> ownMaterials, UnitAnswer unit) {
    return read(file, ownMaterials);
  }

  /**
   * Metals and moulds.
   *
   * @param ownMaterials a person's own file, if any
   */
  Shelf shelf(Optional<Path> ownMaterials);

  /** Pours a case dry, until the verdict. */
  PourResult pour(PourCase pourCase, RunObserver observer, BooleanSupplier stopRequested);

  /** Pours a case dry, until nothing moves any more. */
  default Poured toTheEnd(PourCase pourCase, RunObserver observer, BooleanSupplier stopRequested) {
    return new Poured(pour(pourCase, observer, stopRequested), Optional.empty(), Optional.empty());
  }

  /** The same over the plane. */
  default Poured toTheEnd(
      PourCase pourCase,
      PlaneSettings settings,
      RunObserver observer,
      BooleanSupplier stopRequested) {
    return DryPour.run(
        DryPour.plane(settings), pourCase, Phase.TOPPING_UP, observer, stopRequested);
  }

  /**
   * Pours many cases dry over the plane.
   *
   * @param square edge of the squares [m]
   */
  default Pourer.Run overPlane(double square) {
    return Pourer.overPlane(square);
  }

  /**
   * How far an answer holds.
   *
   * @param best result of the case
   * @return empty when asked to stop, or when there is no verdict
   */
  default Optional<BandStudy> bands(
      PourCase pourCase, PourResult best, BooleanSupplier stopRequested) {
    return Optional.empty();
  }

  /**
   * How far an answer holds, in every command alike: with it goes the word of a plan.
   *
   * @param how it was poured
   * @return empty also where a single pour is the answer
   */
  default Optional<BandStudy> bands(
      PourCase pourCase, PourResult best, HowPoured how, BooleanSupplier stopRequested) {
    return pourCase.checking().isOn() || how.isPlane()
        ? Optional.empty()
        : bands(pourCase, best, stopRequested);
  }

  /**
   * What to change first.
   *
   * @param bands how far the answer of the case holds
   * @param owned what the shop has
   * @param wanted heat to spare that is wanted [-]
   * @return empty when asked to stop
   */
  default Optional<NextStep> next(
      PourCase pourCase,
      BandStudy bands,
      Owned owned,
      double wanted,
      BooleanSupplier stopRequested) {
    return Optional.empty();
  }

  /**
   * Metals and moulds, and what is wrong with a person's own file of them.
   *
   * @param catalogue as shipped when anything is wrong
   * @param problems to put right
   */
  record Shelf(Catalogue catalogue, List<Problem> problems) {
    public Shelf {
      Objects.requireNonNull(catalogue, "catalogue");
      problems = List.copyOf(problems);
    }
  }
}
