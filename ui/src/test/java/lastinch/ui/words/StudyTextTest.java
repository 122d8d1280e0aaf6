package lastinch.ui.words;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import lastinch.cases.plan.Plan;
import lastinch.cases.units.DisplayUnits;
import lastinch.solver.diagnosis.HeatLossBudget;
import lastinch.solver.filling.RunObserver;
import lastinch.solver.levers.Bound;
import lastinch.solver.levers.Lever;
import lastinch.solver.levers.LeverEntry;
import lastinch.solver.levers.Levers;
import lastinch.solver.levers.ParameterUnit;
import lastinch.solver.result.PassageRecord;
import lastinch.solver.result.PourResult;
import lastinch.solver.run.DryPour;
import lastinch.solver.study.LookOut;
import lastinch.ui.HandMade;
import lastinch.ui.HandMadeBands;
import lastinch.ui.Studied;
import lastinch.ui.words.pour.Explained;
import lastinch.ui.words.pour.PourText;
import lastinch.ui.words.pour.VerdictSentence;
import lastinch.ui.words.study.CompareCells;
import lastinch.ui.words.study.CompareText;
import lastinch.ui.words.study.Compared;
import lastinch.ui.words.study.HowPoured;
import lastinch.ui.words.study.LeastText;
import lastinch.ui.words.study.LeverWords;
import lastinch.ui.words.study.RoomText;
import lastinch.ui.words.study.WhyText;
import org.junit.jupiter.api.Test;

/** Printed answers of studies, with outcomes by law so that they are known. */
class StudyTextTest {
  private static final Sentences SENTENCES = Sentences.english();
  private static final Figures METRIC = new Figures(DisplayUnits.METRIC);
  private static final Plan FLAT = Studied.plan("feather-sand-flat.yaml");

  @Test
  void theSmallestChangeIsPrintedWithTheRunJustShortOfIt() {
    List<String> lines =
        new LeastText(SENTENCES, METRIC)
            .full(
                FLAT,
                "feather.yaml",
                Studied.least(FLAT, j -> 0.1 * (5.0 - Studied.seconds(j)), 0.2),
                Optional.empty());
    assertThat(String.join(" ", lines.subList(0, 3)))
        .startsWith("My pick for next time: pour faster, 6.0 -> 3.0 s: then it fills with 20 %")
        .contains("as planned it stops 32 mm short");
    assertThat(lines)
        .contains(" 1  pour faster  6.0 -> 3.0 s     20 %       3.1 s: 19 %       5.1 s");
    assertThat(String.join(" ", lines)).contains("makes a pour safe");
  }

  @Test
  void whileTheHandHoldsBackTheWordsSayThatThickerAndTallerAddLittle() {
    String text =
        String.join(
            " ",
            new LeastText(SENTENCES, METRIC)
                .full(
                    FLAT,
                    "feather.yaml",
                    Studied.least(FLAT, j -> 0.1 * (5.0 - Studied.seconds(j)), 0.2),
                    Optional.empty()));
    assertThat(text)
        .contains("No help either way:")
        .contains("sprue height")
        .contains("overall thickness")
        .contains("While your pour is the limit, thicker sections and more head");
  }

  @Test
  void whatIsMetAlreadySaysHowFarEachThingMaySlip() {
    List<String> lines =
        new LeastText(SENTENCES, METRIC)
            .full(
                FLAT,
                "feather.yaml",
                Studied.least(FLAT, j -> 0.05 * (12.0 - Studied.seconds(j)), 0.2),
                Optional.empty());
    assertThat(String.join(" ", lines.subList(0, 3)))
        .startsWith("As planned it meets the target")
        .contains("The first to give way: pour slower, 6.0 -> 8.0 s. At 8.1 s it fills with just");
    assertThat(String.join(" ", lines))
        .contains("1  pour slower  6.0 -> 8.0 s")
        .contains("8.1 s: under 20 %");
  }

  @Test
  void theMapShowsThePlanTheMarksAndTheLimitThatHatchesIt() {
    List<String> lines =
        new RoomText(SENTENCES, METRIC)
            .full(FLAT, Studied.room(FLAT, j -> 0.1 * (7.0 - Studied.seconds(j))));
    assertThat(lines).contains("   1300 degC | / / / / / /");
    assertThat(lines).contains("   1100 degC | # # # # . .");
    assertThat(String.join(" ", lines))
        .contains("metal temperature 1100 degC: it fills up to 7.0 s.")
        .contains("It still fills with nothing but this changed: pour slower, 7.0 s; at 7.1 s it")
        .contains("metal temperature: no higher than 1250 degC; above it metal picks up gas");
    assertThat(lines).anyMatch(l -> l.contains("X"));
  }

