package lastinch.solver.network.record;

import java.util.List;
import java.util.Optional;
import lastinch.solver.casting.Place;
import lastinch.solver.casting.gating.Gate;
import lastinch.solver.judge.Judge;
import lastinch.solver.network.NetworkRun;
import lastinch.solver.network.flow.Channel;
import lastinch.solver.result.Finding;
import lastinch.solver.result.PassageRecord.Role;
import lastinch.solver.result.Spot;

/** Hands what a run of the network saw to the judge. */
public final class NetworkFindings {
  private final NetworkRun run;
  private final boolean filled;
  private final Judge judge;

  public NetworkFindings(NetworkRun run, boolean filled) {
    this.run = run;
    this.filled = filled;
    judge = new Judge(run.job, run.melt);
  }

  /** What a caster should hear besides the verdict, heaviest first. */
  public List<Finding> list() {
    judge.metal(run.massToRim, run.isFedDirectly());
    judge.spilled(run.state.cup.spilled());
    if (run.state.cup.crucibleEmpty() && run.state.cup.level() <= 0.0 && !filled) {
      judge.ranDry(run.state.time);
    }
    if (!run.isFedDirectly() && !run.flowWatch.tally.wasFull()) {
      judge.sprueNeverFull(run.flowWatch.tally.mostStanding(), run.flowWatch.tally.couldPass());
    }
    for (Channel c : run.state.channels) {
      if (c.shape.role == Role.GATE) {
        judge.gate(c.shape.limb, run.recorder.peakSpeed[c.index]);
      }
    }
    fastestFront();
    run.job.gating().gates().forEach(this::jet);
    if (run.falls.highestFallChannel() >= 0) {
      Channel c = run.state.channels[run.falls.highestFallChannel()];
      judge.fall(new Spot(c.shape.limb, 0.0), run.falls.highestFall());
    }
    thickPlaces();
    judge.air(run.air.peakOver());
    judge.mould(run.mouldHeat.atNearestEdge());
    judge.solid(run.heat.mostSolidAnywhere());
    for (Channel c : run.state.channels) {
      if (c.shape.role == Role.PIECE) {
        judge.mush(Optional.of(new Spot(c.shape.limb, 0.0)), c.mushShare);
      }
    }
    judge.clamped(run.melt.clamps());
    return judge.heaviestFirst();
  }

  private void fastestFront() {
    double fastest = 0.0;
    Optional<Spot> where = Optional.empty();
    for (Channel c : run.state.channels) {
      for (int i = 0; c.shape.isPiece() && i < c.shape.cells; i++) {
        int cell = c.firstCell + i;
        boolean reached = Double.isFinite(run.recorder.arrivalTime[cell]);
        if (reached && run.recorder.arrivalSpeed[cell] > fastest) {
          fastest = run.recorder.arrivalSpeed[cell];
          where = Optional.of(new Spot(c.shape.name, (i + 0.5) * c.shape.dx));
        }
      }
    }
    if (where.isPresent()) {
      judge.front(where.get(), fastest);
    }
  }

  private void jet(Gate gate) {
    if (!(gate.place() instanceof Place.At at)) {
      return;
    }
    for (Channel c : run.state.channels) {
      double along = at.distance() - c.shape.start;
      boolean here = along >= 0.0 && along <= c.shape.length && c.shape.limb.equals(at.limb());
      if (here && c.shape.role == Role.PIECE) {
        double width = c.shape.width[c.shape.cellAt(along)];
        judge.jet(gate.name(), gate.width(), width, c.shape.length);
        return;
      }
    }
  }

  private void thickPlaces() {
    for (Channel c : run.state.channels) {
      double thickest = 0.0;
      for (double t : c.shape.thickness) {
        thickest = Math.max(thickest, t);
      }
      if (c.shape.isPiece()) {
        judge.thick(new Spot(c.shape.limb, 0.0), thickest);
      }
    }
  }
}
