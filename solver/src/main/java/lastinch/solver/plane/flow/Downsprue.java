package lastinch.solver.plane.flow;

import java.util.Optional;
import java.util.OptionalDouble;
import lastinch.solver.casting.PourCase;
import lastinch.solver.casting.gating.Well;
import lastinch.solver.charge.MeltProperties;
import lastinch.solver.charge.MouldColumns;
import lastinch.solver.inlet.PouringCup;
import lastinch.solver.physics.Gravity;
import lastinch.solver.plane.heat.SprueFall;
import lastinch.solver.plane.heat.SprueWalls;

/**
 * Hand, cup and sprue over the plane. Metal falls down the sprue until it stands in it up to the
 * cup; what stands presses on the gate that opens into the plane and drains through it. The first
 * metal down fills the well and stays there. Metal on its way down takes the time of its fall; all
 * of it gives heat to the walls of sprue, well and cup.
 */
public final class Downsprue {
  /** Slices of the sprue from the foot up [-]; chosen. */
  private static final int CELLS = 10;

  private static final int WELL = CELLS;
  private static final int CUP = CELLS + 1;

  /**
   * A pool at the foot drains in no less than this [s], nor in less than two steps; chosen, as in
   * the network: without it a shallow pool runs dry inside a step.
   */
  private static final double DRAINS = 10e-3;

  private final MeltProperties melt;
  private final PouringCup cup;
  private final SprueShape shape;
  private final double tall;
  private final double rise;
  private final double heldHead;
  private final double forcedFlow;
  private final double entryLoss;
  private final StandingMetal metal;
  private final double wellRoom;
  private final SprueWalls walls;
  private final MouldColumns mould;
  private final SprueFall falling = new SprueFall(CELLS);
  private double wellVolume;
  private double wellContent;
  private double cupContent;
  private double spilledHeat;
  private double drawn;
  private double drawnHeat;
  private double mostStanding;
  private double atFoot;

  public Downsprue(PourCase job, MeltProperties melt, double cavity, double mouldTemperature) {
    this.melt = melt;
    shape = new SprueShape(job.gating().sprue(), CELLS);
    tall = shape.tall;
    metal = new StandingMetal(shape);
    double angle = job.mould().attitude().angle();
    rise = job.mould().attitude().upright() ? 1.0 : StrictMath.cos(angle);
    Optional<Well> well = job.gating().well();
    double wide = well.map(Well::across).orElse(0.0);
    double deep = well.map(Well::depth).orElse(0.0);
    wellRoom = Math.PI / 4.0 * wide * wide * deep;
    entryLoss = melt.entryLoss;
    double toRim = melt.density * (cavity + totalRoom() + job.gating().cup().volume());
    cup =
        new PouringCup(
            job.pour(),
            job.gating().cup(),
            melt.density,
            job.metal().melted(),
            toRim,
            shape.mouth(),
            entryLoss);
    OptionalDouble kept = job.checking().cupKeptAt();
    heldHead = kept.orElse(0.0);
    forcedFlow = job.checking().entersAt().orElse(0.0);
    atFoot = melt.enthalpyIn;
    mould = new MouldColumns(job, melt, mouldTemperature, toRim);
    walls =
        new SprueWalls(
            mould,
            melt,
            mouldTemperature,
            SprueWalls.joined(shape.wall, Math.PI * wide * (deep + 0.25 * wide), cup.wall()),
            SprueWalls.joined(shape.curvature, wide > 0.0 ? 2.0 / wide : 0.0, 0.0));
  }

  /**
   * Metal dragged along behind an inlet without cup and sprue, by the root of its area [-]; as in
   * the network; chosen, no source.
   */
  private static final double OPENING = 0.8;

  /** Whether checking options feed the plane without cup and sprue. */
  public boolean isHeld() {
    return heldHead > 0.0 || forcedFlow > 0.0;
  }

  /** Sets the gate for a step [s] that starts at a time [s], and lets the hand pour. */
  public void before(PlaneInlets gates, double time, double dt) {
    if (isHeld()) {
      gates.held[0] = forcedFlow > 0.0;
      gates.heldSpeed[0] = forcedFlow;
      gates.pressure[0] = melt.density * Gravity.G * heldHead;
      gates.column[0] = OPENING * Math.sqrt(gates.gates.get(0).totalArea());
      gates.loss[0] = entryLoss;
      return;
    }
    pour(time, dt);
    land(time + dt);
    double standing = standing();
    mostStanding = Math.max(mostStanding, standing);
    boolean full = isFull();
    double head = full ? tall + cup.level() : standing;
    double area = gates.gates.get(0).totalArea();
    gates.pressure[0] = melt.density * Gravity.G * rise * head;
    gates.column[0] = Math.max(PlaneInlets.COLUMN, area * shape.inertia(standing));
    gates.loss[0] = loss(gates.flow(0), area, standing, full);
    double total = metal.held();
    double most = total / (area * Math.max(DRAINS, 2.0 * dt));
    double now = gates.flow(0) / area;
    gates.held[0] = !full && now > most;
    gates.heldSpeed[0] = Math.min(most, Math.max(0.0, now));
  }

  /**
   * Takes what went through the gate in the step.
   *
   * @param carried heat that went with it so far, over density [m3 J/kg]
   */
  public void after(PlaneInlets gates, double carried) {
    double heatPassed = carried - drawnHeat;
    drawnHeat = carried;
    double passed = gates.passed(0) - drawn;
    drawn = gates.passed(0);
    if (isHeld()) {
      return;
    }
    if (passed < 0.0) {
      metal.back(-passed, -heatPassed);
      rise();
      return;
    }
    double taken = metal.take(passed);
    metal.content[0] -= heatPassed - taken;
    metal.sink();
    takeFromCup();
  }

