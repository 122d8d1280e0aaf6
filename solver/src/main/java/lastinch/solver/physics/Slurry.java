package lastinch.solver.physics;

import lastinch.solver.material.Basis;
import lastinch.solver.material.Checks;
import lastinch.solver.material.Citation;

/**
 * How freezing metal stops flowing: as a slurry that stiffens, or as a skin that closes the gap.
 * Solid share 0 to the share at which flow stops, gaps of 0.2 to 60 mm. The split between the two
 * is an order-of-magnitude model, so it is always carried with a band.
 */
public final class Slurry {
  /** Where the laws come from. */
  public static final Citation SOURCE =
      new Citation(
          Basis.ESTIMATE,
          "Krieger & Dougherty 1959 (stiffening); share of slurry and least open gap are ours",
          "band of the share: separation times or divided by 3");

  /**
   * Largest factor on the viscosity [-]; numerical, as good as stopped: halved stops move by 0.2
   * mm.
   */
  public static final double LARGEST_FACTOR = 1e4;

  /**
   * Solid share at which a skin counts as solid when its temperature is asked for [-]; ours, so
   * that an arrest at the end does not count.
   */
  public static final double EFFECTIVE_SOLID = 0.9;

  /**
   * Least open gap, as a share of the whole, that still lets metal through [-]; ours, no source:
   * halved ten plans stay as they are.
   */
  private static final double LEAST_OPEN_SHARE = 0.15;

  /**
   * Least open gap that still lets metal through [m]; ours, no source: halved ten plans stay as
   * they are.
   */
  private static final double LEAST_OPEN = 1e-4;

  /** Share of the gap that stays open at least [-]; keeps a division finite. */
  private static final double LEAST_SHARE = 1e-3;

  /**
   * Carried solid that must be gone before a shut place opens again, or it flutters [-]; chosen.
   */
  private static final double REOPENS = 0.05;

  /** How much wider than what stops it a shut place must be to open again [-]; chosen. */
  private static final double REOPENS_WIDER = 1.2;

  private Slurry() {}

  /**
   * What carried solid multiplies the viscosity by [-], at most {@link #LARGEST_FACTOR}.
   *
   * @param solidShare carried in the moving metal [-], 0 to 1
   * @param stopShare share at which it stops flowing [-]
   */
  public static double viscosityFactor(double solidShare, double stopShare) {
    Checks.within("solidShare", solidShare, 0.0, 1.0, "-");
    Checks.within("stopShare", stopShare, 0.01, 1.0, "-");
    if (solidShare == 0.0) {
      return 1.0;
    }
    if (solidShare >= stopShare) {
      return LARGEST_FACTOR;
    }
    double factor = StrictMath.exp(-2.5 * stopShare * StrictMath.log(1.0 - solidShare / stopShare));
    return Math.min(factor, LARGEST_FACTOR);
  }

  /**
   * Width of the freezing range against the temperature drop across a growing skin [-]: small means
   * a skin, large means mush. 0 for isothermal metals, infinite without heat flow.
   *
   * @param liquidus [K]
   * @param effectiveSolidus temperature at solid share {@link #EFFECTIVE_SOLID} [K]
   * @param heatFlux into one face at first contact [W/m2], not negative
   * @param gap thickness of the section [m]
   * @param conductivitySolid [W/(m K)]
   */
  public static double separation(
      double liquidus,
      double effectiveSolidus,
      double heatFlux,
      double gap,
      double conductivitySolid) {
    Checks.within("liquidus", liquidus, 100.0, 5000.0, "K");
    Checks.within("effectiveSolidus", effectiveSolidus, 100.0, liquidus, "K");
    Checks.within("heatFlux", heatFlux, 0.0, Double.MAX_VALUE, "W/m2");
    Checks.within("gap", gap, 1e-9, Double.MAX_VALUE, "m");
    Checks.within("conductivitySolid", conductivitySolid, 1e-3, Double.MAX_VALUE, "W/(m K)");
    double range = liquidus - effectiveSolidus;
    if (range == 0.0) {
      return 0.0;
    }
    return range * 4.0 * conductivitySolid / (heatFlux * gap);
  }

  /**
   * Share of new solid that is carried as slurry [-]; the rest joins the skin.
   *
   * @param separation from {@link #separation} [-], may be infinite
   * @param half separation at which it is half of the new solid [-], above 0
   */
  public static double mushShare(double separation, double half) {
    Checks.within("separation", separation, 0.0, Double.POSITIVE_INFINITY, "-");
    Checks.within("half", half, Double.MIN_NORMAL, Double.MAX_VALUE, "-");
    double inverse = half / separation;
    return 1.0 / (1.0 + inverse * inverse);
  }

  /**
   * Open gap under which a section closed by skin passes nothing [m].
   *
   * @param gap thickness of the section [m]
   */
  public static double openGapStop(double gap) {
    Checks.within("gap", gap, 0.0, Double.MAX_VALUE, "m");
    return Math.max(LEAST_OPEN_SHARE * gap, LEAST_OPEN);
  }

  /**
   * Skin after new solid was shared between skin and slurry; heat gained melts skin first.
   *
   * @param skin before, in the unit of {@code amount}
   * @param change of the share of solid in the step [-]
   * @param amount of metal, mass or volume
   * @param mushShare of new solid that rides along [-]
   * @param after share of solid now [-]
   */
  public static double skin(
      double skin, double change, double amount, double mushShare, double after) {
    double grown = skin;
    if (change > 0.0) {
      grown += (1.0 - mushShare) * change * amount;
    } else if (grown > 0.0) {
      grown = Math.max(0.0, grown + change * amount);
    }
    return Math.min(grown, after * amount);
  }

  /** Share of the gap that a skin of a share of all metal leaves open [-]. */
  public static double openShare(double skinShare) {
    return Math.max(LEAST_SHARE, 1.0 - skinShare);
  }

  /**
   * Share of solid in what moves [-].
   *
   * @param solid of all metal [-]
   * @param skinShare of all metal that is skin [-]
   */
  public static double carried(double solid, double skinShare) {
    if (solid <= 0.0) {
      return 0.0;
    }
    return skinShare < 1.0 ? Math.max(0.0, (solid - skinShare) / (1.0 - skinShare)) : 1.0;
  }

  /**
   * Whether metal cannot flow through a place; one that was shut opens with a margin only.
   *
   * @param was shut until now
   * @param slurry solid in what moves [-]
   * @param flowStop share of it that stops the flow [-]
   * @param open gap that skins leave open [m]
   * @param stop gap that stops the flow, from {@link #openGapStop} [m]
   */
  public static boolean isShut(
      boolean was, double slurry, double flowStop, double open, double stop) {
    return was
        ? slurry >= flowStop - REOPENS || open < REOPENS_WIDER * stop
        : slurry >= flowStop || open < stop;
  }
}
