package lastinch.ui.words;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Stream;
import lastinch.cases.units.DisplayUnits;
import lastinch.solver.casting.Checking;
import lastinch.solver.result.PourResult;
import lastinch.solver.result.StopReason;
import lastinch.solver.uncertainty.UncertainInput;
import lastinch.ui.HandMade;
import lastinch.ui.HandMadeBands;
import lastinch.ui.words.pour.PourText;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Whole answers, word for word, one for every ending. The texts were read by eye; a change of one
 * is a change of what people are told.
 */
class GoldenTextTest {
  private static final List<String> NOT_FOR_PEOPLE =
      List.of(
          "weld",
          "proof",
          "window",
          "attitude",
          "superheat",
          "liquidus",
          "solidus",
          "solid fraction",
          "fraction",
          "f_stop",
          "conductance",
          "passage",
          "network",
          "plane",
          "cell",
          "station",
          "stations",
          "margin",
          "account",
          "accounts",
          "finding",
          "severity",
          "limiter",
          "closing error",
          "charge",
          "lens",
          "ingate",
          "marginal",
          "posterior",
          "sobol",
          "node",
          "enthalpy",
          "solver",
          "iteration",
          "grid",
          "mesh",
          "viscosity",
          "capillarity",
          "capillary",
          "null",
          "nan",
          "infinity",
          "exception");

  /** What a person types, and what a grid of squares is called. */
  private static final String TYPED =
      "--solver plane|network \\(default\\)|\\bplane:|\\bwith plane\\b|\\bgrid (of )? ?squares|flat, lens or round|\\blens: thin";

  private static PouredPlan plan(PourResult result) {
    return HandMade.plan(result);
  }

  /** Every golden text with what it is made from. */
  static Map<String, List<String>> texts() {
    PourText mm = new PourText(Sentences.english(), new Figures(DisplayUnits.METRIC));
    PourText inch = new PourText(Sentences.english(), new Figures(DisplayUnits.INCH));
    Map<String, List<String>> texts = new LinkedHashMap<>();
    texts.put("slush-in-full", mm.full(plan(HandMade.slush())));
    texts.put("slush-in-inches", inch.full(plan(HandMade.slush())));
    for (StopReason reason : StopReason.values()) {
      texts.put("stopped-" + Reasons.key(reason), mm.full(plan(HandMade.stopped(reason, 0.18))));
    }
    texts.put("stopped-in-gate", mm.full(plan(HandMade.stoppedInGate())));
    texts.put("fills", mm.full(plan(HandMade.filled(0.24, List.of()))));
    texts.put(
        "just-fills-and-watch", mm.full(plan(HandMade.filled(0.06, HandMade.everyFinding()))));
    texts.put("fills-from-tip", mm.full(plan(HandMade.filledFromTip())));
    texts.put("stops-from-tip", mm.full(plan(HandMade.stoppedFromTip())));
    texts.put("hole", mm.full(plan(HandMade.hole())));
    texts.put("hole-one-screen", mm.brief(plan(HandMade.hole())));
    texts.put("edges-rounded", mm.full(plan(HandMade.roundedEdges())));
    texts.put("cancelled", mm.full(plan(HandMade.cancelled())));
    texts.put("broke-down", mm.full(plan(HandMade.brokeDown())));
    texts.put("checking", mm.full(HandMade.plan(HandMade.pourCase(checking()), HandMade.slush())));
    texts.put("may-stop-short", mm.full(otherDays(HandMade.slush())));
    texts.put("stops-short-on-all-days", mm.full(allDays(HandMade.slush(), HandMade.slush())));
    texts.put("likely-fills", mm.full(otherDays(HandMade.filled(0.24, List.of()))));
    PourResult easy = HandMade.filled(0.31, List.of());
    texts.put("fills-on-all-days", mm.full(allDays(HandMade.filled(0.24, List.of()), easy)));
    texts.put("edges-rounded-on-all-days", mm.full(allDays(HandMade.roundedEdges(), easy)));
    texts.put(
        "just-fills-on-an-unlucky-day",
        mm.full(allDays(HandMade.filled(0.24, List.of()), HandMade.filled(0.06, List.of()))));
    texts.put("one-screen-stops", mm.brief(otherDays(HandMade.slush())));
    texts.put("one-screen-inches", inch.brief(otherDays(HandMade.slush())));
    texts.put("one-screen-fills", mm.brief(allDays(HandMade.filled(0.24, List.of()), easy)));
    texts.put("one-screen-watch", mm.brief(plan(HandMade.filled(0.06, HandMade.everyFinding()))));
    texts.put("likely-fills-quiet", mm.verdict(otherDays(HandMade.filled(0.24, List.of()))));
    return texts;
  }

  private static PouredPlan otherDays(PourResult best) {
    return HandMadeBands.plan(
        best, HandMade.stopped(StopReason.SLUSH, 0.09), HandMade.filled(0.4, List.of()));
  }

