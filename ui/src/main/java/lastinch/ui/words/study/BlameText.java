package lastinch.ui.words.study;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import lastinch.cases.plan.Plan;
import lastinch.cases.units.Dimension;
import lastinch.solver.diagnosis.BrokenOut;
import lastinch.solver.diagnosis.CandidateCause;
import lastinch.solver.diagnosis.Diagnosis;
import lastinch.solver.diagnosis.Observation;
import lastinch.ui.words.Care;
import lastinch.ui.words.Figures;
import lastinch.ui.words.Measuring;
import lastinch.ui.words.Page;
import lastinch.ui.words.PlainLetters;
import lastinch.ui.words.Sentences;

/** The printed answer to: what explains the casting I broke out? */
public final class BlameText {
  private static final int MOST = 5;

  /** Causes on a screen. */
  private static final int FEW = 3;

  /** A cause this many times beyond what is usual is called far off [-]. */
  private static final double FAR_OFF = 2.0;

  private final Sentences sentences;
  private final Figures figures;

  public BlameText(Sentences sentences, Figures figures) {
    this.sentences = Objects.requireNonNull(sentences, "sentences");
    this.figures = Objects.requireNonNull(figures, "figures");
  }

  /** The whole answer, line by line. */
  public List<String> full(Plan plan, Diagnosis blame) {
    return page(plan, blame, true);
  }

  /** As much of it as fits a screen. */
  public List<String> screen(Plan plan, Diagnosis blame) {
    return page(plan, blame, false);
  }

  private List<String> page(Plan plan, Diagnosis blame, boolean all) {
    Page page = new Page();
    List<Diagnosis.Cause> shown = shown(blame, all ? MOST : FEW);
    page.paragraph(verdict(blame));
    if (!blame.explained()) {
      page.paragraph(sentences.say(shown.isEmpty() ? "blame.none.nearer" : "blame.none.nearest"));
    }
    for (int i = 0; i < shown.size(); i++) {
      cause(page, i + 1, blame, shown.get(i));
    }
    more(page, blame, shown);
    if (!blame.asPlanned()) {
      tell(page, plan, blame);
    }
    page.blank();
    page.heading(sentences.say("blame.title", "title", plan.title()));
    Optional<String> limb = blame.found().limb();
    String what = found(blame.found());
    page.paragraph(
        limb.map(l -> sentences.say("blame.found.limb", "limb", l, "what", what))
            .orElseGet(() -> sentences.say("blame.found", "what", what)));
    page.paragraph(
        sentences.say(
            limb.isPresent() ? "blame.plan.limb" : "blame.plan",
            "seen",
            seen(blame, blame.planned())));
    if (!blame.asPlanned() && all) {
      unlikely(page, blame, shown);
    }
    page.blank();
    page.wrapped("", "", sentences.say("blame.single"));
    new Care(sentences).add(page, plan.pourCase());
    return PlainLetters.all(page.lines());
  }

  /** How many more explain it than are shown. */
  private void more(Page page, Diagnosis blame, List<Diagnosis.Cause> shown) {
    int left = blame.alike() - shown.size();
    if (blame.explained() && !blame.asPlanned() && left > 0) {
      page.line("     " + sentences.say("study.more", "count", Integer.toString(left)));
    }
  }

  /** One sentence. */
  public List<String> brief(Diagnosis blame) {
    Page page = new Page();
    page.paragraph(verdict(blame));
    shown(blame, 1).stream().forEach(c -> cause(page, 1, blame, c));
    return PlainLetters.all(page.lines());
  }

  /** What it comes to. */
  public String verdict(Diagnosis blame) {
    if (!blame.explained()) {
      return sentences.say("blame.none");
    }
    if (blame.asPlanned()) {
      return sentences.say("blame.asPlanned");
    }
    return blame.alike() == 1
        ? sentences.say("blame.one")
        : sentences.say("blame.alike", "count", Integer.toString(blame.alike()));
  }

