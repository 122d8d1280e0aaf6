package lastinch.ui.words;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import lastinch.cases.units.DisplayUnits;
import lastinch.solver.casting.GapMap;
import lastinch.solver.geometry.cavity.CavityMap;
import lastinch.solver.result.EdgeStretch;
import lastinch.solver.result.PlaneField;
import lastinch.solver.result.StopReason;
import lastinch.ui.HandMade;
import lastinch.ui.words.pour.PourText;
import lastinch.ui.words.study.HowPoured;
import org.junit.jupiter.api.Test;

/** Answers that only a pour over the plane can give. */
class PlaneWordsLimitsTest {
  private static final double LENGTH = 0.32;

  private static final PourText TEXT =
      new PourText(Sentences.english(), new Figures(DisplayUnits.METRIC));

  private static PouredPlan overThePlane(PouredPlan plan) {
    GapMap map = CavityMap.of(plan.pourCase(), 5e-3);
    PlaneField.Left left = new PlaneField.Left(map.grid().size());
    return plan.with(new PlaneField(map, List.of(), left, List.of()), Optional.empty());
  }

  /** Metal from end to end with a hole beside its middle: words and bar say the same. */
  @Test
  void aHoleIsAHoleInTheWordsAndInTheBar() {
    PouredPlan along = HandMade.plan(HandMade.stopped(StopReason.CAPILLARITY, LENGTH));
    String text = String.join("\n", TEXT.full(overThePlane(along)));
    assertThat(text).contains("leaves a hole").contains("o hole").contains("=====================");
    assertThat(text).doesNotContain("blank: no metal").doesNotContain("~) rounded end");
  }

  @Test
  void theNextCommandPoursTheSameWay() {
    PouredPlan plan = HandMade.plan(HandMade.stopped(StopReason.CAPILLARITY, 0.2));
    HowPoured how = overThePlane(plan).how();
    assertThat(how.typed("leaf.yaml", HowPoured.USUAL_SQUARE))
        .isEqualTo("leaf.yaml --solver plane --square 5mm");
    assertThat(how.typed("leaf.yaml", 5e-3)).isEqualTo("leaf.yaml --solver plane");
    assertThat(plan.how().typed("leaf.yaml", 5e-3)).isEqualTo("leaf.yaml");
  }

  /** A pour that broke down has no verdict, but it may have edges. */
  @Test
  void aPourThatBrokeDownWithARoundedEdgeIsTold() {
    List<EdgeStretch> edges = List.of(new EdgeStretch(0.0, 0.1, EdgeStretch.State.ROUNDED));
    List<String> lines = TEXT.full(HandMade.plan(HandMade.brokeDown(edges)));
    assertThat(String.join(" ", lines)).contains("1.6 s");
  }
}
