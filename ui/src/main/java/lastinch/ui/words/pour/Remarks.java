package lastinch.ui.words.pour;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import lastinch.solver.result.EdgeStretch;
import lastinch.solver.result.Finding;
import lastinch.solver.result.LapStretch;
import lastinch.solver.result.Meeting;
import lastinch.solver.result.OriginStretch;
import lastinch.solver.result.Outcome;
import lastinch.solver.result.PassageRecord;
import lastinch.solver.result.Spot;
import lastinch.ui.words.Figures;
import lastinch.ui.words.Page;
import lastinch.ui.words.Reasons;
import lastinch.ui.words.Scene;

/** Edge, laps, meetings, boss, flask, weights: one labelled line each. */
public final class Remarks {
  /** Lap index from which a line is plain to see [-]; our own threshold. */
  static final double PLAIN = 0.6;

  /** Less than a kitchen scale shows [kg]. */
  private static final double WEIGHED = 1e-3;

  private static final double PULSES = 1.0;

  /** A smaller share of the metal left over than this is warned of [-]; our own, no source. */
  private static final double SMALL_INGOT = 0.02;

  /** What spoils a casting before what may, and that before what only makes the answer unsure. */
  private static final List<Finding.Kind> WEIGHT =
      List.of(
          Finding.Kind.ABOVE_CEILING,
          Finding.Kind.TOO_LITTLE_METAL,
          Finding.Kind.CUP_RUNS_EMPTY,
          Finding.Kind.CUP_OVERFLOWS,
          Finding.Kind.POUR_TIMES_DISAGREE,
          Finding.Kind.WIDE_PIECE,
          Finding.Kind.GATE_SPLASHES,
          Finding.Kind.FALLS,
          Finding.Kind.RUNS_AGAINST_MOULD,
          Finding.Kind.FRONT_SPLASHES,
          Finding.Kind.AIR_PUSHES_BACK,
          Finding.Kind.PUDDLES,
          Finding.Kind.TABLE_CLAMPED,
          Finding.Kind.MUSH_SHARE_COUNTS,
          Finding.Kind.GAP_COUNTS);

  private Remarks() {}

  static void add(Page page, Scene scene) {
    edge(page, scene);
    laps(page, scene);
    meetings(page, scene);
    origins(page, scene);
    flask(page, scene);
    metal(page, scene);
    watch(page, scene);
    page.blank();
  }

  private static void edge(Page page, Scene scene) {
    Map<String, List<EdgeStretch>> byLimb = new LinkedHashMap<>();
    for (EdgeStretch stretch : scene.result().edges()) {
      byLimb.computeIfAbsent(stretch.passage(), name -> new ArrayList<>()).add(stretch);
    }
    List<String> limbs = new ArrayList<>();
    for (Map.Entry<String, List<EdgeStretch>> limb : byLimb.entrySet()) {
      String told = rim(scene, limb.getValue());
      limbs.add(
          byLimb.size() == 1 ? told : scene.say("edge.limb", "limb", limb.getKey(), "edge", told));
    }
    if (!limbs.isEmpty()) {
      page.entry(scene.say("label.edge"), String.join("; ", limbs));
    }
  }

  /** One limb's rim, from the thick end. */
  private static String rim(Scene scene, List<EdgeStretch> stretches) {
    if (stretches.size() == 1 && stretches.get(0).state() == EdgeStretch.State.FULL) {
      return scene.say("edge.full.all");
    }
    List<String> parts = new ArrayList<>();
    for (EdgeStretch stretch : stretches) {
      String key =
          switch (stretch.state()) {
            case FULL -> "edge.full";
            case ROUNDED -> "edge.rounded." + Reasons.key(stretch.cause());
            case EMPTY -> "edge.empty";
          };
      parts.add(span(scene, key, stretch.from(), stretch.to()));
    }
    return String.join(", ", parts);
  }

  private static void laps(Page page, Scene scene) {
    if (!(scene.result().reach() > 0.0)) {
      return;
    }
    Map<String, List<String>> byLimb = new LinkedHashMap<>();
    double boss = 0.0;
    for (LapStretch lap : scene.result().laps()) {
      if (scene.role(lap.passage()).filter(r -> r == PassageRecord.Role.BOSS).isPresent()) {
        boss = Math.max(boss, lap.worstIndex());
        continue;
      }
      byLimb
          .computeIfAbsent(lap.passage(), name -> new ArrayList<>())
          .add(
              span(
                  scene,
                  grade(lap.worstIndex()),
                  scene.onRuler(lap.passage(), lap.from()),
                  scene.onRuler(lap.passage(), lap.to())));
    }
    List<String> parts = new ArrayList<>();
    if (boss > 0.0) {
      parts.add(scene.say(grade(boss) + ".boss"));
    }
    for (Map.Entry<String, List<String>> limb : byLimb.entrySet()) {
      String told = String.join(", ", limb.getValue());
      parts.add(
          scene.hasLimbs() ? scene.say("laps.limb", "limb", limb.getKey(), "laps", told) : told);
    }
    page.entry(
        scene.say("label.laps"),
        parts.isEmpty()
            ? scene.say("laps.none")
            : String.join(scene.hasLimbs() ? "; " : ", ", parts));
  }

  private static String grade(double index) {
    return index >= PULSES ? "laps.pulses" : index >= PLAIN ? "laps.plain" : "laps.faint";
  }

  private static String span(Scene scene, String key, double from, double to) {
    return scene.say(key, "from", scene.figures().rulerBare(from), "to", scene.figures().ruler(to));
  }

