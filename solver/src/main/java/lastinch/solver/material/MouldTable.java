package lastinch.solver.material;

/**
 * Temperature and resistivity of a mould medium against its enthalpy per volume, straight between
 * the knots of an even enthalpy grid, going on straight beyond the ends. Built once per run,
 * immutable. The enthalpy is 0 at the coldest temperature asked for.
 */
public final class MouldTable {
  /** Temperature width of a table interval, on average [K]; numerical: halved no stop moves. */
  private static final double WIDTH = 2.0;

  /**
   * Steps of the exact integral of the heat capacity per table interval [-]; numerical: with half
   * as many no stop moves.
   */
  private static final int FINE = 16;

  private final double perSpacing;
  private final double spacing;
  private final int intervals;
  private final double[] temperature;
  private final double[] resistivity;
  private final double[] capacity;
  private final boolean constant;
  private final double steepest;

  private MouldTable(double spacing, double[] temperature, double[] resistivity, boolean constant) {
    this.spacing = spacing;
    this.perSpacing = 1.0 / spacing;
    this.intervals = temperature.length - 1;
    this.temperature = temperature;
    this.resistivity = resistivity;
    this.constant = constant;
    this.capacity = new double[intervals];
    for (int i = 0; i < intervals; i++) {
      capacity[i] = spacing / (temperature[i + 1] - temperature[i]);
    }
    double steep = 0.0;
    for (int i = 1; i < intervals; i++) {
      double change = Math.abs(capacity[i] / capacity[i - 1] - 1.0);
      steep = Math.max(steep, 2.0 * change / (temperature[i + 1] - temperature[i - 1]));
    }
    this.steepest = steep;
  }

  /**
   * The table of a medium, its conductivity factor included.
   *
   * @param medium what the mould is made of
   * @param coldest lowest temperature to be covered [K]
   * @param hottest highest temperature to be covered [K]
   */
  public static MouldTable of(MouldMedium medium, double coldest, double hottest) {
    Checks.within("coldest", coldest, 1.0, hottest - 1.0, "K");
    Curve k = medium.conductivity().times(medium.conductivityFactor().value());
    Curve c = medium.specificHeat();
    double density = medium.density().value();
    if (k.isConstant() && c.isConstant()) {
      return constant(k.at(coldest), density * c.at(coldest), coldest, hottest);
    }
    int n = (int) Math.ceil((hottest - coldest) / WIDTH);
    int fine = n * FINE;
    double step = (hottest - coldest) / fine;
    double[] heat = new double[fine + 1];
    for (int i = 1; i <= fine; i++) {
      double middle = coldest + (i - 0.5) * step;
      heat[i] = heat[i - 1] + density * c.at(middle) * step;
    }
    double spacing = heat[fine] / n;
    double[] t = new double[n + 1];
    double[] resistivity = new double[n + 1];
    int i = 0;
    for (int knot = 0; knot <= n; knot++) {
      double wanted = knot * spacing;
      while (i < fine - 1 && heat[i + 1] <= wanted) {
        i++;
      }
      t[knot] = coldest + step * (i + (wanted - heat[i]) / (heat[i + 1] - heat[i]));
      resistivity[knot] = 1.0 / k.at(t[knot]);
    }
    return new MouldTable(spacing, t, resistivity, false);
  }

  /**
   * A medium whose figures do not change with temperature.
   *
   * @param conductivity [W/(m K)]
   * @param volumetricHeat density times specific heat [J/(m3 K)]
   * @param coldest temperature at enthalpy 0 [K]
   * @param hottest end of the table [K]
   */
  public static MouldTable constant(
      double conductivity, double volumetricHeat, double coldest, double hottest) {
    Checks.within("conductivity", conductivity, 1e-6, 1e9, "W/(m K)");
    Checks.within("volumetricHeat", volumetricHeat, 1.0, 1e9, "J/(m3 K)");
    return new MouldTable(
        volumetricHeat * (hottest - coldest),
        new double[] {coldest, hottest},
        new double[] {1.0 / conductivity, 1.0 / conductivity},
        true);
  }

