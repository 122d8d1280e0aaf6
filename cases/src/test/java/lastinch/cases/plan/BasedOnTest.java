package lastinch.cases.plan;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import lastinch.cases.format.Problem;
import lastinch.solver.casting.Orientation;
import lastinch.solver.casting.Place;
import lastinch.solver.casting.Pour;
import lastinch.solver.casting.gating.Gating;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A file that says only what differs from another. */
class BasedOnTest {
  private static final String HEAD =
      "format: last inch case 1\ntitle: Other\nbased on: base.yaml\n";

  @TempDir private Path folder;
  private Bench bench;

  @BeforeEach
  void open() {
    bench = new Bench(folder);
    bench.write("base.yaml", Bench.flat());
  }

  private Plan plan(String more) {
    return Bench.plan(bench.read(HEAD + more));
  }

  @Test
  void words_merge_and_absent_means_inherited() {
    Plan plan = plan("mould:\n  stands: tip up 15 deg\nmetal:\n  melted: 2 kg\n");
    assertThat(plan.title()).isEqualTo("Other");
    // one rounding of pi/12
    assertThat(plan.pourCase().mould().attitude().angle())
        .isCloseTo(Math.PI / 12, Offset.offset(1e-15));
    assertThat(plan.pourCase().metal().melted()).isEqualTo(2.0);
    assertThat(plan.pourCase().metal().reading().value()).isEqualTo(1423.15);
  }

  @Test
  void lists_merge_by_name() {
    Gating gating =
        plan("""
             gating:
               gates:
                 - {name: End Gate, wide: 30 mm}
               vents:
                 - {name: root vent, at: 10 mm, across: 2 mm}
             """)
            .pourCase()
            .gating();
    assertThat(gating.gates()).hasSize(1);
    assertThat(gating.gates().get(0).width()).isEqualTo(0.03);
    assertThat(gating.gates().get(0).thickness()).isEqualTo(0.003);
    assertThat(gating.vents()).hasSize(2);
  }

  @Test
  void a_table_is_replaced_whole() {
    Plan plan =
        plan(
            "piece:\n  stations: {unit: cm, columns: [at, wide, thick],"
                + " rows: [[0, 3, 0.5], [33, 1, 0.2]]}\n");
    assertThat(plan.pourCase().piece().limbs().get(0).stations()).hasSize(2);
    assertThat(plan.pourCase().piece().limbs().get(0).length()).isEqualTo(0.33);
  }

  @Test
  void leaving_out_takes_names_and_parts_away() {
    Gating gating =
        plan("""
             gating:
               leave out: [end gate, runner, well]
               sprue: {tall: 25 mm, top: 14 mm, foot: 14 mm, into: boss}
             """)
            .pourCase()
            .gating();
    assertThat(gating.gates()).isEmpty();
    assertThat(gating.runner()).isEmpty();
    assertThat(gating.well()).isEmpty();
    assertThat(gating.sprue().into()).contains(new Place.Into("boss"));
  }

  @Test
  void leaving_out_what_is_not_there_is_an_error() {
    assertThat(Bench.problems(bench.read(HEAD + "gating:\n  leave out: [end gat]\n")))
        .containsExactly("5:15 There is nothing of this name to leave out. Did you mean: end gate");
    bench.write("base.yaml", Bench.flat().replace("name: end gate", "name: well pipe"));
    assertThat(
            Bench.problems(
                bench.read(
                    HEAD.replace("base.yaml", "two.yaml")
                        + "gating:\n  leave out: [runner]\n  gates: []\n")))
        .isNotEmpty();
  }

  @Test
  void a_name_that_stands_for_two_things_is_ambiguous() {
    bench.write(
        "base.yaml",
        Bench.flat()
            .replace("name: tip vent", "name: twice")
            .replace("name: end gate", "name: twice"));
    assertThat(Bench.problems(bench.read(HEAD + "gating:\n  leave out: [twice]\n")))
        .anyMatch(p -> p.contains("More than one thing has this name: under gates and vents"));
  }

