package lastinch.solver.geometry.cavity;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
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

/**
 * Runner, gates, feeders and overflows laid out round the piece. A gate is cut into the rim until
 * the piece is as thick as the gate or half as thick as it gets further in. A straight runner leads
 * on from the first gate the way the gate points, or level when the mould stands upright and the
 * gate points up or down; a side runner follows the outer ends of the gates. A feeder stands beside
 * the piece behind its neck.
 */
final class GatingShape {
  private static final Part RUNNER = new Part(Kind.RUNNER, "runner");

  /** Length of the neck of an overflow [m], as in the network of channels; chosen, no source. */
  private static final double NECK = 5e-3;

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
  private final boolean upright;
  private final double rise;
  private final Side runnerSide;
  private final List<GapRegion> regions = new ArrayList<>();

  /** Regions under the foot of the sprue. */
  private final List<GapRegion> feet = new ArrayList<>();

  private final Set<GatingFault> faults = EnumSet.noneOf(GatingFault.class);

  GatingShape(PourCase job, PieceShape piece) {
    gating = job.gating();
    this.piece = piece;
    upright = job.mould().attitude().upright();
    rise = job.mould().attitude().rise();
    runnerSide =
        gating.runner().isPresent() && gating.runner().get() instanceof Runner.Alongside a
            ? a.side()
            : Side.LEFT;
    for (Gate gate : gating.gates()) {
      addGate(gate);
    }
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

  private void addGate(Gate gate) {
    Part part = new Part(Kind.GATE, gate.name());
    RimPlace rim = piece.rim(gate.place(), runnerSide);
    join(part, rim, gate.width(), gate.thickness(), gate.length() + bridge());
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
    return gating
        .runner()
        .map(r -> r instanceof Runner.Alongside ? 0.5 * r.width() : 0.0)
        .orElse(0.0);
  }

  /** A channel from the rim outwards, cut into the piece as far as it is thinner. */
  private void join(Part part, RimPlace rim, double width, double gap, double length) {
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
    List<Gate> gates = gating.gates();
    if (gates.isEmpty()) {
      addFootWithoutGates();
    } else if (gating.runner().isPresent() && gating.runner().get() instanceof Runner.Alongside a) {
      addSideRunner(a);
    } else {
      RimPlace first = piece.rim(gates.get(0).place(), runnerSide);
      Optional<Runner> straight = gating.runner();
      if (straight.isPresent()) {
        addStraight(first, gates.get(0), (Runner.Straight) straight.get());
      }
      for (Gate gate : straight.isPresent() ? gates.subList(1, gates.size()) : gates) {
        RimPlace rim = piece.rim(gate.place(), runnerSide);
        double under = Math.min(gating.sprue().foot(), 0.5 * gate.length());
        feet.add(
            new BarRegion(
                RUNNER,
                rim.xOut(gate.length() - under),
                rim.yOut(gate.length() - under),
                rim.outX(),
                rim.outY(),
                under,
                gate.width(),
                gate.thickness(),
                gate.thickness()));
      }
    }
  }

  private void addFootWithoutGates() {
    Sprue sprue = gating.sprue();
    Place place = sprue.into().orElse(new Place.Into("boss"));
    double[] at = piece.middle(place);
    if (place instanceof Place.At || !piece.isBoss(place)) {
      RimPlace rim = piece.rim(place, runnerSide);
      double reach = 0.5 * sprue.foot();
      boolean end =
          !(place instanceof Place.At on) || on.side() == Side.TIP || on.side() == Side.THICK_END;
      at = end ? new double[] {rim.xOut(-reach), rim.yOut(-reach)} : at;
    }
    feet.add(new DiscRegion(RUNNER, at[0], at[1], sprue.foot(), 1.0));
  }

  private void addStraight(RimPlace rim, Gate gate, Runner.Straight runner) {
    boolean turns = upright && Math.abs(rim.outX()) > 0.5;
    double alongX = turns ? 0.0 : rim.outX();
    double alongY = turns ? 1.0 : rim.outY();
    double reach = turns ? gate.length() + 0.5 * runner.width() : gate.length();
    double x = rim.xOut(reach);
    double y = rim.yOut(reach);
    double back = (turns ? 0.5 * gate.width() : 0.0) + runner.runsOn();
    double length = runner.length() + (turns ? 0.5 * gate.width() : 0.0);
    addRunner(
        new BarRegion(
            RUNNER, x, y, alongX, alongY, length, runner.width(), runner.depth(), runner.depth()));
    if (back > 0.0 && turns) {
      addRunner(
          new BarRegion(
              RUNNER,
              x,
              y,
              -alongX,
              -alongY,
              back,
              runner.width(),
              runner.depth(),
              runner.depth()));
    }
    double foot = Math.min(gating.sprue().foot(), 0.5 * length);
    feet.add(
        new DiscRegion(
            RUNNER,
            x + alongX * (length - 0.5 * foot),
            y + alongY * (length - 0.5 * foot),
            foot,
            1.0));
  }

  private void addSideRunner(Runner.Alongside runner) {
    List<double[]> line = new ArrayList<>();
    for (Gate gate : gating.gates()) {
      RimPlace rim = piece.rim(gate.place(), runnerSide);
      double reach = gate.length() + 0.5 * runner.width();
      line.add(new double[] {rim.xOut(reach), rim.yOut(reach)});
    }
    line.sort(Comparator.comparingDouble(p -> p[0]));
    boolean fromTip = feedsFromTip(runner.fedFrom());
    double before = fromTip ? runner.runsOn() : runner.width();
    double after = fromTip ? runner.width() : runner.runsOn();
    double wide = gating.gates().stream().mapToDouble(Gate::width).max().orElseThrow();
    double[] first = line.get(0);
    double[] last = line.get(line.size() - 1);
    line.add(0, new double[] {first[0] - Math.max(before, 0.5 * wide), first[1]});
    line.add(new double[] {last[0] + Math.max(after, 0.5 * wide), last[1]});
    for (int k = 0; k + 1 < line.size(); k++) {
      double[] a = line.get(k);
      double[] b = line.get(k + 1);
      if (Math.abs(b[0] - a[0]) + Math.abs(b[1] - a[1]) > CUT_STEP) {
        addRunner(
            BarRegion.between(RUNNER, a[0], a[1], b[0], b[1], runner.width(), runner.depth()));
      }
      if (k > 0) {
        regions.add(new DiscRegion(RUNNER, a[0], a[1], runner.width(), runner.depth()));
      }
    }
    double[] end = fromTip ? line.get(line.size() - 1) : line.get(0);
    double foot = Math.min(gating.sprue().foot(), runner.width());
    feet.add(new DiscRegion(RUNNER, end[0] + (fromTip ? -0.5 : 0.5) * foot, end[1], foot, 1.0));
  }

  private boolean feedsFromTip(Runner.FedFrom end) {
    return switch (end) {
      case TIP -> true;
      case THICK_END -> false;
      case TOP -> rise > 0.0;
      case BOTTOM -> rise < 0.0;
    };
  }

  private void addOverflow(Overflow overflow) {
    Part part = new Part(Kind.OVERFLOW, overflow.name());
    RimPlace rim = piece.rim(overflow.place(), runnerSide);
    double side = StrictMath.cbrt(overflow.volume());
    join(part, rim, overflow.width(), overflow.thickness(), NECK);
    regions.add(
        new BarRegion(
            part, rim.xOut(NECK), rim.yOut(NECK), rim.outX(), rim.outY(), side, side, side, side));
  }

  /** A boss that is gated at its end is fed from its side, and the other way round. */
  private void addFeeder(Feeder feeder) {
    Part part = new Part(Kind.FEEDER, feeder.name());
    RimPlace rim = piece.rim(feeder.place(), runnerSide);
    if (piece.isBoss(feeder.place())) {
      boolean side =
          gating.runner().isPresent() && gating.runner().get() instanceof Runner.Alongside;
      rim = side ? piece.bossEnd() : piece.bossSide(Side.LEFT);
    }
    double neck = 0.5 * feeder.neckAcross();
    join(part, rim, feeder.neckAcross(), feeder.neckAcross(), neck + 0.1 * feeder.across());
    double centre = neck + 0.5 * feeder.across();
    regions.add(
        new DiscRegion(part, rim.xOut(centre), rim.yOut(centre), feeder.across(), feeder.tall()));
  }
}
