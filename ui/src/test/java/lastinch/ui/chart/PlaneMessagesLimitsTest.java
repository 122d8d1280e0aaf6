package lastinch.ui.chart;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import lastinch.cases.units.DisplayUnits;
import lastinch.solver.result.PlanePour;
import lastinch.solver.run.DryPour;
import lastinch.solver.run.RunObserver;
import lastinch.ui.HandMade;
import lastinch.ui.chart.paper.Picture;
import lastinch.ui.chart.plane.PlaneBrokenOut;
import lastinch.ui.chart.plane.PlaneMaps;
import lastinch.ui.words.Figures;
import lastinch.ui.words.PouredPlan;
import lastinch.ui.words.Sentences;
import org.junit.jupiter.api.Test;

/** What pictures of a pour over the plane say of it. */
class PlaneMessagesLimitsTest {
  private static final double SQUARE = 6e-3;

  @Test
  void everyPictureSaysOneThingAndExplainsOnlyWhatIsDrawn() {
    PouredPlan plan = HandMade.plan(HandMade.slush());
    PlanePour pour =
        DryPour.plane(
            plan.pourCase(), SQUARE, Double.POSITIVE_INFINITY, RunObserver.NONE, () -> false);
    PouredPlan poured = plan.with(pour.field(), Optional.empty());
    Sentences sentences = Sentences.english();
    Figures figures = new Figures(DisplayUnits.METRIC);
    Picture broken = PlaneBrokenOut.of(poured, pour.field(), sentences, figures);
    List<String> messages = new ArrayList<>(List.of(broken.message()));
    PlaneMaps.of(poured, pour.field(), sentences, figures)
        .values()
        .forEach(picture -> messages.add(picture.message()));
    assertThat(messages).doesNotHaveDuplicates().hasSizeGreaterThan(4).doesNotContain("");
    // one gate and one stream: nothing can have met
    assertThat(broken.caption()).contains("outline").doesNotContain("streams met");
  }
}
