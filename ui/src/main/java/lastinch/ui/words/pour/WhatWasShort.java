package lastinch.ui.words.pour;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import lastinch.solver.casting.gating.Vent;
import lastinch.solver.result.EdgeStretch;
import lastinch.solver.result.Finding;
import lastinch.solver.result.FlowLimit;
import lastinch.solver.result.Margin;
import lastinch.solver.result.Outcome;
import lastinch.solver.result.PushBalance;
import lastinch.solver.result.Stop;
import lastinch.solver.result.StopReason;
import lastinch.solver.study.VerdictWord;
import lastinch.ui.words.Page;
import lastinch.ui.words.Reasons;
import lastinch.ui.words.Scene;

/** What was short and what was not, or what was to spare; and what held the pour back. */
public final class WhatWasShort {
  /** Air counts as out of the way below this share of the push [-]. */
  private static final double AIR_COUNTS = 0.1;

  /** Leading metal closer than this to its start of freezing has no heat worth naming [K]. */
  private static final double WORTH_NAMING = 5.0;

  private WhatWasShort() {}

  public static void add(Page page, Scene scene) {
    Outcome outcome = scene.result().outcome();
    if (outcome instanceof Outcome.Filled) {
      spare(page, scene);
    } else if (outcome instanceof Outcome.Misrun && scene.stop().isPresent()) {
      missing(page, scene, scene.stop().get());
    } else {
      return;
    }
    heldBack(page, scene);
    page.blank();
  }

  /** What limits the pour, in two or three sentences; empty where there is no verdict. */
  public static Optional<String> limit(Scene scene) {
    Outcome outcome = scene.result().outcome();
    if (outcome instanceof Outcome.Filled) {
      // what breaks apart is not to be told how much further it would have filled
      String beyond = VerdictWord.fills(scene.result()) ? beyond(scene) : "";
      String text = scene.say("limit.filled", "beyond", beyond, "held", held(scene));
      return Optional.of(text.strip());
    }
    if (outcome instanceof Outcome.Misrun && scene.stop().isPresent()) {
      return Optional.of(title(scene, scene.stop().get()) + " " + held(scene));
    }
    return Optional.empty();
  }

  private static void spare(Page page, Scene scene) {
    Margin margin = scene.result().margin();
    page.paragraph(scene.say("spare.title", "heat", scene.heatToSpare(margin.heat())));
    indented(page, beyond(scene));
  }

  /** How far the metal would have gone on, and what would have stopped it. */
  private static String beyond(Scene scene) {
    Margin margin = scene.result().margin();
    boolean far = margin.distance().isPresent() && margin.distance().getAsDouble() >= Margin.FAR;
    String limit = far ? "" : scene.say("spare.limit." + Reasons.key(margin.limitedBy()));
    if (margin.distance().isEmpty() || scene.figures().vanishes(margin.distance().getAsDouble())) {
      return limit;
    }
    String key = scene.fromTip() ? "spare.distance.fromTip" : "spare.distance";
    String on =
        far
            ? scene.say("spare.distance.far", "distance", scene.figures().far(Margin.FAR))
            : scene.say(key, "distance", scene.figures().roughly(margin.distance().getAsDouble()));
    return (on + " " + limit).strip();
  }

  private static void missing(Page page, Scene scene, Stop stop) {
    page.paragraph(title(scene, stop));
    heat(page, scene, stop);
    push(page, scene, stop);
    metal(page, scene, stop.reason());
    air(page, scene, stop);
  }

  private static String title(Scene scene, Stop stop) {
    String title = "short.title." + Reasons.key(stop.reason());
    return isHeat(stop.reason()) ? scene.say(title, "because", because(scene)) : scene.say(title);
  }

  private static String because(Scene scene) {
    if (scene.superheat() < 0.5) {
      return scene.say("short.because.freezing");
    }
    return scene.wentInCold()
        ? scene.say("short.because.cold", "above", scene.figures().degrees(scene.superheat()))
        : scene.say("short.because." + Reasons.key(scene.result().flowLimitedBy()));
  }

