package lastinch.solver.levers;

import java.util.List;
import java.util.Objects;
import lastinch.solver.casting.PourCase;

/**
 * A line in the list of levers.
 *
 * @param key name of its words
 * @param maker gives the levers of that name a job has: none, one, or one for each part
 */
public record LeverEntry(String key, Maker maker) {
  public LeverEntry {
    Objects.requireNonNull(key, "key");
    Objects.requireNonNull(maker, "maker");
  }

  /** Makes the levers of one entry. */
  @FunctionalInterface
  public interface Maker {
    /** Levers of a job; {@code owned} is what the shop has. */
    List<Lever> on(PourCase job, Owned owned);
  }
}
