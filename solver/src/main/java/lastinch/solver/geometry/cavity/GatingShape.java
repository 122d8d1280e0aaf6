package lastinch.solver.geometry.cavity;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import lastinch.solver.casting.GapMap.Kind;
import lastinch.solver.casting.GapMap.Part;
import lastinch.solver.casting.Place;
import lastinch.solver.casting.PourCase;
import lastinch.solver.casting.Side;
import lastinch.solver.casting.gating.Feeder;
import lastinch.solver.casting.gating.Gate;
import lastinch.solver.casting.gating.Gating;
import lastinch.solver.casting.gating.Overflow;
import lastinch.solver.casting.gating.Runner;
import lastinch.solver.casting.gating.Sprue;
import lastinch.solver.geometry.gating.GatingGeometry;
import lastinch.solver.geometry.gating.GatingGeometry.GateLine;
import lastinch.solver.geometry.gating.GatingGeometry.Point;
import lastinch.solver.geometry.gating.Mouth;
import lastinch.solver.geometry.gating.PiecePlaces;

/**
 * Runner, gates, feeders and overflows laid out round the piece, as {@link GatingGeometry} says
 * where they run. A gate is cut into the rim until the piece is as thick as the gate or half as
 * thick as it gets further in. A feeder stands beside the piece behind its neck.
 */
final class GatingShape {
  private static final Part RUNNER = new Part(Kind.RUNNER, "runner");

  /** Stretches in which a cut into the piece is looked for [m]; chosen. */
  private static final double CUT_STEP = 2.5e-4;

  /** Deepest cut of a gate into the piece [m]; chosen, no source. */
  private static final double DEEPEST_CUT = 15e-3;

  /** A gate may lie over a rim that curves so far outwards [m]; chosen, no source. */
  private static final double OVER_RIM = 3e-3;

  /** Share of the breadth of a runner off its axis at which the piece is looked for [-]; chosen. */
  private static final double OFF_AXIS = 0.25;

  private final Gating gating;
  private final PieceShape piece;
  private final PiecePlaces places;
  private final GatingGeometry geometry;
  private final Side runnerSide;
  private final List<GapRegion> regions = new ArrayList<>();

  /** Regions under the foot of the sprue. */
  private final List<GapRegion> feet = new ArrayList<>();

  private final Set<GatingFault> faults = EnumSet.noneOf(GatingFault.class);

  GatingShape(PourCase job, PieceShape piece) {
    gating = job.gating();
    this.piece = piece;
    places = PiecePlaces.of(job);
    runnerSide = GatingGeometry.side(job);
    geometry = new GatingGeometry(job, (place, width) -> piece.rim(place, runnerSide));
    geometry.gates().forEach(this::addGate);
    addRunner();
    gating.overflows().forEach(this::addOverflow);
    gating.feeders().forEach(this::addFeeder);
  }

  List<GapRegion> regions() {
    return regions;
  }

  List<GapRegion> feet() {
    return feet;
  }

  /** What is wrong with how it lies. */
  Set<GatingFault> faults() {
    return faults;
  }

  private void addGate(GateLine line) {
    Gate gate = line.gate();
    Mouth rim = line.mouth();
    join(
        new Part(Kind.GATE, gate.name()),
        rim,
        gate.width(),
        gate.thickness(),
        gate.length() + bridge());
    if (gate.length() > OVER_RIM) {
      double over = gate.length() - OVER_RIM;
      see(rim.xOut(OVER_RIM), rim.yOut(OVER_RIM), rim.outX(), rim.outY(), over, 0.0);
    }
  }

  /** Looks for the piece under a channel of gate or runner: along it and on either side. */
  private void see(double x, double y, double alongX, double alongY, double length, double side) {
    for (double s = 0.0; s <= length; s += CUT_STEP) {
      for (double t = -side; t <= side; t += Math.max(side, CUT_STEP)) {
        if (piece.gapAt(x + alongX * s - alongY * t, y + alongY * s + alongX * t) > 0.0) {
          faults.add(GatingFault.GATING_OVER_THE_PIECE);
          return;
        }
      }
    }
  }

  /** A straight stretch of the runner. */
  private void addRunner(BarRegion bar) {
    regions.add(bar);
    see(bar.x(), bar.y(), bar.alongX(), bar.alongY(), bar.length(), OFF_AXIS * bar.width());
  }

  /** How far gates reach into a side runner, so that no sliver is left between [m]. */
  private double bridge() {
    return places.isFedBeside() ? 0.5 * gating.runner().orElseThrow().width() : 0.0;
  }

  /** A channel from the rim outwards, cut into the piece as far as it is thinner. */
  private void join(Part part, Mouth rim, double width, double gap, double length) {
    regions.add(
        new BarRegion(part, rim.x(), rim.y(), rim.outX(), rim.outY(), length, width, gap, gap));
    double thickest = 0.0;
    for (double d = CUT_STEP; d <= DEEPEST_CUT; d += CUT_STEP) {
      thickest = Math.max(thickest, piece.gapAt(rim.xOut(-d), rim.yOut(-d)));
    }
    if (thickest == 0.0) {
      faults.add(GatingFault.GATE_OFF_THE_PIECE);
    }
    double enough = Math.min(gap, 0.5 * thickest);
    double cut = CUT_STEP;
    while (cut < DEEPEST_CUT && piece.gapAt(rim.xOut(-cut), rim.yOut(-cut)) < enough) {
      cut += CUT_STEP;
    }
    regions.add(
        new BarRegion(
            part,
            rim.x(),
            rim.y(),
            -rim.outX(),
            -rim.outY(),
            cut,
            width,
            gap,
            Math.min(gap, enough)));
  }

