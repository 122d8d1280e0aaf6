package lastinch.ui.words.study;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import lastinch.cases.plan.Plan;
import lastinch.solver.casting.Place;
import lastinch.solver.casting.gating.Gate;
import lastinch.solver.result.Finding;
import lastinch.solver.search.GateLayout;
import lastinch.solver.search.GatePlacement;
import lastinch.solver.study.LookOut;
import lastinch.ui.words.Care;
import lastinch.ui.words.Figures;
import lastinch.ui.words.Page;
import lastinch.ui.words.PlainLetters;
import lastinch.ui.words.Sentences;

/** The printed answer to: how many gates, where, how wide? */
public final class GatesText {
  /** Other layouts on a screen. */
  private static final int FEW = 3;

  private final Sentences sentences;
  private final Figures figures;
  private final GlanceWords glances;
  private final LeverWords levers;

  public GatesText(Sentences sentences, Figures figures) {
    this.sentences = Objects.requireNonNull(sentences, "sentences");
    this.figures = Objects.requireNonNull(figures, "figures");
    this.glances = new GlanceWords(sentences, figures);
    this.levers = new LeverWords(sentences, figures);
  }

  /** The whole answer, line by line. */
  public List<String> full(Plan plan, GatePlacement gates) {
    return page(plan, gates, true);
  }

  /** As much of it as fits a screen. */
  public List<String> screen(Plan plan, GatePlacement gates) {
    return page(plan, gates, false);
  }

  private List<String> page(Plan plan, GatePlacement gates, boolean all) {
    Page page = new Page();
    page.paragraph(verdict(gates));
    if (gates.solved() && !gates.goal().isMetBy(gates.best().glance())) {
      page.paragraph(sentences.say("gates.less", "spare", figures.percent(gates.goal().spare())));
    }
    gates
        .best()
        .layout()
        .starved(plan.pourCase())
        .ifPresent(
            s ->
                page.paragraph(
                    sentences.say(
                        "gates.starved",
                        "thick",
                        figures.calipers(s.thick()),
                        "thin",
                        figures.calipers(s.thin()))));
    page.paragraph(sentences.say("gates.plan", "outcome", glances.outcome(gates.plan())));
    if (gates.plan().findings().contains(Finding.Kind.GATE_SPLASHES)) {
      page.paragraph(
          sentences.say("gates.plan.splashes", "speed", figures.speed(gates.plan().gateSpeed())));
    }
    page.blank();
    page.heading(sentences.say("gates.title", "title", plan.title()));
    cuts(page, gates.best());
    page.blank();
    others(page, gates, all);
    page.blank();
    if (all) {
      page.paragraph(sentences.say("gates.note"));
    }
    page.entry(sentences.say("label.next"), sentences.say("gates.next"));
    new Care(sentences).add(page, plan.pourCase());
    return PlainLetters.all(page.lines());
  }

  /** One sentence. */
  public List<String> brief(GatePlacement gates) {
    Page page = new Page();
    page.paragraph(verdict(gates));
    return PlainLetters.all(page.lines());
  }

  /** What it comes to. */
  public String verdict(GatePlacement gates) {
    String key = gates.solved() ? "gates.best" : "gates.nearest";
    return sentences.say(
        key,
        "layout",
        layout(gates.best().layout()),
        "outcome",
        glances.outcome(gates.best().glance()));
  }

  /** A layout in half a sentence: 2 gates 20 mm wide, at the thick end and at 180 mm. */
  String layout(GateLayout layout) {
    String places = layout.places().stream().map(figures::ruler).collect(Collectors.joining(", "));
    String where =
        layout.places().isEmpty()
            ? sentences.say("gates.thickEnd")
            : layout.thickEnd()
                ? sentences.say("gates.thickEndAnd", "places", places)
                : sentences.say("gates.at", "places", places);
    return sentences.say(
        layout.number() == 1 ? "gates.layout.one" : "gates.layout",
        "number",
        Integer.toString(layout.number()),
        "wide",
        figures.ruler(layout.width()),
        "where",
        where);
  }

  private void cuts(Page page, GatePlacement.Answer best) {
    for (Gate gate : best.job().gating().gates()) {
      String where =
          gate.place() instanceof Place.At at && at.distance() > 0.0
              ? sentences.say("gates.cut.at", "at", figures.ruler(at.distance()))
              : sentences.say("gates.cut.thickEnd");
      page.wrapped(
          "  ",
          "    ",
          sentences.say(
              "gates.cut",
              "where",
              where,
              "wide",
              figures.ruler(gate.width()),
              "thick",
              figures.calipers(gate.thickness()),
              "long",
              figures.ruler(gate.length())));
    }
    page.wrapped(
        "  ",
        "    ",
        sentences.say("gates.melt", "mass", figures.mass(best.job().metal().melted())));
    double edge = best.job().gating().gates().stream().mapToDouble(Gate::width).sum();
    page.wrapped("  ", "    ", sentences.say("gates.saw", "edge", figures.ruler(edge)));
    page.wrapped(
        "  ",
        "    ",
        sentences.say("gates.speed", "speed", figures.speed(best.glance().gateSpeed())));
    List<LookOut> looks = LookOut.of(best.glance());
    if (!looks.isEmpty()) {
      page.wrapped("  ", "    ", sentences.say("least.lookOut", "what", levers.lookOuts(looks)));
    }
  }

  private void others(Page page, GatePlacement gates, boolean all) {
    List<GatePlacement.Answer> shown = shown(gates);
    if (shown.size() < 2) {
      return;
    }
    page.line(sentences.say("gates.others"));
    shown.stream()
        .skip(1)
        .limit(all ? shown.size() : FEW)
        .forEach(a -> page.wrapped("  ", "    ", other(a)));
  }

  /** The best layout, and the best other one of each number of gates. */
  public static List<GatePlacement.Answer> shown(GatePlacement gates) {
    List<GatePlacement.Answer> shown = new ArrayList<>();
    Set<Integer> numbers = new TreeSet<>();
    for (GatePlacement.Answer a : gates.answers()) {
      if (shown.isEmpty() || numbers.add(a.layout().number())) {
        shown.add(a);
      }
    }
    return shown;
  }

  /** A layout and what comes of it. */
  public String cut(GatePlacement.Answer a) {
    return sentences.say(
        "gates.other", "layout", layout(a.layout()), "why", glances.outcome(a.glance()));
  }

  /** A layout and why it loses. */
  public String other(GatePlacement.Answer a) {
    return sentences.say("gates.other", "layout", layout(a.layout()), "why", why(a));
  }

  /** Why a layout loses. */
  String why(GatePlacement.Answer a) {
    String key = "gates.why." + a.why().name();
    return switch (a.why()) {
      case STOPS_SHORT, LESS_HEAT, MORE_GATES ->
          sentences.say(key, "outcome", glances.outcome(a.glance()));
      case SPLASHES -> sentences.say(key, "speed", figures.speed(a.glance().gateSpeed()));
      case BEST, MEETS_COLD, NO_ANSWER -> sentences.say(key);
    };
  }
}
