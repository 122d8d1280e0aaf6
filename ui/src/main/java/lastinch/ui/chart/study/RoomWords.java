package lastinch.ui.chart.study;

import lastinch.solver.search.OperatingMap;
import lastinch.solver.study.RunSummary;
import lastinch.ui.words.Figures;
import lastinch.ui.words.PlainLetters;
import lastinch.ui.words.Sentences;
import lastinch.ui.words.study.GlanceWords;
import lastinch.ui.words.study.LeverWords;

/** What a map of room to move says: where the plan is, and the nearest good setting. */
final class RoomWords {
  private RoomWords() {}

  static String message(OperatingMap room, Sentences sentences, Figures figures) {
    String outcome = new GlanceWords(sentences, figures).outcome(room.plan());
    if (room.goal().isMetBy(room.plan())) {
      return PlainLetters.of(sentences.say("room.says.good", "outcome", outcome));
    }
    double nearest = Double.POSITIVE_INFINITY;
    int column = 0;
    int row = 0;
    for (int r = 0; r < room.upValues().size(); r++) {
      for (int c = 0; c < room.acrossValues().size(); c++) {
        boolean good = room.at(c, r).filter((RunSummary g) -> room.goal().isMetBy(g)).isPresent();
        double far = Math.hypot(across(room, c), up(room, r));
        if (good && far < nearest) {
          nearest = far;
          column = c;
          row = r;
        }
      }
    }
    if (nearest == Double.POSITIVE_INFINITY) {
      String spare = figures.percent(room.goal().spare());
      return PlainLetters.of(sentences.say("room.says.none", "outcome", outcome, "spare", spare));
    }
    LeverWords levers = new LeverWords(sentences, figures);
    return PlainLetters.of(
        sentences.say(
            "room.says.nearest",
            "outcome",
            outcome,
            "across",
            setting(room.across(), room.acrossValues().get(column), levers, sentences),
            "up",
            setting(room.up(), room.upValues().get(row), levers, sentences)));
  }

  private static String setting(
      lastinch.solver.levers.Lever lever, double value, LeverWords levers, Sentences sentences) {
    return sentences.say(
        "room.here", "lever", levers.name(lever), "value", levers.value(lever, value));
  }

  /** Distance from the plan as a share of the map. */
  private static double across(OperatingMap room, int column) {
    double whole =
        room.acrossValues().get(room.acrossValues().size() - 1) - room.acrossValues().get(0);
    return (room.acrossValues().get(column) - room.across().now()) / whole;
  }

  private static double up(OperatingMap room, int row) {
    double whole = room.upValues().get(room.upValues().size() - 1) - room.upValues().get(0);
    return (room.upValues().get(row) - room.up().now()) / whole;
  }
}
