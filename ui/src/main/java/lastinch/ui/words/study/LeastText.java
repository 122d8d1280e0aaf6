package lastinch.ui.words.study;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import lastinch.cases.plan.Plan;
import lastinch.solver.levers.ParameterUnit;
import lastinch.solver.result.FlowLimit;
import lastinch.solver.search.LeverAnswer;
import lastinch.solver.search.LeverAnswer.Kind;
import lastinch.solver.search.PairAnswer;
import lastinch.solver.search.SmallestChange;
import lastinch.solver.search.SureChange;
import lastinch.solver.study.RunSummary;
import lastinch.ui.words.Care;
import lastinch.ui.words.Figures;
import lastinch.ui.words.Page;
import lastinch.ui.words.PlainLetters;
import lastinch.ui.words.Sentences;

/** The printed answer to: what is the smallest change that fills? */
public final class LeastText {
  private static final int MOVE = 30;
  private static final int FILLS = 11;
  private static final int SHORT = 18;
  private static final int NUMBER = 4;
  private static final String INDENT = "    ";

  /** Rows of a table on a screen. */
  private static final int ROWS = 4;

  private final Sentences sentences;
  private final Figures figures;
  private final LeverWords levers;
  private final Care care;
  private final GlanceWords glances;
  private final LeastVerdict verdict;

  public LeastText(Sentences sentences, Figures figures) {
    this.sentences = Objects.requireNonNull(sentences, "sentences");
    this.figures = Objects.requireNonNull(figures, "figures");
    this.levers = new LeverWords(sentences, figures);
    this.care = new Care(sentences);
    this.glances = new GlanceWords(sentences, figures);
    this.verdict = new LeastVerdict(sentences, figures);
  }

  /** The whole answer, line by line, with what makes it sure where that was asked. */
  public List<String> full(
      Plan plan, String file, SmallestChange least, Optional<SureChange.Wanted> sure) {
    return page(plan, file, least, sure, true);
  }

  /** As much of it as fits a screen: the answer and what it rests on. */
  public List<String> screen(
      Plan plan, String file, SmallestChange least, Optional<SureChange.Wanted> sure) {
    return page(plan, file, least, sure, false);
  }

  private List<String> page(
      Plan plan, String file, SmallestChange least, Optional<SureChange.Wanted> sure, boolean all) {
    Page page = new Page();
    verdict.sentences(plan, least, sure).forEach(page::paragraph);
    page.blank();
    page.heading(
        sentences.say(least.already() ? "slip.title" : "least.title", "title", plan.title()));
    page.paragraph(
        sentences.say(
            "least.base", "outcome", glances.outcome(least.base()), "asked", verdict.asked(least)));
    page.blank();
    if (least.already()) {
      slips(page, plan, least, all);
    } else {
      enough(page, plan, least, all);
      if (least.whole() && (all || of(least, Kind.ENOUGH).isEmpty())) {
        notEnough(page, plan, least, all);
      }
      if (all || of(least, Kind.ENOUGH).isEmpty()) {
        pairs(page, least);
      }
    }
    if (all || ChoiceTable.isAllThereIs(least)) {
      choices(page, plan, least);
    }
    if (all && least.whole()) {
      noHelp(page, least);
      noAnswer(page, least);
    }
    sure.ifPresent(wanted -> surer(page, plan, wanted));
    page.blank();
    next(page, file, least);
    care.add(page, plan.pourCase());
    return PlainLetters.all(page.lines());
  }

  private void choices(Page page, Plan plan, SmallestChange least) {
    ChoiceTable table = new ChoiceTable(sentences, figures);
    for (LeverAnswer a : table.of(least)) {
      page.blank();
      table.add(page, plan, a);
    }
  }

  /** How far each lever has to go to fill often enough. */
  private void surer(Page page, Plan plan, SureChange.Wanted wanted) {
    page.blank();
    String share = figures.whole(100.0 * wanted.share());
    page.line(sentences.say("least.sure", "share", share));
    if (wanted.changes().isEmpty()) {
      page.wrapped("  ", "  ", sentences.say("least.sure.none"));
    }
    for (SureChange change : wanted.changes()) {
      page.wrapped(
          "  ",
          "    ",
          sentences.say(
              change.enough() ? "least.sure.line" : "least.sure.short",
              "move",
              levers.move(change.lever(), change.value()),
              "values",
              levers.fromTo(change.lever(), change.value()),
              "share",
              figures.whole(100.0 * change.chance().share()),
              "low",
              figures.whole(100.0 * change.chance().low()),
              "high",
              figures.whole(100.0 * change.chance().high())));
      care.beside(page, "    ", plan.pourCase(), change.lever(), change.value());
    }
  }

  /** The answer alone. */
  public List<String> brief(Plan plan, SmallestChange least, Optional<SureChange.Wanted> sure) {
    Page page = new Page();
    verdict.sentences(plan, least, sure).forEach(page::paragraph);
    return PlainLetters.all(page.lines());
  }

