package lastinch.solver.plane.heat;

import lastinch.solver.casting.PourCase;
import lastinch.solver.charge.MeltProperties;
import lastinch.solver.material.MetalTable;
import lastinch.solver.numerics.WorkerPair;
import lastinch.solver.physics.Friction;
import lastinch.solver.plane.flow.FlowState;
import lastinch.solver.plane.flow.PlaneGrid;

/**
 * The newest metal of every cell at the front: a massless mark with its own heat, never the mean of
 * the cell. It loses heat to mould that it has just wetted, gains some from the full cell behind,
 * goes on into the cells that metal enters from here, and halts the front when it carries too much
 * solid. Below the liquidus only the share of new solid that rides along stays in the mark.
 */
public final class FrontMarkerField {
  /** A cell less full than this still has a front in it [-]; chosen, as in the heat. */
  private static final double FULL = 0.95;

  /** A neighbour less full than this is still to be reached [-]; chosen, the middle. */
  private static final double OPEN = 0.5;

  /** Metal under this share of a cell is a wisp that what follows washes away [-]; chosen. */
  private static final double WISP = 1e-9;

  /** Metal under this share of a cell bars nobody's way [-]; chosen. */
  private static final double DROP = 0.25;

  /** Most of a cell's metal that leaves with the heat of its marker [-]; chosen. */
  private static final double LEAVES_AS_MARK = 0.25;

  /** Metal that comes slower than this stands [m/s]; chosen. */
  private static final double STILL = 1e-3;

  /**
   * Share of a difference that goes over to a neighbouring marker in a step at most [-]; chosen:
   * four of them stay under one.
   */
  private static final double MOST_SHARED = 0.2;

  /**
   * From this long after its first metal a cell's mould is no longer fresh [s]; chosen, as in the
   * network.
   */
  private static final double FRESH = 0.1;

  /**
   * A halted front runs again when its solid falls by this much [-]; chosen, or it would flutter.
   */
  private static final double LET_GO = 0.05;

  private final PlaneGrid grid;
  private final MeltProperties melt;
  private final PlaneHeat heat;
  private final double mould;
  private final double mouldEnthalpy;
  private final double again;
  private final double diffusivity;

  /** Whether a cell has a front in it or beside it. */
  public final boolean[] atFront;

  /** Heat of the newest metal where there is a front [J/kg]. */
  public final double[] enthalpy;

  /** Whether the front here carries too much solid to go on. */
  public final boolean[] halted;

  private final double[] mixed;
  private final double[] stood;
  private final boolean[] beside;
  private final boolean[] came;
  private final Half lower;
  private final Half upper;
  private FlowState s;
  private double dt;
  private final WorkerPair.Work mixes = part -> half(part).mix(part);
  private final WorkerPair.Work takes = this::takeMixed;
  private final WorkerPair.Work readings = this::read;
  private final WorkerPair.Work ages = part -> half(part).age(part);

  FrontMarkerField(
      PlaneGrid grid, MeltProperties melt, PlaneHeat heat, PourCase job, double mould) {
    this.grid = grid;
    this.melt = melt;
    this.heat = heat;
    this.mould = mould;
    mouldEnthalpy = melt.table.enthalpy(mould);
    again = melt.table.enthalpyAtSolid(Math.max(0.0, melt.flowStop - LET_GO));
    diffusivity = melt.conductivity / (melt.density * melt.alloy.specificHeatLiquid().value());
    atFront = new boolean[grid.size];
    enthalpy = new double[grid.size];
    halted = new boolean[grid.size];
    beside = new boolean[grid.size];
    stood = new double[grid.size];
    mixed = new double[grid.size];
    came = new boolean[grid.size];
    lower = new Half(melt.table(0));
    upper = new Half(melt.table(1));
  }

  /**
   * Heat that goes with metal out of a cell that is not full [J/kg]: that of its leading metal,
   * which goes first, never more than the mean of the cell. What keeps less than it is brought
   * would freeze while hot metal runs through it, the sooner the shorter the steps.
   */
  double leaving(FlowState s, int c, double flux) {
    double mean = heat.enthalpy[c];
    boolean little = Math.abs(flux) < LEAVES_AS_MARK * s.liquid[c];
    return atFront[c] && little && s.liquid[c] < FULL * grid.volume[c]
        ? Math.min(mean, enthalpy[c])
        : mean;
  }

