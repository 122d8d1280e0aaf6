package lastinch.ui.report;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.OptionalDouble;
import lastinch.solver.casting.Limb;
import lastinch.solver.casting.Station;
import lastinch.solver.material.Basis;
import lastinch.solver.result.EdgeStretch;
import lastinch.solver.result.GateRecord;
import lastinch.solver.result.HeatLossEntry;
import lastinch.solver.result.LapStretch;
import lastinch.solver.result.Meeting;
import lastinch.solver.result.PassageRecord;
import lastinch.solver.uncertainty.BandStudy;
import lastinch.solver.uncertainty.OneAtATimeEffect;
import lastinch.ui.words.Figures;
import lastinch.ui.words.PlainLetters;
import lastinch.ui.words.PouredPlan;
import lastinch.ui.words.Sentences;
import lastinch.ui.words.study.GlanceWords;

/**
 * Tables of a dry pour: place by place, gates, meetings, heat by place, what was taken as usual.
 */
final class ReportTables {
  private static final double KILO = 1e3;

  /** More to spare than so many lengths of the piece is only said to be more. */
  private final Html html;

  private final PouredPlan plan;
  private final Sentences sentences;
  private final Figures figures;
  private final GlanceWords glances;

  ReportTables(Html html, PouredPlan plan, Sentences sentences, Figures figures) {
    this.html = html;
    this.plan = plan;
    this.sentences = sentences;
    this.figures = figures;
    this.glances = new GlanceWords(sentences, figures);
  }

  private String say(String key, String... values) {
    return sentences.say(key, values);
  }

  void add() {
    for (Limb limb : plan.pourCase().piece().limbs()) {
      plan.result().passages().stream()
          .filter(p -> p.name().equals(limb.name()))
          .findFirst()
          .ifPresent(p -> places(limb, p));
    }
    gates();
    meetings();
    heat();
    plan.bands().ifPresent(this::bands);
    if (!plan.assumed().isEmpty()) {
      html.element("h3", say("report.assumed"));
      html.open("ul");
      plan.assumed().forEach(line -> html.element("li", line));
      plan.noted().forEach(line -> html.element("li", line));
      html.close("ul");
    }
  }

  private void places(Limb limb, PassageRecord p) {
    html.element("h3", say("report.places", "limb", PlainLetters.of(limb.name())));
    List<List<String>> rows = new ArrayList<>();
    double first = limb.stations().get(0).at();
    for (Station s : limb.stations()) {
      rows.add(place(p, s, s.at() - first));
    }
    html.table(
        "plain",
        List.of(
            say("report.place.at"),
            say("report.place.wide"),
            say("report.place.thick"),
            say("report.place.arrives"),
            say("report.place.heat"),
            say("report.place.freezes"),
            say("report.place.laps"),
            say("report.place.edge")),
        rows);
  }

  private List<String> place(PassageRecord p, Station s, double at) {
    int cell = 0;
    for (int i = 0; i < p.size(); i++) {
      cell = Math.abs(p.at(i) - at) < Math.abs(p.at(cell) - at) ? i : cell;
    }
    List<String> row = new ArrayList<>();
    row.add(figures.ruler(at));
    row.add(figures.calipers(s.width()));
    row.add(figures.calipers(s.thickness()));
    if (p.reached(cell)) {
      row.add(figures.seconds(p.arrivalTime(cell)));
      row.add(figures.heat(p.arrivalTemperature(cell)));
      row.add(figures.seconds(Math.max(p.freezeTime(cell), p.arrivalTime(cell))));
      double index = p.lapIndex(cell);
      row.add(
          say(
              index < LapStretch.CLEAN
                  ? "chart.laps.clean"
                  : index < LapStretch.PLAIN ? "report.faint" : "report.plain"));
    } else {
      row.add(say("report.none"));
      row.addAll(List.of("", "", ""));
    }
    row.add(edge(p.name(), at));
    return row;
  }

