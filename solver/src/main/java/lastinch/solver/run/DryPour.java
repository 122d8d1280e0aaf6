package lastinch.solver.run;

import java.util.ArrayList;
import java.util.List;
import java.util.function.BooleanSupplier;
import lastinch.solver.casting.GapMap;
import lastinch.solver.casting.PourCase;
import lastinch.solver.network.NetworkSolver;
import lastinch.solver.network.layout.NetworkScope;
import lastinch.solver.plane.PlaneSolver;
import lastinch.solver.result.PlanePour;
import lastinch.solver.result.PourResult;

/** The one way to run a case. */
public final class DryPour {
  private DryPour() {}

  /**
   * Parts of the solver that a case asks for and that do not exist; empty when it can be poured.
   */
  public static List<UnsupportedCase.Need> needs(PourCase pourCase) {
    List<UnsupportedCase.Need> needs = new ArrayList<>();
    for (NetworkScope.Part part : NetworkScope.missing(pourCase)) {
      needs.add(UnsupportedCase.Need.valueOf(part.name()));
    }
    return needs;
  }

  /**
   * Pours a case dry.
   *
   * @param pourCase the job
   * @param observer told of progress
   * @param stopRequested polled once per step; the run then ends as cancelled with what there is
   * @throws UnsupportedCase when the case needs a part of the solver that does not exist
   */
  public static PourResult run(
      PourCase pourCase, RunObserver observer, BooleanSupplier stopRequested) {
    List<UnsupportedCase.Need> needs = needs(pourCase);
    if (!needs.isEmpty()) {
      throw new UnsupportedCase(needs);
    }
    return NetworkSolver.run(pourCase, observer::onStep, stopRequested);
  }

  /**
   * Parts that a pour over the plane asks for and that do not exist; empty when it can be poured.
   *
   * @param pourCase the job
   * @param cell edge of the squares [m]
   */
  public static List<UnsupportedCase.Need> planeNeeds(PourCase pourCase, double cell) {
    List<UnsupportedCase.Need> needs = new ArrayList<>();
    for (PlaneSolver.Part part : PlaneSolver.missing(pourCase)) {
      needs.add(UnsupportedCase.Need.valueOf(part.name()));
    }
    if (PlaneSolver.isTooFine(pourCase, cell)) {
      needs.add(UnsupportedCase.Need.SQUARES_TOO_FINE);
    }
    return needs;
  }

  /**
   * Pours a case dry over the plane, in two dimensions, by one thread.
   *
   * @param pourCase the job
   * @param cell edge of the squares [m]
   * @param every seconds between two moments kept [s]; infinite for the end alone
   * @param observer told of progress
   * @param stopRequested polled once per step; the run then ends as cancelled with what there is
   * @throws UnsupportedCase when the case needs a part of the solver that does not exist, or the
   *     squares are too fine for the size of the job
   */
  public static PlanePour plane(
      PourCase pourCase,
      double cell,
      double every,
      RunObserver observer,
      BooleanSupplier stopRequested) {
    return plane(pourCase, cell, every, 1, observer, stopRequested);
  }

  /**
   * As {@link #plane(PourCase, double, double, RunObserver, BooleanSupplier)}, by several threads.
   *
   * @param threads that share the work; the answer is the same to the last bit for any number
   */
  public static PlanePour plane(
      PourCase pourCase,
      double cell,
      double every,
      int threads,
      RunObserver observer,
      BooleanSupplier stopRequested) {
    List<UnsupportedCase.Need> needs = planeNeeds(pourCase, cell);
    if (!needs.isEmpty()) {
      throw new UnsupportedCase(needs);
    }
    return PlaneSolver.run(pourCase, cell, every, threads, observer::onStep, stopRequested);
  }

  /** Edge of the finest squares in which a case can be poured over the plane [m]. */
  public static double finestSquare(PourCase pourCase) {
    return PlaneSolver.finest(pourCase);
  }

  /**
   * Pours a case dry over the plane, into a cavity drawn by other means than its piece and gating,
   * by one thread.
   *
   * @param pourCase the job
   * @param map the whole cavity
   * @param every seconds between two moments kept [s]; infinite for the end alone
   * @param observer told of progress
   * @param stopRequested polled once per step; the run then ends as cancelled with what there is
   * @throws UnsupportedCase when the case needs a part of the solver that does not exist
   */
  public static PlanePour plane(
      PourCase pourCase,
      GapMap map,
      double every,
      RunObserver observer,
      BooleanSupplier stopRequested) {
    return plane(pourCase, map, every, 1, observer, stopRequested);
  }

  /**
   * As {@link #plane(PourCase, GapMap, double, RunObserver, BooleanSupplier)}, by several threads.
   *
   * @param threads that share the work; the answer is the same to the last bit for any number
   */
  public static PlanePour plane(
      PourCase pourCase,
      GapMap map,
      double every,
      int threads,
      RunObserver observer,
      BooleanSupplier stopRequested) {
    if (PlaneSolver.missing(pourCase).contains(PlaneSolver.Part.METAL_IN_PLACE)) {
      throw new UnsupportedCase(List.of(UnsupportedCase.Need.METAL_IN_PLACE));
    }
    return PlaneSolver.run(pourCase, map, every, threads, observer::onStep, stopRequested);
  }
}
