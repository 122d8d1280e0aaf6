package lastinch.validation.lengths;

import lastinch.solver.material.Alloy;
import lastinch.solver.material.Band;
import lastinch.solver.material.Basis;
import lastinch.solver.material.Citation;
import lastinch.solver.material.Curve;
import lastinch.solver.material.FilmForming;
import lastinch.solver.material.FreezingCurve;
import lastinch.solver.material.MouldFamily;
import lastinch.solver.material.MouldMedium;
import lastinch.validation.Celsius;

/**
 * Metals and a tube that measured lengths were made with and the catalogue does not have. All
 * figures are handbook figures given from memory, as ranges; none was chosen by a length.
 */
final class StudyMaterials {
  /** Eutectic of grey iron [degC]: iron with silicon, from memory 1145 to 1155. */
  private static final double EUTECTIC = 1150.0;

  /** Where its eutectic has all frozen [degC]: ends of cooling curves, from memory 1090 to 1120. */
  private static final double IRON_ENDS = 1105.0;

  /**
   * Start of freezing of grey iron over its carbon figure, straight to the eutectic [degC]; Heine,
   * AFS Trans. 1986, from memory: 1569 - 97.3 CF, which gives 1150 at 4.3.
   */
  private static final double START = 1569.0;

  private static final double SLOPE = 97.3;

  /** Temperature that the gas film between sand and bronze was taken at [K]. */
  private static final double BRONZE_FILM = 800.0;

  /** Share of its carbon that austenite keeps [-]: about 2.1 of 4.3 %. */
  private static final double KEEPS = 0.49;

  private StudyMaterials() {}

  /**
   * Grey iron. Mills, Recommended values of thermophysical properties (2002), grey cast iron, and
   * Iida and Guthrie, from memory.
   *
   * @param carbon C + Si/4 + P/2 [%]
   * @param stop share of solid at which it stops [-]
   */
  static Alloy greyIron(double carbon, Band stop) {
    return new Alloy(
        "grey iron",
        ironFreezing(carbon),
        memory(240e3, 210e3, 270e3),
        memory(850.0, 800.0, 950.0),
        memory(750.0, 650.0, 850.0),
        memory(30.0, 25.0, 40.0),
        memory(35.0, 28.0, 50.0),
        memory(6900.0, 6750.0, 7050.0),
        -0.7,
        memory(7150.0, 7000.0, 7300.0),
        memory(6e-3, 4e-3, 9e-3),
        memory(1.0, 0.85, 1.25),
        angle(),
        Band.typed(1.0),
        FilmForming.NO,
        stop,
        Band.typed(0.0),
        Band.typed(kelvin(1350.0)));
  }

  /** Austenite by the lever rule down to the eutectic, which then freezes over a range. */
  private static FreezingCurve ironFreezing(double carbon) {
    double start = Math.max(EUTECTIC, START - SLOPE * carbon);
    if (start == EUTECTIC) {
      return new FreezingCurve.Straight(kelvin(EUTECTIC), kelvin(IRON_ENDS));
    }
    FreezingCurve austenite =
        new FreezingCurve.Lever(kelvin(start), kelvin(EUTECTIC), kelvin(START), KEEPS);
    int points = 8;
    double[] at = new double[points + 2];
    double[] solid = new double[points + 2];
    solid[0] = 1.0;
    at[0] = kelvin(IRON_ENDS);
    for (int i = 0; i <= points; i++) {
      at[1 + i] = Math.nextUp(kelvin(EUTECTIC)) + (start - EUTECTIC) * i / points;
      solid[1 + i] = austenite.solidFraction(at[1 + i]);
    }
    return new FreezingCurve.Table(kelvin(start), kelvin(IRON_ENDS), Curve.of(at, solid));
  }

  /** Aluminium with about 12 % silicon. Mills 2002, for Al-12Si; from memory. */
  static Alloy silumin() {
    return new Alloy(
        "silumin",
        new FreezingCurve.Straight(kelvin(582.0), kelvin(570.0)),
        memory(490e3, 440e3, 540e3),
        memory(1170.0, 1120.0, 1210.0),
        memory(1050.0, 980.0, 1150.0),
        memory(65.0, 55.0, 80.0),
        memory(150.0, 125.0, 170.0),
        memory(2420.0, 2390.0, 2450.0),
        -0.3,
        memory(2650.0, 2640.0, 2670.0),
        memory(1.2e-3, 0.9e-3, 1.4e-3),
        memory(0.85, 0.78, 0.9),
        angle(),
        memory(2.0, 1.0, 2.5),
        FilmForming.YES,
        memory(0.5, 0.35, 0.65),
        Band.typed(0.04),
        Band.typed(kelvin(700.0)));
  }

