package lastinch.solver.network;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import lastinch.solver.casting.Checking;
import lastinch.solver.casting.Limb;
import lastinch.solver.casting.Metal;
import lastinch.solver.casting.Mould;
import lastinch.solver.casting.Orientation;
import lastinch.solver.casting.Piece;
import lastinch.solver.casting.Place;
import lastinch.solver.casting.Pour;
import lastinch.solver.casting.PourCase;
import lastinch.solver.casting.SectionForm;
import lastinch.solver.casting.Side;
import lastinch.solver.casting.Station;
import lastinch.solver.casting.gating.Cup;
import lastinch.solver.casting.gating.Gate;
import lastinch.solver.casting.gating.Gating;
import lastinch.solver.casting.gating.Runner;
import lastinch.solver.casting.gating.Sprue;
import lastinch.solver.material.Band;
import lastinch.solver.run.SampleFoundry;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Where every channel has the same section, no event speeds metal up: nothing outruns a fall from
 * the rim, however often fronts reach joints, meet, close channels and let go of them.
 */
class NetworkSpeedsLimitsTest {
  private static final double SIDE = 0.01;

  @ParameterizedTest
  @ValueSource(ints = {0, 1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12, 13, 14})
  void noEventLeavesASpike(int number) {
    SeededPour pour = SeededPour.of(sameSectionThroughout(number));
    assertThat(pour.ended()).isTrue();
    // steps of finite length are good for a few per cent; a spike is tens of times as fast
    assertThat(pour.speedOverBound()).isLessThan(1.1);
  }

  private static PourCase sameSectionThroughout(int number) {
    Orientation[] stands = {
      Orientation.FLAT,
      Orientation.tilted(0.2),
      Orientation.tilted(-0.2),
      Orientation.UPRIGHT_TIP_UP,
      Orientation.UPRIGHT_TIP_DOWN
    };
    double length = 0.12 + 0.005 * number;
    List<Station> even =
        List.of(
            new Station(0.0, SIDE, SIDE, OptionalDouble.empty()),
            new Station(length, SIDE, SIDE, OptionalDouble.empty()));
    Limb limb = new Limb("a", even, SectionForm.FLAT, "", "", 0.0);
    List<Gate> gates =
        List.of(
            gate("first", length, 0.0, Side.THICK_END),
            gate("second", length, 0.4 * length, Side.LEFT),
            gate("third", length, 0.8 * length, Side.LEFT));
    Orientation attitude = stands[number % 5];
    Runner.FedFrom end =
        attitude.upright()
            ? Runner.FedFrom.BOTTOM
            : number < 5 ? Runner.FedFrom.TIP : Runner.FedFrom.THICK_END;
    double across = SIDE * Math.sqrt(4.0 / Math.PI);
    double tall = 0.1 + (attitude.upright() ? length : 0.0) + 0.01 * number;
    Gating gating =
        new Gating(
            new Cup(0.05, 0.04),
            new Sprue(tall, across, across, Optional.empty()),
            Optional.empty(),
            Optional.of(new Runner.Alongside(Side.LEFT, 0.02, SIDE, SIDE, end, number % 2 * 0.03)),
            gates,
            List.of(),
            List.of(),
            List.of());
    Mould mould =
        new Mould(
            SampleFoundry.sand(),
            Band.typed(293.15),
            0.0,
            Optional.empty(),
            attitude,
            1e-4,
            101325.0);
    Metal metal =
        new Metal(
            SampleFoundry.tinBronze(),
            1.5,
            Band.typed(1423.0),
            Band.typed(20.0),
            Band.typed(1.0),
            Band.typed(15.0));
    return new PourCase(
        "even",
        new Piece(List.of(limb), Optional.empty()),
        mould,
        gating,
        metal,
        new Pour.Empties(Band.typed(1.0 + 0.3 * number)),
        Checking.NONE);
  }

  private static Gate gate(String name, double length, double at, Side side) {
    return new Gate(name, new Place.At("a", Math.min(at, length), side), SIDE, SIDE, 0.02);
  }
}
