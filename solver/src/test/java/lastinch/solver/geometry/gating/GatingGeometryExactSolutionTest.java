package lastinch.solver.geometry.gating;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import lastinch.solver.casting.Limb;
import lastinch.solver.casting.Orientation;
import lastinch.solver.casting.Place;
import lastinch.solver.casting.PourCase;
import lastinch.solver.casting.SectionForm;
import lastinch.solver.casting.Side;
import lastinch.solver.casting.Station;
import lastinch.solver.casting.gating.Gate;
import lastinch.solver.casting.gating.Runner;
import lastinch.solver.charge.MouldTemperature;
import lastinch.solver.geometry.gating.GatingGeometry.Point;
import lastinch.solver.geometry.gating.GatingGeometry.Stretch;
import lastinch.solver.network.layout.ChannelGraph;
import lastinch.solver.network.layout.ChannelLayout;
import lastinch.solver.network.layout.ChannelShape;
import lastinch.solver.run.SampleJob;
import org.junit.jupiter.api.Test;

/** Foot, runner and gates of a strip against places worked out by hand. */
class GatingGeometryExactSolutionTest {
  private static final double LONG = 0.2;
  private static final double HALF = 0.015;
  private static final double GATE = 0.025;
  private static final double ROUNDING = 1e-12;
  private static final Runner STRAIGHT = new Runner.Straight(0.06, 0.014, 0.012, 0.02);

  private static PourCase job(Orientation attitude, Runner runner, Gate... gates) {
    PourCase strip = SampleJob.strip(LONG, 2.0 * HALF, 0.006).section(SectionForm.FLAT).build();
    return strip
        .withMould(strip.mould().withAttitude(attitude))
        .withGating(strip.gating().withRunner(Optional.of(runner)).withGates(List.of(gates)));
  }

  private static Runner beside(Runner.FedFrom end) {
    return new Runner.Alongside(Side.LEFT, GATE, 0.014, 0.012, end, 0.03);
  }

  private static Gate gate(String name, double at, Side side) {
    return new Gate(name, new Place.At(Limb.ONLY, at, side), 0.02, 3e-3, GATE);
  }

  /** The rim of the strip, by hand. */
  private static Mouth rim(Place place, double width) {
    Place.At at = (Place.At) place;
    return switch (at.side()) {
      case THICK_END -> new Mouth(0.0, 0.0, -1.0, 0.0);
      case TIP -> new Mouth(LONG, 0.0, 1.0, 0.0);
      case LEFT -> new Mouth(at.distance(), HALF, 0.0, 1.0);
      case RIGHT -> new Mouth(at.distance(), -HALF, 0.0, -1.0);
    };
  }

  private static GatingGeometry laid(Orientation attitude, Runner runner, Gate... gates) {
    return new GatingGeometry(job(attitude, runner, gates), GatingGeometryExactSolutionTest::rim);
  }

  private static void isAt(Point point, double x, double y) {
    assertThat(point.x()).isCloseTo(x, within(ROUNDING));
    assertThat(point.y()).isCloseTo(y, within(ROUNDING));
  }

  private static double fall(PourCase job, String channel) {
    ChannelGraph graph = ChannelLayout.of(job, new MouldTemperature(job.mould()));
    ChannelShape shape =
        graph.channels().stream().filter(c -> c.name.equals(channel)).findFirst().orElseThrow();
    return shape.heightA - shape.heightB;
  }

  @Test
  void aStraightRunnerLeadsOnTheWayItsGatePoints() {
    GatingGeometry end = laid(Orientation.FLAT, STRAIGHT, gate("end", 0.0, Side.THICK_END));
    isAt(end.foot(), -GATE - 0.06, 0.0);
    isAt(end.stretches().get(0).to(), -GATE, 0.0);
    GatingGeometry left = laid(Orientation.FLAT, STRAIGHT, gate("left", 0.05, Side.LEFT));
    isAt(left.foot(), 0.05, HALF + GATE + 0.06);
    isAt(left.stretches().get(0).to(), 0.05, HALF + GATE);
    // past the gate and beside it
    isAt(left.runOn().orElseThrow().to(), 0.05 - 0.017, HALF + GATE - 0.02);
  }

  @Test
  void aStraightRunnerIsLevelWhereAnUprightMouldIsGatedFromBelow() {
    GatingGeometry g = laid(Orientation.UPRIGHT_TIP_UP, STRAIGHT, gate("end", 0.0, Side.THICK_END));
    assertThat(g.isTurned()).isTrue();
    Stretch runner = g.stretches().get(0);
    isAt(runner.to(), -GATE - 0.007, 0.0);
    isAt(g.foot(), -GATE - 0.007, 0.06 + 0.01);
  }

