package lastinch.validation.benchmark;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.concurrent.TimeUnit;
import lastinch.cases.catalogue.Catalogue;
import lastinch.cases.catalogue.CatalogueMaterials;
import lastinch.cases.plan.OwnedThings;
import lastinch.cases.units.DisplayUnits;
import lastinch.solver.casting.PourCase;
import lastinch.solver.diagnosis.Diagnosis;
import lastinch.solver.diagnosis.HeatLossBudget;
import lastinch.solver.diagnosis.Observation;
import lastinch.solver.filling.RunObserver;
import lastinch.solver.levers.Lever;
import lastinch.solver.run.DryPour;
import lastinch.solver.search.GatePlacement;
import lastinch.solver.search.SmallestChange;
import lastinch.solver.study.Goal;
import lastinch.solver.study.Measure;
import lastinch.solver.study.Pourer;
import lastinch.solver.study.RunCache;
import lastinch.solver.uncertainty.FillProbability;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Level;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/**
 * Questions about the demo feather that stops short, on two threads: how sure on 1,024 days (at
 * most 7 s asked for), why it stopped (2 s), what explains a casting (8 s) and where to gate (30
 * s).
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.SECONDS)
@Warmup(iterations = 3, time = 1)
@Measurement(iterations = 4, time = 1)
@Fork(1)
public class DemoQuestions {
  private static final double SPARE = 0.2;

  /** What {@code why} tries. */
  private static final List<String> TELLING =
      List.of("emptiesIn", "waiting", "reading", "mouldTemperature", "sprueTall", "thicker");

  private DemoPlan demo;

  /** Reads the plan. */
  @Setup(Level.Trial)
  public void read() {
    demo = DemoPlan.read("feather-sand-flat.yaml");
  }

  /** How sure. */
  @Benchmark
  public FillProbability sure() {
    try (RunCache studies = studies()) {
      return FillProbability.of(studies, job(), Measure.MARGIN, FillProbability.USUAL_DAYS, false);
    }
  }

  /** Where the heat went, and what single changes would do. */
  @Benchmark
  public SmallestChange why() {
    HeatLossBudget.of(job(), DryPour.run(job(), RunObserver.NONE, () -> false));
    List<Lever> levers = demo.levers().stream().filter(l -> TELLING.contains(l.key())).toList();
    try (RunCache studies = studies()) {
      return SmallestChange.of(studies, job(), levers, Goal.heat(SPARE));
    }
  }

  /** What explains a casting. */
  @Benchmark
  public Diagnosis brokenOut() {
    Observation found =
        new Observation(
            OptionalDouble.of(0.18),
            OptionalDouble.of(0.12),
            Optional.of(Observation.Lip.ROUNDED),
            Optional.empty(),
            OptionalDouble.empty(),
            OptionalDouble.empty());
    try (RunCache studies = studies()) {
      return Diagnosis.of(
          studies, (job, stop) -> DryPour.run(job, RunObserver.NONE, stop), job(), found);
    }
  }

  /** Where to gate. */
  @Benchmark
  public GatePlacement gates() {
    try (RunCache studies = studies()) {
      CatalogueMaterials materials = new CatalogueMaterials(Catalogue.builtIn());
      return GatePlacement.of(
          studies,
          job(),
          OwnedThings.of(demo.plan(), materials, DisplayUnits.METRIC),
          Goal.heat(SPARE),
          GatePlacement.MOST);
    }
  }

  private PourCase job() {
    return demo.plan().pourCase();
  }

  private static RunCache studies() {
    return new RunCache(Pourer.DRY, 2, RunCache.Watch.NONE, () -> false);
  }
}