  private String edge(String limb, double at) {
    for (EdgeStretch e : plan.result().edges()) {
      if (e.passage().equals(limb) && at >= e.from() - 1e-9 && at <= e.to() + 1e-9) {
        return say("report.edge." + e.state().name());
      }
    }
    return "";
  }

  private void gates() {
    if (plan.result().gates().isEmpty()) {
      return;
    }
    html.element("h3", say("report.gates"));
    List<List<String>> rows = new ArrayList<>();
    for (GateRecord g : plan.result().gates()) {
      rows.add(
          List.of(
              PlainLetters.of(g.name()),
              seconds(g.first(), "gate.never"),
              figures.speed(g.peakSpeed()),
              seconds(g.froze(), "gate.open"),
              figures.percent(g.share())));
    }
    html.table(
        "plain",
        List.of(
            say("gate.head.name"),
            say("gate.head.first"),
            say("gate.head.speed"),
            say("gate.head.closes"),
            say("gate.head.share")),
        rows);
  }

  private String seconds(OptionalDouble time, String none) {
    return time.isPresent() ? figures.seconds(time.getAsDouble()) : say(none);
  }

  private void meetings() {
    if (plan.result().meetings().isEmpty()) {
      return;
    }
    html.element("h3", say("report.meetings"));
    List<List<String>> rows = new ArrayList<>();
    for (Meeting m : plan.result().meetings()) {
      rows.add(
          List.of(
              PlainLetters.of(m.passage()) + ", " + figures.ruler(m.at()),
              figures.seconds(m.time()),
              figures.heat(m.temperatureA()),
              figures.heat(m.temperatureB()),
              say("chart.meeting." + m.kind().name())));
    }
    html.table(
        "plain",
        List.of(
            say("report.place.at"),
            say("report.when"),
            say("report.one"),
            say("report.other"),
            say("report.outcome")),
        rows);
  }

  private void heat() {
    double all = 0.0;
    for (HeatLossEntry line : plan.result().ledger()) {
      all += line.lost();
    }
    if (!(all > 0.0)) {
      return;
    }
    html.element("h3", say("report.heat"));
    html.element("p", say("report.heat.why"), "class", "small");
    List<List<String>> rows = new ArrayList<>();
    for (HeatLossEntry line : plan.result().ledger()) {
      rows.add(
          List.of(
              PlainLetters.of(line.passage()),
              figures.rulerBare(line.from()) + " - " + figures.ruler(line.to()),
              figures.seconds(line.seconds()),
              figures.trimmed(line.lost() / KILO, 1),
              figures.trimmed(line.gained() / KILO, 1),
              figures.percent(line.lost() / all)));
    }
    html.table(
        "plain",
        List.of(
            say("report.part"),
            say("report.place.at"),
            say("report.heat.seconds"),
            say("report.heat.lost"),
            say("report.heat.gained"),
            say("report.heat.share")),
        rows);
  }

  /** What each figure that nobody knows exactly does by itself, the weightiest first. */
  private void bands(BandStudy study) {
    html.element("h3", say("report.bands"));
    html.element("p", say("report.bands.why"), "class", "small");
    List<List<String>> rows = new ArrayList<>();
    List<OneAtATimeEffect> ordered = new ArrayList<>(study.swings());
    ordered.sort(Comparator.comparingDouble(OneAtATimeEffect::share).reversed());
    for (OneAtATimeEffect s : ordered) {
      rows.add(
          List.of(
              say("unknown." + s.unknown().name()),
              s.band().source().basis() == Basis.TYPED
                  ? say("basis.TYPED")
                  : say("report.bands.usual"),
              glances.outcome(s.low()),
              glances.outcome(s.high()),
              figures.percent(s.share())));
    }
    html.table(
        "plain",
        List.of(
            say("report.figure"),
            say("material.head.from"),
            say("report.bands.low"),
            say("report.bands.high"),
            say("report.bands.share")),
        rows);
  }
}
