package lastinch.solver.physics;

import lastinch.solver.material.Basis;
import lastinch.solver.material.Checks;
import lastinch.solver.material.Citation;

/**
 * Wall friction of a full section, Darcy factor f: pressure gradient = f rho u^2/(2 Dh).
 *
 * <p>Laminar up to Re 2000, turbulent and smooth above 4000 (Blasius, the explicit smooth-wall law
 * of Filonenko once that is larger, from about Re 80000), and in between f Re passes from one to
 * the other by a smooth step. The gradient rises with speed everywhere. Holds to Re 1e6; a wide
 * slot described by its hydraulic diameter is up to 10 % low when turbulent.
 */
public final class Friction {
  /** Where the laws come from. */
  public static final Citation SOURCE =
      new Citation(
          Basis.MEMORY,
          "Shah & London 1978 (laminar ducts); Blasius 1913; Filonenko 1954; Colebrook 1939;"
              + " von Karman 1930 and Nikuradse 1933 (rough)",
          "join between Re 2000 and 4000 is ours");

  /** Darcy f Re of a round pipe, laminar [-]; exact, Hagen and Poiseuille. */
  public static final double ROUND = 64.0;

  /** Darcy f Re of a slot much wider than thick, laminar [-]; exact, plane Poiseuille flow. */
  public static final double SLOT = 96.0;

  /**
   * Reynolds number up to which flow is taken as laminar [-]; join of ours, between it and {@link
   * #TURBULENT_START}.
   */
  public static final double LAMINAR_END = 2000.0;

  /** Reynolds number from which flow is taken as turbulent [-]; join of ours. */
  public static final double TURBULENT_START = 4000.0;

  /**
   * Factor of Blasius's law on the fourth root of the Reynolds number [-]; Blasius 1913, from
   * memory.
   */
  private static final double BLASIUS = 0.316;

  /**
   * Reynolds number from which Filonenko is asked, well below where it overtakes Blasius [-];
   * numerical, saves a logarithm.
   */
  private static final double FILONENKO_FROM = 6e4;

  /** Relative roughness that Colebrook's law is held to at most [-]; its data end at 0.05. */
  private static final double MOST_ROUGH = 0.1;

  /** Natural logarithm of ten [-]. */
  private static final double LN10 = StrictMath.log(10.0);

  private Friction() {}

  /**
   * Darcy factor [-].
   *
   * @param reynolds on the hydraulic diameter [-], above 0 (the factor has no limit at rest; use
   *     {@link #product} or {@link #gradientOverSpeed} there)
   * @param laminarProduct f Re of the section in laminar flow [-], {@link #ROUND}, {@link #SLOT} or
   *     {@link #laminarProductRectangle}
   */
  public static double factor(double reynolds, double laminarProduct) {
    Checks.within("reynolds", reynolds, Double.MIN_NORMAL, Double.MAX_VALUE, "-");
    return product(reynolds, laminarProduct) / reynolds;
  }

  /**
   * Darcy factor times Reynolds number [-]; the laminar product at rest.
   *
   * @param reynolds on the hydraulic diameter [-], not negative
   * @param laminarProduct as in {@link #factor}
   */
  public static double product(double reynolds, double laminarProduct) {
    Checks.within("reynolds", reynolds, 0.0, Double.MAX_VALUE, "-");
    Checks.within("laminarProduct", laminarProduct, 10.0, 200.0, "-");
    return smooth(reynolds, laminarProduct);
  }

  /**
   * As {@link #product} without a look at its figures: for time loops over channels whose figures
   * were right when they were made.
   */
  public static double smooth(double reynolds, double laminarProduct) {
    if (reynolds <= LAMINAR_END) {
      return laminarProduct;
    }
    double turbulent = turbulentFactor(reynolds) * reynolds;
    if (reynolds >= TURBULENT_START) {
      return turbulent;
    }
    double x = (reynolds - LAMINAR_END) / (TURBULENT_START - LAMINAR_END);
    double share = x * x * (3.0 - 2.0 * x);
    return laminarProduct + share * (turbulent - laminarProduct);
  }

