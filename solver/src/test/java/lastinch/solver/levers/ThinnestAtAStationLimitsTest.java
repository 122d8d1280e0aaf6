package lastinch.solver.levers;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import lastinch.solver.casting.PourCase;
import lastinch.solver.casting.Station;
import lastinch.solver.run.SampleFoundry;
import lastinch.solver.run.SampleJob;
import org.junit.jupiter.api.Test;

/** A least thickness that a station has already, to the last bit, adds no station on top of it. */
class ThinnestAtAStationLimitsTest {
  @Test
  void aLeastThicknessBesideThatOfAStationKeepsStationsApart() {
    PourCase job =
        SampleJob.empty()
            .station(0.0, 0.03, 2.4e-3)
            .station(0.305, 0.017, 1.9e-3)
            .station(0.320, 0.008, 1.6e-3)
            .alloy(SampleFoundry.tinBronze())
            .build();
    for (double least : new double[] {Math.nextUp(1.9e-3), 1.9e-3, Math.nextUp(1.6e-3)}) {
      PourCase raised =
          JobParameter.stations(ParameterUnit.LENGTH, 0.0, PieceLevers::raised).move(job, least);
      List<Station> stations = raised.piece().limbs().get(0).stations();
      for (int i = 1; i < stations.size(); i++) {
        assertThat(stations.get(i).at()).isGreaterThan(stations.get(i - 1).at());
      }
    }
  }
}
