package lastinch.solver.plane;

/** Metal on its way down the sprue, in order of arrival. */
final class FallingMetal {
  private static final int ROOM = 8192;

  private final double[] time = new double[ROOM];
  private final double[] volume = new double[ROOM];
  private final double[] enthalpy = new double[ROOM];
  private int first;
  private int count;

  /** Whether no more fits in. */
  boolean isFull() {
    return count == ROOM;
  }

  /** Sends metal down: when it arrives [s], how much [m3], with what heat [J/kg]. */
  void send(double arrives, double sent, double h) {
    int at = (first + count) % ROOM;
    time[at] = arrives;
    volume[at] = sent;
    enthalpy[at] = h;
    count++;
  }

  /** Whether the first of it has arrived at a moment [s]. */
  boolean hasArrived(double now) {
    return count > 0 && time[first] <= now;
  }

  double firstVolume() {
    return volume[first];
  }

  double firstEnthalpy() {
    return enthalpy[first];
  }

  void takeFirst() {
    first = (first + 1) % ROOM;
    count--;
  }

  /** All of it [m3]. */
  double total() {
    double sum = 0.0;
    for (int k = 0; k < count; k++) {
      sum += volume[(first + k) % ROOM];
    }
    return sum;
  }

  /** Its heat over density [m3 J/kg]. */
  double content() {
    double sum = 0.0;
    for (int k = 0; k < count; k++) {
      sum += volume[(first + k) % ROOM] * enthalpy[(first + k) % ROOM];
    }
    return sum;
  }
}