  private static List<LeverAnswer> of(SmallestChange least, Kind kind) {
    return least.answers().stream().filter(a -> a.kind() == kind).toList();
  }

  private void head(Page page, String move, String fills, String shorter, String stops) {
    page.line(
        " "
            + Page.pad(sentences.say(move), NUMBER + MOVE - 1)
            + Page.pad(sentences.say(fills), FILLS)
            + Page.pad(sentences.say(shorter), SHORT)
            + sentences.say(stops));
  }

  private void enough(Page page, Plan plan, SmallestChange least, boolean all) {
    List<LeverAnswer> answers = of(least, Kind.ENOUGH);
    if (answers.isEmpty()) {
      return;
    }
    head(page, "least.head.one", "least.head.fills", "least.head.short", "least.head.stops");
    int number = 1;
    for (LeverAnswer a : shown(answers, all)) {
      row(page, least, number++, a, a.at().orElseThrow().glance(), a.at().orElseThrow().value());
      notes(page, plan, a, all);
    }
    more(page, answers, all);
    if (all) {
      full(page, least, answers);
    }
    page.blank();
  }

  private static <T> List<T> shown(List<T> rows, boolean all) {
    return all ? rows : rows.subList(0, Math.min(ROWS, rows.size()));
  }

  private void more(Page page, List<LeverAnswer> answers, boolean all) {
    int left = answers.size() - shown(answers, all).size();
    if (left > 0) {
      page.line(" ".repeat(NUMBER) + sentences.say("study.more", "count", Integer.toString(left)));
    }
  }

  /** What belongs to an answer besides its figures. */
  private void notes(Page page, Plan plan, LeverAnswer a, boolean all) {
    double value = a.at().orElseThrow().value();
    care.beside(page, INDENT + "  ", plan.pourCase(), a.lever(), value);
    String tool = tool(a);
    if (!tool.isEmpty() && (all || a.withTool().isPresent())) {
      page.wrapped(INDENT, INDENT + "  ", tool);
    }
    String look = levers.lookOuts(a.lookOuts());
    if (!look.isEmpty()) {
      page.wrapped(INDENT, INDENT + "  ", sentences.say("least.lookOut", "what", look));
    }
    String note = "least.note." + a.lever().key();
    if (all && sentences.has(note)) {
      page.wrapped(INDENT, INDENT + "  ", sentences.say(note));
    }
  }

  /** Which answers leave the edge full, when not all do. */
  private void full(Page page, SmallestChange least, List<LeverAnswer> answers) {
    List<String> full = new ArrayList<>();
    for (int i = 0; i < answers.size(); i++) {
      if (!answers.get(i).chosen().orElseThrow().glance().edgesRounded()) {
        full.add(Integer.toString(i + 1));
      }
    }
    if (least.goal().fullEdge() || full.size() == answers.size()) {
      return;
    }
    page.paragraph(
        full.isEmpty()
            ? sentences.say("least.fullEdge.none")
            : sentences.say("least.fullEdge.some", "numbers", String.join(", ", full)));
  }

  private String tool(LeverAnswer a) {
    if (a.withTool().isPresent()) {
      return sentences.say(
          "least.tool.owned",
          "value",
          levers.value(a.lever(), a.withTool().get().value()),
          "outcome",
          glances.outcome(a.withTool().get().glance()));
    }
    return a.lever().owned().isEmpty() ? "" : sentences.say("least.tool.make");
  }

  private void row(
      Page page, SmallestChange least, int number, LeverAnswer a, RunSummary glance, double value) {
    String move = levers.move(a.lever(), value) + "  " + levers.fromTo(a.lever(), value);
    String shorter =
        a.justShort()
            .map(t -> levers.value(a.lever(), t.value()) + ": " + shortOf(least, t.glance()))
            .orElse("-");
    boolean same = a.stopsAt().isPresent() && a.stopsAt().equals(a.justShort());
    String stops = same ? "" : a.stopsAt().map(t -> levers.value(a.lever(), t.value())).orElse("-");
    String first = " " + Page.pad(Integer.toString(number), NUMBER - 1);
    String rest = Page.pad(glances.brief(glance), FILLS) + Page.pad(shorter, SHORT) + stops;
    if (move.length() >= MOVE) {
      page.line(first + move);
      page.line(" ".repeat(NUMBER + MOVE) + rest);
    } else {
      page.line(first + Page.pad(move, MOVE) + rest);
    }
  }

  private String shortOf(SmallestChange least, RunSummary glance) {
    return least.goal().fullEdge() && glance.fillsWith(least.goal().spare())
        ? sentences.say("glance.brief.rounded")
        : glances.brief(glance, least.goal().spare());
  }

