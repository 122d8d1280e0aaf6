package lastinch.solver.result;

import java.util.List;
import java.util.Objects;

/**
 * What the front left behind along one channel, by cells from its start to its end. Arrays are
 * parallel; a cell that metal never reached holds positive infinity as arrival time and its other
 * entries are to be ignored.
 */
public final class PassageRecord {
  private final String name;
  private final Role role;
  private final double length;
  private final double start;
  private final double[] at;
  private final double[] width;
  private final double[] thickness;
  private final double[] height;
  private final double[] arrivalTime;
  private final double[] arrivalTemperature;
  private final double[] arrivalSolid;
  private final double[] arrivalSpeed;
  private final double[] freezeTime;
  private final double[] finalTemperature;
  private final double[] finalSolid;
  private final double[] lapIndex;
  private final List<String> gate;

  /** What a channel is for. */
  public enum Role {
    CUP,
    SPRUE,
    WELL,
    RUNNER,
    GATE,
    BOSS,
    PIECE,
    OVERFLOW,
    FEEDER
  }

  /**
   * Keeps copies.
   *
   * @param name unique channel name
   * @param role what it is for
   * @param length [m]
   * @param start distance of its beginning on the piece's own ruler [m]; 0 outside the piece
   * @param at cell middles along the channel [m]
   * @param width [m]
   * @param thickness [m]
   * @param height above the lowest point of the cavity [m]
   * @param arrivalTime [s]
   * @param arrivalTemperature of the leading metal [K]
   * @param arrivalSolid of the leading metal [-]
   * @param arrivalSpeed [m/s]
   * @param freezeTime when leading metal that arrived as it did would have stopped there [s]
   * @param finalTemperature at the end of the run [K]
   * @param finalSolid at the end of the run [-]
   * @param lapIndex [-]
   * @param gate that the first metal of a cell came through, empty when it came through none
   */
  public PassageRecord(
      String name,
      Role role,
      double length,
      double start,
      double[] at,
      double[] width,
      double[] thickness,
      double[] height,
      double[] arrivalTime,
      double[] arrivalTemperature,
      double[] arrivalSolid,
      double[] arrivalSpeed,
      double[] freezeTime,
      double[] finalTemperature,
      double[] finalSolid,
      double[] lapIndex,
      List<String> gate) {
    this.name = Objects.requireNonNull(name, "name");
    this.role = Objects.requireNonNull(role, "role");
    this.length = length;
    this.start = start;
    this.at = at.clone();
    this.width = width.clone();
    this.thickness = thickness.clone();
    this.height = height.clone();
    this.arrivalTime = arrivalTime.clone();
    this.arrivalTemperature = arrivalTemperature.clone();
    this.arrivalSolid = arrivalSolid.clone();
    this.arrivalSpeed = arrivalSpeed.clone();
    this.freezeTime = freezeTime.clone();
    this.finalTemperature = finalTemperature.clone();
    this.finalSolid = finalSolid.clone();
    this.lapIndex = lapIndex.clone();
    this.gate = List.copyOf(gate);
  }

  public String name() {
    return name;
  }

  public Role role() {
    return role;
  }

  /** Length [m]. */
  public double length() {
    return length;
  }

  /** Distance of the channel's beginning on the piece's ruler [m]. */
  public double start() {
    return start;
  }

  /** Number of cells. */
  public int size() {
    return at.length;
  }

  /** Middle of a cell along the channel [m]. */
  public double at(int cell) {
    return at[cell];
  }

  /** Full width [m]. */
  public double width(int cell) {
    return width[cell];
  }

  /** Full thickness [m]. */
  public double thickness(int cell) {
    return thickness[cell];
  }

  /** Height above the lowest point of the cavity [m]. */
  public double height(int cell) {
    return height[cell];
  }

  /** Whether metal ever reached the middle of the cell. */
  public boolean reached(int cell) {
    return Double.isFinite(arrivalTime[cell]);
  }

  /** First metal [s]; infinite where none came. */
  public double arrivalTime(int cell) {
    return arrivalTime[cell];
  }

  /** Temperature of the leading metal [K]. */
  public double arrivalTemperature(int cell) {
    return arrivalTemperature[cell];
  }

  /** Solid share of the leading metal [-]. */
  public double arrivalSolid(int cell) {
    return arrivalSolid[cell];
  }

  /** Speed of the front [m/s]. */
  public double arrivalSpeed(int cell) {
    return arrivalSpeed[cell];
  }

  /** When leading metal would have stopped here [s]. */
  public double freezeTime(int cell) {
    return freezeTime[cell];
  }

  /** Temperature at the end of the run [K]. */
  public double finalTemperature(int cell) {
    return finalTemperature[cell];
  }

  /** Solid share at the end of the run [-]. */
  public double finalSolid(int cell) {
    return finalSolid[cell];
  }

  /** Lap index [-]. */
  public double lapIndex(int cell) {
    return lapIndex[cell];
  }

  /** Gate that the cell's first metal came through; empty when it came through none. */
  public String gate(int cell) {
    return gate.get(cell);
  }
}
