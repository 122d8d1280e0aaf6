package lastinch.solver.geometry.solid;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import lastinch.solver.casting.Limb;
import lastinch.solver.casting.Model;
import lastinch.solver.casting.Solid;
import lastinch.solver.casting.Station;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Stations cut through drawn pieces whose sections are known. */
class SlicedPartStationsExactSolutionTest {
  private static Limb limb(Solid solid) {
    SlicedPart drawn = SlicedPart.of(solid, 1e-3);
    assertThat(drawn.model().form()).isEqualTo(Model.Form.LONG);
    return drawn.limbs().get(0);
  }

  private static Solid feather(double bend) {
    return SampleSolid.swept(
            0.32,
            320,
            48,
            x -> 0.5 * (34e-3 - 22e-3 * x / 0.32),
            (x, v) -> (6e-3 - 4.8e-3 * x / 0.32) * (1 - v * v),
            x -> bend * x * x)
        .laid();
  }

  @Test
  void aFeatherGivesBackItsSections() {
    Limb limb = limb(feather(0.0));
    assertThat(limb.length()).isCloseTo(0.32, within(0.5e-3));
    for (Station s : limb.stations().subList(1, limb.stations().size() - 1)) {
      double wide = 34e-3 - 22e-3 * s.at() / 0.32;
      double thick = 6e-3 - 4.8e-3 * s.at() / 0.32;
      assertThat(s.width()).as("at %s", s.at()).isCloseTo(wide, within(0.01 * wide));
      assertThat(s.thickness()).isCloseTo(thick, within(0.01 * thick));
      double area = 2.0 / 3.0 * wide * thick;
      assertThat(s.cut().orElseThrow().area()).isCloseTo(area, within(0.01 * area));
      assertThat(s.cut().orElseThrow().perimeter()).isCloseTo(2 * wide, within(0.04 * wide));
    }
  }

  @ParameterizedTest
  @CsvSource({"120, 30", "121, 30.6", "120, 24", "100, 40", "200, 20"})
  void aBluntPlateIsAsLongAndAsWideAsItIs(double length, double wide) {
    // a line that follows each slip of its chords folds back on itself and comes out twice as long
    Limb limb = limb(SampleSolid.plate(1e-3 * length, 1e-3 * wide, 4e-3).laid());
    assertThat(limb.length()).isCloseTo(1e-3 * length, within(0.5e-3));
    for (Station s : limb.stations().subList(1, limb.stations().size() - 1)) {
      assertThat(s.width()).as("at %s", s.at()).isCloseTo(1e-3 * wide, within(0.01e-3 * wide));
    }
  }

  @Test
  void aBentFeatherIsMeasuredAlongItsMiddleLine() {
    // y = 1.0 x^2 over 0.32 m: the arc is longer than the chord of x by some 6 %
    Limb limb = limb(feather(1.0));
    double arc = 0.0;
    for (int i = 0; i < 1000; i++) {
      double x = 0.32 * (i + 0.5) / 1000;
      arc += Math.sqrt(1 + 4 * x * x) * 0.32 / 1000;
    }
    assertThat(limb.length()).isCloseTo(arc, within(0.01 * arc));
    assertThat(Math.abs(limb.length() / 0.32 - 1)).isGreaterThan(0.04);
  }

  @Test
  void theThickEndComesFirstWhicheverWayItIsDrawn() {
    Solid turned =
        PartOrientation.of(
                SampleSolid.wedge(0.2, 0.03, 0.006, 0.002).turned(Math.PI, 0, 0).points(),
                SampleSolid.wedge(0.2, 0.03, 0.006, 0.002).corners(),
                PartOrientation.Wish.NONE)
            .solid();
    List<Station> s = limb(turned).stations();
    assertThat(s.get(1).thickness()).isGreaterThan(s.get(s.size() - 2).thickness());
  }

  @Test
  void aRingIsTooBranchedAndADiscTooWide() {
    Solid ring = SampleSolid.torus(0.04, 0.006, 200, 40).laid();
    assertThat(SlicedPart.of(ring, 1e-3).model().form()).isEqualTo(Model.Form.TOO_BRANCHED);
    Solid slab = SampleSolid.plate(0.06, 0.05, 0.004).laid();
    assertThat(SlicedPart.of(slab, 1e-3).model().form()).isEqualTo(Model.Form.TOO_WIDE);
  }
}
