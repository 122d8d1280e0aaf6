package lastinch.solver.network;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.DoubleUnaryOperator;
import lastinch.solver.casting.Attitude;
import lastinch.solver.casting.Boss;
import lastinch.solver.casting.Gate;
import lastinch.solver.casting.Limb;
import lastinch.solver.casting.Place;
import lastinch.solver.casting.PourCase;
import lastinch.solver.casting.Runner;
import lastinch.solver.casting.SectionForm;
import lastinch.solver.casting.Side;
import lastinch.solver.casting.Sprue;
import lastinch.solver.casting.Station;
import lastinch.solver.casting.Vent;
import lastinch.solver.casting.Well;
import lastinch.solver.physics.Losses;
import lastinch.solver.result.PassageRecord.Role;

/**
 * Lays a case out as channels: sprue, well, runner, gate, boss, piece, one after the other. The
 * first station stands at height 0.
 */
final class Layout {
  /** Longest thermal cell [m]; halving it moves no stop by more than 1 % or 1 mm (tested). */
  static final double CELL = 4e-3;

  /** Stands for a pool without walls where checking options feed the first channel [m2]. */
  private static final double POOL = 1e3;

  private final PourCase job;
  private final double cell;
  private final MouldHeat mouldHeat;
  private final List<ChannelShape> shapes = new ArrayList<>();
  private final List<Graph.Link> links = new ArrayList<>();
  private int joints;

  private Layout(PourCase job, MouldHeat mouldHeat) {
    this.job = job;
    this.mouldHeat = mouldHeat;
    this.cell = job.checking().cellLength().orElse(CELL);
  }

  static Graph of(PourCase job, MouldHeat mouldHeat) {
    return new Layout(job, mouldHeat).build();
  }

  private Graph build() {
    Limb limb = job.piece().limbs().get(0);
    boolean fromTip = entersAtTip();
    Attitude attitude = job.mould().attitude();
    double rise = attitude.rise();
    double levelRise = attitude.upright() ? 0.0 : rise;
    double bossLength = job.piece().boss().map(Boss::length).orElse(0.0);
    double mouthAxis = fromTip ? limb.length() : -bossLength;
    double direction = fromTip ? -1.0 : 1.0;
    double mouthHeight = mouthAxis * rise;

    Optional<Gate> gate = job.gating().gates().stream().findFirst();
    Optional<Runner> runner = job.gating().runner();
    double runnerLength =
        runner.map(r -> r instanceof Runner.Straight s ? s.length() : 0.0).orElse(0.0);
    double gateLength = gate.map(Gate::length).orElse(0.0);
    double gateStart = mouthHeight - direction * gateLength * levelRise;
    double footHeight = gateStart - direction * runnerLength * levelRise;

    joints = 1;
    boolean held = job.checking().cupKeptAt().isPresent();
    boolean forced = job.checking().entersAt().isPresent();
    int joint = held || forced ? Graph.CUP : addSprueAndWell(attitude, footHeight);
    double area = held || forced ? POOL : shapes.get(0).faceArea[shapes.get(0).cells];
    boolean turned = held || forced;
    if (runner.isPresent() && !forced) {
      Runner r = runner.get();
      joint =
          addPlain(
              "runner",
              Role.RUNNER,
              runnerLength,
              0.0,
              footHeight,
              gateStart,
              joint,
              SectionShape.flat(r.width(), r.depth()),
              area,
              turned ? 0.0 : Losses.MITRE_BEND);
      area = r.width() * r.depth();
      turned = true;
    }
    if (gate.isPresent() && !forced) {
      Gate g = gate.get();
      joint =
          addPlain(
              g.name(),
              Role.GATE,
              gateLength,
              mouthAxis,
              gateStart,
              mouthHeight,
              joint,
              SectionShape.flat(g.width(), g.thickness()),
              area,
              turned ? 0.0 : Losses.MITRE_BEND);
      area = g.width() * g.thickness();
      turned = true;
    }
    double bend = turned || attitude.upright() ? 0.0 : Losses.MITRE_BEND;
    addPiece(limb, rise, joint, area, fromTip, bend);
    return new Graph(List.copyOf(shapes), List.copyOf(links), joints, ventPoints());
  }

