package lastinch.solver.filling;

import java.util.List;
import lastinch.solver.casting.PourCase;

/** A way to fill a mould. Holds settings only; every pour has a state of its own. */
public interface FillingSolver {
  /** What a case asks for that this solver does not have; empty when it can be poured. */
  List<Need> needs(PourCase job);

  /**
   * An empty mould, ready to be poured.
   *
   * @param job a case of which nothing is in {@link #needs}
   */
  Filling begin(PourCase job);
}
