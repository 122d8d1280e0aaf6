package lastinch.ui.words.study;

import java.util.Locale;
import java.util.Optional;
import lastinch.solver.result.ConservationFigures;
import lastinch.ui.words.Scene;
import lastinch.ui.words.Sentences;

/** What makes an answer from a grid of squares unsure. */
public final class GridWords {
  /** Shares that may go astray unseen [-]: a tenth of what the shortest printed figure shows. */
  private static final double MOST_METAL_ASTRAY = 1e-6;

  private static final double MOST_HEAT_ASTRAY = 1e-4;

  private GridWords() {}

  /** A warning when more metal or heat went astray in the calculation than may. */
  public static Optional<String> astray(Sentences sentences, ConservationFigures accounts) {
    boolean metal = !(Math.abs(accounts.metalError()) <= MOST_METAL_ASTRAY);
    boolean heat = !(Math.abs(accounts.heatError()) <= MOST_HEAT_ASTRAY);
    if (!metal && !heat) {
      return Optional.empty();
    }
    double share = metal ? accounts.metalError() : accounts.heatError();
    return Optional.of(
        sentences.say(
            metal ? "plane.note.metal" : "plane.note.astray",
            "share",
            String.format(Locale.ROOT, "%.3g", 100.0 * Math.abs(share))));
  }

  /** The same, or that one pour says nothing of its range; empty when it was no grid. */
  public static Optional<String> unsure(Scene scene) {
    return scene
        .plan()
        .field()
        .map(
            field ->
                astray(scene.sentences(), scene.result().accounts())
                    .orElseGet(
                        () ->
                            scene.say(
                                "plane.note.short",
                                "square",
                                scene.figures().calipers(field.map().cell()))));
  }
}
