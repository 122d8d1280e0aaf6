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
      case PUDDLES -> puddles(scene, List.of(finding));
      case GATE_SPLASHES, FRONT_SPLASHES, RUNS_AGAINST_MOULD -> fast(scene, finding);
      case FALLS -> {
        Finding.Falls f = finding.as(Finding.Falls.class);
        yield scene.say(
            key, "height", figures.ruler(f.height()), "limit", figures.ruler(f.limit()));
      }
      case AIR_PUSHES_BACK -> {
        double pressure = finding.as(Finding.AirPushesBack.class).pressure();
        yield scene.say(key, "air", figures.ruler(scene.asHeight(pressure)));
      }
      case MUSH_SHARE_COUNTS -> {
        double share = finding.as(Finding.MushShareCounts.class).share();
        yield scene.say(key, "share", figures.percent(share));
      }
      case TOO_LITTLE_METAL -> {
        Finding.TooLittleMetal f = finding.as(Finding.TooLittleMetal.class);
        yield scene.say(
            key, "melted", figures.mass(f.melted()), "needed", figures.mass(f.needed()));
      }
      case POUR_TIMES_DISAGREE -> {
        Finding.PourTimesDisagree f = finding.as(Finding.PourTimesDisagree.class);
        yield scene.say(
            key, "typed", figures.seconds(f.typed()), "implied", figures.seconds(f.implied()));
      }
      case WIDE_PIECE -> {
        Finding.WidePiece f = finding.as(Finding.WidePiece.class);
        yield scene.say(key, "width", figures.ruler(f.width()), "gate", figures.ruler(f.gate()));
      }
      case ABOVE_CEILING -> {
        Finding.AboveCeiling f = finding.as(Finding.AboveCeiling.class);
        yield scene.say(
            key,
            "temperature",
            figures.heat(f.temperature()),
            "ceiling",
            figures.heat(f.ceiling()));
      }
      case FLASK_EDGE -> {
        Finding.FlaskEdge f = finding.as(Finding.FlaskEdge.class);
        yield scene.say(key, "kiln", figures.heat(f.kiln()), "edge", figures.heat(f.edge()));
      }
      case CUP_OVERFLOWS ->
          scene.say(key, "mass", figures.mass(finding.as(Finding.CupOverflows.class).mass()));
      case CUP_RUNS_EMPTY ->
          scene.say(key, "time", figures.seconds(finding.as(Finding.CupRunsEmpty.class).time()));
      case SPRUE_NEVER_FULL, GAP_COUNTS, TABLE_CLAMPED -> scene.say(key);
    };
  }

  private static String fast(Scene scene, Finding finding) {
    Finding.Fast f = finding.as(Finding.Fast.class);
    Figures figures = scene.figures();
    int decimals = figures.speed(f.speed()).equals(figures.speed(f.limit())) ? 2 : 1;
    String key = "watch." + finding.kind().name();
    return scene.say(
        squeezed(scene, finding) ? key + ".squeezed" : key,
        "place",
        where(scene, finding),
        "speed",
        figures.speed(f.speed(), decimals),
        "limit",
        figures.speed(f.limit(), decimals));
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
        && finding.as(Finding.Fast.class).speed() > driven;
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
              scene.figures().calipers(finding.as(Finding.Puddles.class).thickness())));
    }
    return scene.say(
        "watch.PUDDLES",
        "places",
        scene.list(places),
        "limit",
        scene.figures().calipers(findings.get(0).as(Finding.Puddles.class).limit()));
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
}
