package lastinch.ui.chart.pour;

import lastinch.solver.result.Outcome;
import lastinch.solver.result.PourResult;
import lastinch.solver.result.StopReason;
import lastinch.ui.chart.paper.Pens;

/** Shape of the end of the metal. */
final class EndShape {
  private EndShape() {}

  static Pens.Lip of(PourResult result) {
    if (result.outcome() instanceof Outcome.Filled) {
      return Pens.Lip.FULL;
    }
    if (result.stops().isEmpty()) {
      return Pens.Lip.LEVEL;
    }
    StopReason reason = result.stops().get(0).reason();
    return switch (reason) {
      case NO_METAL -> Pens.Lip.LEVEL;
      case AIR -> Pens.Lip.RAGGED;
      case SLUSH, SKIN, FROZE_UPSTREAM, CAPILLARITY -> Pens.Lip.ROUNDED;
    };
  }
}
