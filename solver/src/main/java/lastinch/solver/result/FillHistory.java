package lastinch.solver.result;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;

/**
 * How a pour went on: what the channels held at some moments, spread over the whole run and the
 * last of them its end, and how much metal had passed each gate as time went by. Cells are those of
 * the {@link PassageRecord} of the same name.
 */
public final class FillHistory {
  /** A course of which nothing is known. */
  public static final FillHistory UNKNOWN =
      new FillHistory(
          new double[0],
          new double[0],
          new double[0],
          new LinkedHashMap<>(),
          new Gates(List.of(), new double[0], new double[0][]));

  private final double[] time;
  private final double[] cupFill;
  private final double[] cupTemperature;
  private final Map<String, Held> held;
  private final Gates gates;

  /** What one channel held, by moments and cells. */
  public static final class Held {
    private final float[][] fill;
    private final float[][] temperature;
    private final float[][] solid;

    /**
     * Keeps copies of tables by moments and cells.
     *
     * @param fill share of the cell that holds standing metal [-]
     * @param temperature of that metal [K]
     * @param solid its solid share [-]
     */
    public Held(float[][] fill, float[][] temperature, float[][] solid) {
      this.fill = copy(fill);
      this.temperature = copy(temperature);
      this.solid = copy(solid);
    }

    private static float[][] copy(float[][] rows) {
      float[][] out = rows.clone();
      for (int i = 0; i < out.length; i++) {
        out[i] = rows[i].clone();
      }
      return out;
    }
  }

  /** Metal through the gates. */
  public static final class Gates {
    private final List<String> names;
    private final double[] time;
    private final double[][] passed;

    /**
     * Keeps copies.
     *
     * @param names in the order of the case
     * @param time of the samples, rising [s]
     * @param passed by gate and sample: metal that had come out of its end, less what went back
     *     [kg]
     */
    public Gates(List<String> names, double[] time, double[][] passed) {
      this.names = List.copyOf(names);
      this.time = time.clone();
      this.passed = passed.clone();
      for (int i = 0; i < this.passed.length; i++) {
        this.passed[i] = passed[i].clone();
      }
    }
  }

  /**
   * Keeps copies.
   *
   * @param time of the moments, rising [s]
   * @param cupFill share of the cup that holds metal, by moments [-]
   * @param cupTemperature of the metal in the cup, by moments [K]
   * @param held by channel name
   * @param gates metal through the gates
   */
  public FillHistory(
      double[] time,
      double[] cupFill,
      double[] cupTemperature,
      Map<String, Held> held,
      Gates gates) {
    this.time = time.clone();
    this.cupFill = cupFill.clone();
    this.cupTemperature = cupTemperature.clone();
    this.held = Collections.unmodifiableMap(new LinkedHashMap<>(held));
    this.gates = Objects.requireNonNull(gates, "gates");
  }

  /** Number of moments. */
  public int size() {
    return time.length;
  }

  /** When a moment was [s]. */
  public double time(int moment) {
    return time[moment];
  }

  /** Share of the cup that held metal [-]. */
  public double cupFill(int moment) {
    return cupFill[moment];
  }

  /** Heat of the metal in the cup [K]. */
  public double cupTemperature(int moment) {
    return cupTemperature[moment];
  }

  /** Whether the course of a channel is known. */
  public boolean knows(String passage) {
    return held.containsKey(passage);
  }

  /** Share of a cell that held standing metal [-]. */
  public double fill(String passage, int moment, int cell) {
    return held.get(passage).fill[moment][cell];
  }

  /** Temperature of the metal in a cell [K]; only where it held some. */
  public double temperature(String passage, int moment, int cell) {
    return held.get(passage).temperature[moment][cell];
  }

  /** Solid share of the metal in a cell [-]; only where it held some. */
  public double solid(String passage, int moment, int cell) {
    return held.get(passage).solid[moment][cell];
  }

  /** Gates in the order of the case. */
  public List<String> gates() {
    return gates.names;
  }

  /** Number of samples of the gates. */
  public int samples() {
    return gates.time.length;
  }

  /** When a sample was taken [s]. */
  public double sampleTime(int sample) {
    return gates.time[sample];
  }

  /** Metal that had passed a gate by then [kg]. */
  public double passed(int gate, int sample) {
    return gates.passed[gate][sample];
  }
}
