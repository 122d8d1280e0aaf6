package lastinch.solver.geometry.cavity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import lastinch.solver.casting.GapMap;
import lastinch.solver.casting.GapMap.Kind;
import lastinch.solver.casting.PourCase;
import lastinch.solver.casting.SectionForm;
import lastinch.solver.run.SampleJob;
import org.junit.jupiter.api.Test;

/** Volume and wall of described shapes against their formulas. */
class SweptMapExactSolutionTest {
  private static final double CELL = 1e-3;

  /** Sizes do not fall on cells, so every rim cuts through cells. */
  private static PourCase strip(SectionForm form) {
    return SampleJob.strip(0.1003, 0.0307, 0.003).section(form).build();
  }

  private static double pieceWall(GapMap map) {
    double sum = 0.0;
    for (int c = 0; c < map.grid().size(); c++) {
      boolean piece = map.isOpen(c) && map.parts().get(map.part(c)).kind() == Kind.PIECE;
      sum += piece ? map.wall(c) : 0.0;
    }
    return sum;
  }

  @Test
  void aFlatStripHasTheVolumeAndWallOfABox() {
    GapMap map = CavityMap.of(strip(SectionForm.FLAT), CELL);
    // small squares of an eighth of a cell: half of one at each rim is at most 0.25 % here
    assertThat(map.volumeOf(Kind.PIECE))
        .isCloseTo(0.1003 * 0.0307 * 0.003, byShare(0.0025, 9.2e-6));
    double wall = 2 * (0.1003 * 0.0307 + 0.003 * (0.1003 + 0.0307));
    assertThat(pieceWall(map)).isCloseTo(wall, byShare(0.003, wall));
  }

  @Test
  void aLensIsTwoThirdsOfItsBox() {
    GapMap map = CavityMap.of(strip(SectionForm.LENS), CELL);
    double volume = 2.0 / 3.0 * 0.1003 * 0.0307 * 0.003;
    assertThat(map.volumeOf(Kind.PIECE)).isCloseTo(volume, byShare(0.0025, volume));
    double slender = 0.003 / 0.0307;
    double wall =
        2.0 * 0.0307 * (1.0 + 2.0 / 3.0 * slender * slender) * 0.1003 + 2 * volume / 0.1003;
    assertThat(pieceWall(map)).isCloseTo(wall, byShare(0.005, wall));
  }

  @Test
  void aMeanGapTakenForTheMiddleOneWouldBeSeen() {
    GapMap map = CavityMap.of(strip(SectionForm.LENS), CELL);
    double box = 0.1003 * 0.0307 * 0.003;
    assertThat(Math.abs(map.volumeOf(Kind.PIECE) / box - 1.0)).isGreaterThan(0.3);
  }

  @Test
  void facesCarryTheSectionOfTheStrip() {
    GapMap map = CavityMap.of(strip(SectionForm.FLAT), CELL);
    int i = map.grid().column(0.05);
    double section = 0.0;
    for (int j = 0; j < map.ny(); j++) {
      section += map.faceX(i, j);
    }
    assertThat(section).isCloseTo(0.0307 * 0.003, byShare(0.005, 0.0307 * 0.003));
  }

  private static org.assertj.core.data.Offset<Double> byShare(double share, double of) {
    return within(share * of);
  }
}
