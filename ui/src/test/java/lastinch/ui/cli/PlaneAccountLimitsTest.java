package lastinch.ui.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Optional;
import lastinch.solver.result.ConservationFigures;
import lastinch.ui.words.Sentences;
import lastinch.ui.words.study.GridWords;
import org.junit.jupiter.api.Test;

/** An answer whose metal or heat does not add up says so. */
class PlaneAccountLimitsTest {
  private static Optional<String> told(double metal, double heat) {
    ConservationFigures accounts =
        new ConservationFigures(metal, heat, 0.0, 0.0, 1.0, 0.0, 0.0, 1e6, 5e5, 5e5, 0.0);
    return GridWords.astray(Sentences.english(), accounts);
  }

  @Test
  void metalOrHeatThatWentAstrayIsTold() {
    assertThat(told(-0.018, 0.0).orElseThrow()).contains("1.80 % of the metal");
    assertThat(told(0.0, 3e-4).orElseThrow()).contains("0.0300 % of the heat");
    assertThat(told(Double.NaN, 0.0)).isPresent();
    assertThat(told(1e-9, 1e-6)).isEmpty();
  }
}
