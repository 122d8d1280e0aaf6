package lastinch.validation;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class PageTest {
  private record Sample(StudyKind kind) implements Study {
    @Override
    public String title() {
      return "Less <than> & more";
    }

    @Override
    public String source() {
      return "a book";
    }

    @Override
    public String setting() {
      return "round figures";
    }

    @Override
    public String note() {
      return "";
    }

    @Override
    public void compare(Rows rows) {
      rows.share("length", "mm", 200.0, 203.0, 0.01);
      rows.within("heat", "degC", 900.0, 901.0, 1.0);
      rows.trend("direction", "longer", "shorter", false);
      rows.told("weather", "fair");
      rows.curve("Going up", "steps", "metres").point(1.0, 2.0, 2.5);
    }

    @Override
    public Optional<Study> spoiled() {
      return Optional.empty();
    }
  }

  @Test
  void saysWhatIsOffInWordsNotByColour() {
    StudyOutcome outcome = StudyOutcome.of(new Sample(StudyKind.PUBLISHED));
    String page = StudyPage.of(List.of(outcome));
    assertThat(outcome.agrees()).isFalse();
    assertThat(page).contains("1 studies, 3 lines, 2 off.");
    assertThat(page).contains("<td class=\"off\">off</td>");
    assertThat(page)
        .contains("trend fails")
        .contains("3.00000 (1.5 %)")
        .contains("<td>agrees</td>");
  }

  @Test
  void lettersThatMeanSomethingToABrowserAreEscaped() {
    String page = StudyPage.of(List.of(StudyOutcome.of(new Sample(StudyKind.TREND))));
    assertThat(page).contains("Less &lt;than&gt; &amp; more").doesNotContain("<than>");
  }

  @Test
  void whatIsOnlyToldIsNotCounted() {
    String page = StudyPage.of(List.of(StudyOutcome.of(new Sample(StudyKind.TREND))));
    assertThat(page).contains("fair").contains("<td>only told</td>").contains("3 lines");
  }

  @Test
  void aCurveIsDrawnIntoThePage() {
    String page = StudyPage.of(List.of(StudyOutcome.of(new Sample(StudyKind.EXACT))));
    assertThat(page).contains("<img alt=\"Going up\" src=\"data:image/png;base64,");
    assertThat(page.length()).isGreaterThan(5000);
  }

  @Test
  void noNumberNeverAgrees() {
    assertThat(new Row.Figure("x", "", 1.0, Double.NaN, 10.0).agrees()).isFalse();
    assertThat(new Row.Figure("x", "", 1.0, 1.1, 0.1 + 1e-12).agrees()).isTrue();
  }
}
