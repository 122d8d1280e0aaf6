package lastinch.solver.material;

/**
 * Temperature, share of solid and conductivity of a metal against its specific enthalpy, straight
 * between the knots of an even enthalpy grid. Built once per run.
 *
 * <p>The enthalpy is 0 for liquid at the liquidus. In the freezing range {@code dh = c dT - L dfs}
 * with {@code c = fs cs + (1 - fs) cl}; at an arrest it falls at constant temperature. The table is
 * inverted by enthalpy, never by temperature, so arrests and pure metals need no special case.
 * Look-ups beyond the ends give the end and are counted. The counter makes an instance belong to
 * one run; it is not safe for several threads.
 */
public final class MetalTable {
  /**
   * Temperature steps of the reference curve from which the table is made [-]; numerical: with half
   * as many no stop moves.
   */
  private static final int FINE = 2000;

  /**
   * Grid spacing in degrees of sensible heat [K]; a kink off the grid costs a quarter of it at
   * most; numerical: halved no stop moves.
   */
  private static final double SPACING = 0.15;

  private final double spacing;
  private final double perSpacing;
  private final double lowest;
  private final int below;
  private final int intervals;
  private final double[] temperature;
  private final double[] solid;
  private final double[] conductivity;
  private final double latentHeat;
  private final double liquidus;
  private int clamps;

  private MetalTable(MetalPoints points, double spacing, double latentHeat, double liquidus) {
    double cold = points.coldest();
    double hot = points.hottest();
    this.spacing = spacing;
    this.perSpacing = 1.0 / spacing;
    this.below = (int) Math.ceil(-cold / spacing - 1e-9);
    this.intervals = below + (int) Math.ceil(hot / spacing - 1e-9);
    this.lowest = -below * spacing;
    this.temperature = new double[intervals + 1];
    this.solid = new double[intervals + 1];
    this.conductivity = new double[intervals + 1];
    points.onGrid(spacing, below, temperature, solid, conductivity);
    this.latentHeat = latentHeat;
    this.liquidus = liquidus;
  }

  private MetalTable(MetalTable other) {
    spacing = other.spacing;
    perSpacing = other.perSpacing;
    lowest = other.lowest;
    below = other.below;
    intervals = other.intervals;
    temperature = other.temperature;
    solid = other.solid;
    conductivity = other.conductivity;
    latentHeat = other.latentHeat;
    liquidus = other.liquidus;
  }

  /**
   * The table of an alloy.
   *
   * @param alloy the metal
   * @param freezingStraight whether the share of solid follows a straight line between liquidus and
   *     end of freezing instead of the alloy's own curve (a checking option)
   * @param coldest lowest temperature to be covered [K]
   * @param hottest highest temperature to be covered [K]
   */
  public static MetalTable of(
      Alloy alloy, boolean freezingStraight, double coldest, double hottest) {
    FreezingCurve own = alloy.freezing();
    FreezingCurve curve =
        freezingStraight ? new FreezingCurve.Straight(own.liquidus(), own.endOfFreezing()) : own;
    double liquidus = curve.liquidus();
    double end = curve.endOfFreezing();
    Checks.within("coldest", coldest, 1.0, hottest, "K");
    double cs = alloy.specificHeatSolid().value();
    double cl = alloy.specificHeatLiquid().value();
    double latent = alloy.latentHeat().value();

    double[] temperature = new double[FINE + 1];
    double[] solid = new double[FINE + 1];
    curve.trace(temperature, solid);
    int n = FINE + 4;
    MetalPoints points = new MetalPoints(n);
    double h = 0.0;
    points.set(n - 2, h, liquidus, 0.0);
    for (int i = 1; i <= FINE; i++) {
      double mean = 0.5 * (solid[i - 1] + solid[i]);
      double drop = temperature[i - 1] - temperature[i];
      h -= (mean * cs + (1.0 - mean) * cl) * drop + latent * (solid[i] - solid[i - 1]);
      points.set(n - 2 - i, h, temperature[i], solid[i]);
    }
    double share = solid[FINE];
    if (1.0 - share < 1e-9) {
      share = 1.0;
      points.set(2, h, end, share);
    }
    double beforeArrest = h;
    double frozen = h - latent * (1.0 - share);
    points.set(1, frozen, end, 1.0);
    double cold = Math.min(coldest, end - 10.0);
    points.set(0, frozen - cs * (end - cold), cold, 1.0);
    double hot = Math.max(hottest, liquidus + 10.0);
    points.set(n - 1, cl * (hot - liquidus), hot, 0.0);
    points.blend(alloy.conductivityLiquid().value(), alloy.conductivitySolid().value());

    double kink = beforeArrest < 0.0 ? -beforeArrest : -frozen;
    double wanted = SPACING * Math.min(cs, cl);
    return new MetalTable(points, kink / Math.ceil(kink / wanted), latent, liquidus);
  }

