package lastinch.solver.plane.flow;

import lastinch.solver.numerics.FivePointMatrix;
import lastinch.solver.numerics.WorkerPair;
import lastinch.solver.plane.air.PlanePockets;

/**
 * Finds pressures that leave no divergence in the metal, and corrects the speeds by them. Air
 * pockets take part with one unknown each. At the surface the pressure is that of the air, plus
 * what the gap and the bulge of the surface push back with; the surface stands where the metal's
 * own height in the two cells says, not at a cell face.
 *
 * <p>The push of the gap is dry friction: metal advances against it, is not driven out by it beyond
 * {@link FlowingLiquid#keepsOpen}, and stands still in between.
 */
public final class Projection {
  private static final double SHIFT = 1e-9; // added to the diagonal, of it [-]; for shut-in metal
  private static final int MOST = 2000; // iterations [-]; chosen, a hundred times the usual

  /** Cells along the edge of a patch, which is one coarse unknown [-]; chosen. */
  private static final int PATCH = 4;

  /** How much a standing surface gives way, of a moving one [-]; chosen: 0 leaves p indefinite. */
  private static final double YIELD = 1e-3;

  /** Speed from which a surface that forms is taken to move already [m/s]; chosen. */
  private static final double MOVES = 5e-3;

  static final byte ADVANCES = 1;
  static final byte RECEDES = 2;
  static final byte STANDS = 3;

  private final PlaneGrid grid;
  private final FlowingLiquid liquid;
  private final PlanePockets pockets;
  private final PlaneInlets gates;
  private final WallFriction friction;
  private final SurfaceCurvature lowerCurvature;
  private final SurfaceCurvature upperCurvature;
  private FlowState state;
  private double dt;
  private final WorkerPair.Work drives = this::drive;
  private final WorkerPair.Work edges = this::edges;
  private final WorkerPair.Work takes = this::take;
  private final WorkerPair.Work corrections = this::correct;
  private final SurfaceDistance distance;
  private final VolumeRelaxation settling;
  private final VelocityExtrapolation outside;
  private final FivePointMatrix system;
  private final double tolerance;
  private final boolean airPushes;
  private final double[] surface;
  private final double[] pushX;
  private final double[] pushY;
  private final int[] unknown;
  private final int[] patch;
  private final double[] solvedAir;
  private final double[] pocketDiagonal = new double[PlanePockets.MOST];
  private final double[] pocketSource = new double[PlanePockets.MOST];
  private final byte[] edgeX;
  private final byte[] edgeY;
  private final double[] atGate;
  private final double[] gateKnown;
  private final double[] gateGain;
  private final boolean dryFriction;
  private double diagonal;
  private double source;
  private long iterations;
  private int solves;

  Projection(
      PlaneGrid grid,
      FlowingLiquid liquid,
      PlanePockets pockets,
      PlaneInlets gates,
      WallFriction friction,
      boolean airPushes,
      double tolerance,
      WorkerPair team) {
    this.grid = grid;
    this.liquid = liquid;
    this.pockets = pockets;
    this.gates = gates;
    this.friction = friction;
    this.tolerance = tolerance;
    this.airPushes = airPushes;
    lowerCurvature = new SurfaceCurvature(grid);
    upperCurvature = new SurfaceCurvature(grid);
    outside = new VelocityExtrapolation(grid);
    int cells = grid.nx * grid.ny;
    patch = grid.patches(PATCH);
    int patches = patch[grid.cell(grid.nx - 1, grid.ny - 1)] + 1;
    system =
        new FivePointMatrix(cells, PlanePockets.MOST, airPushes ? 4 * cells : 1, patches, team);
    surface = new double[grid.size];
    pushX = new double[grid.size];
    pushY = new double[grid.size];
    unknown = new int[grid.size];
    solvedAir = new double[PlanePockets.MOST];
    edgeX = new byte[grid.size];
    edgeY = new byte[grid.size];
    atGate = new double[grid.size];
    gateKnown = new double[grid.size];
    gateGain = new double[grid.size];
    distance = new SurfaceDistance(grid, liquid);
    settling = new VolumeRelaxation(grid);
    dryFriction = liquid.capillary() > 0.0 && liquid.keepsOpen() < 1.0;
  }

  /** Friction and gravity on the speeds, then pressure. Cells are sorted, friction is found. */
  void project(FlowState s, double step) {
    state = s;
    dt = step;
    s.team.run(drives);
    gates.prepare(liquid.density(), grid.dx, dt);
    s.team.run(edges);
    assemble(s, dt);
    iterations += system.solve(tolerance, MOST);
    solves++;
    takePressures(s);
    s.team.run(corrections);
    outside.extend(s);
    finishGates(s);
  }

  private void drive(int part) {
    FlowState s = state;
    surfaces(part, s, part == 0 ? lowerCurvature : upperCurvature);
    drive(part, s.u, grid.faceX, friction.leavesX, liquid.gravityX(), s);
    drive(part, s.v, grid.faceY, friction.leavesY, liquid.gravityY(), s);
  }

