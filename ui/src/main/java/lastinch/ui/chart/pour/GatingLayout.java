package lastinch.ui.chart.pour;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import lastinch.solver.casting.PourCase;
import lastinch.solver.casting.Side;
import lastinch.solver.casting.gating.Cup;
import lastinch.solver.casting.gating.Gate;
import lastinch.solver.casting.gating.Runner;
import lastinch.solver.casting.gating.Sprue;
import lastinch.solver.casting.gating.Well;
import lastinch.solver.geometry.gating.GatingGeometry;
import lastinch.solver.geometry.gating.GatingGeometry.GateLine;
import lastinch.solver.geometry.gating.GatingGeometry.Point;
import lastinch.solver.geometry.gating.GatingGeometry.Stretch;
import lastinch.solver.geometry.gating.Mouth;
import lastinch.solver.geometry.gating.PiecePlaces;
import lastinch.ui.chart.paper.Spot3;
import lastinch.ui.chart.paper.View;

/** Cup, sprue, well, runner and gates of a case, laid out to scale beside its piece. */
final class GatingLayout {
  /** Sand left between a sprue and what stands beside it; the case gives none [m]. */
  private static final double BETWEEN = 8e-3;

  private final PourCase job;
  private final MouldLayout layout;
  private final GatingGeometry geometry;

  GatingLayout(PourCase job, MouldLayout layout) {
    this.job = job;
    this.layout = layout;
    geometry = new GatingGeometry(job, layout::mouth);
  }

  void add() {
    List<GateLine> gates = new ArrayList<>();
    geometry.stretches().forEach(s -> gates.addAll(s.gates()));
    for (GateLine line : gates.isEmpty() ? geometry.gates() : gates) {
      Gate gate = line.gate();
      Mouth mouth = line.mouth();
      run(gate.name(), line.end(0.0), mouth.x(), mouth.y(), gate.width(), gate.thickness());
    }
    Optional<Runner> runner = job.gating().runner();
    if (geometry.gates().isEmpty()) {
      addDirect();
    } else if (runner.isPresent() && runner.get() instanceof Runner.Alongside side) {
      addAlongside(side);
    } else {
      addStraight(runner);
    }
  }

  /** A channel of one size in the parting plane. */
  private void run(String name, Point from, double x, double y, double wide, double deep) {
    Spot3 to = new Spot3(x, y, 0.0);
    layout.gating().put(name, DrawnBar.straight(name, spot(from), to, wide, deep));
  }

  private static Spot3 spot(Point point) {
    return new Spot3(point.x(), point.y(), 0.0);
  }

  private void run(Stretch stretch, Runner runner) {
    Point to = stretch.to();
    run(stretch.name(), stretch.from(), to.x(), to.y(), runner.width(), runner.depth());
  }

  private void addStraight(Optional<Runner> runner) {
    geometry.stretches().forEach(s -> run(s, runner.orElseThrow()));
    geometry.runOn().ifPresent(s -> run(s, runner.orElseThrow()));
    Point end = geometry.stretches().isEmpty() ? geometry.foot() : geometry.stretches().get(0).to();
    List<GateLine> gates = geometry.gates();
    for (GateLine gate : gates.subList(1, gates.size())) {
      String name = gate.gate().name() + " way";
      layout.open().put(name, DrawnBar.straight(name, spot(end), spot(gate.end(0.0)), 0.0, 0.0));
    }
    addSprue(spot(geometry.ahead(geometry.foot(), 0.5 * job.gating().sprue().foot())));
  }

  /** The sprue of a mould that stands goes up clear of the piece and reaches its runner aside. */
  private void addAlongside(Runner.Alongside side) {
    List<Stretch> stretches = geometry.stretches();
    stretches.forEach(s -> run(s, side));
    geometry.runOn().ifPresent(s -> run(s, side));
    Spot3 foot = spot(geometry.foot());
    if (layout.upright()) {
      Sprue sprue = job.gating().sprue();
      double hand = side.side() == Side.LEFT ? 1.0 : -1.0;
      double most = stretches.stream().mapToDouble(s -> Math.abs(s.to().y())).max().orElseThrow();
      double beside =
          most + 0.5 * side.width() + BETWEEN + 0.5 * Math.max(sprue.top(), sprue.foot());
      Stretch first = stretches.get(0);
      foot = new Spot3(foot.x(), hand * beside, 0.0);
      List<DrawnBar.Knot> knots =
          Stream.of(foot, spot(first.from()), spot(first.to()))
              .map(s -> new DrawnBar.Knot(s, side.width(), side.depth()))
              .toList();
      layout.gating().put(first.name(), new DrawnBar(first.name(), knots));
    }
    addSprue(foot);
  }

  /** A sprue that opens straight into the piece. */
  private void addDirect() {
    Sprue sprue = job.gating().sprue();
    DrawnBar first = layout.piece().get(job.piece().limbs().get(0).name());
    boolean tip = PiecePlaces.of(job).entersAtTip(job.gating());
    double x = tip ? first.length() : layout.thickEnd();
    double inwards = tip ? -1.0 : 1.0;
    if (!layout.upright()) {
      DrawnBar under = tip || layout.thickEnd() == 0.0 ? first : layout.piece().get("boss");
      double top = under.half(View.EDGE, tip ? under.length() : 0.0);
      addSprue(new Spot3(x + inwards * 0.5 * sprue.foot(), 0.0, top));
      return;
    }
    boolean over = layout.up().x() * inwards < 0.0;
    if (over) {
      addSprue(new Spot3(x, 0.0, 0.0));
      return;
    }
    double beside = layout.reach() + BETWEEN + 0.5 * Math.max(sprue.top(), sprue.foot());
    Spot3 foot = new Spot3(x, beside, 0.0);
    layout
        .open()
        .put(
            "foot",
            DrawnBar.straight("foot", foot, new Spot3(x, 0.0, 0.0), sprue.foot(), sprue.foot()));
    addSprue(foot);
  }

  private void addSprue(Spot3 foot) {
    Sprue sprue = job.gating().sprue();
    Spot3 top = foot.plus(sprue.tall(), layout.up());
    layout
        .gating()
        .put(
            "sprue",
            new DrawnBar(
                "sprue",
                List.of(
                    new DrawnBar.Knot(top, sprue.top(), sprue.top()),
                    new DrawnBar.Knot(foot, sprue.foot(), sprue.foot()))));
    if (job.gating().well().isPresent()) {
      Well well = job.gating().well().get();
      layout
          .gating()
          .put(
              "well",
              DrawnBar.straight(
                  "well",
                  foot,
                  foot.plus(-well.depth(), layout.up()),
                  well.across(),
                  well.across()));
    }
    Cup cup = job.gating().cup();
    layout
        .open()
        .put(
            "cup",
            DrawnBar.straight(
                "cup", top.plus(cup.depth(), layout.up()), top, cup.across(), cup.across()));
  }
}
