package lastinch.ui.report;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.io.StringReader;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import javax.xml.parsers.DocumentBuilder;
import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.parsers.ParserConfigurationException;
import lastinch.cases.catalogue.Catalogue;
import lastinch.cases.catalogue.MaterialSheet;
import lastinch.cases.units.DisplayUnits;
import lastinch.solver.result.PourResult;
import lastinch.solver.result.StopReason;
import lastinch.ui.HandMade;
import lastinch.ui.chart.ChartFiles;
import lastinch.ui.words.Figures;
import lastinch.ui.words.PouredPlan;
import lastinch.ui.words.Sentences;
import lastinch.ui.words.pour.PourText;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.w3c.dom.Document;
import org.xml.sax.InputSource;
import org.xml.sax.SAXException;
import org.xml.sax.helpers.DefaultHandler;

/** The report as it comes out: whole, well-formed, fetching nothing, with every source. */
class ReportTest {
  private static final Sentences SENTENCES = Sentences.english();
  private static final List<MaterialSheet> SHEETS =
      List.of(
          Catalogue.builtIn().alloySheet("tin bronze"),
          Catalogue.builtIn().mediumSheet("oil-bonded sand"),
          Catalogue.builtIn().commonSheet());

  static Stream<PourResult> results() {
    return Stream.of(
        HandMade.slush(),
        HandMade.stopped(StopReason.AIR, 0.02),
        HandMade.stoppedInGate(),
        HandMade.filledFromTip(),
        HandMade.coldShut(),
        HandMade.roundedEdges(),
        HandMade.cancelled(),
        HandMade.brokeDown());
  }

  private static String report(PourResult result, DisplayUnits units) throws IOException {
    PouredPlan plan = HandMade.plan(result);
    Figures figures = new Figures(units);
    ChartFiles charts = new ChartFiles(plan, SENTENCES, figures);
    return Report.of(plan, charts, SHEETS, SENTENCES, figures, "Last Inch test");
  }

  private static Document parsed(String page)
      throws ParserConfigurationException, IOException, SAXException {
    DocumentBuilder builder = DocumentBuilderFactory.newInstance().newDocumentBuilder();
    builder.setErrorHandler(new DefaultHandler());
    return builder.parse(new InputSource(new StringReader(page)));
  }

  @ParameterizedTest
  @MethodSource("results")
  void isWellFormedAndFetchesNothing(PourResult result) throws Exception {
    String page = report(result, DisplayUnits.METRIC);
    Document document = parsed(page);
    assertThat(document.getDocumentElement().getTagName()).isEqualTo("html");
    assertThat(document.getElementsByTagName("script").getLength()).isZero();
    assertThat(document.getElementsByTagName("link").getLength()).isZero();
    assertThat(page).doesNotContain("@import").doesNotContain("src=").doesNotContain("url(http");
    Matcher links = Pattern.compile("href=\"([^\"]*)\"").matcher(page);
    while (links.find()) {
      assertThat(links.group(1)).startsWith("#");
    }
    assertThat(page.replace("http://www.w3.org/1999/xhtml", "").replace(SVG, ""))
        .doesNotContainPattern("=\"https?:");
  }

  private static final String SVG = "http://www.w3.org/2000/svg";

  @Test
  void aPageThatIsNotWellFormedIsFoundOut() {
    assertThatThrownBy(() -> parsed("<html><p>one<p>two</html>")).isInstanceOf(SAXException.class);
  }

  @ParameterizedTest
  @MethodSource("results")
  void namesInsideThePicturesDoNotMeet(PourResult result) throws IOException {
    String page = report(result, DisplayUnits.METRIC);
    Matcher ids = Pattern.compile(" id=\"([^\"]*)\"").matcher(page);
    Set<String> seen = new HashSet<>();
    while (ids.find()) {
      assertThat(seen.add(ids.group(1))).as(ids.group(1)).isTrue();
    }
    Matcher uses = Pattern.compile("url\\(#([^)]*)\\)").matcher(page);
    while (uses.find()) {
      assertThat(seen).contains(uses.group(1));
    }
  }

