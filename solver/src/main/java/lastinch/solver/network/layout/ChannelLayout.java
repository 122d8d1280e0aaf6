package lastinch.solver.network.layout;

import java.util.ArrayList;
import java.util.List;
import lastinch.solver.casting.Checking;
import lastinch.solver.casting.Orientation;
import lastinch.solver.casting.PourCase;
import lastinch.solver.casting.gating.Feeder;
import lastinch.solver.casting.gating.Gate;
import lastinch.solver.casting.gating.Gating;
import lastinch.solver.casting.gating.Overflow;
import lastinch.solver.casting.gating.Runner;
import lastinch.solver.casting.gating.Sprue;
import lastinch.solver.casting.gating.Vent;
import lastinch.solver.casting.gating.Well;
import lastinch.solver.charge.Closures;
import lastinch.solver.charge.MouldTemperature;
import lastinch.solver.geometry.gating.GatingGeometry;
import lastinch.solver.physics.Losses;
import lastinch.solver.result.PassageRecord.Role;

/**
 * Lays a case out as channels between joints: sprue, well, runner, gates, boss, limbs, overflows
 * and feeders. The first station of the first limb stands at height 0; heights follow the slope of
 * the parting plane along the piece.
 */
public final class ChannelLayout {
  /** Stands for a pool without walls where checking options feed a channel [m2]; numerical. */
  private static final double POOL = 1e3;

  /** A channel is at least this times as long as it is high [-]; numerical. */
  private static final double STEEPEST = 1.02;

  private static final ChannelGraph.EndLosses NONE = new ChannelGraph.EndLosses(0.0, 0.0, 0.0, 0.0);

  /** Past a gate along a runner. */
  private static final ChannelGraph.EndLosses RUNS_ON =
      new ChannelGraph.EndLosses(Losses.TEE_RUN, Losses.TEE_RUN, 0.0, 0.0);

  private final PourCase job;
  private final double cell;
  private final MouldTemperature mouldHeat;
  private final double rise;

  /** Height per length of what stands square to a mould that lies, or up in one that stands [-]. */
  private final double lean;

  private final boolean held;
  private final boolean forced;
  private final List<ChannelShape> shapes = new ArrayList<>();
  private final List<ChannelGraph.Link> links = new ArrayList<>();
  private final List<ChannelGraph.VentPoint> vents = new ArrayList<>();
  private final PieceChannels piece;
  private int joints = 1;

  private ChannelLayout(PourCase job, MouldTemperature mouldHeat) {
    this.job = job;
    this.mouldHeat = mouldHeat;
    cell = job.checking().cellLength().orElse(Checking.USUAL_CELL);
    rise = job.mould().attitude().rise();
    Orientation attitude = job.mould().attitude();
    lean = attitude.upright() ? 1.0 : StrictMath.cos(attitude.angle());
    held = job.checking().cupKeptAt().isPresent();
    forced = job.checking().entersAt().isPresent();
    piece = new PieceChannels(job, mouldHeat, cell);
  }

  public static ChannelGraph of(PourCase job, MouldTemperature mouldHeat) {
    return new ChannelLayout(job, mouldHeat).build();
  }

  private ChannelGraph build() {
    Gating gating = job.gating();
    piece.markAll(gating.gates());
    boolean poured = !held && !forced;
    int foot = poured ? joints++ : ChannelGraph.CUP;
    boolean direct = forced || (gating.gates().isEmpty() && gating.runner().isEmpty());
    joints = piece.number(joints, direct ? foot : ChannelGraph.CLOSED);
    GatingGeometry geometry = new GatingGeometry(job, (place, width) -> piece.mouth(place));
    if (poured) {
      addSprueAndWell(foot, geometry.foot().x() * rise);
    }
    double before = poured ? shapes.get(0).faceArea[shapes.get(0).cells] : POOL;
    if (direct) {
      double bend = poured && !job.mould().attitude().upright() ? Losses.MITRE_BEND : 0.0;
      piece.enteredWith(area -> change(before, area, bend));
    } else {
      addGating(geometry, foot, before);
    }
    piece.add(shapes, links);
    addOverflows();
    addFeeders();
    for (Vent v : gating.vents()) {
      vents.add(piece.vent(v.place(), Math.PI / 4.0 * v.across() * v.across(), shapes));
    }
    return new ChannelGraph(List.copyOf(shapes), List.copyOf(links), joints, List.copyOf(vents));
  }

