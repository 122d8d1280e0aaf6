package lastinch.solver.uncertainty;

import java.util.List;
import lastinch.solver.casting.PourCase;
import lastinch.solver.material.Band;
import org.apache.commons.math3.distribution.NormalDistribution;

/**
 * A job on a day drawn from its bands. A figure follows two halves of bell curves that meet at its
 * best value, with nine days in ten inside the band; on the scale of the logarithm where the band
 * is wide.
 */
public final class SampledInputs {
  /** Days rarer than one in a thousand are taken as that rare: parts of a half-band [-]. */
  private static final double RAREST = 2.0;

  private static final NormalDistribution BELL = new NormalDistribution(null, 0.0, 1.0);

  /** Standard deviations from the middle to an end of a band that holds nine in ten [-]. */
  private static final double END = BELL.inverseCumulativeProbability(0.95);

  private SampledInputs() {}

  /** The job with every unknown drawn; {@code point} has a number from 0 to 1 for each. */
  public static PourCase of(PourCase job, List<UncertainInput> unknowns, double[] point) {
    PourCase day = job;
    for (int i = 0; i < unknowns.size(); i++) {
      day = put(day, unknowns.get(i), drawn(job, unknowns.get(i), point[i]));
    }
    return day;
  }

  /**
   * The value of a figure below which it lies in a share of all days.
   *
   * @param share of the days [-], between 0 and 1
   */
  static double drawn(PourCase job, UncertainInput unknown, double share) {
    Band band = unknown.band(job).orElseThrow();
    return Math.max(unknown.least(band.value()), Math.min(unknown.most(), drawn(band, share)));
  }

  /**
   * The value below which a figure with an open band lies in a share of all days, wherever it
   * belongs.
   *
   * @param share of the days [-], between 0 and 1
   */
  public static double drawn(Band band, double share) {
    double below = part(band, false);
    double weight = below / (below + part(band, true));
    boolean up = share >= weight;
    double tail = up ? (1.0 - share) / (1.0 - weight) : share / weight;
    double part = -BELL.inverseCumulativeProbability(0.5 * Math.min(1.0, tail)) / END;
    return UncertainInput.towards(band, up, Math.min(RAREST, part));
  }

  /** Length of one half of a band, on its own scale. */
  private static double part(Band band, boolean up) {
    double end = up ? band.high() : band.low();
    return UncertainInput.isWide(band)
        ? Math.abs(StrictMath.log(end / band.value()))
        : Math.abs(end - band.value());
  }

  /** Sets a figure; one that must not pass another stops there, or takes it along. */
  public static PourCase put(PourCase job, UncertainInput unknown, double value) {
    return switch (unknown) {
      case CONTACT_LIQUID ->
          unknown.set(
              of(job, UncertainInput.CONTACT_GAP) > value
                  ? UncertainInput.CONTACT_GAP.set(job, value)
                  : job,
              value);
      case CONTACT_GAP -> unknown.set(job, Math.min(value, of(job, UncertainInput.CONTACT_LIQUID)));
      case SKIN_FREES ->
          unknown.set(
              of(job, UncertainInput.GAP_OPEN) < value
                  ? UncertainInput.GAP_OPEN.set(job, value)
                  : job,
              value);
      case GAP_OPEN -> unknown.set(job, Math.max(value, of(job, UncertainInput.SKIN_FREES)));
      case EDGE_TO_WALL ->
          unknown.set(job, Math.min(value, 0.5 * job.mould().flask().orElseThrow().inside()));
      default -> unknown.set(job, value);
    };
  }

  private static double of(PourCase job, UncertainInput unknown) {
    return unknown.band(job).orElseThrow().value();
  }
}
