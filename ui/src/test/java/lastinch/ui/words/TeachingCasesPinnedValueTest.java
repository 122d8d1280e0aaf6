package lastinch.ui.words;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.Optional;
import lastinch.cases.catalogue.Catalogue;
import lastinch.cases.catalogue.CatalogueMaterials;
import lastinch.cases.plan.CaseReader;
import lastinch.cases.plan.ReadResult;
import lastinch.solver.casting.PourCase;
import lastinch.solver.filling.RunObserver;
import lastinch.solver.result.PourResult;
import lastinch.solver.run.DryPour;
import lastinch.solver.study.Measure;
import lastinch.solver.uncertainty.BandStudy;
import lastinch.solver.uncertainty.Bands;
import lastinch.ui.words.pour.VerdictSentence;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Each verdict word is shown by a case that ships with the program. */
class TeachingCasesPinnedValueTest {
  @ParameterizedTest
  @CsvSource({
    "strip-low-head, stopsShort",
    "feather-sand-flat, mayStopShort",
    "feather-sand-tilted, likelyFills",
    "tag-thin-rim, edgesRounded",
    "strip-4mm-short, fills",
    "feather-sand-upright, mayNotJoin",
    "teaching/just-fills, justFills",
    "teaching/cold-shut, mayNotJoin",
    "feather-investment-hot, fills"
  })
  void verdictWordIsShownByItsCase(String name, String word) {
    Path file = Path.of("..", "cases", "demo", name + ".yaml");
    ReadResult read = CaseReader.read(file, new CatalogueMaterials(Catalogue.builtIn()));
    PourCase job = ((ReadResult.Sound) read).plan().pourCase();
    PourResult best = DryPour.run(job, RunObserver.NONE, () -> false);
    Optional<BandStudy> bands = Bands.around(job, best, Measure.MARGIN, 2, () -> false);
    assertThat(VerdictSentence.valueOf(bands.orElseThrow().verdict().name()).key()).isEqualTo(word);
  }
}
