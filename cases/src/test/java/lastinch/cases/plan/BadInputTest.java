package lastinch.cases.plan;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Everything a person may get wrong is named with its place, all at once, and nothing throws. */
class BadInputTest {
  @TempDir private Path folder;
  private Bench bench;

  @BeforeEach
  void open() {
    bench = new Bench(folder);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      value = {
        // decimal comma
        "melted: 1.1 kg|melted: 1,1 kg|46:11 Use a decimal point, not a comma. Did you mean: 1.1"
            + " kg",
        // yes/no where a number is due
        "melted: 1.1 kg|melted: yes|46:11 A number with its unit is needed here, not yes.",
        // unknown word with the nearest right one
        "melted: 1.1 kg|meltd: 1.1 kg|46:3 Unknown word. Did you mean: melted",
        "wide: 20 mm, thick|wide: 20 mm, tickness|40:49 Unknown word. Did you mean: thick",
        // missing unit
        "melted: 1.1 kg|melted: 1.1|46:11 The unit is missing. Write 1.1 kg or 1.1 g.",
        "tall: 120 mm|tall: 120|36:18 Millimetres or inches? Write 120 mm or 120 in.",
        // wrong dimension
        "melted: 1.1 kg|melted: 1.1 s|46:11 A weight is needed here, and s is the unit of a time."
            + " Units that fit: kg, g, lb or oz.",
        // slips between the scales
        "reads: 1150 degC +- 15 degC|reads: 1150 degF|47:10 Tin bronze is solid below 798 degC"
            + " (1468 degF). Did you mean: 1150 degC",
        "reads: 1150 degC +- 15 degC|reads: 2102 degC|47:10 Tin bronze is poured at 1150 degC (2102"
            + " degF) or so. Did you mean: 2102 degF",
        "temperature: 20 degC|temperature: 1180 degC|31:16 The mould cannot be hotter than the"
            + " metal, which reads 1150 degC +- 15 degC. Did you mean: 1180 degF",
        // negative, zero, not a number, far too large
        "melted: 1.1 kg|melted: -1.1 kg|46:11 Allowed here: 0.001 to 500 kg.",
        "melted: 1.1 kg|melted: 0 kg|46:11 Allowed here: 0.001 to 500 kg.",
        "melted: 1.1 kg|melted: NaN kg|46:11 A number is needed here.",
        "melted: 1.1 kg|melted: unknown|46:11 A number is needed here; if you do not know it,"
            + " write: don't know.",
        "melted: 1.1 kg|melted: NaN|46:11 That is no number anyone can measure.",
        "melted: 1.1 kg|melted: 1e308 kg|46:11 Allowed here: 0.001 to 500 kg.",
        "melted: 1.1 kg|melted: 1e999 kg|46:11 That number is far outside anything that can be"
            + " cast.",
        // the allowed range stands in the unit the person typed
        "tall: 120 mm|tall: 0 in|36:18 Allowed here: 0.03937 to 78.74 in.",
        // clock time
        "from reading to first metal: 20 s|from reading to first metal: 12:30|49:32 A clock time or"
            + " ratio cannot stand here; write seconds or minutes with their unit.",
        // stations out of order
        "[160, 23.0, 3.6, 1.0]|[60, 23.0, 3.6, 1.0]|22:9 The column at must rise from row to row:"
            + " 60 mm does not follow 80 mm.",
        "[160, 23.0, 3.6, 1.0]|[160, 23,0, 3.6, 1.0]|22:9 There are 5 figures here for 4 columns. Use a decimal point, not a comma.",
        "[160, 23.0, 3.6, 1.0]|[160, 23.0, 3.6, 4.0]|22:9 The edge cannot be thicker than the"
            + " middle: 4.0 mm against 3.6 mm.",
        "[0,   34.0, 6.0, 1.4]|[10,   34.0, 6.0, 1.4]|20:9 The first place is where 0 mm is; its "
            + " at  has to be 0.",
        // gate or vent outside the piece
        "at: 315 mm|at: 330 mm|42:28 This is outside the piece. Allowed here: 0 to 320 mm.",
        "into: boss, wide|into: bos, wide|40:30 There is no part of this name. Did you mean: boss",
        // a boss that was taken out and is still named
        "boss: {at: thick end, long: 40 mm, wide: 22 mm, deep: 18 mm}|# no boss|40:30 There is no"
            + " boss in this plan; write  at: 0 mm, side: thick end  in its place.",
        // a cup too narrow for its sprue
        "top: 18 mm|top: 46 mm|36:31 The sprue is wider here than the cup above it, which is 45 mm"
            + " across.",
        // parts that nobody has measured yet
        "well:   {across: 25 mm, deep: 15 mm}|well:   don't know|37:11 Its sizes are needed; a plan"
            + " made by  lastinch new  has usual ones to start from. Words: across, deep.",
        // unknown alloy
        "alloy: tin bronze|alloy: tin bronz|45:10 No such metal is known here. Did you mean: tin"
            + " bronze",
        "alloy: tin bronze|alloy: don't know|45:10 The metal has to be known; take the nearest one:"
            + " see lastinch alloys.",
        // words that mean nothing for this mould
        "set with: oil|held there: 3 h|29:3 This word means nothing for bonded sand; it counts in"
            + " investment.",
        // choices
        "rammed: firm|rammed: fimr|30:11 One of these is needed: soft, firm, hard. Did you mean:"
            + " firm",
        "stands: flat|stands: sideways|32:11 Write flat; tip up 15 deg; tip down 15 deg; upright,"
            + " tip down; or upright, tip up.",
        "stands: flat|stands: tip up 95 deg|32:11 Allowed here: more than 0 and up to 80 deg;"
            + " steeper than that is upright, tip up or upright, tip down.",
        // two ways of saying one thing
        "crucible empties in: 5.0 s +- 30 %|pours at: 0.3 kg/s~  crucible empties in: 5 s|53:3 Only"
            + " one of crucible empties in or cup is full after or pours at or pours as filmed can"
            + " say how fast you pour; pours at is on line 52.",
        // a band wider than the value
        "5.0 s +- 30 %|5.0 s +- 300 %|52:24 The +- is wider than the value itself.",
        // a colon without its space
        "melted: 1.1 kg|melted:1.1 kg|46:3 Put a space behind the colon.",
        // other ways of pressing metal in
        "melted: 1.1 kg|melted: 1.1 kg~  spin: 300 rpm|47:3 Only pours by gravity are covered; this"
            + " word cannot be counted in.",
        // two names for one thing
        "name: tip vent, at|name: end gate, at|42:14 This name is already used, on line 40."
      })
  void a_slip_is_named_with_its_place(String from, String to, String line) {
    List<String> problems = Bench.problems(bench.readChanged(from, to.replace('~', '\n')));
    assertThat(problems).containsExactly(line);
  }

