package lastinch.solver.result;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Findings of one run as they come in, and the limits that every way of pouring judges by. */
public final class FindingList {
  /**
   * Gap in capillary lengths up to which metal fills it from face to face [-]; our own limit, no
   * source.
   */
  public static final double PUDDLE = 1.5;

  /** Push of the air ahead from which it is told of [Pa]; our own limit, no source. */
  public static final double AIR_COUNTS = 200.0;

  /** Kiln and nearest edge further apart than this are told of [K]; our own limit, no source. */
  public static final double FLASK_APART = 5.0;

  private final List<Finding> found = new ArrayList<>();

  /** Nothing found yet. */
  public FindingList() {}

  /**
   * Adds one.
   *
   * @param figures names and values in turn
   */
  public void add(
      Finding.Kind kind, Finding.Severity severity, Optional<Spot> where, Object... figures) {
    Map<String, Double> named = new LinkedHashMap<>();
    for (int i = 0; i < figures.length; i += 2) {
      named.put((String) figures[i], (Double) figures[i + 1]);
    }
    found.add(new Finding(kind, severity, where, named));
  }

  /** All of them, heaviest first. */
  public List<Finding> heaviestFirst() {
    List<Finding> sorted = new ArrayList<>(found);
    sorted.sort((a, b) -> b.severity().compareTo(a.severity()));
    return List.copyOf(sorted);
  }
}