  private static PouredPlan allDays(PourResult best, PourResult other) {
    return HandMadeBands.plan(best, other, other);
  }

  @ParameterizedTest
  @EnumSource(UncertainInput.class)
  void everyUnknownHasItsWordsAndWhatCanBeMeasuredSaysHow(UncertainInput unknown) {
    PourText mm = new PourText(Sentences.english(), new Figures(DisplayUnits.METRIC));
    List<String> text = mm.full(HandMadeBands.plan(HandMade.slush(), HandMade.slush(), unknown));
    assertThat(text).anyMatch(line -> line.contains("It depends most on"));
    assertThat(text.stream().anyMatch(line -> line.contains("Find out first")))
        .isEqualTo(unknown.effort() != UncertainInput.Effort.NONE);
  }

  static Stream<String> names() {
    return texts().keySet().stream();
  }

  private static Checking checking() {
    return Checking.NONE.with(Checking.Figure.CELL_LENGTH, 5e-3);
  }

  @ParameterizedTest
  @MethodSource("names")
  void textIsAsItWasReadByEye(String name) throws IOException {
    try (InputStream in = GoldenTextTest.class.getResourceAsStream("golden/" + name + ".txt")) {
      assertThat(in).as("golden/%s.txt", name).isNotNull();
      String golden = new String(in.readAllBytes(), StandardCharsets.US_ASCII);
      assertThat(String.join("\n", texts().get(name)) + "\n").isEqualTo(golden.replace("\r", ""));
    }
  }

  @ParameterizedTest
  @MethodSource("names")
  void noWordThatACasterWouldNotKnow(String name) {
    String text = String.join("\n", texts().get(name)).toLowerCase(Locale.ROOT);
    for (String word : NOT_FOR_PEOPLE) {
      assertThat(text).doesNotContainPattern("\\b" + word + "\\b");
    }
  }

  @Test
  void noSentenceHasAWordThatACasterWouldNotKnow() {
    Sentences sentences = Sentences.english();
    for (String key : sentences.keys()) {
      String text = sentences.bundle().getString(key).toLowerCase(Locale.ROOT);
      String bare = text.replaceAll("\\{[a-z]+\\}", "").replaceAll(TYPED, "");
      for (String word : NOT_FOR_PEOPLE) {
        assertThat(bare).as(key).doesNotContainPattern("\\b" + word + "\\b");
      }
      assertThat(bare).as(key).doesNotContainPattern("\\bsafely\\b|\\bis safe\\b(?! to pour)");
    }
  }

  @ParameterizedTest
  @MethodSource("names")
  void linesArePlainAndFitATerminal(String name) {
    assertThat(texts().get(name)).allMatch(line -> line.matches("[ -~]{0,78}"));
  }

  @Test
  void whatBreaksApartIsNotToldHowMuchFurtherItWouldHaveFilled() {
    PourText mm = new PourText(Sentences.english(), new Figures(DisplayUnits.METRIC));
    String text = String.join(" ", mm.brief(plan(HandMade.coldShut())));
    assertThat(text).contains("What limits it:").doesNotContain("longer");
  }

  @Test
  void theShortAnswerFitsOneScreen() {
    assertThat(texts().entrySet())
        .filteredOn(text -> text.getKey().startsWith("one-screen"))
        .hasSize(4)
        .allSatisfy(text -> assertThat(text.getValue()).hasSizeLessThanOrEqualTo(24));
  }

  @Test
  void everyFullAnswerCarriesTheCare() {
    assertThat(texts().entrySet())
        .filteredOn(text -> !text.getKey().endsWith("-quiet"))
        .allSatisfy(
            text ->
                assertThat(String.join(" ", text.getValue()).replaceAll(" +", " "))
                    .contains("Water and molten metal explode")
                    .containsAnyOf(
                        "No forecast makes a pour safe; local codes first.",
                        "never that it is safe to pour. Local codes, licensed trades and your"));
  }

  @Test
  void theMachinesLanguageChangesNothing() {
    Map<String, List<String>> before = texts();
    Locale machine = Locale.getDefault();
    try {
      for (String tag : List.of("de-DE", "tr-TR", "ar-EG", "hi-IN-u-nu-deva")) {
        Locale.setDefault(Locale.forLanguageTag(tag));
        assertThat(texts()).as(tag).isEqualTo(before);
      }
    } finally {
      Locale.setDefault(machine);
    }
  }

  @Test
  void openingsOfDifferentEndingsDiffer() {
    Map<String, List<String>> texts = texts();
    List<String> stops =
        Arrays.stream(StopReason.values())
            .map(r -> String.join(" ", texts.get("stopped-" + Reasons.key(r))))
            .map(t -> t.substring(t.indexOf("1.9 s"), t.indexOf("Why it stops")))
            .toList();
    assertThat(stops).doesNotHaveDuplicates();
  }
}