  private static boolean isHeat(StopReason reason) {
    return reason == StopReason.SLUSH
        || reason == StopReason.SKIN
        || reason == StopReason.FROZE_UPSTREAM;
  }

  private static void heat(Page page, Scene scene, Stop stop) {
    double above = stop.temperature() - scene.pourCase().metal().alloy().liquidus();
    if (!isHeat(stop.reason()) && above > WORTH_NAMING) {
      indented(page, scene.say("short.heat.not", "above", scene.figures().degrees(above)));
    }
  }

  private static void push(Page page, Scene scene, Stop stop) {
    PushBalance balance = stop.balance();
    String had = scene.figures().ruler(scene.asHeight(balance.head()));
    // Friction of metal that is turning to mush eats all the push there is; it is not the cause.
    double friction = isHeat(stop.reason()) ? 0.0 : balance.friction();
    double wanted = friction + balance.capillary() + balance.air();
    String needed = scene.figures().ruler(scene.asHeight(wanted));
    String key;
    if (stop.reason() == StopReason.CAPILLARITY) {
      key = "short.push";
    } else if (stop.reason() == StopReason.AIR || stop.reason() == StopReason.NO_METAL) {
      return;
    } else {
      boolean rim =
          scene.result().edges().stream().anyMatch(e -> e.cause() == EdgeStretch.Cause.PUSH);
      String enough = rim ? "short.push.not.middle" : "short.push.not";
      key = balance.head() > wanted ? enough : "short.push.also";
    }
    indented(page, scene.say(key, "had", had, "needed", needed));
  }

  private static void metal(Page page, Scene scene, StopReason reason) {
    double melted = scene.pourCase().metal().melted();
    double needed = scene.result().massToRim();
    String key;
    if (reason == StopReason.NO_METAL) {
      key = "short.metal";
    } else {
      key = melted >= needed ? "short.metal.not" : "short.metal.also";
    }
    indented(
        page,
        scene.say(
            key, "melted", scene.figures().mass(melted), "needed", scene.figures().mass(needed)));
  }

  private static void air(Page page, Scene scene, Stop stop) {
    String height = scene.figures().ruler(scene.asHeight(stop.balance().air()));
    if (stop.reason() == StopReason.AIR) {
      indented(page, scene.say("short.air", "air", height));
    } else if (stop.balance().air() > AIR_COUNTS * stop.balance().head()) {
      indented(page, scene.say("short.air.also", "air", height));
    } else {
      List<String> vents =
          scene.pourCase().gating().vents().stream().map(Vent::name).collect(Collectors.toList());
      indented(
          page,
          vents.isEmpty()
              ? scene.say("short.air.not.mould")
              : scene.say("short.air.not.vents", "vents", scene.list(vents)));
    }
  }

  private static void heldBack(Page page, Scene scene) {
    String text = held(scene);
    if (scene.finding(Finding.Kind.SPRUE_NEVER_FULL).isPresent()) {
      text +=
          " "
              + (scene.figures().vanishes(scene.result().sprueStanding())
                  ? scene.say("held.sprueNeverStands")
                  : scene.say(
                      "held.sprueNotFull",
                      "standing",
                      scene.figures().ruler(scene.result().sprueStanding())));
    }
    indented(page, text);
  }

  private static String held(Scene scene) {
    FlowLimit limit = scene.result().flowLimitedBy();
    Optional<Double> factor =
        scene
            .finding(Finding.Kind.SPRUE_NEVER_FULL)
            .map(f -> f.as(Finding.SprueNeverFull.class).couldPass())
            .filter(f -> f >= 1.05 && f < 100.0);
    return limit == FlowLimit.HAND && factor.isPresent()
        ? scene.say("held.hand.factor", "factor", scene.figures().trimmed(factor.get(), 1))
        : scene.say("held." + Reasons.key(limit));
  }

  private static void indented(Page page, String text) {
    page.wrapped("  ", "    ", text);
  }
}
