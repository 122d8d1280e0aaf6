package lastinch.ui.chart;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.io.StringWriter;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;
import lastinch.cases.units.DisplayUnits;
import lastinch.solver.result.PourResult;
import lastinch.solver.result.StopReason;
import lastinch.ui.HandMade;
import lastinch.ui.chart.paper.Look;
import lastinch.ui.words.Figures;
import lastinch.ui.words.Sentences;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
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
        .contains("Tail feather, flat, slow pour. How far the metal has got")
        .contains("time since first metal in the cup [s]</text")
        .contains("the piece, from its thick end [mm]</text")
        .contains("end gate</text")
        .contains("stops at 214 mm after 1.9 s: mush</text")
        .contains("viewBox");
    assertThat(svg(HandMade.slush(), "race", DisplayUnits.METRIC))
        .contains("metal gets there</text")
        .contains("turns to mush</text")
        .contains("along the piece, from the thick end [mm]</text")
        .contains("no metal</text");
  }

  @Test
  void axesFollowTheChosenUnits() throws IOException {
    assertThat(svg(HandMade.slush(), "race", DisplayUnits.INCH))
        .contains("along the piece, from the thick end [in]</text")
        .contains("ends at 8 7/16 in</text");
  }

  @ParameterizedTest
  @MethodSource("results")
  void everyPictureSaysOneThingOfThisPlanAndWhatMarksMean(PourResult result) throws IOException {
    ChartFiles charts = charts(result, DisplayUnits.METRIC);
    for (String name : charts.names()) {
      String message = charts.message(name);
      String caption = charts.caption(name);
      assertThat(message).as(name).endsWith(".").doesNotContain("{");
      assertThat(svg(result, name, DisplayUnits.METRIC))
          .contains("Tail feather, flat, slow pour.")
          .contains(">" + message.substring(0, 15))
          .contains(">" + caption.substring(0, Math.min(40, caption.length())));
      assertThat(charts.heading(name)).isNotBlank();
    }
  }

  @Test
  void picturesOfOnePlanSayDifferentThings() {
    ChartFiles charts = charts(HandMade.slush(), DisplayUnits.METRIC);
    List<String> messages = new ArrayList<>();
    charts.names().forEach(name -> messages.add(charts.message(name)));
    assertThat(messages).doesNotHaveDuplicates().hasSize(7);
  }

  @Test
  void noPictureOfABrokenCastingSaysThatItFills() {
    ChartFiles charts = charts(HandMade.coldShut(), DisplayUnits.METRIC);
    assertThat(charts.message("broken-out")).contains("2 parts").contains("do not join");
    assertThat(charts.message("race")).contains("too cold to join");
    assertThat(charts.message("mould")).doesNotContain("full");
  }

  @Test
  void captionsExplainNothingThatIsNotDrawn() {
    assertThat(charts(HandMade.slush(), DisplayUnits.METRIC).caption("broken-out"))
        .contains("Dashed");
    assertThat(charts(HandMade.filled(0.24, List.of()), DisplayUnits.METRIC).caption("broken-out"))
        .doesNotContain("Dashed");
  }

  @Test
  void aPourWithMetalInThePieceGivesAllSevenPictures() {
    assertThat(charts(HandMade.slush(), DisplayUnits.METRIC).names())
        .containsExactly("broken-out", "mould", "front", "race", "heat", "laps", "gates");
    assertThat(charts(HandMade.stoppedInGate(), DisplayUnits.METRIC).names())
        .containsExactly("broken-out", "mould", "front", "race");
  }

  @Test
  void numbersStandOnTheScaleOfTemperature() throws IOException {
    assertThat(svg(HandMade.slush(), "mould", DisplayUnits.METRIC))
        .contains("temperature of the metal [degC]")
        .contains(">1000</text")
        .contains("starts to freeze</text")
        .contains("does not flow any more</text")
        .contains("50 mm</text")
        .contains("sprue</text");
    assertThat(svg(HandMade.slush(), "mould", DisplayUnits.INCH))
        .contains("temperature of the metal [degF]")
        .contains(">1850</text")
        .contains("2 in</text");
  }

  @Test
  void partsThatDidNotJoinAreCounted() throws IOException {
    PourResult apart = HandMade.coldShut();
    assertThat(svg(apart, "broken-out", DisplayUnits.METRIC))
        .contains("does not join</text")
        .contains("It comes out in 2 parts: two streams do not join");
    assertThat(svg(HandMade.slush(), "broken-out", DisplayUnits.METRIC))
        .doesNotContain("It comes out in");
  }

  @Test
  void aRoundedRimIsDrawnIn() {
    long plain = ink(HandMade.filled(0.24, List.of()));
    long rounded = ink(HandMade.roundedEdges());
    // A rim of 2 mm on both sides over some length is a few per cent of the metal drawn.
    assertThat(rounded).isLessThan((long) (0.99 * plain));
  }

  private static long ink(PourResult result) {
    BufferedImage image = charts(result, DisplayUnits.METRIC).image("broken-out");
    long metal = 0;
    for (int y = 0; y < image.getHeight(); y++) {
      for (int x = 0; x < image.getWidth(); x++) {
        metal += image.getRGB(x, y) == Look.FROZEN.getRGB() ? 1 : 0;
      }
    }
    return metal;
  }

  @Test
  void thereIsNothingToRaceWhenNoMetalComes() throws IOException {
    assertThat(svg(HandMade.stoppedInGate(), "race", DisplayUnits.METRIC))
        .contains("No metal gets into the piece.</text")
        .contains("no metal</text");
  }

  @ParameterizedTest
  @EnumSource(Eyes.Kind.class)
  void wordsStandOutFromTheirGroundToEveryEyeAndInGrey(Eyes.Kind eyes) {
    for (Color ground : List.of(Look.PAPER, Look.BAND, Look.FROZEN)) {
      for (Color ink : List.of(Look.INK, Look.SECOND_INK, Look.FAINT_INK)) {
        assertThat(Eyes.contrast(eyes.sees(ink), eyes.sees(ground)))
            .isGreaterThanOrEqualTo(TEXT_CONTRAST);
      }
    }
    assertThat(Eyes.contrast(eyes.sees(Look.RULE), eyes.sees(Look.PAPER)))
        .isLessThan(TEXT_CONTRAST);
  }

  @Test
  void linesDifferInLightnessAndInStroke() {
    // Three to one is the least for parts of a picture: W3C, WCAG 2.1, criterion 1.4.11; here it
    // only helps the strokes, which differ by themselves.
    assertThat(Eyes.contrast(Look.INK, Look.SECOND_INK)).isGreaterThan(2.5);
    assertThat(((BasicStroke) Look.METAL).getDashArray()).isNull();
    assertThat(((BasicStroke) Look.FREEZING).getDashArray()).isNotNull();
    assertThat(Look.EARLIER.stream().map(s -> ((BasicStroke) s).getDashArray()))
        .doesNotContainNull();
    assertThat(
            Look.EARLIER.stream()
                .map(s -> Arrays.toString(((BasicStroke) s).getDashArray()))
                .distinct())
        .hasSameSizeAs(Look.EARLIER);
  }
}
