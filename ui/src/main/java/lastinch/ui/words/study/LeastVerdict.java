package lastinch.ui.words.study;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import lastinch.cases.plan.Plan;
import lastinch.solver.levers.Bound;
import lastinch.solver.levers.Lever;
import lastinch.solver.levers.ParameterUnit;
import lastinch.solver.search.LeverAnswer;
import lastinch.solver.search.LeverAnswer.Kind;
import lastinch.solver.search.PairAnswer;
import lastinch.solver.search.SmallestChange;
import lastinch.solver.search.SureChange;
import lastinch.solver.study.RunSummary;
import lastinch.solver.study.Trial;
import lastinch.ui.words.Figures;
import lastinch.ui.words.Sentences;

/** What a search for the smallest change comes to, in two or three sentences. */
final class LeastVerdict {
  private final Sentences sentences;
  private final Figures figures;
  private final LeverWords levers;
  private final GlanceWords glances;
  private final ChoiceTable choices;

  LeastVerdict(Sentences sentences, Figures figures) {
    this.sentences = sentences;
    this.figures = figures;
    this.levers = new LeverWords(sentences, figures);
    this.glances = new GlanceWords(sentences, figures);
    this.choices = new ChoiceTable(sentences, figures);
  }

  /** The sentences; none when the study was stopped, as nothing can be said then. */
  List<String> sentences(Plan plan, SmallestChange least, Optional<SureChange.Wanted> sure) {
    List<String> all = new ArrayList<>();
    if (!least.whole()) {
      return all;
    }
    if (sure.isPresent()) {
      all.add(surest(sure.get()));
    } else if (least.already()) {
      all.add(
          sentences.say(
              "slip.already", "asked", asked(least), "outcome", glances.outcome(least.base())));
      slips(all, least);
    } else {
      all.add(pick(least));
    }
    for (LeverAnswer a : choices.of(least)) {
      if (least.already() || ChoiceTable.isAllThereIs(least)) {
        all.add(choices.furthest(plan, a));
      }
    }
    return all;
  }

  String asked(SmallestChange least) {
    return sentences.say(
        least.goal().fullEdge() ? "least.asked.fullEdge" : "least.asked",
        "spare",
        figures.percent(least.goal().spare()));
  }

  /** The first change that fills often enough; else the one that fills most often. */
  private String surest(SureChange.Wanted wanted) {
    String asked = figures.whole(100.0 * wanted.share());
    Optional<SureChange> best =
        wanted.changes().stream()
            .filter(SureChange::enough)
            .findFirst()
            .or(
                () ->
                    wanted.changes().stream()
                        .max(Comparator.comparingDouble(c -> c.chance().share())));
    if (best.isEmpty()) {
      return sentences.say("least.sure.pick.none", "asked", asked);
    }
    SureChange change = best.get();
    return sentences.say(
        change.enough() ? "least.sure.pick" : "least.sure.pick.short",
        "what",
        levers.move(change.lever(), change.value())
            + ", "
            + levers.fromTo(change.lever(), change.value()),
        "share",
        figures.whole(100.0 * change.chance().share()),
        "asked",
        asked);
  }

  private String pick(SmallestChange least) {
    Optional<SmallestChange.Pick> pick = least.pick();
    if (pick.isEmpty()) {
      return nearest(least);
    }
    Optional<LeverAnswer> one = pick.get().answer();
    String what = one.map(this::change).orElseGet(() -> both(pick.get().pair().orElseThrow()));
    RunSummary then =
        one.map(a -> a.chosen().orElseThrow().glance())
            .orElseGet(() -> pick.get().pair().orElseThrow().glance());
    return sentences.say(
            "least.pick",
            "what",
            what,
            "outcome",
            glances.outcome(then),
            "base",
            glances.outcome(least.base()))
        + " "
        + sentences.say("least.because." + pick.get().because().name());
  }

  private String change(LeverAnswer a) {
    double to = a.chosen().orElseThrow().value();
    return levers.move(a.lever(), to) + ", " + levers.fromTo(a.lever(), to);
  }

  private String both(PairAnswer pair) {
    return sentences.say(
        "list.and",
        "first",
        levers.move(pair.first(), pair.firstValue())
            + ", "
            + levers.fromTo(pair.first(), pair.firstValue()),
        "last",
        levers.move(pair.second(), pair.secondValue())
            + ", "
            + levers.fromTo(pair.second(), pair.secondValue()));
  }

  /** Nothing that was tried is enough: what comes nearest, if anything helps at all. */
  private String nearest(SmallestChange least) {
    String base = glances.outcome(least.base());
    return least.answers().stream()
        .filter(a -> a.kind() == Kind.NOT_ENOUGH)
        .max(Comparator.comparingDouble(a -> a.best().glance().goodness()))
        .map(
            a ->
                sentences.say(
                    "least.pick.nearest",
                    "what",
                    levers.move(a.lever(), a.best().value()),
                    "values",
                    levers.fromTo(a.lever(), a.best().value()),
                    "outcome",
                    glances.outcome(a.best().glance()),
                    "base",
                    base))
        .orElseGet(() -> sentences.say("least.pick.none", "base", base));
  }

  /** What gives way first; else how far single levers may go. */
  private void slips(List<String> all, SmallestChange least) {
    Optional<LeverAnswer> first =
        least.answers().stream()
            .filter(a -> a.kind() == Kind.MAY_SLIP && a.at().isPresent())
            .min(
                Comparator.comparingDouble(
                    a -> SmallestChange.shareOfWay(a.lever(), a.at().get().value())));
    first.ifPresent(a -> all.add(slip(least, a)));
    List<LeverAnswer> holds = least.answers().stream().filter(a -> a.kind() == Kind.HOLDS).toList();
    if (first.isEmpty() && !holds.isEmpty() && holds.size() <= 2) {
      holds.forEach(a -> all.add(enough(a)));
    } else if (first.isEmpty() && !holds.isEmpty()) {
      all.add(sentences.say("slip.anything"));
    }
  }

  private String slip(SmallestChange least, LeverAnswer a) {
    double at = a.at().orElseThrow().value();
    if (at == a.lever().now() || a.justShort().isEmpty()) {
      return sentences.say("slip.first.none", "lever", levers.name(a.lever()));
    }
    Trial shorter = a.justShort().get();
    return sentences.say(
        "slip.first",
        "what",
        levers.move(a.lever(), at) + ", " + levers.fromTo(a.lever(), at),
        "short",
        levers.value(a.lever(), shorter.value()),
        "outcome",
        glances.outcome(shorter.glance(), least.goal().spare()));
  }

  /** The end of practice at which least is left is enough, and why practice ends there. */
  private String enough(LeverAnswer a) {
    Lever lever = a.lever();
    Trial low = a.tried().get(0);
    Trial high = a.tried().get(a.tried().size() - 1);
    boolean down = low.glance().goodness() <= high.glance().goodness();
    Trial worst = down ? low : high;
    Bound end = down ? lever.practical().low() : lever.practical().high();
    return sentences.say(
        down ? "slip.enough.low" : "slip.enough.high",
        "lever",
        levers.name(lever),
        "value",
        levers.value(lever, worst.value()),
        "outcome",
        glances.outcome(worst.glance()),
        "reason",
        levers.reason(end));
  }

  static boolean isChoice(LeverAnswer a) {
    return a.lever().unit() == ParameterUnit.CHOICE;
  }
}