  private void edges(int part) {
    FlowState s = state;
    edges(part, s, s.u, grid.faceX, edgeX, 1);
    edges(part, s, s.v, grid.faceY, edgeY, grid.stride);
  }

  private void correct(int part) {
    FlowState s = state;
    correct(part, s, s.u, grid.faceX, friction.leavesX, edgeX, 1);
    correct(part, s, s.v, grid.faceY, friction.leavesY, edgeY, grid.stride);
  }

  /** Push of the bulging surface at empty cells beside metal [Pa]. */
  private void surfaces(int part, FlowState s, SurfaceCurvature curvature) {
    int n = grid.stride;
    int to = s.to(part, 0);
    for (int j = s.from(part, 0); j <= to; j++) {
      int end = s.last[j];
      for (int c = s.first[j]; c <= end; c++) {
        surface[c] = 0.0;
        if (!s.active[c] && grid.volume[c] > 0.0 && liquid.tension() > 0.0) {
          boolean beside = s.active[c - 1] || s.active[c + 1] || s.active[c - n] || s.active[c + n];
          surface[c] = beside ? liquid.tension() * curvature.at(s, c) : 0.0;
        }
      }
    }
  }

  private void drive(
      int part, double[] w, double[] face, double[] leaves, double pull, FlowState s) {
    int d = face == grid.faceX ? 1 : grid.stride;
    int to = s.to(part, 1);
    for (int j = s.from(part, 0); j <= to; j++) {
      int end = s.last[j] + 1;
      for (int c = s.first[j]; c <= end; c++) {
        double room = FaceMomentum.DUST * (grid.volume[c] + grid.volume[c - d]);
        boolean wet = face[c] > 0.0 && s.liquid[c] + s.liquid[c - d] > room;
        w[c] = wet ? leaves[c] * (w[c] + dt * pull) : 0.0;
      }
    }
  }

  /** Whether the surface at each face between metal and air advances, recedes or stands. */
  private void edges(int part, FlowState s, double[] w, double[] face, byte[] edge, int d) {
    int to = s.to(part, 1);
    for (int j = s.from(part, 0); j <= to; j++) {
      int end = s.last[j] + 1;
      for (int c = s.first[j]; c <= end; c++) {
        boolean left = s.active[c - d];
        if (face[c] == 0.0 || left == s.active[c]) {
          edge[c] = 0;
          continue;
        }
        int metal = left ? c - d : c;
        int air = left ? c : c - d;
        double outwards = left ? w[c] : -w[c];
        byte before = edge[c];
        if (!dryFriction) {
          edge[c] = ADVANCES;
        } else if (before == 0) {
          boolean moves = Math.abs(outwards) > MOVES;
          edge[c] = !moves ? STANDS : outwards > 0.0 ? ADVANCES : RECEDES;
        } else if (before == STANDS) {
          double p = s.pressure[metal];
          double rest = s.airPressure[air] + surface[air];
          double push = liquid.capillary() / grid.gap[air];
          if (p > rest + push) {
            edge[c] = ADVANCES;
          } else if (p < rest + liquid.keepsOpen() * push) {
            edge[c] = RECEDES;
          }
        }
      }
    }
  }

  /** Push of gap and bulge at a face between metal and air [Pa]. */
  private double push(FlowState s, int metal, int air, byte edge) {
    double push = liquid.capillary() / grid.gap[air];
    if (edge == ADVANCES) {
      return surface[air] + push;
    }
    double least = liquid.keepsOpen() * push;
    if (edge == RECEDES) {
      return surface[air] + least;
    }
    double held = s.pressure[metal] - s.airPressure[air] - surface[air];
    return surface[air] + Math.max(least, Math.min(push, held));
  }

  private void assemble(FlowState s, double dt) {
    int n = grid.stride;
    double scale = dt / (liquid.density() * grid.dx);
    system.clear();
    if (airPushes) {
      for (int p = 0; p < pockets.count(); p++) {
        double store = pockets.stiffness[p] / dt + pockets.leakSlope[p];
        pocketDiagonal[p] = store;
        pocketSource[p] = store * pockets.pressure[p] - pockets.leak[p];
      }
    }
    gatherGates(s);
    for (int j = s.rowFrom; j <= s.rowTo; j++) {
      int end = s.last[j];
      for (int c = s.first[j]; c <= end; c++) {
        if (!s.active[c]) {
          continue;
        }
        unknown[c] = system.cells();
        diagonal = gateGain[c];
        source = settling.of(s, c, dt) + gateKnown[c];
        double west = side(s, c, c, -1, grid.faceX, s.u, friction.leavesX, edgeX, scale);
        side(s, c, c + 1, 1, grid.faceX, s.u, friction.leavesX, edgeX, scale);
        double south = side(s, c, c, -n, grid.faceY, s.v, friction.leavesY, edgeY, scale);
        side(s, c, c + n, n, grid.faceY, s.v, friction.leavesY, edgeY, scale);
        double shift = SHIFT * (diagonal + scale * grid.gap[c] * grid.dx);
        int below = south != 0.0 ? unknown[c - n] : 0;
        double weight = dt * grid.perVolume[c];
        system.add(diagonal + shift, west, south, below, source, weight, s.pressure[c], patch[c]);
      }
    }
    if (airPushes) {
      for (int p = 0; p < pockets.count(); p++) {
        double weight = dt / pockets.room(p);
        system.addOther(pocketDiagonal[p], pocketSource[p], weight, pockets.pressure[p]);
      }
    }
  }

