package lastinch.ui.chart.paper;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import lastinch.solver.result.EdgeStretch;
import lastinch.solver.result.FillHistory;
import lastinch.solver.result.GateRecord;
import lastinch.solver.result.LapStretch;
import lastinch.solver.result.Meeting;
import lastinch.solver.result.Outcome;
import lastinch.solver.result.PassageRecord;
import lastinch.solver.result.PourResult;
import lastinch.solver.result.Spot;
import lastinch.solver.result.Stop;
import lastinch.solver.result.StopReason;
import lastinch.ui.chart.pour.Bodies;
import lastinch.ui.chart.pour.Race;
import lastinch.ui.words.Figures;
import lastinch.ui.words.PlainLetters;
import lastinch.ui.words.PouredPlan;
import lastinch.ui.words.Reasons;
import lastinch.ui.words.Sentences;
import lastinch.ui.words.pour.PourText;

/** What each picture says of a poured plan: one sentence, true of what is drawn in it. */
public final class Messages {
  private static final double PERCENT = 100.0;

  /** A gate that passes less than this share of the pour lets the sprue fill up [-]. */
  private static final double KEEPS_UP = 0.9;

  private final PouredPlan plan;
  private final PourResult result;
  private final Sentences sentences;
  private final Figures figures;
  private final PourText text;

  public Messages(PouredPlan plan, Sentences sentences, Figures figures) {
    this.plan = plan;
    this.result = plan.result();
    this.sentences = sentences;
    this.figures = figures;
    this.text = new PourText(sentences, figures);
  }

  private String say(String key, String... namesAndValues) {
    return PlainLetters.of(sentences.say("chart.says." + key, namesAndValues));
  }

  private String place(String passage, double at) {
    return text.place(plan, new Spot(passage, at));
  }

  /** Place in a chart along a limb, on the limb's own ruler. */
  private String place(PassageRecord limb, double onRuler) {
    return place(limb.name(), onRuler - limb.start());
  }

  private Optional<Meeting> apart() {
    return result.meetings().stream().filter(m -> m.kind() == Meeting.Kind.COLD_SHUT).findFirst();
  }

  private Optional<Stop> stop() {
    return result.stops().stream().findFirst();
  }

  private boolean filled() {
    return result.outcome() instanceof Outcome.Filled;
  }

  private String unfinished() {
    return say("unfinished", "time", figures.seconds(result.outcome().time()));
  }

  /** Of the casting as it comes out. */
  public String brokenOut(Bodies bodies) {
    if (bodies.list().isEmpty()) {
      return say("nothing");
    }
    String parts = figures.whole(bodies.pieces());
    Optional<Meeting> apart = apart();
    if (apart.isPresent()) {
      String at = place(apart.get().passage(), apart.get().at());
      return bodies.pieces() > 1
          ? say("broken.apart", "count", parts, "place", at)
          : say("broken.shut", "place", at);
    }
    if (bodies.pieces() > 1) {
      return say("broken.parts", "count", parts);
    }
    if (filled()) {
      return whole();
    }
    if (stop().isEmpty()) {
      return unfinished();
    }
    Stop stop = stop().get();
    boolean tip = result.stops().size() == 1 && !severalLimbs() && !text.fillsFromTip(plan);
    return tip && !figures.vanishes(stop.missing())
        ? say("broken.short", "missing", figures.ruler(stop.missing()))
        : say("broken.stops", "place", place(stop.passage(), stop.at()));
  }

  /** Of the casting as it comes out of a pour over the plane. */
  public String brokenOutOfThePlane() {
    Optional<Meeting> apart = apart();
    if (apart.isPresent()) {
      return say("broken.shut", "place", place(apart.get().passage(), apart.get().at()));
    }
    if (filled()) {
      return whole();
    }
    return stop()
        .map(s -> say("broken.stops", "place", place(s.passage(), s.at())))
        .orElseGet(this::unfinished);
  }

  private boolean severalLimbs() {
    return plan.pourCase().piece().limbs().size() > 1;
  }

  private String whole() {
    List<EdgeStretch> rounded =
        result.edges().stream().filter(e -> e.state() == EdgeStretch.State.ROUNDED).toList();
    if (rounded.isEmpty()) {
      return say(result.edges().isEmpty() ? "broken.whole" : "broken.whole.edges");
    }
    if (severalLimbs()) {
      return say("broken.rounded.places");
    }
    double from = rounded.stream().mapToDouble(EdgeStretch::from).min().orElseThrow();
    double to = rounded.stream().mapToDouble(EdgeStretch::to).max().orElseThrow();
    return say("broken.rounded", "from", figures.rulerBare(from), "to", figures.ruler(to));
  }

  /** Of metal and freezing along a limb. */
  public String race(Race race, Optional<PassageRecord> limb) {
    if (race.size() == 0 || limb.isEmpty()) {
      return say("nothing");
    }
    String name = limb.get().name();
    Optional<Meeting> apart = apart().filter(m -> m.passage().equals(name));
    if (apart.isPresent()) {
      return say("race.apart", "place", place(name, apart.get().at()));
    }
    Optional<Stop> stop = result.stops().stream().filter(s -> s.passage().equals(name)).findFirst();
    if (stop.isPresent()) {
      String at = place(name, stop.get().at());
      return say("race." + Reasons.key(stop.get().reason()), "place", at);
    }
    if (!filled()) {
      return stop().map(s -> say("stops", "ending", text.ending(plan))).orElse(unfinished());
    }
    int closest = 0;
    for (int i = 1; i < race.size(); i++) {
      closest = race.spare(i) < race.spare(closest) ? i : closest;
    }
    return say(
        "race.won",
        "place",
        place(limb.get(), race.at(closest)),
        "spare",
        figures.seconds(race.spare(closest)));
  }

