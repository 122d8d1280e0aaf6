package lastinch.solver.study;

import lastinch.solver.material.Checks;

/**
 * What a caster wants of a pour.
 *
 * @param spare share of the heat that is to be left [-]
 * @param fullEdge whether the rim has to come out full as well
 */
public record Goal(double spare, boolean fullEdge) {
  public Goal {
    Checks.within("spare", spare, 0.0, 1.0, "-");
  }

  /** So much heat to spare, whatever the rim looks like. */
  public static Goal heat(double spare) {
    return new Goal(spare, false);
  }

  /** Whether a run has it. */
  public boolean isMetBy(RunSummary glance) {
    return glance.fillsWith(spare) && !(fullEdge && glance.edgesRounded());
  }

  /** Better is more: {@link RunSummary#goodness}, a rounded rim counting as a heat of its own. */
  public double goodness(RunSummary glance) {
    return glance.goodness() - (fullEdge && glance.edgesRounded() ? 1.0 : 0.0);
  }
}
