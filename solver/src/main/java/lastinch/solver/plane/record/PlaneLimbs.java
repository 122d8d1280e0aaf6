package lastinch.solver.plane.record;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import lastinch.solver.casting.GapMap;
import lastinch.solver.casting.Limb;
import lastinch.solver.plane.PlaneRun;
import lastinch.solver.result.PassageRecord;
import lastinch.solver.result.PassageRecord.Role;

/**
 * Reads the plane along the middle of every part: stretches a few millimetres long, each told by
 * the cell nearest to its middle. Cells within 4 mm of the outline are the rim.
 */
public final class PlaneLimbs {
  /**
   * Breadth of a rim [m]; the outer part of a piece that may round off without stopping short; our
   * own limit, no source.
   */
  static final double RIM = 4e-3;

  /** Shortest stretch that is told of [m], at least two squares; chosen. */
  private static final double LEAST_STRETCH = 3e-3;

  /** One part of the cavity, stretch by stretch. */
  public static final class Line {
    final GapMap.Part part;
    final double first;
    public final double stretch;
    public final int count;

    /** By stretch: the cell nearest to its middle. */
    final int[] middle;

    /** By stretch: breadth [m] and mean thickness [m]. */
    final double[] width;

    final double[] thickness;

    Line(GapMap.Part part, double first, double stretch, int count) {
      this.part = part;
      this.first = first;
      this.stretch = stretch;
      this.count = count;
      middle = new int[count];
      width = new double[count];
      thickness = new double[count];
    }

    double at(int i) {
      return (i + 0.5) * stretch;
    }
  }

  private final PlaneRun run;
  private final Map<Integer, Line> lines = new LinkedHashMap<>();

  /** Whether a cell of the piece lies in its rim. */
  public final boolean[] rim;

  public PlaneLimbs(PlaneRun run) {
    this.run = run;
    rim = new boolean[run.grid.size];
    for (int p = 0; p < run.map.parts().size(); p++) {
      addLine(p);
    }
    findRims();
  }

  private void addLine(int part) {
    GapMap map = run.map;
    double low = Double.POSITIVE_INFINITY;
    double high = Double.NEGATIVE_INFINITY;
    for (int k = 0; k < run.mapCells(); k++) {
      if (map.part(k) == part && isThere(k)) {
        low = Math.min(low, map.along(k));
        high = Math.max(high, map.along(k));
      }
    }
    if (low > high) {
      return;
    }
    boolean piece = map.parts().get(part).kind() == GapMap.Kind.PIECE;
    double first = piece ? 0.0 : low - 0.5 * map.cell();
    double cells = high + 0.5 * map.cell() - first;
    double length = Math.max(map.cell(), piece ? Math.min(cells, described(part)) : cells);
    double stretch = Math.max(LEAST_STRETCH, 2.0 * map.cell());
    int count = Math.max(1, (int) Math.rint(length / stretch));
    Line line = new Line(map.parts().get(part), first, length / count, count);
    fill(line, part);
    lines.put(part, line);
  }

  /** Length of a limb by its stations [m]; without end for a part that has none. */
  private double described(int part) {
    String name = run.map.parts().get(part).name();
    return run.job.piece().limbs().stream()
        .filter(l -> l.name().equals(name))
        .mapToDouble(Limb::length)
        .findFirst()
        .orElse(Double.POSITIVE_INFINITY);
  }

  private boolean isThere(int k) {
    return run.map.isOpen(k) && run.grid.volume[run.gridCell(k)] > 0.0;
  }

  /** Stretch of a line that a distance along it [m] falls into. */
  int stretchOf(Line line, double along) {
    int i = (int) Math.floor((along - line.first) / line.stretch);
    return Math.max(0, Math.min(line.count - 1, i));
  }

