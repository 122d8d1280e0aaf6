package lastinch.ui.words;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import lastinch.cases.units.Dimension;
import lastinch.cases.units.DisplayUnits;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Numbers as people read them. Exact: an inch is 25.4 mm, a pound 0.45359237 kg by definition. */
class FiguresTest {
  private final Figures metric = new Figures(DisplayUnits.METRIC);
  private final Figures inch = new Figures(DisplayUnits.INCH);

  @ParameterizedTest
  @CsvSource({
    "0, 0 in",
    "0.0254, 1 in",
    "0.0127, 1/2 in",
    "0.214, 8 7/16 in",
    "-0.0127, -1/2 in",
    "-0.0381, -1 1/2 in",
    "0.0007, 0 in"
  })
  void inchesAreReadByTheSixteenth(double metres, String shown) {
    assertThat(inch.ruler(metres)).isEqualTo(shown);
  }

  @ParameterizedTest
  @CsvSource({"0.2144, 214 mm", "0.0004, 0 mm", "-0.04, -40 mm"})
  void millimetresAreWhole(double metres, String shown) {
    assertThat(metric.ruler(metres)).isEqualTo(shown);
  }

  @ParameterizedTest
  @CsvSource({
    "0.00005, 0.05 mm, 0.002 in",
    "0.00002, 0.02 mm, 0.0008 in",
    "0.0001, 0.1 mm, 0.004 in",
    "0.018, 18 mm, 0.709 in",
    "0.05, 50 mm, 1.97 in"
  })
  void lengthsTooSmallForARulerAreToldInThousandthsOfAnInch(
      double metres, String millimetres, String inches) {
    assertThat(metric.shown(Dimension.LENGTH, metres)).isEqualTo(millimetres);
    assertThat(inch.shown(Dimension.LENGTH, metres)).isEqualTo(inches);
  }

  @ParameterizedTest
  @CsvSource({"0.0028, 2.8 mm, 0.11 in", "0.006, 6 mm, 0.24 in"})
  void calipersShowATenth(double metres, String mm, String in) {
    assertThat(metric.calipers(metres)).isEqualTo(mm);
    assertThat(inch.calipers(metres)).isEqualTo(in);
  }

  @ParameterizedTest
  @CsvSource({
    "1.1, 1.1 kg, 2.4 lb",
    "0.9999, 1 kg, 2.2 lb",
    "0.14, 140 g, 4.9 oz",
    "0.513, 515 g, 1.1 lb",
    "0.0042, 4 g, 0.1 oz"
  })
  void weightsBelowAKiloAreInGrams(double kilograms, String metricShown, String inchShown) {
    assertThat(metric.mass(kilograms)).isEqualTo(metricShown);
    assertThat(inch.mass(kilograms)).isEqualTo(inchShown);
  }

  @Test
  void heatsAreWholeDegreesAndDifferencesAreNotShifted() {
    double thousand = Dimension.HEAT.unit("degC").orElseThrow().toSi(1000.0);
    assertThat(metric.heat(thousand)).isEqualTo("1000 degC");
    assertThat(inch.heat(thousand)).isEqualTo("1832 degF");
    assertThat(metric.degrees(10.0)).isEqualTo("10");
    assertThat(inch.degrees(10.0)).isEqualTo("18");
  }

  @Test
  void speedsShowAsManyDecimalsAsAskedFor() {
    assertThat(metric.speed(0.534)).isEqualTo("0.5 m/s");
    assertThat(metric.speed(0.534, 2)).isEqualTo("0.53 m/s");
    assertThat(inch.speed(0.3048)).isEqualTo("1.0 ft/s");
  }

  @Test
  void longTimesLoseTheirTenths() {
    assertThat(metric.seconds(1.94)).isEqualTo("1.9 s");
    assertThat(metric.seconds(35.4)).isEqualTo("35 s");
  }

  @Test
  void spansAreToldRoughly() {
    assertThat(metric.span(3.2)).isEqualTo("4 s");
    assertThat(metric.span(41.0)).isEqualTo("40 s");
    assertThat(metric.span(400.0)).isEqualTo("7 min");
    assertThat(metric.span(9500.0)).isEqualTo("2.5 h");
  }

  @Test
  void aSentenceNeedsEveryOneOfItsValuesAndNoMore() {
    Sentences sentences = Sentences.english();
    assertThat(sentences.say("strip.boss")).isEqualTo("boss");
    assertThatThrownBy(() -> sentences.say("no such sentence"))
        .isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(() -> sentences.say("happens.gateCloses"))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("{gate}");
    assertThatThrownBy(() -> sentences.say("strip.boss", "gate", "x"))
        .isInstanceOf(IllegalArgumentException.class);
  }

  @Test
  void foreignLettersBecomePlainOnes() {
    assertThat(PlainLetters.of("Fe\u0301de\u0301ration \u00e9t\u00e9 \u6f22\u001b[1m"))
        .isEqualTo("Federation ete ??[1m");
    assertThat(PlainLetters.of("plain")).isEqualTo("plain");
  }
}
