package lastinch.solver.network.layout;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.NavigableMap;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.DoubleUnaryOperator;
import lastinch.solver.casting.Checking;
import lastinch.solver.casting.Orientation;
import lastinch.solver.casting.Place;
import lastinch.solver.casting.PourCase;
import lastinch.solver.casting.Side;
import lastinch.solver.casting.gating.Feeder;
import lastinch.solver.casting.gating.Gate;
import lastinch.solver.casting.gating.Overflow;
import lastinch.solver.casting.gating.Runner;
import lastinch.solver.casting.gating.Sprue;
import lastinch.solver.casting.gating.Vent;
import lastinch.solver.casting.gating.Well;
import lastinch.solver.charge.Closures;
import lastinch.solver.charge.MouldTemperature;
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

  /** Length of an overflow's neck [m]; chosen. */
  private static final double NECK = 5e-3;

  /** A channel is at least this times as long as it is high [-]; numerical. */
  private static final double STEEPEST = 1.02;

  private final PourCase job;
  private final double cell;
  private final MouldTemperature mouldHeat;
  private final double rise;
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
    held = job.checking().cupKeptAt().isPresent();
    forced = job.checking().entersAt().isPresent();
    piece = new PieceChannels(job, mouldHeat, cell);
  }

  public static ChannelGraph of(PourCase job, MouldTemperature mouldHeat) {
    return new ChannelLayout(job, mouldHeat).build();
  }

  private ChannelGraph build() {
    List<Gate> gates = job.gating().gates();
    piece.markAll(gates);
    int foot = ChannelGraph.CUP;
    if (!held && !forced) {
      foot = joints++;
    }
    joints = piece.number(joints, entersDirectly(gates) ? foot : ChannelGraph.CLOSED);
    if (!held && !forced) {
      addSprueAndWell(foot);
    }
    if (entersDirectly(gates)) {
      double before = held || forced ? POOL : shapes.get(0).faceArea[shapes.get(0).cells];
      piece.enteredFrom(before, bend());
    } else {
      addGating(foot, gates);
    }
    piece.add(shapes, links);
    addOverflows();
    addFeeders();
    addVents();
    return new ChannelGraph(List.copyOf(shapes), List.copyOf(links), joints, List.copyOf(vents));
  }

  /** Whether metal goes straight from sprue (or held inlet) into the piece. */
  private boolean entersDirectly(List<Gate> gates) {
    return forced || (gates.isEmpty() && job.gating().runner().isEmpty());
  }

  private double bend() {
    return held || forced || job.mould().attitude().upright() ? 0.0 : Losses.MITRE_BEND;
  }

  private void addSprueAndWell(int foot) {
    Orientation attitude = job.mould().attitude();
    Sprue sprue = job.gating().sprue();
    double footHeight = footAxis() * rise;
    double lean = attitude.upright() ? 1.0 : StrictMath.cos(attitude.angle());
    DoubleUnaryOperator diameter =
        s -> sprue.top() + (sprue.foot() - sprue.top()) * s / sprue.tall();
    double depth = mouldHeat.depthUnderWall(sprue.top());
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
              double d = diameter.applyAsDouble(s);
              return SectionShape.ellipse(d, d);
            },
            s -> mouldHeat.at(depth)));
    double entry = Closures.entryLoss(job);
    link(ChannelGraph.CUP, foot, new ChannelGraph.EndLosses(entry, Losses.EXIT, 0.0, 0.0));
    if (job.gating().well().isPresent()) {
      Well well = job.gating().well().get();
      SectionShape round = SectionShape.ellipse(well.across(), well.across());
      shapes.add(
          new ChannelShape(
              "well",
              Role.WELL,
              well.depth(),
              0.0,
              footHeight,
              footHeight - well.depth() * lean,
              cell,
              s -> round,
              s -> mouldHeat.at(depth)));
      link(
          foot,
          ChannelGraph.CLOSED,
          new ChannelGraph.EndLosses(Losses.EXIT, Losses.SHARP_INLET, 0.0, 0.0));
    }
  }

  /** Where the foot of the sprue stands along the piece's axis [m]. */
  private double footAxis() {
    List<Gate> gates = job.gating().gates();
    Optional<Runner> runner = job.gating().runner();
    double along = job.mould().attitude().upright() ? 0.0 : 1.0;
    if (runner.isPresent() && runner.get() instanceof Runner.Alongside side) {
      TreeMap<Double, Gate> byAxis = new TreeMap<>();
      gates.forEach(g -> byAxis.put(piece.axisOf(g.place()), g));
      boolean fromTip = feedsFromTip(side.fedFrom());
      return fromTip ? byAxis.lastKey() + side.width() : byAxis.firstKey() - side.width();
    }
    double mouth = gates.isEmpty() ? piece.mouthAxis() : piece.axisOf(gates.get(0).place());
    double direction = piece.entersAtTip() ? -1.0 : 1.0;
    double gate = gates.isEmpty() || isSideGate(gates.get(0)) ? 0.0 : gates.get(0).length();
    double length = runner.map(r -> r instanceof Runner.Straight s ? s.length() : 0.0).orElse(0.0);
    return mouth - direction * along * (gate + length);
  }

  private static boolean isSideGate(Gate gate) {
    return gate.place() instanceof Place.At at
        && (at.side() == Side.LEFT || at.side() == Side.RIGHT);
  }

  private boolean feedsFromTip(Runner.FedFrom end) {
    return switch (end) {
      case TIP -> true;
      case THICK_END -> false;
      case TOP -> rise > 0.0;
      case BOTTOM -> rise < 0.0;
    };
  }

  private void addGating(int foot, List<Gate> gates) {
    Optional<Runner> runner = job.gating().runner();
    double before = held ? POOL : shapes.get(0).faceArea[shapes.get(0).cells];
    double turn = held ? 0.0 : Losses.MITRE_BEND;
    if (runner.isPresent() && runner.get() instanceof Runner.Alongside side) {
      addSideRunner(side, foot, gates, before, turn);
      return;
    }
    int from = foot;
    double footAxis = footAxis();
    if (runner.isPresent() && runner.get() instanceof Runner.Straight r) {
      double direction = piece.entersAtTip() ? -1.0 : 1.0;
      double along = job.mould().attitude().upright() ? 0.0 : 1.0;
      double end = footAxis + direction * along * r.length();
      SectionShape section = SectionShape.flat(r.width(), r.depth());
      from =
          addPlain(
              "runner",
              Role.RUNNER,
              r.length(),
              footAxis,
              end,
              foot,
              joints++,
              section,
              change(before, section.area(), turn));
      if (r.runsOn() > 0.0) {
        addPlain(
            "run-on",
            Role.RUNNER,
            r.runsOn(),
            end,
            end + direction * along * r.runsOn(),
            from,
            ChannelGraph.CLOSED,
            section,
            new ChannelGraph.EndLosses(0.0, 0.0, 0.0, 0.0));
      }
      footAxis = end;
      before = section.area();
      turn = 0.0;
    }
    boolean several = gates.size() > 1;
    for (Gate gate : gates) {
      addGate(gate, from, footAxis, before, several ? Losses.TEE_BRANCH : turn);
    }
  }

  private void addSideRunner(
      Runner.Alongside side, int foot, List<Gate> gates, double before, double turn) {
    boolean fromTip = feedsFromTip(side.fedFrom());
    NavigableMap<Double, List<Gate>> byAxis =
        GateOrder.of(gates, g -> piece.axisOf(g.place()), fromTip);
    SectionShape section = SectionShape.flat(side.width(), side.depth());
    int from = foot;
    double at = footAxis();
    int number = 0;
    for (Map.Entry<Double, List<Gate>> entry : byAxis.entrySet()) {
      double axis = fromTip ? -entry.getKey() : entry.getKey();
      number++;
      ChannelGraph.EndLosses losses =
          number == 1
              ? change(before, section.area(), turn)
              : new ChannelGraph.EndLosses(Losses.TEE_RUN, Losses.TEE_RUN, 0.0, 0.0);
      String name = byAxis.size() == 1 ? "runner" : "runner " + number;
      from =
          addPlain(
              name, Role.RUNNER, Math.abs(axis - at), at, axis, from, joints++, section, losses);
      for (Gate gate : entry.getValue()) {
        addGate(gate, from, axis, section.area(), Losses.TEE_BRANCH);
      }
      at = axis;
    }
    if (side.runsOn() > 0.0) {
      double end = fromTip ? at - side.runsOn() : at + side.runsOn();
      addPlain(
          "run-on",
          Role.RUNNER,
          side.runsOn(),
          at,
          end,
          from,
          ChannelGraph.CLOSED,
          section,
          new ChannelGraph.EndLosses(Losses.TEE_RUN, Losses.TEE_RUN, 0.0, 0.0));
    }
  }

  private void addGate(Gate gate, int from, double fromAxis, double before, double bend) {
    SectionShape section = SectionShape.flat(gate.width(), gate.thickness());
    int into = piece.jointOf(gate.place());
    double axis = piece.axisOf(gate.place());
    ChannelGraph.EndLosses in = change(before, section.area(), bend);
    double pieceArea = piece.areaAt(gate.place());
    double leaving =
        piece.isThrough(gate.place())
            ? Losses.EXIT
            : section.area() < pieceArea
                ? Losses.suddenExpansion(section.area(), pieceArea)
                : Losses.suddenContraction(section.area(), pieceArea);
    double depth = mouldHeat.depthUnderWall(gate.width());
    shapes.add(
        new ChannelShape(
            gate.name(),
            Role.GATE,
            Math.max(gate.length(), STEEPEST * Math.abs((axis - fromAxis) * rise)),
            axis,
            fromAxis * rise,
            axis * rise,
            cell,
            s -> section,
            s -> mouldHeat.at(depth)));
    link(
        from,
        into,
        new ChannelGraph.EndLosses(in.intoA(), in.outOfA(), Losses.SHARP_INLET, leaving));
  }

  /** Adds a channel of one section between two places on the axis; returns its far joint. */
  private int addPlain(
      String name,
      Role role,
      double length,
      double fromAxis,
      double toAxis,
      int from,
      int to,
      SectionShape section,
      ChannelGraph.EndLosses losses) {
    double depth = mouldHeat.depthUnderWall(section.width());
    shapes.add(
        new ChannelShape(
            name,
            role,
            length,
            0.0,
            fromAxis * rise,
            toAxis * rise,
            cell,
            s -> section,
            s -> mouldHeat.at(depth)));
    link(from, to, losses);
    return to;
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
      SectionShape neck = SectionShape.flat(o.width(), o.thickness());
      double axis = piece.axisOf(o.place());
      double side = StrictMath.cbrt(o.volume());
      SectionShape pocket = SectionShape.flat(side, side);
      ChannelGraph.EndLosses in =
          new ChannelGraph.EndLosses(
              Losses.TEE_BRANCH + Losses.SHARP_INLET, Losses.EXIT, Losses.SHARP_INLET, Losses.EXIT);
      int between = joints++;
      addPlain(
          o.name() + " neck",
          Role.OVERFLOW,
          NECK,
          axis,
          axis,
          piece.jointOf(o.place()),
          between,
          neck,
          in);
      addPlain(
          o.name(),
          Role.OVERFLOW,
          side,
          axis,
          axis,
          between,
          ChannelGraph.CLOSED,
          pocket,
          new ChannelGraph.EndLosses(0.0, 0.0, 0.0, 0.0));
    }
  }

  private void addFeeders() {
    Orientation attitude = job.mould().attitude();
    double lean = attitude.upright() ? 1.0 : StrictMath.cos(attitude.angle());
    for (Feeder f : job.gating().feeders()) {
      double height = piece.axisOf(f.place()) * rise;
      SectionShape round = SectionShape.ellipse(f.across(), f.across());
      double depth = mouldHeat.depthUnderWall(f.across());
      shapes.add(
          new ChannelShape(
              f.name(),
              Role.FEEDER,
              f.tall(),
              0.0,
              height,
              height + f.tall() * lean,
              cell,
              s -> round,
              s -> mouldHeat.at(depth)));
      double loss = Losses.TEE_BRANCH * SectionChange.square(round.area() / neckArea(f));
      link(
          piece.jointOf(f.place()),
          ChannelGraph.CLOSED,
          new ChannelGraph.EndLosses(loss, loss, 0.0, 0.0));
      if (f.open()) {
        vents.add(new ChannelGraph.VentPoint(shapes.size() - 1, f.tall(), round.area()));
      }
    }
  }

  private static double neckArea(Feeder f) {
    return Math.PI / 4.0 * f.neckAcross() * f.neckAcross();
  }

  private void link(int a, int b, ChannelGraph.EndLosses loss) {
    links.add(new ChannelGraph.Link(a, b, loss));
  }

  private void addVents() {
    for (Vent v : job.gating().vents()) {
      double area = Math.PI / 4.0 * v.across() * v.across();
      vents.add(piece.vent(v.place(), area, shapes));
    }
  }
}
