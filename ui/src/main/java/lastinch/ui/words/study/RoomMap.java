package lastinch.ui.words.study;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;
import lastinch.solver.levers.Lever;
import lastinch.solver.result.LapStretch;
import lastinch.solver.search.OperatingMap;
import lastinch.solver.study.RunSummary;
import lastinch.ui.words.Figures;
import lastinch.ui.words.Page;
import lastinch.ui.words.Sentences;

/** A map of two levers in letters, with the key to its marks. */
final class RoomMap {
  private static final int MOST_COLUMNS = 60;
  private static final int MOST_ROWS = 24;

  /** Rows of the map on a screen. */
  private static final int SCREEN_ROWS = 9;

  private static final int LABEL = 12;

  private final Sentences sentences;
  private final Figures figures;
  private final LeverWords levers;

  RoomMap(Sentences sentences, Figures figures) {
    this.sentences = sentences;
    this.figures = figures;
    this.levers = new LeverWords(sentences, figures);
  }

  /** Adds the map, all of it or as many rows as fit a screen. */
  void add(Page page, OperatingMap room, boolean all) {
    int most = all ? MOST_ROWS : SCREEN_ROWS;
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
  private String key(OperatingMap room, boolean planShown) {
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
                ? sentences.say(name, "spare", figures.percent(room.goal().spare()))
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
  static List<Integer> chosen(int count, int most) {
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

  private static char mark(OperatingMap room, int column, int row) {
    Optional<RunSummary> glance = room.at(column, row);
    if (glance.isEmpty()) {
      return Key.NOT_RUN.mark;
    }
    if (!glance.get().answered()) {
      return Key.NO_ANSWER.mark;
    }
    if (glance.get().end() == RunSummary.End.APART) {
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
    if (!room.goal().isMetBy(glance.get())) {
      return Key.LESS.mark;
    }
    return glance.get().worstLap() >= LapStretch.PLAIN ? Key.LAPS.mark : Key.SPARE.mark;
  }
}
