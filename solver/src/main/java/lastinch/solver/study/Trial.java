package lastinch.solver.study;

import java.util.Objects;

/**
 * A value of a lever, and the run that was made with it.
 *
 * @param value in the lever's unit
 * @param glance what came of it
 */
public record Trial(double value, RunSummary glance) {
  public Trial {
    Objects.requireNonNull(glance, "glance");
  }
}