  /** A full sprue makes good from the cup what it has given. */
  private void takeFromCup() {
    if (isFull()) {
      double need = Math.min(metal.room() - metal.held(), cup.volume());
      if (need > 0.0) {
        double h = cupContent / cup.volume();
        cup.draw(need);
        cupContent -= need * h;
        metal.top(need, h);
      }
    }
  }

  /** A step [s] that starts at a time [s], while nothing goes through the gate. */
  public void closed(double time, double dt) {
    pour(time, dt);
    land(time + dt);
    takeFromCup();
  }

  /** Whether metal is on its way down. */
  public boolean falls() {
    return falling.total() > 0.0;
  }

  private void pour(double time, double dt) {
    double before = cup.volume();
    double spilled = cup.spilled();
    double mass = cup.pour(time, dt);
    spilledHeat += (cup.spilled() - spilled) * melt.enthalpyIn;
    double added = cup.volume() - before;
    if (mass > 0.0 && added > 0.0) {
      cupContent += added * melt.enthalpyIn;
    }
    if (cup.volume() > 0.0 && !isFull()) {
      double h = cupContent / cup.volume();
      double out = cup.drainFree(dt);
      cupContent -= out * h;
      if (out > 0.0) {
        double u = cup.leavingSpeed();
        double g = Gravity.G * rise;
        double way = Math.max(0.0, tall - standing());
        double fall = (Math.sqrt(u * u + 2.0 * g * way) - u) / g;
        if (falling.isFull()) {
          landFirst();
        }
        falling.send(time, time + fall, u, out, h);
      }
    }
  }

  private void landFirst() {
    double v = falling.firstVolume();
    double h = falling.firstEnthalpy();
    falling.takeFirst();
    double sinks = Math.min(v, wellRoom - wellVolume);
    wellVolume += sinks;
    wellContent += sinks * h;
    if (v > sinks) {
      metal.lay(v - sinks, h);
    }
  }

  private void land(double now) {
    while (falling.hasArrived(now)) {
      landFirst();
    }
    rise();
  }

  /** What is too much for the sprue goes back to the cup. */
  private void rise() {
    metal.rise();
    if (metal.overVolume() > 0.0) {
      cup.draw(-metal.overVolume());
      cupContent += metal.overContent();
    }
  }

  /** Heat to the walls over a heat step [s] that ends at a time [s]. */
  public void heat(double now, double dt) {
    if (melt.water || isHeld() || dt <= 0.0) {
      return;
    }
    for (int i = 0; i < CELLS; i++) {
      if (metal.volume[i] > 1e-6 * shape.room[i]) {
        double h = metal.content[i] / metal.volume[i];
        metal.content[i] =
            metal.volume[i]
                * walls.exchange(i, dt, metal.volume[i], metal.volume[i] / shape.room[i], h);
      }
    }
    falling.heat(walls, shape.room, tall, Gravity.G * rise, now, dt);
    if (wellVolume > 1e-6 * wellRoom) {
      double h = wellContent / wellVolume;
      wellContent = wellVolume * walls.exchange(WELL, dt, wellVolume, wellVolume / wellRoom, h);
    }
    double v = cup.volume();
    if (v > 1e-10) {
      cupContent = v * walls.exchange(CUP, dt, v, cup.wettedShare(), cupContent / v);
    }
  }

  /** Specific enthalpy of what stands at the foot [J/kg]. */
  public double footEnthalpy() {
    if (!isHeld() && metal.volume[0] > 1e-6 * shape.room[0]) {
      atFoot = metal.content[0] / metal.volume[0];
    }
    return atFoot;
  }

  /** Losses on the way, on the speed at the foot; the speed head itself is counted by the gate. */
  private double loss(double flow, double area, double standing, boolean full) {
    double foot = Math.max(1e-9, Math.abs(flow) / area);
    double narrower = area / shape.mouth();
    double sum = full ? entryLoss * narrower * narrower : 0.0;
    double friction = shape.friction(melt, foot * area, standing);
    return sum + friction / (0.5 * melt.density * foot * foot + 1e-12);
  }

  /** Room for metal in sprue and well [m3]. */
  public double totalRoom() {
    return metal.room() + wellRoom;
  }

  /** Whether metal stands up to the cup. */
  public boolean isFull() {
    return metal.isFull();
  }

  /** Height of metal that stands in the sprue [m]. */
  public double standing() {
    return metal.height();
  }

  /** Metal outside the plane: in cup and well, standing and falling [m3]. */
  public double above() {
    return cup.volume() + wellVolume + metal.held() + falling.total();
  }

  /** Its heat [J], 0 for liquid at the liquidus. */
  public double heatAbove() {
    double sum = cupContent + wellContent + falling.content();
    for (double e : metal.content) {
      sum += e;
    }
    return sum * melt.density;
  }

  /** What makes columns of mould for this pour. */
  public MouldColumns mould() {
    return mould;
  }

  /** Heat that left behind those walls through the outside of a shell [J]. */
  public double lostToAir() {
    return walls.lostToAir();
  }

  /** Heat in the walls of cup, sprue and well above their start [J]. */
  public double heatInWalls() {
    return walls.held();
  }

  /** Lays what stands here out as cells. */
  public SprueCells cells(double seconds) {
    return new SprueCells(metal, walls, well(), cup, cupContent, rise, seconds);
  }

  private SprueCells.Well well() {
    return new SprueCells.Well(wellVolume, wellRoom, wellContent);
  }

  public PouringCup cup() {
    return cup;
  }

  /** Heat that ran over the rim [J]. */
  public double spilledHeat() {
    return spilledHeat;
  }

  public double mostStanding() {
    return mostStanding;
  }
}
