package lastinch.ui.report;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.io.StringReader;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import javax.xml.parsers.DocumentBuilder;
import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.parsers.ParserConfigurationException;
import lastinch.cases.catalogue.Catalogue;
import lastinch.cases.plan.Plan;
import lastinch.cases.units.DisplayUnits;
import lastinch.solver.diagnosis.Diagnosis;
import lastinch.solver.diagnosis.HeatLossBudget;
import lastinch.solver.filling.RunObserver;
import lastinch.solver.result.PourResult;
import lastinch.solver.run.DryPour;
import lastinch.solver.search.GatePlacement;
import lastinch.solver.search.OperatingMap;
import lastinch.solver.search.SmallestChange;
import lastinch.ui.Studied;
import lastinch.ui.chart.ChartFiles;
import lastinch.ui.chart.StudyCharts;
import lastinch.ui.words.Figures;
import lastinch.ui.words.Sentences;
import lastinch.ui.words.Table;
import lastinch.ui.words.pour.Explained;
import lastinch.ui.words.study.Compared;
import lastinch.ui.words.study.HowPoured;
import lastinch.ui.words.study.StudyTables;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.w3c.dom.Document;
import org.xml.sax.InputSource;
import org.xml.sax.SAXException;

/** The page of every study: whole, well-formed, fetching nothing, in the order it is read. */
class StudyReportTest {
  private static final Sentences SENTENCES = Sentences.english();
  private static final Figures FIGURES = new Figures(DisplayUnits.METRIC);
  private static final StudyTables TABLES = new StudyTables(SENTENCES, FIGURES);
  private static final StudyCharts CHARTS = new StudyCharts(SENTENCES, FIGURES);
  private static final Plan FLAT = Studied.plan("feather-sand-flat.yaml");

  record Made(String name, StudyReport report) {
    @Override
    public String toString() {
      return name;
    }
  }

  static Stream<Made> everyStudy() {
    SmallestChange least = Studied.least(FLAT, j -> 0.6 - 0.08 * Studied.seconds(j), 0.2);
    SmallestChange slips = Studied.least(FLAT, j -> 0.9 - 0.08 * Studied.seconds(j), 0.2);
    Diagnosis blame = Studied.blame(FLAT, j -> -0.2, 0.2);
    GatePlacement gates = Studied.gates(FLAT, j -> 0.3);
    OperatingMap room = Studied.room(FLAT, j -> 0.1 * (5.0 - Studied.seconds(j)));
    Compared compared =
        Studied.compared(
            j -> 0.1 * (5.0 - Studied.seconds(j)),
            "feather-sand-flat.yaml",
            "feather-sand-tilted.yaml");
    PourResult result = DryPour.run(FLAT.pourCase(), RunObserver.NONE, () -> false);
    Explained why =
        new Explained(
            FLAT, "feather.yaml", result, HeatLossBudget.of(FLAT.pourCase(), result), least);
    return Stream.of(
        new Made("least", report(CHARTS.least(FLAT, least), TABLES.of(least))),
        new Made("slips", report(CHARTS.least(FLAT, slips), TABLES.of(slips))),
        new Made("room", report(CHARTS.room(FLAT, room), TABLES.of(room))),
        new Made("compare", report(CHARTS.compared(compared), TABLES.of(compared))),
        new Made("causes", report(CHARTS.causes(FLAT, blame), TABLES.of(blame))),
        new Made("gates", report(CHARTS.gates(FLAT, gates), TABLES.of(gates))),
        new Made("why", report(CHARTS.explained(why), TABLES.of(why))));
  }

  private static StudyReport report(ChartFiles charts, List<Table> tables) {
    return new StudyReport(
        FLAT.title(),
        "The pick < all & sundry.",
        List.of(
            new StudyReport.Described(
                FLAT.title(),
                "feather.yaml",
                FLAT.digest(),
                List.of("something assumed"),
                FLAT.pourCase())),
        HowPoured.square(4e-3).brief(SENTENCES, FIGURES),
        charts,
        List.of("first line", "second line"),
        tables,
        List.of(Catalogue.builtIn().alloySheet("tin bronze")));
  }

  private static String page(StudyReport report) throws IOException {
    return report.page(SENTENCES, FIGURES, "Last Inch test");
  }

  @ParameterizedTest
  @MethodSource("everyStudy")
  void isWellFormedAndFetchesNothing(Made made)
      throws IOException, SAXException, ParserConfigurationException {
    String page = page(made.report());
    DocumentBuilder builder = DocumentBuilderFactory.newInstance().newDocumentBuilder();
    Document document = builder.parse(new InputSource(new StringReader(page)));
    assertThat(document.getDocumentElement().getTagName()).isEqualTo("html");
    assertThat(document.getElementsByTagName("script").getLength()).isZero();
    assertThat(page).doesNotContain("@import").doesNotContain("src=").doesNotContain("url(http");
    Matcher links = Pattern.compile("href=\"([^\"]*)\"").matcher(page);
    while (links.find()) {
      assertThat(links.group(1)).startsWith("#");
    }
  }

  @ParameterizedTest
  @MethodSource("everyStudy")
  void beginsWithWhatItComesToAndTheCautionsComeBeforeTheTables(Made made) throws IOException {
    String page = page(made.report());
    List<Integer> order = new ArrayList<>();
    for (String part :
        List.of(
            "The pick &lt; all &amp; sundry.",
            "<pre>",
            Html.escaped(SENTENCES.say("care.NEVER_SAFE")) + "</li>",
            SENTENCES.say("report.study.tables") + "</summary>",
            "<table class=\"plain\">",
            SENTENCES.say("report.study.assumed") + "</summary>",
            "something assumed",
            SENTENCES.say("report.materials") + "</summary>",
            FLAT.digest())) {
      order.add(page.indexOf(part));
    }
    assertThat(order).isSorted().doesNotContain(-1);
  }

  @ParameterizedTest
  @MethodSource("everyStudy")
  void everyCellOfEveryTableStandsInIt(Made made) throws IOException {
    String page = page(made.report());
    assertThat(made.report().tables()).isNotEmpty();
    for (Table table : made.report().tables()) {
      assertThat(table.rows()).as(table.heading()).isNotEmpty();
      for (List<String> row : table.rows()) {
        for (String cell : row) {
          assertThat(page).contains("<td>" + Html.escaped(cell) + "</td>");
        }
      }
    }
  }

  @Test
  void endsOfLeversComeWithTheirReasonAndTheirSource() {
    SmallestChange least = Studied.least(FLAT, j -> 0.6 - 0.08 * Studied.seconds(j), 0.2);
    List<Table> tables = TABLES.of(least);
    Table ends = tables.get(tables.size() - 1);
    assertThat(ends.rows())
        .allSatisfy(row -> assertThat(row).allSatisfy(cell -> assertThat(cell).isNotBlank()))
        .anySatisfy(row -> assertThat(row.get(3)).isEqualTo("common practice, no source"));
  }

  @Test
  void aRowThatDoesNotFitItsHeadIsRefused() {
    List<List<String>> rows = List.of(List.of("one", "two"));
    assertThatThrownBy(() -> new Table("t", List.of("one"), rows))
        .isInstanceOf(IllegalArgumentException.class);
  }
}
