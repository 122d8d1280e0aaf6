package lastinch.ui.chart;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.io.StringWriter;
import java.util.List;
import java.util.stream.Stream;
import lastinch.cases.units.DisplayUnits;
import lastinch.solver.result.PourResult;
import lastinch.solver.result.StopReason;
import lastinch.ui.HandMade;
import lastinch.ui.words.Figures;
import lastinch.ui.words.Sentences;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Charts as they come out: words as text, ink on paper, readable in a grey print. */
class ChartFilesTest {
  private static final Sentences SENTENCES = Sentences.english();

  /** Least contrast of text on its ground: W3C, WCAG 2.1, criterion 1.4.3. */
  private static final double TEXT_CONTRAST = 4.5;

  static Stream<PourResult> results() {
    return Stream.of(
        HandMade.slush(),
        HandMade.stopped(StopReason.AIR, 0.02),
        HandMade.stopped(StopReason.NO_METAL, 0.31),
        HandMade.stoppedInGate(),
        HandMade.filled(0.24, List.of()),
        HandMade.filledFromTip(),
        HandMade.stoppedFromTip(),
        HandMade.cancelled(),
        HandMade.brokeDown());
  }

  private static ChartFiles charts(PourResult result, DisplayUnits units) {
    return new ChartFiles(HandMade.plan(result), SENTENCES, new Figures(units));
  }

  private static String svg(PourResult result, String name, DisplayUnits units) throws IOException {
    StringWriter out = new StringWriter();
    charts(result, units).svg(name, out);
    return out.toString();
  }

  @ParameterizedTest
  @MethodSource("results")
  void everyEndingGivesAPictureWithInkOnIt(PourResult result) {
    ChartFiles charts = charts(result, DisplayUnits.METRIC);
    for (String name : charts.names()) {
      BufferedImage image = charts.image(name);
      int paper = Look.PAPER.getRGB();
      long inked = 0;
      for (int y = 0; y < image.getHeight(); y++) {
        for (int x = 0; x < image.getWidth(); x++) {
          inked += image.getRGB(x, y) == paper ? 0 : 1;
        }
      }
      double share = (double) inked / (image.getWidth() * image.getHeight());
      assertThat(share).as(name).isBetween(0.01, 0.75);
      assertThat(image.getRGB(2, 2)).isEqualTo(paper);
    }
  }

  @Test
  void wordsInAnSvgAreText() throws IOException {
    assertThat(svg(HandMade.slush(), "front", DisplayUnits.METRIC))
        .contains("Tail feather, flat, slow pour</text")
        .contains("time since first metal in the cup [s]</text")
        .contains("way from the cup, along the channels [mm]</text")
        .contains("end gate</text")
        .contains("stops at 214 mm after 1.9 s: mush</text")
        .contains("viewBox");
    assertThat(svg(HandMade.slush(), "race", DisplayUnits.METRIC))
        .contains("metal gets there</text")
        .contains("would have stopped here</text")
        .contains("along the piece, from the thick end [mm]</text")
        .contains("no metal</text");
  }

  @Test
  void axesFollowTheChosenUnits() throws IOException {
    assertThat(svg(HandMade.slush(), "race", DisplayUnits.INCH))
        .contains("along the piece, from the thick end [in]</text")
        .contains("stops at 8 7/16 in after 1.9 s: mush</text");
  }

  @Test
  void everyChartSaysWhatToSee() throws IOException {
    for (String name : charts(HandMade.slush(), DisplayUnits.METRIC).names()) {
      assertThat(svg(HandMade.slush(), name, DisplayUnits.METRIC))
          .contains("IT STOPS SHORT.")
          .containsPattern("(The line is the leading metal|Solid: when metal gets there)");
    }
  }

  @Test
  void thereIsNothingToRaceWhenNoMetalComes() throws IOException {
    assertThat(svg(HandMade.stoppedInGate(), "race", DisplayUnits.METRIC))
        .contains("No metal gets into the piece.</text");
  }

  @Test
  void wordsStandOutFromTheirGroundInAnyPrint() {
    for (Color ground : List.of(Look.PAPER, Look.BAND)) {
      for (Color ink : List.of(Look.INK, Look.SECOND_INK, Look.FAINT_INK)) {
        assertThat(contrast(ink, ground)).isGreaterThanOrEqualTo(TEXT_CONTRAST);
      }
    }
    assertThat(contrast(Look.RULE, Look.PAPER)).isLessThan(TEXT_CONTRAST);
  }

  @Test
  void theTwoLinesDifferInLightnessAndInStroke() {
    // Three to one is the least for parts of a picture: W3C, WCAG 2.1, criterion 1.4.11; here it
    // only helps the strokes, which differ by themselves.
    assertThat(contrast(Look.INK, Look.SECOND_INK)).isGreaterThan(2.5);
    assertThat(((BasicStroke) Look.METAL).getDashArray()).isNull();
    assertThat(((BasicStroke) Look.FREEZING).getDashArray()).isNotNull();
  }

  private static double contrast(Color one, Color other) {
    double a = luminance(one);
    double b = luminance(other);
    return (Math.max(a, b) + 0.05) / (Math.min(a, b) + 0.05);
  }

  /** Relative luminance of an sRGB colour: W3C, WCAG 2.1, definitions. */
  private static double luminance(Color c) {
    return 0.2126 * linear(c.getRed())
        + 0.7152 * linear(c.getGreen())
        + 0.0722 * linear(c.getBlue());
  }

  private static double linear(int level) {
    double v = level / 255.0;
    return v <= 0.04045 ? v / 12.92 : Math.pow((v + 0.055) / 1.055, 2.4);
  }
}
