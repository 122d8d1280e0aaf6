package lastinch.cases.format;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;

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

  /** Something that must be put right, at a place. */
  public void add(Span span, String sentence) {
    add(span.problem(sentence, Optional.empty()));
  }

  /** Something that must be put right, at a place, and what to write instead. */
  public void add(Span span, String sentence, String suggestion) {
    add(span.problem(sentence, Optional.of(suggestion)));
  }

  /** Something that was accepted but should be known. */
  public void note(Span span, String sentence) {
    keep(span.problem(sentence, Optional.empty()));
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
      all.add(Problem.ofFile(errors.last().file(), "And " + more + " more; begin with these"));
    }
    return all;
  }

  /** What was accepted but should be known, by file and place. */
  public List<Problem> notes() {
    return new ArrayList<>(notes);
  }
}
