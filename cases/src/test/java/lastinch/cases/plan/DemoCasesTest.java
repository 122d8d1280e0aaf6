package lastinch.cases.plan;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class DemoCasesTest {
  private static Plan plan(String name) {
    return Bench.plan(CaseReader.read(Bench.DEMO.resolve(name), Bench.MATERIALS));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "feather-sand-flat.yaml",
        "strip-4mm-short.yaml",
        "tag-thin-rim.yaml",
        "feather-sand-tilted.yaml",
        "feather-sand-upright.yaml",
        "trivet-spokes-meet.yaml",
        "teaching/stops-short.yaml",
        "teaching/just-fills.yaml",
        "teaching/streams-join.yaml",
        "teaching/lap-line.yaml",
        "teaching/cold-shut.yaml",
        "teaching/gate-freezes.yaml",
        "teaching/out-of-metal.yaml",
        "teaching/air-holds.yaml",
        "feather-investment-hot.yaml",
        "feather-investment-silicon.yaml",
        "feather-model.yaml",
        "ginkgo-leaf.yaml",
        "trivet.yaml"
      })
  void every_demo_case_is_sound_and_says_it_is_invented(String name) {
    assertThat(plan(name).title()).isNotBlank();
    assertThat(Bench.demo(name).toLowerCase(Locale.ROOT)).contains("invented");
  }

  @Test
  void the_flat_feather_becomes_what_it_says() {
    Plan plan = plan("feather-sand-flat.yaml");
    assertThat(plan.pourCase().piece().limbs().get(0).length()).isEqualTo(0.32);
    assertThat(plan.pourCase().gating().gates()).hasSize(1);
    assertThat(plan.want().heatToSpare()).hasValue(0.2);
    assertThat(plan.pourCase().checking().isOn()).isFalse();
    assertThat(plan.typed()).containsEntry("gating/gates/end gate/wide", "20 mm");
    assertThat(plan.shop().orElseThrow().crucibles()).hasSize(2);
    assertThat(plan.digest()).hasSize(64);
  }
}
