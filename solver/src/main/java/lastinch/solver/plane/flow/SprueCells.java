package lastinch.solver.plane.flow;

import lastinch.solver.filling.FilledState;
import lastinch.solver.inlet.PouringCup;
import lastinch.solver.plane.heat.SprueWalls;
import lastinch.solver.wall.WallColumns;

/** Lays what stands in cup, sprue and well out as cells. */
public final class SprueCells {
  private static final int NONE = -1;

  /**
   * Less metal than this share of a place is not handed over [-]; chosen, as for the heat of the
   * sprue.
   */
  private static final double TRACE = 1e-6;

  /**
   * What has sunk into the well.
   *
   * @param volume [m3]
   * @param room [m3]
   * @param content heat over density [m3 J/kg]
   */
  record Well(double volume, double room, double content) {}

  private final StandingMetal metal;
  private final SprueShape shape;
  private final SprueWalls walls;
  private final Well well;
  private final PouringCup cup;
  private final double cupContent;
  private final double rise;
  private final WallColumns columns;

  SprueCells(
      StandingMetal metal,
      SprueWalls walls,
      Well well,
      PouringCup cup,
      double cupContent,
      double rise,
      double seconds) {
    this.metal = metal;
    shape = metal.shape;
    this.walls = walls;
    this.well = well;
    this.cup = cup;
    this.cupContent = cupContent;
    this.rise = rise;
    columns = walls.columns(seconds);
  }

  /**
   * Adds cup, sprue and well.
   *
   * @param cells takes them
   * @param firstPart number of the cup's part; sprue and well follow it
   * @param footHeight of the sprue's foot [m]
   * @return number of the cell at the sprue's foot, negative if it holds no metal
   */
  public int addTo(FilledState.Builder cells, int firstPart, double footHeight) {
    double slice = shape.tall / shape.slices;
    int foot = NONE;
    int below = NONE;
    for (int i = 0; i < shape.slices; i++) {
      int cell =
          place(
              cells,
              firstPart + 1,
              i,
              new double[] {metal.volume[i], shape.room[i], metal.content[i]},
              footHeight + rise * (i + 0.5) * slice,
              metal.volume[i] / shape.room[i]);
      if (cell >= 0 && below >= 0) {
        cells.join(below, cell, shape.section(i * slice), slice);
      }
      foot = i == 0 ? cell : foot;
      below = cell;
    }
    if (well.room > 0.0) {
      double[] held = {well.volume, well.room, well.content};
      int sunk =
          place(cells, firstPart + 2, shape.slices, held, footHeight, well.volume / well.room);
      if (sunk >= 0 && foot >= 0) {
        cells.join(foot, sunk, shape.section(0.0), slice);
      }
    }
    double height = footHeight + rise * (shape.tall + 0.5 * cup.level());
    double[] held = {cup.volume(), cup.room(), cupContent};
    int top = place(cells, firstPart, shape.slices + 1, held, height, cup.wettedShare());
    if (top >= 0 && below >= 0) {
      cells.join(below, top, shape.mouth(), 0.5 * (slice + cup.level()));
    }
    return foot;
  }

  /** Adds a place that holds a volume in a room with its heat; returns its number. */
  private int place(
      FilledState.Builder cells, int part, int i, double[] held, double height, double wet) {
    double v = held[0];
    if (v <= TRACE * held[1] || walls.wetted(i) <= 0.0) {
      return NONE;
    }
    double touched = walls.touched(i, wet);
    double gap = 2.0 * v / (touched * walls.wetted(i));
    boolean free = v < held[1] * (1.0 - TRACE) || i == shape.slices + 1;
    int cell = cells.cell(part, v, held[1], height, gap, free);
    cells.heat(held[2] / v, 0.0, 0.0).faces(walls.wetted(i), touched, false, columns, i);
    return cell;
  }
}
