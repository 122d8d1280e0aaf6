package lastinch.solver.network;

import lastinch.solver.casting.Limb;
import lastinch.solver.casting.PourCase;

/** Names of channels that are parts of one limb or boss. */
final class PartNames {
  /** Between the name of a limb and the number of its part. */
  static final String PART = " part ";

  private PartNames() {}

  /** Limb, boss or other passage that a channel belongs to. */
  static String limbOf(ChannelShape shape) {
    int part = shape.name.lastIndexOf(PART);
    return part < 0 ? shape.name : shape.name.substring(0, part);
  }

  /** The first limb of a piece. */
  static Limb firstLimb(PourCase job) {
    return job.piece().limbs().get(0);
  }
}
