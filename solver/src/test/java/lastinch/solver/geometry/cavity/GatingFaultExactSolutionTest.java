package lastinch.solver.geometry.cavity;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import lastinch.solver.casting.GapMap;
import lastinch.solver.casting.Limb;
import lastinch.solver.casting.Model;
import lastinch.solver.casting.Piece;
import lastinch.solver.casting.Place;
import lastinch.solver.casting.PourCase;
import lastinch.solver.casting.Side;
import lastinch.solver.casting.gating.Gate;
import lastinch.solver.casting.gating.Gating;
import lastinch.solver.casting.gating.Runner;
import lastinch.solver.filling.Need;
import lastinch.solver.filling.Phase;
import lastinch.solver.filling.PlaneSettings;
import lastinch.solver.filling.RunObserver;
import lastinch.solver.geometry.solid.SampleSolid;
import lastinch.solver.run.DryPour;
import lastinch.solver.run.SampleFoundry;
import lastinch.solver.run.SampleJob;
import org.junit.jupiter.api.Test;

/** Gates and runners round pieces made of bars: where they miss the piece or lie over it. */
class GatingFaultExactSolutionTest {
  private static final double LONG = 0.1;
  private static final double BAR = 0.01;

  /** Two bars along x at the ends of a third along y, like a staple: open at its tip. */
  private static final double[][] STAPLE = {
    {0.0, BAR, 0.0, LONG, 0.0, 4e-3},
    {0.0, LONG, 0.0, BAR, 0.0, 4e-3},
    {0.0, LONG, LONG - BAR, LONG, 0.0, 4e-3}
  };

  /** A bar along x and one along y from its low end. */
  private static final double[][] ANGLE = {
    {0.0, LONG, 0.0, BAR, 0.0, 4e-3}, {0.0, BAR, 0.0, LONG, 0.0, 4e-3}
  };

  private static PourCase job(double[][] bars, Optional<Runner> runner, Place at) {
    PourCase plain =
        SampleJob.strip(LONG, BAR, 4e-3)
            .alloy(SampleFoundry.tinBronze())
            .medium(SampleFoundry.sand())
            .reads(1150.0 + SampleJob.ZERO)
            .mouldAt(293.15)
            .build();
    Gating gating =
        plain
            .gating()
            .withWell(Optional.empty())
            .withRunner(runner)
            .withGates(List.of(new Gate("gate", at, 8e-3, 3e-3, 12e-3)))
            .withVents(List.of())
            .withOverflows(List.of())
            .withFeeders(List.of());
    Model model = new Model(SampleSolid.blocks(bars).solid(), List.of(), Model.Form.TOO_BRANCHED);
    return plain
        .withPiece(new Piece(plain.piece().limbs(), Optional.empty(), Optional.of(model)))
        .withGating(gating);
  }

  private static Place end(Side side) {
    return new Place.At(Limb.ONLY, 0.0, side);
  }

  @Test
  void aGateAtAnEndThatIsOpenInItsMiddleGoesToTheMiddleOfABar() {
    PourCase job = job(STAPLE, Optional.empty(), end(Side.TIP));
    assertThat(CavityMap.faults(job)).isEmpty();
    GapMap map = CavityMap.of(job, 1e-3);
    double sum = 0.0;
    double moment = 0.0;
    for (int c = 0; c < map.grid().size(); c++) {
      if (map.isOpen(c) && map.parts().get(map.part(c)).kind() == GapMap.Kind.GATE) {
        sum += map.volume(c);
        moment += map.volume(c) * map.grid().y(c / map.nx());
      }
    }
    double middle = moment / sum;
    // a tenth of a millimetre is a step of the search
    assertThat(Math.min(Math.abs(middle - 0.5 * BAR), Math.abs(middle - LONG + 0.5 * BAR)))
        .isLessThan(2e-4);
  }

  @Test
  void aGateThatFindsNoPieceIsTold() {
    Place nowhere = new Place.At(Limb.ONLY, 0.06, Side.LEFT);
    PourCase job = job(ANGLE, Optional.empty(), nowhere);
    assertThat(CavityMap.faults(job)).containsExactly(GatingFault.GATE_OFF_THE_PIECE);
    assertThat(DryPour.plane(PlaneSettings.squares(3e-3)).needs(job))
        .containsExactly(Need.GATE_OFF_THE_PIECE);
  }

  @Test
  void aRunnerThatCrossesThePieceIsTold() {
    Place inside =
        new Place.At(Limb.ONLY, 0.0, Side.LEFT, Optional.of(new Place.Spot(0.05, 0.012)));
    Runner shortOne = new Runner.Straight(0.03, 0.012, 0.01, 0.0);
    Runner longOne = new Runner.Straight(0.08, 0.012, 0.01, 0.0);
    assertThat(CavityMap.faults(job(STAPLE, Optional.of(shortOne), inside))).isEmpty();
    assertThat(CavityMap.faults(job(STAPLE, Optional.of(longOne), inside)))
        .isEqualTo(Set.of(GatingFault.GATING_OVER_THE_PIECE));
  }

  /** Bars that meet leave stretches along the piece whose middle belongs to nothing. */
  @Test
  void aPieceWithoutAMiddleIsPouredAndToldStretchByStretch() {
    PourCase job = job(STAPLE, Optional.empty(), end(Side.THICK_END));
    var pour =
        DryPour.run(
            DryPour.plane(PlaneSettings.squares(3e-3).keeping(1.0)),
            job,
            Phase.FILLING,
            RunObserver.NONE,
            () -> false);
    assertThat(pour.filling().filledFraction()).isBetween(0.05, 1.0);
    assertThat(pour.filling().passages()).extracting(p -> p.role().name()).contains("PIECE");
  }

  /** A wedge that runs out to nothing: no square of its map is thinner than a micrometre. */
  @Test
  void gapsThatHoldNoMetalAreClosed() {
    SolidRegion wedge =
        new SolidRegion(SampleSolid.wedge(LONG, BAR, 2e-3, 1e-9).solid(), List.of());
    List<GapMap.Part> parts = new java.util.ArrayList<>();
    GapMap map =
        CavityMap.fill(List.of(wedge), parts, 1e-3, lastinch.solver.casting.Orientation.FLAT)
            .fix(parts, List.of(), List.of());
    for (int c = 0; c < map.grid().size(); c++) {
      assertThat(map.isOpen(c) ? map.gap(c) : 1.0).isGreaterThanOrEqualTo(CellFilling.LEAST_GAP);
    }
  }
}
