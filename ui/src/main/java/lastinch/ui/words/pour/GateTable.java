package lastinch.ui.words.pour;

import java.util.List;
import lastinch.solver.result.GateRecord;
import lastinch.ui.words.Figures;
import lastinch.ui.words.Page;
import lastinch.ui.words.Scene;

/** What each gate did, one line a gate. */
final class GateTable {
  private static final int NAME = 17;
  private static final int FIRST = 13;
  private static final int SPEED = 11;
  private static final int CLOSES = 20;

  private GateTable() {}

  static void add(Page page, Scene scene) {
    List<GateRecord> gates = scene.result().gates();
    if (gates.isEmpty()) {
      return;
    }
    page.line(
        row(
            scene.say("gate.head.name"),
            scene.say("gate.head.first"),
            scene.say("gate.head.speed"),
            scene.say("gate.head.closes"),
            scene.say("gate.head.share")));
    Figures figures = scene.figures();
    for (GateRecord gate : gates) {
      boolean ran = gate.first().isPresent();
      page.line(
          row(
              gate.name(),
              ran ? figures.seconds(gate.first().getAsDouble()) : scene.say("gate.never"),
              ran ? figures.speed(gate.peakSpeed()) : "-",
              gate.froze().isPresent()
                  ? figures.seconds(gate.froze().getAsDouble())
                  : scene.say("gate.open"),
              gate.share() > 0.995
                  ? scene.say("gate.all")
                  : scene.say("gate.some", "percent", figures.percent(gate.share()))));
    }
    page.blank();
  }

  private static String row(String name, String first, String speed, String closes, String share) {
    return Page.pad(name, NAME)
        + Page.pad(first, FIRST)
        + Page.pad(speed, SPEED)
        + Page.pad(closes, CLOSES)
        + share;
  }
}
