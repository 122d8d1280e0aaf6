package lastinch.solver.network.record;

import java.util.List;
import java.util.Optional;
import lastinch.solver.casting.Place;
import lastinch.solver.casting.Pour;
import lastinch.solver.casting.PourCase;
import lastinch.solver.casting.gating.Gate;
import lastinch.solver.material.Alloy;
import lastinch.solver.network.NetworkRun;
import lastinch.solver.network.flow.Channel;
import lastinch.solver.network.layout.ChannelGraph;
import lastinch.solver.physics.SplashLimit;
import lastinch.solver.result.Finding;
import lastinch.solver.result.Finding.Kind;
import lastinch.solver.result.Finding.Severity;
import lastinch.solver.result.FindingList;
import lastinch.solver.result.PassageRecord.Role;
import lastinch.solver.result.Spot;

/** What a caster should hear besides the verdict, heaviest first. */
public final class NetworkFindings {
  /** Widths of a side gate above which a piece lets its jet shoot across [-]; common practice. */
  private static final double JET = 3.0;

  /** Share of its length above which a piece fills across as much as along [-]; our own figure. */
  private static final double BROAD = 0.5;

  /** Share by which a typed time to fill and that of the rate may differ untold [-]; chosen. */
  private static final double TIMES_APART = 0.2;

  private final NetworkRun run;
  private final boolean filled;
  private final FindingList found = new FindingList();

  public NetworkFindings(NetworkRun run, boolean filled) {
    this.run = run;
    this.filled = filled;
  }

  public List<Finding> list() {
    metal();
    sprue();
    gates();
    fronts();
    jets();
    falls();
    puddles();
    air();
    mould();
    doubts();
    return found.heaviestFirst();
  }

  private void metal() {
    PourCase job = run.job;
    double melted = job.metal().melted();
    double needed = run.massToRim - job.gating().cup().volume() * run.melt.density;
    if (melted < needed && !run.isFedDirectly()) {
      found.add(
          Kind.TOO_LITTLE_METAL,
          Severity.SERIOUS,
          Optional.empty(),
          "needed",
          needed,
          "melted",
          melted);
    }
    if (job.pour() instanceof Pour.Both both) {
      double typed = both.empties().value();
      double implied = melted / both.rate(melted, run.massToRim);
      if (Math.abs(implied - typed) > TIMES_APART * typed) {
        found.add(
            Kind.POUR_TIMES_DISAGREE,
            Severity.WATCH,
            Optional.empty(),
            "typed",
            typed,
            "implied",
            implied);
      }
    }
    if (run.state.cup.spilled() > 1e-3 * melted) {
      found.add(
          Kind.CUP_OVERFLOWS, Severity.WATCH, Optional.empty(), "mass", run.state.cup.spilled());
    }
    if (run.state.cup.crucibleEmpty() && run.state.cup.level() <= 0.0 && !filled) {
      found.add(Kind.CUP_RUNS_EMPTY, Severity.SERIOUS, Optional.empty(), "time", run.state.time);
    }
  }

  private void sprue() {
    if (!run.isFedDirectly() && !run.state.wet[ChannelGraph.CUP]) {
      found.add(
          Kind.SPRUE_NEVER_FULL,
          Severity.NOTE,
          Optional.empty(),
          "standing",
          run.flowWatch.mostStanding(),
          "couldPass",
          run.flowWatch.couldPass());
    }
  }

  private double splashSpeed() {
    Alloy alloy = run.job.metal().alloy();
    return SplashLimit.speed(Math.max(1e-6, alloy.surfaceTension().value()), run.melt.density);
  }

  private void gates() {
    double limit = SplashLimit.TRADE;
    for (Channel c : run.state.channels) {
      double speed = run.recorder.peakSpeed[c.index];
      if (c.shape.role == Role.GATE && speed > limit) {
        found.add(
            Kind.GATE_SPLASHES,
            speed > 2.0 * limit ? Severity.SERIOUS : Severity.WATCH,
            Optional.of(new Spot(c.shape.limb, 0.0)),
            "speed",
            speed,
            "limit",
            limit);
      }
    }
  }

