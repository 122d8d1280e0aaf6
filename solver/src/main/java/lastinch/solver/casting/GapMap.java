package lastinch.solver.casting;

import java.util.Arrays;
import java.util.List;
import java.util.Objects;

/**
 * The whole cavity seen along the draw: piece, runner, gates, feeders and overflows on one grid of
 * square cells. Cup, sprue and well are not in it; they feed it through its inlets.
 *
 * <p>x runs from the first station towards the tip, y to the left seen from above with the thick
 * end towards the viewer; the first station lies at x = 0, y = 0. Cell {@code (i, j)} covers x from
 * {@code x0 + i cell} to {@code x0 + (i + 1) cell} and has index {@code j nx + i}.
 */
public final class GapMap {
  /** What a part of the cavity is. */
  public enum Kind {
    PIECE,
    BOSS,
    GATE,
    RUNNER,
    FEEDER,
    OVERFLOW
  }

  /**
   * A part of the cavity.
   *
   * @param kind what it is
   * @param name of the gate, feeder, overflow or limb; the kind in lower case for boss and runner
   */
  public record Part(Kind kind, String name) {
    public Part {
      Objects.requireNonNull(kind, "kind");
      Objects.requireNonNull(name, "name");
    }
  }

  /**
   * A cell through which metal enters or air leaves.
   *
   * @param name {@code sprue} or the name of the vent
   * @param cell index of the cell
   * @param area of the opening that falls into this cell [m2]
   */
  public record Opening(String name, int cell, double area) {
    public Opening {
      Objects.requireNonNull(name, "name");
      if (cell < 0 || !(area > 0.0)) {
        throw new IllegalArgumentException("no opening: cell " + cell + ", area " + area);
      }
    }
  }

  /** Index of the part of a closed cell. */
  public static final int NO_PART = -1;

  private final GapGrid grid;
  private final List<Part> parts;
  private final List<Opening> inlets;
  private final List<Opening> vents;

  private final double[] volume;
  private final double[] open;
  private final double[] wall;
  private final double[] height;
  private final double[] along;
  private final int[] part;
  private final double[] faceX;
  private final double[] faceY;

  /** Fixes what a draft holds. */
  private GapMap(Draft draft, List<Part> parts, List<Opening> inlets, List<Opening> vents) {
    grid = draft.grid;
    this.parts = List.copyOf(parts);
    this.inlets = List.copyOf(inlets);
    this.vents = List.copyOf(vents);
    volume = draft.volume.clone();
    open = draft.open.clone();
    wall = draft.wall.clone();
    height = draft.height.clone();
    along = draft.along.clone();
    part = draft.part.clone();
    faceX = draft.faceX.clone();
    faceY = draft.faceY.clone();
  }

  /** Place and size of the cells. */
  public GapGrid grid() {
    return grid;
  }

  /** Edge length of a cell [m]. */
  public double cell() {
    return grid.cell();
  }

  /** Number of cells along x. */
  public int nx() {
    return grid.nx();
  }

  /** Number of cells along y. */
  public int ny() {
    return grid.ny();
  }

  /** All parts; cells name them by their number in this list. */
  public List<Part> parts() {
    return parts;
  }

  /** Cells that the foot of the sprue opens into; their areas add up to that of the opening. */
  public List<Opening> inlets() {
    return inlets;
  }

  /** Cells that vents open into. */
  public List<Opening> vents() {
    return vents;
  }

  /** Whether a cell holds cavity. */
  public boolean isOpen(int cell) {
    return part[cell] != NO_PART;
  }

  /** Part number of a cell, {@link #NO_PART} where there is no cavity. */
  public int part(int cell) {
    return part[cell];
  }

  /** Mean gap over the open share of a cell [m], 0 where closed. */
  public double gap(int cell) {
    return isOpen(cell) ? volume[cell] / (open[cell] * grid.cell() * grid.cell()) : 0.0;
  }

  /** Cavity in a cell [m3]. */
  public double volume(int cell) {
    return volume[cell];
  }

  /** Share of a cell's plan area that is cavity [-], 0 to 1. */
  public double open(int cell) {
    return open[cell];
  }

  /** Mould wall that metal touches in a full cell [m2]: both faces and any rim. */
  public double wall(int cell) {
    return wall[cell];
  }

  /** Height of the middle of the gap above the middle of the first station [m], against gravity. */
  public double height(int cell) {
    return height[cell];
  }

  /**
   * Distance along the middle line of the limb from its first station [m], below 0 in a boss; for
   * gates, runner, feeders and overflows the place x where they lie.
   */
  public double along(int cell) {
    return along[cell];
  }

