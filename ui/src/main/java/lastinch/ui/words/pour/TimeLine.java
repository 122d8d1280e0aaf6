package lastinch.ui.words.pour;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import lastinch.solver.casting.Metal;
import lastinch.solver.result.Finding;
import lastinch.solver.result.FlowLimit;
import lastinch.solver.result.GateRecord;
import lastinch.solver.result.Outcome;
import lastinch.solver.result.PassageRecord;
import lastinch.solver.result.Spot;
import lastinch.solver.result.Stop;
import lastinch.solver.result.StopReason;
import lastinch.solver.result.ToppedUp;
import lastinch.ui.words.Figures;
import lastinch.ui.words.Page;
import lastinch.ui.words.Reasons;
import lastinch.ui.words.Scene;

/** What happens, moment by moment. */
final class TimeLine {
  /** Metal this close to its start of freezing counts as there [K]. */
  private static final double NEAR_FREEZING = 5.0;

  /** Share of the splash limit above which a gate is quiet only just [-]. */
  private static final double ONLY_JUST = 0.9;

  /** The trade's limit for quiet gates [m/s]: Campbell, The Ten Rules of Castings (from memory). */
  private static final double QUIET = 0.5;

  private final Scene scene;
  private final List<Moment> moments = new ArrayList<>();

  private record Moment(double time, String text) {}

  private TimeLine(Scene scene) {
    this.scene = scene;
  }

  static void add(Page page, Scene scene) {
    TimeLine line = new TimeLine(scene);
    line.pour();
    line.gates();
    line.piece();
    line.cup();
    line.end();
    page.line(scene.say("happens.title"));
    line.moments.sort(Comparator.comparingDouble(Moment::time));
    for (Moment moment : line.moments) {
      String clock = scene.figures().seconds(moment.time());
      page.wrapped(
          " ".repeat(Math.max(1, 7 - clock.length())) + clock + "  ", " ".repeat(9), moment.text());
    }
    page.blank();
  }

  /** Where and how the metal ended, in a few words. */
  static String ending(Scene scene) {
    String time = scene.figures().seconds(scene.result().outcome().time());
    if (scene.result().outcome() instanceof Outcome.Filled) {
      return scene.say("ending.filled", "time", time);
    }
    if (scene.stop().isEmpty()) {
      return scene.say("ending.unfinished", "time", time);
    }
    Stop stop = scene.stop().get();
    return scene.say(
        "ending." + Reasons.key(stop.reason()),
        "place",
        scene.place(new Spot(stop.passage(), stop.at())),
        "time",
        scene.figures().seconds(stop.time()));
  }

  private void pour() {
    Figures figures = scene.figures();
    Metal metal = scene.pourCase().metal();
    double reading = metal.reading().value();
    double entered = scene.result().entered();
    double waiting = metal.waiting().value();
    String text;
    if (Math.abs(reading - entered) < 0.5) {
      text = scene.say("happens.pour.asread", "entered", figures.heat(entered));
    } else if (waiting < 0.5) {
      text =
          scene.say(
              "happens.pour.nowait",
              "reading",
              figures.heat(reading),
              "entered",
              figures.heat(entered));
    } else {
      text =
          scene.say(
              "happens.pour",
              "reading",
              figures.heat(reading),
              "waiting",
              figures.whole(waiting) + " s",
              "entered",
              figures.heat(entered));
    }
    moments.add(new Moment(0.0, text));
  }

  private void gates() {
    for (GateRecord gate : scene.result().gates()) {
      if (gate.first().isPresent()) {
        moments.add(
            new Moment(
                gate.first().getAsDouble(),
                scene.say(
                    "happens.gate",
                    "gate",
                    gate.name(),
                    "speed",
                    scene.figures().speed(gate.peakSpeed()),
                    "noise",
                    scene.say(noise(gate)))));
      }
      if (gate.froze().isPresent() && !stoppedIn(gate.name())) {
        moments.add(
            new Moment(
                gate.froze().getAsDouble(), scene.say("happens.gateCloses", "gate", gate.name())));
      }
    }
  }

