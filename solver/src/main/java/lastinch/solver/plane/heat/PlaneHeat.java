package lastinch.solver.plane.heat;

import lastinch.solver.casting.PourCase;
import lastinch.solver.charge.MeltProperties;
import lastinch.solver.charge.MouldColumns;
import lastinch.solver.material.MetalTable;
import lastinch.solver.numerics.VanLeerFlux;
import lastinch.solver.numerics.WorkerPair;
import lastinch.solver.plane.flow.FlowState;
import lastinch.solver.plane.flow.PlaneFlow;
import lastinch.solver.plane.flow.PlaneGrid;
import lastinch.solver.plane.flow.WallCurvature;
import lastinch.solver.wall.WallColumns;

/**
 * Heat of the metal, cell by cell: carried with the same volumes as the metal, second order where
 * cells are full and never beyond its neighbours; given to a column of mould by every wetted cell;
 * conducted along the plane. New solid is shared between slurry and skin; only what is not skin
 * moves on.
 */
public final class PlaneHeat implements PlaneFlow.Carried {
  /** Cells fuller than this count as inside the metal [-]; chosen. */
  private static final double FULL = 0.95;

  /** Cells less full than this give all their heat when they give all their metal [-]; chosen. */
  private static final double HALF = 0.5;

  /** Less metal than this share of a cell has no heat that rounding leaves sound [-]; chosen. */
  private static final double FEW = 1e-5;

  /** Share of a cell's heat capacity that a face may conduct in a step [-]; chosen, under 1/4. */
  private static final double MOST_CONDUCTED = 0.2;

  final PlaneGrid grid;
  final MeltProperties melt;
  private final WallHeat lowerWalls;
  private final WallHeat upperWalls;
  private final int upperFrom;
  private final double mouldTemperature;

  /** Heat in a cell over density, liquid times specific enthalpy [m3 J/kg]. */
  public final double[] content;

  /** Specific enthalpy of what moves [J/kg]. */
  public final double[] enthalpy;

  final double[] mostSolid;
  final double[] wetted;
  public final double[] mushShare;
  private final double[] temperature;

  /** Seconds since the first metal came to a cell, and since its last step of heat [s]. */
  final double[] age;

  final double[] due;
  private final double[] share;
  private final double[] flowX;
  private final double[] flowY;
  private final FrontMarkerField leading;
  private final DispersionAlongFlow along;
  private double entering;
  private double carriedIn;
  private final double[] gatesIn = new double[2];
  private FlowState s;
  private double dt;
  private boolean last;
  private final WorkerPair.Work shares = this::readShares;
  private final WorkerPair.Work carries = this::carryAcross;
  private final WorkerPair.Work arrivals = this::takeCarried;
  private final WorkerPair.Work readings = this::readTemperatures;
  private final WorkerPair.Work flows = this::conduct;
  private final WorkerPair.Work sums = this::takeConducted;
  private final WorkerPair.Work walls = this::give;
  private final double leastHeat;
  private final double coldest;

  public PlaneHeat(
      PlaneGrid grid,
      MeltProperties melt,
      PourCase job,
      MouldColumns mould,
      double mouldTemperature,
      boolean[] shut) {
    this.grid = grid;
    this.melt = melt;
    this.mouldTemperature = mouldTemperature;
    int n = grid.size;
    content = new double[n];
    enthalpy = new double[n];
    mostSolid = new double[n];
    wetted = new double[n];
    mushShare = new double[n];
    temperature = new double[n];
    age = new double[n];
    due = new double[n];
    share = new double[n];
    flowX = new double[n];
    flowY = new double[n];
    entering = melt.enthalpyIn;
    double[] curvature = job.checking().wallCurvature() ? WallCurvature.of(grid) : new double[n];
    for (int c = 0; c < n; c++) {
      mushShare[c] = grid.volume[c] > 0.0 ? melt.mushShare(grid.gap[c], mouldTemperature) : 0.0;
    }
    lowerWalls = new WallHeat(this, 0, mould, mouldTemperature, curvature, shut);
    upperWalls = new WallHeat(this, 1, mould, mouldTemperature, curvature, shut);
    upperFrom = WallHeat.middleRow(grid) * grid.stride;
    leastHeat =
        Math.min(melt.alloy.specificHeatLiquid().value(), melt.alloy.specificHeatSolid().value());
    leading = new FrontMarkerField(grid, melt, this, job, mouldTemperature);
    along = new DispersionAlongFlow(grid, melt, leading);
    coldest = melt.table.enthalpy(mouldTemperature);
  }

  /** What metal that enters from now on holds [J/kg]. */
  public void enters(double specificEnthalpy) {
    entering = specificEnthalpy;
  }

  double entering() {
    return entering;
  }

  /** Seconds since the first metal came to a cell [s], by heat steps. */
  double age(int c) {
    return age[c];
  }

