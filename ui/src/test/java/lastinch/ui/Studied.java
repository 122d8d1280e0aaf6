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
import lastinch.solver.decide.Blame;
import lastinch.solver.decide.Difference;
import lastinch.solver.decide.Found;
import lastinch.solver.decide.Gates;
import lastinch.solver.decide.Glance;
import lastinch.solver.decide.Goal;
import lastinch.solver.decide.Least;
import lastinch.solver.decide.Lever;
import lastinch.solver.decide.Levers;
import lastinch.solver.decide.Pourer;
import lastinch.solver.decide.Room;
import lastinch.solver.decide.Studies;
import lastinch.solver.decide.Sure;
import lastinch.solver.result.FlowLimit;
import lastinch.solver.result.PourResult;
import lastinch.solver.result.StopReason;
import lastinch.ui.words.Compared;

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
    try (Studies studies = new Studies(by(law), 2, Studies.Watch.NONE, () -> false)) {
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
  public static Glance glance(PourCase job, double spare) {
    PourResult result = result(spare);
    Glance g = Glance.of(job, result);
    return new Glance(
        g.end(),
        g.heat(),
        g.reach(),
        g.missing(),
        g.signed(),
        g.time(),
        g.coldest(),
        g.worstLap(),
        g.edgesRounded(),
        g.gateSpeed(),
        g.meeting(),
        FlowLimit.HAND,
        g.reason(),
        g.findings());
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
  public static Least least(Plan plan, ToDoubleFunction<PourCase> law, double spare) {
    try (Studies studies = new Studies(by(law), 2, Studies.Watch.NONE, () -> false)) {
      return Least.of(studies, plan.pourCase(), levers(plan), Goal.heat(spare));
    }
  }

  /** A map of pouring time and reading by a law. */
  public static Room room(Plan plan, ToDoubleFunction<PourCase> law) {
    List<Lever> levers = levers(plan);
    Lever seconds = Levers.find(levers, "emptiesIn", "").orElseThrow();
    Lever reading = Levers.find(levers, "reading", "").orElseThrow();
    Room.Question question =
        new Room.Question(seconds, 2.0, 8.0, reading, 1373.15, 1573.15, 7, 6, 0.2);
    try (Studies studies = new Studies(by(law), 2, Studies.Watch.NONE, () -> false)) {
      return Room.of(studies, plan.pourCase(), question);
    }
  }

  /** How sure a plan is, by a law. */
  public static Sure sure(Plan plan, ToDoubleFunction<PourCase> law, boolean thorough) {
    try (Studies studies = new Studies(by(law), 2, Studies.Watch.NONE, () -> false)) {
      return Sure.of(studies, plan.pourCase(), 256, thorough);
    }
  }

  /** What explains a casting that stopped somewhere, by a law. */
  public static Blame blame(Plan plan, ToDoubleFunction<PourCase> law, double stopped) {
    Found found =
        new Found(
            OptionalDouble.of(stopped),
            OptionalDouble.empty(),
            Optional.of(Found.Lip.ROUNDED),
            Optional.empty(),
            OptionalDouble.empty(),
            OptionalDouble.empty());
    try (Studies studies = new Studies(by(law), 2, Studies.Watch.NONE, () -> false)) {
      return Blame.of(
          studies, (job, stop) -> result(law.applyAsDouble(job)), plan.pourCase(), found);
    }
  }

  /** Where to gate, by a law. */
  public static Gates gates(Plan plan, ToDoubleFunction<PourCase> law) {
    try (Studies studies = new Studies(by(law), 2, Studies.Watch.NONE, () -> false)) {
      return Gates.of(
          studies,
          plan.pourCase(),
          OwnedThings.of(plan, MATERIALS, DisplayUnits.METRIC),
          0.2,
          Gates.MOST);
    }
  }
}
