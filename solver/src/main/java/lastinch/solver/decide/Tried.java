package lastinch.solver.decide;

import java.util.Objects;

/**
 * A value of a lever, and the run that was made with it.
 *
 * @param value in the lever's unit
 * @param glance what came of it
 */
public record Tried(double value, Glance glance) {
  public Tried {
    Objects.requireNonNull(glance, "glance");
  }
}
