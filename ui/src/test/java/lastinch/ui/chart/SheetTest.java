package lastinch.ui.chart;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import lastinch.ui.chart.paper.Sheet;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Exact: steps of an axis are 1, 2 or 5 times a power of ten, and at most eight of them. */
class SheetTest {
  @ParameterizedTest
  @CsvSource({"320, 50", "3.3, 0.5", "170, 50", "6, 1", "8, 1", "0.24, 0.05", "9, 2"})
  void stepsAreRoundAndFew(double length, double step) {
    assertThat(Sheet.step(length)).isCloseTo(step, within(1e-12 * length));
  }
}