  @Test
  void a_model_beside_calipers_is_refused_word_by_word() {
    assertThat(Bench.problems(bench.readChanged("grind off: 0 mm", "model: {file: a.stl}")))
        .contains(
            "16:3 Only one of stations or limbs or model can say the shape of the piece; model is on line 14.",
            "25:3 section goes with stations. Only one of stations or limbs or model can say the "
                + "shape of the piece; model is on line 14.");
  }

  @Test
  void two_gates_at_one_place_are_refused() {
    String gate = "    - {name: other, into: boss, wide: 9 mm, thick: 3 mm, long: 15 mm}\n";
    assertThat(Bench.problems(bench.readChanged("  vents:\n", gate + "  vents:\n")))
        .containsExactly("41:7 This gate cuts into end gate: they have to lie further apart.");
  }

  @Test
  void runner_that_leads_nowhere_is_refused() {
    String text = Bench.flat().replaceAll("  gates:\n.*\n", "");
    assertThat(Bench.problems(bench.read(text)))
        .singleElement()
        .asString()
        .contains("This runner leads nowhere: add a gate from it into the piece.");
    String into = text.replace("foot: 14 mm}", "foot: 14 mm, into: boss}");
    assertThat(Bench.problems(bench.read(into)))
        .singleElement()
        .asString()
        .contains("This runner leads nowhere");
  }

  @Test
  void one_place_or_none_is_not_enough() {
    String one =
        Bench.flat()
            .replaceAll("      - \\[(80|160|240|320).*\n", "")
            .replace("at: 315 mm", "at: 0 mm");
    assertThat(Bench.problems(bench.read(one)))
        .containsExactly(
            "20:7 Two places at least: thick end and tip. They are joined by a straight line.");
    String none = Bench.flat().replaceAll("      - \\[\\d.*\n", "");
    assertThat(Bench.problems(bench.read(none))).isNotEmpty();
  }

  @Test
  void all_problems_are_listed_together_in_the_order_of_the_file() {
    String text =
        Bench.flat()
            .replace("wide: 20 mm, thick: 3 mm", "wide: 20, tickness: 3 mm")
            .replace("reads: 1150 degC +- 15 degC", "reads: 1150 degF")
            .replace("rammed: firm", "rammed: fimr");
    assertThat(Bench.problems(bench.read(text)))
        .containsExactly(
            "30:11 One of these is needed: soft, firm, hard. Did you mean: firm",
            "40:42 Millimetres or inches? Write 20 mm or 20 in.",
            "40:46 Unknown word. Did you mean: thick",
            "47:10 Tin bronze is solid below 798 degC (1468 degF). Did you mean: 1150 degC");
  }

