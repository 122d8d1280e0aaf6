package lastinch.solver.levers;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;
import lastinch.solver.casting.Flask;
import lastinch.solver.casting.Limb;
import lastinch.solver.casting.Metal;
import lastinch.solver.casting.Mould;
import lastinch.solver.casting.Orientation;
import lastinch.solver.casting.Piece;
import lastinch.solver.casting.Pour;
import lastinch.solver.casting.PourCase;
import lastinch.solver.casting.Station;
import lastinch.solver.casting.gating.Gate;
import lastinch.solver.casting.gating.Gating;
import lastinch.solver.casting.gating.Overflow;
import lastinch.solver.casting.gating.Runner;
import lastinch.solver.casting.gating.Sprue;
import lastinch.solver.casting.gating.Vent;
import lastinch.solver.material.Alloy;
import lastinch.solver.material.Band;
import lastinch.solver.material.MouldMedium;
import lastinch.solver.shop.LipLoss;

/** Jobs that differ in one thing from another. */
public final class ChangedJob {
  private ChangedJob() {}

  public static PourCase piece(PourCase j, Piece piece) {
    return new PourCase(
        j.title(), piece, j.mould(), j.gating(), j.metal(), j.pour(), j.checking(), j.laws());
  }

  public static PourCase mould(PourCase j, Mould mould) {
    return new PourCase(
        j.title(), j.piece(), mould, j.gating(), j.metal(), j.pour(), j.checking(), j.laws());
  }

  public static PourCase gating(PourCase j, Gating gating) {
    return new PourCase(
        j.title(), j.piece(), j.mould(), gating, j.metal(), j.pour(), j.checking(), j.laws());
  }

  public static PourCase metal(PourCase j, Metal metal) {
    return new PourCase(
        j.title(), j.piece(), j.mould(), j.gating(), metal, j.pour(), j.checking(), j.laws());
  }

  public static PourCase pour(PourCase j, Pour pour) {
    return new PourCase(
        j.title(), j.piece(), j.mould(), j.gating(), j.metal(), pour, j.checking(), j.laws());
  }

  public static Mould temperature(Mould m, Band temperature) {
    return new Mould(
        m.medium(),
        temperature,
        m.wallThickness(),
        m.flask(),
        m.attitude(),
        m.partingCrack(),
        m.behindPressure());
  }

  public static Mould attitude(Mould m, Orientation attitude) {
    return new Mould(
        m.medium(),
        m.temperature(),
        m.wallThickness(),
        m.flask(),
        attitude,
        m.partingCrack(),
        m.behindPressure());
  }

  public static Mould medium(Mould m, MouldMedium medium) {
    return new Mould(
        medium,
        m.temperature(),
        m.wallThickness(),
        m.flask(),
        m.attitude(),
        m.partingCrack(),
        m.behindPressure());
  }

  public static Mould flask(Mould m, Optional<Flask> flask) {
    return new Mould(
        m.medium(),
        m.temperature(),
        m.wallThickness(),
        flask,
        m.attitude(),
        m.partingCrack(),
        m.behindPressure());
  }

  public static Flask out(Flask f, Band out) {
    return new Flask(
        f.inside(),
        f.tall(),
        f.wall(),
        f.edgeToWall(),
        out,
        f.steelDensity(),
        f.steelSpecificHeat(),
        f.emissivity());
  }

  /** How hard a medium pulls heat from liquid metal [W/(m2 K)]. */
  static MouldMedium contact(MouldMedium m, double contact) {
    return m.with(MouldMedium.Figure.CONTACT_LIQUID, m.contactLiquid().at(contact));
  }

  static Alloy flowStop(Alloy a, double share) {
    return a.with(Alloy.Figure.FLOW_STOP, a.flowStop().at(share));
  }

  public static Metal alloy(Metal m, Alloy alloy) {
    return new Metal(alloy, m.melted(), m.reading(), m.waiting(), m.coolingRate(), m.lipLoss());
  }

