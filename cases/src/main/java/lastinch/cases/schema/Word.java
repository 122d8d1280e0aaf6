package lastinch.cases.schema;

import java.util.List;
import java.util.Objects;

/**
 * One word of a file.
 *
 * @param key as written, lower case, single spaces
 * @param kind what stands behind it
 * @param required whether it must be there once everything a file is based on is counted in
 * @param unknown whether {@code don't know} may stand behind it
 * @param applies when it can mean anything
 * @param twins other words that are taken for it, with a note
 * @param since number of the file format that brought it
 * @param help one line for a person
 */
public record Word(
    String key,
    Kind kind,
    boolean required,
    boolean unknown,
    Applies applies,
    List<String> twins,
    int since,
    String help) {
  public Word {
    Objects.requireNonNull(key, "key");
    Objects.requireNonNull(kind, "kind");
    Objects.requireNonNull(applies, "applies");
    Objects.requireNonNull(help, "help");
    twins = List.copyOf(twins);
  }

  /** A word that must be there. */
  static Word must(String key, Kind kind, String help) {
    return new Word(key, kind, true, false, Applies.ALWAYS, List.of(), 1, help);
  }

  /** A word that may be there. */
  static Word may(String key, Kind kind, String help) {
    return new Word(key, kind, false, false, Applies.ALWAYS, List.of(), 1, help);
  }

  /** The same, {@code don't know} allowed; a usual figure is then taken. */
  Word orUnknown() {
    return new Word(key, kind, false, true, applies, twins, since, help);
  }

  /** The same for some moulds only. */
  Word only(Applies when) {
    return new Word(key, kind, required, unknown, when, twins, since, help);
  }

  /** The same with words that are taken for it. */
  Word twins(String... others) {
    return new Word(key, kind, required, unknown, applies, List.of(others), since, help);
  }
}
