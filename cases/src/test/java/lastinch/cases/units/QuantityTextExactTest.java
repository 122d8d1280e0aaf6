package lastinch.cases.units;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import lastinch.cases.Told;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Exact conversions: the result is the nearest double to the true value. */
class QuantityTextExactTest {

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      value = {
        "12 mm|LENGTH|0.012",
        "12mm|LENGTH|0.012",
        "1.2 cm|LENGTH|0.012",
        "1.5e-3 m|LENGTH|0.0015",
        "1 in|LENGTH|0.0254",
        "3/32 in|LENGTH|0.00238125",
        "1 1/2 in|LENGTH|0.0381",
        "1 1/2\"|LENGTH|0.0381",
        "2 ft|LENGTH|0.6096",
        "450 degC|HEAT|723.15",
        "450 deg C|HEAT|723.15",
        "450 °C|HEAT|723.15",
        "450C|HEAT|723.15",
        "32 degF|HEAT|273.15",
        "1850 degF|HEAT|1283.15",
        "212 F|HEAT|373.15",
        "300 K|HEAT|300",
        "15 degF|HEAT_DIFFERENCE|8.333333333333334",
        "15 degC|HEAT_DIFFERENCE|15",
        "1.1 kg|MASS|1.1",
        "40 g|MASS|0.04",
        "2 lb 3 oz|MASS|0.992233309375",
        "1 oz|MASS|0.028349523125",
        "90 s|TIME|90",
        "2 min|TIME|120",
        "3 h|TIME|10800",
        "0.4 lb/s|MASS_RATE|0.181436948",
        "0.1 L/s|VOLUME_RATE|0.0001",
        "180 deg|ANGLE|3.141592653589793",
        "1.12 g/cm3|DENSITY|1120",
        "1.5 %|SHARE|0.015",
        "1 in3|VOLUME|0.000016387064",
        "010 s|TIME|10",
        "1e3 s|TIME|1000"
      })
  void a_value_becomes_the_nearest_double(String text, Dimension dimension, double expected) {
    assertThat(QuantityText.quantity(text, dimension).value().orElseThrow().si())
        .isEqualTo(expected);
  }

  @Test
  void a_band_of_a_heat_is_a_difference() {
    BandedQuantity q =
        QuantityText.banded("1150 degC +- 15 degF", Dimension.HEAT).value().orElseThrow();
    assertThat(q.best().si()).isEqualTo(1423.15);
    // 8.333 K; the two ends carry the rounding of a subtraction near 1400
    assertThat(q.high() - q.best().si()).isCloseTo(25.0 / 3.0, within(1e-12));
    assertThat(q.best().si() - q.low()).isCloseTo(25.0 / 3.0, within(1e-12));
  }

  @Test
  void a_band_in_percent_is_a_share_of_the_value() {
    BandedQuantity q = QuantityText.banded("5.0 s ± 30 %", Dimension.TIME).value().orElseThrow();
    assertThat(q.low()).isEqualTo(3.5);
    assertThat(q.high()).isEqualTo(6.5);
    assertThat(q.banded()).isTrue();
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "1,2 mm|LENGTH|comma|1.2 mm",
        "20|LENGTH|Millimetres or inches? Write 20 mm or 20 in|",
        "20 s|LENGTH|unit of a time|",
        "1150|HEAT|degC or degF|",
        "yes|TIME|not yes|",
        "NaN s|TIME|number|",
        "12:30|TIME|clock|",
        "1e999 mm|LENGTH|far outside|",
        "3 inches|LENGTH|not a unit|3 in",
        "5 sec|TIME|not a unit|5 s",
        "2 lbs|MASS|not a unit|2 lb",
        "1/0 in|LENGTH|divided by 0|"
      })
  void what_cannot_be_read_is_explained(
      String text, Dimension dimension, String sentence, String suggestion) {
    Parsed<BandedQuantity> parsed = QuantityText.banded(text, dimension);
    assertThat(parsed).isInstanceOf(Parsed.Bad.class);
    Parsed.Bad<BandedQuantity> bad = (Parsed.Bad<BandedQuantity>) parsed;
    assertThat(Told.sentence(bad.said())).contains(sentence);
    assertThat(bad.suggestion().orElse(null)).isEqualTo(suggestion);
  }

  @Test
  void showing_and_typing_again_gives_the_same_figure() {
    for (Dimension dimension : Dimension.values()) {
      for (Unit unit : dimension.units()) {
        double si = unit.toSi(12.3);
        // one rounding each way
        assertThat(unit.fromSi(si)).isCloseTo(12.3, within(1e-12));
      }
    }
  }

  private static org.assertj.core.data.Offset<Double> within(double d) {
    return org.assertj.core.data.Offset.offset(d);
  }

  @ParameterizedTest
  @CsvSource({
    "1/8 in per ft, 0.010416666666666666",
    "1/8 in per foot, 0.010416666666666666",
    "1.5 mm per 100 mm, 0.015",
    "15 mm per m, 0.015",
    "1/64 in to the inch, 0.015625"
  })
  void a_shrink_rule_is_a_share(String typed, double share) {
    Quantity read = QuantityText.quantity(typed, Dimension.SHARE).value().orElseThrow();
    assertThat(read.si()).isCloseTo(share, within(1e-15));
    assertThat(read.typed()).isEqualTo(typed);
  }

  @ParameterizedTest
  @CsvSource({"1/8 in per 0 ft", "1/8 per ft", "1/8 in per week", "per ft"})
  void what_is_no_shrink_rule_is_refused(String typed) {
    assertThat(QuantityText.quantity(typed, Dimension.SHARE).value()).isEmpty();
  }
}
