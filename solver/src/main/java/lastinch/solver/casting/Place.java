package lastinch.solver.casting;

import java.util.Objects;

/** Where something joins the piece or the gating. */
public sealed interface Place permits Place.Into, Place.At {
  /**
   * A named part.
   *
   * @param part {@code boss}, {@code cup}, {@code runner} or the name of a limb
   */
  record Into(String part) implements Place {
    public Into {
      Objects.requireNonNull(part, "part");
    }
  }

  /**
   * A distance along a limb.
   *
   * @param limb its name
   * @param distance from its first station [m]
   * @param side where it enters
   */
  record At(String limb, double distance, Side side) implements Place {
    public At {
      Objects.requireNonNull(limb, "limb");
      Objects.requireNonNull(side, "side");
    }
  }
}
