package lastinch.ui.words.study;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import lastinch.solver.result.EdgeStretch;
import lastinch.solver.result.Finding;
import lastinch.solver.result.GateRecord;
import lastinch.solver.result.LapStretch;
import lastinch.solver.result.Meeting;
import lastinch.solver.result.PassageRecord;
import lastinch.solver.study.RunSummary;
import lastinch.ui.words.Figures;
import lastinch.ui.words.Gaps;
import lastinch.ui.words.Reasons;
import lastinch.ui.words.Sentences;
import lastinch.ui.words.pour.VerdictSentence;
import lastinch.ui.words.study.Compared.Poured;

/** What came of a plan, row by row of a comparison. */
public final class CompareCells {
  /** A gate that brings less than this share of the metal loafs [-]; our own figure. */
  private static final double LOAFS = 0.10;

  private final Sentences sentences;
  private final Figures figures;
  private final GlanceWords glances;

  public CompareCells(Sentences sentences, Figures figures) {
    this.sentences = sentences;
    this.figures = figures;
    this.glances = new GlanceWords(sentences, figures);
  }

  /** Rows in the order printed. */
  public enum Row {
    RESULT,
    HEAT,
    TIP,
    COLDEST,
    EDGE,
    MEETS,
    LAPS,
    NOISE,
    LOAFS,
    HELD,
    MELTED
  }

  public String cell(Row row, Poured p) {
    RunSummary glance = p.glance();
    if (!glance.answered() && row != Row.RESULT && row != Row.MELTED) {
      return "-";
    }
    return switch (row) {
      case RESULT -> result(p, glance);
      case HEAT ->
          glance.end() != RunSummary.End.STOPPED
              ? glances.spare(glance.heat())
              : sentences.say("compare.heat.none", "missing", figures.ruler(glance.missing()));
      case TIP ->
          glance.end() != RunSummary.End.STOPPED
              ? figures.seconds(p.result().outcome().time())
              : sentences.say("compare.tip.never");
      case COLDEST -> coldest(p);
      case EDGE -> edge(p);
      case MEETS -> meets(p);
      case LAPS -> laps(p);
      case NOISE -> noise(p, glance);
      case LOAFS -> loafing(p).isEmpty() ? "-" : String.join(", ", loafing(p));
      case HELD -> sentences.say("compare.held." + Reasons.key(glance.limitedBy()));
      case MELTED -> figures.mass(p.plan().pourCase().metal().melted());
    };
  }

  private String result(Poured p, RunSummary glance) {
    if (!glance.answered()) {
      return sentences.say(
          glance.end() == RunSummary.End.BROKE_DOWN
              ? "compare.result.brokeDown"
              : "compare.result.notThere");
    }
    String key = "compare.result." + VerdictSentence.of(p.poured()).orElseThrow().key();
    if (glance.end() != RunSummary.End.STOPPED) {
      return sentences.say(key);
    }
    Gaps gaps = new Gaps(p.result(), sentences, figures);
    return gaps.anyHole()
        ? sentences.say(key + ".hole", "span", gaps.hole())
        : sentences.say(key, "reach", figures.ruler(p.result().reach()));
  }

  /** Coldest leading metal on arrival in the piece, and where. */
  private String coldest(Poured p) {
    double least = Double.POSITIVE_INFINITY;
    double at = 0.0;
    for (PassageRecord c : p.result().passages()) {
      for (int i = 0; c.role() == PassageRecord.Role.PIECE && i < c.size(); i++) {
        if (Double.isFinite(c.arrivalTime(i)) && c.arrivalTemperature(i) < least) {
          least = c.arrivalTemperature(i);
          at = c.start() + c.at(i);
        }
      }
    }
    return Double.isFinite(least)
        ? sentences.say("compare.coldest", "heat", figures.heat(least), "place", figures.ruler(at))
        : "-";
  }

  private String edge(Poured p) {
    List<EdgeStretch> rounded =
        p.result().edges().stream().filter(e -> e.state() == EdgeStretch.State.ROUNDED).toList();
    if (rounded.isEmpty()) {
      return sentences.say(p.result().edges().isEmpty() ? "compare.none" : "compare.edge.full");
    }
    return sentences.say(
        rounded.size() == 1 ? "edge.rounded" : "compare.edge.places",
        "from",
        figures.rulerBare(rounded.get(0).from()),
        "to",
        figures.ruler(rounded.get(rounded.size() - 1).to()));
  }

  private String meets(Poured p) {
    List<String> parts = new ArrayList<>();
    for (Meeting m : p.result().meetings()) {
      parts.add(
          sentences.say(
              "compare.meets." + Reasons.key(m.kind()),
              "place",
              figures.ruler(ruler(p, m)),
              "temperature",
              figures.heat(Math.min(m.temperatureA(), m.temperatureB()))));
    }
    return parts.isEmpty() ? "-" : String.join(", ", parts);
  }

  private static double ruler(Poured p, Meeting m) {
    return p.result().passages().stream()
        .filter(c -> c.name().equals(m.passage()))
        .mapToDouble(c -> c.start() + m.at())
        .findFirst()
        .orElse(m.at());
  }

  private String laps(Poured p) {
    OptionalDouble plain = OptionalDouble.empty();
    boolean faint = false;
    for (LapStretch lap : p.result().laps()) {
      faint = true;
      boolean inBoss =
          p.result().passages().stream()
              .anyMatch(c -> c.name().equals(lap.passage()) && c.role() == PassageRecord.Role.BOSS);
      if (lap.worstIndex() >= LapStretch.PLAIN && plain.isEmpty() && !inBoss) {
        plain = OptionalDouble.of(lap.from());
      }
    }
    if (plain.isPresent()) {
      return sentences.say("compare.laps.plain", "from", figures.ruler(plain.getAsDouble()));
    }
    return sentences.say(faint ? "compare.laps.faint" : "compare.none");
  }

  private String noise(Poured p, RunSummary glance) {
    if (p.result().gates().isEmpty()) {
      return glance.findings().contains(Finding.Kind.FALLS)
          ? sentences.say("compare.noise.falls")
          : "-";
    }
    boolean loud = glance.findings().contains(Finding.Kind.GATE_SPLASHES);
    return sentences.say(
        loud ? "compare.noise.loud" : "compare.noise.quiet",
        "speed",
        figures.speed(glance.gateSpeed()));
  }

  /** Gates that bring hardly any of the metal. */
  static List<String> loafing(Poured p) {
    List<String> names = new ArrayList<>();
    for (GateRecord gate : p.result().gates()) {
      if (p.result().gates().size() > 1 && gate.share() < LOAFS) {
        names.add(gate.name());
      }
    }
    return names;
  }
}
