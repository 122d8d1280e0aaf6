package lastinch.ui.chart;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.StringWriter;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import lastinch.cases.plan.Plan;
import lastinch.cases.units.DisplayUnits;
import lastinch.solver.diagnosis.HeatLossBudget;
import lastinch.solver.filling.RunObserver;
import lastinch.solver.result.PourResult;
import lastinch.solver.run.DryPour;
import lastinch.ui.Studied;
import lastinch.ui.words.Figures;
import lastinch.ui.words.Sentences;
import lastinch.ui.words.pour.Explained;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Blocks of heat: each as large as what its place ate, and named. */
class HeatBlocksTest {
  private static final Sentences SENTENCES = Sentences.english();
  private static final Figures FIGURES = new Figures(DisplayUnits.METRIC);
  private static final Pattern RECTANGLE =
      Pattern.compile("<rect[^>]*?height=\"([0-9.]+)\"[^>]*?width=\"([0-9.]+)\"");

  private static Explained explained(String file) {
    Plan plan = Studied.plan(file);
    PourResult result = DryPour.run(plan.pourCase(), RunObserver.NONE, () -> false);
    return new Explained(
        plan,
        file,
        result,
        HeatLossBudget.of(plan.pourCase(), result),
        Studied.least(Studied.plan("feather-sand-flat.yaml"), j -> -0.2, 0.2));
  }

  private static String svg(Explained why) throws IOException {
    StringWriter out = new StringWriter();
    new StudyCharts(SENTENCES, FIGURES).explained(why).svg("heat-eaten", out);
    return out.toString();
  }

  private static List<Double> areas(String svg) {
    List<Double> areas = new ArrayList<>();
    Matcher rectangles = RECTANGLE.matcher(svg);
    while (rectangles.find()) {
      areas.add(Double.parseDouble(rectangles.group(1)) * Double.parseDouble(rectangles.group(2)));
    }
    return areas;
  }

  @ParameterizedTest
  @ValueSource(
      strings = {"feather-sand-flat.yaml", "feather-sand-upright.yaml", "trivet-spokes-meet.yaml"})
  void everyPlaceHasABlockAsLargeAsItsHeat(String file) throws IOException {
    Explained why = explained(file);
    String svg = svg(why);
    List<Double> areas = areas(svg);
    // the key is the only square; it stands for ten degrees' worth
    double perDegree = key(svg) / 10.0;
    for (HeatLossBudget.Line line : why.account().lines()) {
      if (line.kind() != HeatLossBudget.Kind.FROM_BEHIND) {
        double wanted = perDegree * line.degrees();
        // coordinates in the file have four digits, a sprue's block is 4 dots high
        assertThat(areas).as(line.toString()).anyMatch(a -> Math.abs(a - wanted) < 2e-3 * wanted);
        assertThat(svg).contains(FIGURES.degrees(line.degrees()));
      }
    }
  }

  private static double key(String svg) {
    Matcher rectangles = RECTANGLE.matcher(svg);
    while (rectangles.find()) {
      double tall = Double.parseDouble(rectangles.group(1));
      if (Math.abs(tall - Double.parseDouble(rectangles.group(2))) < 1e-9 && tall > 10.0) {
        return tall * tall;
      }
    }
    throw new AssertionError("no key");
  }

  @Test
  void namesEveryPlaceAndWhatCameFromBehind() throws IOException {
    assertThat(svg(explained("feather-sand-flat.yaml")))
        .contains(">skimming and carrying, 20 s</text")
        .contains(">sprue, 15</text")
        .contains(">piece 0 to 80 mm</text")
        .contains(">given back by hotter metal behind, along the way: 282</text")
        .contains(">10 degrees' worth of heat</text")
        .contains(">50 mm</text");
  }
}
