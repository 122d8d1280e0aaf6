package lastinch.ui.words;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.TreeSet;
import java.util.function.Predicate;
import lastinch.cases.plan.Plan;
import lastinch.solver.casting.Station;
import lastinch.solver.decide.Bound;
import lastinch.solver.decide.Glance;
import lastinch.solver.decide.Lever;
import lastinch.solver.decide.LeverAnswer;
import lastinch.solver.decide.Room;
import lastinch.solver.result.LapStretch;

/** The printed map of room to move, and its table. */
public final class RoomText {
  private static final int MOST_COLUMNS = 60;
  private static final int MOST_ROWS = 24;

  /** Rows of the map on a screen. */
  private static final int SCREEN_ROWS = 9;

  private static final int LABEL = 12;

  private final Sentences sentences;
  private final Figures figures;
  private final LeverWords levers;
  private final GlanceWords glances;

  public RoomText(Sentences sentences, Figures figures) {
    this.sentences = Objects.requireNonNull(sentences, "sentences");
    this.figures = Objects.requireNonNull(figures, "figures");
    this.levers = new LeverWords(sentences, figures);
    this.glances = new GlanceWords(sentences, figures);
  }

  /** The whole answer, line by line. */
  public List<String> full(Plan plan, Room room) {
    return page(plan, room, true);
  }

  /** As much of it as fits a screen. */
  public List<String> screen(Plan plan, Room room) {
    return page(plan, room, false);
  }

