package lastinch.solver.network.flow;

import lastinch.solver.network.heat.FrontMarker;

/**
 * Metal in free fall in a channel, as parcels in the order they left, each a stretch of a stream
 * between its leading and its trailing metal, so that it lands bit by bit and never takes more room
 * than a stream does. Positions count from the upper end. Storage is a ring of fixed size; when it
 * is full a parcel joins the one before it.
 */
public final class FallingStream {
  /**
   * Slope below which a channel counts as level, so that no metal falls in it [-]; chosen, one in
   * fifty: halved no stop moves.
   */
  static final double LEVEL = 0.02;

  /**
   * Parcels that a channel holds in flight [-]; chosen, 2.5 s of the longest steps: with half as
   * many no stop moves.
   */
  private static final int CAPACITY = 512;

  private final double[] volume = new double[CAPACITY];
  private final double[] enthalpy = new double[CAPACITY];

  /** By slot: speed [m/s] and place [m] of a parcel's leading metal, then of its trailing metal. */
  private final double[] speed = new double[CAPACITY];

  private final double[] fallen = new double[CAPACITY];
  private final double[] lastSpeed = new double[CAPACITY];
  private final double[] lastFallen = new double[CAPACITY];
  private final int[] origin = new int[CAPACITY];
  private int head;
  private int count;
  private double running;

  /** Mark and ledger of the first metal that fell here. */
  public final FrontMarker first;

  public boolean firstInFlight;

  /** Channel of the gate that metal which is added came through. */
  int source = FrontMarker.NO_GATE;

  FallingStream(int allCells) {
    first = new FrontMarker(allCells);
  }

  public int size() {
    return count;
  }

  private int slot(int i) {
    int s = head + i;
    return s >= CAPACITY ? s - CAPACITY : s;
  }

  /**
   * Adds what left the upper end in a step [s] just made, evenly: a volume [m3] of an enthalpy
   * [J/kg] that left at a speed [m/s] and falls under a pull [m/s2].
   */
  void release(double addedVolume, double h, double startSpeed, double dt, double pull) {
    add(addedVolume, h, startSpeed, 0.0, 0.0);
    int s = slot(count - 1);
    if (lastFallen[s] == fallen[s]) {
      fallen[s] = dt * (startSpeed + 0.5 * dt * pull);
      speed[s] = startSpeed + dt * pull;
    }
  }

  /** Adds a parcel [m3], [J/kg] that moves at a speed [m/s] between two places [m]. */
  void add(double addedVolume, double h, double startSpeed, double trailing, double leading) {
    running += addedVolume;
    if (count == CAPACITY) {
      int last = slot(count - 1);
      double sum = volume[last] + addedVolume;
      enthalpy[last] = (enthalpy[last] * volume[last] + h * addedVolume) / sum;
      volume[last] = sum;
      lastFallen[last] = trailing;
      lastSpeed[last] = startSpeed;
      return;
    }
    int s = slot(count);
    volume[s] = addedVolume;
    enthalpy[s] = h;
    speed[s] = startSpeed;
    fallen[s] = leading;
    lastSpeed[s] = startSpeed;
    lastFallen[s] = trailing;
    origin[s] = source;
    count++;
  }

  /** Channel of the gate that a parcel came through. */
  int origin(int i) {
    return origin[slot(i)];
  }

  public double volume(int i) {
    return volume[slot(i)];
  }

  public double enthalpy(int i) {
    return enthalpy[slot(i)];
  }

  public void setEnthalpy(int i, double h) {
    enthalpy[slot(i)] = h;
  }

  /** Speed of a parcel's leading metal [m/s]. */
  public double speed(int i) {
    return speed[slot(i)];
  }

  /** How far a parcel's leading metal has fallen [m]. */
  public double fallen(int i) {
    return fallen[slot(i)];
  }

  /** How far a parcel's trailing metal has fallen [m]. */
  double lastFallen(int i) {
    return lastFallen[slot(i)];
  }

  /** How far the middle of a parcel has fallen [m]. */
  public double middle(int i) {
    int s = slot(i);
    return 0.5 * (fallen[s] + lastFallen[s]);
  }

  /** Mean square of a parcel's speed [m2/s2]. */
  double squareOfSpeed(int i) {
    int s = slot(i);
    double a = speed[s];
    double b = lastSpeed[s];
    return (a * a + a * b + b * b) / 3.0;
  }

  /** Speed at a place of a parcel, straight between its ends [m/s]. */
  double speedAt(int i, double place) {
    int s = slot(i);
    double length = fallen[s] - lastFallen[s];
    double share = length > 0.0 ? (place - lastFallen[s]) / length : 1.0;
    return lastSpeed[s] + Math.max(0.0, Math.min(1.0, share)) * (speed[s] - lastSpeed[s]);
  }

  /** Moves a parcel on under a pull [m/s2] against a drag rate [1/s], exact without drag. */
  void advance(int i, double dt, double pull, double drag) {
    int s = slot(i);
    double faster = (speed[s] + dt * pull) / (1.0 + dt * drag);
    fallen[s] += 0.5 * dt * (speed[s] + faster);
    speed[s] = faster;
    double lastFaster = (lastSpeed[s] + dt * pull) / (1.0 + dt * drag);
    lastFallen[s] = Math.min(fallen[s], lastFallen[s] + 0.5 * dt * (lastSpeed[s] + lastFaster));
    lastSpeed[s] = lastFaster;
  }

  /** Takes a volume [m3] off the oldest parcel, whose leading metal is then at a place [m]. */
  void cutFirst(double cut, double place) {
    speed[head] = speedAt(0, place);
    fallen[head] = Math.max(lastFallen[head], place);
    volume[head] -= cut;
    running -= cut;
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

  public double totalVolume() {
    double sum = 0.0;
    for (int i = 0; i < count; i++) {
      sum += volume(i);
    }
    return sum;
  }

  /** Heat content over density [J m3/kg]. */
  public double totalHeat() {
    double sum = 0.0;
    for (int i = 0; i < count; i++) {
      sum += volume(i) * enthalpy(i);
    }
    return sum;
  }
}
