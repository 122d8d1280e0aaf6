package lastinch.ui.words.pour;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import lastinch.solver.result.EdgeStretch;
import lastinch.solver.result.Finding;
import lastinch.solver.result.LapStretch;
import lastinch.solver.result.Outcome;
import lastinch.solver.result.PassageRecord;
import lastinch.solver.result.PourResult;
import lastinch.solver.result.Spot;
import lastinch.solver.result.Stop;
import lastinch.solver.uncertainty.BandStudy;
import lastinch.ui.words.Figures;
import lastinch.ui.words.Gaps;
import lastinch.ui.words.Page;
import lastinch.ui.words.Scene;
import lastinch.ui.words.study.SpreadWords;

/** Heading, the one sentence that answers, and how sure it is. */
public final class VerdictLines {
  private VerdictLines() {}

  public static void add(Page page, Scene scene) {
    if (scene.pourCase().checking().isOn()) {
      page.paragraph(scene.say("head.checking"));
      page.blank();
    }
    page.wrapped(
        scene.say("head.dryPour") + "  ", " ".repeat(Page.LABEL), scene.pourCase().title());
    page.blank();
    page.paragraph(sentence(scene));
    scene.plan().spread().ifPresent(s -> page.paragraph(SpreadWords.of(scene, s)));
    page.blank();
  }

  /** The verdict in one sentence, with what a filled piece still suffers from. */
  static String sentence(Scene scene) {
    return sentence(scene, second(scene));
  }

  /** The verdict and no more. */
  static String bare(Scene scene) {
    return sentence(scene, "").strip();
  }

  private static String sentence(Scene scene, String second) {
    PourResult result = scene.result();
    Figures figures = scene.figures();
    if (result.outcome() instanceof Outcome.Cancelled c) {
      return scene.say("verdict.cancelled", "time", figures.seconds(c.time()));
    }
    if (result.outcome() instanceof Outcome.BrokeDown b) {
      return scene.say("verdict.brokeDown", "time", figures.seconds(b.time()), "place", b.place());
    }
    VerdictSentence verdict = VerdictSentence.of(scene.plan()).orElseThrow();
    return switch (verdict) {
      case STOPS_SHORT -> stopsShort(scene, scene.say("verdict.word.stopsShort"));
      case MAY_STOP_SHORT ->
          stopsShort(scene, scene.say("verdict.word.mayStopShort")) + " " + goodPour(scene);
      case DOES_NOT_JOIN -> apart(scene, "verdict.word.doesNotJoin");
      case MAY_NOT_JOIN -> apart(scene, "verdict.word.mayNotJoin") + " " + goodPour(scene);
      case EDGES_ROUNDED ->
          scene.say("verdict.edgesRounded", "where", rounded(scene), "second", second);
      case LIKELY_FILLS -> badPour(scene, "verdict.likelyFills", second);
      case JUST_FILLS -> fills(scene, "verdict.justFills", second);
      case FILLS -> fills(scene, "verdict.fills", second);
    };
  }

  private static String apart(Scene scene, String word) {
    return scene.say("verdict.apart", "word", scene.say(word), "places", coldShuts(scene));
  }

  private static String goodPour(Scene scene) {
    return scene.say("verdict.goodPour", "day", HowSure.day(scene, true));
  }

  private static String badPour(Scene scene, String key, String second) {
    return scene.say(
        key,
        "heat",
        scene.heatToSpare(scene.result().margin().heat()),
        "day",
        HowSure.day(scene, false),
        "second",
        second);
  }

  /** With what a bad pour comes to, where that is much worse. */
  private static String fills(Scene scene, String key, String second) {
    double best = scene.result().margin().heat();
    Optional<PourResult> bad =
        scene
            .plan()
            .bands()
            .map(BandStudy::unlucky)
            .filter(lastinch.solver.study.VerdictWord::isDecided);
    if (bad.isPresent() && !lastinch.solver.study.VerdictWord.fills(bad.get())) {
      return badPour(scene, key + ".bad", second);
    }
    String heat = scene.heatToSpare(best);
    double least = bad.map(b -> b.margin().heat()).orElse(best);
    if (least < Math.min(best, lastinch.solver.study.VerdictWord.JUST)) {
      String told = scene.heatToSpare(least);
      return scene.say(key + ".least", "heat", heat, "least", told, "second", second);
    }
    return scene.say(key, "heat", heat, "second", second);
  }

  /** Where streams meet that do not join. */
  static String coldShuts(Scene scene) {
    List<String> places =
        lastinch.solver.study.VerdictWord.coldShuts(scene.result()).stream()
            .sorted(Comparator.comparingDouble(m -> scene.onRuler(m.passage(), m.at())))
            .map(m -> scene.place(new Spot(m.passage(), m.at())))
            .distinct()
            .toList();
    return scene.list(places);
  }

