package lastinch.solver.casting;

import java.util.Objects;
import java.util.OptionalDouble;
import lastinch.solver.material.Band;
import lastinch.solver.material.Curve;

/** What the hand does. */
public sealed interface Pour
    permits Pour.Empties, Pour.CupFull, Pour.Both, Pour.AtRate, Pour.ByCurve {

  /**
   * Mean mass rate [kg/s].
   *
   * @param melted in the crucible [kg]
   * @param massToRim metal that fills mould, gating and cup to the rim [kg]
   */
  double rate(double melted, double massToRim);

  /** Same pour at a fixed rate that a lever or a band asks for. */
  record AtRate(Band kilogramsPerSecond) implements Pour {
    public AtRate {
      Objects.requireNonNull(kilogramsPerSecond, "kilogramsPerSecond");
    }

    @Override
    public double rate(double melted, double massToRim) {
      return kilogramsPerSecond.value();
    }
  }

  /** The whole crucible in a time [s]; what is left when the cup is full stays in it. */
  record Empties(Band seconds) implements Pour {
    public Empties {
      Objects.requireNonNull(seconds, "seconds");
    }

    @Override
    public double rate(double melted, double massToRim) {
      return melted / seconds.value();
    }
  }

  /** First metal to cup full in a time [s]. */
  record CupFull(Band seconds) implements Pour {
    public CupFull {
      Objects.requireNonNull(seconds, "seconds");
    }

    @Override
    public double rate(double melted, double massToRim) {
      return massToRim / seconds.value();
    }
  }

  /** Both times known [s]: the second sets the rate, the first what goes into the ingot. */
  record Both(Band empties, Band cupFull) implements Pour {
    public Both {
      Objects.requireNonNull(empties, "empties");
      Objects.requireNonNull(cupFull, "cupFull");
    }

    @Override
    public double rate(double melted, double massToRim) {
      return massToRim / cupFull.value();
    }
  }

  /** Mass rate [kg/s] against time since first metal [s]. Metal that the cup cannot hold spills. */
  record ByCurve(Curve rateAgainstTime) implements Pour {
    public ByCurve {
      Objects.requireNonNull(rateAgainstTime, "rateAgainstTime");
    }

    @Override
    public double rate(double melted, double massToRim) {
      return rateAgainstTime.values()[0];
    }
  }

  /** Rate at a moment [kg/s], {@code time} since first metal [s]. */
  default double rateAt(double time, double melted, double massToRim) {
    return this instanceof ByCurve c ? c.rateAgainstTime().at(time) : rate(melted, massToRim);
  }

  /**
   * Whether metal that the cup cannot take runs over the rim instead of staying in the crucible.
   */
  default boolean spills() {
    return this instanceof ByCurve || this instanceof AtRate;
  }

  /** Seconds typed for emptying the crucible, when typed. */
  default OptionalDouble emptySeconds() {
    if (this instanceof Empties e) {
      return OptionalDouble.of(e.seconds().value());
    }
    return this instanceof Both b ? OptionalDouble.of(b.empties().value()) : OptionalDouble.empty();
  }
}