  private static void meetings(Page page, Scene scene) {
    Map<String, Integer> times = new LinkedHashMap<>();
    for (Meeting meeting : scene.result().meetings()) {
      String told =
          scene.say(
              "meeting." + Reasons.key(meeting.kind()),
              "place",
              scene.place(new Spot(meeting.passage(), meeting.at())),
              "time",
              scene.figures().seconds(meeting.time()),
              "temperature",
              scene.figures().heat(Math.min(meeting.temperatureA(), meeting.temperatureB())));
      times.merge(told, 1, Integer::sum);
    }
    List<String> parts = new ArrayList<>();
    times.forEach((told, n) -> parts.add(n == 1 ? told : alike(scene, told, n)));
    boolean oneStream = scene.result().gates().size() <= 1;
    page.entry(
        scene.say("label.meeting"),
        parts.isEmpty()
            ? scene.say(oneStream ? "meeting.none.one" : "meeting.none")
            : String.join("; ", parts));
  }

  private static String alike(Scene scene, String told, int places) {
    return scene.say("meeting.alike", "told", told, "count", scene.figures().whole(places));
  }

  /** Which gate filled what, where there is a choice. */
  private static void origins(Page page, Scene scene) {
    List<String> parts = new ArrayList<>();
    for (OriginStretch stretch : OriginStretch.of(scene.result())) {
      if (stretch.gate().isEmpty()) {
        continue;
      }
      boolean boss =
          scene.role(stretch.passage()).filter(r -> r == PassageRecord.Role.BOSS).isPresent();
      String span =
          boss
              ? scene.say("origin.boss")
              : span(
                  scene,
                  "origin.span",
                  scene.onRuler(stretch.passage(), stretch.from()),
                  scene.onRuler(stretch.passage(), stretch.to()));
      String gate = stretch.gate();
      parts.add(
          scene.hasLimbs() && !boss
              ? scene.say("origin.limb", "span", span, "limb", stretch.passage(), "gate", gate)
              : scene.say("origin.part", "span", span, "gate", gate));
    }
    if (scene.result().gates().size() > 1 && !parts.isEmpty()) {
      page.entry(scene.say("label.origin"), String.join("; ", parts));
    }
  }

  private static void flask(Page page, Scene scene) {
    if (scene.pourCase().mould().flask().isPresent()) {
      page.entry(
          scene.say("label.flask"),
          scene.say(
              "flask.heat",
              "kiln",
              scene.figures().heat(scene.pourCase().mould().temperature().value()),
              "edge",
              scene.figures().heat(scene.result().mouldAtEdge())));
    }
  }

  private static void metal(Page page, Scene scene) {
    if (scene.result().outcome() instanceof Outcome.Cancelled
        || scene.result().outcome() instanceof Outcome.BrokeDown) {
      return;
    }
    Figures figures = scene.figures();
    double melted = scene.pourCase().metal().melted();
    double needed = scene.result().massToRim();
    double spilled = scene.result().accounts().spilled();
    StringBuilder text = new StringBuilder();
    String key = melted - needed > WEIGHED ? "metal.spare" : "metal.short";
    text.append(
        key.equals("metal.spare")
            ? scene.say(
                key,
                "melted",
                figures.mass(melted),
                "needed",
                figures.mass(needed),
                "left",
                figures.mass(melted - needed))
            : scene.say(key, "melted", figures.mass(melted), "needed", figures.mass(needed)));
    if (spilled > WEIGHED) {
      text.append(' ').append(scene.say("metal.spilled", "spilled", figures.mass(spilled)));
    }
    scene
        .plan()
        .crucibleFull()
        .ifPresent(
            share ->
                text.append(' ')
                    .append(scene.say("metal.crucible", "percent", figures.percent(share))));
    page.entry(scene.say("label.metal"), text.toString());
  }

  /** The weightiest thing to watch, in one sentence. */
  public static Optional<String> worst(Scene scene) {
    return facts(scene).stream().findFirst();
  }

  /** Everything to watch, one sentence each, what matters most first. */
  private static List<String> facts(Scene scene) {
    List<Finding> rest =
        scene.result().findings().stream()
            .filter(f -> f.kind() != Finding.Kind.SPRUE_NEVER_FULL)
            .filter(f -> f.kind() != Finding.Kind.FLASK_EDGE)
            .sorted(
                Comparator.comparing(Finding::severity, Comparator.reverseOrder())
                    .thenComparing(f -> WEIGHT.indexOf(f.kind())))
            .toList();
    List<Finding> puddles =
        rest.stream().filter(f -> f.kind() == Finding.Kind.PUDDLES).collect(Collectors.toList());
    List<String> facts = new ArrayList<>();
    tight(scene).ifPresent(facts::add);
    for (Finding finding : rest) {
      if (finding.kind() != Finding.Kind.PUDDLES) {
        facts.add(sentence(FindingWords.of(scene, finding)));
      } else if (finding.equals(puddles.get(0))) {
        facts.add(sentence(FindingWords.puddles(scene, puddles)));
      }
    }
    return facts;
  }

  /** Metal that is only just enough. */
  private static Optional<String> tight(Scene scene) {
    double melted = scene.pourCase().metal().melted();
    double left = melted - scene.result().massToRim();
    boolean decided = VerdictSentence.of(scene.plan()).isPresent();
    return decided && left > WEIGHED && left < SMALL_INGOT * melted
        ? Optional.of(scene.say("watch.tight", "left", scene.figures().mass(left)))
        : Optional.empty();
  }

  private static void watch(Page page, Scene scene) {
    String label = scene.say("label.watch");
    for (String fact : facts(scene)) {
      page.entry(label, fact);
      label = "";
    }
  }

  private static String sentence(String half) {
    return Character.toUpperCase(half.charAt(0)) + half.substring(1) + ".";
  }
}