  private boolean entersAtTip() {
    Optional<Place> place = job.gating().gates().stream().findFirst().map(Gate::place);
    if (place.isEmpty()) {
      place = job.gating().sprue().into();
    }
    return place.isPresent()
        && place.get() instanceof Place.At at
        && (at.side() == Side.TIP || at.distance() >= lastStation() - 1e-9);
  }

  private double lastStation() {
    return job.piece().limbs().get(0).length();
  }

  private int addSprueAndWell(Attitude attitude, double footHeight) {
    Sprue sprue = job.gating().sprue();
    double lean = attitude.upright() ? 1.0 : StrictMath.cos(attitude.angle());
    double top = footHeight + sprue.tall() * lean;
    DoubleUnaryOperator diameter =
        s -> sprue.top() + (sprue.foot() - sprue.top()) * s / sprue.tall();
    double depth = mouldHeat.depthUnderWall(sprue.top());
    shapes.add(
        new ChannelShape(
            "sprue",
            Role.SPRUE,
            sprue.tall(),
            0.0,
            top,
            footHeight,
            cell,
            s -> {
              double d = diameter.applyAsDouble(s);
              return SectionShape.ellipse(d, d);
            },
            s -> mouldHeat.at(depth)));
    int foot = joints++;
    double entry = job.checking().entryLoss().orElse(Losses.SHARP_INLET);
    link(Graph.CUP, foot, new Graph.EndLosses(entry, Losses.EXIT, 0.0, 0.0));
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
      link(foot, Graph.CLOSED, new Graph.EndLosses(Losses.EXIT, Losses.SHARP_INLET, 0.0, 0.0));
    }
    return foot;
  }

  /** Adds a channel of one section after {@code joint} and returns the joint at its end. */
  private int addPlain(
      String name,
      Role role,
      double length,
      double ruler,
      double heightFrom,
      double heightTo,
      int joint,
      SectionShape section,
      double areaBefore,
      double bend) {
    double depth = mouldHeat.depthUnderWall(section.width());
    shapes.add(
        new ChannelShape(
            name,
            role,
            length,
            ruler,
            heightFrom,
            heightTo,
            cell,
            s -> section,
            s -> mouldHeat.at(depth)));
    int end = joints++;
    link(joint, end, change(areaBefore, section.area(), bend));
    return end;
  }

  /** Losses on entering a section from another one, both ways. */
  private Graph.EndLosses change(double before, double after, double bend) {
    if (before == POOL) {
      double entry = job.checking().entryLoss().orElse(Losses.SHARP_INLET);
      return new Graph.EndLosses(entry, Losses.EXIT, 0.0, 0.0);
    }
    double forward =
        after < before
            ? Losses.suddenContraction(before, after)
            : square(after / before) * Losses.suddenExpansion(before, after);
    double backward =
        after < before
            ? Losses.suddenExpansion(after, before)
            : square(after / before) * Losses.suddenContraction(after, before);
    return new Graph.EndLosses(forward + bend, backward + bend, 0.0, 0.0);
  }

  private static double square(double x) {
    return x * x;
  }

  private void addPiece(
      Limb limb, double rise, int mouth, double areaBefore, boolean fromTip, double bend) {
    Optional<Boss> boss = job.piece().boss();
    int thickEnd = mouth;
    double before = areaBefore;
    double turn = bend;
    if (boss.isPresent()) {
      Boss b = boss.get();
      SectionShape block = SectionShape.flat(b.width(), b.depth());
      double depth = mouldHeat.depthUnderWall(b.width());
      shapes.add(
          new ChannelShape(
              "boss",
              Role.BOSS,
              b.length(),
              -b.length(),
              -b.length() * rise,
              0.0,
              cell,
              s -> block,
              s -> mouldHeat.at(depth)));
      int neck = joints++;
      Graph.EndLosses in =
          fromTip ? new Graph.EndLosses(0, 0, 0, 0) : change(areaBefore, block.area(), bend);
      link(fromTip ? Graph.CLOSED : mouth, neck, in);
      thickEnd = neck;
      before = block.area();
      turn = 0.0;
    } else if (fromTip) {
      thickEnd = Graph.CLOSED;
    }
    addLimb(limb, rise, thickEnd, fromTip ? mouth : Graph.CLOSED, before, areaBefore, turn);
  }

  private void addLimb(
      Limb limb,
      double rise,
      int jointA,
      int jointB,
      double areaAtThickEnd,
      double areaAtTip,
      double bend) {
    List<Station> stations = limb.stations();
    double first = stations.get(0).at();
    double widest = stations.stream().mapToDouble(Station::width).max().orElseThrow();
    ChannelShape piece =
        new ChannelShape(
            limb.name(),
            Role.PIECE,
            limb.length(),
            0.0,
            0.0,
            limb.length() * rise,
            cell,
            s -> section(limb.section(), stations, first + s),
            s -> mouldHeat.at(mouldHeat.depthUnderWall(widthAt(stations, first + s), widest)));
    shapes.add(piece);
    Graph.EndLosses a =
        jointA == Graph.CLOSED
            ? new Graph.EndLosses(0, 0, 0, 0)
            : change(areaAtThickEnd, piece.faceArea[0], bend);
    Graph.EndLosses b =
        jointB == Graph.CLOSED
            ? new Graph.EndLosses(0, 0, 0, 0)
            : change(areaAtTip, piece.faceArea[piece.cells], bend);
    link(jointA, jointB, new Graph.EndLosses(a.intoA(), a.outOfA(), b.intoA(), b.outOfA()));
  }

  static SectionShape section(SectionForm form, List<Station> stations, double at) {
    return SectionShape.of(form, widthAt(stations, at), thicknessAt(stations, at));
  }

  private static double widthAt(List<Station> stations, double at) {
    int i = stretch(stations, at);
    Station p = stations.get(i);
    Station q = stations.get(i + 1);
    return p.width() + (q.width() - p.width()) * (at - p.at()) / (q.at() - p.at());
  }

  private static double thicknessAt(List<Station> stations, double at) {
    int i = stretch(stations, at);
    Station p = stations.get(i);
    Station q = stations.get(i + 1);
    return p.thickness() + (q.thickness() - p.thickness()) * (at - p.at()) / (q.at() - p.at());
  }

  private static int stretch(List<Station> stations, double at) {
    int i = 0;
    while (i < stations.size() - 2 && at > stations.get(i + 1).at()) {
      i++;
    }
    return i;
  }

  private void link(int a, int b, Graph.EndLosses loss) {
    links.add(new Graph.Link(a, b, loss));
  }

  private List<Graph.VentPoint> ventPoints() {
    List<Graph.VentPoint> points = new ArrayList<>();
    int piece = shapes.size() - 1;
    for (Vent v : job.gating().vents()) {
      double area = Math.PI / 4.0 * v.across() * v.across();
      if (v.place() instanceof Place.At at) {
        points.add(
            new Graph.VentPoint(piece, Math.min(at.distance(), shapes.get(piece).length), area));
      } else if (v.place() instanceof Place.Into into && "boss".equals(into.part())) {
        int boss = piece - 1;
        points.add(new Graph.VentPoint(boss, 0.5 * shapes.get(boss).length, area));
      } else {
        points.add(new Graph.VentPoint(piece, shapes.get(piece).length, area));
      }
    }
    return List.copyOf(points);
  }
}
