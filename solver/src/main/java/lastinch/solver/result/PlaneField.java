package lastinch.solver.result;

import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.TreeMap;
import lastinch.solver.casting.GapMap;
import lastinch.solver.physics.SplashLimit;

/**
 * What a pour over the plane left behind in every cell of its map, and how it looked at some
 * moments. Cells are those of the map; where metal never came the entries are to be ignored.
 */
public final class PlaneField {
  /** No gate: metal that came another way. */
  public static final int NO_GATE = -1;

  private final GapMap map;
  private final List<String> gates;
  private final Left left;
  private final List<Moment> moments;

  /** Tables by cell. */
  public static final class Left {
    private final float[] time;
    private final float[] temperature;
    private final float[] solid;
    private final float[] speed;
    private final float[] lap;
    private final float[] fill;
    private final float[] impact;
    private final byte[] gate;
    private final Map<Integer, Meeting.Kind> lines = new TreeMap<>();

    /** Empty tables: nothing reached, no line. */
    public Left(int cells) {
      time = new float[cells];
      temperature = new float[cells];
      solid = new float[cells];
      speed = new float[cells];
      lap = new float[cells];
      fill = new float[cells];
      impact = new float[cells];
      gate = new byte[cells];
      Arrays.fill(time, Float.POSITIVE_INFINITY);
      Arrays.fill(gate, (byte) NO_GATE);
    }

    /**
     * Notes the first metal in a cell.
     *
     * @param cell index in the map
     * @param at [s]
     * @param heat of the newest metal [K]
     * @param share of it that is solid [-]
     * @param pace [m/s]
     * @param lapIndex [-]
     */
    public void arrival(
        int cell, double at, double heat, double share, double pace, double lapIndex) {
      time[cell] = (float) at;
      temperature[cell] = (float) heat;
      solid[cell] = (float) share;
      speed[cell] = (float) pace;
      lap[cell] = (float) lapIndex;
    }

    /** Notes how full a cell is at the end [-] and which gate most of its metal came through. */
    public void end(int cell, double share, int gateNumber) {
      fill[cell] = (float) share;
      gate[cell] = (byte) gateNumber;
    }

    /** Notes how fast metal ran against the mould in a cell [m/s], square to it. */
    public void impact(int cell, double pace) {
      impact[cell] = (float) pace;
    }

    /** Marks a cell in which fronts met. */
    public void line(int cell, Meeting.Kind kind) {
      lines.put(cell, kind);
    }
  }

  /** How it looked at a moment. */
  public static final class Moment {
    private final double time;
    private final float[] fill;
    private final float[] temperature;
    private final float[] pressure;
    private final boolean[] stopped;

    /**
     * Takes tables by cell; they are not copied.
     *
     * @param time [s]
     * @param fill share of the cell that holds metal [-]
     * @param temperature of it [K]
     * @param pressure in it above open air [Pa]
     * @param stopped whether it no longer flows
     */
    public Moment(
        double time, float[] fill, float[] temperature, float[] pressure, boolean[] stopped) {
      this.time = time;
      this.fill = fill;
      this.temperature = temperature;
      this.pressure = pressure;
      this.stopped = stopped;
    }

    /** Time [s]. */
    public double time() {
      return time;
    }

    /** Share of a cell that holds metal [-]. */
    public double fill(int cell) {
      return fill[cell];
    }

    /** Temperature of the metal in a cell [K]. */
    public double temperature(int cell) {
      return temperature[cell];
    }

    /** Pressure of the metal in a cell above open air [Pa]. */
    public double pressure(int cell) {
      return pressure[cell];
    }

    /** Whether the metal in a cell no longer flows. */
    public boolean stopped(int cell) {
      return stopped[cell];
    }
  }

  /** A field; the tables are not copied, nobody writes them any more. */
  public PlaneField(GapMap map, List<String> gates, Left left, List<Moment> moments) {
    this.map = Objects.requireNonNull(map, "map");
    this.gates = List.copyOf(gates);
    this.left = Objects.requireNonNull(left, "left");
    this.moments = List.copyOf(moments);
  }

  /** The cavity. */
  public GapMap map() {
    return map;
  }

  /** Names of the gates that {@link #gate} counts. */
  public List<String> gates() {
    return gates;
  }

  /** Moments in time order; the last is the end. */
  public List<Moment> moments() {
    return moments;
  }

  /** Whether metal came to a cell. */
  public boolean reached(int cell) {
    return left.time[cell] < Float.POSITIVE_INFINITY;
  }

  /** First metal [s]. */
  public double time(int cell) {
    return left.time[cell];
  }

  /** Temperature of the newest metal as it came [K]. */
  public double temperature(int cell) {
    return left.temperature[cell];
  }

  /** Its solid share [-]. */
  public double solid(int cell) {
    return left.solid[cell];
  }

  /** Its speed [m/s]. */
  public double speed(int cell) {
    return left.speed[cell];
  }

  /** Lap index [-]. */
  public double lap(int cell) {
    return left.lap[cell];
  }

  /** Share of the cell that holds metal at the end [-]. */
  public double fill(int cell) {
    return left.fill[cell];
  }

  /** Greatest speed at which metal ran against the mould here, square to it [m/s]. */
  public double impact(int cell) {
    return left.impact[cell];
  }

  /** Whether metal ran against the mould here faster than the splash limit. */
  public boolean runsAgainstMould(int cell) {
    return left.impact[cell] > SplashLimit.TRADE;
  }

  /** Gate that most of its metal came through, or {@link #NO_GATE}. */
  public int gate(int cell) {
    return left.gate[cell];
  }

  /** Whether fronts met in a cell. */
  public boolean isLine(int cell) {
    return left.lines.containsKey(cell);
  }

  /** What became of fronts that met in a cell that is on a line. */
  public Meeting.Kind line(int cell) {
    return left.lines.get(cell);
  }
}
