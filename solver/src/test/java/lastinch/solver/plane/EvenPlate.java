package lastinch.solver.plane;

import java.util.ArrayList;
import java.util.List;
import lastinch.solver.casting.GapGrid;
import lastinch.solver.casting.GapMap;
import lastinch.solver.casting.Limb;
import lastinch.solver.casting.Place;
import lastinch.solver.casting.Side;
import lastinch.solver.casting.gating.Gate;
import lastinch.solver.run.SampleJob;

/** Maps of an even gap, drawn cell by cell: a plate with gates where a test wants them. */
final class EvenPlate {
  private final double cell;
  private final double gap;
  private final GapMap.Draft draft;
  private final List<GapMap.Part> parts = new ArrayList<>();
  private final List<GapMap.Opening> inlets = new ArrayList<>();

  /** A plate of open cells; its rim counts as wall only where asked for. */
  EvenPlate(int nx, int ny, double cell, double gap, boolean rim) {
    this.cell = cell;
    this.gap = gap;
    draft = new GapMap.Draft(new GapGrid(0.0, 0.0, cell, nx, ny));
    parts.add(new GapMap.Part(GapMap.Kind.PIECE, Limb.ONLY));
    for (int j = 0; j < ny; j++) {
      for (int i = 0; i < nx; i++) {
        int sides =
            (i == 0 ? 1 : 0) + (i == nx - 1 ? 1 : 0) + (j == 0 ? 1 : 0) + (j == ny - 1 ? 1 : 0);
        set(i, j, 0, rim ? sides : 0);
        draft.faceX(i, j, gap * cell);
        draft.faceY(i, j, gap * cell);
      }
    }
  }

  private void set(int i, int j, int part, int sides) {
    int c = draft.grid().index(i, j);
    draft.open(c, part, gap * cell * cell, 1.0, 2.0 * cell * cell + sides * gap * cell);
    draft.place(c, 0.0, (i + 0.5) * cell);
  }

  /** Makes a row of cells along y, from one to another, a gate that metal enters by. */
  EvenPlate gate(String name, int column, int from, int to) {
    parts.add(new GapMap.Part(GapMap.Kind.GATE, name));
    for (int j = from; j <= to; j++) {
      set(column, j, parts.size() - 1, 0);
      inlets.add(new GapMap.Opening("sprue", draft.grid().index(column, j), gap * cell));
    }
    return this;
  }

  GapMap map() {
    return draft.fix(parts, inlets, List.of());
  }

  /** A gate of a job that bears the name of one on the map. */
  static Gate named(String name, Side side, double width, double gap) {
    return new Gate(name, new Place.At(Limb.ONLY, 0.0, side), width, gap, 0.006);
  }

  /** First and second gate of this plate, listed in one order or the other. */
  static SampleJob withTwoGates(SampleJob job, boolean swapped) {
    Gate left = named("left", Side.THICK_END, 0.01, 1e-3);
    Gate right = named("right", Side.TIP, 0.01, 1e-3);
    return swapped ? job.gate(right).gate(left) : job.gate(left).gate(right);
  }

  /** Whether next to nothing of a plate is left to fill; held metal has then nowhere to go. */
  static boolean isFull(PlaneRun run) {
    return run.flow.state.totalLiquid() > 0.999 * run.grid.totalVolume();
  }
}
