package lastinch.ui.cli.study;

import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import lastinch.solver.levers.Lever;
import lastinch.solver.levers.ParameterUnit;
import lastinch.solver.search.OperatingMap;
import lastinch.solver.study.Goal;
import lastinch.solver.study.RunCache;
import lastinch.solver.study.RunSummary;
import lastinch.ui.chart.StudyCharts;
import lastinch.ui.cli.Console;
import lastinch.ui.cli.OutFolder;
import lastinch.ui.cli.Request;
import lastinch.ui.cli.Workshop;
import lastinch.ui.json.RoomJson;
import lastinch.ui.words.Sentences;
import lastinch.ui.words.study.LeverWords;
import lastinch.ui.words.study.RoomText;
import lastinch.ui.words.study.StudyTables;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** {@code lastinch room CASE --across LEVER=a..b --up LEVER=c..d}. */
@Command(name = "room")
public final class RoomCommand extends OnePlanCommand {
  private static final int MOST = 200;

  @Option(names = "--across", paramLabel = "LEVER=a..b", required = true, descriptionKey = "across")
  private String across;

  @Option(names = "--up", paramLabel = "LEVER=c..d", required = true, descriptionKey = "up")
  private String up;

  @Option(names = "--steps", paramLabel = "20", descriptionKey = "steps")
  private int steps = 20;

  @Mixin private SpareOption spare = new SpareOption();

  public RoomCommand(Console surroundings, Workshop workshop, Sentences sentences) {
    super(surroundings, workshop, sentences);
  }

  @Override
  List<String> wrongWords() {
    List<String> wrong = new ArrayList<>(spare.wrong(sentences));
    if (steps < 2 || steps > MOST) {
      wrong.add(
          sentences.say(
              "room.steps.wrong", "most", Integer.toString(MOST), "word", Integer.toString(steps)));
    }
    return wrong;
  }

  /** A lever and the ends between which it is moved. */
  private record Side(Lever lever, double from, double to) {}

  /** Both sides as far as they can be read, and what is wrong with them. */
  private record Sides(Optional<Side> across, Optional<Side> up, List<String> wrong) {}

  private Sides sides(Request asked) {
    LeverWords words = new LeverWords(sentences, asked.figures());
    List<Lever> levers = asked.levers();
    List<String> wrong = new ArrayList<>();
    Optional<Side> x = side(levers, words, across, wrong);
    Optional<Side> y = side(levers, words, up, wrong);
    if (x.isPresent()
        && y.isPresent()
        && x.get().lever().key().equals(y.get().lever().key())
        && x.get().lever().part().equals(y.get().lever().part())) {
      wrong.add(sentences.say("room.sameLever", "lever", words.name(x.get().lever())));
    }
    return new Sides(x, y, wrong);
  }

  @Override
  List<String> misfits(Request asked) {
    return sides(asked).wrong();
  }

  @Override
  boolean changesThePiece() {
    return true;
  }

  @Override
  int usualRuns(Request asked) {
    return OperatingMap.usualRuns(question(asked));
  }

  @Override
  Answer answer(Request asked, RunCache studies) {
    return answer(asked, OperatingMap.of(studies, asked.plan().pourCase(), question(asked)));
  }

  private OperatingMap.Question question(Request asked) {
    Sides sides = sides(asked);
    double wanted = spare.of(asked.plan());
    Side a = sides.across().orElseThrow();
    Side b = sides.up().orElseThrow();
    return new OperatingMap.Question(
        a.lever(), a.from(), a.to(), b.lever(), b.from(), b.to(), steps, steps, Goal.heat(wanted));
  }

  private Answer answer(Request asked, OperatingMap room) {
    RoomText text = new RoomText(sentences, asked.figures());
    Map<String, OutFolder.Content> files = new LinkedHashMap<>();
    files.put("room.csv", f -> Files.write(f, text.table(room), StandardCharsets.US_ASCII));
    return new Answer(
        text.full(asked.plan(), room),
        text.screen(asked.plan(), room),
        text.brief(asked.plan(), room),
        RoomJson.of(asked.plan(), file(), room, asked.how()),
        new StudyTables(sentences, asked.figures()).of(room),
        new StudyCharts(sentences, asked.figures()).room(asked.plan(), room),
        files,
        room.whole(),
        room.plan().end() != RunSummary.End.BROKE_DOWN);
  }

  /** Reads {@code LEVER=a..b}; the range may be left out. */
  private Optional<Side> side(
      List<Lever> levers, LeverWords words, String typed, List<String> wrong) {
    int equals = typed.indexOf('=');
    String name = equals < 0 ? typed : typed.substring(0, equals);
    Optional<Lever> lever = words.find(levers, name);
    if (lever.isEmpty()) {
      wrong.add(words.unknown(levers, name));
      return Optional.empty();
    }
    if (lever.get().unit() == ParameterUnit.CHOICE) {
      wrong.add(sentences.say("room.choice", "lever", words.name(lever.get())));
      return Optional.empty();
    }
    if (equals < 0) {
      return Optional.of(
          new Side(
              lever.get(),
              lever.get().practical().low().value(),
              lever.get().practical().high().value()));
    }
    return ends(lever.get(), words, typed.substring(equals + 1), wrong);
  }

  private Optional<Side> ends(Lever lever, LeverWords words, String range, List<String> wrong) {
    int dots = range.indexOf("..");
    OptionalDouble to =
        dots < 0 ? OptionalDouble.empty() : words.parse(lever, range.substring(dots + 2));
    OptionalDouble from =
        dots < 0
            ? OptionalDouble.empty()
            : words.parseLike(lever, range.substring(0, dots), range.substring(dots + 2));
    if (from.isEmpty() || to.isEmpty()) {
      wrong.add(
          sentences.say(
              "room.range.unread",
              "range",
              range.strip(),
              "lever",
              words.name(lever),
              "like",
              words.range(lever)));
      return Optional.empty();
    }
    if (!(from.getAsDouble() < to.getAsDouble())) {
      wrong.add(
          sentences.say("room.range.reversed", "range", range.strip(), "lever", words.name(lever)));
      return Optional.empty();
    }
    boolean can =
        lever.physical().holds(from.getAsDouble()) && lever.physical().holds(to.getAsDouble());
    if (!can) {
      wrong.add(
          sentences.say(
              "room.range.beyond",
              "range",
              range.strip(),
              "lever",
              words.name(lever),
              "low",
              words.value(lever, lever.physical().low().value()),
              "high",
              words.value(lever, lever.physical().high().value())));
      return Optional.empty();
    }
    return Optional.of(new Side(lever, from.getAsDouble(), to.getAsDouble()));
  }
}
