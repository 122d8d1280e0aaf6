package lastinch.ui.chart;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import lastinch.cases.units.DisplayUnits;
import lastinch.solver.filling.Phase;
import lastinch.solver.filling.PlaneSettings;
import lastinch.solver.filling.RunObserver;
import lastinch.solver.result.Poured;
import lastinch.solver.run.DryPour;
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
    Poured pour =
        DryPour.run(
            DryPour.plane(PlaneSettings.squares(SQUARE)),
            plan.pourCase(),
            Phase.FILLING,
            RunObserver.NONE,
            () -> false);
    PouredPlan poured = plan.with(pour.field().orElseThrow(), Optional.empty());
    Sentences sentences = Sentences.english();
    Figures figures = new Figures(DisplayUnits.METRIC);
    Picture broken = PlaneBrokenOut.of(poured, pour.field().orElseThrow(), sentences, figures);
    List<String> messages = new ArrayList<>(List.of(broken.message()));
    PlaneMaps.of(poured, pour.field().orElseThrow(), sentences, figures)
        .values()
        .forEach(picture -> messages.add(picture.message()));
    assertThat(messages).doesNotHaveDuplicates().hasSizeGreaterThan(4).doesNotContain("");
    // one gate and one stream: nothing can have met
    assertThat(broken.caption()).contains("outline").doesNotContain("streams met");
  }
}