  private void gatherGates(FlowState s) {
    for (int c : gates.cells) {
      gateKnown[c] = 0.0;
      gateGain[c] = 0.0;
    }
    for (int k = 0; k < gates.cells.length; k++) {
      int c = gates.cells[k];
      double now = s.active[c] ? s.pressure[c] : s.airPressure[c] + surface[c];
      if (s.active[c] || gates.known[k] - gates.gain[k] * now >= 0.0) {
        gateKnown[c] += gates.area[k] * gates.known[k];
        gateGain[c] += gates.area[k] * gates.gain[k];
      }
    }
    for (int c : gates.cells) {
      if (!s.active[c] && airPushes && pockets.pocket[c] != PlanePockets.NONE) {
        pocketSource[pockets.pocket[c]] += gateKnown[c];
        pocketDiagonal[pockets.pocket[c]] += gateGain[c];
        gateKnown[c] = 0.0;
        gateGain[c] = 0.0;
      }
    }
  }

  /** Adds one side of a cell to its equation; returns the coupling to metal there. */
  private double side(
      FlowState s,
      int c,
      int face,
      int to,
      double[] open,
      double[] w,
      double[] leaves,
      byte[] edge,
      double scale) {
    if (open[face] == 0.0 || leaves[face] == 0.0) {
      return 0.0;
    }
    int other = c + to;
    double out = to > 0 ? open[face] * w[face] : -open[face] * w[face];
    double size = open[face] * leaves[face] * scale;
    if (s.active[other]) {
      diagonal += size;
      source -= out;
      return size;
    }
    size *= edge[face] == STANDS ? YIELD : 1.0 / distance.of(s, c, other, to);
    out = edge[face] == STANDS ? 0.0 : out;
    double push = push(s, c, other, edge[face]);
    if (open == grid.faceX) {
      pushX[face] = push;
    } else {
      pushY[face] = push;
    }
    diagonal += size;
    source += size * push - out;
    int p = airPushes ? pockets.pocket[other] : PlanePockets.NONE;
    if (p != PlanePockets.NONE) {
      pocketDiagonal[p] += size;
      pocketSource[p] += out - size * push;
      system.link(unknown[c], p, size);
    } else {
      source += size * s.airPressure[other];
    }
    return 0.0;
  }

  private void take(int part) {
    FlowState s = state;
    int to = s.to(part, 0);
    for (int j = s.from(part, 0); j <= to; j++) {
      int end = s.last[j];
      for (int c = s.first[j]; c <= end; c++) {
        s.pressure[c] = s.active[c] ? system.cell(unknown[c]) : 0.0;
      }
    }
  }

  private void takePressures(FlowState s) {
    s.team.run(takes);
    if (airPushes) {
      for (int p = 0; p < pockets.count(); p++) {
        solvedAir[p] = system.other(p);
        pockets.book(p, solvedAir[p], dt);
      }
      pockets.settle(s, solvedAir);
    }
  }

  private void correct(
      int part, FlowState s, double[] w, double[] face, double[] leaves, byte[] edge, int d) {
    double scale = dt / (liquid.density() * grid.dx);
    int to = s.to(part, 1);
    for (int j = s.from(part, 0); j <= to; j++) {
      int end = s.last[j] + 1;
      for (int c = s.first[j]; c <= end; c++) {
        boolean left = s.active[c - d];
        boolean right = s.active[c];
        if (face[c] == 0.0 || !(left || right)) {
          continue;
        }
        double pull = leaves[c] * scale;
        if (left && right) {
          w[c] += pull * (s.pressure[c - d] - s.pressure[c]);
        } else if (leaves[c] == 0.0) {
          w[c] = 0.0;
        } else {
          int metal = left ? c - d : c;
          int air = left ? c : c - d;
          int step = left ? d : -d;
          double beyond = s.airPressure[air] + (d == 1 ? pushX[c] : pushY[c]);
          double over = s.pressure[metal] - beyond;
          if (edge[c] == STANDS) {
            w[c] = (left ? over : -over) * pull * YIELD;
            continue;
          }
          w[c] += (left ? over : -over) * pull / distance.of(s, metal, air, step);
          double outwards = left ? w[c] : -w[c];
          if (dryFriction && (edge[c] == ADVANCES ? outwards < 0.0 : outwards > 0.0)) {
            edge[c] = STANDS;
            w[c] = 0.0;
          }
        }
      }
    }
  }

  private void finishGates(FlowState s) {
    for (int c : gates.cells) {
      atGate[c] = s.active[c] ? s.pressure[c] : surface[c] + s.airPressure[c];
    }
    gates.finish(s, atGate);
  }

  /** Iterations of the pressure so far, over the number of solves [-]. */
  public double meanIterations() {
    return solves == 0 ? 0.0 : (double) iterations / solves;
  }
}
