package lastinch.ui.cli.study;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import lastinch.cases.units.Dimension;
import lastinch.cases.units.Quantity;
import lastinch.cases.units.QuantityText;
import lastinch.solver.levers.Lever;
import lastinch.solver.search.SmallestChange;
import lastinch.solver.search.SureChange;
import lastinch.solver.study.Goal;
import lastinch.solver.study.RunCache;
import lastinch.solver.study.RunSummary;
import lastinch.ui.chart.StudyCharts;
import lastinch.ui.cli.Console;
import lastinch.ui.cli.OutFolder;
import lastinch.ui.cli.Request;
import lastinch.ui.cli.Workshop;
import lastinch.ui.json.LeastJson;
import lastinch.ui.words.Sentences;
import lastinch.ui.words.study.LeastText;
import lastinch.ui.words.study.LeverWords;
import lastinch.ui.words.study.StudyTables;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code lastinch least CASE}. */
@Command(name = "least")
public final class LeastCommand extends StudyCommand {
  /** Heat to spare when nothing is asked for [-]; our own figure, no source. */
  private static final double USUAL_SPARE = 0.20;

  private static final double MOST_SPARE = 0.95;

  /** Chances that 128 days can tell [-]. */
  private static final double LEAST_SURE = 0.5;

  private static final double MOST_SURE = 0.98;

  @Parameters(paramLabel = "CASE", descriptionKey = "case")
  private Path file;

  @Option(names = "--spare", paramLabel = "20%", descriptionKey = "spare")
  private Optional<String> spare = Optional.empty();

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
  List<Path> files() {
    return List.of(file);
  }

  @Override
  List<String> wrongWords() {
    List<String> wrong = new ArrayList<>();
    if (spare.isPresent() && share(spare.get()).isEmpty()) {
      wrong.add(sentences.say("least.spare.wrong", "word", spare.get()));
    }
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

  /** A share typed with or without its sign, when it can be meant. */
  static Optional<Double> share(String typed) {
    String whole = typed.strip().endsWith("%") ? typed : typed + " %";
    return QuantityText.quantity(whole, Dimension.SHARE)
        .value()
        .map(Quantity::si)
        .filter(s -> s >= 0.0 && s <= MOST_SPARE);
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
    double wanted =
        spare
            .flatMap(LeastCommand::share)
            .orElse(asked.plan().want().heatToSpare().orElse(USUAL_SPARE));
    SmallestChange least =
        SmallestChange.of(
            studies, asked.plan().pourCase(), chosen(asked), new Goal(wanted, fullEdge));
    LeastText text = new LeastText(sentences, asked.figures());
    Optional<SureChange.Wanted> sures =
        chance()
            .filter(wantedChance -> least.whole())
            .map(
                share ->
                    new SureChange.Wanted(
                        share, SureChange.of(studies, asked.plan().pourCase(), least, share)));
    String name = asked.how().typed(file.toString());
    List<String> full = noted(asked, text.full(asked.plan(), name, least, sures));
    List<String> brief = text.brief(asked.plan(), least, sures);
    Map<String, OutFolder.Content> files = new LinkedHashMap<>();
    page(
        files,
        asked,
        asked.plan().title(),
        brief,
        full,
        new StudyTables(sentences, asked.figures()).of(least),
        new StudyCharts(sentences, asked.figures()).least(asked.plan(), least));
    return new Answer(
        full,
        noted(asked, text.screen(asked.plan(), name, least, sures)),
        brief,
        LeastJson.of(asked.plan(), file.toString(), least, sures, asked.how()),
        files,
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
