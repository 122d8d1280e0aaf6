package lastinch.cases.units;

import java.util.Objects;
import java.util.Optional;

/**
 * What came of reading a value: the value, or what to tell the person who wrote it.
 *
 * @param <T> kind of value
 */
public sealed interface Parsed<T> permits Parsed.Good, Parsed.Bad {

  /** The value, when there is one. */
  Optional<T> value();

  /** A sound value. */
  record Good<T>(T got) implements Parsed<T> {
    public Good {
      Objects.requireNonNull(got, "got");
    }

    @Override
    public Optional<T> value() {
      return Optional.of(got);
    }
  }

  /**
   * A refusal.
   *
   * @param said what is the matter
   * @param suggestion what to write instead, when it is known
   */
  record Bad<T>(Saying said, Optional<String> suggestion) implements Parsed<T> {
    public Bad {
      Objects.requireNonNull(said, "said");
      Objects.requireNonNull(suggestion, "suggestion");
    }

    @Override
    public Optional<T> value() {
      return Optional.empty();
    }

    /** The same refusal of another kind of value. */
    <U> Bad<U> as() {
      return new Bad<>(said, suggestion);
    }
  }

  /** A sound value. */
  static <T> Parsed<T> good(T value) {
    return new Good<>(value);
  }

  /** A refusal without a suggestion. */
  static <T> Parsed<T> bad(String key, Object... values) {
    return new Bad<>(Saying.of(key, values), Optional.empty());
  }

  /** A refusal that knows better. */
  static <T> Parsed<T> bad(Saying said, String suggestion) {
    return new Bad<>(said, Optional.of(suggestion));
  }
}