  /**
   * A table by points, straight between them; for bodies that are given by measured or constructed
   * curves (a steel can, a checking case).
   *
   * @param enthalpy specific enthalpy, not falling, 0 among them or between them [J/kg]; two equal
   *     values make a jump
   * @param temperature not falling [K]
   * @param solid share of solid, not rising [-]
   * @param conductivity [W/(m K)]
   * @param spacing of the even grid [J/kg]
   */
  public static MetalTable byPoints(
      double[] enthalpy,
      double[] temperature,
      double[] solid,
      double[] conductivity,
      double spacing) {
    MetalPoints points = new MetalPoints(enthalpy, temperature, solid, conductivity);
    double latent = 0.0;
    int n = enthalpy.length;
    int liquid = n - 1;
    for (int i = 1; i < n; i++) {
      latent += solid[i - 1] - solid[i] > 0.0 ? enthalpy[i] - enthalpy[i - 1] : 0.0;
      if (solid[i] == 0.0 && solid[i - 1] > 0.0) {
        liquid = i;
      }
    }
    return new MetalTable(points, spacing, latent, temperature[liquid]);
  }

  /** Temperature [K] at a specific enthalpy [J/kg]. */
  public double temperature(double h) {
    return at(temperature, h);
  }

  /** Share of solid [-] at a specific enthalpy [J/kg]. */
  public double solid(double h) {
    return at(solid, h);
  }

  /** Conductivity [W/(m K)] at a specific enthalpy [J/kg]: liquid and solid, blended by share. */
  public double conductivity(double h) {
    return at(conductivity, h);
  }

  private double at(double[] value, double h) {
    double x = h * perSpacing + below;
    if (x >= 0.0 && x < intervals) {
      int i = (int) x;
      return value[i] + (x - i) * (value[i + 1] - value[i]);
    }
    if (x == intervals) {
      return value[intervals];
    }
    clamps++;
    return x < 0.0 ? value[0] : value[intervals];
  }

  /**
   * Specific enthalpy [J/kg] at a temperature [K], the inverse of {@link #temperature}. At an
   * arrest it is that of the metal before the arrest. Beyond the ends it is that of the end,
   * counted.
   */
  public double enthalpy(double wanted) {
    if (!(wanted >= temperature[0] && wanted <= temperature[intervals])) {
      clamps++;
      return wanted < temperature[0] ? lowest : knot(intervals);
    }
    int low = 0;
    int high = intervals;
    while (low < high) {
      int middle = (low + high + 1) >>> 1;
      if (temperature[middle] <= wanted) {
        low = middle;
      } else {
        high = middle - 1;
      }
    }
    if (temperature[low] == wanted || low == intervals) {
      return knot(low);
    }
    double rise = temperature[low + 1] - temperature[low];
    return knot(low) + spacing * (wanted - temperature[low]) / rise;
  }

