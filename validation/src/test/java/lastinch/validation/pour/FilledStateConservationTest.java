package lastinch.validation.pour;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import lastinch.cases.catalogue.Catalogue;
import lastinch.cases.catalogue.CatalogueMaterials;
import lastinch.cases.plan.CaseReader;
import lastinch.cases.plan.ReadResult;
import lastinch.solver.casting.PourCase;
import lastinch.solver.filling.FilledState;
import lastinch.solver.filling.Filling;
import lastinch.solver.filling.FillingSolver;
import lastinch.solver.filling.PlaneSettings;
import lastinch.solver.filling.RunObserver;
import lastinch.solver.result.PassageRecord.Role;
import lastinch.solver.result.PourResult;
import lastinch.solver.result.ToppedUp;
import lastinch.solver.run.DryPour;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * What both filling solvers hand over is whole: the filled state holds the metal and the heat that
 * the pour's own audit counts, and can be cooled on by somebody who knows neither solver.
 */
class FilledStateConservationTest {
  /** Rounding of some thousand sums of cells; a lost cell would be 1e-4 or more. */
  private static final double ROUNDING = 1e-9;

  /** The limit that later phases have to keep. */
  private static final double BOOKS = 1e-6;

  private static final double SECONDS = 60.0;

  static Stream<FillingSolver> solvers() {
    return Stream.of(DryPour.NETWORK, DryPour.plane(PlaneSettings.squares(4e-3)));
  }

  private static PourCase job(String name) {
    ReadResult read =
        CaseReader.read(
            Path.of("..", "cases", "demo", name + ".yaml"),
            new CatalogueMaterials(Catalogue.builtIn()));
    assertThat(read).isInstanceOf(ReadResult.Sound.class);
    return ((ReadResult.Sound) read).plan().pourCase();
  }

  @ParameterizedTest
  @MethodSource("solvers")
  void stillMetalCoolsOnWithItsBooksClosed(FillingSolver solver) {
    try (Filling filling = solver.begin(job("feather-sand-flat"))) {
      filling.fill(RunObserver.NONE, () -> false);
      filling.topUp(RunObserver.NONE, () -> false);
      FilledState state = filling.state(SECONDS);
      double metal = state.heatInMetal();
      double mould = state.heatInMould() + state.heatToAir();
      new StillMetal(state).cool(SECONDS);
      double given = metal - state.heatInMetal();
      double taken = state.heatInMould() + state.heatToAir() - mould;
      assertThat(given).isGreaterThan(0.2 * state.mass() * 2e5);
      assertThat(taken).isCloseTo(given, within(BOOKS * given));
    }
  }

  @ParameterizedTest
  @MethodSource("solvers")
  void theStateHoldsWhatTheAuditCounts(FillingSolver solver) {
    for (String name :
        new String[] {"feather-sand-flat", "strip-low-head", "teaching/gate-freezes"}) {
      try (Filling filling = solver.begin(job(name))) {
        PourResult result = filling.fill(RunObserver.NONE, () -> false);
        ToppedUp stood = filling.topUp(RunObserver.NONE, () -> false);
        FilledState state = filling.state(SECONDS);
        assertThat(stood.ended()).isEqualTo(ToppedUp.Ended.AT_REST);
        double poured = stood.poured() - stood.spilled();
        // Traces of metal that cells too empty to be handed over keep.
        assertThat(state.mass()).isCloseTo(poured, within(1e-5 * poured));
        assertThat(stood.poured() + stood.left())
            .isCloseTo(job(name).metal().melted(), within(ROUNDING));
        assertThat(stood.poured()).isGreaterThanOrEqualTo(result.accounts().poured());
      }
    }
  }

  @Test
  void bothSolversHandOverTheSameParts() {
    List<Map<Role, Double>> found = new ArrayList<>();
    // a plan that fills in both
    for (FillingSolver solver : solvers().toList()) {
      try (Filling filling = solver.begin(job("feather-sand-tilted"))) {
        filling.fill(RunObserver.NONE, () -> false);
        filling.topUp(RunObserver.NONE, () -> false);
        FilledState state = filling.state(1.0);
        Map<Role, Double> byRole = new EnumMap<>(Role.class);
        for (int c = 0; c < state.size; c++) {
          byRole.merge(state.parts.get(state.part[c]).role(), state.volume[c], Double::sum);
        }
        found.add(byRole);
      }
    }
    for (Role role : List.of(Role.PIECE, Role.BOSS, Role.SPRUE)) {
      double along = found.get(0).get(role);
      // Squares of 4 mm draw curved outlines to a few parts in a hundred.
      assertThat(found.get(1).get(role)).as(role.name()).isCloseTo(along, within(0.06 * along));
    }
  }

  @ParameterizedTest
  @MethodSource("solvers")
  void heightsGoUpFromTheFootOfTheSprueToTheCup(FillingSolver solver) {
    for (String name : new String[] {"feather-sand-flat", "feather-sand-upright"}) {
      try (Filling filling = solver.begin(job(name))) {
        filling.fill(RunObserver.NONE, () -> false);
        filling.topUp(RunObserver.NONE, () -> false);
        FilledState state = filling.state(1.0);
        double tall = job(name).gating().sprue().tall();
        double cup = height(state, Role.CUP);
        assertThat(cup - height(state, Role.SPRUE)).isBetween(0.4 * tall, 0.7 * tall);
        // metal in the piece lies within the height of the sprue under the cup
        for (int c = 0; c < state.size; c++) {
          assertThat(cup - state.height[c]).isBetween(-1e-9, tall + 0.07);
        }
      }
    }
  }

  /** Height of the middle of a part's metal [m]. */
  private static double height(FilledState state, Role role) {
    double moment = 0.0;
    double sum = 0.0;
    for (int c = 0; c < state.size; c++) {
      if (state.parts.get(state.part[c]).role() == role) {
        moment += state.volume[c] * state.height[c];
        sum += state.volume[c];
      }
    }
    return moment / sum;
  }

  @Test
  void columnsThatAreNotDeepenedTakeTooLittleHeat() {
    try (Filling filling = DryPour.NETWORK.begin(job("feather-sand-flat"))) {
      filling.fill(RunObserver.NONE, () -> false);
      FilledState deep = filling.state(600.0);
      FilledState shallow = filling.state(0.0);
      new StillMetal(deep).cool(600.0);
      new StillMetal(shallow).cool(600.0);
      assertThat(deep.heatInMetal()).isLessThan(shallow.heatInMetal() - 1e-3 * deep.mass() * 2e5);
    }
  }

  @Test
  void aStateBelongsToWhoeverAskedForIt() {
    try (Filling filling = DryPour.NETWORK.begin(job("feather-sand-flat"))) {
      filling.fill(RunObserver.NONE, () -> false);
      FilledState first = filling.state(SECONDS);
      double before = filling.state(SECONDS).heatInMould();
      new StillMetal(first).cool(1.0);
      assertThat(filling.state(SECONDS).heatInMould()).isEqualTo(before);
      assertThat(first.heatInMould()).isGreaterThan(before);
    }
  }
}