  /** Of one front on its way. */
  public String front() {
    double first = Double.POSITIVE_INFINITY;
    double last = 0.0;
    for (PassageRecord p : result.passages()) {
      for (int i = 0; p.role() == PassageRecord.Role.PIECE && i < p.size(); i++) {
        if (p.reached(i)) {
          first = Math.min(first, p.arrivalTime(i));
          last = Math.max(last, p.arrivalTime(i));
        }
      }
    }
    if (!(first < Double.POSITIVE_INFINITY)) {
      return say("nothing");
    }
    double end = filled() ? last : result.outcome().time();
    String lead = figures.seconds(first);
    String rest = figures.seconds(end - first);
    return filled()
        ? say("front.full", "lead", lead, "rest", rest)
        : say("front.stops", "lead", lead, "rest", rest);
  }

  /** Of several fronts. */
  public String fronts() {
    Optional<Meeting> worst = result.meetings().stream().max(Comparator.comparing(Meeting::kind));
    return worst
        .map(
            m ->
                say(
                    "fronts.meet",
                    "place",
                    place(m.passage(), m.at()),
                    "time",
                    figures.seconds(m.time()),
                    "kind",
                    sentences.say("chart.meeting.says." + m.kind().name())))
        .orElseGet(this::front);
  }

  /** Of how hot the metal of a limb is at a moment. */
  public String heat(PassageRecord limb, FillHistory course, int moment) {
    int most = -1;
    for (int i = 0; i < limb.size(); i++) {
      boolean wet = course.fill(limb.name(), moment, i) > 0.0;
      if (wet && (most < 0 || solid(limb, course, moment, i) > solid(limb, course, moment, most))) {
        most = i;
      }
    }
    double solid = most < 0 ? 0.0 : solid(limb, course, moment, most);
    double stop = plan.pourCase().metal().alloy().flowStop().value();
    if (Math.rint(PERCENT * solid) < 1.0) {
      return say("heat.liquid", "time", figures.seconds(course.time(moment)));
    }
    return say(
        solid < stop ? "heat.flows" : "heat.set",
        "place",
        place(limb.name(), limb.at(most)),
        "share",
        figures.percent(solid),
        "stop",
        figures.percent(stop));
  }

  private static double solid(PassageRecord limb, FillHistory course, int moment, int cell) {
    return course.solid(limb.name(), moment, cell);
  }

  /** Of the lap lines of a limb. */
  public String laps(PassageRecord limb) {
    for (double least : new double[] {LapStretch.PLAIN, LapStretch.CLEAN}) {
      int first = -1;
      int last = -1;
      for (int i = 0; i < limb.size(); i++) {
        if (limb.reached(i) && limb.lapIndex(i) >= least) {
          first = first < 0 ? i : first;
          last = i;
        }
      }
      if (first >= 0) {
        return say(
            least == LapStretch.PLAIN ? "laps.plain" : "laps.faint",
            "from",
            figures.rulerBare(limb.start() + limb.at(first)),
            "to",
            figures.ruler(limb.start() + limb.at(last)));
      }
    }
    return say("laps.none");
  }

  /** Of what the gates pass. */
  public String gates(double pour) {
    Optional<GateRecord> frozen =
        result.gates().stream()
            .filter(r -> r.froze().isPresent())
            .min(Comparator.comparingDouble(r -> r.froze().getAsDouble()));
    if (frozen.isPresent()) {
      return say(
          "gates.froze",
          "gate",
          frozen.get().name(),
          "time",
          figures.seconds(frozen.get().froze().getAsDouble()));
    }
    GateRecord most =
        result.gates().stream().max(Comparator.comparingDouble(GateRecord::share)).orElseThrow();
    if (result.gates().size() > 1) {
      return say("gates.most", "gate", most.name(), "share", figures.percent(most.share()));
    }
    FillHistory course = result.course();
    int last = course.samples() - 1;
    double open = course.sampleTime(last) - most.first().orElse(0.0);
    boolean keepsUp = open <= 0.0 || course.passed(0, last) / open >= KEEPS_UP * pour;
    return say(keepsUp ? "gates.one" : "gates.one.less", "gate", most.name());
  }

  /** Of the mould at the end. */
  public String mould() {
    if (apart().isPresent()) {
      return say("race.apart", "place", place(apart().get().passage(), apart().get().at()));
    }
    if (filled()) {
      return say("mould.full", "time", figures.seconds(result.outcome().time()));
    }
    if (stop().isEmpty()) {
      return unfinished();
    }
    Stop stop = stop().get();
    boolean behind = stop.reason() == StopReason.FROZE_UPSTREAM && stop.closedAt().isPresent();
    Spot spot = behind ? stop.closedAt().get() : new Spot(stop.passage(), stop.at());
    return say("mould." + Reasons.key(stop.reason()), "place", text.place(plan, spot));
  }
}