  private void fill(Line line, int part) {
    GapMap map = run.map;
    double[] x = new double[line.count];
    double[] y = new double[line.count];
    double[] sum = new double[line.count];
    double[] area = new double[line.count];
    double cell = map.cell() * map.cell();
    for (int k = 0; k < run.mapCells(); k++) {
      if (map.part(k) == part && isThere(k)) {
        int i = stretchOf(line, map.along(k));
        double v = map.volume(k);
        x[i] += v * (k % map.nx());
        int row = k / map.nx();
        y[i] += v * row;
        sum[i] += v;
        area[i] += map.open(k) * cell;
      }
    }
    double[] least = new double[line.count];
    java.util.Arrays.fill(least, Double.POSITIVE_INFINITY);
    java.util.Arrays.fill(line.middle, -1);
    for (int k = 0; k < run.mapCells(); k++) {
      if (map.part(k) == part && isThere(k)) {
        int i = stretchOf(line, map.along(k));
        double dx = k % map.nx() - x[i] / sum[i];
        int row = k / map.nx();
        double dy = row - y[i] / sum[i];
        double distance = dx * dx + dy * dy;
        if (distance < least[i]) {
          least[i] = distance;
          line.middle[i] = run.gridCell(k);
        }
      }
    }
    closeUp(line.middle);
    for (int i = 0; i < line.count; i++) {
      line.width[i] = area[i] / line.stretch;
      line.thickness[i] = area[i] > 0.0 ? sum[i] / area[i] : 0.0;
    }
  }

  /** A stretch where other parts lie over the line is told by the nearest one before, or after. */
  private static void closeUp(int[] middle) {
    for (int i = 1; i < middle.length; i++) {
      middle[i] = middle[i] < 0 ? middle[i - 1] : middle[i];
    }
    for (int i = middle.length - 2; i >= 0; i--) {
      middle[i] = middle[i] < 0 ? middle[i + 1] : middle[i];
    }
  }

  private void findRims() {
    GapMap map = run.map;
    double reach = RIM / map.cell() + 0.5;
    for (int j = 0; j < map.ny(); j++) {
      for (int i = 0; i < map.nx(); i++) {
        rim[run.grid.cell(i, j)] = run.piece[run.grid.cell(i, j)] && isNearOutline(i, j, reach);
      }
    }
  }

  /** Whether a cell of wall lies within a reach of a cell, from middle to middle [cells]. */
  private boolean isNearOutline(int i, int j, double reach) {
    GapMap map = run.map;
    int most = (int) reach;
    for (int b = -most; b <= most; b++) {
      for (int a = -most; a <= most; a++) {
        boolean near = a * a + b * b <= reach * reach;
        boolean inside = i + a >= 0 && i + a < map.nx() && j + b >= 0 && j + b < map.ny();
        if (near && (!inside || !map.isOpen((j + b) * map.nx() + i + a))) {
          return true;
        }
      }
    }
    return false;
  }

  List<Line> all() {
    return List.copyOf(lines.values());
  }

  /** Lines of the limbs of the piece. */
  public List<Line> limbs() {
    return lines.values().stream().filter(l -> l.part.kind() == GapMap.Kind.PIECE).toList();
  }

  /** The line of a part of the map. */
  Line of(int part) {
    return lines.get(part);
  }

  /** Records of all parts that have cells. */
  public List<PassageRecord> passages() {
    double lowest = Double.POSITIVE_INFINITY;
    for (int k = 0; k < run.mapCells(); k++) {
      lowest = run.map.isOpen(k) ? Math.min(lowest, run.map.height(k)) : lowest;
    }
    List<PassageRecord> records = new ArrayList<>();
    for (Line line : lines.values()) {
      records.add(record(line, lowest));
    }
    return records;
  }

  private static Role role(GapMap.Kind kind) {
    return Role.valueOf(kind.name());
  }

  private PassageRecord record(Line line, double lowest) {
    int n = line.count;
    double[][] t = new double[9][n];
    double[] at = new double[n];
    List<String> gate = new ArrayList<>();
    for (int i = 0; i < n; i++) {
      int c = line.middle[i];
      gate.add(run.gateName(c));
      at[i] = line.at(i);
      t[0][i] = run.map.height(run.mapCell[c]) - lowest;
      t[1][i] = run.recorder.time[c];
      double h = run.recorder.enthalpy[c];
      t[2][i] = run.melt.table.temperature(h);
      t[3][i] = run.melt.table.solid(h);
      t[4][i] = run.recorder.speed[c];
      t[5][i] = t[1][i] + run.secondsLeft(c, h);
      t[6][i] = run.heat.temperatureOf(run.flow.state, c);
      t[7][i] = run.heat.solidOf(run.flow.state, c);
      t[8][i] = run.recorder.lap[c];
    }
    double start = line.part.kind() == GapMap.Kind.PIECE ? 0.0 : line.first;
    return new PassageRecord(
        line.part.name(),
        role(line.part.kind()),
        n * line.stretch,
        start,
        at,
        line.width.clone(),
        line.thickness.clone(),
        t[0],
        t[1],
        t[2],
        t[3],
        t[4],
        t[5],
        t[6],
        t[7],
        t[8],
        gate);
  }
}
