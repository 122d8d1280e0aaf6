package lastinch.cases.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import java.util.List;
import lastinch.cases.catalogue.Catalogue;
import lastinch.cases.catalogue.CatalogueMaterials;
import lastinch.cases.units.DisplayUnits;
import lastinch.solver.casting.PourCase;
import lastinch.solver.casting.Station;
import lastinch.solver.filling.RunObserver;
import lastinch.solver.levers.Lever;
import lastinch.solver.levers.Levers;
import lastinch.solver.result.Outcome;
import lastinch.solver.result.PourResult;
import lastinch.solver.run.DryPour;
import org.junit.jupiter.api.Test;

/** A piece that comes from a model can be made thicker like one that was measured. */
class ModelLeversLimitsTest {
  private static final CatalogueMaterials MATERIALS = new CatalogueMaterials(Catalogue.builtIn());

  private static Plan plan() {
    ReadResult read = CaseReader.read(Path.of("../cases/demo/feather-model.yaml"), MATERIALS);
    return ((ReadResult.Sound) read).plan();
  }

  private static Lever lever(Plan plan, String key) {
    List<Lever> levers =
        Levers.of(plan.pourCase(), OwnedThings.of(plan, MATERIALS, DisplayUnits.METRIC));
    return Levers.find(levers, key, "").orElseThrow();
  }

  private static List<Station> stations(PourCase job) {
    return job.piece().limbs().get(0).stations();
  }

  @Test
  void everyStationGetsThickerByWhatIsAdded() {
    Plan plan = plan();
    PourCase thicker = lever(plan, "thicker").set(plan.pourCase(), 1e-3);
    List<Station> before = stations(plan.pourCase());
    List<Station> after = stations(thicker);
    assertThat(after).hasSameSizeAs(before);
    for (int i = 0; i < before.size(); i++) {
      assertThat(after.get(i).thickness() - before.get(i).thickness())
          .isCloseTo(1e-3, within(1e-12));
    }
    // the drawn shape is no longer that of the piece
    assertThat(plan.pourCase().piece().model()).isPresent();
    assertThat(thicker.piece().model()).isEmpty();
  }

  @Test
  void noPlaceStaysThinnerThanAskedAndThePourHasAnAnswer() {
    Plan plan = plan();
    Lever thinnest = lever(plan, "thinnest");
    double least = thinnest.now() + 5e-4;
    PourCase raised = thinnest.set(plan.pourCase(), least);
    assertThat(stations(raised)).allMatch(s -> s.thickness() >= least - 1e-12);
    PourResult result = DryPour.run(raised, RunObserver.NONE, () -> false);
    assertThat(result.outcome()).isInstanceOfAny(Outcome.Filled.class, Outcome.Misrun.class);
  }
}
