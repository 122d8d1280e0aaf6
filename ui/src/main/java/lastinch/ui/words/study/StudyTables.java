package lastinch.ui.words.study;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import lastinch.solver.diagnosis.Diagnosis;
import lastinch.solver.diagnosis.Difference;
import lastinch.solver.diagnosis.HeatLossBudget;
import lastinch.solver.levers.Bound;
import lastinch.solver.levers.Lever;
import lastinch.solver.levers.ParameterUnit;
import lastinch.solver.search.GatePlacement;
import lastinch.solver.search.LeverAnswer;
import lastinch.solver.search.OperatingMap;
import lastinch.solver.search.PairAnswer;
import lastinch.solver.search.SmallestChange;
import lastinch.solver.study.RunSummary;
import lastinch.solver.study.Trial;
import lastinch.ui.words.Figures;
import lastinch.ui.words.Sentences;
import lastinch.ui.words.Table;
import lastinch.ui.words.pour.Explained;
import lastinch.ui.words.study.Compared.Poured;

/** Tables of studies, for their pages: more than fits on a screen of text. */
public final class StudyTables {
  private static final String NONE = "-";

  private final Sentences sentences;
  private final LeverWords levers;
  private final GlanceWords glances;
  private final Figures figures;

  public StudyTables(Sentences sentences, Figures figures) {
    this.sentences = Objects.requireNonNull(sentences, "sentences");
    this.figures = Objects.requireNonNull(figures, "figures");
    this.levers = new LeverWords(sentences, figures);
    this.glances = new GlanceWords(sentences, figures);
  }

  private String say(String key, String... values) {
    return sentences.say(key, values);
  }

  /** What differs, what came of it, what each part does in the place of the other. */
  public List<Table> of(Compared compared) {
    List<String> head = new ArrayList<>(List.of(""));
    compared.plans().forEach(p -> head.add(p.letter()));
    List<List<String>> inputs = new ArrayList<>();
    CompareText text = new CompareText(sentences, figures);
    for (Map.Entry<String, List<Optional<String>>> word : compared.differing().entrySet()) {
      List<String> row = new ArrayList<>(List.of(text.label(compared, word.getKey())));
      word.getValue().forEach(v -> row.add(v.orElse(NONE)));
      inputs.add(row);
    }
    CompareCells cells = new CompareCells(sentences, figures);
    List<List<String>> outcomes = new ArrayList<>();
    for (CompareCells.Row kind : CompareCells.Row.values()) {
      List<String> row = new ArrayList<>(List.of(say("compare.row." + kind.name())));
      compared.plans().forEach(p -> row.add(cells.cell(kind, p)));
      outcomes.add(row);
    }
    List<Table> all = new ArrayList<>();
    all.add(new Table(say("table.compare.inputs"), head, inputs));
    all.add(new Table(say("table.compare.outcomes"), head, outcomes));
    Poured first = compared.plans().get(0);
    for (int i = 0; i < compared.differences().size(); i++) {
      all.add(swaps(first, compared.plans().get(i + 1), compared.differences().get(i)));
    }
    return all;
  }

  private Table swaps(Poured a, Poured b, Difference d) {
    List<List<String>> rows = new ArrayList<>();
    for (Difference.Swap swap : d.swaps()) {
      rows.add(
          List.of(
              say("part." + swap.key()),
              glances.outcome(swap.taken()),
              glances.outcome(swap.givenBack())));
    }
    return new Table(
        say("table.compare.swaps", "a", a.letter(), "b", b.letter()),
        List.of(
            say("table.part"),
            say("table.compare.taken", "a", a.letter(), "b", b.letter()),
            say("table.compare.taken", "a", b.letter(), "b", a.letter())),
        rows);
  }

  /** Row by row of the map, where it fills; and the ends of both levers with their sources. */
  public List<Table> of(OperatingMap room) {
    List<List<String>> rows = new ArrayList<>();
    RoomText text = new RoomText(sentences, figures);
    for (int row = room.upValues().size() - 1; row >= 0; row--) {
      rows.add(
          List.of(
              levers.value(room.up(), room.upValues().get(row)),
              text.where(room, row, RunSummary::filled),
              text.where(room, row, g -> room.goal().isMetBy(g))));
    }
    return List.of(
        new Table(
            say("table.room.rows", "lever", levers.name(room.across())),
            List.of(
                levers.name(room.up()),
                say("table.room.fills"),
                say("table.room.spare", "spare", figures.percent(room.goal().spare()))),
            rows),
        ends(List.of(room.across(), room.up())));
  }

