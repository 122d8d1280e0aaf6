package lastinch.ui.cli.study;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import lastinch.solver.levers.Lever;
import lastinch.solver.search.SmallestChange;
import lastinch.solver.search.SureChange;
import lastinch.solver.study.Goal;
import lastinch.solver.study.RunCache;
import lastinch.solver.study.RunSummary;
import lastinch.ui.chart.StudyCharts;
import lastinch.ui.cli.Console;
import lastinch.ui.cli.Request;
import lastinch.ui.cli.Workshop;
import lastinch.ui.json.LeastJson;
import lastinch.ui.words.Sentences;
import lastinch.ui.words.study.LeastText;
import lastinch.ui.words.study.LeverWords;
import lastinch.ui.words.study.StudyTables;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** {@code lastinch least CASE}. */
@Command(name = "least")
public final class LeastCommand extends OnePlanCommand {
  /** Chances that 128 days can tell [-]. */
  private static final double LEAST_SURE = 0.5;

  private static final double MOST_SURE = 0.98;

  @Mixin private SpareOption spare = new SpareOption();

  @Option(names = "--only", paramLabel = "LEVER", split = ",", descriptionKey = "only")
  private List<String> only = List.of();

  @Option(names = "--full-edge", descriptionKey = "fullEdge")
  private boolean fullEdge;

  @Option(names = "--sure", paramLabel = "0.9", descriptionKey = "sure")
  private Optional<String> sure = Optional.empty();

  public LeastCommand(Console surroundings, Workshop workshop, Sentences sentences) {
    super(surroundings, workshop, sentences);
  }

  @Override
  List<String> wrongWords() {
    List<String> wrong = new ArrayList<>(spare.wrong(sentences));
    if (sure.isPresent() && chance().isEmpty()) {
      wrong.add(sentences.say("least.sure.wrong", "word", sure.get()));
    }
    return wrong;
  }

  /** Share of the days on which it has to fill, when it can be meant. */
  private Optional<Double> chance() {
    return sure.map(String::strip)
        .filter(typed -> typed.matches("0?\\.\\d{1,3}"))
        .map(Double::parseDouble)
        .filter(share -> share >= LEAST_SURE && share <= MOST_SURE);
  }

  @Override
  List<String> misfits(Request asked) {
    LeverWords words = new LeverWords(sentences, asked.figures());
    List<Lever> all = asked.levers();
    return only.stream()
        .filter(name -> words.find(all, name).isEmpty())
        .map(name -> words.unknown(all, name))
        .toList();
  }

  @Override
  boolean changesThePiece() {
    return true;
  }

  @Override
  int usualRuns(Request asked) {
    int levers = chosen(asked).size();
    return SmallestChange.usualRuns(chosen(asked))
        + chance().map(c -> SureChange.usualRuns(levers)).orElse(0);
  }

  @Override
  Answer answer(Request asked, RunCache studies) {
    Goal heat = Goal.heat(spare.of(asked.plan()));
    SmallestChange least =
        SmallestChange.of(
            studies, asked.plan().pourCase(), chosen(asked), fullEdge ? heat.withFullEdge() : heat);
    LeastText text = new LeastText(sentences, asked.figures());
    Optional<SureChange.Wanted> sures =
        chance()
            .filter(wantedChance -> least.whole())
            .map(
                share ->
                    new SureChange.Wanted(
                        share, SureChange.of(studies, asked.plan().pourCase(), least, share)));
    String name = asked.how().typed(file());
    return new Answer(
        text.full(asked.plan(), name, least, sures),
        text.screen(asked.plan(), name, least, sures),
        text.brief(asked.plan(), least, sures),
        LeastJson.of(asked.plan(), file(), least, sures, asked.how()),
        new StudyTables(sentences, asked.figures()).of(least),
        new StudyCharts(sentences, asked.figures()).least(asked.plan(), least),
        Map.of(),
        least.whole(),
        least.base().end() != RunSummary.End.BROKE_DOWN);
  }

  private List<Lever> chosen(Request asked) {
    LeverWords words = new LeverWords(sentences, asked.figures());
    List<Lever> all = asked.levers();
    if (only.isEmpty()) {
      return all;
    }
    return only.stream().flatMap(name -> words.find(all, name).stream()).toList();
  }
}
