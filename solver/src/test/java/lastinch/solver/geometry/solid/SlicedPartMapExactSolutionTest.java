package lastinch.solver.geometry.solid;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import lastinch.solver.casting.Solid;
import org.junit.jupiter.api.Test;

/** Map of drawn pieces against the formulas of their shapes, at the usual cells of 1 mm. */
class SlicedPartMapExactSolutionTest {
  private static final double CELL = 1e-3;

  /** Half a per cent in volume and two in wall are what a forecast may rely on. */
  private static void holds(Solid solid, double volume, double wall) {
    ShapeReport survey = ShapeReport.of(solid, CELL).orElseThrow();
    assertThat(survey.map().totalVolume()).isCloseTo(volume, within(0.005 * volume));
    assertThat(survey.map().totalWall()).isCloseTo(wall, within(0.02 * wall));
    assertThat(survey.torn()).isLessThan(1e-4);
  }

  @Test
  void aPlateHasItsVolumeAndWallHoweverItLies() {
    double volume = 0.12 * 0.03 * 0.004;
    double wall = 2 * (0.12 * 0.03 + 0.12 * 0.004 + 0.03 * 0.004);
    holds(SampleSolid.plate(0.12, 0.03, 0.004).laid(), volume, wall);
    holds(SampleSolid.plate(0.12, 0.03, 0.004).turned(0.7, 0.0, 0.0).laid(), volume, wall);
    holds(SampleSolid.plate(0.12, 0.03, 0.004).turned(0.3, 1.1, -0.4).laid(), volume, wall);
  }

  @Test
  void aWedgeHasItsVolumeAndWall() {
    double slope = Math.hypot(0.12, 0.002);
    double wall = 2 * 0.03 * slope + 2 * 0.12 * 0.004 + 0.03 * (0.006 + 0.002);
    holds(SampleSolid.wedge(0.12, 0.03, 0.006, 0.002).laid(), 0.12 * 0.03 * 0.004, wall);
  }

  @Test
  void aLensHasItsVolumeAndWall() {
    double t = 0.005 / 0.03;
    double arc = 2.0 * 0.03 * (1.0 + 2.0 / 3.0 * t * t);
    double area = 2.0 / 3.0 * 0.03 * 0.005;
    holds(SampleSolid.lens(0.12, 0.03, 0.005).laid(), area * 0.12, arc * 0.12 + 2 * area);
    holds(
        SampleSolid.lens(0.12, 0.03, 0.005).turned(-0.2, 0.9, 2.0).laid(),
        area * 0.12,
        arc * 0.12 + 2 * area);
  }

  @Test
  void aRoundBarHasItsVolumeAndWall() {
    double r = 0.008;
    holds(
        SampleSolid.cylinder(0.1, r, 200).laid(),
        Math.PI * r * r * 0.1,
        2 * Math.PI * r * 0.1 + 2 * Math.PI * r * r);
  }

  @Test
  void aRingHasItsVolumeAndWall() {
    double big = 0.04;
    double r = 0.006;
    holds(
        SampleSolid.torus(big, r, 300, 80).laid(),
        2 * Math.PI * Math.PI * big * r * r,
        4 * Math.PI * Math.PI * big * r);
  }

  @Test
  void sizesScaleWithTheModel() {
    Solid twice = SampleSolid.lens(0.06, 0.015, 0.0025).scaled(2.0).laid();
    ShapeReport survey = ShapeReport.of(twice, CELL).orElseThrow();
    assertThat(survey.thickest().value()).isCloseTo(0.005, within(2e-5));
  }

  @Test
  void facesTakenFromAboveOnlyWouldBeSeen() {
    Solid bar = SampleSolid.cylinder(0.1, 0.008, 200).laid();
    double plan = 2 * 0.1 * 0.016;
    double wall = ShapeReport.of(bar, CELL).orElseThrow().map().totalWall();
    assertThat(Math.abs(plan / wall - 1.0)).isGreaterThan(0.3);
  }
}
