package lastinch.ui.chart.pour;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import lastinch.solver.casting.Place;
import lastinch.solver.casting.PourCase;
import lastinch.solver.casting.Side;
import lastinch.solver.casting.gating.Cup;
import lastinch.solver.casting.gating.Gate;
import lastinch.solver.casting.gating.Runner;
import lastinch.solver.casting.gating.Sprue;
import lastinch.solver.casting.gating.Well;
import lastinch.ui.chart.paper.Spot3;
import lastinch.ui.chart.paper.View;

/** Cup, sprue, well, runner and gates of a case, laid out to scale beside its piece. */
final class GatingLayout {
  /** Sand left between a sprue and what stands beside it; the case gives none [m]. */
  private static final double BETWEEN = 8e-3;

  private static final double NEAR = 1e-6;

  private final PourCase job;
  private final MouldLayout layout;

  GatingLayout(PourCase job, MouldLayout layout) {
    this.job = job;
    this.layout = layout;
  }

  void add() {
    Optional<Runner> runner = job.gating().runner();
    List<Gate> gates = job.gating().gates();
    if (runner.isPresent() && runner.get() instanceof Runner.Alongside side && !gates.isEmpty()) {
      addAlongside(side, gates);
    } else if (gates.isEmpty() && runner.isEmpty()) {
      addDirect();
    } else {
      addStraight(runner, gates);
    }
  }

  private void addGate(Gate gate, MouldLayout.Mouth mouth) {
    layout
        .gating()
        .put(
            gate.name(),
            DrawnBar.straight(
                gate.name(),
                mouth.spot().plus(gate.length(), mouth.out()),
                mouth.spot(),
                gate.width(),
                gate.thickness()));
  }

  private void addStraight(Optional<Runner> runner, List<Gate> gates) {
    MouldLayout.Mouth first =
        gates.isEmpty()
            ? new MouldLayout.Mouth(
                new Spot3(layout.thickEnd(), 0.0, 0.0), new Spot3(-1.0, 0.0, 0.0))
            : layout.mouth(gates.get(0).place(), gates.get(0).width());
    for (Gate gate : gates) {
      addGate(gate, layout.mouth(gate.place(), gate.width()));
    }
    Spot3 end = first.spot().plus(gates.isEmpty() ? 0.0 : gates.get(0).length(), first.out());
    Spot3 foot = end;
    if (runner.isPresent() && runner.get() instanceof Runner.Straight r) {
      foot = end.plus(r.length(), first.out());
      layout.gating().put("runner", DrawnBar.straight("runner", foot, end, r.width(), r.depth()));
      if (r.runsOn() > 0.0) {
        Spot3 aside = new Spot3(-first.out().y(), first.out().x(), 0.0);
        double gate = gates.isEmpty() ? 0.0 : gates.get(0).width();
        Spot3 from = end.plus(0.5 * (gate + r.width()), aside);
        layout
            .gating()
            .put(
                "run-on",
                DrawnBar.straight(
                    "run-on", from, from.plus(-r.runsOn(), first.out()), r.width(), r.depth()));
      }
    }
    for (int i = 1; i < gates.size(); i++) {
      DrawnBar gate = layout.gating().get(gates.get(i).name());
      String name = gates.get(i).name() + " way";
      layout.open().put(name, DrawnBar.straight(name, end, gate.at(0.0), 0.0, 0.0));
    }
    addSprue(foot.plus(0.5 * job.gating().sprue().foot(), first.out()));
  }

  private void addAlongside(Runner.Alongside side, List<Gate> gates) {
    boolean fromTip =
        switch (side.fedFrom()) {
          case TIP -> true;
          case THICK_END -> false;
          case TOP -> layout.up().x() > 0.0;
          case BOTTOM -> layout.up().x() < 0.0;
        };
    double hand = side.side() == Side.LEFT ? 1.0 : -1.0;
    Map<Double, Spot3> points = new LinkedHashMap<>();
    List<Gate> ordered = new ArrayList<>(gates);
    Comparator<Gate> byAxis = Comparator.comparingDouble(this::axis);
    ordered.sort(fromTip ? byAxis.reversed() : byAxis);
    for (Gate gate : ordered) {
      MouldLayout.Mouth mouth = layout.mouth(gate.place(), gate.width());
      addGate(gate, mouth);
      Spot3 bar = mouth.spot().plus(gate.length() + 0.5 * side.width(), mouth.out());
      points.putIfAbsent(axis(gate), bar);
    }
    List<Spot3> way = new ArrayList<>(points.values());
    Spot3 first = way.get(0);
    Spot3 low = first.plus(fromTip ? side.width() : -side.width(), new Spot3(1.0, 0.0, 0.0));
    double most = way.stream().mapToDouble(p -> Math.abs(p.y())).max().orElse(0.0);
    Sprue sprue = job.gating().sprue();
    double beside = most + 0.5 * side.width() + BETWEEN + 0.5 * Math.max(sprue.top(), sprue.foot());
    Spot3 foot = layout.upright() ? new Spot3(low.x(), hand * beside, 0.0) : low;
    Spot3 from = foot;
    for (int k = 0; k < way.size(); k++) {
      String name = way.size() == 1 ? "runner" : "runner " + (k + 1);
      List<DrawnBar.Knot> knots = new ArrayList<>();
      knots.add(new DrawnBar.Knot(from, side.width(), side.depth()));
      if (k == 0 && layout.upright()) {
        knots.add(new DrawnBar.Knot(low, side.width(), side.depth()));
      }
      knots.add(new DrawnBar.Knot(way.get(k), side.width(), side.depth()));
      layout.gating().put(name, new DrawnBar(name, knots));
      from = way.get(k);
    }
    if (side.runsOn() > 0.0) {
      Spot3 on = new Spot3(fromTip ? -1.0 : 1.0, 0.0, 0.0);
      layout
          .gating()
          .put(
              "run-on",
              DrawnBar.straight(
                  "run-on", from, from.plus(side.runsOn(), on), side.width(), side.depth()));
    }
    addSprue(foot);
  }

  private double axis(Gate gate) {
    return layout.mouth(gate.place(), gate.width()).spot().x();
  }

  /** A sprue that opens straight into the piece. */
  private void addDirect() {
    Sprue sprue = job.gating().sprue();
    DrawnBar first = layout.piece().get(job.piece().limbs().get(0).name());
    boolean tip =
        sprue.into().isPresent()
            && sprue.into().get() instanceof Place.At at
            && (at.side() == Side.TIP || at.distance() >= first.length() - NEAR);
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
