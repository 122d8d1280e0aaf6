package lastinch.solver.physics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.stream.Stream;
import lastinch.solver.material.FilmForming;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Limits: no closure lets a value through that is not a number, or one outside its range. */
class ClosureInputLimitsTest {
  /** A closure of some doubles. */
  private interface Law {
    double at(double[] a);
  }

  /** A closure with arguments for it. */
  private static final class Call {
    private final String name;
    private final Law law;
    private final double[] values;

    Call(String name, Law law, double... values) {
      this.name = name;
      this.law = law;
      this.values = values;
    }

    double result() {
      return law.at(values);
    }

    double withoutANumberAt(int i) {
      double[] spoilt = values.clone();
      spoilt[i] = Double.NaN;
      return law.at(spoilt);
    }

    @Override
    public String toString() {
      return name;
    }
  }

  static Stream<Call> calls() {
    return Stream.of(
        new Call("density", a -> DryAir.density(a[0], a[1]), 1e5, 300),
        new Call("viscosity", a -> DryAir.viscosity(a[0]), 300),
        new Call("factor", a -> Friction.factor(a[0], a[1]), 3000, 96),
        new Call("product", a -> Friction.product(a[0], a[1]), 3000, 96),
        new Call(
            "gradient",
            a -> Friction.gradientOverSpeed(a[0], a[1], a[2], a[3], a[4]),
            8000,
            3e-3,
            1,
            4e-3,
            96),
        new Call("colebrook", a -> Friction.colebrook(a[0], a[1]), 1e5, 0.01),
        new Call("rectangle", a -> Friction.laminarProductRectangle(a[0]), 0.5),
        new Call("expansion", a -> Losses.suddenExpansion(a[0], a[1]), 1, 2),
        new Call("contraction", a -> Losses.suddenContraction(a[0], a[1]), 2, 1),
        new Call("referred", a -> Losses.referredTo(a[0], a[1], a[2]), 1, 1, 1),
        new Call("steady", a -> Losses.steadySpeed(a[0], a[1]), 1, 1),
        new Call("fall", a -> FreeFall.speedAfter(a[0], a[1]), 1, 1),
        new Call("time", a -> FreeFall.time(a[0], a[1], a[2]), 1, 1, 1),
        new Call("taper", a -> FreeFall.areaRatio(a[0], a[1]), 1, 2),
        new Call("push", a -> Capillary.push(a[0], a[1], a[2], a[3], a[4]), 1, 2, 1, 1e-3, 1e-2),
        new Call("slot", a -> Capillary.thinnestSlot(a[0], a[1]), 1, 1),
        new Call("length", a -> Capillary.length(a[0], a[1]), 1, 8000),
        new Call("splash", a -> SplashLimit.speed(a[0], a[1]), 1, 8000),
        new Call("height", a -> SplashLimit.fallHeight(a[0]), 1),
        new Call("stiff", a -> Slurry.viscosityFactor(a[0], a[1]), 0.1, 0.3),
        new Call(
            "separation",
            a -> Slurry.separation(a[0], a[1], a[2], a[3], a[4]),
            1273,
            1073,
            5e5,
            2e-3,
            50),
        new Call("open", a -> Slurry.openGapStop(a[0]), 1e-3),
        new Call("gapShare", a -> ContactLaw.gapShare(a[0], a[1], a[2]), 0.5, 0.4, 0.9),
        new Call("contact", a -> ContactLaw.conductance(a[0], a[1], a[2]), 0.5, 900, 100),
        new Call("plate", a -> ContactLaw.plateResistance(a[0], a[1]), 1e-3, 40),
        new Call("series", a -> ContactLaw.inSeries(a[0], a[1]), 900, 1e-4),
        new Call(
            "plates",
            a -> TaylorArisDispersion.plates(a[0], a[1], a[2], a[3], a[4]),
            1e-5,
            1,
            2e-3,
            9000,
            0.03),
        new Call(
            "round",
            a -> TaylorArisDispersion.round(a[0], a[1], a[2], a[3], a[4]),
            1e-5,
            1,
            2e-3,
            9000,
            0.03),
        new Call("tau", a -> LapIndex.tau(a[0], a[1], a[2], a[3]), 1e-3, 4e-3, 0.1, 0),
        new Call(
            "drop",
            a -> LapIndex.surfaceDrop(a[0], a[1], a[2], a[3], a[4]),
            5e5,
            0.01,
            40,
            8000,
            450),
        new Call("surface", a -> LapIndex.surfaceEnthalpy(a[0], a[1], a[2]), 0, 450, 3),
        new Call("index", a -> LapIndex.index(a[0], a[1], FilmForming.NO), 0.1, 0.3),
        new Call(
            "vent",
            a -> AirEscape.orificeFlow(a[0], a[1], a[2], a[3], a[4]),
            1e-6,
            1.1e5,
            700,
            1e5,
            300),
        new Call(
            "ventSlope",
            a -> AirEscape.orificeSlope(a[0], a[1], a[2], a[3], a[4]),
            1e-6,
            1.1e5,
            700,
            1e5,
            300),
        new Call(
            "crack",
            a -> AirEscape.crackFlow(a[0], a[1], a[2], a[3], a[4], a[5]),
            1e-4,
            0.3,
            0.05,
            1.1e5,
            700,
            1e5),
        new Call(
            "crackSlope",
            a -> AirEscape.crackSlope(a[0], a[1], a[2], a[3], a[4], a[5]),
            1e-4,
            0.3,
            0.05,
            1.1e5,
            700,
            1e5),
        new Call(
            "mould",
            a -> AirEscape.mouldFlow(a[0], a[1], a[2], a[3], a[4]),
            1e-12,
            0.3,
            1.1e5,
            700,
            1e5),
        new Call(
            "mouldSlope",
            a -> AirEscape.mouldSlope(a[0], a[1], a[2], a[3]),
            1e-12,
            0.3,
            1.1e5,
            700),
        new Call(
            "depth",
            a -> AirEscape.pressedDepth(a[0], a[1], a[2], a[3], a[4], a[5], a[6]),
            4e-3,
            0.03,
            1e-12,
            0.4,
            1e5,
            3e-5,
            1),
        new Call("shape", a -> AirEscape.shapeFactor(a[0], a[1], a[2]), 0.1, 4e-3, 0.03));
  }