  private List<String> page(Plan plan, Room room, boolean all) {
    Page page = new Page();
    verdict(plan, room).forEach(page::paragraph);
    page.blank();
    page.heading(sentences.say("room.title", "title", plan.title()));
    map(page, room, all ? MOST_ROWS : SCREEN_ROWS);
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
  public List<String> brief(Plan plan, Room room) {
    Page page = new Page();
    verdict(plan, room).forEach(page::paragraph);
    return PlainLetters.all(page.lines());
  }

  /** How the plan itself fares, and how far each of the two levers alone may or must go. */
  private List<String> verdict(Plan plan, Room room) {
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
              levers.value(lever, a.tried().get(a.tried().size() - 1).value()));
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

  private void map(Page page, Room room, int most) {
    List<Integer> columns = chosen(room.acrossValues().size(), MOST_COLUMNS);
    List<Integer> rows = chosen(room.upValues().size(), most);
    int planColumn = nearest(room.acrossValues(), columns, room.across());
    int planRow = nearest(room.upValues(), rows, room.up());
    int wide = columns.size() <= MOST_COLUMNS / 2 ? 2 : 1;
    page.line(" " + levers.name(room.up()));
    for (int r = rows.size() - 1; r >= 0; r--) {
      StringBuilder line = new StringBuilder();
      for (int c = 0; c < columns.size(); c++) {
        boolean plan = c == planColumn && r == planRow;
        char mark = plan ? 'X' : mark(room, columns.get(c), rows.get(r));
        line.append(wide == 2 ? " " : "").append(mark);
      }
      boolean labelled = r % (rows.size() > SCREEN_ROWS ? 4 : 2) == 0 || r == rows.size() - 1;
      String label = labelled ? levers.value(room.up(), room.upValues().get(rows.get(r))) : "";
      page.line(left(label) + " |" + line.toString().stripTrailing());
    }
    page.line(" ".repeat(LABEL) + " +" + "-".repeat(wide * columns.size() + 1));
    String first = levers.value(room.across(), room.acrossValues().get(0));
    String last =
        levers.value(room.across(), room.acrossValues().get(room.acrossValues().size() - 1));
    int gap = Math.max(1, wide * columns.size() + 1 - first.length() - last.length());
    page.line(" ".repeat(LABEL + 2) + first + " ".repeat(gap) + last);
    page.line(" ".repeat(LABEL + 2) + levers.name(room.across()));
    page.blank();
    page.paragraph(key(room, planColumn >= 0 && planRow >= 0));
  }

  /** What the marks mean, those that are on the map. */
  private String key(Room room, boolean planShown) {
    TreeSet<Character> there = new TreeSet<>();
    for (int row = 0; row < room.upValues().size(); row++) {
      for (int column = 0; column < room.acrossValues().size(); column++) {
        there.add(mark(room, column, row));
      }
    }
    List<String> parts = new ArrayList<>();
    if (planShown) {
      parts.add(sentences.say("room.key.plan"));
    }
    for (Key key : Key.values()) {
      if (there.contains(key.mark)) {
        String name = "room.key." + key.name();
        parts.add(
            key == Key.SPARE
                ? sentences.say(name, "spare", figures.percent(room.spare()))
                : sentences.say(name));
      }
    }
    return String.join(", ", parts);
  }

  /** Marks of the map, the best first. */
  private enum Key {
    SPARE('#'),
    LAPS('+'),
    LESS('.'),
    STOPS(' '),
    APART('-'),
    BEYOND('/'),
    NO_ANSWER('?'),
    NOT_RUN('_');

    private final char mark;

    Key(char mark) {
      this.mark = mark;
    }
  }

  private static String left(String label) {
    return " ".repeat(Math.max(0, LABEL - label.length())) + label;
  }

  /** So many of the values, the first and the last among them. */
  private static List<Integer> chosen(int count, int most) {
    TreeSet<Integer> chosen = new TreeSet<>();
    int shown = Math.min(count, most);
    for (int i = 0; i < shown; i++) {
      chosen.add(shown == 1 ? 0 : (int) Math.round((double) i * (count - 1) / (shown - 1)));
    }
    return List.copyOf(chosen);
  }

  /** Number of the shown value next to where the plan stands; -1 when it stands outside. */
  private static int nearest(List<Double> values, List<Integer> shown, Lever lever) {
    if (lever.now() < values.get(0) || lever.now() > values.get(values.size() - 1)) {
      return -1;
    }
    int best = 0;
    for (int i = 0; i < shown.size(); i++) {
      double here = Math.abs(values.get(shown.get(i)) - lever.now());
      if (here < Math.abs(values.get(shown.get(best)) - lever.now())) {
        best = i;
      }
    }
    return best;
  }

  private static char mark(Room room, int column, int row) {
    Optional<Glance> glance = room.at(column, row);
    if (glance.isEmpty()) {
      return Key.NOT_RUN.mark;
    }
    if (!glance.get().answered()) {
      return Key.NO_ANSWER.mark;
    }
    if (glance.get().end() == Glance.End.APART) {
      return Key.APART.mark;
    }
    if (!glance.get().filled()) {
      return Key.STOPS.mark;
    }
    boolean practical =
        room.across().practical().holds(room.acrossValues().get(column))
            && room.up().practical().holds(room.upValues().get(row));
    if (!practical) {
      return Key.BEYOND.mark;
    }
    if (!glance.get().fillsWith(room.spare())) {
      return Key.LESS.mark;
    }
    return glance.get().worstLap() >= LapStretch.PLAIN ? Key.LAPS.mark : Key.SPARE.mark;
  }

  /** In three rows, where along the bottom it fills. */
  private List<String> along(Room room) {
    List<Integer> rows = chosen(room.upValues().size(), 3);
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
              where(room, row, Glance::filled)));
    }
    return lines;
  }

  /** Where along the bottom a row of the map is so. */
  String where(Room room, int row, Predicate<Glance> so) {
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

  private String stretch(Room room, int from, int to) {
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
  public List<String> table(Room room) {
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

  private String entry(Room room, int column, int row) {
    double x = room.acrossValues().get(column);
    double y = room.upValues().get(row);
    String place =
        figures.trimmed(levers.number(room.across(), x), 4)
            + ","
            + figures.trimmed(levers.number(room.up(), y), 4)
            + ",";
    Optional<Glance> glance = room.at(column, row);
    boolean practical = room.across().practical().holds(x) && room.up().practical().holds(y);
    if (glance.isEmpty() || !glance.get().answered()) {
      return place + "no answer,,,," + (practical ? "yes" : "no");
    }
    Glance g = glance.get();
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
        + (g.end() != Glance.End.STOPPED ? "" : figures.trimmed(figures.length(g.missing()), 1))
        + ","
        + figures.trimmed(g.worstLap(), 2)
        + ","
        + (practical ? "yes" : "no");
  }
}