  private boolean stoppedIn(String channel) {
    return scene.stop().filter(s -> s.passage().equals(channel)).isPresent();
  }

  private String noise(GateRecord gate) {
    boolean told =
        scene.result().findings().stream()
            .filter(f -> f.kind() == Finding.Kind.GATE_SPLASHES)
            .anyMatch(f -> f.where().filter(w -> w.passage().equals(gate.name())).isPresent());
    if (told || gate.peakSpeed() > QUIET) {
      boolean slow =
          scene.result().outcome() instanceof Outcome.Misrun
              && scene.result().flowLimitedBy() == FlowLimit.HAND;
      return slow ? "happens.gate.loud.small" : "happens.gate.loud";
    }
    return gate.peakSpeed() > ONLY_JUST * QUIET ? "happens.gate.onlyJust" : "happens.gate.quiet";
  }

  private void piece() {
    Optional<PassageRecord> piece = scene.first(PassageRecord.Role.PIECE).filter(p -> p.size() > 0);
    Optional<PassageRecord> boss = scene.first(PassageRecord.Role.BOSS).filter(b -> b.size() > 0);
    if (scene.fromTip()) {
      risen(piece.orElseThrow(), boss);
      return;
    }
    Optional<Moment> covered =
        boss.filter(b -> b.reached(b.size() - 1))
            .map(b -> new Moment(b.arrivalTime(b.size() - 1), scene.say("happens.boss")));
    if (piece.isPresent() && entry(piece.get()) > 0) {
      covered.ifPresent(moments::add);
      entered(piece.get());
    } else if (piece.isPresent() && piece.get().reached(0)) {
      String lead = covered.isPresent() ? covered.get().text() + " " : "";
      moments.add(
          new Moment(
              piece.get().arrivalTime(0),
              lead + heated("happens.piece", piece.get().arrivalTemperature(0))));
    } else {
      covered.ifPresent(moments::add);
    }
  }

  /** Cell that metal reaches first. */
  private static int entry(PassageRecord piece) {
    int first = 0;
    for (int i = 1; i < piece.size(); i++) {
      if (piece.reached(i)
          && (!piece.reached(first) || piece.arrivalTime(i) < piece.arrivalTime(first))) {
        first = i;
      }
    }
    return first;
  }

  /** Metal that comes in through the side. */
  private void entered(PassageRecord piece) {
    int cell = entry(piece);
    if (piece.reached(cell)) {
      double at = (cell + 0.5) * piece.length() / piece.size();
      moments.add(
          new Moment(
              piece.arrivalTime(cell),
              scene.say(
                  "happens.side",
                  "place",
                  scene.place(new Spot(piece.name(), at)),
                  "heat",
                  scene.figures().heat(piece.arrivalTemperature(cell)))));
    }
  }

  /** Metal that fell to the tip first and rises from there. */
  private void risen(PassageRecord piece, Optional<PassageRecord> boss) {
    int tip = piece.size() - 1;
    moments.add(
        new Moment(
            piece.arrivalTime(tip), heated("happens.fallen", piece.arrivalTemperature(tip))));
    if (piece.reached(0)) {
      moments.add(
          new Moment(
              piece.arrivalTime(0),
              scene.say(
                  boss.isPresent() ? "happens.risen.boss" : "happens.risen",
                  "heat",
                  scene.figures().heat(piece.arrivalTemperature(0)))));
    }
  }

