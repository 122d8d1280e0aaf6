package lastinch.solver.plane;

import lastinch.solver.casting.PourCase;
import lastinch.solver.numerics.LimitedFace;
import lastinch.solver.physics.Slurry;
import lastinch.solver.wall.WallColumns;

/**
 * Heat of the metal, cell by cell: carried with the same volumes as the metal, second order where
 * cells are full and never beyond its neighbours; given to a column of mould by every wetted cell;
 * conducted along the plane. New solid is shared between slurry and skin; only what is not skin
 * moves on.
 */
final class PlaneHeat implements PlaneFlow.Carried {
  private static final double FULL = 0.95;
  private static final double HALF = 0.5;
  private static final double TRACE = 1e-5;
  private static final double OLD = 0.25;

  /** What a cell that is no longer new waits for between its steps of heat [s]. */
  private static final double WAITS = 6e-3;

  /** Less metal than this share of a cell has no heat of its own that rounding leaves sound. */
  private static final double FEW = 1e-5;

  /** Biot number above which metal is resolved through the gap [-]. */
  private static final double THICK = 0.1;

  private static final double REOPENS = 0.05;

  /** Share of a cell's heat per degree that one face may conduct in a step [-]. */
  private static final double MOST_CONDUCTED = 0.2;

  private final PlaneGrid grid;
  private final PlaneMelt melt;
  private final WallColumns columns;
  private final double mouldTemperature;
  private final double depthLimit;

  /** Heat in a cell over density, liquid times specific enthalpy [m3 J/kg]. */
  final double[] content;

  /** Specific enthalpy of what moves [J/kg]. */
  final double[] enthalpy;

  final double[] mostSolid;
  final double[] wetted;
  final double[] mushShare;
  private final double[] temperature;
  private final double[] curvature;
  private final double[] age;
  private final double[] due;
  private final double[] share;
  private final double[] flowX;
  private final double[] flowY;
  private final boolean[] shut;
  private final LeadingMetal leading;
  private final AlongFlow along;
  private double entering;
  private double carriedIn;
  private double leastStop;
  private final double leastHeat;
  private final double coldest;

  PlaneHeat(PlaneGrid grid, PlaneMelt melt, PourCase job, double mouldTemperature, boolean[] shut) {
    this.grid = grid;
    this.melt = melt;
    this.mouldTemperature = mouldTemperature;
    this.shut = shut;
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
    curvature = job.checking().wallCurvature() ? RimCurvature.of(grid) : new double[n];
    for (int c = 0; c < n; c++) {
      mushShare[c] = grid.volume[c] > 0.0 ? melt.mushShare(grid.gap[c], mouldTemperature) : 0.0;
    }
    double shellWall = job.mould().wallThickness().value();
    boolean shell = shellWall > 0.0;
    depthLimit = shell ? shellWall : Double.POSITIVE_INFINITY;
    columns = MouldColumns.of(job, melt, mouldTemperature, n, shell);
    leastStop = 1.0;
    leastHeat =
        Math.min(melt.alloy.specificHeatLiquid().value(), melt.alloy.specificHeatSolid().value());
    leading = new LeadingMetal(grid, melt, this, job, mouldTemperature);
    along = new AlongFlow(grid, melt, leading);
    coldest = melt.table.enthalpy(Math.max(mouldTemperature, melt.table.temperature(-1e9)));
  }

  /** What metal that enters from now on holds [J/kg]. */
  void enters(double specificEnthalpy) {
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
    return wetted[c] > 0.0 ? columns.faceTemperature(c) : mouldTemperature;
  }

  LeadingMetal leading() {
    return leading;
  }

  @Override
  public void moved(FlowState s, double dt) {
    leading.age(s, dt);
  }

  @Override
  public void carry(FlowState s, double dt) {
    carryHeat(s);
    leading.carry(s);
  }

