package lastinch.solver.network.layout;

import lastinch.solver.casting.Limb;
import lastinch.solver.casting.PourCase;

/** Names of channels that are parts of one limb or boss. */
public final class PartNames {
  /** Between the name of a limb and the number of its part. */
  static final String PART = " part ";

  /** After the name of a limb: which of its ends. */
  static final String TIP = " tip";

  static final String THICK_END = " thick end";

  private PartNames() {}

  /** Whether a place is the last station of a limb, named alone or as its tip. */
  static boolean isEndOf(Limb limb, String place) {
    return limb.name().equals(place) || place.equals(limb.name() + TIP);
  }

  /** Limb, boss or other passage that a channel belongs to. */
  static String limbOf(String channel) {
    int part = channel.lastIndexOf(PART);
    return part < 0 ? channel : channel.substring(0, part);
  }

  /** The first limb of a piece. */
  public static Limb firstLimb(PourCase job) {
    return job.piece().limbs().get(0);
  }
}
