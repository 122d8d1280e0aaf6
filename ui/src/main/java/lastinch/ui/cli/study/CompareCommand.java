package lastinch.ui.cli.study;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Supplier;
import lastinch.cases.plan.Plan;
import lastinch.solver.diagnosis.Difference;
import lastinch.solver.result.Outcome;
import lastinch.solver.result.PourResult;
import lastinch.solver.study.RunCache;
import lastinch.solver.uncertainty.BandStudy;
import lastinch.ui.chart.StudyCharts;
import lastinch.ui.cli.Console;
import lastinch.ui.cli.Request;
import lastinch.ui.cli.Workshop;
import lastinch.ui.json.CompareJson;
import lastinch.ui.words.Sentences;
import lastinch.ui.words.study.CompareText;
import lastinch.ui.words.study.Compared;
import lastinch.ui.words.study.StudyTables;
import picocli.CommandLine.Command;
import picocli.CommandLine.Parameters;

/** {@code lastinch compare A B ...}. */
@Command(name = "compare")
public final class CompareCommand extends StudyCommand {
  private static final int FEWEST = 2;
  private static final int MOST = 12;

  @Parameters(paramLabel = "CASE", arity = "0..*", descriptionKey = "cases")
  private List<Path> cases = List.of();

  public CompareCommand(Console surroundings, Workshop workshop, Sentences sentences) {
    super(surroundings, workshop, sentences);
  }

  @Override
  List<Path> files() {
    return cases;
  }

  @Override
  List<String> wrongWords() {
    return cases.size() < FEWEST || cases.size() > MOST
        ? List.of(sentences.say("compare.count", "count", Integer.toString(cases.size())))
        : List.of();
  }

  @Override
  int usualRuns(Request asked) {
    int runs = 0;
    for (int i = 1; i < asked.plans().size(); i++) {
      runs += Difference.runs(asked.plans().get(0).pourCase(), asked.plans().get(i).pourCase()) - 2;
    }
    return runs;
  }

  @Override
  String title(Request asked) {
    return sentences.say("compare.chart.title");
  }

  @Override
  Answer answer(Request asked, RunCache studies) {
    List<Supplier<PourResult>> tasks = new ArrayList<>();
    for (Plan plan : asked.plans()) {
      tasks.add(() -> asked.runs().whole(plan.pourCase(), studies::stopRequested));
    }
    List<Optional<PourResult>> results = studies.all(tasks);
    List<Compared.Poured> poured = new ArrayList<>();
    for (int i = 0; i < results.size(); i++) {
      PourResult result = results.get(i).orElseThrow(RunCache.Cancelled::new);
      Plan plan = asked.plans().get(i);
      Optional<BandStudy> bands =
          workshop.bands(plan.pourCase(), result, asked.how(), studies::stopRequested);
      poured.add(new Compared.Poured(letter(i), files().get(i).toString(), plan, result, bands));
    }
    List<Difference> differences = new ArrayList<>();
    for (int i = 1; i < poured.size(); i++) {
      differences.add(
          Difference.between(
              studies, poured.get(0).plan().pourCase(), poured.get(i).plan().pourCase()));
    }
    Compared compared = new Compared(poured, differences, studies.runs());
    CompareText text = new CompareText(sentences, asked.figures());
    return new Answer(
        text.full(compared, asked.how()),
        text.screen(compared, asked.how()),
        text.brief(compared, asked.how()),
        CompareJson.of(compared, asked.how()),
        new StudyTables(sentences, asked.figures()).of(compared),
        new StudyCharts(sentences, asked.figures()).compared(compared),
        Map.of(),
        true,
        poured.stream().noneMatch(p -> p.result().outcome() instanceof Outcome.BrokeDown));
  }

  private static String letter(int number) {
    return String.valueOf((char) ('A' + number));
  }
}