  private void addSprueAndWell(int foot, double footHeight) {
    Sprue sprue = job.gating().sprue();
    double depth = mouldHeat.depthUnderWall(sprue.top());
    double entry = Closures.entryLoss(job);
    shapes.add(
        new ChannelShape(
            "sprue",
            Role.SPRUE,
            sprue.tall(),
            0.0,
            footHeight + sprue.tall() * lean,
            footHeight,
            cell,
            s -> {
              double d = sprue.top() + (sprue.foot() - sprue.top()) * s / sprue.tall();
              return SectionShape.ellipse(d, d);
            },
            s -> mouldHeat.at(depth)));
    link(ChannelGraph.CUP, foot, new ChannelGraph.EndLosses(entry, Losses.EXIT, 0.0, 0.0));
    if (job.gating().well().isPresent()) {
      Well well = job.gating().well().get();
      SectionShape round = SectionShape.ellipse(well.across(), well.across());
      double floor = footHeight - well.depth() * lean;
      add("well", Role.WELL, well.depth(), 0.0, footHeight, floor, round, sprue.top());
      link(
          foot,
          ChannelGraph.CLOSED,
          new ChannelGraph.EndLosses(Losses.EXIT, Losses.SHARP_INLET, 0.0, 0.0));
    }
  }

  private void addGating(GatingGeometry geometry, int foot, double sprueArea) {
    double turn = held ? 0.0 : Losses.MITRE_BEND;
    if (geometry.stretches().isEmpty()) {
      double bend = geometry.gates().size() > 1 ? Losses.TEE_BRANCH : turn;
      for (GatingGeometry.GateLine gate : geometry.gates()) {
        addGate(gate.gate(), foot, geometry.foot().x(), sprueArea, bend);
      }
      return;
    }
    Runner runner = job.gating().runner().orElseThrow();
    boolean straight = runner instanceof Runner.Straight;
    double leaves = straight && geometry.gates().size() == 1 ? 0.0 : Losses.TEE_BRANCH;
    SectionShape section = SectionShape.flat(runner.width(), runner.depth());
    ChannelGraph.EndLosses losses = change(sprueArea, section.area(), turn);
    int from = foot;
    for (GatingGeometry.Stretch stretch : geometry.stretches()) {
      addRunner(stretch, section, from, joints, losses);
      from = joints++;
      if (straight) {
        addRunOn(geometry, section, from, NONE);
      }
      for (GatingGeometry.GateLine gate : stretch.gates()) {
        addGate(gate.gate(), from, stretch.to().x(), section.area(), leaves);
      }
      losses = RUNS_ON;
    }
    if (!straight) {
      addRunOn(geometry, section, from, RUNS_ON);
    }
  }

  private void addRunOn(
      GatingGeometry geometry, SectionShape section, int from, ChannelGraph.EndLosses losses) {
    geometry.runOn().ifPresent(on -> addRunner(on, section, from, ChannelGraph.CLOSED, losses));
  }

  private void addRunner(
      GatingGeometry.Stretch stretch,
      SectionShape section,
      int from,
      int to,
      ChannelGraph.EndLosses losses) {
    double heightA = stretch.from().x() * rise;
    double heightB = stretch.to().x() * rise;
    add(
        stretch.name(),
        Role.RUNNER,
        stretch.length(),
        0.0,
        heightA,
        heightB,
        section,
        section.width());
    link(from, to, losses);
  }

