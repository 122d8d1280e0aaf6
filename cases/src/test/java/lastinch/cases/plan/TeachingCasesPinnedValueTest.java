package lastinch.cases.plan;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import lastinch.solver.filling.RunObserver;
import lastinch.solver.result.GateRecord;
import lastinch.solver.result.Meeting;
import lastinch.solver.result.Outcome;
import lastinch.solver.result.PourResult;
import lastinch.solver.result.Stop;
import lastinch.solver.result.StopReason;
import lastinch.solver.run.DryPour;
import org.junit.jupiter.api.Test;

/** Each teaching case ends in the way that it is there to show; shapes came from one scan. */
class TeachingCasesPinnedValueTest {
  private static PourResult poured(String name) {
    Plan plan = Bench.plan(CaseReader.read(Bench.DEMO.resolve(name), Bench.MATERIALS));
    return DryPour.run(plan.pourCase(), RunObserver.NONE, () -> false);
  }

  private static List<StopReason> reasons(PourResult result) {
    return result.stops().stream().map(Stop::reason).toList();
  }

  private static List<Meeting.Kind> meetings(PourResult result) {
    return result.meetings().stream().map(Meeting::kind).toList();
  }

  @Test
  void one_stops_short() {
    PourResult result = poured("teaching/stops-short.yaml");
    assertThat(result.outcome()).isInstanceOf(Outcome.Misrun.class);
    assertThat(reasons(result)).containsExactly(StopReason.SLUSH);
    assertThat(result.reach()).isBetween(0.33, 0.42);
  }

  @Test
  void one_just_fills() {
    PourResult result = poured("teaching/just-fills.yaml");
    assertThat(result.outcome()).isInstanceOf(Outcome.Filled.class);
    // under 10 % to spare is what the word means
    assertThat(result.margin().heat()).isBetween(0.0, 0.1);
  }

  @Test
  void streams_join_leave_a_line_or_do_not_join() {
    assertThat(meetings(poured("teaching/streams-join.yaml"))).containsExactly(Meeting.Kind.JOINED);
    assertThat(meetings(poured("teaching/lap-line.yaml"))).containsExactly(Meeting.Kind.LAP);
    assertThat(meetings(poured("teaching/cold-shut.yaml"))).containsExactly(Meeting.Kind.COLD_SHUT);
  }

  @Test
  void one_gate_freezes() {
    PourResult result = poured("teaching/gate-freezes.yaml");
    GateRecord thin =
        result.gates().stream().filter(g -> g.name().equals("thin gate")).findFirst().orElseThrow();
    assertThat(thin.froze()).isPresent();
    assertThat(thin.share()).isLessThan(0.05);
  }

  @Test
  void one_runs_out_of_metal_and_one_is_held_by_air() {
    assertThat(reasons(poured("teaching/out-of-metal.yaml"))).containsExactly(StopReason.NO_METAL);
    PourResult held = poured("teaching/air-holds.yaml");
    assertThat(reasons(held)).containsExactly(StopReason.AIR);
    // just past the vent at 80 mm; shut-in air gives way by a tenth of what lies beyond
    assertThat(held.reach()).isBetween(0.08, 0.086);
  }

  @Test
  void spokes_of_the_trivet_meet_at_its_far_end() {
    PourResult result = poured("trivet-spokes-meet.yaml");
    assertThat(result.outcome()).isInstanceOf(Outcome.Filled.class);
    assertThat(result.meetings()).hasSize(2);
    assertThat(result.meetings()).allMatch(m -> m.at() > 0.15);
  }
}