  private Half half(int part) {
    return part == 0 ? lower : upper;
  }

  /** Takes the marks along with the volumes of a step; the liquid is not yet moved. */
  void carry(FlowState state) {
    if (melt.water) {
      return;
    }
    s = state;
    s.team.run(mixes);
    s.team.run(takes);
  }

  private void takeMixed(int part) {
    int to = s.to(part, 0);
    for (int j = s.from(part, 0); j <= to; j++) {
      int end = s.last[j];
      for (int c = s.first[j]; c <= end; c++) {
        enthalpy[c] = mixed[c];
      }
    }
  }

  /** Ages the marks by a step [s]; the liquid is moved, cells with a pressure are known. */
  void age(FlowState state, double step) {
    if (melt.water) {
      return;
    }
    s = state;
    dt = step;
    s.team.run(readings);
    s.team.run(ages);
  }

  private void read(int part) {
    int to = s.to(part, 1);
    for (int j = s.from(part, 1); j <= to; j++) {
      int end = s.last[j] + 1;
      for (int c = s.first[j] - 1; c <= end; c++) {
        mixed[c] = enthalpy[c];
        beside[c] = atFront[c];
      }
    }
  }

  /** Whether the front stood still before it froze here, so that something else had stopped it. */
  public boolean stoodFirst(int c) {
    return stood[c] > FRESH;
  }

  /** Number of cells whose leading metal goes no further. */
  public int halts() {
    return lower.halts + upper.halts;
  }

  /** Number of cells at the front whose metal could still go on. */
  public int running() {
    return lower.running + upper.running;
  }

  private boolean isFront(int c) {
    double room = grid.volume[c];
    if (room == 0.0 || s.liquid[c] <= WISP * room) {
      return false;
    }
    int n = grid.stride;
    return s.liquid[c] < FULL * room
        || isOpen(grid.faceX[c], c - 1)
        || isOpen(grid.faceX[c + 1], c + 1)
        || isOpen(grid.faceY[c], c - n)
        || isOpen(grid.faceY[c + n], c + n);
  }

  private boolean isOpen(double face, int c) {
    return face > 0.0 && s.liquid[c] < OPEN * grid.volume[c];
  }

  /** Heat that marks side by side conduct to each other in a step [J/kg]. */
  private double shared(int c) {
    if (!beside[c] || melt.spreading == 0.0) {
      return 0.0;
    }
    int n = grid.stride;
    double rate = Math.min(MOST_SHARED, dt * diffusivity / (grid.dx * grid.dx));
    return rate
        * ((difference(grid.faceX[c], c, c - 1) + difference(grid.faceX[c + 1], c, c + 1))
            + (difference(grid.faceY[c], c, c - n) + difference(grid.faceY[c + n], c, c + n)));
  }

  private double difference(double face, int c, int other) {
    return face > 0.0 && beside[other] ? mixed[other] - mixed[c] : 0.0;
  }

  /** Spreading of heat along the flow in a gap [m2/s]. */
  double spread(double speed, double gap) {
    return melt.dispersion.plates(speed, 2.0 * gap, Friction.SLOT);
  }

  /** What of the spreading is not plain conduction [m2/s]. */
  double carriedSpread(double speed, double gap) {
    return spread(speed, gap) - diffusivity;
  }

  /** Loss rate of leading metal to fresh mould [W/kg]. */
  public double lossRate(int c, double h) {
    return lossRate(melt.table, c, h, mould);
  }

  private double lossRate(MetalTable table, int c, double h, double wall) {
    double gap = 2.0 * grid.volume[c] / grid.wall[c];
    double flux = melt.contact.conductance(gap, 0.0) * (table.temperature(h) - wall);
    return flux * grid.wall[c] * grid.perVolume[c] / melt.density;
  }

  /** One half of the marks, and what is summed up on the way over it. */
  private final class Half {
    private final MetalTable table;
    private int running;
    private int halts;
    private double volume;
    private double sum;
    private double inflow;
    private double fromFull;
    private double behind;
    private double onwards;

    Half(MetalTable table) {
      this.table = table;
    }