  /** Mould face of a wetted cell [K]. */
  double faceTemperature(int c) {
    return wetted[c] > 0.0 ? walls(c).faceTemperature(c) : mouldTemperature;
  }

  private WallHeat walls(int c) {
    return c < upperFrom ? lowerWalls : upperWalls;
  }

  /** The half of the grid that a cell lies in, 0 or 1. */
  public int half(int c) {
    return c < upperFrom ? 0 : 1;
  }

  /**
   * A copy of all columns of mould of one half that goes its own way.
   *
   * @param seconds how long heat is to be followed from here [s]
   */
  public WallColumns columns(int half, double seconds) {
    return (half == 0 ? lowerWalls : upperWalls).columns(seconds);
  }

  /** Number of a cell's column in its half. */
  public int columnOf(int c) {
    return walls(c).columnOf(c);
  }

  /** Whether metal is resolved through the gap of a cell. */
  public boolean isThick(int c) {
    return walls(c).isThick(c);
  }

  /** Share of a cell's wall that its column stands for [-]. */
  public double wetted(int c) {
    return wetted[c];
  }

  /** Largest share of solid so far in a cell [-]. */
  public double mostSolid(int c) {
    return mostSolid[c];
  }

  public FrontMarkerField leading() {
    return leading;
  }

  @Override
  public void moved(FlowState s, double dt) {
    leading.age(s, dt);
  }

  @Override
  public void carry(FlowState state, double step) {
    s = state;
    s.team.run(shares);
    s.team.run(carries);
    gatesIn[0] = 0.0;
    gatesIn[1] = 0.0;
    s.team.run(arrivals);
    carriedIn += gatesIn[0] + gatesIn[1];
    leading.carry(s);
  }

  private void readShares(int part) {
    int to = s.to(part, 1);
    for (int j = s.from(part, 1); j <= to; j++) {
      int end = s.last[j] + 1;
      for (int c = s.first[j] - 1; c <= end; c++) {
        share[c] = s.liquid[c] * grid.perVolume[c];
      }
    }
  }

  private void carryAcross(int part) {
    int n = grid.stride;
    int to = s.to(part, 1);
    for (int j = s.from(part, 0); j <= to; j++) {
      int end = s.last[j] + 1;
      for (int c = s.first[j]; c <= end; c++) {
        flowX[c] = s.fluxX[c] == 0.0 ? 0.0 : s.fluxX[c] * faceValue(s.fluxX[c], c, 1);
        flowY[c] = s.fluxY[c] == 0.0 ? 0.0 : s.fluxY[c] * faceValue(s.fluxY[c], c, n);
      }
    }
  }

  private void takeCarried(int part) {
    int n = grid.stride;
    int to = s.to(part, 0);
    for (int j = s.from(part, 0); j <= to; j++) {
      int end = s.last[j];
      for (int c = s.first[j]; c <= end; c++) {
        double flux = (s.fluxX[c] - s.fluxX[c + 1]) + (s.fluxY[c] - s.fluxY[c + n]);
        double after = s.liquid[c] + flux + s.gateFlux[c];
        if (after <= 0.0) {
          content[c] = 0.0;
          continue;
        }
        double gate = s.gateFlux[c];
        double in = gate == 0.0 ? 0.0 : gate * (gate > 0.0 ? entering : enthalpy[c]);
        content[c] += (flowX[c] - flowX[c + 1]) + (flowY[c] - flowY[c + n]) + in;
        gatesIn[part] += in;
        refresh(s, c, after);
      }
    }
  }

  private double faceValue(double flux, int c, int d) {
    boolean forward = flux > 0.0;
    int up = forward ? c - d : c;
    int down = forward ? c : c - d;
    int behind = forward ? c - 2 * d : c + d;
    if (share[up] > FULL && share[behind] > FULL) {
      double courant = Math.min(1.0, Math.abs(flux) * grid.perVolume[up]);
      boolean mark = share[down] <= FULL && leading.atFront[down];
      if (mark || share[down] > FULL) {
        double ahead = mark ? leading.enthalpy[down] : enthalpy[down];
        return VanLeerFlux.face(enthalpy[behind], enthalpy[up], ahead, courant);
      }
    }
    return share[up] < HALF && isSweptEmpty(up)
        ? content[up] / s.liquid[up]
        : leading.leaving(s, up, flux);
  }

  /** Whether a cell gives all it has in the step; all its heat then goes along, none is left. */
  private boolean isSweptEmpty(int c) {
    double out =
        (Math.max(0.0, -s.fluxX[c]) + Math.max(0.0, s.fluxX[c + 1]))
            + (Math.max(0.0, -s.fluxY[c]) + Math.max(0.0, s.fluxY[c + grid.stride]));
    return out >= s.liquid[c] * (1.0 - 1e-9);
  }

