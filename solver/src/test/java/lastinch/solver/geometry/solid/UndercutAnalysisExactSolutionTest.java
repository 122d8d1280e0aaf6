package lastinch.solver.geometry.solid;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Optional;
import java.util.OptionalDouble;
import lastinch.solver.casting.GapGrid;
import lastinch.solver.casting.Solid;
import lastinch.solver.geometry.solid.UndercutAnalysis.Mark;
import org.junit.jupiter.api.Test;

/** Undercuts and overhangs of shapes of which one knows where they are. */
class UndercutAnalysisExactSolutionTest {
  private static final double CELL = 1e-3;

  private static PartOrientation pose(SampleSolid solid, OptionalDouble parting) {
    PartOrientation.Wish wish =
        new PartOrientation.Wish(Optional.of("z"), Optional.of("-x"), false, parting);
    return PartOrientation.of(solid.points(), solid.corners(), wish);
  }

  /**
   * A plate 120 by 30 by 4 mm with a hook on it: a foot at 0 to 10 mm, 4 to 10 mm high, and on it a
   * tongue that reaches to 50 mm, 10 to 13 mm high.
   */
  private static SampleSolid hook() {
    return SampleSolid.blocks(
        new double[][] {
          {0.0, 0.12, -0.015, 0.015, 0.0, 0.004},
          {0.0, 0.01, -0.015, 0.015, 0.004, 0.01},
          {0.0, 0.05, -0.015, 0.015, 0.01, 0.013}
        });
  }

  private static Mark at(UndercutAnalysis locking, GapGrid grid, double x) {
    int i = (int) ((x - grid.x0()) / grid.cell());
    int j = (int) ((0.2e-3 - grid.y0()) / grid.cell());
    return locking.at(grid.index(i, j));
  }

  @Test
  void sandUnderAHookIsMarkedWhereItIsAndNowhereElse() {
    Solid solid = pose(hook(), OptionalDouble.empty()).solid();
    GapGrid grid = ShapeReport.of(solid, CELL).orElseThrow().map().grid();
    UndercutAnalysis locking = UndercutAnalysis.of(solid, grid);
    // sand shut in from 10 to 50 mm; one row of squares at either end may go either way
    assertThat(locking.area(Mark.UNDERCUT)).isCloseTo(0.04 * 0.03, within(2 * CELL * 0.03));
    assertThat(at(locking, grid, 0.005)).isEqualTo(Mark.NONE);
    assertThat(at(locking, grid, 0.03)).isEqualTo(Mark.UNDERCUT);
    assertThat(at(locking, grid, 0.08)).isEqualTo(Mark.NONE);
  }

  @Test
  void whereBlocksTouchNoSandIsShutIn() {
    Solid solid = pose(hook(), OptionalDouble.empty()).solid();
    UndercutAnalysis locking =
        UndercutAnalysis.of(solid, ShapeReport.of(solid, CELL).orElseThrow().map().grid());
    // 40 of 120 mm; one row of squares at either end may go either way
    assertThat(locking.share(Mark.UNDERCUT)).isCloseTo(1.0 / 3.0, within(2 * CELL / 0.12));
  }

  @Test
  void aLensPartedThroughItsRimLocksNowhere() {
    PartOrientation pose = pose(SampleSolid.lens(0.12, 0.03, 0.006), OptionalDouble.empty());
    assertThat(pose.locked()).isLessThan(1e-3);
    assertThat(pose.parting()).isCloseTo(0.003, within(0.1e-3));
    GapGrid grid = ShapeReport.of(pose.solid(), CELL).orElseThrow().map().grid();
    UndercutAnalysis locking = UndercutAnalysis.of(pose.solid(), grid);
    assertThat(locking.area(Mark.OVERHANG)).isZero();
    assertThat(locking.area(Mark.UNDERCUT)).isZero();
  }

  @Test
  void aLensPartedTooLowLeansOverByItsFormula() {
    // gap 6 mm (1 - v^2): its underside stands 1 mm high where v^2 = 1/3, and leans over outside
    double share = 1.0 - Math.sqrt(1.0 / 3.0);
    PartOrientation pose = pose(SampleSolid.lens(0.12, 0.03, 0.006), OptionalDouble.of(1e-3));
    assertThat(pose.parting()).isCloseTo(1e-3, within(1e-9));
    // a face lies wholly on one side: 48 to a half, and within slack of the plane it locks not
    assertThat(pose.locked()).isCloseTo(share, within(0.03));
    GapGrid grid = ShapeReport.of(pose.solid(), CELL).orElseThrow().map().grid();
    double area = UndercutAnalysis.of(pose.solid(), grid).area(Mark.OVERHANG);
    assertThat(area / (0.12 * 0.03)).isCloseTo(share, within(0.07));
  }

  @Test
  void anyPartingFromBottomToTopOfAPlateLocksNothing() {
    for (double height : new double[] {0.0, 1e-3, 2e-3, 4e-3}) {
      PartOrientation pose = pose(SampleSolid.plate(0.12, 0.03, 0.004), OptionalDouble.of(height));
      assertThat(pose.locked()).isZero();
      assertThat(pose.height()).isCloseTo(4e-3, within(1e-9));
      GapGrid grid = ShapeReport.of(pose.solid(), CELL).orElseThrow().map().grid();
      assertThat(UndercutAnalysis.of(pose.solid(), grid).area(Mark.OVERHANG)).isZero();
    }
  }

  @Test
  void aChosenPartingMovesTheHeightsOfTheMap() {
    PartOrientation low = pose(SampleSolid.plate(0.12, 0.03, 0.004), OptionalDouble.of(0.0));
    PartOrientation high = pose(SampleSolid.plate(0.12, 0.03, 0.004), OptionalDouble.of(4e-3));
    assertThat(height(low)).isCloseTo(2e-3, within(1e-6));
    assertThat(height(high)).isCloseTo(-2e-3, within(1e-6));
  }

  private static double height(PartOrientation pose) {
    ShapeReport survey = ShapeReport.of(pose.solid(), CELL).orElseThrow();
    GapGrid grid = survey.map().grid();
    int cell = grid.index(grid.nx() / 2, grid.ny() / 2);
    return survey.map().height(cell);
  }

  @Test
  void aPartingGrowsWithThePiece() {
    PartOrientation.Wish wish =
        new PartOrientation.Wish(
            Optional.empty(), Optional.empty(), false, OptionalDouble.of(2e-3));
    assertThat(wish.larger(1.01, 1e-3).parting().getAsDouble()).isCloseTo(3.02e-3, within(1e-12));
    assertThat(PartOrientation.Wish.NONE.larger(1.01, 1e-3)).isEqualTo(PartOrientation.Wish.NONE);
  }
}