    void mix(int part) {
      int n = grid.stride;
      int to = s.to(part, 0);
      for (int j = s.from(part, 0); j <= to; j++) {
        int end = s.last[j];
        for (int c = s.first[j]; c <= end; c++) {
          mixed[c] = enthalpy[c];
          came[c] = false;
          if (grid.volume[c] > 0.0 && s.liquid[c] < OPEN * grid.volume[c]) {
            volume = atFront[c] ? s.liquid[c] : 0.0;
            sum = volume * enthalpy[c];
            double held = volume;
            take(s.fluxX[c], c - 1);
            take(-s.fluxX[c + 1], c + 1);
            take(s.fluxY[c], c - n);
            take(-s.fluxY[c + n], c + n);
            if (s.gateFlux[c] > 0.0) {
              volume += s.gateFlux[c];
              sum += s.gateFlux[c] * heat.entering();
            }
            if (volume > held) {
              mixed[c] = sum / volume;
              came[c] = true;
            }
          }
        }
      }
    }

    private void take(double flux, int donor) {
      if (flux > 0.0) {
        volume += flux;
        sum += flux * (atFront[donor] ? enthalpy[donor] : heat.enthalpy[donor]);
      }
    }

    void age(int part) {
      running = 0;
      halts = 0;
      int to = s.to(part, 0);
      for (int j = s.from(part, 0); j <= to; j++) {
        int end = s.last[j];
        for (int c = s.first[j]; c <= end; c++) {
          boolean front = isFront(c);
          if (front && !atFront[c] && !came[c] && heat.age(c) > FRESH) {
            enthalpy[c] = heat.enthalpy[c];
            halted[c] = false;
          } else if (front && !atFront[c]) {
            halted[c] = false;
          }
          atFront[c] = front;
          if (front) {
            ageOne(c);
          } else {
            halted[c] = false;
          }
        }
      }
    }

    private void ageOne(int c) {
      int n = grid.stride;
      inflow = 0.0;
      behind = 0.0;
      fromFull = 0.0;
      onwards = 0.0;
      side(s.fluxX[c], c - 1);
      side(-s.fluxX[c + 1], c + 1);
      side(s.fluxY[c], c - n);
      side(-s.fluxY[c + n], c + n);
      double h = enthalpy[c];
      double through = Math.min(inflow, onwards);
      if (through > 0.0 && s.active[c] && heat.age(c) > FRESH) {
        double part = Math.min(1.0, through / s.liquid[c]);
        h += part * (heat.enthalpy[c] - h);
      }
      if (!halted[c] && fromFull > 0.0) {
        h = warmed(c, h);
      }
      h += shared(c) - loss(c, h);
      enthalpy[c] = h;
      boolean drop = s.liquid[c] < DROP * grid.volume[c];
      halted[c] = !drop && h <= (halted[c] ? again : melt.enthalpyStop);
      if (halted[c]) {
        halts++;
      } else if (!drop) {
        running++;
        stood[c] = inflow < STILL * dt * grid.gap[c] * grid.dx ? stood[c] + dt : 0.0;
      }
    }

    private void side(double in, int other) {
      if (in > 0.0) {
        inflow += in;
        if (s.liquid[other] >= FULL * grid.volume[other]) {
          fromFull += in;
          behind += in * heat.enthalpy[other];
        }
      } else if (in < 0.0 && s.active[other]) {
        onwards -= in;
      }
    }

    /** The full cell behind warms the mark, implicitly, over the way from its middle to it. */
    private double warmed(int c, double h) {
      double gap = grid.gap[c];
      double fill = Math.min(1.0, s.fill(c));
      double speed = fromFull / (dt * gap * grid.dx);
      double way = (0.5 + fill) * grid.dx;
      double rate = 2.0 * melt.spreading * spread(speed, gap) / (way * (way + speed * dt));
      return (h + dt * rate * behind / fromFull) / (1.0 + dt * rate);
    }

    private double loss(int c, double h) {
      double wall = heat.age(c) > FRESH ? heat.faceTemperature(c) : mould;
      double lost = dt * lossRate(table, c, h, wall);
      lost = Math.min(lost, Math.max(0.0, h - mouldEnthalpy));
      if (h - lost >= 0.0) {
        return lost;
      }
      double above = Math.max(0.0, h);
      return above + (lost - above) * heat.mushShare[c];
    }
  }
}
