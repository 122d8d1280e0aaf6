package lastinch.solver.study;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import lastinch.solver.material.Checks;

/**
 * What a caster wants of a pour.
 *
 * @param spare share of the heat that is to be left [-]
 * @param also what is wanted besides
 */
public record Goal(double spare, List<Want> also) {
  private static final Want FULL_EDGE = new Want(Measure.EDGE, 0.0);

  public Goal {
    Checks.within("spare", spare, 0.0, 1.0, "-");
    also = List.copyOf(also);
  }

  /**
   * A limit that a measure keeps to.
   *
   * @param limit worst value that is still good
   */
  public record Want(Measure measure, double limit) {
    public Want {
      Objects.requireNonNull(measure, "measure");
    }

    /** How far a run is on the good side [of the measure's unit]; below zero on the bad one. */
    double inside(RunSummary glance) {
      return measure.goodness(glance.get(measure)) - measure.goodness(limit);
    }

    /** A run on the bad side: how far as a part of limit and way, from 0 to 1; 0 for others. */
    private double misses(RunSummary glance) {
      double off = -inside(glance);
      return off > 0.0 ? off / (off + Math.abs(limit)) : 0.0;
    }
  }

  /** So much heat to spare, whatever else. */
  public static Goal heat(double spare) {
    return new Goal(spare, List.of());
  }

  /** The same with a full edge as well. */
  public Goal withFullEdge() {
    return and(FULL_EDGE);
  }

  /** The same with one thing more that is wanted. */
  public Goal and(Want want) {
    List<Want> all = new ArrayList<>(also);
    all.add(want);
    return new Goal(spare, all);
  }

  /** Whether the rim has to come out full as well. */
  public boolean fullEdge() {
    return also.contains(FULL_EDGE);
  }

  /** Whether a run has it. */
  public boolean isMetBy(RunSummary glance) {
    return glance.fillsWith(spare) && also.stream().allMatch(w -> w.inside(glance) >= 0.0);
  }

  /** How far a run that fills is inside: the least of what is wanted; below zero outside. */
  public double inside(RunSummary glance) {
    double least = glance.heat() - spare;
    for (Want want : also) {
      least = Math.min(least, want.inside(glance));
    }
    return least;
  }

  /** Better is more: {@link RunSummary#goodness}, what is missed counting as up to a heat each. */
  public double goodness(RunSummary glance) {
    double good = glance.goodness();
    for (Want want : also) {
      good -= glance.answered() ? want.misses(glance) : 0.0;
    }
    return good;
  }
}
