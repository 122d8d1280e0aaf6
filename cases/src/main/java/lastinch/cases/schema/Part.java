package lastinch.cases.schema;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

/**
 * A group of words.
 *
 * @param name as used in sentences
 * @param words in the order of the day
 * @param eithers sets of words of which only one may be used
 */
public record Part(String name, List<Word> words, List<Either> eithers) {
  public Part {
    Objects.requireNonNull(name, "name");
    words = List.copyOf(words);
    eithers = List.copyOf(eithers);
  }

  /** A part without either-or. */
  static Part of(String name, Word... words) {
    return new Part(name, List.of(words), List.of());
  }

  /** The same part with an either-or more. */
  Part either(Either either) {
    List<Either> all = new ArrayList<>(eithers);
    all.add(either);
    return new Part(name, words, all);
  }

  /** The word of a key or of one of its twins. */
  public Optional<Word> word(String key) {
    Optional<Word> exact = words.stream().filter(w -> w.key().equals(key)).findFirst();
    return exact.isPresent()
        ? exact
        : words.stream().filter(w -> w.twins().contains(key)).findFirst();
  }

  /** All keys in one line. */
  public String listing() {
    return String.join(", ", words.stream().map(Word::key).toList());
  }

  /**
   * Words that exclude each other.
   *
   * @param words what they settle, for sentences
   * @param ways sets of words that belong together
   * @param required whether one of them must be there
   * @param together words of different ways that may all the same be typed together
   */
  public record Either(
      String words, List<List<String>> ways, boolean required, List<String> together) {
    public Either {
      ways = ways.stream().map(List::copyOf).toList();
      together = List.copyOf(together);
    }

    /** The way a word belongs to, or -1. */
    public int way(String key) {
      for (int i = 0; i < ways.size(); i++) {
        if (ways.get(i).contains(key)) {
          return i;
        }
      }
      return -1;
    }

    /** The leading words of all ways, for sentences. */
    public String listing() {
      return String.join(" or ", ways.stream().map(w -> w.get(0)).toList());
    }
  }
}