  @Test
  void a_broken_line_poisons_only_its_own_block() {
    String text = Bench.flat().replace("  rammed: firm", "  rammed firm").replace("1.1 kg", "1.1");
    assertThat(Bench.problems(bench.read(text)))
        .containsExactly(
            "30:3 A colon is missing here; lines have the form  word: value.",
            "46:11 The unit is missing. Write 1.1 kg or 1.1 g.");
  }

  @Test
  void traps_of_the_format_are_explained() {
    assertThat(Bench.problems(bench.read(""))).containsExactly(" There is nothing in this file.");
    assertThat(Bench.problems(bench.readChanged("  rammed:", "\trammed:")).get(0))
        .isEqualTo("30:1 Line 30 starts with a Tab; use spaces.");
    assertThat(Bench.problems(bench.readChanged("tall: 120 mm", "tall: \"5")).get(0))
        .startsWith("36:18 A quote opens here and does not close");
    assertThat(Bench.problems(bench.read(Bench.flat() + "---\nformat: x\n")).get(0))
        .contains("A second plan begins here");
    assertThat(Bench.problems(bench.read("Dear caster, how are you?\n")).get(0))
        .contains("word: value");
    assertThat(Bench.problems(bench.read("\u0000\u0001\u0002"))).hasSize(1);
    assertThat(Bench.problems(bench.readChanged("format: last inch case 1", "")).get(0))
        .contains("format: last inch case 1");
    assertThat(Bench.problems(bench.readChanged("last inch case 1", "last inch shop 1")).get(0))
        .contains("This is a shop file where a case file is needed");
  }

  @Test
  void a_hash_in_a_title_is_noted() {
    ReadResult result = bench.readChanged("slow pour", "slow pour #2");
    assertThat(Bench.lines(result.notes()).get(0)).contains("What follows # is skipped");
    assertThat(Bench.problems(result)).isEmpty();
  }

  @Test
  void twins_are_taken_and_noted() {
    ReadResult result = bench.readChanged("wide: 20 mm, thick", "width: 20 mm, thickness");
    assertThat(Bench.lines(result.notes()))
        .containsExactly(
            "29:3 Taken for bonded with.", "40:36 Taken for wide.", "40:50 Taken for thick.");
    assertThat(Bench.plan(result).pourCase().gating().gates().get(0).width()).isEqualTo(0.02);
  }

  @Test
  void marks_and_line_ends_of_other_machines_are_taken() {
    Plan plain = Bench.plan(bench.read(Bench.flat()));
    Plan other = Bench.plan(bench.read("\ufeff" + Bench.flat().replace("\n", "\r\n")));
    assertThat(other.pourCase().piece()).isEqualTo(plain.pourCase().piece());
    assertThat(other.pourCase().gating()).isEqualTo(plain.pourCase().gating());
    assertThat(other.typed()).isEqualTo(plain.typed());
    assertThat(other.digest()).isNotEqualTo(plain.digest());
  }

  @Test
  void names_outside_ascii_are_taken() {
    Path file = bench.write("Füllung ✦.yaml", Bench.flat().replace("end gate,", "Anschnitt ä,"));
    assertThat(CaseReader.read(file, Bench.MATERIALS)).isInstanceOf(ReadResult.Sound.class);
  }

  @Test
  void fifty_megabytes_are_refused_without_being_read() throws IOException {
    byte[] line = new byte[50 << 20];
    Arrays.fill(line, (byte) 'a');
    Path file = Files.write(folder.resolve("big.yaml"), line);
    assertThat(Bench.problems(CaseReader.read(file, Bench.MATERIALS)))
        .containsExactly(" This file is larger than 1 MB; a case file has a few pages.");
  }

  @Test
  void what_cannot_be_opened_is_said_plainly() throws IOException {
    assertThat(Bench.problems(CaseReader.read(folder, Bench.MATERIALS)))
        .containsExactly(" This is a folder; name the file in it.");
    assertThat(Bench.problems(CaseReader.read(folder.resolve("no.yaml"), Bench.MATERIALS)))
        .containsExactly(" There is no such file.");
    Path latin = Files.write(folder.resolve("latin.yaml"), new byte[] {'t', (byte) 0xe9, '\n'});
    assertThat(Bench.problems(CaseReader.read(latin, Bench.MATERIALS)).get(0)).contains("UTF-8");
    // a file that opens and then fails to be read, also for a superuser
    assertThat(Bench.problems(CaseReader.read(Path.of("/proc/self/mem"), Bench.MATERIALS)))
        .hasSize(1);
  }
}
