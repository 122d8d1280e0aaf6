package lastinch.ui.words.study;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import lastinch.cases.plan.Plan;
import lastinch.solver.uncertainty.FillProbability;
import lastinch.solver.uncertainty.Influence;
import lastinch.ui.words.Care;
import lastinch.ui.words.Figures;
import lastinch.ui.words.MeasureWords;
import lastinch.ui.words.Measuring;
import lastinch.ui.words.Page;
import lastinch.ui.words.PlainLetters;
import lastinch.ui.words.Sentences;

/** The printed answer to: how sure is this plan? */
public final class SureText {
  private static final int TEN = 10;
  private static final int SHARE = 24;
  private static final int PLACE = 26;
  private static final int BAR = 20;
  private static final double HUNDRED = 100.0;

  /** Least share of the spread worth a line [-], and most lines. */
  private static final double LEAST = 0.02;

  private static final int MOST = 8;

  /** Lines of that on a screen. */
  private static final int FEW = 3;

  /** A chance that asks for no more [-]. */
  private static final double SURE = 0.9;

  private final Sentences sentences;
  private final Figures figures;
  private final GlanceWords glances;

  public SureText(Sentences sentences, Figures figures) {
    this.sentences = Objects.requireNonNull(sentences, "sentences");
    this.figures = Objects.requireNonNull(figures, "figures");
    this.glances = new GlanceWords(sentences, figures);
  }

  /** The whole answer, line by line. */
  public List<String> full(Plan plan, String file, FillProbability sure) {
    return page(plan, file, sure, true);
  }

  /** As much of it as fits a screen. */
  public List<String> screen(Plan plan, String file, FillProbability sure) {
    return page(plan, file, sure, false);
  }

  private List<String> page(Plan plan, String file, FillProbability sure, boolean all) {
    Page page = new Page();
    page.paragraph(headline(sure));
    counted(page, sure, all);
    page.blank();
    page.heading(sentences.say("chance.title", "title", plan.title()));
    page.line(dots(sure));
    stops(page, plan, sure);
    matters(page, plan, sure, all);
    page.blank();
    page.entry(
        sentences.say("label.next"),
        sentences.say(
            sure.chance().low() >= SURE ? "chance.next.sure" : "chance.next", "file", file));
    new Care(sentences).add(page, plan.pourCase());
    return PlainLetters.all(page.lines());
  }

  /** One sentence. */
  public List<String> brief(FillProbability sure) {
    Page page = new Page();
    page.paragraph(headline(sure));
    return PlainLetters.all(page.lines());
  }

  /** The chance in capitals and words. */
  public String headline(FillProbability sure) {
    if (!isKnown(sure)) {
      return sentences.say("chance.unknown");
    }
    double share = sure.chance().share();
    int tenths = tenths(sure);
    String key =
        sure.influences().isEmpty()
            ? "chance.exact"
            : share == 0.0
                ? sure.apart() > 0 ? "chance.never.apart" : "chance.never"
                : share == 1.0 ? "chance.always" : mixed(tenths);
    return key.equals("chance.some")
        ? sentences.say(key, "tenths", Integer.toString(tenths))
        : key.equals("chance.exact")
            ? sentences.say(key, "outcome", glances.outcome(sure.plan()))
            : sentences.say(key);
  }

  private static String mixed(int tenths) {
    return switch (tenths) {
      case 0 -> "chance.rarely";
      case 1 -> "chance.one";
      case TEN -> "chance.nearly";
      default -> "chance.some";
    };
  }

  /** Whether any day gave an answer. */
  public static boolean isKnown(FillProbability sure) {
    return sure.days() > sure.silent();
  }

  /** Dots of ten that fill. */
  public static int tenths(FillProbability sure) {
    return (int) Math.round(TEN * sure.chance().share());
  }

  private String dots(FillProbability sure) {
    StringBuilder dots = new StringBuilder("  ");
    for (int i = 0; i < TEN; i++) {
      dots.append(isKnown(sure) ? (i < tenths(sure) ? "# " : ". ") : "? ");
    }
    return dots + "   " + sentences.say("chance.key");
  }

