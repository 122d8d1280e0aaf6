package lastinch.solver.casting.gating;

import java.util.Objects;
import lastinch.solver.casting.Side;
import lastinch.solver.material.Checks;

/** Channel from the foot of the sprue to the gates. */
public sealed interface Runner permits Runner.Straight, Runner.Alongside {
  /** Width [m]. */
  double width();

  /** Depth through the parting plane [m]. */
  double depth();

  /** How far it goes on past the last gate [m], 0 = not at all. */
  double runsOn();

  Runner withWidth(double other);

  Runner withDepth(double other);

  /**
   * A runner of a given length that ends at its gates.
   *
   * @param length sprue foot to gate [m]
   */
  record Straight(double length, double width, double depth, double runsOn) implements Runner {
    public Straight {
      Checks.within("length", length, 1e-3, 5.0, "m");
      Checks.within("width", width, 1e-3, 0.5, "m");
      Checks.within("depth", depth, 1e-3, 0.5, "m");
      Checks.within("runsOn", runsOn, 0.0, 2.0, "m");
    }

    public Straight withLength(double other) {
      return new Straight(other, width, depth, runsOn);
    }

    @Override
    public Straight withWidth(double other) {
      return new Straight(length, other, depth, runsOn);
    }

    @Override
    public Straight withDepth(double other) {
      return new Straight(length, width, other, runsOn);
    }
  }

  /**
   * A runner beside the piece.
   *
   * @param side left or right
   * @param away gap between the runner and the piece's axis line of gates [m]; gate lengths bridge
   *     it
   * @param fedFrom end that the sprue feeds
   */
  record Alongside(
      Side side, double away, double width, double depth, FedFrom fedFrom, double runsOn)
      implements Runner {
    public Alongside {
      Objects.requireNonNull(side, "side");
      Objects.requireNonNull(fedFrom, "fedFrom");
      Checks.within("away", away, 0.0, 1.0, "m");
      Checks.within("width", width, 1e-3, 0.5, "m");
      Checks.within("depth", depth, 1e-3, 0.5, "m");
      Checks.within("runsOn", runsOn, 0.0, 2.0, "m");
    }

    @Override
    public Alongside withWidth(double other) {
      return new Alongside(side, away, other, depth, fedFrom, runsOn);
    }

    @Override
    public Alongside withDepth(double other) {
      return new Alongside(side, away, width, other, fedFrom, runsOn);
    }
  }

  /** End of a side runner at which the sprue comes in. */
  enum FedFrom {
    TOP,
    BOTTOM,
    THICK_END,
    TIP
  }
}
