package lastinch.ui.words.study;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import lastinch.cases.plan.Plan;
import lastinch.solver.casting.Limb;
import lastinch.solver.levers.Lever;
import lastinch.solver.result.Margin;
import lastinch.solver.search.LeverAnswer;
import lastinch.solver.search.SmallestChange;
import lastinch.solver.study.RunSummary;
import lastinch.solver.study.Trial;
import lastinch.ui.words.Care;
import lastinch.ui.words.Figures;
import lastinch.ui.words.Page;
import lastinch.ui.words.Sentences;

/** Every choice of a lever that has nothing between its values: metals, ways of making moulds. */
final class ChoiceTable {
  private static final int NAME = 30;
  private static final int OUTCOME = 20;

  private final Sentences sentences;
  private final Figures figures;
  private final LeverWords levers;
  private final GlanceWords glances;

  ChoiceTable(Sentences sentences, Figures figures) {
    this.sentences = sentences;
    this.figures = figures;
    this.levers = new LeverWords(sentences, figures);
    this.glances = new GlanceWords(sentences, figures);
  }

  /** Answers about choices. */
  List<LeverAnswer> of(SmallestChange least) {
    return least.answers().stream()
        .filter(LeastVerdict::isChoice)
        .filter(a -> a.kind() != LeverAnswer.Kind.NO_ANSWER)
        .toList();
  }

  /** Whether nothing but choices was asked about. */
  static boolean isAllThereIs(SmallestChange least) {
    return !least.answers().isEmpty() && least.answers().stream().allMatch(LeastVerdict::isChoice);
  }

  private static List<Trial> ranked(LeverAnswer a) {
    List<Trial> all = new ArrayList<>(a.tried());
    all.sort(
        Comparator.comparingDouble((Trial t) -> -t.glance().goodness())
            .thenComparingDouble(Trial::value));
    all.sort(Comparator.comparingDouble((Trial t) -> -far(t.glance())));
    return all;
  }

  /** How far metal runs, in lengths of the piece; further than is followed counts as that [-]. */
  private static double far(RunSummary g) {
    return g.answered() ? g.signed() : Double.NEGATIVE_INFINITY;
  }

  /** One line for each choice, the one that runs furthest first. */
  void add(Page page, Plan plan, LeverAnswer a) {
    page.line(sentences.say("choices.title", "lever", levers.name(a.lever())));
    for (Trial t : ranked(a)) {
      String name = levers.value(a.lever(), t.value());
      String shown =
          t.value() == a.lever().now() ? sentences.say("choices.now", "name", name) : name;
      page.line(
          "  "
              + Page.pad(shown, NAME)
              + Page.pad(
                  t.glance().filled()
                      ? sentences.say("choices.fills", "heat", glances.brief(t.glance()))
                      : glances.brief(t.glance()),
                  OUTCOME)
              + beyond(plan, t.glance())
                  .map(d -> sentences.say("choices.beyond", "distance", distance(d)))
                  .orElse(""));
    }
    cautions(page, plan, a);
  }

  /** What choices bring with them that can hurt, each caution once with all whom it concerns. */
  private void cautions(Page page, Plan plan, LeverAnswer a) {
    Care care = new Care(sentences);
    Map<String, List<String>> names = new LinkedHashMap<>();
    for (Trial t : ranked(a)) {
      care.change(plan.pourCase(), a.lever().set(plan.pourCase(), t.value()))
          .ifPresent(
              text ->
                  names
                      .computeIfAbsent(text, k -> new ArrayList<>())
                      .add(levers.value(a.lever(), t.value())));
    }
    names.forEach(
        (text, all) ->
            page.wrapped(
                "  ",
                "    ",
                sentences.say("choices.care", "names", String.join(", ", all), "caution", text)));
  }

  /** Distance beyond the end of the piece [m], where it filled and has one end. */
  private static Optional<Double> beyond(Plan plan, RunSummary g) {
    List<Limb> limbs = plan.pourCase().piece().limbs();
    return g.filled() && limbs.size() == 1
        ? Optional.of(g.signed() * limbs.get(0).length())
        : Optional.empty();
  }

  private String distance(double metres) {
    return metres >= Margin.FAR
        ? sentences.say("sure.far", "distance", figures.far(Margin.FAR))
        : figures.roughly(metres);
  }

  /** Which one runs furthest, and by how much further than the one planned. */
  String furthest(Plan plan, LeverAnswer a) {
    Lever lever = a.lever();
    List<Trial> ranked = ranked(a);
    Trial best = ranked.get(0);
    Trial now = ranked.stream().filter(t -> t.value() == lever.now()).findFirst().orElseThrow();
    String count = Integer.toString(ranked.size());
    String name = levers.value(lever, now.value());
    if (far(best.glance()) <= far(now.glance())) {
      return sentences.say(
          "choices.best", "count", count, "lever", levers.name(lever), "now", name);
    }
    double length = plan.pourCase().piece().limbs().stream().mapToDouble(Limb::length).sum();
    double further = (far(best.glance()) - far(now.glance())) * length;
    boolean atLeast = best.glance().filled() && far(best.glance()) * length >= Margin.FAR;
    return sentences.say(
        atLeast ? "choices.furthest.far" : "choices.furthest",
        "best",
        levers.value(lever, best.value()),
        "now",
        name,
        "by",
        figures.roughly(further));
  }
}
