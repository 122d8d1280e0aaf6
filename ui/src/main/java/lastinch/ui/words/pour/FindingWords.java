package lastinch.ui.words.pour;

import java.util.ArrayList;
import java.util.List;
import lastinch.solver.result.Finding;
import lastinch.solver.result.PassageRecord;
import lastinch.ui.words.Figures;
import lastinch.ui.words.Scene;

/** A finding as half a sentence. */
final class FindingWords {
  private FindingWords() {}

  static String of(Scene scene, Finding finding) {
    Figures figures = scene.figures();
    String key = "watch." + finding.kind().name();
    return switch (finding.kind()) {
      case SPRUE_NEVER_FULL -> scene.say(key);
      case PUDDLES -> puddles(scene, List.of(finding));
      case GATE_SPLASHES, FRONT_SPLASHES, RUNS_AGAINST_MOULD ->
          scene.say(
              squeezed(scene, finding) ? key + ".squeezed" : key,
              "place",
              where(scene, finding),
              "speed",
              figures.speed(need(finding, "speed"), decimals(figures, finding)),
              "limit",
              figures.speed(need(finding, "limit"), decimals(figures, finding)));
      case FALLS ->
          scene.say(
              key,
              "height",
              figures.ruler(need(finding, "height")),
              "limit",
              figures.ruler(need(finding, "limit")));
      case AIR_PUSHES_BACK ->
          scene.say(key, "air", figures.ruler(scene.asHeight(need(finding, "pressure"))));
      case MUSH_SHARE_COUNTS -> scene.say(key, "share", figures.percent(need(finding, "share")));
      case GAP_COUNTS -> scene.say(key);
      case BOSS_UNFED -> scene.say(key, "boss", figures.seconds(need(finding, "boss")));
      case TOO_LITTLE_METAL ->
          scene.say(
              key,
              "melted",
              figures.mass(need(finding, "melted")),
              "needed",
              figures.mass(need(finding, "needed")));
      case POUR_TIMES_DISAGREE ->
          scene.say(
              key,
              "typed",
              figures.seconds(need(finding, "typed")),
              "implied",
              figures.seconds(need(finding, "implied")));
      case WIDE_PIECE ->
          scene.say(
              key,
              "width",
              figures.ruler(need(finding, "width")),
              "gate",
              figures.ruler(need(finding, "gate")));
      case ABOVE_CEILING ->
          scene.say(
              key,
              "temperature",
              figures.heat(need(finding, "temperature")),
              "ceiling",
              figures.heat(need(finding, "ceiling")));
      case FLASK_EDGE ->
          scene.say(
              key,
              "kiln",
              figures.heat(need(finding, "kiln")),
              "edge",
              figures.heat(need(finding, "edge")));
      case CUP_OVERFLOWS -> scene.say(key, "mass", figures.mass(need(finding, "mass")));
      case CUP_RUNS_EMPTY -> scene.say(key, "time", figures.seconds(need(finding, "time")));
      case TABLE_CLAMPED -> scene.say(key);
    };
  }

  /**
   * Whether metal in the piece goes faster than the height of metal behind it drives: a piece that
   * narrows squeezes it on.
   */
  private static boolean squeezed(Scene scene, Finding finding) {
    double driven = Math.sqrt(2.0 * Scene.GRAVITY * scene.result().sprueStanding());
    return finding.kind() == Finding.Kind.FRONT_SPLASHES
        && scene.finding(Finding.Kind.FALLS).isEmpty()
        && scene.pourCase().mould().attitude().angle() == 0.0
        && !scene.pourCase().mould().attitude().upright()
        && need(finding, "speed") > driven;
  }

  /** All thick places in one sentence. */
  static String puddles(Scene scene, List<Finding> findings) {
    List<String> places = new ArrayList<>();
    for (Finding finding : findings) {
      places.add(
          scene.say(
              "watch.PUDDLES.place",
              "place",
              where(scene, finding),
              "thickness",
              scene.figures().calipers(need(finding, "thickness"))));
    }
    return scene.say(
        "watch.PUDDLES",
        "places",
        PourText.list(scene, places),
        "limit",
        scene.figures().calipers(need(findings.get(0), "limit")));
  }

  private static String where(Scene scene, Finding finding) {
    if (finding.where().isEmpty()) {
      return scene.say("watch.somewhere");
    }
    return switch (scene.role(finding.where().get().passage()).orElse(PassageRecord.Role.PIECE)) {
      case PIECE -> scene.say("watch.piece", "place", scene.place(finding.where().get()));
      default -> scene.say("watch.channel", "channel", finding.where().get().passage());
    };
  }

  /** As few decimals as tell the speed from its limit. */
  private static int decimals(Figures figures, Finding finding) {
    boolean alike =
        figures.speed(need(finding, "speed")).equals(figures.speed(need(finding, "limit")));
    return alike ? 2 : 1;
  }

  private static double need(Finding finding, String figure) {
    Double value = finding.figures().get(figure);
    if (value == null) {
      throw new IllegalArgumentException(finding.kind() + " lacks its figure " + figure);
    }
    return value;
  }
}
