package lastinch.ui.chart;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import lastinch.solver.casting.Limb;
import lastinch.solver.casting.SectionForm;
import lastinch.solver.casting.Station;
import lastinch.ui.chart.paper.Spot3;
import lastinch.ui.chart.pour.DrawnBar;
import lastinch.ui.chart.pour.LimbLine;
import org.junit.jupiter.api.Test;

/** Limits: limbs that join meet at one place, keep their lengths, and stay straight elsewhere. */
class LimbLineTest {
  private static final double ROUNDING = 1e-9;

  private static Station station(double at) {
    return new Station(at, 0.009, 0.004, OptionalDouble.empty(), Optional.empty());
  }

  private static Limb limb(String name, double length, double degrees, String to) {
    return new Limb(
        name,
        List.of(station(0.0), station(length)),
        SectionForm.FLAT,
        "boss",
        to,
        Math.toRadians(degrees));
  }

  private static final List<Limb> TRIVET =
      List.of(
          limb("left rim", 0.19, 35.0, ""),
          limb("right rim", 0.19, -35.0, "left rim tip"),
          limb("spoke", 0.15, 0.0, "left rim tip"));

  @Test
  void limbsThatJoinMeetAtOnePlaceAndKeepTheirLengths() {
    for (Limb limb : TRIVET) {
      DrawnBar bar = LimbLine.of(limb, Spot3.ZERO, TRIVET).bar(limb);
      assertThat(bar.length()).isCloseTo(limb.length(), within(ROUNDING));
      Spot3 tip = bar.at(bar.length());
      assertThat(tip.x()).isCloseTo(0.15, within(ROUNDING));
      assertThat(tip.y()).isCloseTo(0.0, within(ROUNDING));
    }
  }

  @Test
  void eachRimBowsToItsOwnSide() {
    double left = LimbLine.of(TRIVET.get(0), Spot3.ZERO, TRIVET).at(0.095).y();
    double right = LimbLine.of(TRIVET.get(1), Spot3.ZERO, TRIVET).at(0.095).y();
    assertThat(left).isGreaterThan(0.03);
    assertThat(right).isCloseTo(-left, within(ROUNDING));
  }

  @Test
  void aLimbThatJoinsNothingIsStraight() {
    Limb alone = limb("arm", 0.2, 30.0, "");
    Spot3 tip = LimbLine.of(alone, Spot3.ZERO, List.of(alone)).at(0.2);
    assertThat(tip.x()).isCloseTo(0.2 * Math.cos(Math.toRadians(30.0)), within(ROUNDING));
    assertThat(tip.y()).isCloseTo(0.1, within(ROUNDING));
  }
}
