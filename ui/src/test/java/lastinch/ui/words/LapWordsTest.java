package lastinch.ui.words;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import lastinch.cases.units.DisplayUnits;
import lastinch.solver.result.LapStretch;
import lastinch.ui.HandMade;
import lastinch.ui.words.pour.PourText;
import org.junit.jupiter.api.Test;

/** Lap lines in the verdict: a boss lies before 0 mm and is named, not numbered. */
class LapWordsTest {
  private static final LapStretch IN_BOSS = new LapStretch("boss", 0.0, 0.04, 0.9);
  private static final LapStretch IN_PIECE = new LapStretch("piece", 0.12, 0.2, 0.8);

  private static String verdict(LapStretch... laps) {
    PourText text = new PourText(Sentences.english(), new Figures(DisplayUnits.METRIC));
    return String.join(
        " ", text.full(HandMade.plan(HandMade.filled(0.4, List.of(), List.of(laps)))));
  }

  @Test
  void whereTheyShowInThePieceIsToldByItsRuler() {
    assertThat(verdict(IN_BOSS, IN_PIECE).replaceAll("\\s+", " "))
        .contains("Lap lines show from 120 mm on.");
  }

  @Test
  void whereTheyShowInTheBossAloneTheBossIsNamed() {
    assertThat(verdict(IN_BOSS).replaceAll("\\s+", " "))
        .contains("Lap lines show in the boss.")
        .doesNotContain("-40 mm");
  }
}