  /** Every lever with its answer, the pairs, and the ends of every lever with their sources. */
  public List<Table> of(SmallestChange least) {
    List<List<String>> rows = new ArrayList<>();
    for (LeverAnswer a : least.answers()) {
      rows.add(
          List.of(
              levers.name(a.lever()),
              levers.value(a.lever(), a.lever().now()),
              say("table.kind." + a.kind().name()),
              tried(a, a.chosen()),
              tried(a, a.justShort()),
              a.stopsAt().map(t -> levers.value(a.lever(), t.value())).orElse(NONE),
              a.kind() == LeverAnswer.Kind.NO_HELP ? NONE : tried(a, Optional.of(a.best())),
              levers.lookOuts(a.lookOuts())));
    }
    List<Table> all = new ArrayList<>();
    all.add(
        new Table(
            say("table.least"),
            List.of(
                say("table.lever"),
                say("table.now"),
                say("table.kind"),
                say(least.already() ? "slip.head.fills" : "table.least.enough"),
                say(least.already() ? "slip.head.short" : "least.head.short"),
                say("least.head.stops"),
                say("table.best"),
                say("table.lookOut")),
            rows));
    if (!least.pairs().isEmpty()) {
      all.add(pairs(least));
    }
    all.add(ends(least.answers().stream().map(LeverAnswer::lever).toList()));
    return all;
  }

  private String tried(LeverAnswer a, Optional<Trial> value) {
    return value
        .map(t -> levers.value(a.lever(), t.value()) + ": " + glances.brief(t.glance()))
        .orElse(NONE);
  }

  private Table pairs(SmallestChange least) {
    List<List<String>> rows = new ArrayList<>();
    for (PairAnswer p : least.pairs()) {
      rows.add(
          List.of(
              levers.move(p.first(), p.firstValue())
                  + " "
                  + levers.fromTo(p.first(), p.firstValue()),
              levers.move(p.second(), p.secondValue())
                  + " "
                  + levers.fromTo(p.second(), p.secondValue()),
              glances.brief(p.glance()),
              levers.lookOuts(p.lookOuts())));
    }
    return new Table(
        say("least.pairs"),
        List.of(
            say("table.first"), say("table.second"), say("least.head.fills"), say("table.lookOut")),
        rows);
  }

  /** How far levers go, why no further, and who says so. */
  private Table ends(List<Lever> all) {
    List<List<String>> rows = new ArrayList<>();
    for (Lever lever : all) {
      if (lever.unit() != ParameterUnit.CHOICE) {
        rows.add(end(lever, lever.practical().low()));
        rows.add(end(lever, lever.practical().high()));
      }
    }
    return new Table(
        say("table.ends"),
        List.of(say("table.lever"), say("table.end"), say("table.why"), say("material.head.from")),
        rows);
  }

  private List<String> end(Lever lever, Bound end) {
    return List.of(
        levers.name(lever),
        levers.value(lever, end.value()),
        levers.reason(end),
        (end.source().reference() + " " + end.source().note()).strip());
  }

  /** Every cause with what comes of it. */
  public List<Table> of(Diagnosis blame) {
    BlameText text = new BlameText(sentences, figures);
    List<List<String>> rows = new ArrayList<>();
    for (Diagnosis.Cause cause : blame.causes()) {
      rows.add(
          List.of(
              text.what(cause),
              text.seen(blame, cause.seen()),
              say(cause.explains() ? "table.causes.yes" : "table.causes.no")));
    }
    return List.of(
        new Table(
            say("table.causes"),
            List.of(say("table.causes.cause"), say("table.causes.seen"), say("table.causes.so")),
            rows));
  }

  /** Every layout with what comes of it. */
  public List<Table> of(GatePlacement gates) {
    GatesText text = new GatesText(sentences, figures);
    List<List<String>> rows = new ArrayList<>();
    for (GatePlacement.Answer a : gates.answers()) {
      rows.add(
          List.of(
              text.layout(a.layout()),
              glances.outcome(a.glance()),
              a.why() == GatePlacement.Loses.BEST ? NONE : text.why(a)));
    }
    return List.of(
        new Table(
            say("table.layouts"),
            List.of(
                say("table.layouts.layout"),
                say("table.layouts.outcome"),
                say("table.layouts.why")),
            rows));
  }

  /** Where the heat went, and what single changes would do. */
  public List<Table> of(Explained why) {
    WhyText text = new WhyText(sentences, figures);
    List<List<String>> rows = new ArrayList<>();
    for (HeatLossBudget.Line line : why.account().lines()) {
      rows.add(
          List.of(
              text.place(why, line),
              figures.degrees(line.degrees()),
              figures.percent(why.account().share(line))));
    }
    List<Table> all = new ArrayList<>();
    all.add(
        new Table(
            say("why.account"),
            List.of(say("report.part"), say("table.degrees"), say("report.heat.share")),
            rows));
    all.addAll(of(why.changes()));
    return all;
  }
}
