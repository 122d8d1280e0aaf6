package lastinch.solver.levers;

import java.util.List;
import java.util.Objects;
import java.util.function.BiFunction;
import lastinch.solver.casting.PourCase;

/**
 * A line in the list of levers.
 *
 * @param key name of its words
 * @param maker gives the levers of that name a job has in a shop: none, one, or one for each part
 */
public record LeverEntry(String key, BiFunction<PourCase, Owned, List<Lever>> maker) {
  public LeverEntry {
    Objects.requireNonNull(key, "key");
    Objects.requireNonNull(maker, "maker");
  }
}
