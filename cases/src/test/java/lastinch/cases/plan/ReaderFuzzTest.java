package lastinch.cases.plan;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import java.util.Random;
import lastinch.cases.Told;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Broken files never make the reader throw, and it always says something. */
class ReaderFuzzTest {
  private static final List<String> BITS =
      List.of(
          ":",
          "\n",
          "  ",
          "\t",
          "[",
          "]",
          "{",
          "}",
          ",",
          "'",
          "\"",
          "#",
          "-",
          "- ",
          "&a",
          "*a",
          "!x",
          "|",
          ">",
          "%",
          "don't know",
          "1e308",
          "-1",
          "0",
          "NaN",
          "1/0",
          "1,5",
          "+-",
          "± 5 %",
          "mm",
          "degF",
          "yes",
          "12:30",
          "---",
          "leave out: [x]",
          "based on: plan.yaml",
          "\u0000",
          "\ufeff",
          "\ud83d\udd25",
          "\r",
          "boss",
          "at: 5 mm",
          "into: cup",
          "999999999999");

  @TempDir private Path folder;

  @Test
  void changed_demo_files_are_read_or_refused() {
    fuzz(1, 400);
  }

  @Test
  @Tag("nightly")
  void many_changed_demo_files_are_read_or_refused() {
    fuzz(2, 5_000);
  }

  private void fuzz(long seed, int rounds) {
    Bench bench = new Bench(folder);
    bench.write("shop.yaml", Bench.text("shop.yaml"));
    bench.write("feather-sand-flat.yaml", Bench.text("feather-sand-flat.yaml"));
    bench.write("feather-investment-hot.yaml", Bench.text("feather-investment-hot.yaml"));
    List<String> texts =
        List.of(
            Bench.text("feather-sand-flat.yaml"),
            Bench.text("feather-sand-upright.yaml"),
            Bench.text("feather-investment-hot.yaml"),
            Bench.demo("trivet-spokes-meet.yaml"));
    Random random = new Random(seed);
    int refused = 0;
    for (int i = 0; i < rounds; i++) {
      String text = texts.get(i % texts.size());
      int changes = 1 + random.nextInt(4);
      for (int c = 0; c < changes; c++) {
        text = changed(text, random);
      }
      ReadResult result = bench.read(text);
      if (result instanceof ReadResult.Unsound unsound) {
        refused++;
        assertThat(unsound.problems()).isNotEmpty().isSorted();
        assertThat(unsound.problems()).allMatch(p -> !Told.sentence(p).isBlank());
      }
    }
    // most changes break something; a reader that takes everything would not be one
    assertThat(refused).isGreaterThan(rounds / 2);
  }

  private static String changed(String text, Random random) {
    int at = random.nextInt(text.length());
    int end = Math.min(text.length(), at + random.nextInt(12));
    String bit = BITS.get(random.nextInt(BITS.size()));
    return switch (random.nextInt(4)) {
      case 0 -> text.substring(0, at) + bit + text.substring(at);
      case 1 -> text.substring(0, at) + text.substring(end);
      case 2 -> text.substring(0, at) + bit + text.substring(end);
      default -> {
        int from = random.nextInt(text.length());
        int to = Math.min(text.length(), from + 30);
        yield text.substring(0, at) + text.substring(from, to) + text.substring(at);
      }
    };
  }
}
