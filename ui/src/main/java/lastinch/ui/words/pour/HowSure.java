package lastinch.ui.words.pour;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import lastinch.solver.result.Outcome;
import lastinch.solver.result.PassageRecord;
import lastinch.solver.result.PourResult;
import lastinch.solver.result.Stop;
import lastinch.solver.study.VerdictWord;
import lastinch.solver.uncertainty.BandStudy;
import lastinch.solver.uncertainty.OneAtATimeEffect;
import lastinch.solver.uncertainty.UncertainInput;
import lastinch.ui.words.Gaps;
import lastinch.ui.words.MeasureWords;
import lastinch.ui.words.Measuring;
import lastinch.ui.words.Page;
import lastinch.ui.words.Scene;
import lastinch.ui.words.study.GlanceWords;
import lastinch.ui.words.study.NextWords;

/** How far the answer holds: other days, what matters most, what to find out first. */
public final class HowSure {
  private HowSure() {}

  static void add(Page page, Scene scene) {
    Optional<BandStudy> bands = scene.plan().bands();
    if (bands.isEmpty()) {
      return;
    }
    page.entry(scene.say("label.sure"), days(scene));
    bands
        .get()
        .weakest()
        .flatMap(w -> swing(bands.get(), w))
        .ifPresent(s -> page.entry("", weakest(scene, s)));
    bands
        .get()
        .measure()
        .ifPresent(
            m ->
                page.entry(
                    "",
                    scene.say(
                        "sure.measure",
                        "what",
                        scene.say("unknown." + m.name()),
                        "how",
                        how(scene, m).orElseThrow()
                            + bands
                                .get()
                                .weakest()
                                .map(w -> MeasureWords.why(scene.sentences(), m, w))
                                .orElse(""))));
    page.blank();
  }

  /**
   * What is most uncertain, in one line.
   *
   * @param measured whether to say how it is found out
   */
  public static Optional<String> unsure(Scene scene, boolean measured) {
    Optional<BandStudy> bands = scene.plan().bands();
    Optional<UncertainInput> first = bands.flatMap(b -> b.measure().or(b::weakest));
    return first.map(
        u -> {
          String what = NextWords.capital(scene.say("unknown." + u.name()));
          Optional<String> how = measured ? how(scene, u) : Optional.empty();
          return how.isPresent()
              ? scene.say("unsure.measure", "what", what, "how", how.get())
              : scene.say("unsure", "what", what);
        });
  }

  private static Optional<String> how(Scene scene, UncertainInput unknown) {
    return Measuring.how(scene.sentences(), unknown, scene.pourCase());
  }

  private static String days(Scene scene) {
    String unlucky = day(scene, false);
    String lucky = day(scene, true);
    List<String> with = own(scene);
    String days =
        unlucky.equals(lucky)
            ? scene.say("sure.same", "day", unlucky)
            : scene.say("sure.days", "unlucky", unlucky, "lucky", lucky);
    return with.isEmpty() ? days : scene.say("sure.with", "figures", scene.list(with)) + " " + days;
  }

  /** The person's own readings, with how far they may be off. */
  private static List<String> own(Scene scene) {
    List<String> with = new ArrayList<>();
    for (OneAtATimeEffect swing : scene.plan().bands().orElseThrow().swings()) {
      double half = 0.5 * (swing.band().high() - swing.band().low());
      if (swing.unknown() == UncertainInput.READING) {
        with.add(scene.say("sure.with.reading", "half", scene.figures().degrees(half)));
      } else if (swing.unknown() == UncertainInput.POUR_SECONDS
          || swing.unknown() == UncertainInput.POUR_RATE) {
        with.add(
            scene.say(
                "sure.with.pour", "half", scene.figures().percent(half / swing.band().value())));
      }
    }
    return with;
  }

  /** What comes of the plan on an unlucky or a lucky day, in half a sentence. */
  static String day(Scene scene, boolean lucky) {
    BandStudy bands = scene.plan().bands().orElseThrow();
    return ending(scene.on(lucky ? bands.lucky() : bands.unlucky()));
  }

  private static String ending(Scene scene) {
    PourResult result = scene.result();
    if (VerdictWord.isFull(result) && !VerdictWord.fills(result)) {
      return scene.say("day.apart", "places", VerdictLines.coldShuts(scene));
    }
    if (VerdictWord.isFull(result)) {
      return scene.say("day.fills", "heat", scene.heatToSpare(result.margin().heat()));
    }
    if (!(result.outcome() instanceof Outcome.Misrun) || scene.stop().isEmpty()) {
      return scene.say("day.unknown");
    }
    Gaps gaps = scene.gaps();
    if (gaps.anyHole()) {
      return scene.say("day.stops.hole", "span", gaps.hole());
    }
    Stop stop = scene.stop().get();
    PassageRecord.Role role = scene.role(stop.passage()).orElse(PassageRecord.Role.PIECE);
    if (role == PassageRecord.Role.BOSS) {
      return scene.say("day.stops.boss");
    }
    if (role != PassageRecord.Role.PIECE) {
      return scene.say("day.stops.before", "channel", stop.passage());
    }
    String at = scene.figures().ruler(scene.onRuler(stop.passage(), stop.at()));
    if (scene.fromTip()) {
      return scene.say("day.stops.fromTip", "at", at);
    }
    return at.equals(scene.figures().ruler(scene.length()))
        ? scene.say("day.stops.tip")
        : scene.say("day.stops", "at", at);
  }

  private static Optional<OneAtATimeEffect> swing(BandStudy bands, UncertainInput wanted) {
    return bands.swings().stream().filter(s -> s.unknown() == wanted).findFirst();
  }

  private static String weakest(Scene scene, OneAtATimeEffect swing) {
    GlanceWords glances = scene.glances();
    boolean rises = swing.half() >= 0.0;
    return scene.say(
        "sure.weakest",
        "what",
        scene.say("unknown." + swing.unknown().name()),
        "worse",
        glances.outcome(rises ? swing.low() : swing.high()),
        "better",
        glances.outcome(rises ? swing.high() : swing.low()));
  }
}