  private void slips(Page page, Plan plan, SmallestChange least, boolean all) {
    List<LeverAnswer> answers = of(least, Kind.MAY_SLIP);
    if (!answers.isEmpty()) {
      head(page, "slip.head.one", "slip.head.fills", "slip.head.short", "slip.head.stops");
      int number = 1;
      for (LeverAnswer a : shown(answers, all)) {
        row(page, least, number++, a, a.at().orElseThrow().glance(), a.at().orElseThrow().value());
      }
      more(page, answers, all);
      page.blank();
    }
    List<LeverAnswer> holds = of(least, Kind.HOLDS);
    if (!holds.isEmpty() && (all || answers.isEmpty())) {
      page.paragraph(
          sentences.say(
              "slip.holds",
              "levers",
              String.join("; ", holds.stream().map(this::reachOf).toList())));
      for (LeverAnswer a : holds) {
        double most = a.tried().get(a.tried().size() - 1).value();
        care.beside(page, INDENT, plan.pourCase(), a.lever(), most);
      }
    }
  }

  /** A lever with the values between which it was tried. */
  private String reachOf(LeverAnswer a) {
    return levers.reach(
        a.lever(), a.tried().get(0).value(), a.tried().get(a.tried().size() - 1).value());
  }

  private String names(List<LeverAnswer> answers) {
    return String.join(", ", answers.stream().map(a -> levers.name(a.lever())).toList());
  }

  private void notEnough(Page page, Plan plan, SmallestChange least, boolean all) {
    List<LeverAnswer> answers = of(least, Kind.NOT_ENOUGH);
    if (answers.isEmpty()) {
      return;
    }
    page.line(sentences.say(of(least, Kind.ENOUGH).isEmpty() ? "least.none" : "least.notAlone"));
    List<LeverAnswer> little = answers.stream().filter(least::helpsLittle).toList();
    for (LeverAnswer a : shown(answers, all)) {
      if (!little.contains(a)) {
        String text =
            sentences.say(a.end().isPresent() ? "least.best.end" : "least.best", pairsOf(a));
        page.wrapped("   ", "     ", text);
        care.beside(page, "     ", plan.pourCase(), a.lever(), a.best().value());
      }
    }
    more(page, answers, all);
    if (all && !little.isEmpty()) {
      page.wrapped("   ", "     ", sentences.say("least.little", "levers", names(little)));
    }
    page.blank();
  }

  private String[] pairsOf(LeverAnswer a) {
    List<String> all =
        new ArrayList<>(
            List.of(
                "move",
                levers.move(a.lever(), a.best().value()),
                "value",
                levers.value(a.lever(), a.best().value()),
                "outcome",
                glances.outcome(a.best().glance())));
    a.end().ifPresent(end -> all.addAll(List.of("reason", levers.reason(end))));
    return all.toArray(new String[0]);
  }

  private void pairs(Page page, SmallestChange least) {
    if (least.pairs().isEmpty()) {
      return;
    }
    page.line(sentences.say("least.pairs"));
    for (PairAnswer pair : least.pairs()) {
      String look = levers.lookOuts(pair.lookOuts());
      String text =
          sentences.say(
              "least.pair",
              "first",
              levers.move(pair.first(), pair.firstValue())
                  + " "
                  + levers.fromTo(pair.first(), pair.firstValue()),
              "second",
              levers.move(pair.second(), pair.secondValue())
                  + " "
                  + levers.fromTo(pair.second(), pair.secondValue()),
              "outcome",
              glances.brief(pair.glance()),
              "shortFirst",
              levers.value(pair.first(), pair.shortFirst()),
              "shortSecond",
              levers.value(pair.second(), pair.shortSecond()),
              "short",
              shortOf(least, pair.justShort()));
      page.wrapped("   ", "     ", text);
      if (!look.isEmpty()) {
        page.wrapped("     ", "       ", sentences.say("least.lookOut", "what", look));
      }
    }
    page.blank();
  }

  /** Levers that do nothing, and why, while the hand holds the pour back. */
  private void noHelp(Page page, SmallestChange least) {
    List<LeverAnswer> answers = of(least, Kind.NO_HELP);
    if (answers.isEmpty()) {
      return;
    }
    page.blank();
    boolean hand = least.base().limitedBy() == FlowLimit.HAND;
    page.paragraph(
        sentences.say("least.noHelp", "levers", names(answers))
            + (hand ? " " + sentences.say("least.noHelp.hand") : ""));
  }

  private void noAnswer(Page page, SmallestChange least) {
    List<LeverAnswer> answers = of(least, Kind.NO_ANSWER);
    if (!answers.isEmpty()) {
      page.paragraph(sentences.say("least.noAnswer", "levers", names(answers)));
    }
  }

  private void next(Page page, String file, SmallestChange least) {
    List<LeverAnswer> moved =
        of(least, least.already() ? Kind.MAY_SLIP : Kind.ENOUGH).stream()
            .filter(a -> a.lever().unit() != ParameterUnit.CHOICE)
            .limit(2)
            .toList();
    if (moved.size() == 2) {
      page.entry(sentences.say("label.next"), sentences.say("least.next.room"));
      page.entry(
          "",
          sentences.say(
              "least.next.room.command",
              "file",
              file,
              "across",
              Page.kept(levers.spelled(moved.get(0).lever())),
              "up",
              Page.kept(levers.spelled(moved.get(1).lever()))));
    }
  }
}