  /**
   * Causes worth a line: all that explain it, at most five; when none does, the nearest, if it is
   * nearer than the plan itself.
   */
  private static List<Diagnosis.Cause> shown(Diagnosis blame, int most) {
    if (!blame.explained()) {
      return blame.isNearer() ? blame.causes().subList(0, 1) : List.of();
    }
    if (blame.asPlanned()) {
      return List.of();
    }
    return blame.causes().stream().filter(Diagnosis.Cause::explains).limit(most).toList();
  }

  private void cause(Page page, int number, Diagnosis blame, Diagnosis.Cause cause) {
    String text =
        sentences.say("blame.cause", "cause", what(cause), "seen", seen(blame, cause.seen()));
    boolean far = cause.suspect().parts(cause.value()) > FAR_OFF;
    page.wrapped(
        "  " + number + "  ", "     ", far ? text + " " + sentences.say("blame.farOff") : text);
  }

  /** What was other than planned, and by how much. */
  public String what(Diagnosis.Cause cause) {
    CandidateCause s = cause.suspect();
    boolean more = cause.value() >= s.now();
    String key = "suspect." + s.key() + (more ? ".more" : ".less");
    return switch (s.unit()) {
      case HEAT_PULL -> sentences.say(key, "value", value(s, cause.value()));
      case TIME, MASS_RATE, LENGTH, SHARE, MASS ->
          s.part().isEmpty()
              ? sentences.say(key, "value", value(s, cause.value()), "now", value(s, s.now()))
              : sentences.say(
                  key,
                  "part",
                  s.part(),
                  "value",
                  value(s, cause.value()),
                  "now",
                  value(s, s.now()));
      default -> sentences.say(key, "by", by(s, cause.value()));
    };
  }

  private String by(CandidateCause s, double value) {
    double off = Math.abs(value - s.now());
    return switch (s.unit()) {
      case HEAT -> figures.degrees(off);
      default -> figures.calipers(off);
    };
  }

  private String value(CandidateCause s, double value) {
    return switch (s.unit()) {
      case TIME -> figures.seconds(value);
      case MASS_RATE -> figures.shown(Dimension.MASS_RATE, value);
      case HEAT_PULL -> figures.trimmed(value / s.now(), 1);
      case SHARE -> figures.percent(value);
      case MASS -> figures.mass(value);
      default -> figures.calipers(value);
    };
  }

  private String found(Observation found) {
    List<String> all = new ArrayList<>();
    for (Observation.Kind kind : found.given()) {
      all.add(
          switch (kind) {
            case STOPPED -> place("found.STOPPED", found.stopped());
            case LAP -> place("found.LAP", found.lap());
            case LIP -> sentences.say("found.LIP." + found.lip().orElseThrow().name());
            case GATE_CLOSED ->
                sentences.say("found.GATE_CLOSED", "gate", found.gateClosed().orElseThrow());
            case ROUNDED_FROM -> place("found.ROUNDED_FROM", found.roundedFrom());
            case WEIGHED ->
                sentences.say("found.WEIGHED", "mass", figures.mass(found.weighed().orElseThrow()));
          });
    }
    return String.join(", ", all);
  }

  private String place(String key, OptionalDouble at) {
    return sentences.say(key, "at", figures.ruler(at.orElseThrow()));
  }

  /** What a run looks like, in the things that were asked about. */
  public String seen(Diagnosis blame, BrokenOut seen) {
    if (!seen.answered()) {
      return sentences.say("blame.noAnswer");
    }
    List<String> all = new ArrayList<>();
    for (Observation.Kind kind : blame.found().given()) {
      all.add(seen(kind, seen, blame.found()));
    }
    return String.join(", ", all);
  }

