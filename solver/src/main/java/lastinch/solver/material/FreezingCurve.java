package lastinch.solver.material;

import java.util.Objects;

/**
 * Share of solid against temperature. Falls from 1 to 0 as temperature rises; may jump at an
 * arrest.
 */
public sealed interface FreezingCurve
    permits FreezingCurve.Straight,
        FreezingCurve.Lever,
        FreezingCurve.Scheil,
        FreezingCurve.Isothermal,
        FreezingCurve.Table {

  /** Temperature at which freezing starts [K]. */
  double liquidus();

  /** Temperature at which the last metal freezes [K]; may be an arrest. */
  double endOfFreezing();

  /**
   * The same metal found to start freezing at another temperature: a composition a little off the
   * one meant. A straight line and a curve by points move with their start and keep their range. An
   * arrest stays where it is; a start below it is an alloy that freezes all at that start, one
   * above the melting point of the pure solvent takes that point with it.
   *
   * @param newLiquidus [K]
   */
  FreezingCurve startingAt(double newLiquidus);

  /** Share of solid [-] at a temperature [K]; just above an arrest, the share before the arrest. */
  double solidFraction(double temperature);

  /**
   * Follows the curve from the liquidus down to the end of freezing, the share before an arrest.
   *
   * @param temperature filled with temperatures, falling [K]
   * @param solid filled with the share of solid at each [-], as long as {@code temperature}
   */
  default void trace(double[] temperature, double[] solid) {
    int steps = temperature.length - 1;
    double end = endOfFreezing();
    double above = Math.nextUp(end);
    for (int i = 0; i <= steps; i++) {
      double t = liquidus() + (end - liquidus()) * i / steps;
      temperature[i] = t;
      solid[i] = liquidus() == end ? 0.0 : solidFraction(Math.max(t, above));
    }
  }

  /** Solid share in proportion to degrees below the liquidus. */
  record Straight(double liquidus, double endOfFreezing) implements FreezingCurve {
    public Straight {
      Checks.within("liquidus", liquidus, 250.0, 2500.0, "K");
      Checks.within("endOfFreezing", endOfFreezing, 250.0, liquidus, "K");
    }

    @Override
    public FreezingCurve startingAt(double newLiquidus) {
      return new Straight(newLiquidus, endOfFreezing + newLiquidus - liquidus);
    }

    @Override
    public double solidFraction(double temperature) {
      if (temperature >= liquidus) {
        return 0.0;
      }
      return temperature <= endOfFreezing
          ? 1.0
          : (liquidus - temperature) / (liquidus - endOfFreezing);
    }
  }

  /**
   * Equilibrium freezing of a binary alloy with straight phase lines.
   *
   * @param solventMelting melting point of the pure solvent [K]
   * @param partition partition ratio [-], below 1
   */
  record Lever(double liquidus, double endOfFreezing, double solventMelting, double partition)
      implements FreezingCurve {
    public Lever {
      Checks.within("liquidus", liquidus, 250.0, 2500.0, "K");
      Checks.within("endOfFreezing", endOfFreezing, 250.0, liquidus, "K");
      Checks.within("solventMelting", solventMelting, liquidus, 3000.0, "K");
      Checks.within("partition", partition, 0.001, 0.999, "-");
    }

    @Override
    public FreezingCurve startingAt(double newLiquidus) {
      return new Lever(
          newLiquidus,
          Math.min(endOfFreezing, newLiquidus),
          Math.max(solventMelting, newLiquidus),
          partition);
    }

    @Override
    public double solidFraction(double temperature) {
      if (temperature >= liquidus) {
        return 0.0;
      }
      if (temperature <= endOfFreezing) {
        return 1.0;
      }
      double lever =
          (liquidus - temperature) / ((1.0 - partition) * (solventMelting - temperature));
      return Math.min(1.0, lever);
    }
  }

  /**
   * Freezing without diffusion in the solid, along a straight or curved liquidus, ending in an
   * arrest at which the rest freezes. Liquidus line: {@code T = solventMelting - slope w - bend
   * w^2}, w in percent by mass.
   *
   * @param liquidus start of freezing [K]; fixes the composition on the line
   * @param endOfFreezing arrest [K]
   * @param solventMelting melting point of the pure solvent [K]
   * @param slope [K/%]
   * @param bend [K/%^2]
   * @param partition partition ratio [-], below 1
   */
  record Scheil(
      double liquidus,
      double endOfFreezing,
      double solventMelting,
      double slope,
      double bend,
      double partition)
      implements FreezingCurve {
    /** A solute lowers the start of freezing by this much at least [K]; our own figure. */
    private static final double NEARLY_PURE = 0.1;

    public Scheil {
      Checks.within("liquidus", liquidus, 250.0, 2500.0, "K");
      Checks.within("endOfFreezing", endOfFreezing, 250.0, liquidus, "K");
      Checks.within("solventMelting", solventMelting, liquidus, 3000.0, "K");
      Checks.within("slope", slope, 0.0, 100.0, "K/%");
      Checks.within("bend", bend, 0.0, 10.0, "K/%^2");
      Checks.within("partition", partition, 0.001, 0.999, "-");
    }

    private double composition(double temperature) {
      double drop = solventMelting - temperature;
      return bend == 0.0
          ? drop / slope
          : (Math.sqrt(slope * slope + 4.0 * bend * drop) - slope) / (2.0 * bend);
    }

    @Override
    public FreezingCurve startingAt(double newLiquidus) {
      return new Scheil(
          newLiquidus,
          Math.min(endOfFreezing, newLiquidus),
          Math.max(solventMelting, newLiquidus + NEARLY_PURE),
          slope,
          bend,
          partition);
    }

    @Override
    public double solidFraction(double temperature) {
      if (temperature >= liquidus) {
        return 0.0;
      }
      if (temperature <= endOfFreezing) {
        return 1.0;
      }
      double ratio = composition(temperature) / composition(liquidus);
      return 1.0 - StrictMath.pow(ratio, 1.0 / (partition - 1.0));
    }

    /**
     * {@inheritDoc} Even ratios of the liquid's composition, which makes the liquid left over a
     * geometric row and puts most points where most metal freezes.
     */
    @Override
    public void trace(double[] temperature, double[] solid) {
      int steps = temperature.length - 1;
      double first = composition(liquidus);
      double grows = StrictMath.pow(composition(endOfFreezing) / first, 1.0 / steps);
      double shrinks = StrictMath.pow(grows, 1.0 / (partition - 1.0));
      double w = first;
      double left = 1.0;
      for (int i = 0; i <= steps; i++) {
        temperature[i] = solventMelting - (slope + bend * w) * w;
        solid[i] = 1.0 - left;
        w *= grows;
        left *= shrinks;
      }
      temperature[0] = liquidus;
      temperature[steps] = endOfFreezing;
    }
  }

  /** All at one temperature: pure metals and eutectics. */
  record Isothermal(double liquidus) implements FreezingCurve {
    public Isothermal {
      Checks.within("liquidus", liquidus, 250.0, 2500.0, "K");
    }

    @Override
    public FreezingCurve startingAt(double newLiquidus) {
      return new Isothermal(newLiquidus);
    }

    @Override
    public double endOfFreezing() {
      return liquidus;
    }

    @Override
    public double solidFraction(double temperature) {
      return temperature >= liquidus ? 0.0 : 1.0;
    }
  }

  /**
   * By points, straight between them; what is left at {@code endOfFreezing} freezes there.
   *
   * @param liquidus start of freezing [K]
   * @param endOfFreezing arrest or last point [K]
   * @param solid share of solid [-] against temperature [K]
   */
  record Table(double liquidus, double endOfFreezing, Curve solid) implements FreezingCurve {
    public Table {
      Checks.within("liquidus", liquidus, 250.0, 2500.0, "K");
      Checks.within("endOfFreezing", endOfFreezing, 250.0, liquidus, "K");
      Objects.requireNonNull(solid, "solid");
    }

    @Override
    public FreezingCurve startingAt(double newLiquidus) {
      double[] at = solid.temperatures();
      for (int i = 0; i < at.length; i++) {
        at[i] += newLiquidus - liquidus;
      }
      double end = endOfFreezing + newLiquidus - liquidus;
      return new Table(newLiquidus, end, Curve.of(at, solid.values()));
    }

    @Override
    public double solidFraction(double temperature) {
      if (temperature >= liquidus) {
        return 0.0;
      }
      return temperature <= endOfFreezing ? 1.0 : solid.at(temperature);
    }
  }
}
