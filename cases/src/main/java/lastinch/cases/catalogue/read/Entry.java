package lastinch.cases.catalogue.read;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;

/**
 * One material as a file describes it.
 *
 * @param name as written
 * @param basedOn name of the material whose figures stand where this says nothing
 * @param alsoCalled other names
 * @param madeOf in plain words; may be empty
 * @param note may be empty
 * @param facts by word, in the file's order
 * @param replaced what own facts took the place of, by word
 * @param origin where it begins
 */
public record Entry(
    String name,
    Optional<String> basedOn,
    List<String> alsoCalled,
    String madeOf,
    String note,
    Map<String, Fact> facts,
    Map<String, Fact> replaced,
    Origin origin) {
  public Entry {
    Objects.requireNonNull(name, "name");
    Objects.requireNonNull(basedOn, "basedOn");
    Objects.requireNonNull(madeOf, "madeOf");
    Objects.requireNonNull(note, "note");
    Objects.requireNonNull(origin, "origin");
    alsoCalled = List.copyOf(alsoCalled);
  }

  /** The fact behind a word. */
  public Optional<Fact> fact(String word) {
    return Optional.ofNullable(facts.get(word));
  }

  /** The figure behind a word. */
  public Optional<Fact.Figure> figure(String word) {
    return facts.get(word) instanceof Fact.Figure f ? Optional.of(f) : Optional.empty();
  }

  /** The wording behind a word, empty when there is none. */
  public String wording(String word) {
    return facts.get(word) instanceof Fact.Wording w ? w.text() : "";
  }

  /** These facts where there are any, those of {@code base} elsewhere. */
  public Entry over(Entry base) {
    Map<String, Fact> merged = new LinkedHashMap<>(base.facts);
    Map<String, Fact> hidden = new LinkedHashMap<>(base.replaced);
    dropTable(MaterialWords.CONDUCTS, MaterialWords.CONDUCTS_TABLE, merged, hidden);
    dropTable(MaterialWords.TAKES, MaterialWords.TAKES_TABLE, merged, hidden);
    facts.forEach(
        (word, fact) -> {
          Fact before = merged.put(word, fact);
          if (before != null) {
            hidden.put(word, before);
          }
        });
    return new Entry(
        name,
        basedOn,
        alsoCalled.isEmpty() ? base.alsoCalled : alsoCalled,
        madeOf.isEmpty() ? base.madeOf : madeOf,
        note.isEmpty() ? base.note : note,
        merged,
        hidden,
        origin);
  }

  /** A single figure typed over a table stands for all heats. */
  private void dropTable(
      String single, String table, Map<String, Fact> merged, Map<String, Fact> hidden) {
    if (facts.containsKey(single) && !facts.containsKey(table)) {
      Fact dropped = merged.remove(table);
      if (dropped != null) {
        hidden.put(table, dropped);
      }
    }
  }
}
