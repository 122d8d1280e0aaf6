package lastinch.validation.lengths;

import lastinch.solver.casting.Metal;
import lastinch.solver.casting.Mould;
import lastinch.solver.material.Band;

/**
 * A length that somebody measured or reports, with the set-up it can be poured in here.
 *
 * @param name as on the page
 * @param metal as it was read, and what it loses on the way
 * @param mould and how it stands
 * @param channel into which it ran
 * @param drive what drove it
 * @param from least length reported [mm]
 * @param to greatest length reported [mm]
 */
record MeasuredLength(
    String name, Metal metal, Mould mould, Channel channel, Drive drive, double from, double to) {
  /**
   * An even channel.
   *
   * @param width [m]
   * @param thickness [m]
   * @param size factor on both [-], as far as the source leaves it open
   */
  record Channel(double width, double thickness, Band size) {}

  /** What drove the metal. */
  sealed interface Drive {
    /**
     * Metal stands in a basin, or is sucked.
     *
     * @param head height of metal above the mouth, held [m]
     * @param loss at the mouth and before it, in speed heads [-]
     */
    record Held(Band head, Band loss) implements Drive {}

    /**
     * A hand pours down a sprue.
     *
     * @param rate volume of metal a second [m3/s]
     */
    record ByHand(Band rate) implements Drive {}
  }

  /** Middle of what is reported, by ratio [mm]. */
  double measured() {
    return Math.sqrt(from * to);
  }
}