  private String seen(Observation.Kind kind, BrokenOut seen, Observation found) {
    return switch (kind) {
      case STOPPED ->
          seen.filled()
              ? sentences.say("found.whole")
              : place("found.STOPPED", OptionalDouble.of(seen.stopped()));
      case LAP ->
          seen.plainLaps().isPresent()
              ? place("found.LAP", seen.plainLaps())
              : sentences.say("found.noLap");
      case LIP ->
          seen.lips().isEmpty()
              ? sentences.say("found.noLip")
              : seen.lips().contains(found.lip().orElseThrow())
                  ? sentences.say("found.LIP." + found.lip().orElseThrow().name())
                  : seen.lips().stream()
                      .sorted()
                      .map(l -> sentences.say("found.LIP." + l.name()))
                      .collect(Collectors.joining(" and "));
      case GATE_CLOSED ->
          seen.closedGates().contains(found.gateClosed().orElseThrow())
              ? sentences.say("found.GATE_CLOSED", "gate", found.gateClosed().orElseThrow())
              : sentences.say("found.gateOpen", "gate", found.gateClosed().orElseThrow());
      case ROUNDED_FROM ->
          seen.roundedFrom().isPresent()
              ? place("found.ROUNDED_FROM", seen.roundedFrom())
              : sentences.say("found.fullEdge");
      case WEIGHED -> sentences.say("found.WEIGHED", "mass", figures.mass(seen.mass()));
    };
  }

  private void tell(Page page, Plan plan, Diagnosis blame) {
    if (blame.tell().isEmpty() || !blame.explained()) {
      return;
    }
    Diagnosis.Tell tell = blame.tell().get();
    page.wrapped("  ", "  ", sentences.say("blame.cannotTell", "count", numbers(blame)));
    if (tell.look().isPresent()) {
      Observation.Kind kind = tell.look().get();
      page.wrapped(
          "  ",
          "  ",
          sentences.say(
              "blame.look",
              "first",
              seen(kind, blame.causes().get(tell.first()).seen(), blame.found()),
              "second",
              seen(kind, blame.causes().get(tell.second()).seen(), blame.found())));
    }
    CandidateCause suspect = blame.causes().get(tell.measure()).suspect();
    page.wrapped("  ", "  ", sentences.say("blame.measure", "how", measure(plan, suspect)));
  }

  private String name(CandidateCause suspect) {
    String key = "suspect." + suspect.key();
    return suspect.part().isEmpty()
        ? sentences.say(key)
        : sentences.say(key, "part", suspect.part());
  }

  private String measure(Plan plan, CandidateCause suspect) {
    return suspect
        .unknown()
        .flatMap(u -> Measuring.how(sentences, u, plan.pourCase()))
        .orElseGet(() -> sentences.say("suspect." + suspect.key() + ".measure"));
  }

  private static String numbers(Diagnosis blame) {
    List<String> all = new ArrayList<>();
    for (int i = 1; i <= Math.min(MOST, blame.alike()); i++) {
      all.add(Integer.toString(i));
    }
    String last = all.remove(all.size() - 1);
    return all.isEmpty() ? last : String.join(", ", all) + " and " + last;
  }

  private void unlikely(Page page, Diagnosis blame, List<Diagnosis.Cause> shown) {
    Map<Observation.Kind, List<String>> rest = new EnumMap<>(Observation.Kind.class);
    for (Diagnosis.Cause cause : blame.causes()) {
      if (!shown.contains(cause) && !cause.explains()) {
        rest.computeIfAbsent(cause.worst().getKey(), k -> new ArrayList<>())
            .add(name(cause.suspect()));
      }
    }
    if (!rest.isEmpty()) {
      page.blank();
      page.line(sentences.say("blame.unlikely.title"));
      rest.forEach(
          (kind, names) ->
              page.wrapped(
                  "  ",
                  "    ",
                  sentences.say(
                      "blame.unlikely",
                      "causes",
                      String.join("; ", names),
                      "because",
                      sentences.say("blame.because." + kind.name()))));
    }
  }
}
