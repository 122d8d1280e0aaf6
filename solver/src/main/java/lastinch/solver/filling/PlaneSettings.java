package lastinch.solver.filling;

import java.util.Optional;
import lastinch.solver.casting.GapMap;

/**
 * How a pour over the plane is computed.
 *
 * @param square edge of the squares [m]
 * @param map the whole cavity, where it is drawn by other means than the job's piece and gating
 * @param every seconds between two moments kept [s]; infinite for the end alone
 * @param threads that share the work; the answer is the same to the last bit for any number
 */
public record PlaneSettings(double square, Optional<GapMap> map, double every, int threads) {
  /** Squares of an edge [m], the end alone, one thread. */
  public static PlaneSettings squares(double square) {
    return new PlaneSettings(square, Optional.empty(), Double.POSITIVE_INFINITY, 1);
  }

  /** A cavity drawn by other means, the end alone, one thread. */
  public static PlaneSettings in(GapMap map) {
    return new PlaneSettings(map.cell(), Optional.of(map), Double.POSITIVE_INFINITY, 1);
  }

  /** The same, with moments kept every so many seconds [s]. */
  public PlaneSettings keeping(double seconds) {
    return new PlaneSettings(square, map, seconds, threads);
  }

  /** The same, by a number of threads. */
  public PlaneSettings on(int number) {
    return new PlaneSettings(square, map, every, number);
  }
}
