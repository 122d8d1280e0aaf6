package lastinch.cases.format;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;

/** Collects what a person has to put right, and notes on what was accepted all the same. */
public final class Problems {
  private final TreeSet<Problem> errors = new TreeSet<>();
  private final TreeSet<Problem> notes = new TreeSet<>();

  /** Nothing found yet. */
  public Problems() {}

  /** Something that must be put right. */
  public void add(Problem problem) {
    errors.add(problem);
  }

  /** Something that must be put right, at a place. */
  public void add(Span span, String sentence) {
    errors.add(span.problem(sentence, Optional.empty()));
  }

  /** Something that must be put right, at a place, and what to write instead. */
  public void add(Span span, String sentence, String suggestion) {
    errors.add(span.problem(sentence, Optional.of(suggestion)));
  }

  /** Something that was accepted but should be known. */
  public void note(Span span, String sentence) {
    notes.add(span.problem(sentence, Optional.empty()));
  }

  /** A note that was made elsewhere. */
  void keep(Problem note) {
    notes.add(note);
  }

  /** Whether nothing has to be put right. */
  public boolean isEmpty() {
    return errors.isEmpty();
  }

  /** How many things have to be put right. */
  public int count() {
    return errors.size();
  }

  /** What has to be put right, by file and place, each once. */
  public List<Problem> errors() {
    return new ArrayList<>(errors);
  }

  /** What was accepted but should be known, by file and place. */
  public List<Problem> notes() {
    return new ArrayList<>(notes);
  }
}
