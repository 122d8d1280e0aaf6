package lastinch.solver.network.flow;

import java.util.Arrays;
import lastinch.solver.network.heat.FrontMarker;
import lastinch.solver.network.layout.ChannelGraph;
import lastinch.solver.network.layout.ChannelShape;

/**
 * State of one channel: up to two plugs with real lengths, the metal in its thermal cells, and
 * metal in free fall. Plug A hangs at face 0, plug B at the last face; a full channel is plug A
 * alone. Flows are volume rates [m3/s], positive from A to B.
 */
public final class Channel {
  /**
   * Below this share of a channel a gap counts as closed [-]; numerical, over rounding: halved no
   * stop moves.
   */
  private static final double CLOSED_SHARE = 1e-9;

  public final ChannelShape shape;
  public final int index;

  /** Number of this channel's first cell among all cells. */
  public final int firstCell;

  public final int jointA;
  public final int jointB;
  public final ChannelGraph.EndLosses losses;

  /** Share of new solid that rides along as slurry [-]. */
  public final double mushShare;

  public double volumeA;
  public double volumeB;
  public double flowA;
  public double flowB;
  public boolean full;
  private boolean filledByB;

  /** Positions of the fronts as last asked for, and the volumes they belong to. */
  private double placedA;

  private double placedVolumeA;
  private double placedB;
  private double placedVolumeB;

  public final FrontMarker frontA;
  public final FrontMarker frontB;
  public final FallingStream stream;

  /** By cell: metal volume in plugs [m3], its heat content [J], skin on the walls [kg]. */
  public final double[] wet;

  public final double[] heat;
  public final double[] skin;

  /** By cell: largest wetted share so far, largest solid share so far [-]. */
  public final double[] wettedShare;

  public final double[] mostSolid;

  /** By cell: slurry solid share [-] and enthalpy of what moves [J/kg], kept by the heat step. */
  public final double[] slurry;

  public final double[] mobile;

  /** By cell: what carried solid multiplies the viscosity by [-], kept by the heat step. */
  public final double[] thickening;

  /** By cell: share of the gap that skin leaves open [-], kept by the heat step. */
  public final double[] openShare;

  /** By cell: time for which heat has not been exchanged yet [s]. */
  public final double[] due;

  /** The same for metal in flight, and how long it has been falling here [s]. */
  public double streamDue;

  public double streamAge;

  /** By cell: seconds since first metal [s]. */
  public final double[] age;

  /** By face: volume that crosses in the step [m3] and enthalpy it carries [J/kg]. */
  final double[] crossing;

  final double[] carried;

  Channel(
      ChannelShape shape,
      int index,
      int firstCell,
      int allCells,
      int jointA,
      int jointB,
      ChannelGraph.EndLosses losses,
      double mushShare) {
    this.shape = shape;
    this.index = index;
    this.firstCell = firstCell;
    this.jointA = jointA;
    this.jointB = jointB;
    this.losses = losses;
    this.mushShare = mushShare;
    frontA = new FrontMarker(allCells);
    frontB = new FrontMarker(allCells);
    stream = new FallingStream(allCells);
    placedB = shape.length;
    int n = shape.cells;
    wet = new double[n];
    heat = new double[n];
    skin = new double[n];
    wettedShare = new double[n];
    mostSolid = new double[n];
    slurry = new double[n];
    mobile = new double[n];
    thickening = new double[n];
    Arrays.fill(thickening, 1.0);
    openShare = new double[n];
    Arrays.fill(openShare, 1.0);
    due = new double[n];
    age = new double[n];
    crossing = new double[n + 1];
    carried = new double[n + 1];
  }

  /** Where plug A's front stands [m]. */
  public double positionA() {
    if (full) {
      return shape.length;
    }
    if (volumeA != placedVolumeA) {
      placedA = shape.positionOf(volumeA);
      placedVolumeA = volumeA;
    }
    return placedA;
  }

  /** Where plug B's front stands [m]. */
  public double positionB() {
    if (volumeB != placedVolumeB) {
      placedB = shape.positionOf(shape.totalVolume() - volumeB);
      placedVolumeB = volumeB;
    }
    return placedB;
  }

  public double emptyVolume() {
    double empty = full ? 0.0 : shape.totalVolume() - volumeA - volumeB;
    return empty > 0.0 ? empty : 0.0;
  }

  /** What is left between the plugs when all metal in flight has landed [m3]. */
  double gapVolume() {
    double gap = emptyVolume() - stream.inFlight();
    return gap > 0.0 ? gap : 0.0;
  }

  /** Whether plugs and metal in flight fill the channel. */
  boolean gapClosed() {
    boolean plugged = full || frontA.isPresent() || frontB.isPresent();
    return plugged && gapVolume() <= CLOSED_SHARE * shape.totalVolume();
  }

  /** Whether no plug stands here and none moves in. */
  boolean isEmpty() {
    return !full && volumeA == 0.0 && volumeB == 0.0 && flowA == 0.0 && flowB == 0.0;
  }

