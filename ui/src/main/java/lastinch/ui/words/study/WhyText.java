package lastinch.ui.words.study;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import lastinch.solver.casting.Limb;
import lastinch.solver.casting.Station;
import lastinch.solver.diagnosis.HeatLossBudget;
import lastinch.solver.result.Outcome;
import lastinch.solver.result.PassageRecord;
import lastinch.solver.result.PushBalance;
import lastinch.solver.result.Stop;
import lastinch.solver.search.LeverAnswer;
import lastinch.solver.search.SmallestChange;
import lastinch.solver.study.Trial;
import lastinch.ui.words.Care;
import lastinch.ui.words.Figures;
import lastinch.ui.words.Page;
import lastinch.ui.words.PlainLetters;
import lastinch.ui.words.Scene;
import lastinch.ui.words.Sentences;
import lastinch.ui.words.pour.Explained;
import lastinch.ui.words.pour.WhatWasShort;

/** The printed answer to: why did it end as it did? */
public final class WhyText {
  private static final int PLACE = 36;
  private static final int NUMBER = 6;
  private static final int BAR = 26;

  /** Changes on a screen. */
  private static final int FEW = 3;

  /** Places of the example, in lengths of the piece [-]. */
  private static final double STOPPED = 0.6;

  private static final double LAP = 0.4;

  /** Shorter than a shop counts [s]. */
  private static final double MOMENT = 0.05;

  private final Sentences sentences;
  private final Figures figures;
  private final GlanceWords glances;
  private final LeverWords levers;

  public WhyText(Sentences sentences, Figures figures) {
    this.sentences = Objects.requireNonNull(sentences, "sentences");
    this.figures = Objects.requireNonNull(figures, "figures");
    this.glances = new GlanceWords(sentences, figures);
    this.levers = new LeverWords(sentences, figures);
  }

  /** The whole answer, line by line; commands in it pour the same way. */
  public List<String> full(Explained why, HowPoured how) {
    return page(why, how, true);
  }

  /** As much of it as fits a screen. */
  public List<String> screen(Explained why, HowPoured how) {
    return page(why, how, false);
  }

  private List<String> page(Explained why, HowPoured how, boolean all) {
    Page page = new Page();
    boolean fills = why.result().outcome() instanceof Outcome.Filled;
    breath(page, why);
    page.blank();
    page.heading(
        sentences.say(fills ? "why.title.fills" : "why.title", "title", why.plan().title()));
    account(page, why, all);
    page.blank();
    if (all) {
      race(page, why);
      page.blank();
      push(page, why);
      WhatWasShort.add(page, new Scene(why.poured(), sentences, figures));
      page.blank();
    }
    changes(page, why, all);
    page.blank();
    String file = how.typed(why.file());
    page.entry(sentences.say("label.next"), sentences.say("why.next", "file", file));
    if (all) {
      page.entry("", found(why, file));
    }
    new Care(sentences).add(page, why.plan().pourCase());
    return PlainLetters.all(page.lines());
  }

  /** What it comes to. */
  public List<String> brief(Explained why) {
    Page page = new Page();
    breath(page, why);
    return PlainLetters.all(page.lines());
  }

  /** How much of the heat was gone on entry into the piece, where most of it went, what helps. */
  private void breath(Page page, Explained why) {
    List<HeatLossBudget.Line> lines = why.account().lines();
    List<Integer> percents = percents(why.account());
    int before = 0;
    int most = 0;
    for (int i = 0; i < lines.size(); i++) {
      before += isBefore(lines.get(i)) ? percents.get(i) : 0;
      most = lines.get(i).degrees() > lines.get(most).degrees() ? i : most;
    }
    String help =
        why.changes().whole()
            ? why.changes()
                .pick()
                .flatMap(SmallestChange.Pick::answer)
                .map(a -> " " + sentences.say("why.helps", "what", change(a)))
                .orElse("")
            : "";
    page.paragraph(
        sentences.say(
                "why.breath",
                "outcome",
                glances.outcome(why.changes().base()),
                "before",
                percent(before),
                "most",
                place(why, lines.get(most)),
                "share",
                percent(percents.get(most)))
            + help);
  }

  private String change(LeverAnswer a) {
    double to = a.chosen().orElseThrow().value();
    return levers.move(a.lever(), to) + ", " + levers.fromTo(a.lever(), to);
  }

  private static boolean isBefore(HeatLossBudget.Line line) {
    return line.kind() != HeatLossBudget.Kind.PIECE
        && line.kind() != HeatLossBudget.Kind.FROM_BEHIND;
  }