  /**
   * Highest specific enthalpy [J/kg] at which the share of solid is at least {@code fs}.
   *
   * @param fs share of solid [-], 0 to 1; 0 gives liquid at the liquidus
   */
  public double enthalpyAtSolid(double fs) {
    Checks.within("fs", fs, 0.0, 1.0, "-");
    if (fs == 0.0) {
      return 0.0;
    }
    int low = 0;
    int high = intervals;
    while (low < high) {
      int middle = (low + high + 1) >>> 1;
      if (solid[middle] >= fs) {
        low = middle;
      } else {
        high = middle - 1;
      }
    }
    if (solid[low] == fs || low == intervals) {
      return knot(low);
    }
    return knot(low) + spacing * (solid[low] - fs) / (solid[low] - solid[low + 1]);
  }

  /** Heat given up over the whole of freezing [J/kg]. */
  public double latentHeat() {
    return latentHeat;
  }

  /** Start of freezing [K]. */
  public double liquidus() {
    return liquidus;
  }

  /** Whether the table has an enthalpy [J/kg]. */
  public boolean covers(double h) {
    return h >= lowest && h <= knot(intervals);
  }

  /** The same table with a count of its own, for another thread of the same run. */
  public MetalTable twin() {
    return new MetalTable(this);
  }

  /** Number of look-ups beyond the ends of the table since the last reset. */
  public int clamps() {
    return clamps;
  }

  /** Sets the count of look-ups beyond the ends to zero. */
  public void resetClamps() {
    clamps = 0;
  }

  /** Even spacing of the knots [J/kg]. */
  public double spacing() {
    return spacing;
  }

  /**
   * Number of straight pieces; piece -1 lies below the table and this number above it, both level.
   */
  public int pieces() {
    return intervals;
  }

  /** The straight piece on which a specific enthalpy [J/kg] lies, -1 to {@link #pieces()}. */
  public int piece(double h) {
    double x = h * perSpacing + below;
    if (x >= 0.0) {
      return x < intervals ? (int) x : intervals;
    }
    return -1;
  }

  /** Temperature gained per enthalpy on a piece [K kg/J], not negative. */
  public double slope(int piece) {
    return piece < 0 || piece >= intervals
        ? 0.0
        : (temperature[piece + 1] - temperature[piece]) * perSpacing;
  }

  /** Temperature of a piece's straight line at enthalpy 0 [K]. */
  public double intercept(int piece) {
    if (piece < 0) {
      return temperature[0];
    }
    return piece >= intervals
        ? temperature[intervals]
        : temperature[piece] - slope(piece) * knot(piece);
  }

  /** Lower end of a piece [J/kg]. */
  public double knot(int piece) {
    return (piece - below) * spacing;
  }

  /**
   * Solves {@code mass (x - h) + offset + slope T(x) = 0} for the enthalpy x exactly: on the
   * straight piece where the root lies. The root is unique for {@code mass > 0, slope >= 0}.
   *
   * @param h enthalpy before [J/kg]
   * @param mass [kg/m2] or any multiple
   * @param offset [J/m2] or the same multiple
   * @param slope [J/(m2 K)] or the same multiple, not negative
   * @return enthalpy after [J/kg]
   */
  public double settle(double h, double mass, double offset, double slope) {
    int low = -1;
    int high = intervals;
    int i = piece(h);
    while (true) {
      double start = knot(i);
      double b = slope(i);
      double x = start + (mass * (h - start) - offset - slope * edge(i)) / (mass + slope * b);
      if (i >= 0 && x < start) {
        high = i - 1;
      } else if (i < intervals && x > knot(i + 1)) {
        low = i + 1;
      } else {
        if (i < 0 || i >= intervals) {
          clamps++;
        }
        return x;
      }
      if (low > high) {
        return x < start ? start : knot(i + 1);
      }
      int next = piece(x);
      i = next < low || next > high ? (low + high + 1) >> 1 : next;
    }
  }

  /** Temperature at the lower end of a piece, of the level ones beyond the table everywhere [K]. */
  private double edge(int piece) {
    return temperature[Math.max(0, Math.min(intervals, piece))];
  }
}