  /** Fronts that ran through the piece faster than their surface holds together. */
  private void fronts() {
    double limit = splashSpeed();
    double fastest = run.melt.water ? Double.POSITIVE_INFINITY : limit;
    Optional<Spot> where = Optional.empty();
    for (Channel c : run.state.channels) {
      for (int i = 0; NetworkRun.isPiece(c.shape) && i < c.shape.cells; i++) {
        int cell = c.firstCell + i;
        boolean reached = Double.isFinite(run.recorder.arrivalTime[cell]);
        if (reached && run.recorder.arrivalSpeed[cell] > fastest) {
          fastest = run.recorder.arrivalSpeed[cell];
          where = Optional.of(new Spot(c.shape.name, (i + 0.5) * c.shape.dx));
        }
      }
    }
    if (where.isPresent()) {
      found.add(Kind.FRONT_SPLASHES, Severity.NOTE, where, "speed", fastest, "limit", limit);
    }
  }

  /** A jet from a gate into a much wider piece crosses it, which is not seen. */
  private void jets() {
    for (Gate gate : run.job.gating().gates()) {
      if (!(gate.place() instanceof Place.At at)) {
        continue;
      }
      for (Channel c : run.state.channels) {
        double along = at.distance() - c.shape.start;
        boolean here = along >= 0.0 && along <= c.shape.length && c.shape.limb.equals(at.limb());
        if (here && c.shape.role == Role.PIECE) {
          double width = c.shape.width[c.shape.cellAt(along)];
          boolean broad = width > BROAD * c.shape.length && width > gate.width();
          if (broad || width > JET * gate.width()) {
            found.add(
                Kind.WIDE_PIECE,
                Severity.WATCH,
                Optional.of(new Spot(gate.name(), 0.0)),
                "width",
                width,
                "gate",
                gate.width());
          }
          break;
        }
      }
    }
  }

  private void falls() {
    double limit = SplashLimit.fallHeight(splashSpeed());
    int channel = run.falls.highestFallChannel();
    if (channel >= 0 && run.falls.highestFall() > limit) {
      found.add(
          Kind.FALLS,
          Severity.WATCH,
          Optional.of(new Spot(run.state.channels[channel].shape.limb, 0.0)),
          "height",
          run.falls.highestFall(),
          "limit",
          limit);
    }
  }

  private void puddles() {
    if (run.job.mould().attitude().upright() || run.melt.water) {
      return;
    }
    double limit = FindingList.PUDDLE * run.melt.capillaryLength;
    for (Channel c : run.state.channels) {
      if (!NetworkRun.isPiece(c.shape)) {
        continue;
      }
      double thickest = 0.0;
      for (double t : c.shape.thickness) {
        thickest = Math.max(thickest, t);
      }
      if (thickest > limit) {
        found.add(
            Kind.PUDDLES,
            Severity.NOTE,
            Optional.of(new Spot(c.shape.limb, 0.0)),
            "thickness",
            thickest,
            "limit",
            limit);
      }
    }
  }

  private void air() {
    if (run.air.peakOver() > FindingList.AIR_COUNTS) {
      found.add(
          Kind.AIR_PUSHES_BACK, Severity.WATCH, Optional.empty(), "pressure", run.air.peakOver());
    }
  }

  private void mould() {
    double temperature = run.job.mould().temperature().value();
    double ceiling = run.job.mould().medium().ceiling().value();
    if (temperature > ceiling) {
      found.add(
          Kind.ABOVE_CEILING,
          Severity.SERIOUS,
          Optional.empty(),
          "temperature",
          temperature,
          "ceiling",
          ceiling);
    }
    double edge = run.mouldHeat.atNearestEdge();
    if (temperature - edge > FindingList.FLASK_APART) {
      found.add(
          Kind.FLASK_EDGE, Severity.NOTE, Optional.empty(), "kiln", temperature, "edge", edge);
    }
  }

  private void doubts() {
    double solid = run.heat.mostSolidAnywhere();
    if (solid > run.melt.contact.skinFrees) {
      found.add(Kind.GAP_COUNTS, Severity.NOTE, Optional.empty(), "solid", solid);
    }
    for (Channel c : run.state.channels) {
      if (c.shape.role == Role.PIECE && c.mushShare > 0.1 && c.mushShare < 0.9) {
        found.add(
            Kind.MUSH_SHARE_COUNTS,
            Severity.NOTE,
            Optional.of(new Spot(c.shape.limb, 0.0)),
            "share",
            c.mushShare);
      }
    }
    if (run.melt.table.clamps() > 0) {
      found.add(
          Kind.TABLE_CLAMPED,
          Severity.WATCH,
          Optional.empty(),
          "count",
          (double) run.melt.table.clamps());
    }
  }
}