  @Test
  void theTableHasARowForEveryRunOfTheGrid() {
    List<String> rows =
        new RoomText(SENTENCES, METRIC)
            .table(Studied.room(FLAT, j -> 0.1 * (7.0 - Studied.seconds(j))));
    assertThat(rows).hasSize(1 + 7 * 6);
    assertThat(rows.get(0)).startsWith("pour time [s],metal temperature [degC],outcome");
    assertThat(rows.get(1)).startsWith("2,1100,fills,50,,");
    assertThat(rows.get(7)).startsWith("8,1100,stops,,32,");
    assertThat(rows.get(42)).endsWith(",no");
  }

  @Test
  void aComparisonSaysWhatDiffersWhatCameOfItAndWhatMadeTheDifference() {
    List<String> lines =
        new CompareText(SENTENCES, METRIC)
            .full(
                Studied.compared(
                    j -> 0.1 * (5.0 - Studied.seconds(j)),
                    "feather-sand-flat.yaml",
                    "feather-sand-tilted.yaml"),
                HowPoured.ALONG);
    String text = String.join("\n", lines);
    assertThat(text)
        .contains("2 WAYS TO POUR IT")
        .containsPattern("crucible empties in +6.0 s \\+- 30 % +1.6 s \\+- 30 %")
        .containsPattern("RESULT +STOPS at 288 mm +FILLS")
        .contains("What separates A from B is the pouring speed.")
        .contains("Made no difference:")
        .contains("If it were my bench: B;")
        .doesNotContain("end gate name");
    assertThat(lines).allMatch(l -> l.length() <= Page.WIDTH);
  }

  @Test
  void everyPartThatCanBeSwappedHasItsWords() {
    Studied.compared(
            j -> 0.1 * (5.0 - Studied.seconds(j)),
            "feather-sand-flat.yaml",
            "feather-investment-silicon.yaml")
        .differences()
        .get(0)
        .swaps()
        .forEach(s -> assertThat(SENTENCES.has("part." + s.key())).as(s.key()).isTrue());
  }

  @Test
  void everyLeverHasItsWords() {
    for (LeverEntry entry : Levers.ALL) {
      assertThat(SENTENCES.has("lever." + entry.key())).as(entry.key()).isTrue();
    }
    for (Lever lever : Studied.levers(FLAT)) {
      if (lever.unit() != ParameterUnit.CHOICE) {
        assertThat(SENTENCES.has("lever." + lever.key() + ".more")).as(lever.key()).isTrue();
        assertThat(SENTENCES.has("lever." + lever.key() + ".less")).as(lever.key()).isTrue();
      }
    }
    for (Bound.Reason reason : Bound.Reason.values()) {
      assertThat(SENTENCES.has("bound." + reason.name())).as(reason.name()).isTrue();
    }
    for (LookOut look : LookOut.values()) {
      assertThat(SENTENCES.has("lookOut." + look.name())).as(look.name()).isTrue();
    }
  }

  @Test
  void aLeverIsFoundByItsNameAndByWhatPeopleCallIt() {
    LeverWords words = new LeverWords(SENTENCES, METRIC);
    List<Lever> levers = Studied.levers(FLAT);
    assertThat(words.find(levers, " Metal  Reads ").orElseThrow().key()).isEqualTo("reading");
    assertThat(words.find(levers, "height").orElseThrow().key()).isEqualTo("sprueTall");
    assertThat(words.find(levers, "metal red")).isEmpty();
    assertThat(words.unknown(levers, "metal red")).endsWith("Did you mean: metal reads");
    Lever reading = words.find(levers, "reads").orElseThrow();
    assertThat(words.parseLike(reading, "1100", "1200 degC").orElseThrow()).isEqualTo(1373.15);
    assertThat(words.parse(reading, "1200 mm")).isEmpty();
  }

  private static Explained why(double most) {
    PourResult result = DryPour.run(FLAT.pourCase(), RunObserver.NONE, () -> false);
    return new Explained(
        FLAT,
        "feather.yaml",
        result,
        HeatLossBudget.of(FLAT.pourCase(), result),
        Studied.least(FLAT, j -> most - 0.08 * Studied.seconds(j), 0.2));
  }

