package lastinch.solver.casting;

import java.util.Objects;
import java.util.Optional;

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
   * @param spot the very place in the parting plane, when it was given by coordinates; distance and
   *     side are then those nearest to it
   */
  record At(String limb, double distance, Side side, Optional<Spot> spot) implements Place {
    public At {
      Objects.requireNonNull(limb, "limb");
      Objects.requireNonNull(side, "side");
      Objects.requireNonNull(spot, "spot");
    }

    /** A place given by its distance. */
    public At(String limb, double distance, Side side) {
      this(limb, distance, side, Optional.empty());
    }
  }

  /**
   * A place in the parting plane.
   *
   * @param x along the piece [m]
   * @param y to the left [m]
   */
  record Spot(double x, double y) {}
}