  private void counted(Page page, FillProbability sure, boolean all) {
    if (sure.influences().isEmpty()) {
      page.paragraph(sentences.say("chance.nothingOpen"));
      return;
    }
    page.paragraph(
        sentences.say(
                "chance.counted",
                "days",
                Integer.toString(sure.days()),
                "fills",
                Integer.toString(sure.fills()),
                "low",
                hundred(Math.floor(HUNDRED * sure.chance().low())),
                "high",
                hundred(Math.ceil(HUNDRED * sure.chance().high())))
            + (sure.apart() > 0
                ? " " + sentences.say("chance.apart", "count", Integer.toString(sure.apart()))
                : "")
            + (sure.silent() > 0
                ? " " + sentences.say("chance.silent", "count", Integer.toString(sure.silent()))
                : ""));
    page.paragraph(sentences.say("chance.plan", "outcome", glances.outcome(sure.plan())));
    if (all) {
      page.paragraph(sentences.say("chance.limits"));
    }
  }

  private String hundred(double share) {
    return figures.whole(share);
  }

  /** Where it stops, by stretches of the piece. */
  private void stops(Page page, Plan plan, FillProbability sure) {
    if (sure.stopped().isEmpty() || sure.influences().isEmpty()) {
      return;
    }
    page.blank();
    StopPlaces places = StopPlaces.of(plan.pourCase(), sure, StopPlaces.FEW);
    page.line(sentences.say(places.fromThickEnd() ? "chance.stops" : "chance.missing"));
    for (StopPlaces.Stretch stretch : places.stretches()) {
      String where =
          stretch.before()
              ? sentences.say("chance.stops.before")
              : sentences.say(
                  "chance.stops.stretch",
                  "from",
                  figures.rulerBare(stretch.from()),
                  "to",
                  figures.ruler(stretch.to()));
      double share = (double) stretch.days() / Math.max(1, sure.days() - sure.silent());
      page.line(
          "  "
              + Page.pad(where, PLACE)
              + Page.pad("#".repeat((int) Math.round(BAR * share)), BAR + 1)
              + ofHundred(stretch.days(), share));
    }
  }

  private String ofHundred(int days, double share) {
    if (days == 0) {
      return sentences.say("chance.noDay");
    }
    return HUNDRED * share < 0.5
        ? sentences.say("chance.underOne")
        : sentences.say("chance.ofHundred", "count", hundred(HUNDRED * share));
  }

  private void matters(Page page, Plan plan, FillProbability sure, boolean all) {
    List<Influence> worth = worth(sure);
    if (worth.isEmpty()) {
      return;
    }
    page.blank();
    boolean thorough = !sure.inAll().isEmpty();
    page.line(sentences.say("chance.matters"));
    for (Influence i : worth.subList(0, Math.min(all ? MOST : FEW, worth.size()))) {
      String share =
          sentences.say(
              "chance.share",
              "share",
              padded(HUNDRED * i.alone()),
              "low",
              hundred(HUNDRED * i.low()),
              "high",
              hundred(HUNDRED * i.high()));
      page.wrapped(
          "  " + Page.pad(share, SHARE),
          " ".repeat(SHARE + 2),
          sentences.say("unknown." + i.unknown().name()));
      if (thorough) {
        page.wrapped(
            " ".repeat(SHARE + 2),
            " ".repeat(SHARE + 2),
            sentences.say(
                "chance.inAll",
                "share",
                hundred(
                    Math.min(HUNDRED, HUNDRED * sure.inAll().get(sure.influences().indexOf(i))))));
      }
    }
    if (all) {
      page.wrapped("  ", "  ", sentences.say("chance.matters.note"));
    }
    sure.measure()
        .ifPresent(
            m ->
                page.entry(
                    sentences.say("label.measure"),
                    sentences.say(
                        "chance.measure",
                        "what",
                        sentences.say("unknown." + m.name()),
                        "how",
                        Measuring.how(sentences, m, plan.pourCase()).orElseThrow()
                            + MeasureWords.why(sentences, m, worth.get(0).unknown()))));
  }

  private String padded(double share) {
    String text = hundred(share);
    return " ".repeat(Math.max(0, 2 - text.length())) + text;
  }

  /** Figures whose share is worth a line, largest first. */
  public static List<Influence> worth(FillProbability sure) {
    List<Influence> worth = new ArrayList<>();
    for (Influence i : sure.influences()) {
      int at = sure.influences().indexOf(i);
      boolean interplay = !sure.inAll().isEmpty() && sure.inAll().get(at) >= 2 * LEAST;
      if (worth.size() < MOST && (i.alone() >= LEAST || interplay)) {
        worth.add(i);
      }
    }
    return worth;
  }
}