  /** Specific enthalpy of the moving part: skin is colder by the latent heat it has given. */
  void refresh(FlowState s, int c, double liquid) {
    double h = content[c] / liquid;
    if (liquid < FEW * grid.volume[c]) {
      h = Math.max(coldest, Math.min(melt.enthalpyIn, h));
    }
    if (s.skin[c] > 0.0) {
      double skin = Math.min(1.0, s.skin[c] / liquid);
      h += melt.table.latentHeat() * skin * (1.0 - s.slurry[c]);
    }
    enthalpy[c] = h;
  }

  /** One heat step [s] for all wetted cells. */
  public void step(FlowState state, double step, boolean end) {
    if (melt.water) {
      return;
    }
    s = state;
    dt = step;
    last = end;
    s.team.run(readings);
    s.team.run(flows);
    s.team.run(sums);
    along.spread(s, content, enthalpy, dt);
    s.team.run(walls);
  }

  private void give(int part) {
    (part == 0 ? lowerWalls : upperWalls).step(s, dt, last);
  }

  /** Conduction along the plane between cells that are at least half full: temperatures. */
  private void readTemperatures(int part) {
    MetalTable table = melt.table(part);
    int to = s.to(part, 0);
    for (int j = s.from(part, 1); j <= to; j++) {
      int end = s.last[j];
      for (int c = s.first[j] - 1; c <= end; c++) {
        boolean half = s.liquid[c] > 0.5 * grid.volume[c];
        temperature[c] = half ? table.temperature(content[c] / s.liquid[c]) : 0.0;
        flowX[c] = 0.0;
        flowY[c] = 0.0;
      }
    }
  }

  private void conduct(int part) {
    MetalTable table = melt.table(part);
    double factor = dt / (melt.density * grid.dx);
    int to = s.to(part, 0);
    for (int j = s.from(part, 0); j <= to; j++) {
      int end = s.last[j];
      for (int c = s.first[j]; c <= end; c++) {
        if (temperature[c] > 0.0) {
          flowX[c] = between(table, c, c - 1, factor * grid.faceX[c]);
          flowY[c] = between(table, c, c - grid.stride, factor * grid.faceY[c]);
        }
      }
    }
  }

  private void takeConducted(int part) {
    int n = grid.stride;
    int to = s.to(part, 0);
    for (int j = s.from(part, 0); j <= to; j++) {
      int end = s.last[j];
      for (int c = s.first[j]; c <= end; c++) {
        if (temperature[c] > 0.0) {
          double right = c + 1 <= end ? flowX[c + 1] : 0.0;
          double top = temperature[c + n] > 0.0 ? flowY[c + n] : 0.0;
          content[c] += (flowX[c] - right) + (flowY[c] - top);
        }
      }
    }
  }

  /** Heat that goes over a face, never more than an explicit step may move. */
  private double between(MetalTable table, int c, int other, double size) {
    if (temperature[other] == 0.0 || size == 0.0) {
      return 0.0;
    }
    double k =
        0.5
            * (table.conductivity(content[c] / s.liquid[c])
                + table.conductivity(content[other] / s.liquid[other]));
    double most = MOST_CONDUCTED * leastHeat * Math.min(s.liquid[c], s.liquid[other]);
    return Math.min(k * size, most) * (temperature[other] - temperature[c]);
  }

  /** Temperature of the metal in a cell [K]. */
  public double temperatureOf(FlowState s, int c) {
    return melt.table.temperature(s.liquid[c] > 0.0 ? content[c] / s.liquid[c] : melt.enthalpyIn);
  }

  /** Share of solid in a cell [-]. */
  public double solidOf(FlowState s, int c) {
    return s.liquid[c] > 0.0 ? melt.table.solid(content[c] / s.liquid[c]) : 0.0;
  }

  /** Heat in the metal [J], 0 for liquid at the liquidus. */
  public double heldInMetal() {
    double sum = 0.0;
    for (double e : content) {
      sum += e;
    }
    return sum * melt.density;
  }

  /** Heat in the mould above its start, from the stored profiles [J]. */
  public double heldInMould() {
    return lowerWalls.held() + upperWalls.held();
  }

  /** Heat that left through the outside of a shell [J]. */
  public double lostToAir() {
    return lowerWalls.lostToAir() + upperWalls.lostToAir();
  }

  /** Heat brought through the gates [J]. */
  public double carriedIn() {
    return carriedIn * melt.density;
  }

  /** Largest share of solid anywhere so far [-]. */
  public double mostSolidAnywhere() {
    double most = 0.0;
    for (double solid : mostSolid) {
      most = Math.max(most, solid);
    }
    return most;
  }

  /** Least open gap over what stops it, as a share of what there was, anywhere so far [-]. */
  public double leastOpen() {
    return Math.max(0.0, Math.min(lowerWalls.leastStop(), upperWalls.leastStop()));
  }
}