  private void addGate(Gate gate, int from, double fromAxis, double before, double bend) {
    SectionShape section = SectionShape.flat(gate.width(), gate.thickness());
    double axis = piece.axisOf(gate.place());
    ChannelGraph.EndLosses in = change(before, section.area(), bend);
    double pieceArea = piece.areaAt(gate.place());
    double leaving =
        piece.isThrough(gate.place())
            ? Losses.EXIT
            : section.area() < pieceArea
                ? Losses.suddenExpansion(section.area(), pieceArea)
                : Losses.suddenContraction(section.area(), pieceArea);
    double length = Math.max(gate.length(), STEEPEST * Math.abs((axis - fromAxis) * rise));
    add(
        gate.name(),
        Role.GATE,
        length,
        axis,
        fromAxis * rise,
        axis * rise,
        section,
        section.width());
    link(
        from,
        piece.jointOf(gate.place()),
        new ChannelGraph.EndLosses(in.intoA(), in.outOfA(), Losses.SHARP_INLET, leaving));
  }

  /**
   * Adds a channel of one section between two heights.
   *
   * @param start of its ruler [m]
   * @param wide width of what heats the mould round it before the pour [m]
   */
  private void add(
      String name,
      Role role,
      double length,
      double start,
      double heightA,
      double heightB,
      SectionShape section,
      double wide) {
    double depth = mouldHeat.depthUnderWall(wide);
    shapes.add(
        new ChannelShape(
            name,
            role,
            length,
            start,
            heightA,
            heightB,
            cell,
            s -> section,
            s -> mouldHeat.at(depth)));
  }

  /** Losses on entering a section from another one, both ways. */
  private ChannelGraph.EndLosses change(double before, double after, double bend) {
    if (before == POOL) {
      double entry = Closures.entryLoss(job);
      return new ChannelGraph.EndLosses(entry, Losses.EXIT, 0.0, 0.0);
    }
    return SectionChange.losses(before, after, bend);
  }

  private void addOverflows() {
    for (Overflow o : job.gating().overflows()) {
      double height = piece.axisOf(o.place()) * rise;
      double side = o.side();
      SectionShape neck = SectionShape.flat(o.width(), o.thickness());
      add(
          o.name() + " neck",
          Role.OVERFLOW,
          GatingGeometry.NECK,
          0.0,
          height,
          height,
          neck,
          o.width());
      link(
          piece.jointOf(o.place()),
          joints,
          new ChannelGraph.EndLosses(
              Losses.TEE_BRANCH + Losses.SHARP_INLET,
              Losses.EXIT,
              Losses.SHARP_INLET,
              Losses.EXIT));
      add(o.name(), Role.OVERFLOW, side, 0.0, height, height, SectionShape.flat(side, side), side);
      link(joints++, ChannelGraph.CLOSED, NONE);
    }
  }

  private void addFeeders() {
    for (Feeder f : job.gating().feeders()) {
      double height = piece.axisOf(f.place()) * rise;
      SectionShape round = SectionShape.ellipse(f.across(), f.across());
      add(
          f.name(),
          Role.FEEDER,
          f.tall(),
          0.0,
          height,
          height + f.tall() * lean,
          round,
          f.across());
      double neck = Math.PI / 4.0 * f.neckAcross() * f.neckAcross();
      double loss = Losses.TEE_BRANCH * SectionChange.square(round.area() / neck);
      link(
          piece.jointOf(f.place()),
          ChannelGraph.CLOSED,
          new ChannelGraph.EndLosses(loss, loss, 0.0, 0.0));
      if (f.open()) {
        vents.add(new ChannelGraph.VentPoint(shapes.size() - 1, f.tall(), round.area()));
      }
    }
  }

  private void link(int a, int b, ChannelGraph.EndLosses loss) {
    links.add(new ChannelGraph.Link(a, b, loss));
  }
}
