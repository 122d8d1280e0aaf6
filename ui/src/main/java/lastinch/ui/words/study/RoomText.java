package lastinch.ui.words.study;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.function.Predicate;
import lastinch.cases.plan.Plan;
import lastinch.solver.casting.Station;
import lastinch.solver.levers.Bound;
import lastinch.solver.levers.Lever;
import lastinch.solver.search.LeverAnswer;
import lastinch.solver.search.OperatingMap;
import lastinch.solver.study.RunSummary;
import lastinch.ui.words.Care;
import lastinch.ui.words.Figures;
import lastinch.ui.words.Page;
import lastinch.ui.words.PlainLetters;
import lastinch.ui.words.Sentences;

/** The printed map of room to move, and its table. */
public final class RoomText {
  private final Sentences sentences;
  private final Figures figures;
  private final LeverWords levers;
  private final GlanceWords glances;
  private final RoomMap map;

  public RoomText(Sentences sentences, Figures figures) {
    this.sentences = Objects.requireNonNull(sentences, "sentences");
    this.figures = Objects.requireNonNull(figures, "figures");
    this.levers = new LeverWords(sentences, figures);
    this.glances = new GlanceWords(sentences, figures);
    this.map = new RoomMap(sentences, figures);
  }

  /** The whole answer, line by line. */
  public List<String> full(Plan plan, OperatingMap room) {
    return page(plan, room, true);
  }

  /** As much of it as fits a screen. */
  public List<String> screen(Plan plan, OperatingMap room) {
    return page(plan, room, false);
  }

  private List<String> page(Plan plan, OperatingMap room, boolean all) {
    Page page = new Page();
    verdict(plan, room).forEach(page::paragraph);
    page.blank();
    page.heading(sentences.say("room.title", "title", plan.title()));
    map.add(page, room, all);
    if (all && room.whole()) {
      page.blank();
      along(room).forEach(line -> page.wrapped("", "  ", line));
    }
    limits(page, plan, room.across(), all);
    limits(page, plan, room.up(), all);
    page.blank();
    new Care(sentences).add(page, plan.pourCase());
    return PlainLetters.all(page.lines());
  }

  /** What it comes to, in a few sentences. */
  public List<String> brief(Plan plan, OperatingMap room) {
    Page page = new Page();
    verdict(plan, room).forEach(page::paragraph);
    return PlainLetters.all(page.lines());
  }

  /** How the plan itself fares, and how far each of the two levers alone may or must go. */
  private List<String> verdict(Plan plan, OperatingMap room) {
    List<String> all = new ArrayList<>();
    all.add(
        sentences.say(
            "room.base",
            "outcome",
            glances.outcome(room.plan()),
            "across",
            here(room.across()),
            "up",
            here(room.up())));
    if (room.own().whole()) {
      for (Lever lever : List.of(room.across(), room.up())) {
        room.own().answers().stream()
            .filter(a -> a.lever().equals(lever))
            .forEach(a -> all.add(own(plan, a)));
      }
    }
    return all;
  }

  /** What one lever does alone, all else as planned. */
  private String own(Plan plan, LeverAnswer a) {
    Lever lever = a.lever();
    return switch (a.kind()) {
      case ENOUGH, MAY_SLIP -> {
        double at = a.at().orElseThrow().value();
        boolean slips = a.kind() == LeverAnswer.Kind.MAY_SLIP;
        String key = slips ? "room.own.slips" : "room.own.enough";
        String move = at == lever.now() ? levers.name(lever) : levers.move(lever, at);
        yield sentences.say(
                key,
                "what",
                move,
                "value",
                levers.value(lever, at),
                "short",
                a.justShort()
                    .map(
                        t ->
                            sentences.say(
                                "room.own.short",
                                "value",
                                levers.value(lever, t.value()),
                                "outcome",
                                glances.outcome(t.glance())))
                    .orElse(""))
            + thinnest(plan, lever, at);
      }
      case NOT_ENOUGH, NO_HELP ->
          sentences.say(
              "room.own.never",
              "lever",
              levers.name(lever),
              "value",
              levers.value(lever, a.best().value()),
              "outcome",
              glances.outcome(a.best().glance()));
      case HOLDS, COMPARED ->
          sentences.say(
                  "room.own.holds",
                  "lever",
                  levers.name(lever),
                  "low",
                  levers.value(lever, a.tried().get(0).value()),
                  "high",
                  levers.value(lever, a.tried().get(a.tried().size() - 1).value()))
              + thinnest(plan, lever, a.tried().get(0).value());
      case NO_ANSWER -> sentences.say("room.own.none", "lever", levers.name(lever));
    };
  }