  @Test
  void aRunnerBesideThePieceComesToItsGatesFromTheEndThatFeedsIt() {
    Gate one = gate("one", 0.05, Side.LEFT);
    Gate two = gate("two", 0.15, Side.LEFT);
    double y = HALF + GATE + 0.007;
    GatingGeometry thick = laid(Orientation.FLAT, beside(Runner.FedFrom.THICK_END), two, one);
    isAt(thick.foot(), 0.05 - 0.014, y);
    assertThat(thick.stretches()).extracting(Stretch::name).containsExactly("runner 1", "runner 2");
    assertThat(thick.stretches())
        .extracting(s -> s.gates().get(0).gate())
        .containsExactly(one, two);
    isAt(thick.runOn().orElseThrow().to(), 0.15 + 0.03, y);
    GatingGeometry tip = laid(Orientation.FLAT, beside(Runner.FedFrom.TIP), two, one);
    isAt(tip.foot(), 0.15 + 0.014, y);
    assertThat(tip.stretches()).extracting(s -> s.gates().get(0).gate()).containsExactly(two, one);
    isAt(tip.runOn().orElseThrow().to(), 0.05 - 0.03, y);
  }

  @Test
  void theTopOfATiltedRunnerIsAtItsHigherEnd() {
    Gate one = gate("one", 0.05, Side.LEFT);
    Gate two = gate("two", 0.15, Side.LEFT);
    Runner fromTop = beside(Runner.FedFrom.TOP);
    assertThat(laid(Orientation.tilted(0.3), fromTop, one, two).foot().x()).isGreaterThan(0.15);
    assertThat(laid(Orientation.tilted(-0.3), fromTop, one, two).foot().x()).isLessThan(0.05);
  }

  @Test
  void gatesCloseTogetherLeaveTheRunnerAtOnePlace() {
    Gate one = gate("one", 0.05, Side.LEFT);
    Gate near = gate("near", 0.0515, Side.LEFT);
    Gate two = gate("two", 0.15, Side.LEFT);
    List<Stretch> stretches =
        laid(Orientation.FLAT, beside(Runner.FedFrom.THICK_END), one, near, two).stretches();
    assertThat(stretches).extracting(s -> s.gates().size()).containsExactly(2, 1);
  }

  @Test
  void channelsLieAtTheHeightsOfTheirPlacesInTheMould() {
    Orientation tilted = Orientation.tilted(0.3);
    double rise = Math.sin(0.3);
    Gate left = gate("left", 0.05, Side.LEFT);
    // a runner that leads off sideways is level
    assertThat(fall(job(tilted, STRAIGHT, left), "runner")).isZero();
    assertThat(fall(job(tilted, STRAIGHT, gate("end", 0.0, Side.THICK_END)), "runner"))
        .isCloseTo(-0.06 * rise, within(ROUNDING));
    // beyond the tip, not back over the piece, also when the gate there is not the only one
    Gate tip = gate("tip", LONG, Side.TIP);
    assertThat(fall(job(tilted, STRAIGHT, tip, left), "runner"))
        .isCloseTo(0.06 * rise, within(ROUNDING));
  }

  private static Limb limb(String name, String from, String to) {
    List<Station> stations =
        List.of(
            new Station(0.0, 0.01, 0.004, OptionalDouble.empty()),
            new Station(0.1, 0.01, 0.004, OptionalDouble.empty()));
    return new Limb(name, stations, SectionForm.FLAT, from, to, 0.0);
  }

  @Test
  void anEndHasOneNameHoweverItIsSaid() {
    Limb stem = limb("stem", "", "");
    Limb twig = limb("twig", "stem tip", "");
    Limb brace = limb("brace", "stem thick end", "twig thick end");
    LimbEnds ends = new LimbEnds(List.of(stem, twig, brace));
    assertThat(ends.start(stem)).isEqualTo(LimbEnds.START).isEqualTo(ends.start(brace));
    assertThat(ends.end(stem)).isEqualTo(ends.start(twig)).isEqualTo(ends.end(brace));
    assertThat(ends.isShared(ends.end(stem))).isTrue();
    assertThat(ends.isShared(ends.end(twig))).isFalse();
  }

  @Test
  void limbsMayEachNameTheEndOfTheOther() {
    Limb one = limb("one", "", "two tip");
    Limb two = limb("two", "", "one tip");
    LimbEnds ends = new LimbEnds(List.of(one, two));
    assertThat(ends.end(one)).isEqualTo(ends.end(two)).isNotEqualTo(LimbEnds.START);
  }
}
