package lastinch.ui.cli.study;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import lastinch.solver.study.Measure;
import lastinch.solver.study.RunCache;
import lastinch.solver.study.RunSummary;
import lastinch.solver.uncertainty.FillProbability;
import lastinch.ui.chart.StudyCharts;
import lastinch.ui.cli.Console;
import lastinch.ui.cli.Request;
import lastinch.ui.cli.Workshop;
import lastinch.ui.json.SureJson;
import lastinch.ui.words.Sentences;
import lastinch.ui.words.study.SureText;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/** {@code lastinch sure CASE}. */
@Command(name = "sure")
public final class SureCommand extends OnePlanCommand {
  private static final int LEAST = 16;
  private static final int MOST = 65536;

  /** Days over the plane when nothing else is asked for: a run takes seconds; our own choice. */
  private static final int FEW_DAYS = 128;

  @Option(names = "--pours", paramLabel = "COUNT", descriptionKey = "pours")
  private Optional<String> pours = Optional.empty();

  @Option(names = "--thorough", descriptionKey = "thorough")
  private boolean thorough;

  public SureCommand(Console surroundings, Workshop workshop, Sentences sentences) {
    super(surroundings, workshop, sentences);
  }

  @Override
  List<String> wrongWords() {
    return count() >= LEAST && count() <= MOST
        ? List.of()
        : List.of(
            sentences.say(
                "chance.pours.wrong", "most", Integer.toString(MOST), "word", pours.orElse("")));
  }

  /** Days asked for; 0 when that is no number. */
  private int count() {
    if (pours.isEmpty()) {
      return overPlane() ? FEW_DAYS : FillProbability.USUAL_DAYS;
    }
    String typed = pours.get().strip();
    return typed.matches("\\d{1,7}") ? Integer.parseInt(typed) : 0;
  }

  @Override
  int usualRuns(Request asked) {
    return FillProbability.runs(asked.plan().pourCase(), count(), thorough);
  }

  @Override
  Answer answer(Request asked, RunCache studies) {
    FillProbability sure =
        FillProbability.of(studies, asked.plan().pourCase(), Measure.MARGIN, count(), thorough);
    SureText text = new SureText(sentences, asked.figures());
    return new Answer(
        text.full(asked.plan(), asked.how().typed(file()), sure),
        text.screen(asked.plan(), asked.how().typed(file()), sure),
        text.brief(sure),
        SureJson.of(asked.plan(), file(), sure, asked.how()),
        List.of(),
        new StudyCharts(sentences, asked.figures()).sure(asked.plan(), sure),
        Map.of(),
        true,
        sure.plan().end() != RunSummary.End.BROKE_DOWN);
  }
}