  /** How thin the thinnest place of the piece is at a change of its thickness all over. */
  private String thinnest(Plan plan, Lever lever, double change) {
    if (!lever.key().equals("thicker")) {
      return "";
    }
    double now =
        plan.pourCase().piece().limbs().stream()
            .flatMap(l -> l.stations().stream())
            .mapToDouble(Station::thickness)
            .min()
            .orElseThrow();
    return " "
        + sentences.say(
            "room.own.thinnest",
            "then",
            figures.calipers(now + change),
            "now",
            figures.calipers(now));
  }

  private String here(Lever lever) {
    return sentences.say(
        "room.here", "lever", levers.name(lever), "value", levers.value(lever, lever.now()));
  }

  /** In three rows, where along the bottom it fills. */
  private List<String> along(OperatingMap room) {
    List<Integer> rows = RoomMap.chosen(room.upValues().size(), 3);
    List<String> lines = new ArrayList<>();
    for (int row : rows) {
      lines.add(
          sentences.say(
              "room.along",
              "lever",
              levers.name(room.up()),
              "value",
              levers.value(room.up(), room.upValues().get(row)),
              "where",
              where(room, row, RunSummary::filled)));
    }
    return lines;
  }

  /** Where along the bottom a row of the map is so. */
  String where(OperatingMap room, int row, Predicate<RunSummary> so) {
    List<String> parts = new ArrayList<>();
    int last = room.acrossValues().size() - 1;
    int start = -1;
    for (int c = 0; c <= last + 1; c++) {
      boolean fills = c <= last && room.at(c, row).filter(so).isPresent();
      if (fills && start < 0) {
        start = c;
      } else if (!fills && start >= 0) {
        parts.add(stretch(room, start, c - 1));
        start = -1;
      }
    }
    if (parts.isEmpty()) {
      return sentences.say("room.nowhere");
    }
    return String.join(", ", parts);
  }

  private String stretch(OperatingMap room, int from, int to) {
    int last = room.acrossValues().size() - 1;
    String low = levers.value(room.across(), room.acrossValues().get(from));
    String high = levers.value(room.across(), room.acrossValues().get(to));
    if (from == 0 && to == last) {
      return sentences.say("room.everywhere");
    }
    if (from == 0) {
      return sentences.say("room.upTo", "value", high);
    }
    return to == last
        ? sentences.say("room.from", "value", low)
        : sentences.say("room.fromTo", "from", low, "to", high);
  }

  /** Why practice ends where it does; on a screen only where an end brings a caution with it. */
  private void limits(Page page, Plan plan, Lever lever, boolean all) {
    Care care = new Care(sentences);
    for (Bound end : List.of(lever.practical().low(), lever.practical().high())) {
      if (!all && care.change(plan.pourCase(), lever.set(plan.pourCase(), end.value())).isEmpty()) {
        continue;
      }
      page.wrapped(
          "",
          "  ",
          sentences.say(
              end.equals(lever.practical().low()) ? "room.limit.low" : "room.limit.high",
              "lever",
              levers.name(lever),
              "value",
              levers.value(lever, end.value()),
              "reason",
              levers.reason(end)));
      care.beside(page, "  ", plan.pourCase(), lever, end.value());
    }
  }

  /** All runs of the grid as a table for other programs, comma between, one row each. */
  public List<String> table(OperatingMap room) {
    List<String> lines = new ArrayList<>();
    lines.add(
        levers.name(room.across())
            + " ["
            + levers.unit(room.across())
            + "],"
            + levers.name(room.up())
            + " ["
            + levers.unit(room.up())
            + "],outcome,heat to spare [%],missing ["
            + figures.lengthUnit()
            + "],worst lap,within practice");
    for (int row = 0; row < room.upValues().size(); row++) {
      for (int column = 0; column < room.acrossValues().size(); column++) {
        lines.add(entry(room, column, row));
      }
    }
    return PlainLetters.all(lines);
  }

  private String entry(OperatingMap room, int column, int row) {
    double x = room.acrossValues().get(column);
    double y = room.upValues().get(row);
    String place =
        figures.trimmed(levers.number(room.across(), x), 4)
            + ","
            + figures.trimmed(levers.number(room.up(), y), 4)
            + ",";
    Optional<RunSummary> glance = room.at(column, row);
    boolean practical = room.across().practical().holds(x) && room.up().practical().holds(y);
    if (glance.isEmpty() || !glance.get().answered()) {
      return place + "no answer,,,," + (practical ? "yes" : "no");
    }
    RunSummary g = glance.get();
    return place
        + switch (g.mark()) {
          case STOPS -> "stops";
          case APART -> "apart";
          case JUST -> "just";
          case LAPS -> "laps";
          case FILLS, NO_ANSWER -> "fills";
        }
        + ","
        + (g.filled() ? figures.trimmed(100.0 * g.heat(), 1) : "")
        + ","
        + (g.end() != RunSummary.End.STOPPED ? "" : figures.trimmed(figures.length(g.missing()), 1))
        + ","
        + figures.trimmed(g.worstLap(), 2)
        + ","
        + (practical ? "yes" : "no");
  }
}