  /** Largest thermal diffusivity anywhere in the table [m2/s]. */
  public double fastest() {
    double most = 0.0;
    for (int i = 0; i < intervals; i++) {
      double least = Math.min(resistivity[i], resistivity[i + 1]);
      most = Math.max(most, 1.0 / (least * capacity[i]));
    }
    return most;
  }

  /** Whether conductivity and heat capacity do not vary, so that one pass per step is exact. */
  public boolean constant() {
    return constant;
  }

  /** Largest relative change of heat capacity per kelvin anywhere in the table [1/K]. */
  public double steepest() {
    return steepest;
  }

  /** The table interval of an enthalpy per volume [J/m3]; the end ones go on for ever. */
  private int interval(double heat) {
    int i = (int) (heat * perSpacing);
    return i < 0 ? 0 : Math.min(i, intervals - 1);
  }

  /** Temperature [K] on an interval at an enthalpy per volume [J/m3]. */
  private double temperature(int interval, double heat) {
    double low = temperature[interval];
    return low + (heat * perSpacing - interval) * (temperature[interval + 1] - low);
  }

  /**
   * One over conductivity [m K/W] on an interval at an enthalpy per volume [J/m3], level beyond.
   */
  private double resistivity(int interval, double heat) {
    double low = resistivity[interval];
    double share = heat * perSpacing - interval;
    if (share > 1.0) {
      return resistivity[interval + 1];
    }
    return share < 0.0 ? low : low + share * (resistivity[interval + 1] - low);
  }

  /**
   * Reads a row of enthalpies at once.
   *
   * @param heat enthalpies per volume [J/m3]
   * @param from place of the first of them
   * @param count how many
   * @param temperatures temperatures to be filled in from place 0 [K]
   * @param resistivities one over conductivity, level beyond the table, likewise [m K/W]
   * @param capacities heat per volume and kelvin, likewise [J/(m3 K)]
   */
  public void read(
      double[] heat,
      int from,
      int count,
      double[] temperatures,
      double[] resistivities,
      double[] capacities) {
    double[] t = temperature;
    double[] r = resistivity;
    double[] c = capacity;
    double scale = perSpacing;
    int last = intervals - 1;
    for (int k = 0; k < count; k++) {
      double place = heat[from + k] * scale;
      int i = (int) place;
      i = i < 0 ? 0 : i > last ? last : i;
      double share = place - i;
      double low = t[i];
      temperatures[k] = low + share * (t[i + 1] - low);
      capacities[k] = c[i];
      double at = r[i];
      double next = r[i + 1];
      resistivities[k] = share > 1.0 ? next : share < 0.0 ? at : at + share * (next - at);
    }
  }

  /** Heat per volume and kelvin on an interval [J/(m3 K)]. */
  private double capacity(int interval) {
    return capacity[interval];
  }

  /** Temperature [K] at an enthalpy per volume [J/m3]. */
  public double temperature(double heat) {
    return temperature(interval(heat), heat);
  }

  /** Conductivity [W/(m K)] at a temperature [K]. */
  public double conductivityAt(double wanted) {
    double heat = heat(wanted);
    return 1.0 / resistivity(interval(heat), heat);
  }

  /** Heat per volume and kelvin [J/(m3 K)] at a temperature [K]. */
  public double capacityAt(double wanted) {
    return capacity(interval(heat(wanted)));
  }

  /**
   * Enthalpy per volume [J/m3] at a temperature [K], the inverse of {@link #temperature(double)}.
   */
  public double heat(double wanted) {
    int low = 0;
    int high = intervals - 1;
    while (low < high) {
      int middle = (low + high + 1) >>> 1;
      if (temperature[middle] <= wanted) {
        low = middle;
      } else {
        high = middle - 1;
      }
    }
    double share = (wanted - temperature[low]) / (temperature[low + 1] - temperature[low]);
    return (low + share) * spacing;
  }
}
