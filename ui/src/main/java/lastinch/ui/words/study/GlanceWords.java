package lastinch.ui.words.study;

import java.util.Objects;
import lastinch.solver.study.RunSummary;
import lastinch.ui.words.Figures;
import lastinch.ui.words.Sentences;

/** What came of a run, in few words. */
public final class GlanceWords {
  private final Sentences sentences;
  private final Figures figures;

  public GlanceWords(Sentences sentences, Figures figures) {
    this.sentences = Objects.requireNonNull(sentences, "sentences");
    this.figures = Objects.requireNonNull(figures, "figures");
  }

  /** Half a sentence: it fills with 20 % of the heat to spare. */
  public String outcome(RunSummary glance) {
    return switch (glance.end()) {
      case FILLED -> sentences.say("glance.fills", "heat", spare(glance.heat()));
      case APART -> sentences.say("glance.apart");
      case STOPPED ->
          figures.vanishes(glance.reach())
              ? sentences.say("glance.stops.before")
              : sentences.say("glance.stops", "missing", figures.ruler(glance.missing()));
      case BROKE_DOWN -> sentences.say("glance.brokeDown");
      case NOT_THERE -> sentences.say("glance.notThere");
    };
  }

  /** A share of the heat [-] to spare, in words where a bare nought would mislead. */
  public String spare(double share) {
    return share < 0.005 ? sentences.say("spare.least") : figures.percent(share);
  }

  /** The same for a run that has less than was asked for, though it rounds to that. */
  public String outcome(RunSummary glance, double asked) {
    return isUnder(glance, asked)
        ? sentences.say("glance.fills.under", "heat", figures.percent(asked))
        : outcome(glance);
  }

  private boolean isUnder(RunSummary glance, double asked) {
    return glance.filled()
        && glance.heat() < asked
        && figures.percent(glance.heat()).equals(figures.percent(asked));
  }

  /** In few words, for a run that has less than was asked for, though it rounds to that. */
  public String brief(RunSummary glance, double asked) {
    return isUnder(glance, asked)
        ? sentences.say("glance.brief.under", "heat", figures.percent(asked))
        : brief(glance);
  }

  /** For a table: heat to spare, or how much is missing. */
  public String brief(RunSummary glance) {
    return switch (glance.end()) {
      case FILLED -> spare(glance.heat());
      case APART -> sentences.say("glance.brief.apart");
      case STOPPED ->
          sentences.say("glance.brief.stops", "missing", figures.ruler(glance.missing()));
      case BROKE_DOWN, NOT_THERE -> sentences.say("glance.brief.none");
    };
  }
}
