package lastinch.cases.plan;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import java.util.OptionalDouble;
import lastinch.solver.casting.Checking;
import lastinch.solver.casting.Pour;
import lastinch.solver.casting.Station;
import lastinch.solver.material.Basis;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What becomes of the figures of a case. */
class PlanFiguresTest {
  /** A few roundings of sizes below one metre. */
  private static final Offset<Double> ROUNDING = Offset.offset(1e-15);

  @TempDir private Path folder;
  private Bench bench;

  @BeforeEach
  void open() {
    bench = new Bench(folder);
  }

  private Plan changed(String from, String to) {
    return Bench.plan(bench.readChanged(from, to));
  }

  @Test
  void a_pattern_is_the_cavity_as_it_is() {
    Station root =
        Bench.plan(bench.read(Bench.flat())).pourCase().piece().limbs().get(0).stations().get(0);
    assertThat(root).isEqualTo(new Station(0.0, 0.034, 0.006, OptionalDouble.of(0.0014)));
  }

  @Test
  void a_finished_casting_grows_by_the_contraction_and_the_metal_ground_off_each_face() {
    String text =
        Bench.flat()
            .replace("of the pattern ", "of the finished casting ")
            .replace("grind off: 0 mm", "grind off: 0.5 mm");
    Station tip = Bench.plan(bench.read(text)).pourCase().piece().limbs().get(0).stations().get(4);
    assertThat(tip.at()).isCloseTo(0.32 * 1.015, ROUNDING);
    assertThat(tip.thickness()).isCloseTo(0.0012 * 1.015 + 0.001, ROUNDING);
    assertThat(tip.width()).isCloseTo(0.012 * 1.015 + 0.001, ROUNDING);
  }

  @Test
  void a_print_grows_with_the_investment() {
    Plan plan = Bench.plan(bench.readText("feather-investment-hot.yaml"));
    Station root = plan.pourCase().piece().limbs().get(0).stations().get(0);
    // 0.72 %: usual for jewellery powder
    assertThat(root.width()).isCloseTo(0.034 * 1.0072, ROUNDING);
    assertThat(plan.assumed()).anyMatch(a -> a.path().equals("mould/investment grows by"));
  }

  @Test
  void what_nobody_knows_is_taken_from_practice_and_listed() {
    String text =
        Bench.flat()
            .replace("melted: 1.1 kg", "melted: don't know")
            .replace("reads: 1150 degC +- 15 degC", "reads: don't know")
            .replace("  from reading to first metal: 20 s", "")
            .replace("crucible empties in: 5.0 s +- 30 %", "crucible empties in: don't know");
    Plan plan = Bench.plan(bench.read(text));
    assertThat(plan.assumed().stream().map(Assumed::path))
        .contains("metal/melted", "metal/reads", "metal/from reading to first metal", "pour");
    assertThat(plan.assumed().stream().filter(Assumed::said).map(Assumed::path))
        .containsExactly("metal/melted", "metal/reads", "pour");
    assertThat(plan.assumed()).allMatch(a -> a.band().isOpen());
    assertThat(plan.assumed()).allMatch(a -> a.band().source().basis() != Basis.TYPED);
    assertThat(plan.pourCase().pour()).isInstanceOf(Pour.AtRate.class);
    // usual pour of this metal
    assertThat(plan.pourCase().metal().reading().value()).isEqualTo(1423.15);
  }

  @Test
  void a_reading_without_a_band_is_as_sure_as_the_way_it_was_read() {
    Plan dipped = changed("1150 degC +- 15 degC", "1150 degC");
    assertThat(dipped.pourCase().metal().reading().high()).isEqualTo(1438.15);
    String byEye =
        Bench.flat()
            .replace("1150 degC +- 15 degC", "1150 degC")
            .replace("read: dipped", "read: by eye");
    assertThat(Bench.plan(bench.read(byEye)).pourCase().metal().reading().low()).isEqualTo(1363.15);
  }

  @Test
  void a_pour_may_be_said_in_five_ways() {
    String typed = "crucible empties in: 5.0 s +- 30 %";
    assertThat(changed(typed, "cup is full after: 4 s").pourCase().pour())
        .isInstanceOf(Pour.CupFull.class);
    assertThat(
            changed(typed, "crucible empties in: 5 s\n  cup is full after: 4 s").pourCase().pour())
        .isInstanceOf(Pour.Both.class);
    Pour litres = changed(typed, "pours at: 0.1 L/s").pourCase().pour();
    // 0.1 L/s of tin bronze at its usual pour: 7880 - 0.82 x 151 K = 7756 kg/m3
    assertThat(litres.rate(1.0, 1.0)).isCloseTo(0.7756, Offset.offset(1e-3));
    Pour filmed =
        changed(
                typed,
                "pours as filmed: {unit: kg/s, columns: [at, rate], rows: [[0, 0.2], [2 s, 0.4]]}")
            .pourCase()
            .pour();
    assertThat(filmed.rateAt(1.0, 1.0, 1.0)).isCloseTo(0.3, ROUNDING);
  }

