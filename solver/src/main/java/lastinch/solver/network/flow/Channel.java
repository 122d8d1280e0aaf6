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

  /**
   * Power of the width of a gap that turbulent speed goes with under one push [-]; derived from
   * Blasius's law, f with Re to the power -1/4.
   */
  private static final double BLASIUS = 5.0 / 7.0;

  /** Stands for the rims' first column of mould where there are none. */
  static final int NO_RIMS = -1;

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

  /** By cell: metal volume in plugs [m3]. */
  public final double[] wet;

  /** By cell: largest wetted share so far [-]. */
  public final double[] wettedShare;

  /** Its middle and its rims, or its whole section alone. */
  public final Lane[] lanes;

  /** The lane that carries the most: the middle, or the whole section. */
  public final Lane middle;

  /**
   * By cell: how turbulent its flow is, from 0 to 1, and what cold has left of how rims flow
   * against the middle [-]; kept by the heat step where there are rims.
   */
  public final double[] turbulence;

  public final double[] rimEase;

  /**
   * By cell: speed of liquid rims over that of the middle, slow and turbulent [-]; and what a
   * turbulent section passes with each lane on its own width, over what it passes as one [-].
   */
  private final double[] slowPace;

  private final double[] turbulentPace;
  private final double[] parted;

  /** By cell: time for which heat has not been exchanged yet [s]. */
  public final double[] due;

  /** The same for metal in flight, and how long it has been falling here [s]. */
  public double streamDue;

  public double streamAge;

  /** By cell: seconds since first metal [s]. */
  public final double[] age;

  /** By face: volume that crosses in the step [m3]. */
  final double[] crossing;

  Channel(
      ChannelShape shape,
      int index,
      int firstCell,
      int allCells,
      int jointA,
      int jointB,
      ChannelGraph.EndLosses losses,
      double mushShare,
      int rimColumn) {
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
    wettedShare = new double[n];
    lanes =
        rimColumn == NO_RIMS
            ? new Lane[] {Lane.whole(shape, firstCell)}
            : new Lane[] {Lane.middle(shape, firstCell), Lane.rims(shape, rimColumn)};
    middle = lanes[Lane.MIDDLE];
    turbulence = new double[n];
    rimEase = new double[n];
    Arrays.fill(rimEase, 1.0);
    slowPace = new double[n];
    turbulentPace = new double[n];
    parted = new double[n];
    for (int i = 0; i < n && hasRims(); i++) {
      setPace(i);
    }
    due = new double[n];
    age = new double[n];
    crossing = new double[n + 1];
  }

  private void setPace(int i) {
    Lane rims = lanes[Lane.RIMS];
    double narrow = rims.gap[i] / middle.gap[i];
    slowPace[i] = narrow * narrow;
    turbulentPace[i] = StrictMath.pow(narrow, BLASIUS);
    double wide = StrictMath.pow(2.0 * middle.gap[i] / shape.hydraulicDiameter[i], BLASIUS);
    parted[i] = wide * (middle.share[i] + rims.share[i] * turbulentPace[i]);
  }

  /** Whether its section is parted into a middle and rims. */
  public boolean hasRims() {
    return lanes.length > 1;
  }

  /**
   * Share of the flow through a cell that its rims carry [-], less than their share of the section.
   *
   * @param ease what cold has left of how they flow against the middle [-]
   */
  double rimFlow(int i, double ease) {
    double pace = slowPace[i] + turbulence[i] * (turbulentPace[i] - slowPace[i]);
    double rims = lanes[Lane.RIMS].share[i] * pace * ease;
    return rims / (middle.share[i] + rims);
  }

  /**
   * Speed of the middle of a cell over that in liquid metal of the same flow which knows its
   * section as one [-]: more where cold rims hold back, less where a turbulent lens passes more
   * than its hydraulic diameter says.
   */
  public double hurry(int i) {
    if (!hasRims()) {
      return 1.0;
    }
    double held = (1.0 - rimFlow(i, rimEase[i])) / (1.0 - rimFlow(i, 1.0));
    return held / (1.0 + turbulence[i] * (parted[i] - 1.0));
  }

  /** Speed of the middle over the mean of the section at a cell [-]. */
  public double lead(int i) {
    return hasRims() ? (1.0 - rimFlow(i, rimEase[i])) / middle.share[i] : 1.0;
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

  /**
   * Whether what landed last came beyond its stop: it lies as it fell and lets nothing more in,
   * until hotter metal in flight lands on it.
   */
  boolean choked;

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
        for (Lane lane : lanes) {
          lane.heat[i] += density * (lane.share[i] * part) * enthalpy;
        }
      }
    }
  }

  /** Enthalpy of all metal in a cell [J/kg]; 0 where there is none. */
  public double enthalpy(int i, double density) {
    return wet[i] > 0.0 ? heat(i) / (density * wet[i]) : 0.0;
  }

  /** Heat content of a cell [J]. */
  double heat(int i) {
    return hasRims() ? middle.heat[i] + lanes[Lane.RIMS].heat[i] : middle.heat[i];
  }

  /** Enthalpy of what moves in a cell, both lanes taken together [J/kg]. */
  double mobile(int i) {
    if (!hasRims()) {
      return middle.mobile[i];
    }
    Lane rims = lanes[Lane.RIMS];
    return middle.share[i] * middle.mobile[i] + rims.share[i] * rims.mobile[i];
  }

  /** Largest solid share that a cell has had, its lanes taken together [-]. */
  public double mostSolid(int i) {
    double most = 0.0;
    for (Lane lane : lanes) {
      most += lane.share[i] * lane.mostSolid[i];
    }
    return most;
  }

  /** Share of a cell that holds metal [-]. */
  public double fill(int i) {
    return Math.min(1.0, wet[i] / shape.volume[i]);
  }

  /** Mass of metal in one lane of a cell [kg]. */
  public double mass(Lane lane, int i, double density) {
    return density * (lane.share[i] * wet[i]);
  }

  /** Skin over all metal of one lane in a cell [-]. */
  public double skinShare(Lane lane, int i, double density) {
    return lane.skinShare(i, mass(lane, i, density));
  }
}