  /** A sentence on metal of a temperature [K], held against where it starts to freeze. */
  private String heated(String key, double kelvin) {
    double above = kelvin - scene.pourCase().metal().alloy().liquidus();
    String heat = scene.figures().heat(kelvin);
    String alloy = scene.pourCase().metal().alloy().name();
    if (above > NEAR_FREEZING) {
      String degrees = scene.figures().degrees(above);
      return scene.say(
          key, "heat", scene.say("heat.above", "heat", heat, "above", degrees, "alloy", alloy));
    }
    return scene.say(
        key,
        "heat",
        above > -NEAR_FREEZING
            ? scene.say("heat.atFreezing", "heat", heat, "alloy", alloy)
            : scene.say("heat.mush", "heat", heat));
  }

  private void cup() {
    scene.plan().toppedUp().ifPresent(this::toppedUp);
    scene
        .finding(Finding.Kind.CUP_RUNS_EMPTY)
        .map(f -> f.as(Finding.CupRunsEmpty.class).time())
        .ifPresent(t -> moments.add(new Moment(t, scene.say("happens.cupEmpty"))));
  }

  private void toppedUp(ToppedUp stood) {
    if (stood.cupFullAt().isPresent()) {
      double full = stood.cupFullAt().getAsDouble();
      boolean before = full < scene.result().outcome().time();
      String left = scene.figures().mass(stood.left());
      String told =
          before ? scene.say("happens.cupFull.first") : scene.say("happens.cupFull", "left", left);
      moments.add(new Moment(full, told));
    }
    for (ToppedUp.Level level : stood.levels()) {
      String percent = scene.figures().percent(level.filled());
      moments.add(
          new Moment(
              stood.time(), scene.say("happens.level", "name", level.name(), "percent", percent)));
    }
  }

  private void end() {
    Outcome outcome = scene.result().outcome();
    if (outcome instanceof Outcome.Filled) {
      filled(outcome.time());
    } else if (outcome instanceof Outcome.Cancelled) {
      moments.add(new Moment(outcome.time(), scene.say("happens.cancelled")));
    } else if (outcome instanceof Outcome.BrokeDown) {
      moments.add(new Moment(outcome.time(), scene.say("happens.brokeDown")));
    }
    for (Stop stop : scene.result().stops()) {
      moments.add(new Moment(stop.time(), stopped(stop)));
    }
  }

  private void filled(double time) {
    if (scene.fromTip()) {
      moments.add(new Moment(time, scene.say("happens.allFull")));
      return;
    }
    scene
        .first(PassageRecord.Role.PIECE)
        .filter(p -> p.size() > 0 && p.reached(p.size() - 1))
        .ifPresent(
            p ->
                moments.add(
                    new Moment(
                        time,
                        scene.say(
                            "happens.tip",
                            "heat",
                            scene.figures().heat(p.arrivalTemperature(p.size() - 1))))));
  }

  private String stopped(Stop stop) {
    String place = scene.place(new Spot(stop.passage(), stop.at()));
    String key = "happens.stop." + Reasons.key(stop.reason());
    if (stop.reason() != StopReason.FROZE_UPSTREAM) {
      return scene.say(key, "place", place, "size", size(stop));
    }
    if (stop.closedAt().isEmpty()) {
      return scene.say(key + ".unplaced", "place", place, "size", size(stop));
    }
    String closed = scene.place(stop.closedAt().get());
    return scene.say(key, "closed", closed, "place", place, "size", size(stop));
  }

  private String size(Stop stop) {
    Optional<PassageRecord> channel =
        scene.channel(stop.passage()).filter(p -> p.role() == PassageRecord.Role.PIECE);
    if (channel.isEmpty() || channel.get().size() == 0) {
      return "";
    }
    PassageRecord p = channel.get();
    int nearest = 0;
    for (int cell = 1; cell < p.size(); cell++) {
      if (Math.abs(p.at(cell) - stop.at()) < Math.abs(p.at(nearest) - stop.at())) {
        nearest = cell;
      }
    }
    return scene.say(
        "happens.size",
        "thick",
        scene.figures().calipers(p.thickness(nearest)),
        "wide",
        scene.figures().ruler(p.width(nearest)));
  }
}
