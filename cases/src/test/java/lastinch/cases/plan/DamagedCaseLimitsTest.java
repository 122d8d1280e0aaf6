package lastinch.cases.plan;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import lastinch.cases.Told;
import lastinch.cases.format.Problem;
import lastinch.cases.format.Problems;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Files far from any that a person writes end in few words. */
class DamagedCaseLimitsTest {
  @TempDir private Path folder;
  private Bench bench;

  @BeforeEach
  void open() {
    bench = new Bench(folder);
  }

  @Test
  void a_line_of_a_hundred_thousand_letters_is_one_short_complaint() {
    String text = Bench.flat().replace("title: Tail", "title: " + "x".repeat(100_000));
    assertThat(Bench.problems(bench.read(text)))
        .containsExactly(
            "8:1 This line has more than 5000 characters; break it, each word with its value on a"
                + " line of its own.");
  }

  @Test
  void thousands_of_faults_are_counted_and_a_hundred_of_them_listed() {
    StringBuilder text = new StringBuilder(Bench.flat());
    for (int i = 0; i < 3000; i++) {
      text.append("nonsense ").append(i).append(": 1\n");
    }
    List<Problem> problems = ((ReadResult.Unsound) bench.read(text.toString())).problems();
    assertThat(problems).hasSize(Problems.MOST + 1);
    assertThat(Told.message(problems.get(Problems.MOST)))
        .isEqualTo("And 2900 more; begin with these.");
    // the first by place are those that are listed
    assertThat(problems.get(0).shown()).isEqualTo("nonsense 0");
    assertThat(problems.get(99).shown()).isEqualTo("nonsense 99");
  }

  @Test
  void words_to_leave_out_of_a_list_that_is_based_on_nothing_are_answered() {
    String gate = Bench.flat().replace("{name: end gate,", "{leave out: [wide], name: end gate,");
    assertThat(Bench.problems(bench.read(gate)))
        .singleElement()
        .asString()
        .contains("There is nothing of this name to leave out");
  }

  @Test
  void words_to_leave_out_of_a_shop_are_answered() {
    bench.write(
        "shop.yaml",
        """
        format: last inch shop 1
        leave out: [kiln]
        crucibles:
          - {name: small, holds: 2 kg bronze, leave out: [holds]}
        """);
    assertThat(Bench.problems(bench.read(Bench.text("feather-sand-flat.yaml"))))
        .hasSize(2)
        .allMatch(p -> p.contains("There is nothing of this name to leave out"));
  }

  @Test
  void a_file_of_nearly_this_name_is_offered() {
    Path right = bench.write("start-leaf.yaml", Bench.flat());
    ReadResult result = CaseReader.read(folder.resolve("start-leef.yaml"), Bench.MATERIALS);
    assertThat(Bench.problems(result))
        .containsExactly(" There is no such file. Did you mean: " + right);
  }

  @Test
  void a_fork_from_the_middle_of_a_limb_is_told_how_to_be_written() {
    String text =
        Bench.flat()
            .replaceAll("(?s)  stations:.*?  section: lens[^\\n]*\\n", "LIMBS")
            .replace(
                "LIMBS",
                "  limbs:\n"
                    + "    - name: handle\n      from: boss\n"
                    + "      stations: {unit: mm, columns: [at, wide, thick], rows: [[0, 20, 4],"
                    + " [315, 20, 3]]}\n"
                    + "    - name: tine\n      from: handle at 110 mm\n"
                    + "      stations: {unit: mm, columns: [at, wide, thick], rows: [[0, 10, 3],"
                    + " [60, 8, 2]]}\n")
            .replace("at: 315 mm", "at: handle at 315 mm");
    assertThat(Bench.problems(bench.read(text)))
        .singleElement()
        .asString()
        .endsWith(
            "Limbs join at their ends only. Make two limbs of handle, one ending at 110 mm, and"
                + " write here:  handle tip.");
  }
}