  /** Steel of 0.4 % carbon. Mills 2002; Miettinen 1997; from memory. */
  static Alloy steel() {
    return new Alloy(
        "steel",
        new FreezingCurve.Straight(kelvin(1490.0), kelvin(1440.0)),
        memory(265e3, 245e3, 280e3),
        memory(830.0, 790.0, 870.0),
        memory(690.0, 640.0, 750.0),
        memory(33.0, 27.0, 40.0),
        memory(33.0, 28.0, 38.0),
        memory(7000.0, 6900.0, 7080.0),
        -0.8,
        memory(7800.0, 7750.0, 7850.0),
        memory(6e-3, 5e-3, 7e-3),
        memory(1.5, 1.3, 1.8),
        angle(),
        Band.typed(1.0),
        FilmForming.NO,
        mushy(),
        Band.typed(0.03),
        Band.typed(kelvin(1600.0)));
  }

  /** Magnesium with about 9 % aluminium and 1 % zinc. Mills 2002, AZ91; from memory. */
  static Alloy magnesium() {
    return new Alloy(
        "magnesium alloy",
        new FreezingCurve.Scheil(kelvin(598.0), kelvin(437.0), kelvin(650.0), 5.8, 0.0, 0.37),
        memory(373e3, 340e3, 390e3),
        memory(1300.0, 1200.0, 1400.0),
        memory(1150.0, 1020.0, 1250.0),
        memory(60.0, 50.0, 80.0),
        memory(80.0, 65.0, 95.0),
        memory(1650.0, 1600.0, 1690.0),
        -0.26,
        memory(1810.0, 1800.0, 1830.0),
        memory(2.5e-3, 1.5e-3, 3e-3),
        memory(0.57, 0.5, 0.62),
        angle(),
        memory(2.0, 1.0, 2.5),
        FilmForming.YES,
        mushy(),
        Band.typed(0.04),
        Band.typed(kelvin(700.0)));
  }

  /**
   * Sand under hotter metal than the bronze its contact was derived for: the gas film conducts with
   * the power 0.75 of its absolute temperature (air, from memory: 0.057 W/(m K) at 800 K, 0.068 at
   * 1000 K), and a seventh of the contact is glow, with the third power. The film is half-way
   * between metal and cold sand.
   *
   * @param metal as it is poured [K]
   */
  static MouldMedium hotter(MouldMedium sand, double metal) {
    double ratio = (metal + kelvin(20.0)) / (2.0 * BRONZE_FILM);
    double gas = 6.0 / 7.0 * StrictMath.pow(ratio, 0.75);
    double factor = gas + 1.0 / 7.0 * ratio * ratio * ratio;
    return sand.with(MouldMedium.Figure.CONTACT_LIQUID, sand.contactLiquid().times(factor));
  }

  /**
   * Glass tube of fused silica, from memory; contact over a clean drawn face is a guess, wide: film
   * of 5 to 30 um of air at 600 K (0.047 W/(m K)).
   */
  static MouldMedium quartz() {
    return new MouldMedium(
        "quartz tube",
        MouldFamily.PERMANENT,
        Curve.of(new double[] {293.0, 773.0, 1073.0}, new double[] {1.38, 1.75, 2.2}),
        memory(1.0, 0.9, 1.1),
        Curve.of(new double[] {293.0, 773.0, 1073.0}, new double[] {740.0, 1080.0, 1160.0}),
        memory(2200.0, 2190.0, 2210.0),
        0.0,
        Band.typed(0.0),
        new Band(
            3800.0, 1500.0, 9500.0, new Citation(Basis.ESTIMATE, "estimate", "film of 5 to 30 um")),
        memory(300.0, 100.0, 600.0),
        memory(0.4, 0.2, 0.6),
        memory(0.9, 0.7, 1.0),
        Band.typed(kelvin(1100.0)));
  }

  /**
   * Share of solid at which mushy alloys stop: 20 to 50 %, JFS question-and-answer, J. JFS 91(5).
   */
  private static Band mushy() {
    return new Band(
        0.35, 0.2, 0.5, new Citation(Basis.OPENED, "J. JFS 91(5), question-and-answer", ""));
  }

  private static Band angle() {
    return memory(Math.toRadians(160.0), Math.toRadians(130.0), Math.PI);
  }

  private static double kelvin(double celsius) {
    return celsius + Celsius.ZERO;
  }

  private static Band memory(double value, double low, double high) {
    return new Band(value, low, high, new Citation(Basis.MEMORY, "handbooks, from memory", ""));
  }
}
