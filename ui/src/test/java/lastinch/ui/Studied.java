package lastinch.ui;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.ToDoubleFunction;
import lastinch.cases.catalogue.Catalogue;
import lastinch.cases.catalogue.CatalogueMaterials;
import lastinch.cases.plan.CaseReader;
import lastinch.cases.plan.OwnedThings;
import lastinch.cases.plan.Plan;
import lastinch.cases.plan.ReadResult;
import lastinch.cases.units.DisplayUnits;
import lastinch.solver.casting.Pour;
import lastinch.solver.casting.PourCase;
import lastinch.solver.diagnosis.Diagnosis;
import lastinch.solver.diagnosis.Difference;
import lastinch.solver.diagnosis.Observation;
import lastinch.solver.levers.Lever;
import lastinch.solver.levers.Levers;
import lastinch.solver.result.FlowLimit;
import lastinch.solver.result.PourResult;
import lastinch.solver.result.StopReason;
import lastinch.solver.search.GatePlacement;
import lastinch.solver.search.OperatingMap;
import lastinch.solver.search.SmallestChange;
import lastinch.solver.study.Goal;
import lastinch.solver.study.Measure;
import lastinch.solver.study.Pourer;
import lastinch.solver.study.RunCache;
import lastinch.solver.study.RunSummary;
import lastinch.solver.uncertainty.FillProbability;
import lastinch.ui.words.study.Compared;

/** Studies of the demo feather with invented outcomes in place of runs. */
public final class Studied {
  private static final Path DEMO = Path.of("..", "cases", "demo");
  private static final CatalogueMaterials MATERIALS = new CatalogueMaterials(Catalogue.builtIn());

  /** In the crucible of the demo [kg]. */
  private static final double MELTED = 1.1;

  private Studied() {}

  /** A demo plan. */
  public static Plan plan(String file) {
    ReadResult read = CaseReader.read(DEMO.resolve(file), MATERIALS);
    return ((ReadResult.Sound) read).plan();
  }

  /** Its levers. */
  public static List<Lever> levers(Plan plan) {
    return Levers.of(plan.pourCase(), OwnedThings.of(plan, MATERIALS, DisplayUnits.METRIC));
  }

  /** Demo plans set side by side, their outcomes by a law. */
  public static Compared compared(ToDoubleFunction<PourCase> law, String... files) {
    List<Compared.Poured> poured = new ArrayList<>();
    List<Difference> differences = new ArrayList<>();
    try (RunCache studies = new RunCache(by(law), 2, RunCache.Watch.NONE, () -> false)) {
      for (String file : files) {
        Plan plan = plan(file);
        String letter = String.valueOf((char) ('A' + poured.size()));
        PourResult result = result(law.applyAsDouble(plan.pourCase()));
        poured.add(new Compared.Poured(letter, file, plan, result));
        if (poured.size() > 1) {
          PourCase first = poured.get(0).plan().pourCase();
          differences.add(Difference.between(studies, first, plan.pourCase()));
        }
      }
      return new Compared(poured, differences, studies.runs());
    }
  }

  private static PourResult result(double spare) {
    return spare >= 0.0
        ? HandMade.filled(Math.min(1.0, spare), List.of())
        : HandMade.stopped(StopReason.SLUSH, 0.32 * (1.0 + Math.max(-1.0, spare)));
  }

  /** A glance at a made-up result with so much heat to spare; negative: so much is missing. */
  public static RunSummary glance(PourCase job, double spare) {
    PourResult result = result(spare);
    RunSummary g = RunSummary.of(job, result);
    return new RunSummary(
        g.end(), g.measured(), g.coldest(), g.meeting(), FlowLimit.HAND, g.reason(), g.findings());
  }

  /** Answers by a law. */
  public static Pourer by(ToDoubleFunction<PourCase> law) {
    return (job, stop) -> glance(job, law.applyAsDouble(job));
  }

  /** Seconds in which 1.1 kg are poured, whatever is melted. */
  public static double seconds(PourCase job) {
    double seconds = ((Pour.Empties) job.pour()).seconds().value();
    return seconds * MELTED / job.metal().melted();
  }

  /** The smallest change by a law. */
  public static SmallestChange least(Plan plan, ToDoubleFunction<PourCase> law, double spare) {
    try (RunCache studies = new RunCache(by(law), 2, RunCache.Watch.NONE, () -> false)) {
      return SmallestChange.of(studies, plan.pourCase(), levers(plan), Goal.heat(spare));
    }
  }

  /** A map of pouring time and reading by a law. */
  public static OperatingMap room(Plan plan, ToDoubleFunction<PourCase> law) {
    List<Lever> levers = levers(plan);
    Lever seconds = Levers.find(levers, "emptiesIn", "").orElseThrow();
    Lever reading = Levers.find(levers, "reading", "").orElseThrow();
    OperatingMap.Question question =
        new OperatingMap.Question(
            seconds, 2.0, 8.0, reading, 1373.15, 1573.15, 7, 6, Goal.heat(0.2));
    try (RunCache studies = new RunCache(by(law), 2, RunCache.Watch.NONE, () -> false)) {
      return OperatingMap.of(studies, plan.pourCase(), question);
    }
  }

  /** How sure a plan is, by a law. */
  public static FillProbability sure(Plan plan, ToDoubleFunction<PourCase> law, boolean thorough) {
    try (RunCache studies = new RunCache(by(law), 2, RunCache.Watch.NONE, () -> false)) {
      return FillProbability.of(studies, plan.pourCase(), Measure.MARGIN, 256, thorough);
    }
  }

  /** What explains a casting that stopped somewhere, by a law. */
  public static Diagnosis blame(Plan plan, ToDoubleFunction<PourCase> law, double stopped) {
    Observation found =
        new Observation(
            OptionalDouble.of(stopped),
            OptionalDouble.empty(),
            Optional.of(Observation.Lip.ROUNDED),
            Optional.empty(),
            OptionalDouble.empty(),
            OptionalDouble.empty());
    try (RunCache studies = new RunCache(by(law), 2, RunCache.Watch.NONE, () -> false)) {
      return Diagnosis.of(
          studies, (job, stop) -> result(law.applyAsDouble(job)), plan.pourCase(), found);
    }
  }

  /** Where to gate, by a law. */
  public static GatePlacement gates(Plan plan, ToDoubleFunction<PourCase> law) {
    try (RunCache studies = new RunCache(by(law), 2, RunCache.Watch.NONE, () -> false)) {
      return GatePlacement.of(
          studies,
          plan.pourCase(),
          OwnedThings.of(plan, MATERIALS, DisplayUnits.METRIC),
          Goal.heat(0.2),
          GatePlacement.MOST);
    }
  }
}
