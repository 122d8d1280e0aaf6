package lastinch.ui.words.study;

import lastinch.solver.search.GridSensitivity;
import lastinch.ui.words.Figures;
import lastinch.ui.words.Scene;

/** How far pours over other squares lie apart, in one or two sentences. */
public final class SpreadWords {
  private SpreadWords() {}

  public static String of(Scene scene, GridSensitivity spread) {
    Figures figures = scene.figures();
    int runs = spread.runs().size();
    String how =
        scene.say(
            "spread.how",
            "runs",
            Integer.toString(runs),
            "from",
            figures.trimmed(figures.length(spread.runs().get(0).square()), 2),
            "to",
            figures.trimmed(figures.length(spread.runs().get(runs - 1).square()), 2)
                + " "
                + figures.lengthUnit());
    String empty =
        scene.say(
            "spread.empty",
            "least",
            figures.trimmed(100.0 * spread.unfilled().low(), 1),
            "most",
            figures.trimmed(100.0 * spread.unfilled().high(), 1) + " %");
    if (spread.fills() == runs) {
      return how + " " + scene.say("spread.fills") + " " + empty;
    }
    String least = figures.rulerBare(spread.reach().low());
    String most = figures.rulerBare(spread.reach().high());
    String where =
        least.equals(most)
            ? figures.ruler(spread.reach().high())
            : scene.say("spread.span", "from", least, "to", figures.ruler(spread.reach().high()));
    String what =
        spread.isDivided()
            ? scene.say(
                "spread.divided",
                "fills",
                Integer.toString(spread.fills()),
                "stops",
                Integer.toString(runs - spread.fills()),
                "where",
                where)
            : scene.say("spread.stops", "where", where);
    return how + " " + what + " " + empty;
  }
}