  @Test
  void a_way_typed_here_replaces_the_inherited_one() {
    assertThat(plan("pour:\n  pours at: 0.3 kg/s\n").pourCase().pour())
        .isInstanceOf(Pour.AtRate.class);
    assertThat(
            plan("gating:\n  gates:\n    - {name: end gate, at: 0 mm, side: thick end}\n")
                .pourCase()
                .gating()
                .gates()
                .get(0)
                .place())
        .isInstanceOf(Place.At.class);
  }

  @Test
  void another_material_replaces_the_whole_mould() {
    assertThat(Bench.problems(bench.read(HEAD + "mould:\n  material: gypsum investment\n")))
        .singleElement()
        .asString()
        .startsWith("5:3 The word \"stands\" is missing under mould");
    Plan plan = plan("mould:\n  material: Bonded sand\n  temperature: 30 degC\n");
    assertThat(plan.pourCase().mould().attitude()).isEqualTo(Orientation.FLAT);
  }

  @Test
  void an_inherited_word_that_cannot_apply_is_dropped_and_a_typed_one_refused() {
    bench.write(
        "base.yaml",
        Bench.flat()
            .replace(
                "sizes are: of the pattern",
                "sizes are: of the print\n  print weighs: 40 g\n  resin density: 1.12 g/cm3"));
    assertThat(plan("piece:\n  sizes are: of the pattern\n")).isNotNull();
    assertThat(
            Bench.problems(
                bench.read(HEAD + "piece:\n  sizes are: of the pattern\n  print weighs: 40 g\n")))
        .containsExactly("6:3 This counts only when sizes are of the print.");
  }

  @Test
  void title_and_checking_options_are_never_inherited() {
    bench.write("base.yaml", Bench.flat() + "for checking:\n  spreading: 0\n");
    assertThat(plan("").pourCase().checking().isOn()).isFalse();
    assertThat(Bench.problems(bench.read("format: last inch case 1\nbased on: base.yaml\n")))
        .singleElement()
        .asString()
        .contains("The word \"title\" is missing");
  }

  @Test
  void an_error_in_the_other_file_names_that_file() {
    Path base = bench.write("base.yaml", Bench.flat().replace("melted: 1.1 kg", "melted: 1.1"));
    ReadResult result = bench.read(HEAD);
    Problem only = ((ReadResult.Unsound) result).problems().get(0);
    assertThat(only.file()).isEqualTo(base.toString());
    assertThat(only.place()).isEqualTo("46:11");
  }

  @Test
  void a_missing_file_and_a_circle_are_named_where_they_are_asked_for() {
    assertThat(Bench.problems(bench.read(HEAD.replace("base.yaml", "gone.yaml"))))
        .singleElement()
        .asString()
        .startsWith("3:11 ")
        .contains("gone.yaml: There is no such file. Copy it there, or write the path to it");
    // what only the missing file can say is not asked for, nor called unknown
    String more = "leave out: [runner]\ngating:\n  gates:\n    - {name: other, into: boss}\n";
    assertThat(Bench.problems(bench.read(HEAD.replace("base.yaml", "gone.yaml") + more)))
        .singleElement()
        .asString()
        .contains("There is no such file");
    bench.write("base.yaml", HEAD.replace("base.yaml", "plan.yaml"));
    assertThat(Bench.problems(bench.read(HEAD)))
        .containsExactly(
            "3:11 These files are based on each other: plan.yaml, base.yaml, plan.yaml.");
  }

  @Test
  void eight_files_may_stand_on_one_another_and_no_more() {
    bench.write("f1.yaml", Bench.flat());
    for (int i = 2; i <= 8; i++) {
      bench.write("f" + i + ".yaml", HEAD.replace("base.yaml", "f" + (i - 1) + ".yaml"));
    }
    assertThat(Bench.problems(CaseReader.read(folder.resolve("f8.yaml"), Bench.MATERIALS)))
        .isEmpty();
    assertThat(Bench.problems(bench.read(HEAD.replace("base.yaml", "f8.yaml"))))
        .anyMatch(p -> p.contains("More than 8 files"));
  }
}
