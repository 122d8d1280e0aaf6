package lastinch.cases.units;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class OneLineTest {
  @ParameterizedTest
  @ValueSource(
      strings = {
        "12 mm",
        " 12 mm",
        "12 mm ",
        "12   mm",
        "\t12\u00a0mm\n",
        "12\u2009\u202fmm",
        "12 \r\n mm  "
      })
  void all_kinds_of_space_become_one(String text) {
    assertThat(OneLine.of(text)).isEqualTo("12 mm");
  }

  @ParameterizedTest
  @ValueSource(strings = {"", " ", "  ", "\n"})
  void nothing_but_space_is_nothing(String text) {
    assertThat(OneLine.of(text)).isEmpty();
  }
}
