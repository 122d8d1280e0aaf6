package lastinch.ui.words.pour;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import lastinch.ui.words.Care;
import lastinch.ui.words.Page;
import lastinch.ui.words.Point;
import lastinch.ui.words.Scene;
import lastinch.ui.words.study.HowPoured;
import lastinch.ui.words.study.NextWords;

/** What was assumed, what was left out, what to do next, and care. */
final class Closing {
  private Closing() {}

  static void add(Page page, Scene scene) {
    assumed(page, scene);
    listed(page, scene, "label.noted", scene.plan().noted());
    leftOut(page, scene);
    page.blank();
    next(page, scene);
    care(page, scene);
  }

  /** Usual figures; their ranges hold nine times in ten, as the heading says. */
  private static void assumed(Page page, Scene scene) {
    if (!scene.plan().assumed().isEmpty()) {
      List<String> lines = new ArrayList<>(List.of(scene.say("assumed.heading")));
      lines.addAll(scene.plan().assumed());
      listed(page, scene, "label.assumed", lines);
    }
  }

  private static void listed(Page page, Scene scene, String name, List<String> lines) {
    String label = scene.say(name);
    for (String line : lines) {
      page.entry(label, line);
      label = "";
    }
  }

  private static void leftOut(Page page, Scene scene) {
    page.entry(scene.say("label.left"), new Care(scene.sentences()).leftOut(scene.pourCase()));
  }

  private static void next(Page page, Scene scene) {
    Optional<Point> step = NextWords.of(scene);
    step.ifPresent(point -> point.add(page));
    String label = step.isPresent() ? "" : scene.say("label.next");
    if (VerdictSentence.of(scene.plan()).isEmpty()) {
      return;
    }
    String typed = scene.plan().how().typed(scene.plan().file(), HowPoured.USUAL_SQUARE);
    page.entry(label, scene.say("next.charts"));
    page.line(" ".repeat(Page.LABEL + 2) + scene.say("next.charts.command", "file", typed));
  }

  private static void care(Page page, Scene scene) {
    List<String> lines = new ArrayList<>(new Care(scene.sentences()).all(scene.pourCase()));
    scene
        .plan()
        .milliseconds()
        .ifPresent(
            ms -> lines.add(scene.say("solved", "time", scene.figures().seconds(1e-3 * ms))));
    listed(page, scene, "label.care", lines);
  }
}