  private void carryHeat(FlowState s) {
    int n = grid.stride;
    for (int j = s.rowFrom - 1; j <= s.rowTo + 1; j++) {
      int end = s.last[j] + 1;
      for (int c = s.first[j] - 1; c <= end; c++) {
        share[c] = s.liquid[c] * grid.perVolume[c];
      }
    }
    for (int j = s.rowFrom; j <= s.rowTo + 1; j++) {
      int end = s.last[j] + 1;
      for (int c = s.first[j]; c <= end; c++) {
        flowX[c] = s.fluxX[c] == 0.0 ? 0.0 : s.fluxX[c] * faceValue(s, s.fluxX[c], c, 1);
        flowY[c] = s.fluxY[c] == 0.0 ? 0.0 : s.fluxY[c] * faceValue(s, s.fluxY[c], c, n);
      }
    }
    for (int j = s.rowFrom; j <= s.rowTo; j++) {
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
        carriedIn += in;
        refresh(s, c, after);
      }
    }
  }

  private double faceValue(FlowState s, double flux, int c, int d) {
    boolean forward = flux > 0.0;
    int up = forward ? c - d : c;
    int down = forward ? c : c - d;
    int behind = forward ? c - 2 * d : c + d;
    if (share[up] > FULL && share[behind] > FULL) {
      double courant = Math.min(1.0, Math.abs(flux) * grid.perVolume[up]);
      boolean mark = share[down] <= FULL && leading.atFront[down];
      if (mark || share[down] > FULL) {
        double ahead = mark ? leading.enthalpy[down] : enthalpy[down];
        return LimitedFace.face(enthalpy[behind], enthalpy[up], ahead, courant);
      }
    }
    return share[up] < HALF && isSweptEmpty(s, up)
        ? content[up] / s.liquid[up]
        : leading.leaving(s, up, flux);
  }

  /** Whether a cell gives all it has in the step; all its heat then goes along, none is left. */
  private boolean isSweptEmpty(FlowState s, int c) {
    double out =
        (Math.max(0.0, -s.fluxX[c]) + Math.max(0.0, s.fluxX[c + 1]))
            + (Math.max(0.0, -s.fluxY[c]) + Math.max(0.0, s.fluxY[c + grid.stride]));
    return out >= s.liquid[c] * (1.0 - 1e-9);
  }

  /** Specific enthalpy of the moving part: skin is colder by the latent heat it has given. */
  private void refresh(FlowState s, int c, double liquid) {
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
  void step(FlowState s, double dt, boolean last) {
    if (melt.water) {
      return;
    }
    conduct(s, dt);
    along.spread(s, content, enthalpy, dt);
    int n = grid.stride;
    for (int j = s.rowFrom; j <= s.rowTo; j++) {
      int end = s.last[j];
      for (int c = s.first[j]; c <= end; c++) {
        if (s.liquid[c] <= TRACE * grid.volume[c]) {
          continue;
        }
        due[c] += wetted[c] == 0.0 ? 0.5 * dt : dt;
        boolean turn = last || age[c] < OLD || due[c] > WAITS;
        if (turn && due[c] > 0.0) {
          stepCell(s, c, due[c]);
          due[c] = 0.0;
        }
      }
    }
  }

  private boolean isThick(int c) {
    double half = 0.5 * grid.gap[c];
    return !melt.perfectContact && melt.contactLiquid * half / melt.conductivity > THICK;
  }

  private void wetWall(int c, double fill, double h) {
    if (fill <= wetted[c]) {
      return;
    }
    if (wetted[c] == 0.0) {
      double k = curvature[c];
      if (isThick(c)) {
        columns.openThick(c, mouldTemperature, k, depthLimit, 0.5 * grid.gap[c], h);
      } else {
        columns.open(c, mouldTemperature, k, depthLimit);
      }
    } else {
      columns.widen(c, wetted[c], fill);
    }
    wetted[c] = fill;
  }

  private void stepCell(FlowState s, int c, double dt) {
    double liquid = s.liquid[c];
    double h = content[c] / liquid;
    double before = melt.table.solid(h);
    double fill = Math.min(1.0, liquid * grid.perVolume[c]);
    wetWall(c, fill, h);
    double plateGap = isThick(c) ? 0.0 : grid.gap[c];
    double conductance = melt.conductance(plateGap, mostSolid[c]) * fill / wetted[c];
    double perArea = melt.density * liquid / (wetted[c] * grid.wall[c]);
    h = columns.exchange(c, dt, conductance, perArea, h);
    age[c] += dt;
    content[c] = h * liquid;
    settle(s, c, before, melt.table.solid(h));
    refresh(s, c, liquid);
  }

  /** Shares new solid between skin and slurry. */
  private void settle(FlowState s, int c, double before, double after) {
    double liquid = s.liquid[c];
    double change = after - before;
    double skin = s.skin[c];
    if (change > 0.0) {
      skin += (1.0 - mushShare[c]) * change * liquid;
    } else if (skin > 0.0) {
      skin = Math.max(0.0, skin + change * liquid);
    }
    skin = Math.min(skin, after * liquid);
    s.skin[c] = skin;
    mostSolid[c] = after <= 0.0 ? 0.0 : Math.max(mostSolid[c], after);
    double part = skin / liquid;
    s.openShare[c] = Math.max(1e-3, 1.0 - part);
    s.slurry[c] =
        after <= 0.0 ? 0.0 : part < 1.0 ? Math.max(0.0, (after - part) / (1.0 - part)) : 1.0;
    s.thickening[c] = Slurry.viscosityFactor(Math.min(1.0, s.slurry[c]), melt.flowStop);
    shut[c] = isShut(s, c);
  }

  private boolean isShut(FlowState s, int c) {
    if (s.liquid[c] < 0.5 * grid.volume[c]) {
      return false;
    }
    double gap = grid.gap[c];
    double stop = Slurry.openGapStop(gap);
    double open = gap * s.openShare[c];
    if (shut[c]) {
      return s.slurry[c] >= melt.flowStop - REOPENS || open < 1.2 * stop;
    }
    leastStop = Math.min(leastStop, gap > stop ? (open - stop) / (gap - stop) : 1.0);
    return s.slurry[c] >= melt.flowStop || open < stop;
  }

  /** Conduction along the plane between cells that are at least half full. */
  private void conduct(FlowState s, double dt) {
    int n = grid.stride;
    double factor = dt / (melt.density * grid.dx);
    for (int j = s.rowFrom - 1; j <= s.rowTo; j++) {
      int end = s.last[j];
      for (int c = s.first[j] - 1; c <= end; c++) {
        boolean half = s.liquid[c] > 0.5 * grid.volume[c];
        temperature[c] = half ? melt.table.temperature(content[c] / s.liquid[c]) : 0.0;
        flowX[c] = 0.0;
        flowY[c] = 0.0;
      }
    }
    for (int j = s.rowFrom; j <= s.rowTo; j++) {
      int end = s.last[j];
      for (int c = s.first[j]; c <= end; c++) {
        if (temperature[c] > 0.0) {
          flowX[c] = between(s, c, c - 1, factor * grid.faceX[c]);
          flowY[c] = between(s, c, c - n, factor * grid.faceY[c]);
        }
      }
    }
    for (int j = s.rowFrom; j <= s.rowTo; j++) {
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
  private double between(FlowState s, int c, int other, double size) {
    if (temperature[other] == 0.0 || size == 0.0) {
      return 0.0;
    }
    double k =
        0.5
            * (melt.table.conductivity(content[c] / s.liquid[c])
                + melt.table.conductivity(content[other] / s.liquid[other]));
    double most = MOST_CONDUCTED * leastHeat * Math.min(s.liquid[c], s.liquid[other]);
    return Math.min(k * size, most) * (temperature[other] - temperature[c]);
  }

  /** Temperature of the metal in a cell [K]. */
  double temperatureOf(FlowState s, int c) {
    return melt.table.temperature(s.liquid[c] > 0.0 ? content[c] / s.liquid[c] : melt.enthalpyIn);
  }

  /** Share of solid in a cell [-]. */
  double solidOf(FlowState s, int c) {
    return s.liquid[c] > 0.0 ? melt.table.solid(content[c] / s.liquid[c]) : 0.0;
  }

  /** Heat in the metal [J], 0 for liquid at the liquidus. */
  double heldInMetal() {
    double sum = 0.0;
    for (double e : content) {
      sum += e;
    }
    return sum * melt.density;
  }

  /** Heat in the mould above its start, from the stored profiles [J]. */
  double heldInMould() {
    double sum = 0.0;
    for (int c = 0; c < grid.size; c++) {
      sum += wetted[c] > 0.0 ? columns.held(c) * wetted[c] * grid.wall[c] : 0.0;
    }
    return sum;
  }

  /** Heat that left through the outside of a shell [J]. */
  double lostToAir() {
    double sum = 0.0;
    for (int c = 0; c < grid.size; c++) {
      sum += wetted[c] > 0.0 ? columns.lostToAir(c) * wetted[c] * grid.wall[c] : 0.0;
    }
    return sum;
  }

  /** Heat brought through the gates [J]. */
  double carriedIn() {
    return carriedIn * melt.density;
  }

  /** Largest share of solid anywhere so far [-]. */
  double mostSolidAnywhere() {
    double most = 0.0;
    for (double solid : mostSolid) {
      most = Math.max(most, solid);
    }
    return most;
  }

  /** Least open gap over what stops it, as a share of what there was, anywhere so far [-]. */
  double leastOpen() {
    return Math.max(0.0, leastStop);
  }
}