  @Test
  void theVerdictComesBeforeThePicturesAndTheBooksComeLast() throws IOException {
    String page = report(HandMade.slush(), DisplayUnits.METRIC);
    List<Integer> order = new ArrayList<>();
    for (String part :
        List.of(
            "IT STOPS SHORT.",
            "Why it stops:",
            "<svg",
            Html.escaped(SENTENCES.say("care.NEVER_SAFE")) + "</li>",
            SENTENCES.say("report.words") + "</summary>",
            SENTENCES.say("report.tables") + "</summary>",
            SENTENCES.say("report.materials") + "</summary>",
            SENTENCES.say("report.books") + "</summary>")) {
      order.add(page.indexOf(part));
    }
    assertThat(order).isSorted().doesNotContain(-1);
  }

  @Test
  void twoPicturesAndNoTableAreSeenWithoutOpeningAPart() throws IOException {
    String page = report(HandMade.slush(), DisplayUnits.METRIC);
    String seen = page.substring(0, page.indexOf("<details>"));
    assertThat(seen.split("<figure", -1)).hasSize(3);
    assertThat(seen).doesNotContain("<table").doesNotContain("<pre");
    assertThat(page.split("<details>", -1)).hasSize(6);
    assertThat(page).contains("details, .folded { display: none; }");
  }

  @Test
  void everyPictureAndEveryLineOfTheAnswerIsInIt() throws IOException {
    PouredPlan plan = HandMade.plan(HandMade.slush());
    Figures figures = new Figures(DisplayUnits.METRIC);
    ChartFiles charts = new ChartFiles(plan, SENTENCES, figures);
    String page = report(HandMade.slush(), DisplayUnits.METRIC);
    for (String name : charts.names()) {
      assertThat(page).contains("<figure id=\"" + name + "\"");
      assertThat(page).contains(Html.escaped(charts.caption(name)));
    }
    for (String line : new PourText(SENTENCES, figures).full(plan)) {
      assertThat(page).contains(Html.escaped(line));
    }
  }

  @Test
  void everyFigureOfMetalAndMouldStandsThereWithItsSource() throws IOException {
    String page = report(HandMade.slush(), DisplayUnits.METRIC);
    int rows = 0;
    for (MaterialSheet sheet : SHEETS) {
      for (MaterialSheet.Row row : sheet.rows()) {
        String value = (row.value() + " " + row.unit()).strip();
        String basis = SENTENCES.say("basis." + row.basis().name());
        String from = row.source().isEmpty() ? basis : basis + ", " + row.source();
        assertThat(page)
            .containsPattern(
                Pattern.quote("<td>" + Html.escaped(row.property()) + "</td>")
                    + "\\s*"
                    + Pattern.quote("<td>" + Html.escaped(value) + "</td>")
                    + "\\s*<td>[^<]*</td>\\s*"
                    + Pattern.quote("<td>" + Html.escaped(from) + "</td>"));
        rows++;
      }
      for (MaterialSheet.Source source : sheet.sources()) {
        assertThat(page).contains(Html.escaped(source.reference()));
      }
    }
    assertThat(rows).isGreaterThan(50);
  }

  @Test
  void unitsAreThePersonsOwn() throws IOException {
    assertThat(report(HandMade.slush(), DisplayUnits.INCH))
        .contains("12 5/8 in")
        .contains("degF")
        .contains("along the piece, from the thick end [in]");
  }

  @Test
  void printsOnTwoSizesOfPaperWithoutATornPicture() throws IOException {
    // No paper size is asked for, so that the printer's own is taken.
    assertThat(report(HandMade.slush(), DisplayUnits.METRIC))
        .contains("@media print")
        .contains("@page { margin:")
        .doesNotContain("size: A4")
        .contains("break-inside: avoid");
  }
}