  static Stream<Call> outOfRange() {
    return Stream.of(
        new Call("expansion that narrows", a -> Losses.suddenExpansion(a[0], a[1]), 2, 1),
        new Call("contraction that widens", a -> Losses.suddenContraction(a[0], a[1]), 1, 2),
        new Call("wetting metal", a -> Capillary.strength(1.2, a[0], 1.0), 1.0),
        new Call("solidus above liquidus", a -> Slurry.separation(a[0], a[1], 1, 1, 1), 900, 901),
        new Call("gap opens before the skin", a -> ContactLaw.gapShare(0.5, a[0], a[1]), 0.6, 0.5),
        new Call("temperature in degC", a -> DryAir.viscosity(a[0]), 20),
        new Call("percent for a share", a -> Slurry.viscosityFactor(a[0], 0.3), 20),
        new Call("stream that never arrives", a -> FreeFall.time(a[0], 1.0, a[0]), 0),
        new Call("laminar Colebrook", a -> Friction.colebrook(a[0], 0.0), 1000),
        new Call("taper upside down", a -> FreeFall.areaRatio(a[0], a[1]), 2, 1),
        new Call("negative pressure", a -> AirEscape.orificeFlow(1e-6, a[0], 300, 1e5, 300), -1),
        new Call("negative speed of a front", a -> LapIndex.tau(1e-3, 1e-3, a[0], 0), -0.1));
  }

  @ParameterizedTest
  @MethodSource("calls")
  void valueThatIsNotANumberIsRefused(Call call) {
    assertThat(call.result()).isFinite();
    for (int i = 0; i < call.values.length; i++) {
      int place = i;
      assertThatThrownBy(() -> call.withoutANumberAt(place))
          .as("argument %d", i)
          .isInstanceOf(IllegalArgumentException.class)
          .hasMessageContaining("NaN");
    }
  }

  @ParameterizedTest
  @MethodSource("outOfRange")
  void valueOutsideTheRangeIsRefused(Call call) {
    assertThatThrownBy(call::result)
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("allowed");
  }
}
