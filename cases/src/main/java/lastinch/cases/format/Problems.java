package lastinch.cases.format;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;
import lastinch.cases.units.Parsed;
import lastinch.cases.units.Saying;

/** Collects what a person has to put right, and notes on what was accepted all the same. */
public final class Problems {
  /** More than these are counted, not listed; nobody puts more right at once. */
  public static final int MOST = 100;

  private final TreeSet<Problem> errors = new TreeSet<>();
  private final TreeSet<Problem> notes = new TreeSet<>();
  private int more;

  /** Nothing found yet. */
  public Problems() {}

  /** Something that must be put right. */
  public void add(Problem problem) {
    if (errors.add(problem) && errors.size() > MOST) {
      errors.pollLast();
      more++;
    }
  }

  /** All that was found elsewhere, how many were not listed included. */
  void addErrors(Problems other) {
    other.errors.forEach(this::add);
    more += other.more;
  }

  /** Something that must be put right, at a place: a sentence and what stands in its places. */
  public void add(Span span, String key, Object... values) {
    add(span, Saying.of(key, values));
  }

  /** Something that must be put right, at a place. */
  public void add(Span span, Saying said) {
    add(span, said, Optional.empty());
  }

  /** Something that must be put right, at a place, and what to write instead. */
  public void add(Span span, Saying said, String suggestion) {
    add(span, said, Optional.of(suggestion));
  }

  /** Something that must be put right, at a place, and what to write instead, when it is known. */
  public void add(Span span, Saying said, Optional<String> suggestion) {
    add(span.problem(said, suggestion));
  }

  /** What came of reading a value at a place; what is wrong with it is added. */
  public <T> Optional<T> taken(Span span, Parsed<T> parsed) {
    if (parsed instanceof Parsed.Bad<T> bad) {
      add(span, bad.said(), bad.suggestion());
    }
    return parsed.value();
  }

  /** Something that was accepted but should be known. */
  public void note(Span span, String key, Object... values) {
    note(span, Saying.of(key, values));
  }

  /** Something that was accepted but should be known. */
  public void note(Span span, Saying said) {
    keep(span.problem(said, Optional.empty()));
  }

  /** A note that was made elsewhere. */
  void keep(Problem note) {
    if (notes.size() < MOST) {
      notes.add(note);
    }
  }

  /** Whether nothing has to be put right. */
  public boolean isEmpty() {
    return errors.isEmpty();
  }

  /** How many things have to be put right. */
  public int count() {
    return errors.size() + more;
  }

  /**
   * What has to be put right, by file and place, each once; the last of more than {@link #MOST}
   * says how many are not listed.
   */
  public List<Problem> errors() {
    List<Problem> all = new ArrayList<>(errors);
    if (more > 0) {
      all.add(Problem.ofFile(errors.last().file(), "wrong.moreBeginThese", more));
    }
    return all;
  }

  /** What was accepted but should be known, by file and place. */
  public List<Problem> notes() {
    return new ArrayList<>(notes);
  }
}
