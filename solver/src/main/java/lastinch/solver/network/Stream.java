package lastinch.solver.network;

/**
 * Metal in free fall in a channel, as parcels in the order they left. Positions count from the
 * upper end. Storage is a ring of fixed size; when it is full a parcel joins the one before it.
 */
final class Stream {
  /** Slope below which a channel counts as level [-]. */
  static final double LEVEL = 0.02;

  private static final int CAPACITY = 512;
  private final double[] volume = new double[CAPACITY];
  private final double[] enthalpy = new double[CAPACITY];
  private final double[] speed = new double[CAPACITY];
  private final double[] fallen = new double[CAPACITY];
  private final int[] origin = new int[CAPACITY];
  private int head;
  private int count;
  private double running;

  /** Mark and ledger of the first metal that fell here. */
  final Front first;

  boolean firstInFlight;

  /** Channel of the gate that metal which is added came through. */
  int source = Front.NO_GATE;

  Stream(int allCells) {
    first = new Front(allCells);
  }

  int size() {
    return count;
  }

  private int slot(int i) {
    int s = head + i;
    return s >= CAPACITY ? s - CAPACITY : s;
  }

  /** Adds a parcel [m3], [J/kg], [m/s] that has fallen a distance [m] already. */
  void add(double addedVolume, double h, double startSpeed, double distance) {
    running += addedVolume;
    if (count == CAPACITY) {
      int last = slot(count - 1);
      double sum = volume[last] + addedVolume;
      enthalpy[last] = (enthalpy[last] * volume[last] + h * addedVolume) / sum;
      volume[last] = sum;
      return;
    }
    int s = slot(count);
    volume[s] = addedVolume;
    enthalpy[s] = h;
    speed[s] = startSpeed;
    fallen[s] = distance;
    origin[s] = source;
    count++;
  }

  /** Channel of the gate that a parcel came through. */
  int origin(int i) {
    return origin[slot(i)];
  }

  double volume(int i) {
    return volume[slot(i)];
  }

  double enthalpy(int i) {
    return enthalpy[slot(i)];
  }

  void setEnthalpy(int i, double h) {
    enthalpy[slot(i)] = h;
  }

  double speed(int i) {
    return speed[slot(i)];
  }

  double fallen(int i) {
    return fallen[slot(i)];
  }

  /** Moves a parcel on under a pull [m/s2] against a drag rate [1/s], exact without drag. */
  void advance(int i, double dt, double pull, double drag) {
    int s = slot(i);
    double faster = (speed[s] + dt * pull) / (1.0 + dt * drag);
    fallen[s] += 0.5 * dt * (speed[s] + faster);
    speed[s] = faster;
  }

  /** Drops the oldest parcel. */
  void removeFirst() {
    running -= volume(0);
    head = slot(1);
    count--;
    if (count == 0) {
      running = 0.0;
    }
  }

  /** Volume in flight, kept up as parcels come and go [m3]; for the books see totalVolume. */
  double inFlight() {
    return running;
  }

  double totalVolume() {
    double sum = 0.0;
    for (int i = 0; i < count; i++) {
      sum += volume(i);
    }
    return sum;
  }

  /** Heat content over density [J m3/kg]. */
  double totalHeat() {
    double sum = 0.0;
    for (int i = 0; i < count; i++) {
      sum += volume(i) * enthalpy(i);
    }
    return sum;
  }
}