  /**
   * As {@link #smooth} along a rough wall: turbulent factors of the smooth law and of the fully
   * rough one (von Karman and Nikuradse) joined by their fourth powers, -6.5 to +3 % of Colebrook's
   * from Re 4000 to 1e6 and relative roughness 0.001 to 0.1. The join is ours.
   *
   * @param relativeRoughness sand roughness over hydraulic diameter [-]; over 0.1 it counts as 0.1
   */
  public static double rough(double reynolds, double laminarProduct, double relativeRoughness) {
    if (reynolds <= LAMINAR_END) {
      return laminarProduct;
    }
    double least = Math.min(MOST_ROUGH, relativeRoughness);
    double inverse = 2.0 / LN10 * StrictMath.log(3.7 / least);
    double whole = 1.0 / (inverse * inverse);
    double fine = turbulentFactor(reynolds);
    double both = Math.sqrt(Math.sqrt(fine * fine * fine * fine + whole * whole * whole * whole));
    double turbulent = both * reynolds;
    if (reynolds >= TURBULENT_START) {
      return turbulent;
    }
    double x = (reynolds - LAMINAR_END) / (TURBULENT_START - LAMINAR_END);
    double share = x * x * (3.0 - 2.0 * x);
    return laminarProduct + share * (turbulent - laminarProduct);
  }

  /**
   * Pressure lost per length, divided by speed [Pa s/m2]. Finite at rest, so an implicit step can
   * hold it fixed: gradient = this times u.
   *
   * @param density [kg/m3]
   * @param viscosity [Pa s]; 0 gives the turbulent law of an ideal smooth wall, which is 0
   * @param speed mean over the section, either sign [m/s]
   * @param hydraulicDiameter [m]
   * @param laminarProduct as in {@link #factor}
   */
  public static double gradientOverSpeed(
      double density,
      double viscosity,
      double speed,
      double hydraulicDiameter,
      double laminarProduct) {
    Checks.within("density", density, 0.0, Double.MAX_VALUE, "kg/m3");
    Checks.within("viscosity", viscosity, 0.0, Double.MAX_VALUE, "Pa s");
    Checks.within("speed", speed, -Double.MAX_VALUE, Double.MAX_VALUE, "m/s");
    Checks.within("hydraulicDiameter", hydraulicDiameter, 1e-9, Double.MAX_VALUE, "m");
    if (viscosity == 0.0) {
      return 0.0;
    }
    double reynolds = density * Math.abs(speed) * hydraulicDiameter / viscosity;
    Checks.within("laminarProduct", laminarProduct, 10.0, 200.0, "-");
    return smooth(reynolds, laminarProduct)
        * viscosity
        / (2.0 * hydraulicDiameter * hydraulicDiameter);
  }

  /**
   * Colebrook's factor for a rough wall [-], iterated to machine accuracy.
   *
   * @param reynolds on the hydraulic diameter [-], at least 2000
   * @param relativeRoughness sand roughness over hydraulic diameter [-], 0 to 0.1
   */
  public static double colebrook(double reynolds, double relativeRoughness) {
    Checks.within("reynolds", reynolds, LAMINAR_END, 1e9, "-");
    Checks.within("relativeRoughness", relativeRoughness, 0.0, 0.1, "-");
    double x = 7.0;
    for (int i = 0; i < 60; i++) {
      double inner = relativeRoughness / 3.7 + 2.51 * x / reynolds;
      double miss = x + 2.0 * StrictMath.log10(inner);
      double slope = 1.0 + 2.0 * 2.51 / (reynolds * inner * LN10);
      double change = miss / slope;
      x -= change;
      if (Math.abs(change) <= 1e-14 * x) {
        break;
      }
    }
    return 1.0 / (x * x);
  }

  /**
   * Darcy f Re of a rectangular duct in laminar flow [-]: the polynomial of Shah & London, within
   * 0.06 % of the series solution.
   *
   * @param aspect short side over long side [-], 0 to 1
   */
  public static double laminarProductRectangle(double aspect) {
    Checks.within("aspect", aspect, 0.0, 1.0, "-");
    double a = aspect;
    return SLOT * (1.0 + a * (-1.3553 + a * (1.9467 + a * (-1.7012 + a * (0.9564 - a * 0.2537)))));
  }

  private static double turbulentFactor(double reynolds) {
    double blasius = BLASIUS / Math.sqrt(Math.sqrt(reynolds));
    if (reynolds < FILONENKO_FROM) {
      return blasius;
    }
    double inverse = 1.82 * StrictMath.log10(reynolds) - 1.64;
    return Math.max(blasius, 1.0 / (inverse * inverse));
  }
}
