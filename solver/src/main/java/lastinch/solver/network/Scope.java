package lastinch.solver.network;

import java.util.ArrayList;
import java.util.List;
import lastinch.solver.casting.Gate;
import lastinch.solver.casting.Place;
import lastinch.solver.casting.PourCase;
import lastinch.solver.casting.Runner;
import lastinch.solver.casting.Side;

/** What a single path of channels can hold. */
public final class Scope {
  /** Parts beyond it. */
  public enum Part {
    SEVERAL_GATES,
    LIMBS,
    SIDE_RUNNER,
    RUNNER_RUNS_ON,
    OVERFLOWS,
    FEEDERS,
    GATE_ALONG_PIECE,
    STARTS_WET
  }

  private Scope() {}

  /** Parts of a case that this solver does not have, in the order of the case. */
  public static List<Part> missing(PourCase job) {
    List<Part> parts = new ArrayList<>();
    if (job.piece().limbs().size() > 1) {
      parts.add(Part.LIMBS);
    }
    if (job.gating().gates().size() > 1) {
      parts.add(Part.SEVERAL_GATES);
    }
    if (job.gating().runner().isPresent()) {
      Runner runner = job.gating().runner().get();
      if (runner instanceof Runner.Alongside) {
        parts.add(Part.SIDE_RUNNER);
      }
      if (runner.runsOn() > 0.0) {
        parts.add(Part.RUNNER_RUNS_ON);
      }
    }
    if (!job.gating().overflows().isEmpty()) {
      parts.add(Part.OVERFLOWS);
    }
    if (!job.gating().feeders().isEmpty()) {
      parts.add(Part.FEEDERS);
    }
    double length = job.piece().limbs().get(0).length();
    for (Gate gate : job.gating().gates()) {
      if (gate.place() instanceof Place.At at && !isAtAnEnd(at, length)) {
        parts.add(Part.GATE_ALONG_PIECE);
      }
    }
    if (!job.checking().startsWet().isEmpty()) {
      parts.add(Part.STARTS_WET);
    }
    return List.copyOf(parts);
  }

  private static boolean isAtAnEnd(Place.At at, double length) {
    boolean thickEnd = at.distance() <= 1e-9 && at.side() != Side.TIP;
    boolean tip = at.distance() >= length - 1e-9 || at.side() == Side.TIP;
    return thickEnd || tip;
  }
}
