package lastinch.cases.units;

import java.util.List;
import java.util.Objects;

/**
 * What a person has to be told: the name of a sentence and what stands in its places. The sentences
 * themselves are with all others, beside the commands.
 *
 * @param key name of the sentence; empty when nothing is said
 * @param values what stands in its places a, b, c ...: words, numbers or further sayings
 */
public record Saying(String key, List<Object> values) {
  /** Nothing. */
  public static final Saying NONE = new Saying("", List.of());

  public Saying {
    Objects.requireNonNull(key, "key");
    values = List.copyOf(values);
  }

  public static Saying of(String key, Object... values) {
    return new Saying(key, List.of(values));
  }
}