  private static String percent(int whole) {
    return whole + " %";
  }

  /**
   * Whole percents of all that was given up, one for each line, rounded so that those of what was
   * given up add to 100.
   */
  static List<Integer> percents(HeatLossBudget account) {
    List<Integer> all = new ArrayList<>();
    double exact = 0.0;
    int told = 0;
    for (HeatLossBudget.Line line : account.lines()) {
      if (line.kind() == HeatLossBudget.Kind.FROM_BEHIND) {
        all.add((int) Math.rint(100.0 * account.share(line)));
        continue;
      }
      exact += 100.0 * account.share(line);
      int percent = (int) Math.rint(exact) - told;
      told += percent;
      all.add(percent);
    }
    return all;
  }

  private void account(Page page, Explained why, boolean all) {
    HeatLossBudget account = why.account();
    page.line(sentences.say("why.account"));
    if (all) {
      page.wrapped(
          "  ",
          "  ",
          sentences.say(
              "why.account.spent",
              "spent",
              figures.degrees(account.spent()),
              "reading",
              figures.heat(why.plan().pourCase().metal().reading().value()),
              "freezing",
              figures.heat(why.plan().pourCase().metal().alloy().liquidus())));
      page.blank();
    }
    List<Integer> percents = percents(account);
    int last = account.lines().size() - (account.tellsWarmth() ? 1 : 0);
    for (int i = 0; i < last; i++) {
      HeatLossBudget.Line line = account.lines().get(i);
      String place = (isBefore(line) ? "  " : "* ") + place(why, line);
      row(page, place, line.degrees(), account.gross(), percents.get(i));
    }
    row(page, "  " + sentences.say("why.gross"), account.gross(), Double.NaN, 100);
    if (account.tellsWarmth()) {
      HeatLossBudget.Line behind = account.lines().get(last);
      row(page, "  " + place(why, behind), behind.degrees(), Double.NaN, percents.get(last));
      int net = 100 + percents.get(last);
      row(page, "  " + sentences.say("why.net"), account.spent(), Double.NaN, net);
    }
    page.wrapped("  ", "  ", sentences.say("why.account.key"));
  }

  /** A line of the account; no bar where there is nothing to measure it by. */
  private void row(Page page, String place, double degrees, double whole, int percent) {
    int bar = Double.isNaN(whole) ? 0 : (int) Math.round(BAR * Math.max(0.0, degrees) / whole);
    String number = figures.degrees(degrees);
    String share = percent(percent);
    page.line(
        Page.pad(place, PLACE)
            + " ".repeat(Math.max(0, NUMBER - number.length()))
            + number
            + "  "
            + Page.pad("#".repeat(bar), BAR)
            + " ".repeat(Math.max(0, NUMBER - share.length()))
            + share);
  }

  /** Name of a place of the account. */
  public String place(Explained why, HeatLossBudget.Line line) {
    return switch (line.kind()) {
      case WAITING -> sentences.say("why.waiting", "seconds", figures.trimmed(line.seconds(), 1));
      case LIP -> sentences.say("why.lip");
      case FROM_BEHIND -> sentences.say("why.behind");
      case CHANNEL ->
          line.seconds() < MOMENT
              ? sentences.say("why.channel.moment", "channel", line.passage())
              : sentences.say(
                  "why.channel",
                  "channel",
                  line.passage(),
                  "seconds",
                  figures.seconds(line.seconds()));
      case PIECE -> {
        double start = start(why, line.passage());
        yield sentences.say(
            "why.piece",
            "channel",
            line.passage(),
            "from",
            figures.rulerBare(start + line.from()),
            "to",
            figures.ruler(start + line.to()));
      }
    };
  }

  private static double start(Explained why, String passage) {
    return why.result().passages().stream()
        .filter(p -> p.name().equals(passage))
        .mapToDouble(PassageRecord::start)
        .findFirst()
        .orElse(0.0);
  }

  /** Metal against freezing at every station. */
  private void race(Page page, Explained why) {
    page.line(sentences.say("why.race"));
    boolean several = why.plan().pourCase().piece().limbs().size() > 1;
    for (PassageRecord p : why.result().passages()) {
      if (p.role() == PassageRecord.Role.PIECE) {
        if (several) {
          page.line("  " + p.name());
        }
        for (double at : stations(why, p)) {
          int cell = (int) Math.min(p.size() - 1.0, Math.floor(p.size() * at / p.length()));
          boolean reached = Double.isFinite(p.arrivalTime(cell));
          String place = figures.ruler(p.start() + at);
          if (reached) {
            double spare = p.freezeTime(cell) - p.arrivalTime(cell);
            page.line(
                "  "
                    + sentences.say(
                        "why.race.reached",
                        "place",
                        Page.pad(place, 10),
                        "arrives",
                        figures.seconds(p.arrivalTime(cell)),
                        "stops",
                        seconds(p.freezeTime(cell)),
                        "spare",
                        spare < MOMENT ? sentences.say("why.race.none") : seconds(spare)));
          } else {
            page.line("  " + sentences.say("why.race.never", "place", Page.pad(place, 10)));
          }
        }
      }
    }
  }