  @Test
  void two_times_that_do_not_agree_are_noted() {
    ReadResult result =
        bench.readChanged(
            "crucible empties in: 5.0 s +- 30 %",
            "crucible empties in: 9 s\n  cup is full after: 2 s");
    assertThat(Bench.lines(result.notes())).anyMatch(n -> n.contains("The two times do not agree"));
  }

  @Test
  void parts_for_which_the_sums_are_to_come_are_named() {
    assertThat(
            Bench.problems(
                bench.readChanged(
                    "  vents:\n",
                    """
                      chills:
                        - {name: c, into: boss, long: 9 mm, wide: 9 mm, thick: 9 mm}
                      vents:
                    """)))
        .singleElement()
        .asString()
        .contains("not there yet");
  }

  @Test
  void checking_options_reach_the_solver() {
    String options =
        """

        for checking:
          mould stays at its heat: yes
          friction factor: 0.02
          spreading: 0
          entry loss: 0.5
          pushes back: no
          freezing follows: straight line
          cup kept at: 30 mm
          enters at: 0.5 m/s
          starts wet: [{channel: sprue, from: 0 mm, to: 100 mm, speed: 1 m/s}]
          poured fluid: water
          cell length: 2 mm
          front Courant: 0.5
          heat step: 2 ms
          share that freezes as mush: 0.3
          gap conducts perfectly: yes
          wall curvature: off
          rims: off
          lip costs nothing: yes
        """;
    Checking checking = Bench.plan(bench.read(Bench.flat() + options)).pourCase().checking();
    assertThat(checking)
        .isEqualTo(
            new Checking(
                true,
                OptionalDouble.of(0.02),
                OptionalDouble.of(0.0),
                OptionalDouble.of(0.5),
                false,
                true,
                OptionalDouble.of(0.03),
                OptionalDouble.of(0.5),
                List.of(new Checking.StartsWet("sprue", 0.0, 0.1, 1.0)),
                Checking.Fluid.WATER,
                OptionalDouble.of(0.002),
                OptionalDouble.of(0.5),
                OptionalDouble.of(0.002),
                OptionalDouble.of(0.3),
                true,
                false,
                false,
                false));
    assertThat(Bench.plan(bench.read(Bench.flat() + options)).pourCase().checking().isOn())
        .isTrue();
  }

  @Test
  void a_person_may_know_better_than_the_catalogue() {
    Plan plan =
        Bench.plan(
            bench.read(
                Bench.flat()
                    .replace(
                        "  stands: flat",
                        "  mould pulls heat: 900 W/m2K +- 300 W/m2K\n  stands: flat")
                    .replace(
                        "  read: dipped", "  mush that stops it: 25 % +- 5 %\n  read: dipped")));
    assertThat(plan.pourCase().mould().medium().contactLiquid().low()).isEqualTo(600.0);
    assertThat(plan.pourCase().metal().alloy().flowStop().value()).isEqualTo(0.25);
  }

  @Test
  void a_flask_too_short_or_too_narrow_is_refused() {
    bench.write("feather-sand-flat.yaml", Bench.flat());
    String hot = Bench.text("feather-investment-hot.yaml");
    assertThat(Bench.problems(bench.read(hot.replace("tall: 480 mm", "tall: 460 mm"))))
        .singleElement()
        .asString()
        .contains("The flask is too short")
        .contains("need 465 mm");
    assertThat(Bench.problems(bench.read(hot.replace("inside: 100 mm", "inside: 60 mm"))))
        .singleElement()
        .asString()
        .contains("too narrow");
    assertThat(Bench.problems(bench.read(hot.replace("print weighs: 40 g", "print weighs: 90 g"))))
        .singleElement()
        .asString()
        .contains("By its measures the print weighs");
    ReadResult near = bench.read(hot.replace("print weighs: 40 g", "print weighs: 46 g"));
    assertThat(Bench.lines(near.notes())).anyMatch(n -> n.contains("By its measures"));
  }

  @Test
  void what_is_melted_has_to_fit_the_crucible_it_is_said_to_be_in() {
    bench.write("shop.yaml", Bench.text("shop.yaml"));
    String text =
        Bench.text("feather-sand-flat.yaml")
            .replace("melted: 1.1 kg", "melted: 2.5 kg\n  crucible: small");
    assertThat(Bench.problems(bench.read(text)))
        .singleElement()
        .asString()
        .contains("holds no more than 2 kg");
    assertThat(Bench.problems(bench.read(text.replace("crucible: small", "crucible: tiny"))))
        .singleElement()
        .asString()
        .contains("it has small, big");
  }

  @Test
  void materials_of_ones_own_count_for_the_case_that_names_them() {
    bench.write("mine.yaml", "format: last inch materials 1\nalloys:\n  - {nonsense: 1}\n");
    assertThat(
            Bench.problems(
                bench.readChanged(
                    "format: last inch case 1", "format: last inch case 1\nmaterials: mine.yaml")))
        .isNotEmpty();
    assertThat(
            Bench.problems(
                bench.readChanged(
                    "format: last inch case 1", "format: last inch case 1\nmaterials: gone.yaml")))
        .singleElement()
        .asString()
        .contains("There is no such file");
  }
}
