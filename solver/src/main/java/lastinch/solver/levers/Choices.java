package lastinch.solver.levers;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;

/** Choices with what the job has now in the first place. */
final class Choices {
  private Choices() {}

  /** The present choice first, then all others in their order. */
  static <T> List<T> withNow(List<T> offered, Predicate<T> isNow, T now) {
    List<T> all = new ArrayList<>();
    all.add(now);
    offered.stream().filter(isNow.negate()).forEach(all::add);
    return List.copyOf(all);
  }
}
