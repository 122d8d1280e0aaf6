package lastinch.ui.words;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import lastinch.cases.plan.Plan;
import lastinch.cases.units.DisplayUnits;
import lastinch.solver.casting.PourCase;
import lastinch.ui.Studied;
import lastinch.ui.words.study.BlameText;
import lastinch.ui.words.study.CompareText;
import lastinch.ui.words.study.GatesText;
import lastinch.ui.words.study.HowPoured;
import lastinch.ui.words.study.LeastText;
import lastinch.ui.words.study.RoomText;
import lastinch.ui.words.study.SureText;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Whole answers of studies, word for word, with outcomes by law. The texts were read by eye. */
class GoldenStudyTest {
  private static final Plan FLAT = Studied.plan("feather-sand-flat.yaml");
  private static final Plan TRIVET = Studied.plan("trivet-spokes-meet.yaml");

  /** Every golden text with what it is made from. */
  static Map<String, List<String>> texts() {
    Sentences sentences = Sentences.english();
    SureText mm = new SureText(sentences, new Figures(DisplayUnits.METRIC));
    SureText inch = new SureText(sentences, new Figures(DisplayUnits.INCH));
    Map<String, List<String>> texts = new LinkedHashMap<>();
    texts.put("sure-some", mm.full(FLAT, "f.yaml", Studied.sure(FLAT, j -> late(j, 6.5), false)));
    texts.put(
        "sure-in-inches", inch.full(FLAT, "f.yaml", Studied.sure(FLAT, j -> late(j, 6.5), true)));
    texts.put("sure-never", mm.full(FLAT, "f.yaml", Studied.sure(FLAT, j -> late(j, 1.0), false)));
    texts.put(
        "sure-always", mm.full(FLAT, "f.yaml", Studied.sure(FLAT, j -> late(j, 20.0), false)));
    texts.put(
        "sure-limbs",
        mm.full(
            TRIVET,
            "t.yaml",
            Studied.sure(TRIVET, j -> j.metal().reading().value() > 1435.0 ? 0.2 : -0.3, false)));
    BlameText blame = new BlameText(sentences, new Figures(DisplayUnits.METRIC));
    texts.put("found-alike", blame.full(FLAT, Studied.blame(FLAT, j -> slowOrCold(j), 0.18)));
    texts.put("found-as-planned", blame.full(FLAT, Studied.blame(FLAT, j -> -0.2, 0.256)));
    texts.put("found-unexplained", blame.full(FLAT, Studied.blame(FLAT, j -> -0.2, 0.1)));
    GatesText gates = new GatesText(sentences, new Figures(DisplayUnits.METRIC));
    texts.put(
        "gates-two",
        gates.full(FLAT, Studied.gates(FLAT, j -> j.gating().gates().size() == 2 ? 0.4 : -0.1)));
    texts.put("gates-none", gates.full(FLAT, Studied.gates(FLAT, j -> -0.3)));
    return texts;
  }

  /** Every answer of a study, as much as is printed on a screen. */
  static Map<String, List<String>> screens() {
    Sentences sentences = Sentences.english();
    Figures mm = new Figures(DisplayUnits.METRIC);
    Map<String, List<String>> screens = new LinkedHashMap<>();
    SureText sure = new SureText(sentences, mm);
    screens.put("sure", sure.screen(FLAT, "f.yaml", Studied.sure(FLAT, j -> late(j, 6.5), false)));
    LeastText least = new LeastText(sentences, mm);
    screens.put(
        "least",
        least.screen(
            FLAT, "f.yaml", Studied.least(FLAT, j -> late(j, 5.0), 0.2), Optional.empty()));
    screens.put(
        "least-already",
        least.screen(
            FLAT, "f.yaml", Studied.least(FLAT, j -> late(j, 9.0), 0.2), Optional.empty()));
    screens.put(
        "least-none",
        least.screen(
            FLAT, "f.yaml", Studied.least(FLAT, j -> late(j, 0.1), 0.2), Optional.empty()));
    screens.put(
        "least-two",
        least.screen(
            FLAT,
            "cases/demo/feather-sand-flat.yaml",
            Studied.least(FLAT, j -> slowOrCold(j), 0.2),
            Optional.empty()));
    screens.put(
        "room", new RoomText(sentences, mm).screen(FLAT, Studied.room(FLAT, j -> late(j, 7.0))));
    screens.put(
        "compare",
        new CompareText(sentences, mm)
            .screen(
                Studied.compared(
                    j -> late(j, 5.0), "feather-sand-flat.yaml", "feather-sand-tilted.yaml"),
                HowPoured.ALONG));
    screens.put(
        "found",
        new BlameText(sentences, mm).screen(FLAT, Studied.blame(FLAT, j -> slowOrCold(j), 0.18)));
    screens.put(
        "gates",
        new GatesText(sentences, mm)
            .screen(FLAT, Studied.gates(FLAT, j -> j.gating().gates().size() == 2 ? 0.4 : -0.1)));
    return screens;
  }

  static Stream<String> screenNames() {
    return screens().keySet().stream();
  }

  /** About 24 lines is what a small terminal shows; the cautions may grow by some. */
  @ParameterizedTest
  @MethodSource("screenNames")
  void aScreenShowsTheAnswerFirstAndFits(String name) {
    List<String> lines = screens().get(name);
    assertThat(lines).allMatch(line -> line.matches("[ -~]{0,78}"));
    assertThat(lines).hasSizeLessThanOrEqualTo(30);
    // the heading with the name of the plan comes after the answer
    assertThat(lines.get(0)).doesNotContain("Tail feather");
  }

  private static double slowOrCold(PourCase job) {
    double cold = (1423.15 - job.metal().reading().value()) / 100.0;
    return -0.1 + 0.1 * (6.0 - Studied.seconds(job)) - 0.3 * cold;
  }

  private static double late(PourCase job, double limit) {
    return 0.1 * (limit - Studied.seconds(job));
  }

  static Stream<String> names() {
    return texts().keySet().stream();
  }

  @ParameterizedTest
  @MethodSource("names")
  void textIsAsItWasReadByEye(String name) throws IOException {
    try (InputStream in = GoldenStudyTest.class.getResourceAsStream("golden/" + name + ".txt")) {
      assertThat(in).as("golden/%s.txt", name).isNotNull();
      String golden = new String(in.readAllBytes(), StandardCharsets.US_ASCII);
      assertThat(String.join("\n", texts().get(name)) + "\n").isEqualTo(golden.replace("\r", ""));
    }
  }

  @ParameterizedTest
  @MethodSource("names")
  void linesArePlainAndFitATerminal(String name) {
    assertThat(texts().get(name)).allMatch(line -> line.matches("[ -~]{0,78}"));
  }
}
