package lastinch.solver.plane;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import lastinch.solver.casting.GapGrid;
import lastinch.solver.casting.GapMap;
import lastinch.solver.casting.PourCase;
import lastinch.solver.filling.Filling;
import lastinch.solver.filling.FillingSolver;
import lastinch.solver.filling.Need;
import lastinch.solver.filling.PlaneSettings;
import lastinch.solver.geometry.cavity.CavityMap;
import lastinch.solver.geometry.cavity.GatingFault;

/** Fills the map of a cavity in two dimensions: jets, edges, meeting lines, trapped air. */
public final class PlaneSolver implements FillingSolver {
  /** Memory that a run takes for every square of its map [B]; measured, rounded up. */
  private static final double BYTES_A_SQUARE = 1500.0;

  /** Share of all memory that a run may take [-]; our choice. */
  private static final double SHARE_OF_MEMORY = 0.6;

  /** Edges of squares to choose from [m]; chosen, round. */
  private static final double[] EDGES = {
    0.25e-3, 0.5e-3, 0.75e-3, 1e-3, 1.5e-3, 2e-3, 2.5e-3, 3e-3, 4e-3, 5e-3
  };

  private final PlaneSettings settings;

  public PlaneSolver(PlaneSettings settings) {
    this.settings = settings;
  }

  @Override
  public List<Need> needs(PourCase job) {
    List<Need> needs = new ArrayList<>();
    if (!job.checking().startsWet().isEmpty()) {
      needs.add(Need.METAL_IN_PLACE);
    }
    if (settings.map().isEmpty()) {
      for (GatingFault fault : CavityMap.faults(job)) {
        needs.add(Need.valueOf(fault.name()));
      }
      if (isTooFine(job, settings.square())) {
        needs.add(Need.SQUARES_TOO_FINE);
      }
    }
    return List.copyOf(needs);
  }

  @Override
  public Filling begin(PourCase job) {
    GapMap map = settings.map().orElseGet(() -> CavityMap.of(job, settings.square()));
    return new PlaneFilling(job, map, settings);
  }

  /** Whether squares of an edge [m] are too fine for the size of a job and the memory there is. */
  private static boolean isTooFine(PourCase job, double cell) {
    double room = SHARE_OF_MEMORY * Runtime.getRuntime().maxMemory() / BYTES_A_SQUARE;
    return CavityMap.cells(job, cell) > Math.min(GapGrid.MOST_CELLS, room);
  }

  /** Edge of the finest squares that are not too fine for a job [m], from a short list. */
  public static double finest(PourCase job) {
    return Arrays.stream(EDGES)
        .filter(e -> !isTooFine(job, e))
        .findFirst()
        .orElse(EDGES[EDGES.length - 1]);
  }
}
