package lastinch.solver.filling;

import java.util.Arrays;
import java.util.List;
import lastinch.solver.material.MetalTable;
import lastinch.solver.result.PassageRecord.Role;
import lastinch.solver.wall.WallColumns;

/**
 * What a filling ends with: metal cell by cell, the faces between cells, and the columns of mould
 * that they face. Cup, sprue, well, runners, gates, feeders and overflows are cells like those of
 * the piece; a mould that did not fill hands over the cells that hold metal. Arrays by cell have
 * {@code size} entries, arrays by face {@code faces}. Belongs to whoever asked for it.
 *
 * <p>Columns of mould are for the phases inside the solver; other modules do not see their type.
 */
@SuppressWarnings("exports")
public final class FilledState {
  /**
   * What a run of cells belongs to.
   *
   * @param name as in the plan; unique
   * @param role what it is for
   */
  public record Part(String name, Role role) {}

  /** When it stood so [s]. */
  public final double time;

  public final MetalTable metal;

  /** Density that filling holds [kg/m3]. */
  public final double density;

  public final List<Part> parts;
  public final int size;

  /** Index of the cell's part. */
  public final int[] part;

  /** Metal, and room for it [m3]. */
  public final double[] volume;

  public final double[] room;

  /** Height of the cell's middle [m] and full gap between its walls [m]. */
  public final double[] height;

  public final double[] gap;

  /** Specific enthalpy, mean of all metal in the cell [J/kg]; 0 for liquid at the liquidus. */
  public final double[] enthalpy;

  /** Share of the metal grown fast to the wall, and largest share of solid so far [-]. */
  public final double[] skin;

  public final double[] mostSolid;

  /** Whether air stands over the metal. */
  public final boolean[] surface;

  /** Wall that the cell's column stands for [m2], and the share of it that metal touches [-]. */
  public final double[] wall;

  public final double[] touched;

  /** Whether metal is resolved through the gap, by the column's own nodes. */
  public final boolean[] thick;

  /** The column: its bank and its number there. */
  public final WallColumns[] bank;

  public final int[] column;
  public final int faces;

  /** The two cells of a face, its area [m2] and the way between their middles [m]. */
  public final int[] from;

  public final int[] to;
  public final double[] area;
  public final double[] way;

  private FilledState(Builder b) {
    time = b.time;
    metal = b.metal;
    density = b.density;
    parts = List.copyOf(b.parts);
    size = b.size;
    part = Arrays.copyOf(b.part, size);
    volume = Arrays.copyOf(b.volume, size);
    room = Arrays.copyOf(b.room, size);
    height = Arrays.copyOf(b.height, size);
    gap = Arrays.copyOf(b.gap, size);
    enthalpy = Arrays.copyOf(b.enthalpy, size);
    skin = Arrays.copyOf(b.skin, size);
    mostSolid = Arrays.copyOf(b.mostSolid, size);
    surface = Arrays.copyOf(b.surface, size);
    wall = Arrays.copyOf(b.wall, size);
    touched = Arrays.copyOf(b.touched, size);
    thick = Arrays.copyOf(b.thick, size);
    bank = Arrays.copyOf(b.bank, size);
    column = Arrays.copyOf(b.column, size);
    faces = b.faces;
    from = Arrays.copyOf(b.from, faces);
    to = Arrays.copyOf(b.to, faces);
    area = Arrays.copyOf(b.area, faces);
    way = Arrays.copyOf(b.way, faces);
  }

  /** Mass of all metal [kg]. */
  public double mass() {
    double sum = 0.0;
    for (double v : volume) {
      sum += v;
    }
    return sum * density;
  }

  /** Heat in all metal [J], 0 for liquid at the liquidus. */
  public double heatInMetal() {
    double sum = 0.0;
    for (int c = 0; c < size; c++) {
      sum += volume[c] * enthalpy[c];
    }
    return sum * density;
  }

  /** Heat in the mould behind these cells above its start [J]. */
  public double heatInMould() {
    double sum = 0.0;
    for (int c = 0; c < size; c++) {
      sum += bank[c].held(column[c]) * wall[c];
    }
    return sum;
  }

  /** Heat that left behind these cells through the outside of a shell [J]. */
  public double heatToAir() {
    double sum = 0.0;
    for (int c = 0; c < size; c++) {
      sum += bank[c].lostToAir(column[c]) * wall[c];
    }
    return sum;
  }

