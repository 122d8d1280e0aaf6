package lastinch.validation;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Every study must agree, every plainly wrong model must not; the page is written on the way. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class StudiesPublishedTest {
  private static final Path PAGE = Path.of("target", "validation-report.html");
  private final List<StudyOutcome> outcomes = ValidationReport.run();

  List<StudyOutcome> outcomes() {
    return outcomes;
  }

  Stream<Study> wrongModels() {
    return Studies.all().stream().flatMap(s -> s.spoiled().stream());
  }

  @AfterAll
  void writePage() throws IOException {
    ValidationReport.write(PAGE, outcomes);
  }

  @ParameterizedTest
  @MethodSource("outcomes")
  void agreesWithItsSource(StudyOutcome outcome) {
    assertThat(outcome.rows()).isNotEmpty();
    assertThat(outcome.rows()).allMatch(Row::agrees);
  }

  @ParameterizedTest
  @MethodSource("wrongModels")
  void aPlainlyWrongModelIsFoundOut(Study wrong) {
    assertThat(StudyOutcome.of(wrong).agrees()).isFalse();
  }

  @Test
  void onlyTrendsGoWithoutAWrongModel() {
    assertThat(Studies.all()).allMatch(s -> s.spoiled().isPresent() || s.kind() == StudyKind.TREND);
  }

  @Test
  void everyCurveHasPointsAndAxesWithUnits() {
    for (StudyOutcome o : outcomes) {
      for (StudyCurve curve : o.curves()) {
        assertThat(curve.points()).as(curve.title()).hasSizeGreaterThan(2);
        assertThat(curve.across()).isNotBlank();
        assertThat(curve.up()).isNotBlank();
      }
    }
  }

  @Test
  void everyStudyNamesSourceAndInputs() {
    assertThat(Studies.all())
        .allMatch(s -> !s.source().isBlank() && !s.setting().isBlank() && !s.note().isBlank());
  }

  @Test
  void thePageListsEveryLineAndFetchesNothing() throws IOException {
    ValidationReport.write(PAGE, outcomes);
    String page = Files.readString(PAGE);
    for (StudyOutcome o : outcomes) {
      assertThat(page).contains(o.study().title().replace("&", "&amp;"));
    }
    assertThat(page).doesNotContain("<script").doesNotContain("http");
    assertThat(page.replace("src=\"data:image/png;base64,", "")).doesNotContain("src=");
    long curves = outcomes.stream().mapToLong(o -> o.curves().size()).sum();
    assertThat(curves).isGreaterThan(8);
    assertThat(page.split("src=\"data:", -1)).hasSize((int) curves + 1);
  }
}