  /** Another mass cools another way: see {@link LipLoss}. */
  static Metal melted(Metal m, double melted) {
    return new Metal(
        m.alloy(),
        melted,
        m.reading(),
        m.waiting(),
        LipLoss.otherMass(m.coolingRate(), m.melted(), melted),
        LipLoss.otherMass(m.lipLoss(), m.melted(), melted));
  }

  public static Metal reading(Metal m, Band reading) {
    return new Metal(m.alloy(), m.melted(), reading, m.waiting(), m.coolingRate(), m.lipLoss());
  }

  public static Metal waiting(Metal m, Band waiting) {
    return new Metal(m.alloy(), m.melted(), m.reading(), waiting, m.coolingRate(), m.lipLoss());
  }

  public static Gating sprue(Gating g, Sprue sprue) {
    return new Gating(
        g.cup(), sprue, g.well(), g.runner(), g.gates(), g.vents(), g.overflows(), g.feeders());
  }

  public static Gating runner(Gating g, Runner runner) {
    return new Gating(
        g.cup(),
        g.sprue(),
        g.well(),
        Optional.of(runner),
        g.gates(),
        g.vents(),
        g.overflows(),
        g.feeders());
  }

  public static Gating gates(Gating g, List<Gate> gates) {
    return new Gating(
        g.cup(), g.sprue(), g.well(), g.runner(), gates, g.vents(), g.overflows(), g.feeders());
  }

  public static Gating vents(Gating g, List<Vent> vents) {
    return new Gating(
        g.cup(), g.sprue(), g.well(), g.runner(), g.gates(), vents, g.overflows(), g.feeders());
  }

  static Gating overflows(Gating g, List<Overflow> overflows) {
    return new Gating(
        g.cup(), g.sprue(), g.well(), g.runner(), g.gates(), g.vents(), overflows, g.feeders());
  }

  /** The list with one gate, found by its name, changed. */
  public static List<Gate> gate(List<Gate> gates, String name, UnaryOperator<Gate> change) {
    List<Gate> all = new ArrayList<>();
    for (Gate gate : gates) {
      all.add(gate.name().equals(name) ? change.apply(gate) : gate);
    }
    return all;
  }

  /** The piece with the stations of every limb changed. */
  public static Piece stations(Piece piece, UnaryOperator<List<Station>> change) {
    List<Limb> limbs = new ArrayList<>();
    for (Limb limb : piece.limbs()) {
      limbs.add(
          new Limb(
              limb.name(),
              change.apply(limb.stations()),
              limb.section(),
              limb.from(),
              limb.to(),
              limb.heading()));
    }
    return new Piece(limbs, piece.boss());
  }

  /**
   * The job with another weight melted, poured as many kilograms a second as before.
   *
   * @param melted [kg]
   */
  public static PourCase meltedAtSameRate(PourCase job, double melted) {
    double factor = melted / job.metal().melted();
    PourCase more = metal(job, melted(job.metal(), melted));
    if (job.pour() instanceof Pour.Empties e) {
      return pour(more, new Pour.Empties(times(e.seconds(), factor)));
    }
    if (job.pour() instanceof Pour.Both b) {
      return pour(more, new Pour.Both(times(b.empties(), factor), b.cupFull()));
    }
    return more;
  }

  /** The band with all three figures multiplied. */
  public static Band times(Band band, double factor) {
    return round(band.value() * factor, band.low() * factor, band.high() * factor, band);
  }

  /** The band round a new value, as wide in kelvin, seconds or metres as before. */
  static Band shifted(Band band, double value) {
    double by = value - band.value();
    return round(value, band.low() + by, band.high() + by, band);
  }

  /** The band round a new value, as wide in percent as before. */
  static Band scaled(Band band, double value) {
    if (!(band.value() > 0.0)) {
      return shifted(band, value);
    }
    double factor = value / band.value();
    return round(value, band.low() * factor, band.high() * factor, band);
  }

  /** Ends that rounding has moved past the value are moved back onto it. */
  private static Band round(double value, double low, double high, Band like) {
    return new Band(value, Math.min(value, low), Math.max(value, high), like.source());
  }
}