  private void addRunner() {
    List<GateLine> gates = geometry.gates();
    if (gates.isEmpty()) {
      addFootWithoutGates();
    } else if (gating.runner().isEmpty()) {
      gates.forEach(this::addFootUnder);
    } else if (gating.runner().get() instanceof Runner.Alongside a) {
      addSideRunner(a);
    } else {
      addStraight(gates.get(0), gating.runner().get());
      gates.subList(1, gates.size()).forEach(this::addFootUnder);
    }
  }

  /** A gate that no runner reaches is fed at its outer end. */
  private void addFootUnder(GateLine line) {
    Gate gate = line.gate();
    double under = Math.min(gating.sprue().foot(), 0.5 * gate.length());
    Point from = line.end(-under);
    feet.add(
        new BarRegion(
            RUNNER,
            from.x(),
            from.y(),
            line.mouth().outX(),
            line.mouth().outY(),
            under,
            gate.width(),
            gate.thickness(),
            gate.thickness()));
  }

  private void addFootWithoutGates() {
    Sprue sprue = gating.sprue();
    Place place = sprue.into().orElse(new Place.Into("boss"));
    double[] at = piece.middle(place);
    if (place instanceof Place.At || !places.isBoss(place)) {
      Mouth rim = piece.rim(place, runnerSide);
      double reach = 0.5 * sprue.foot();
      boolean end =
          !(place instanceof Place.At on) || on.side() == Side.TIP || on.side() == Side.THICK_END;
      at = end ? new double[] {rim.xOut(-reach), rim.yOut(-reach)} : at;
    }
    feet.add(new DiscRegion(RUNNER, at[0], at[1], sprue.foot(), 1.0));
  }

  private void addStraight(GateLine gate, Runner runner) {
    boolean turned = geometry.isTurned();
    double wide = runner.width();
    double gap = runner.depth();
    Point end = gate.end(turned ? 0.5 * wide : 0.0);
    Point way = geometry.ahead(new Point(0.0, 0.0), 1.0);
    double length = geometry.stretches().get(0).length();
    addRunner(new BarRegion(RUNNER, end.x(), end.y(), way.x(), way.y(), length, wide, gap, gap));
    if (turned) {
      double back = 0.5 * gate.gate().width() + runner.runsOn();
      addRunner(new BarRegion(RUNNER, end.x(), end.y(), -way.x(), -way.y(), back, wide, gap, gap));
    }
    double foot = Math.min(gating.sprue().foot(), 0.5 * length);
    Point under = geometry.ahead(end, length - 0.5 * foot);
    feet.add(new DiscRegion(RUNNER, under.x(), under.y(), foot, 1.0));
  }

  /** The runner reaches past its gates at least as far as the widest of them is wide. */
  private void addSideRunner(Runner.Alongside runner) {
    List<Point> line = new ArrayList<>();
    geometry.gates().forEach(g -> line.add(g.end(0.5 * runner.width())));
    line.sort(Comparator.comparingDouble(Point::x));
    boolean fromTip = geometry.foot().x() > geometry.stretches().get(0).to().x();
    double before = fromTip ? runner.runsOn() : runner.width();
    double after = fromTip ? runner.width() : runner.runsOn();
    double wide = gating.gates().stream().mapToDouble(Gate::width).max().orElseThrow();
    Point first = line.get(0);
    Point last = line.get(line.size() - 1);
    line.add(0, new Point(first.x() - Math.max(before, 0.5 * wide), first.y()));
    line.add(new Point(last.x() + Math.max(after, 0.5 * wide), last.y()));
    for (int k = 0; k + 1 < line.size(); k++) {
      Point a = line.get(k);
      Point b = line.get(k + 1);
      if (Math.abs(b.x() - a.x()) + Math.abs(b.y() - a.y()) > CUT_STEP) {
        addRunner(
            BarRegion.between(RUNNER, a.x(), a.y(), b.x(), b.y(), runner.width(), runner.depth()));
      }
      if (k > 0) {
        regions.add(new DiscRegion(RUNNER, a.x(), a.y(), runner.width(), runner.depth()));
      }
    }
    Point end = line.get(fromTip ? line.size() - 1 : 0);
    double foot = Math.min(gating.sprue().foot(), runner.width());
    feet.add(new DiscRegion(RUNNER, end.x() + (fromTip ? -0.5 : 0.5) * foot, end.y(), foot, 1.0));
  }

  private void addOverflow(Overflow overflow) {
    Part part = new Part(Kind.OVERFLOW, overflow.name());
    Mouth rim = piece.rim(overflow.place(), runnerSide);
    double side = overflow.side();
    join(part, rim, overflow.width(), overflow.thickness(), GatingGeometry.NECK);
    regions.add(
        new BarRegion(
            part,
            rim.xOut(GatingGeometry.NECK),
            rim.yOut(GatingGeometry.NECK),
            rim.outX(),
            rim.outY(),
            side,
            side,
            side,
            side));
  }

  /** A boss that is gated at its end is fed from its side, and the other way round. */
  private void addFeeder(Feeder feeder) {
    Part part = new Part(Kind.FEEDER, feeder.name());
    Mouth rim = piece.rim(feeder.place(), runnerSide);
    if (places.isBoss(feeder.place())) {
      rim = places.isFedBeside() ? piece.bossEnd() : piece.bossSide(Side.LEFT);
    }
    double neck = 0.5 * feeder.neckAcross();
    join(part, rim, feeder.neckAcross(), feeder.neckAcross(), neck + 0.1 * feeder.across());
    double centre = neck + 0.5 * feeder.across();
    regions.add(
        new DiscRegion(part, rim.xOut(centre), rim.yOut(centre), feeder.across(), feeder.tall()));
  }
}