  /** Takes cells and faces one by one. */
  public static final class Builder {
    private final double time;
    private final MetalTable metal;
    private final double density;
    private final List<Part> parts;
    private int size;
    private int[] part = new int[64];
    private double[] volume = new double[64];
    private double[] room = new double[64];
    private double[] height = new double[64];
    private double[] gap = new double[64];
    private double[] enthalpy = new double[64];
    private double[] skin = new double[64];
    private double[] mostSolid = new double[64];
    private boolean[] surface = new boolean[64];
    private double[] wall = new double[64];
    private double[] touched = new double[64];
    private boolean[] thick = new boolean[64];
    private WallColumns[] bank = new WallColumns[64];
    private int[] column = new int[64];
    private int faces;
    private int[] from = new int[64];
    private int[] to = new int[64];
    private double[] area = new double[64];
    private double[] way = new double[64];

    /**
     * Nothing yet.
     *
     * @param time [s]
     * @param metal table of the metal
     * @param density [kg/m3]
     * @param parts all there are
     */
    public Builder(double time, MetalTable metal, double density, List<Part> parts) {
      this.time = time;
      this.metal = metal;
      this.density = density;
      this.parts = parts;
    }

    /**
     * Begins a cell; returns its number.
     *
     * @param ofPart index of its part
     * @param metalVolume [m3]
     * @param cellRoom [m3]
     * @param atHeight of its middle [m]
     * @param fullGap between its walls [m]
     * @param free whether air stands over the metal
     */
    public int cell(
        int ofPart,
        double metalVolume,
        double cellRoom,
        double atHeight,
        double fullGap,
        boolean free) {
      if (size == part.length) {
        growCells(2 * size);
      }
      part[size] = ofPart;
      volume[size] = metalVolume;
      room[size] = cellRoom;
      height[size] = atHeight;
      gap[size] = fullGap;
      surface[size] = free;
      return size++;
    }

    /**
     * Heat of the cell begun last.
     *
     * @param h specific enthalpy of all its metal [J/kg]
     * @param skinShare grown fast to the wall [-]
     * @param most largest share of solid so far [-]
     */
    public Builder heat(double h, double skinShare, double most) {
      enthalpy[size - 1] = h;
      skin[size - 1] = skinShare;
      mostSolid[size - 1] = most;
      return this;
    }

    /**
     * Wall of the cell begun last.
     *
     * @param wetted wall that its column stands for [m2]
     * @param touchedShare of it that metal touches now [-]
     * @param through whether metal is resolved through the gap
     * @param columns its bank
     * @param number its column
     */
    public void faces(
        double wetted, double touchedShare, boolean through, WallColumns columns, int number) {
      wall[size - 1] = wetted;
      touched[size - 1] = touchedShare;
      thick[size - 1] = through;
      bank[size - 1] = columns;
      column[size - 1] = number;
    }

    /**
     * Adds metal that lies beside a cell to it.
     *
     * @param cell its number
     * @param metalVolume [m3]
     * @param h its enthalpy [J/kg]
     */
    public void add(int cell, double metalVolume, double h) {
      double all = volume[cell] + metalVolume;
      enthalpy[cell] = (enthalpy[cell] * volume[cell] + h * metalVolume) / all;
      volume[cell] = all;
    }

    /**
     * Joins two cells.
     *
     * @param faceArea [m2]
     * @param length between their middles [m]
     */
    public void join(int one, int other, double faceArea, double length) {
      if (faces == from.length) {
        growFaces(2 * faces);
      }
      from[faces] = one;
      to[faces] = other;
      area[faces] = faceArea;
      way[faces] = length;
      faces++;
    }

    private void growCells(int n) {
      part = Arrays.copyOf(part, n);
      volume = Arrays.copyOf(volume, n);
      room = Arrays.copyOf(room, n);
      height = Arrays.copyOf(height, n);
      gap = Arrays.copyOf(gap, n);
      enthalpy = Arrays.copyOf(enthalpy, n);
      skin = Arrays.copyOf(skin, n);
      mostSolid = Arrays.copyOf(mostSolid, n);
      surface = Arrays.copyOf(surface, n);
      wall = Arrays.copyOf(wall, n);
      touched = Arrays.copyOf(touched, n);
      thick = Arrays.copyOf(thick, n);
      bank = Arrays.copyOf(bank, n);
      column = Arrays.copyOf(column, n);
    }

    private void growFaces(int n) {
      from = Arrays.copyOf(from, n);
      to = Arrays.copyOf(to, n);
      area = Arrays.copyOf(area, n);
      way = Arrays.copyOf(way, n);
    }

    public FilledState build() {
      return new FilledState(this);
    }
  }
}