  private String seconds(double time) {
    return Double.isFinite(time) ? figures.seconds(time) : sentences.say("why.race.long");
  }

  private static List<Double> stations(Explained why, PassageRecord passage) {
    List<Double> all = new ArrayList<>();
    why.plan().pourCase().piece().limbs().stream()
        .filter(l -> l.name().equals(passage.name()))
        .forEach(l -> l.stations().stream().map(Station::at).forEach(all::add));
    if (all.isEmpty()) {
      all.add(passage.length());
    }
    return all;
  }

  private void push(Page page, Explained why) {
    Optional<Stop> stop = why.result().stops().stream().findFirst();
    if (stop.isEmpty()) {
      return;
    }
    PushBalance b = stop.get().balance();
    Scene scene = new Scene(why.poured(), sentences, figures);
    page.paragraph(
        sentences.say(
            "why.push",
            "head",
            figures.ruler(scene.asHeight(b.head())),
            "friction",
            figures.ruler(scene.asHeight(b.friction())),
            "gap",
            figures.ruler(scene.asHeight(b.capillary())),
            "air",
            figures.ruler(scene.asHeight(b.air()))));
    page.blank();
  }

  private void changes(Page page, Explained why, boolean all) {
    boolean already = why.changes().already();
    if (why.changes().answers().isEmpty()) {
      return;
    }
    page.line(
        already
            ? sentences.say("why.slips", "spare", figures.percent(why.changes().goal().spare()))
            : sentences.say("why.changes"));
    for (LeverAnswer a : shown(why, all)) {
      String text =
          switch (a.kind()) {
            case ENOUGH, MAY_SLIP ->
                sentences.say(
                    "why.change",
                    "move",
                    levers.move(a.lever(), a.at().orElseThrow().value()),
                    "values",
                    levers.fromTo(a.lever(), a.at().orElseThrow().value()),
                    "outcome",
                    glances.outcome(a.at().orElseThrow().glance()));
            case NOT_ENOUGH ->
                sentences.say(
                    "why.change",
                    "move",
                    levers.move(a.lever(), a.best().value()),
                    "values",
                    levers.fromTo(a.lever(), a.best().value()),
                    "outcome",
                    glances.outcome(a.best().glance()));
            case NO_HELP -> sentences.say("why.change.none", "lever", levers.name(a.lever()));
            case HOLDS, COMPARED ->
                sentences.say("why.change.holds", "lever", levers.name(a.lever()));
            case NO_ANSWER -> sentences.say("why.change.notThere", "lever", levers.name(a.lever()));
          };
      page.wrapped("  ", "    ", text);
      if (a.kind() == LeverAnswer.Kind.ENOUGH || a.kind() == LeverAnswer.Kind.NOT_ENOUGH) {
        double value = a.at().map(Trial::value).orElse(a.best().value());
        new Care(sentences).beside(page, "    ", why.plan().pourCase(), a.lever(), value);
      }
    }
  }

  private static List<LeverAnswer> shown(Explained why, boolean all) {
    List<LeverAnswer> answers = why.changes().answers();
    return all ? answers : answers.subList(0, Math.min(FEW, answers.size()));
  }

  /** How to say what was found, with places that lie on this piece. */
  private String found(Explained why, String file) {
    List<Limb> limbs = why.plan().pourCase().piece().limbs();
    Limb limb = limbs.get(0);
    String stopped = typed(STOPPED * limb.length());
    return limbs.size() > 1
        ? sentences.say(
            "why.next.found.limb", "file", file, "limb", limb.name(), "stopped", stopped)
        : sentences.say(
            "why.next.found", "file", file, "stopped", stopped, "lap", typed(LAP * limb.length()));
  }

  /** A place as it is typed after an option: 190mm. */
  private String typed(double metres) {
    double step = figures.lengthUnit().equals("mm") ? 5.0 : 0.5;
    return figures.trimmed(step * Math.rint(figures.length(metres) / step), 1)
        + figures.lengthUnit();
  }
}
