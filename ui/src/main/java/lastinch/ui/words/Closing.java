package lastinch.ui.words;

import java.util.ArrayList;
import java.util.List;
import lastinch.solver.result.Finding;
import lastinch.solver.result.FlowLimit;
import lastinch.solver.result.Outcome;
import lastinch.solver.result.Stop;

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
    String file = scene.plan().file();
    String typed = scene.plan().how().typed(file, HowPoured.USUAL_SQUARE);
    List<String> levers = levers(scene);
    String label = scene.say("label.next");
    if (!levers.isEmpty()) {
      List<String> words = new ArrayList<>();
      for (String lever : levers) {
        words.add(scene.say("next.lever." + lever));
      }
      page.entry(
          label, scene.say("next.variant", "file", file, "levers", String.join(", ", words)));
      label = "";
    }
    if (Verdict.of(scene.plan()).isEmpty()) {
      return;
    }
    page.entry(label, scene.say("next.charts"));
    page.line(" ".repeat(Page.LABEL + 2) + scene.say("next.charts.command", "file", typed));
  }

  /** Names of the levers worth a try, most direct first. */
  static List<String> levers(Scene scene) {
    if (scene.result().outcome() instanceof Outcome.Filled) {
      return scene.finding(Finding.Kind.GATE_SPLASHES).isPresent()
          ? List.of("widerGate", "slower")
          : List.of();
    }
    if (!(scene.result().outcome() instanceof Outcome.Misrun) || scene.stop().isEmpty()) {
      return List.of();
    }
    Stop stop = scene.stop().get();
    return switch (stop.reason()) {
      case SLUSH, SKIN, FROZE_UPSTREAM -> moreHeat(scene);
      case CAPILLARITY -> List.of("tallerSprue", "thicker");
      case AIR -> List.of("vents");
      case NO_METAL -> List.of("melted");
    };
  }

  private static List<String> moreHeat(Scene scene) {
    List<String> levers = new ArrayList<>();
    if (scene.wentInCold()) {
      levers.add("hotter");
    }
    FlowLimit limit = scene.result().flowLimitedBy();
    if (limit == FlowLimit.HAND) {
      levers.add("pourFaster");
    } else if (limit == FlowLimit.GATES) {
      levers.add("widerGate");
    } else if (limit == FlowLimit.HEAD) {
      levers.add("tallerSprue");
    } else {
      levers.add("vents");
    }
    if (scene.pourCase().metal().waiting().value() > 5.0) {
      levers.add("waitLess");
    }
    if (!scene.wentInCold()) {
      levers.add("hotter");
    }
    if (scene.pourCase().mould().flask().isPresent()) {
      levers.add("mouldHotter");
    }
    return levers;
  }

  private static void care(Page page, Scene scene) {
    StringBuilder text = new StringBuilder(new Care(scene.sentences()).brief(scene.pourCase()));
    scene
        .plan()
        .milliseconds()
        .ifPresent(
            ms ->
                text.append(' ')
                    .append(
                        scene
                            .say("solved", "time", scene.figures().seconds(1e-3 * ms))
                            .replace(' ', '\u00a0')));
    page.entry(scene.say("label.care"), text.toString());
  }
}
