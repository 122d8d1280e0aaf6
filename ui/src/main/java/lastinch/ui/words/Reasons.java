package lastinch.ui.words;

import lastinch.solver.result.EdgeStretch;
import lastinch.solver.result.FlowLimit;
import lastinch.solver.result.Margin;
import lastinch.solver.result.Meeting;
import lastinch.solver.result.Outcome;
import lastinch.solver.result.StopReason;

/** Stable names of the result's closed lists, for machine-readable output and sentence names. */
public final class Reasons {
  private Reasons() {}

  public static String key(StopReason reason) {
    return switch (reason) {
      case SLUSH -> "slush";
      case SKIN -> "skin";
      case FROZE_UPSTREAM -> "frozeUpstream";
      case NO_METAL -> "noMetal";
      case AIR -> "air";
      case CAPILLARITY -> "capillarity";
    };
  }

  public static String key(EdgeStretch.Cause cause) {
    return switch (cause) {
      case NONE -> "none";
      case HEAT -> "heat";
      case PUSH -> "push";
    };
  }

  public static String key(FlowLimit limit) {
    return switch (limit) {
      case HAND -> "hand";
      case GATES -> "gates";
      case HEAD -> "head";
      case AIR -> "air";
    };
  }

  public static String key(Margin.LimitedBy limit) {
    return switch (limit) {
      case HEAT -> "heat";
      case METAL -> "metal";
      case PUSH -> "push";
      case AIR -> "air";
    };
  }

  public static String key(Meeting.Kind kind) {
    return switch (kind) {
      case JOINED -> "joined";
      case LAP -> "lap";
      case COLD_SHUT -> "coldShut";
    };
  }

  public static String key(Outcome outcome) {
    if (outcome instanceof Outcome.Filled) {
      return "filled";
    }
    if (outcome instanceof Outcome.Misrun) {
      return "misrun";
    }
    return outcome instanceof Outcome.Cancelled ? "cancelled" : "brokeDown";
  }
}
