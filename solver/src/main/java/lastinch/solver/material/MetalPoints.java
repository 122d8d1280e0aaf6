package lastinch.solver.material;

import java.util.Arrays;

/** Points of the exact curve of a metal's table, enthalpy rising. */
final class MetalPoints {
  private final double[] enthalpy;
  private final double[] temperature;
  private final double[] solid;
  private final double[] conductivity;

  MetalPoints(int n) {
    enthalpy = new double[n];
    temperature = new double[n];
    solid = new double[n];
    conductivity = new double[n];
  }

  MetalPoints(double[] enthalpy, double[] temperature, double[] solid, double[] conductivity) {
    int n = enthalpy.length;
    if (n < 2 || temperature.length != n || solid.length != n || conductivity.length != n) {
      throw new IllegalArgumentException(
          "a metal table needs equally many points, two or more, got "
              + Arrays.toString(
                  new int[] {n, temperature.length, solid.length, conductivity.length}));
    }
    for (int i = 1; i < n; i++) {
      if (!(enthalpy[i] >= enthalpy[i - 1]
          && temperature[i] >= temperature[i - 1]
          && solid[i] <= solid[i - 1])) {
        throw new IllegalArgumentException(
            "enthalpy and temperature may not fall, solid may not rise, at point " + i);
      }
    }
    if (!(enthalpy[0] < 0.0 && enthalpy[n - 1] > 0.0)) {
      throw new IllegalArgumentException("enthalpy 0 must lie inside the points");
    }
    this.enthalpy = enthalpy.clone();
    this.temperature = temperature.clone();
    this.solid = solid.clone();
    this.conductivity = conductivity.clone();
  }

  /** Least enthalpy [J/kg]. */
  double coldest() {
    return enthalpy[0];
  }

  /** Greatest enthalpy [J/kg]. */
  double hottest() {
    return enthalpy[enthalpy.length - 1];
  }

  void set(int i, double h, double t, double fs) {
    enthalpy[i] = h;
    temperature[i] = t;
    solid[i] = fs;
  }

  void blend(double liquid, double frozen) {
    for (int i = 0; i < solid.length; i++) {
      conductivity[i] = liquid + solid[i] * (frozen - liquid);
    }
  }

  /** Values at even knots of enthalpy, the first one {@code below} spacings under 0. */
  void onGrid(double spacing, int below, double[] t, double[] fs, double[] k) {
    double near = 1e-9 * spacing;
    int last = enthalpy.length - 1;
    int i = 0;
    for (int knot = 0; knot < t.length; knot++) {
      double h = (knot - below) * spacing;
      while (i < last - 1 && h >= enthalpy[i + 1] - near) {
        i++;
      }
      double share =
          Math.abs(h - enthalpy[i]) <= near
              ? 0.0
              : (h - enthalpy[i]) / (enthalpy[i + 1] - enthalpy[i]);
      t[knot] = temperature[i] + share * (temperature[i + 1] - temperature[i]);
      fs[knot] = solid[i] + share * (solid[i + 1] - solid[i]);
      k[knot] = conductivity[i] + share * (conductivity[i + 1] - conductivity[i]);
    }
  }
}
