package lastinch.solver.filling;

import java.util.Optional;
import java.util.function.BooleanSupplier;
import lastinch.solver.result.PlaneField;
import lastinch.solver.result.PourResult;
import lastinch.solver.result.ToppedUp;

/** One pour under way, phase by phase; belongs to one thread. */
public interface Filling extends AutoCloseable {
  /**
   * Pours until the verdict.
   *
   * @param observer told of progress
   * @param stop polled once per step; the pour then ends as cancelled with what there is
   */
  PourResult fill(RunObserver observer, BooleanSupplier stop);

  /**
   * Goes on after the verdict, which stays as it is: the hand pours until the crucible is empty or
   * the cup full, nothing falls and no surface moves; 20 s at most.
   *
   * @param observer told of progress
   * @param stop polled once per step
   */
  ToppedUp topUp(RunObserver observer, BooleanSupplier stop);

  /**
   * What stands in the mould now; a copy.
   *
   * @param seconds how long heat is to be followed from here, which sets the depth of the columns
   *     of mould [s]
   */
  FilledState state(double seconds);

  /** What every square of the map saw, where the pour went over a plane. */
  default Optional<PlaneField> field() {
    return Optional.empty();
  }

  @Override
  default void close() {}
}
