package lastinch.solver.search;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import lastinch.solver.casting.PourCase;
import lastinch.solver.filling.Need;
import lastinch.solver.filling.Phase;
import lastinch.solver.filling.PlaneSettings;
import lastinch.solver.filling.RunObserver;
import lastinch.solver.levers.Lever;
import lastinch.solver.levers.Levers;
import lastinch.solver.levers.Owned;
import lastinch.solver.result.PourResult;
import lastinch.solver.run.DryPour;
import lastinch.solver.run.SampleJob;
import lastinch.solver.study.Pourer;
import lastinch.solver.study.RunCache;
import lastinch.solver.study.RunSummary;
import org.junit.jupiter.api.Test;

/** Studies over the plane ask what a single pour over the plane says, and nothing else. */
class PlaneStudyLimitsTest {
  private static final double SQUARE = 5e-3;

  private static List<PourCase> jobs() {
    List<PourCase> jobs = new ArrayList<>();
    for (double seconds : new double[] {3.0, 6.0, 12.0}) {
      jobs.add(SampleJob.featherInSand(seconds).build());
    }
    return jobs;
  }

  private static List<Optional<RunSummary>> glances(int threads) {
    Pourer pourer = Pourer.of(Pourer.overPlane(SQUARE));
    try (RunCache studies = new RunCache(pourer, threads, RunCache.Watch.NONE, () -> false)) {
      return studies.pourAll(jobs());
    }
  }

  @Test
  void aStudySeesWhatASinglePourSaysWhateverTheThreads() {
    List<RunSummary> single = new ArrayList<>();
    for (PourCase job : jobs()) {
      PourResult result =
          DryPour.run(
                  DryPour.plane(PlaneSettings.squares(SQUARE).keeping(1.0)),
                  job,
                  Phase.FILLING,
                  RunObserver.NONE,
                  () -> false)
              .filling();
      single.add(RunSummary.of(job, result));
    }
    assertThat(glances(1).stream().map(Optional::orElseThrow)).containsExactlyElementsOf(single);
    assertThat(glances(3).stream().map(Optional::orElseThrow)).containsExactlyElementsOf(single);
    assertThat(single.stream().map(RunSummary::heat).distinct()).hasSize(single.size());
  }

  @Test
  void aPourOverThePlaneThatIsStoppedStopsTheStudy() {
    Pourer pourer = Pourer.of(Pourer.overPlane(SQUARE));
    try (RunCache studies = new RunCache(pourer, 1, RunCache.Watch.NONE, () -> true)) {
      assertThat(studies.pourAll(jobs())).containsOnly(Optional.empty());
    }
  }

  @Test
  void squaresThatAreTooFineAreToldBeforeAnythingIsPoured() {
    PourCase job = jobs().get(0);
    assertThat(DryPour.plane(PlaneSettings.squares(SQUARE)).needs(job)).isEmpty();
    assertThat(DryPour.plane(PlaneSettings.squares(1e-5)).needs(job))
        .containsExactly(Need.SQUARES_TOO_FINE);
    Pourer pourer = Pourer.of(Pourer.overPlane(1e-5));
    assertThat(pourer.pour(job, () -> false).end()).isEqualTo(RunSummary.End.NOT_THERE);
  }

  @Test
  void leversBesidesThePieceAreAllOthers() {
    PourCase job = jobs().get(0);
    List<Lever> all = Levers.of(job, Owned.nothing(InventedPours.marks()));
    Set<String> left =
        Levers.besidesThePiece(all).stream().map(Lever::key).collect(Collectors.toSet());
    Set<String> gone = all.stream().map(Lever::key).collect(Collectors.toSet());
    gone.removeAll(left);
    assertThat(gone).contains("thicker").isSubsetOf("thicker", "thinnest", "edge");
    assertThat(left).contains("emptiesIn", "reading");
  }
}
