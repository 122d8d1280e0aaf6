package lastinch.ui.cli.study;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import lastinch.cases.plan.Plan;
import lastinch.cases.plan.ReadResult;
import lastinch.solver.casting.Model;
import lastinch.solver.casting.Place;
import lastinch.solver.casting.PourCase;
import lastinch.solver.casting.gating.Gate;
import lastinch.solver.search.GatePlacement;
import lastinch.solver.study.Goal;
import lastinch.solver.study.RunCache;
import lastinch.solver.study.RunSummary;
import lastinch.ui.chart.StudyCharts;
import lastinch.ui.cli.Console;
import lastinch.ui.cli.OutFolder;
import lastinch.ui.cli.Request;
import lastinch.ui.cli.Workshop;
import lastinch.ui.json.GatesJson;
import lastinch.ui.words.Sentences;
import lastinch.ui.words.study.GateFile;
import lastinch.ui.words.study.GatesText;
import lastinch.ui.words.study.StudyTables;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** {@code lastinch gates CASE}. */
@Command(name = "gates")
public final class GatesCommand extends OnePlanCommand {
  /** Name of the ready plan among the files of the answer. */
  private static final String READY = "gated.yaml";

  @Mixin private SpareOption spare = new SpareOption();

  @Option(names = "--most", paramLabel = "COUNT", descriptionKey = "most")
  private String most = Integer.toString(GatePlacement.MOST);

  public GatesCommand(Console surroundings, Workshop workshop, Sentences sentences) {
    super(surroundings, workshop, sentences);
  }

  @Override
  List<String> wrongWords() {
    List<String> wrong = new ArrayList<>(spare.wrong(sentences));
    if (!most.strip().matches("[1-" + GatePlacement.MOST + "]")) {
      wrong.add(
          sentences.say(
              "gates.most.wrong", "most", Integer.toString(GatePlacement.MOST), "word", most));
    }
    return wrong;
  }

  @Override
  List<String> misfits(Request asked) {
    PourCase job = asked.plan().pourCase();
    List<String> wrong = new ArrayList<>();
    if (job.piece().limbs().size() > 1) {
      int count = job.piece().limbs().size();
      wrong.add(sentences.say("gates.unsuited.limbs", "count", Integer.toString(count)));
    }
    if (job.piece().model().filter(m -> m.form() != Model.Form.LONG).isPresent()) {
      wrong.add(sentences.say("gates.unsuited.drawn"));
    }
    if (job.gating().gates().isEmpty()) {
      wrong.add(sentences.say("gates.unsuited.none"));
    }
    if (job.checking().cupKeptAt().isPresent()) {
      wrong.add(sentences.say("gates.unsuited.cup"));
    }
    return wrong;
  }

  @Override
  int usualRuns(Request asked) {
    return GatePlacement.usualRuns(Integer.parseInt(most.strip()));
  }

  @Override
  Answer answer(Request asked, RunCache studies) {
    Plan plan = asked.plan();
    double wanted = spare.of(plan);
    GatePlacement gates =
        GatePlacement.of(
            studies,
            plan.pourCase(),
            asked.owned(),
            Goal.heat(wanted),
            Integer.parseInt(most.strip()));
    GatesText text = new GatesText(sentences, asked.figures());
    Map<String, OutFolder.Content> files = new LinkedHashMap<>();
    files.put(READY, f -> Files.write(f, ready(plan, gates), StandardCharsets.UTF_8));
    return new Answer(
        text.full(plan, gates),
        text.screen(plan, gates),
        text.brief(gates),
        GatesJson.of(plan, file(), gates, asked.how()),
        new StudyTables(sentences, asked.figures()).of(gates),
        new StudyCharts(sentences, asked.figures()).gates(plan, gates),
        files,
        true,
        gates.plan().end() != RunSummary.End.BROKE_DOWN);
  }

  /** The plan gated anew, based on the old one as seen from the folder of the answer. */
  private List<String> ready(Plan plan, GatePlacement gates) {
    Path from = folder().orElseThrow().toAbsolutePath().normalize();
    Path old = plan.file().toAbsolutePath().normalize();
    GateFile file = new GateFile(sentences);
    double factor = factor(plan, gates, old);
    return file.lines(plan, from.relativize(old).toString(), gates.best(), factor);
  }

  /**
   * From distances in the cavity to typed ones [-]: a first draft is read back, because a pattern
   * may be larger than the casting that a person measured.
   */
  private double factor(Plan plan, GatePlacement gates, Path old) {
    Optional<Double> wanted = firstPlace(gates.best().job().gating().gates());
    if (wanted.isEmpty()) {
      return 1.0;
    }
    try {
      Path draft = Files.createTempFile("lastinch-", ".yaml");
      try {
        List<String> lines = new GateFile(sentences).lines(plan, old.toString(), gates.best(), 1.0);
        Files.write(draft, lines, StandardCharsets.UTF_8);
        return read(draft) instanceof ReadResult.Sound sound
            ? firstPlace(sound.plan().pourCase().gating().gates())
                .map(found -> wanted.get() / found)
                .orElse(1.0)
            : 1.0;
      } finally {
        Files.deleteIfExists(draft);
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static Optional<Double> firstPlace(List<Gate> gates) {
    return gates.stream()
        .map(Gate::place)
        .filter(Place.At.class::isInstance)
        .map(p -> ((Place.At) p).distance())
        .filter(d -> d > 0.0)
        .findFirst();
  }
}
