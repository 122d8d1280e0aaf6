package lastinch.solver.geometry.cavity;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import lastinch.solver.casting.GapGrid;
import lastinch.solver.casting.GapMap;
import lastinch.solver.casting.GapMap.Opening;
import lastinch.solver.casting.GapMap.Part;
import lastinch.solver.casting.Orientation;
import lastinch.solver.casting.Piece;
import lastinch.solver.casting.PourCase;
import lastinch.solver.casting.gating.Vent;
import lastinch.solver.geometry.gating.PiecePlaces;

/** Builds the map of the whole cavity of a job. */
public final class CavityMap {
  /** Name of inlets that are the whole thick end. */
  public static final String MOUTH = "mouth";

  private CavityMap() {}

  /**
   * Lays piece and gating out and fills the cells.
   *
   * @param job the job
   * @param cell edge length of a cell [m]
   * @return the map; its volume and wall are those of the described shapes within a fraction of a
   *     per cent once the narrowest part is four cells wide
   * @throws IllegalArgumentException if the cell is too fine for the size of the job
   */
  public static GapMap of(PourCase job, double cell) {
    PieceShape piece = piece(job);
    GatingShape gating = new GatingShape(job, piece);
    List<GapRegion> regions = new ArrayList<>(piece.regions());
    regions.addAll(gating.regions());
    List<Part> parts = new ArrayList<>();
    GapMap.Draft draft = fill(regions, parts, cell, job.mould().attitude());
    GapMap closed = draft.fix(parts, List.of(), List.of());
    double foot = job.gating().sprue().foot();
    boolean fed = job.checking().entersAt().isPresent() || job.checking().cupKeptAt().isPresent();
    boolean direct = fed && job.gating().gates().isEmpty();
    List<Opening> inlets =
        direct ? mouth(closed) : inlets(closed, gating.feet(), Math.PI / 4.0 * foot * foot);
    return draft.fix(parts, inlets, vents(closed, piece, job.gating().vents()));
  }

  private static PieceShape piece(PourCase job) {
    return new PieceShape(job.piece(), PiecePlaces.of(job));
  }

  /** What is wrong with how the gating of a job lies; empty when it can be mapped as it should. */
  public static Set<GatingFault> faults(PourCase job) {
    return new GatingShape(job, piece(job)).faults();
  }

  /** Cells that the map of a job takes, also when they are more than can be had. */
  public static double cells(PourCase job, double cell) {
    PieceShape piece = piece(job);
    List<GapRegion> regions = new ArrayList<>(piece.regions());
    regions.addAll(new GatingShape(job, piece).regions());
    PlanBox box = regions.stream().map(GapRegion::box).reduce(PlanBox::with).orElseThrow();
    return GapGrid.cells(box.lowX(), box.lowY(), box.highX(), box.highY(), cell);
  }

  /** The whole section of the thick end, for metal that checking options let in there. */
  private static List<Opening> mouth(GapMap map) {
    List<Opening> found = new ArrayList<>();
    for (int i = 0; i + 1 < map.nx() && found.isEmpty(); i++) {
      for (int j = 0; j < map.ny(); j++) {
        double section = map.faceX(i + 1, j);
        if (section > 0.0) {
          found.add(new Opening(MOUTH, map.grid().index(i, j), section));
        }
      }
    }
    return found;
  }

  /**
   * The map of the piece alone, lying flat.
   *
   * @param piece the piece
   * @param cell edge length of a cell [m]
   */
  public static GapMap of(Piece piece, double cell) {
    List<Part> parts = new ArrayList<>();
    List<GapRegion> regions = new PieceShape(piece, new PiecePlaces(piece, false)).regions();
    return fill(regions, parts, cell, Orientation.FLAT).fix(parts, List.of(), List.of());
  }

  /** Fills a grid round some regions; their parts go on a list. */
  public static GapMap.Draft fill(
      List<GapRegion> regions, List<Part> parts, double cell, Orientation stands) {
    int[] partOf = new int[regions.size()];
    PlanBox box = regions.get(0).box();
    for (int r = 0; r < partOf.length; r++) {
      Part part = regions.get(r).part();
      if (!parts.contains(part)) {
        parts.add(part);
      }
      partOf[r] = parts.indexOf(part);
      box = box.with(regions.get(r).box());
    }
    GapGrid grid = GapGrid.covering(box.lowX(), box.lowY(), box.highX(), box.highY(), cell);
    GapMap.Draft draft = new GapMap.Draft(grid);
    CellFilling filling = new CellFilling(regions, partOf, parts.size(), draft, stands);
    filling.fill();
    for (int r = 0; r < regions.size(); r++) {
      if (regions.get(r) instanceof SolidRegion drawn && !drawn.isOverlapping()) {
        SolidWall.set(drawn.solid(), draft, filling, r);
      }
    }
    return draft;
  }

  private static List<Opening> inlets(GapMap map, List<GapRegion> feet, double area) {
    List<Opening> found = new ArrayList<>();
    double sum = 0.0;
    for (int c = 0; c < map.grid().size(); c++) {
      double share = map.isOpen(c) ? map.open(c) * coverage(map.grid(), c, feet) : 0.0;
      if (share > 0.0) {
        found.add(new Opening("sprue", c, share));
        sum += share;
      }
    }
    List<Opening> scaled = new ArrayList<>();
    for (Opening o : found) {
      scaled.add(new Opening(o.name(), o.cell(), o.area() * area / sum));
    }
    return scaled;
  }

  /** Share of a cell under the foot of the sprue [-]. */
  private static double coverage(GapGrid grid, int cell, List<GapRegion> feet) {
    int i = cell % grid.nx();
    int j = cell / grid.nx();
    int hits = 0;
    for (int a = 0; a < CellFilling.FINE; a++) {
      for (int b = 0; b < CellFilling.FINE; b++) {
        double x = grid.x0() + (i + (a + 0.5) / CellFilling.FINE) * grid.cell();
        double y = grid.y0() + (j + (b + 0.5) / CellFilling.FINE) * grid.cell();
        hits += feet.stream().anyMatch(f -> f.gapAt(x, y) > 0.0) ? 1 : 0;
      }
    }
    return (double) hits / (CellFilling.FINE * CellFilling.FINE);
  }

  /** Each vent opens into the open cell nearest to the middle of the piece at its place. */
  private static List<Opening> vents(GapMap map, PieceShape piece, List<Vent> vents) {
    List<Opening> all = new ArrayList<>();
    for (Vent vent : vents) {
      double[] at = piece.ventPlace(vent.place());
      all.add(
          new Opening(
              vent.name(), nearestOpen(map, at), Math.PI / 4.0 * vent.across() * vent.across()));
    }
    return all;
  }

  private static int nearestOpen(GapMap map, double[] at) {
    GapGrid grid = map.grid();
    int best = 0;
    double least = Double.MAX_VALUE;
    for (int c = 0; c < grid.size(); c++) {
      double dx = grid.x(c % grid.nx()) - at[0];
      double dy = grid.y(c / grid.nx()) - at[1];
      double distance = dx * dx + dy * dy;
      if (map.isOpen(c) && map.open(c) > 0.5 && distance < least) {
        least = distance;
        best = c;
      }
    }
    return best;
  }
}