  /** Whether a plug of it has closed by freezing; the other one still moves. */
  public boolean isFrozen() {
    return frontA.isFrozen() || frontB.isFrozen();
  }

  /** The front of a plug that has closed by freezing; of two the one at face 0. */
  public FrontMarker frozenFront() {
    return frontA.isFrozen() ? frontA : frontB;
  }

  /** The front of the plug that a cell with metal belongs to. */
  public FrontMarker frontOf(int cell) {
    return full || (hasPlugA() && cell * shape.dx < positionA()) ? frontA : frontB;
  }

  public boolean hasPlugA() {
    return full || frontA.isPresent();
  }

  public boolean hasPlugB() {
    return !full && frontB.isPresent();
  }

  /** Whether metal would fall from face 0 towards the last face. */
  public boolean fallsTowardsB() {
    return shape.rise() < -FallingStream.LEVEL;
  }

  public boolean fallsTowardsA() {
    return shape.rise() > FallingStream.LEVEL;
  }

  /** The front that filled this channel or is on its way through it. */
  public FrontMarker leadingFront() {
    if (full) {
      return filledByB ? frontB : frontA;
    }
    return hasPlugA() && (volumeA > 0.0 || !hasPlugB()) ? frontA : frontB;
  }

  /**
   * Joins both plugs into one, with what lies between them at rest; momentum is kept but ends at a
   * closed end.
   */
  public void close(double inertiaA, double inertiaB) {
    filledByB = !hasPlugA() || volumeA <= 0.0;
    double whole = shape.inertiaTo[shape.cells];
    boolean ends = jointA == ChannelGraph.CLOSED || jointB == ChannelGraph.CLOSED;
    flowA = ends ? 0.0 : (inertiaA * flowA + inertiaB * flowB) / whole;
    flowB = 0.0;
    volumeA = shape.totalVolume();
    volumeB = 0.0;
    full = true;
    frontA.state = FrontMarker.State.ABSENT;
    frontB.state = FrontMarker.State.ABSENT;
    if (!frontA.isFrozen()) {
      frontA.takeFrozen(frontB);
    }
    frontB.thaw();
  }

  /** Rate at which falling metal lands on the pool, over about 20 ms [m3/s]. */
  public double landingRate;

  /** Metal that has come out at the last face, less what went back [m3]. */
  public double passed;

  /** The most that had come out at the last face at any time [m3]. */
  public double mostPassed;

  /** Fills {@link #crossing} with what passes each face while plug volumes change. */
  void setCrossings(double newVolumeA, double newVolumeB, double dt) {
    int n = shape.cells;
    if (full) {
      double volume = flowA * dt;
      for (int f = 0; f <= n; f++) {
        crossing[f] = volume;
      }
      return;
    }
    double total = shape.totalVolume();
    double[] below = shape.volumeTo;
    int f = 0;
    for (; f <= n && below[f] < Math.min(volumeA, newVolumeA); f++) {
      crossing[f] = newVolumeA - volumeA;
    }
    for (; f <= n; f++) {
      crossing[f] = beyond(newVolumeA, below[f]) - beyond(volumeA, below[f]);
    }
    for (int g = n; g >= 0 && total - below[g] < Math.max(volumeB, newVolumeB); g--) {
      double above = total - below[g];
      crossing[g] -= beyond(newVolumeB, above) - beyond(volumeB, above);
    }
  }

  private static double beyond(double volume, double face) {
    return volume > face ? volume - face : 0.0;
  }

  /** Lays metal on a plug's front: fills cells between two volumes counted from face 0. */
  public void deposit(double fromVolume, double toVolume, double density, double enthalpy) {
    int n = shape.cells;
    double[] below = shape.volumeTo;
    double low = Math.min(fromVolume, toVolume);
    double high = Math.max(fromVolume, toVolume);
    int first = 0;
    while (first < n && below[first + 1] <= low) {
      first++;
    }
    for (int i = first; i < n && below[i] < high; i++) {
      double part = Math.min(high, below[i + 1]) - Math.max(low, below[i]);
      if (part > 0.0) {
        wet[i] += part;
        heat[i] += density * part * enthalpy;
      }
    }
  }

  /** Enthalpy of all metal in a cell [J/kg]; 0 where there is none. */
  public double enthalpy(int i, double density) {
    return wet[i] > 0.0 ? heat[i] / (density * wet[i]) : 0.0;
  }

  /** Share of a cell that holds metal [-]. */
  public double fill(int i) {
    double share = wet[i] / shape.volume[i];
    return share < 1.0 ? share : 1.0;
  }

  /** Skin over all metal in a cell [-]. */
  public double skinShare(int i, double density) {
    if (wet[i] <= 0.0 || skin[i] == 0.0) {
      return 0.0;
    }
    double share = skin[i] / (density * wet[i]);
    return share < 1.0 ? share : 1.0;
  }
}
