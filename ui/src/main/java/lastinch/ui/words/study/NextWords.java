package lastinch.ui.words.study;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import lastinch.solver.casting.PourCase;
import lastinch.solver.levers.Lever;
import lastinch.solver.levers.ParameterUnit;
import lastinch.solver.search.NextStep;
import lastinch.solver.search.Trouble;
import lastinch.ui.words.Care;
import lastinch.ui.words.Point;
import lastinch.ui.words.Scene;
import lastinch.ui.words.pour.VerdictSentence;

/** The one thing to do next, with its number and what comes of it. */
public final class NextWords {
  private NextWords() {}

  /** What to do, in one or two sentences, with the command to type, if there is one. */
  public static Optional<Point> of(Scene scene) {
    String label = scene.say("label.next");
    if (scene.plan().next().isEmpty()) {
      return scene.plan().field().isPresent() && VerdictSentence.of(scene.plan()).isPresent()
          ? Optional.of(new Point(label, scene.say("next.plane"), command(scene)))
          : Optional.empty();
    }
    NextStep next = scene.plan().next().get();
    if (next.troubles().isEmpty()) {
      return Optional.of(new Point(label, scene.say("next.fine")));
    }
    return Optional.of(
        next.change().isPresent()
            ? new Point(label, sentence(scene, next, next.change().get()))
            : new Point(label, none(scene, next), command(scene)));
  }

  private static String command(Scene scene) {
    return scene.say("next.least", "file", scene.plan().how().typed(scene.plan().file()));
  }

  private static String none(Scene scene, NextStep next) {
    String tried = Integer.toString(next.tried());
    Optional<NextStep.Change> furthest =
        next.furthest().filter(c -> c.helps() == Trouble.STOPS && !c.best().filled());
    return furthest.isPresent()
        ? scene.say(
            "next.none.furthest",
            "tried",
            tried,
            "move",
            move(scene, furthest.get()),
            "reach",
            scene.figures().ruler(furthest.get().best().reach()))
        : scene.say(
            "next.none",
            "tried",
            tried,
            "trouble",
            scene.say("next.trouble." + next.troubles().get(0).name()));
  }

  private static String sentence(Scene scene, NextStep next, NextStep.Change change) {
    String said =
        scene.say("next.do", "move", move(scene, change), "result", result(scene, next, change));
    List<String> more = new ArrayList<>(List.of(capital(said)));
    for (Trouble trouble : change.brings()) {
      if (trouble == Trouble.EDGE_ROUNDED) {
        more.add(scene.say("next.brings.edge"));
      } else if (trouble == Trouble.SPLASHES) {
        more.add(
            scene.say(
                "next.brings.splash", "speed", scene.figures().speed(change.best().gateSpeed())));
      }
    }
    PourCase plan = scene.pourCase();
    new Care(scene.sentences())
        .change(plan, change.lever().set(plan, change.value()))
        .ifPresent(more::add);
    return String.join(" ", more);
  }

  private static String result(Scene scene, NextStep next, NextStep.Change change) {
    String key = "next.result." + change.helps().name();
    String fills = with(scene, next, change);
    return change.helps() == Trouble.SPLASHES
        ? scene.say(
            key,
            "fills",
            fills,
            "speed",
            scene.figures().speed(change.best().gateSpeed(), 2),
            "before",
            scene.figures().speed(next.best().gateSpeed(), 2))
        : scene.say(key, "fills", fills);
  }

  /** With how much to spare it then fills, on the best pour and on the bad one. */
  private static String with(Scene scene, NextStep next, NextStep.Change change) {
    String heat = scene.heatToSpare(change.best().heat());
    if (!change.bad().filled()) {
      return scene.say("next.fills.badStops", "heat", heat);
    }
    String bad = scene.heatToSpare(change.bad().heat());
    boolean more = next.best().filled() && change.best().heat() > next.best().heat() + 0.005;
    return more
        ? scene.say(
            "next.fills.more",
            "heat",
            heat,
            "before",
            scene.heatToSpare(next.best().heat()),
            "bad",
            bad)
        : scene.say("next.fills", "heat", heat, "bad", bad);
  }

  /** What a person does: {@code pour it in 4 s instead of 6 s}. */
  private static String move(Scene scene, NextStep.Change change) {
    Lever lever = change.lever();
    LeverWords words = new LeverWords(scene.sentences(), scene.figures());
    String key = "next.move." + lever.key();
    boolean fromNone = lever.unit() == ParameterUnit.LENGTH && lever.now() == 0.0;
    String to = words.value(lever, change.value());
    if (fromNone) {
      return scene.say(key + ".new", "to", to);
    }
    String from = words.value(lever, lever.now());
    return lever.key().startsWith("gate")
        ? scene.say(
            key,
            "part",
            lever.part().isEmpty() ? onlyGate(scene) : lever.part(),
            "to",
            to,
            "from",
            from)
        : scene.say(key, "to", to, "from", from);
  }

  private static String onlyGate(Scene scene) {
    return scene.pourCase().gating().gates().stream().findFirst().map(g -> g.name()).orElse("");
  }

  public static String capital(String sentence) {
    return sentence.substring(0, 1).toUpperCase(Locale.ROOT) + sentence.substring(1);
  }
}