  private static String stopsShort(Scene scene, String word) {
    Figures figures = scene.figures();
    Optional<Stop> stop = scene.stop();
    if (stop.isEmpty()) {
      return scene.say(
          "verdict.stopsShort.unknown",
          "word",
          word,
          "percent",
          figures.percent(scene.result().filledFraction()));
    }
    if (scene.isHole()) {
      // over the plane metal may run the whole way and leave a hole beside it
      return scene.say(
          "verdict.stopsShort.hole",
          "word",
          word,
          "percent",
          figures.percent(Math.min(0.99, scene.result().filledFraction())),
          "place",
          scene.place(new Spot(stop.get().passage(), stop.get().at())));
    }
    Gaps gaps = scene.gaps();
    if (gaps.anyHole()) {
      return gaps.verdict(scene, word);
    }
    return stopsAt(scene, word, stop.get());
  }

  /** Where a single front stands, and what stays empty ahead of it. */
  private static String stopsAt(Scene scene, String word, Stop stop) {
    Figures figures = scene.figures();
    double length = scene.length();
    PassageRecord.Role role = scene.role(stop.passage()).orElse(PassageRecord.Role.PIECE);
    double reach =
        role == PassageRecord.Role.PIECE
            ? scene.onRuler(stop.passage(), stop.at())
            : scene.result().reach();
    if (role != PassageRecord.Role.PIECE && !(reach > 0.0)) {
      return role == PassageRecord.Role.BOSS
          ? scene.say("verdict.stopsShort.boss", "word", word, "length", figures.ruler(length))
          : scene.say(
              "verdict.stopsShort.before",
              "word",
              word,
              "channel",
              stop.passage(),
              "at",
              figures.ruler(stop.at()));
    }
    if (scene.fromTip() && role == PassageRecord.Role.PIECE) {
      return scene.say(
          "verdict.stopsShort.fromTip",
          "word",
          word,
          "at",
          figures.ruler(reach),
          "length",
          figures.ruler(length));
    }
    if (figures.rulerBare(reach).equals(figures.rulerBare(length))) {
      return scene.say("verdict.stopsShort.tip", "word", word, "length", figures.ruler(length));
    }
    return scene.say(
        "verdict.stopsShort",
        "word",
        word,
        "reach",
        figures.ruler(reach),
        "length",
        figures.ruler(length),
        "missing",
        figures.ruler(length - reach));
  }

  /** Where the rim stays rounded: from the first such place to the last. */
  private static String rounded(Scene scene) {
    List<EdgeStretch> stretches =
        scene.result().edges().stream()
            .filter(e -> e.state() == EdgeStretch.State.ROUNDED)
            .toList();
    double from = stretches.get(0).from();
    double to = stretches.get(stretches.size() - 1).to();
    return scene.say(
        "verdict.span",
        "from",
        scene.figures().rulerBare(from),
        "to",
        scene.figures().ruler(Math.max(from, to)));
  }

  /** What a filled piece still suffers from: a full mould is not yet a good casting. */
  private static String second(Scene scene) {
    List<Finding> findings = scene.result().findings();
    Optional<Finding> serious = first(findings, Finding.Severity.SERIOUS);
    List<LapStretch> plain =
        scene.result().laps().stream().filter(l -> l.worstIndex() >= Remarks.PLAIN).toList();
    boolean edge = lastinch.solver.study.VerdictWord.isEdgeRounded(scene.result());
    if (serious.isEmpty()
        && edge
        && VerdictSentence.of(scene.plan())
            .filter(v -> v == VerdictSentence.EDGES_ROUNDED)
            .isEmpty()) {
      return scene.say("verdict.second.edge", "where", rounded(scene));
    }
    if (serious.isEmpty() && !plain.isEmpty()) {
      return laps(scene, plain);
    }
    return serious
        .or(() -> first(findings, Finding.Severity.WATCH))
        .map(f -> scene.say("short." + f.kind().name()))
        .orElseGet(() -> scene.say("verdict.second.none"));
  }

  /** Where they begin along the ruler; a boss lies before it and is named. */
  private static String laps(Scene scene, List<LapStretch> plain) {
    return plain.stream()
        .filter(l -> scene.role(l.passage()).filter(PassageRecord.Role.BOSS::equals).isEmpty())
        .findFirst()
        .map(
            l ->
                scene.say(
                    "verdict.second.laps",
                    "from",
                    scene.figures().ruler(scene.onRuler(l.passage(), l.from()))))
        .orElseGet(() -> scene.say("verdict.second.laps.boss"));
  }

  private static Optional<Finding> first(List<Finding> findings, Finding.Severity severity) {
    return findings.stream().filter(f -> f.severity() == severity).findFirst();
  }
}
