package lastinch.solver.result;

import java.util.Objects;

/**
 * Path of the leading metal in time: channel, place, speed and temperature, sampled at every step
 * kept.
 */
public final class FrontTrack {
  private final String[] passage;
  private final double[] time;
  private final double[] at;
  private final double[] speed;
  private final double[] temperature;

  /**
   * Keeps copies of parallel arrays.
   *
   * @param passage channel name
   * @param time [s], not falling
   * @param at distance along the channel [m]
   * @param speed [m/s]
   * @param temperature [K]
   */
  public FrontTrack(
      String[] passage, double[] time, double[] at, double[] speed, double[] temperature) {
    this.passage = passage.clone();
    for (String p : this.passage) {
      Objects.requireNonNull(p, "passage");
    }
    this.time = time.clone();
    this.at = at.clone();
    this.speed = speed.clone();
    this.temperature = temperature.clone();
  }

  public int size() {
    return time.length;
  }

  public String passage(int i) {
    return passage[i];
  }

  /** [s]. */
  public double time(int i) {
    return time[i];
  }

  /** [m]. */
  public double at(int i) {
    return at[i];
  }

  /** [m/s]. */
  public double speed(int i) {
    return speed[i];
  }

  /** [K]. */
  public double temperature(int i) {
    return temperature[i];
  }
}