  @Test
  void heatGoneBeforeThePieceCountsWhatCameFromBehind() {
    Explained why = why(0.6);
    double atThePiece =
        why.result().passages().stream()
            .filter(p -> p.role() == PassageRecord.Role.PIECE)
            .mapToDouble(p -> p.arrivalTemperature(0))
            .findFirst()
            .orElseThrow();
    // still liquid there, so that degrees are degrees' worth; the cell is 5 mm long
    double gone = FLAT.pourCase().metal().reading().value() - atThePiece;
    double spent = 0.0;
    double share = 0.0;
    for (HeatLossBudget.Line line : why.account().lines()) {
      if (line.kind() != HeatLossBudget.Kind.PIECE
          && line.kind() != HeatLossBudget.Kind.FROM_BEHIND) {
        spent += line.degrees() - line.kept();
        share += why.account().share(line);
      }
    }
    assertThat(spent).isCloseTo(gone, within(0.02 * why.account().spent()));
    String text = String.join(" ", new WhyText(SENTENCES, METRIC).brief(why));
    Matcher percent = Pattern.compile("(\\d+) % went before it reached the piece").matcher(text);
    assertThat(percent.find()).isTrue();
    assertThat(Double.parseDouble(percent.group(1))).isCloseTo(100.0 * share, within(0.51));
  }

  @Test
  void percentsOfTheAccountAddUpAsPrinted() {
    List<String> lines = new WhyText(SENTENCES, METRIC).full(why(0.6), HowPoured.ALONG);
    Pattern row = Pattern.compile("([ *]) \\S.* (-?\\d+)  [# ]* (-?\\d+) %");
    int sum = 0;
    int before = 0;
    for (String line : lines) {
      Matcher m = row.matcher(line);
      if (m.matches() && line.startsWith("  all that it gave up")) {
        assertThat(sum).isEqualTo(100);
      } else if (m.matches() && !line.contains("given back") && !line.contains("in the end")) {
        sum += Integer.parseInt(m.group(3));
        before += m.group(1).equals(" ") ? Integer.parseInt(m.group(3)) : 0;
      }
    }
    assertThat(sum).isEqualTo(100);
    assertThat(String.join(" ", lines)).contains(before + " % went before it reached the piece");
  }

  @Test
  void aPlanWithEnoughIsToldHowFarThingsMaySlip() {
    String text = String.join("\n", new WhyText(SENTENCES, METRIC).full(why(0.9), HowPoured.ALONG));
    assertThat(text)
        .contains("How far single figures may drift and still leave 20 % of the heat to spare")
        .contains(": anywhere in its practical range")
        .doesNotContain("What single changes would do")
        .contains("--stopped 190mm --lap 130mm");
  }

  @Test
  void meetingsThatAreMirrorImagesAreToldOnce() {
    PourText text = new PourText(Sentences.english(), new Figures(DisplayUnits.METRIC));
    String told = String.join(" ", text.full(HandMade.plan(HandMade.coldShut(2))));
    assertThat(told.replaceAll("\\s+", " ")).containsOnlyOnce("(in 2 places alike)");
  }

  @Test
  void theWordOfOnePlanIsThatOfItsPourInEveryStudy() {
    Plan plan = Studied.plan("feather-sand-flat.yaml");
    PouredPlan poured =
        HandMadeBands.plan(
            HandMade.filled(0.24, List.of()), HandMade.slush(), HandMade.filled(0.4, List.of()));
    Compared.Poured one =
        new Compared.Poured("A", "feather.yaml", plan, poured.result(), poured.bands());
    assertThat(VerdictSentence.of(one.poured()))
        .isEqualTo(VerdictSentence.of(poured))
        .contains(VerdictSentence.LIKELY_FILLS);
    CompareCells cells = new CompareCells(Sentences.english(), new Figures(DisplayUnits.METRIC));
    assertThat(cells.cell(CompareCells.Row.RESULT, one)).isEqualTo("PROBABLY FILLS");
    Compared.Poured hole = new Compared.Poured("B", "feather.yaml", plan, HandMade.hole());
    assertThat(cells.cell(CompareCells.Row.RESULT, hole)).isEqualTo("HOLE from 152 to 164 mm");
  }
}
