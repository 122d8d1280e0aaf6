package lastinch.solver.diagnosis;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import lastinch.solver.casting.PourCase;
import lastinch.solver.filling.Phase;
import lastinch.solver.filling.PlaneSettings;
import lastinch.solver.filling.RunObserver;
import lastinch.solver.material.MetalTable;
import lastinch.solver.result.PassageRecord;
import lastinch.solver.result.PourResult;
import lastinch.solver.run.DryPour;
import lastinch.solver.run.SampleJob;
import org.junit.jupiter.api.Test;

/** Read from arrivals, the heat account adds up to what metal had less what it had at its end. */
class ArrivalHeatLossConservationTest {
  /** Of some 250 degrees' worth; rounding leaves 1e-13, a square left out would show as 1e-3. */
  private static final double CLOSED = 1e-9;

  private static final PourCase JOB = SampleJob.featherInSand(4.0).build();
  private static final PourResult RESULT =
      DryPour.run(
              DryPour.plane(PlaneSettings.squares(5e-3)),
              JOB,
              Phase.FILLING,
              RunObserver.NONE,
              () -> false)
          .filling();
  private static final HeatLossBudget ACCOUNT = HeatLossBudget.of(JOB, RESULT);

  /** Heat of the metal that came last into the piece [J/kg]. */
  private static double last() {
    MetalTable table =
        MetalTable.of(JOB.metal().alloy(), false, 250.0, JOB.metal().reading().value() + 50.0);
    double time = -1.0;
    double heat = 0.0;
    for (PassageRecord p : RESULT.passages()) {
      for (int i = 0; p.role() == PassageRecord.Role.PIECE && i < p.size(); i++) {
        if (p.reached(i) && p.arrivalTime(i) > time) {
          time = p.arrivalTime(i);
          double solid = p.arrivalSolid(i);
          heat =
              solid > 0.0 ? table.enthalpyAtSolid(solid) : table.enthalpy(p.arrivalTemperature(i));
        }
      }
    }
    return heat;
  }

  @Test
  void theLinesAddUpToTheHeatFromTheReadingToTheLastPlace() {
    double perDegree = JOB.metal().alloy().specificHeatLiquid().value();
    double had = JOB.metal().reading().value() - JOB.metal().alloy().liquidus();
    double spent = had - last() / perDegree;
    assertThat(spent).isGreaterThan(100.0);
    assertThat(ACCOUNT.spent()).isCloseTo(spent, within(CLOSED * spent));
    double without =
        ACCOUNT.lines().stream().skip(1).mapToDouble(HeatLossBudget.Line::degrees).sum();
    assertThat(without).as("a place left out").isNotCloseTo(spent, within(1e-3 * spent));
  }

  @Test
  void warmthFromBehindIsNotMadeUp() {
    assertThat(ACCOUNT.tellsWarmth()).isFalse();
    assertThat(ACCOUNT.lines()).allMatch(l -> l.kept() == 0.0);
    PourResult along = DryPour.run(JOB, RunObserver.NONE, () -> false);
    assertThat(HeatLossBudget.of(JOB, along).tellsWarmth()).isTrue();
  }

  @Test
  void placesFollowEachOtherFromTheGateToTheEnd() {
    List<HeatLossBudget.Line> piece =
        ACCOUNT.lines().stream().filter(l -> l.kind() == HeatLossBudget.Kind.PIECE).toList();
    assertThat(piece).hasSize(4);
    for (int i = 1; i < piece.size(); i++) {
      assertThat(piece.get(i).from()).isCloseTo(piece.get(i - 1).to(), within(1e-12));
    }
    List<HeatLossBudget.Kind> kinds =
        ACCOUNT.lines().stream().map(HeatLossBudget.Line::kind).toList();
    assertThat(kinds.subList(0, 2))
        .containsExactly(HeatLossBudget.Kind.WAITING, HeatLossBudget.Kind.LIP);
    assertThat(kinds.lastIndexOf(HeatLossBudget.Kind.CHANNEL))
        .isLessThan(kinds.indexOf(HeatLossBudget.Kind.PIECE));
  }
}
