package lastinch.solver.casting;

import java.util.List;
import java.util.Objects;
import java.util.OptionalDouble;

/**
 * Options that switch physics off so that a run can be held against an exact solution. A result
 * made with any of them is not a forecast.
 *
 * @param mouldStaysAtHeat mould face never warms
 * @param frictionFactor fixed Darcy factor [-]
 * @param spreading factor on axial spreading [-], 0 = off; absent = 1
 * @param entryLoss loss coefficient where metal leaves cup or sprue [-]
 * @param pushesBack whether surface tension and air push back
 * @param freezingStraight solid share straight between liquidus and end of freezing
 * @param cupKeptAt height of metal above the cup floor, held [m]
 * @param entersAt speed of the metal in the first channel of the piece, held [m/s]
 * @param startsWet metal already in place at the start
 * @param fluid what is poured instead of the metal's flow figures
 * @param cellLength longest thermal cell [m]
 * @param frontCourant share of a cell the metal may cross per step [-]
 * @param heatStep longest heat step [s]
 * @param mushShare share of new solid that rides along as slurry [-], 0 to 1
 * @param perfectContact no resistance between metal and mould face
 * @param wallCurvature whether the mould round a convex section widens with depth
 * @param lipLoss whether metal cools between reading and cup
 * @param rims whether a flat section of the network is parted into a middle and rims
 */
public record Checking(
    boolean mouldStaysAtHeat,
    OptionalDouble frictionFactor,
    OptionalDouble spreading,
    OptionalDouble entryLoss,
    boolean pushesBack,
    boolean freezingStraight,
    OptionalDouble cupKeptAt,
    OptionalDouble entersAt,
    List<StartsWet> startsWet,
    Fluid fluid,
    OptionalDouble cellLength,
    OptionalDouble frontCourant,
    OptionalDouble heatStep,
    OptionalDouble mushShare,
    boolean perfectContact,
    boolean wallCurvature,
    boolean lipLoss,
    boolean rims) {
  /**
   * Longest thermal cell of a usual run of the network [m]; chosen. Halved: no stop of a demo moves
   * by over 1 %.
   */
  public static final double USUAL_CELL = 5e-3;

  /**
   * Share of a cell that the fastest metal of a usual run of the network passes in a step [-];
   * chosen. From a quarter to a thirtieth, with cells from 5 to 2 mm, the flat feather stops at 272
   * to 274 mm.
   */
  public static final double USUAL_COURANT = 0.25;

  /** Longest heat step of a usual run of the network [s]; chosen. */
  public static final double USUAL_HEAT_STEP = 10e-3;

  /** Nothing switched: an ordinary dry pour. */
  public static final Checking NONE =
      new Checking(
          false,
          OptionalDouble.empty(),
          OptionalDouble.empty(),
          OptionalDouble.empty(),
          true,
          false,
          OptionalDouble.empty(),
          OptionalDouble.empty(),
          List.of(),
          Fluid.METAL,
          OptionalDouble.empty(),
          OptionalDouble.empty(),
          OptionalDouble.empty(),
          OptionalDouble.empty(),
          false,
          true,
          true,
          true);

  public Checking {
    startsWet = List.copyOf(startsWet);
    Objects.requireNonNull(fluid, "fluid");
  }

  /** Whether anything is switched. */
  public boolean isOn() {
    return !equals(NONE);
  }

  /** What flows. */
  public enum Fluid {
    METAL,
    /** Water at 20 degC that neither freezes nor exchanges heat. */
    WATER
  }

  /**
   * Metal in place at the start.
   *
   * @param part name of a channel
   * @param from [m] along it
   * @param to [m] along it
   * @param speed [m/s]
   */
  public record StartsWet(String part, double from, double to, double speed) {
    public StartsWet {
      Objects.requireNonNull(part, "part");
    }
  }

  /** Options that are a number. */
  public enum Figure {
    FRICTION_FACTOR,
    SPREADING,
    ENTRY_LOSS,
    CUP_KEPT_AT,
    ENTERS_AT,
    CELL_LENGTH,
    FRONT_COURANT,
    HEAT_STEP,
    MUSH_SHARE
  }

  /** The same with one figure at a value, in its unit. */
  public Checking with(Figure changed, double value) {
    return new Checking(
        mouldStaysAtHeat,
        changed == Figure.FRICTION_FACTOR ? OptionalDouble.of(value) : frictionFactor,
        changed == Figure.SPREADING ? OptionalDouble.of(value) : spreading,
        changed == Figure.ENTRY_LOSS ? OptionalDouble.of(value) : entryLoss,
        pushesBack,
        freezingStraight,
        changed == Figure.CUP_KEPT_AT ? OptionalDouble.of(value) : cupKeptAt,
        changed == Figure.ENTERS_AT ? OptionalDouble.of(value) : entersAt,
        startsWet,
        fluid,
        changed == Figure.CELL_LENGTH ? OptionalDouble.of(value) : cellLength,
        changed == Figure.FRONT_COURANT ? OptionalDouble.of(value) : frontCourant,
        changed == Figure.HEAT_STEP ? OptionalDouble.of(value) : heatStep,
        changed == Figure.MUSH_SHARE ? OptionalDouble.of(value) : mushShare,
        perfectContact,
        wallCurvature,
        lipLoss,
        rims);
  }
}
