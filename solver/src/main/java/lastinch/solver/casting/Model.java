package lastinch.solver.casting;

import java.util.List;
import java.util.Objects;

/**
 * The piece as it was drawn.
 *
 * @param solid its surface, as the cavity has it
 * @param lines middle lines of the limbs that stations were cut along; none unless it is long
 * @param form what kind of piece it is for a solver that knows channels only
 */
public record Model(Solid solid, List<Centreline> lines, Form form) {
  /** What kind of piece it is. */
  public enum Form {
    /** One long limb. */
    LONG,
    /** Too wide for its length: metal would not fill it from side to side. */
    TOO_WIDE,
    /** Branches or has holes. */
    TOO_BRANCHED
  }

  public Model {
    Objects.requireNonNull(solid, "solid");
    Objects.requireNonNull(form, "form");
    lines = List.copyOf(lines);
  }
}
