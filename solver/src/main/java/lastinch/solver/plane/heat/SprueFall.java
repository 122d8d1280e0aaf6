package lastinch.solver.plane.heat;

import java.util.Arrays;

/**
 * Metal on its way down the sprue, in order of arrival; it gives heat to the wall it falls past.
 */
public final class SprueFall {
  /** Most drops on their way at once [-]; chosen: beyond it the first lands early. */
  private static final int ROOM = 8192;

  private final double[] sent = new double[ROOM];
  private final double[] arrives = new double[ROOM];
  private final double[] speed = new double[ROOM];
  private final double[] volume = new double[ROOM];
  private final double[] enthalpy = new double[ROOM];
  private final double[] volumeAt;
  private final double[] changeAt;
  private int first;
  private int count;

  /** Nothing on its way past a number of places. */
  public SprueFall(int places) {
    volumeAt = new double[places];
    changeAt = new double[places];
  }

  /** Whether no more fits in. */
  public boolean isFull() {
    return count == ROOM;
  }

  /**
   * Sends metal down.
   *
   * @param now [s]
   * @param arrival when it arrives [s]
   * @param start speed it starts with [m/s]
   * @param v how much [m3]
   * @param h with what heat [J/kg]
   */
  public void send(double now, double arrival, double start, double v, double h) {
    int at = (first + count) % ROOM;
    sent[at] = now;
    arrives[at] = arrival;
    speed[at] = start;
    volume[at] = v;
    enthalpy[at] = h;
    count++;
  }

  /** Whether the first of it has arrived at a moment [s]. */
  public boolean hasArrived(double now) {
    return count > 0 && arrives[first] <= now;
  }

  public double firstVolume() {
    return volume[first];
  }

  public double firstEnthalpy() {
    return enthalpy[first];
  }

  public void takeFirst() {
    first = (first + 1) % ROOM;
    count--;
  }

  /**
   * Gives heat to the walls over a heat step [s]: what is in one place touches the share of its
   * wall that it would fill.
   *
   * @param walls of the sprue, counted from its foot
   * @param room by place [m3]
   * @param tall height of all places [m]
   * @param pull of gravity along the sprue [m/s2]
   */
  public void heat(
      SprueWalls walls, double[] room, double tall, double pull, double now, double dt) {
    int places = volumeAt.length;
    Arrays.fill(volumeAt, 0.0);
    Arrays.fill(changeAt, 0.0);
    for (int k = 0; k < count; k++) {
      int s = (first + k) % ROOM;
      int i = placeOf(s, places, tall, pull, now);
      volumeAt[i] += volume[s];
      changeAt[i] += volume[s] * enthalpy[s];
    }
    for (int i = 0; i < places; i++) {
      if (volumeAt[i] > 0.0) {
        double h = changeAt[i] / volumeAt[i];
        changeAt[i] = walls.exchange(i, dt, volumeAt[i], volumeAt[i] / room[i], h) - h;
      }
    }
    for (int k = 0; k < count; k++) {
      int s = (first + k) % ROOM;
      enthalpy[s] += changeAt[placeOf(s, places, tall, pull, now)];
    }
  }

  private int placeOf(int s, int places, double tall, double pull, double now) {
    double t = Math.max(0.0, now - sent[s]);
    double height = tall - t * (speed[s] + 0.5 * pull * t);
    return Math.max(0, Math.min(places - 1, (int) (height / tall * places)));
  }

  /** All of it [m3]. */
  public double total() {
    double sum = 0.0;
    for (int k = 0; k < count; k++) {
      sum += volume[(first + k) % ROOM];
    }
    return sum;
  }

  /** Its heat over density [m3 J/kg]. */
  public double content() {
    double sum = 0.0;
    for (int k = 0; k < count; k++) {
      sum += volume[(first + k) % ROOM] * enthalpy[(first + k) % ROOM];
    }
    return sum;
  }
}
