package lastinch.ui.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Slips of the hand on the command line, and what is said to each. */
class WrongWordsTest {
  @TempDir Path folder;

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "poor feather.yaml | \"poor\" is not understood here. Did you mean: pour",
        "help pur | \"pur\" is not understood here. Did you mean: pour",
        "help tomorrow | \"tomorrow\" is not understood here. Try: lastinch help",
        "zzz | \"zzz\" is not understood here. Try: lastinch help",
        "version | The version is shown by: lastinch --version",
        "report | A report is written beside the pictures: lastinch pour feather.yaml --out",
        "pour f.yaml --otu x | \"--otu\" is not understood here. Did you mean: --out",
        "pour f.yaml --xyzxyz | \"--xyzxyz\" is not understood here. Try: lastinch help pour",
        "pour | Which plan? Name its case file, for example: lastinch pour feather.yaml",
        "shape | Which model? Name its file, for example: lastinch shape feather.stl",
        "alloys show | Which one? Name it, for example: lastinch alloys show NAME.",
      })
  void aSlipIsAnsweredWithWhatWasMeant(String typed, String said) {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    ByteArrayOutputStream err = new ByteArrayOutputStream();
    Console there =
        new Console(
            new PrintStream(out, true, StandardCharsets.US_ASCII),
            new PrintStream(err, true, StandardCharsets.US_ASCII),
            false,
            folder);
    assertThat(new Main(there, new Shop()).run(typed.split(" "))).isEqualTo(Exit.BAD_INPUT);
    assertThat(out.size()).isZero();
    assertThat(err.toString(StandardCharsets.US_ASCII).replaceAll("\\s+", " ")).startsWith(said);
  }
}