  /** Section of the face between cells (i - 1, j) and (i, j) [m2], i from 0 to nx. */
  public double faceX(int i, int j) {
    return faceX[j * (grid.nx() + 1) + i];
  }

  /** Section of the face between cells (i, j - 1) and (i, j) [m2], j from 0 to ny. */
  public double faceY(int i, int j) {
    return faceY[j * grid.nx() + i];
  }

  /** Volume of the whole map [m3]. */
  public double totalVolume() {
    double sum = 0.0;
    for (double v : volume) {
      sum += v;
    }
    return sum;
  }

  /** Wall of the whole map [m2]. */
  public double totalWall() {
    double sum = 0.0;
    for (double a : wall) {
      sum += a;
    }
    return sum;
  }

  /** Volume of all cells of a kind [m3]. */
  public double volumeOf(Kind kind) {
    double sum = 0.0;
    for (int c = 0; c < volume.length; c++) {
      if (part[c] != NO_PART && parts.get(part[c]).kind() == kind) {
        sum += volume[c];
      }
    }
    return sum;
  }

  /** A gap map in the making: filled cell by cell and face by face, then fixed. */
  public static final class Draft {
    private final GapGrid grid;
    private final double[] volume;
    private final double[] open;
    private final double[] wall;
    private final double[] height;
    private final double[] along;
    private final int[] part;
    private final double[] faceX;
    private final double[] faceY;

    /** An empty map. */
    public Draft(GapGrid grid) {
      this.grid = grid;
      int n = grid.size();
      volume = new double[n];
      open = new double[n];
      wall = new double[n];
      height = new double[n];
      along = new double[n];
      part = new int[n];
      faceX = new double[(grid.nx() + 1) * grid.ny()];
      faceY = new double[grid.nx() * (grid.ny() + 1)];
      Arrays.fill(part, GapMap.NO_PART);
    }

    public GapGrid grid() {
      return grid;
    }

    /**
     * Opens a cell.
     *
     * @param cell its index
     * @param partNumber number in the list of parts
     * @param volumeIn cavity in it [m3]
     * @param openShare share of its plan area that is cavity [-]
     * @param wallArea mould wall that metal touches in it [m2]
     */
    public void open(int cell, int partNumber, double volumeIn, double openShare, double wallArea) {
      if (!(volumeIn > 0.0) || !(openShare > 0.0 && openShare <= 1.0 + 1e-9)) {
        throw new IllegalArgumentException(
            "cell " + cell + ": volume " + volumeIn + ", open " + openShare);
      }
      part[cell] = partNumber;
      volume[cell] = volumeIn;
      open[cell] = Math.min(1.0, openShare);
      wall[cell] = wallArea;
    }

    /**
     * Places a cell.
     *
     * @param cell its index
     * @param heightAt height of the middle of the gap above the middle of the first station [m]
     * @param alongAt distance along the middle line [m]
     */
    public void place(int cell, double heightAt, double alongAt) {
      height[cell] = heightAt;
      along[cell] = alongAt;
    }

    /** Sets the wall of an open cell [m2]. */
    public void wall(int cell, double wallArea) {
      wall[cell] = wallArea;
    }

    /** Wall of a cell so far [m2]. */
    public double wall(int cell) {
      return wall[cell];
    }

    /** Section of the face between cells (i - 1, j) and (i, j) [m2]. */
    public void faceX(int i, int j, double area) {
      faceX[j * (grid.nx() + 1) + i] = area;
    }

    /** Section of the face between cells (i, j - 1) and (i, j) [m2]. */
    public void faceY(int i, int j, double area) {
      faceY[j * grid.nx() + i] = area;
    }

    /** The finished map. Faces beside a closed cell are closed. */
    public GapMap fix(
        List<GapMap.Part> parts, List<GapMap.Opening> inlets, List<GapMap.Opening> vents) {
      for (int j = 0; j < grid.ny(); j++) {
        for (int i = 0; i <= grid.nx(); i++) {
          if (i == 0 || i == grid.nx() || isClosed(i - 1, j) || isClosed(i, j)) {
            faceX(i, j, 0.0);
          }
        }
      }
      for (int j = 0; j <= grid.ny(); j++) {
        for (int i = 0; i < grid.nx(); i++) {
          if (j == 0 || j == grid.ny() || isClosed(i, j - 1) || isClosed(i, j)) {
            faceY(i, j, 0.0);
          }
        }
      }
      return new GapMap(this, parts, inlets, vents);
    }

    private boolean isClosed(int i, int j) {
      return part[grid.index(i, j)] == GapMap.NO_PART;
    }
  }
}
