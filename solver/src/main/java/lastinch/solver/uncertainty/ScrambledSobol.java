package lastinch.solver.uncertainty;

import org.apache.commons.math3.random.SobolSequenceGenerator;

/**
 * Points of Sobol's sequence that fill a box evenly, scrambled so that each choice of {@code seed}
 * gives another sample of the same evenness.
 *
 * <p>Pairs of later coordinates of the sequence lie on patterns that a thousand points do not fill.
 * So each sample deals the coordinates out in another order, and samples laid together show none.
 *
 * <p>Nested uniform scrambling after Owen, by the hash of Laine and Karras. Sources: Owen, Randomly
 * permuted (t,m,s)-nets and (t,s)-sequences, in: Monte Carlo and Quasi-Monte Carlo Methods in
 * Scientific Computing, 1995; Burley, Practical Hash-based Owen Scrambling, J. Computer Graphics
 * Techniques 9 (4), 2020.
 */
public final class ScrambledSobol {
  /** Bits of the library's numbers, and those that are scrambled. */
  private static final int BITS = 52;

  private static final int KEPT = 32;

  private ScrambledSobol() {}

  /**
   * The points.
   *
   * @param dimensions of the box, at least 1
   * @param count how many points; a power of two is evenest
   * @param seed which sample
   * @return {@code count} points, each coordinate above 0 and below 1
   */
  public static double[][] points(int dimensions, int count, int seed) {
    SobolSequenceGenerator sobol = new SobolSequenceGenerator(dimensions);
    double[][] points = new double[count][];
    int[] dealt = dealt(dimensions, seed);
    for (int i = 0; i < count; i++) {
      double[] plain = sobol.nextVector();
      double[] point = new double[dimensions];
      for (int d = 0; d < dimensions; d++) {
        long bits = (long) Math.scalb(plain[dealt[d]], BITS) >>> (BITS - KEPT);
        int scrambled = scrambled((int) bits, mixed(seed, d));
        point[d] = Math.scalb((scrambled & 0xffffffffL) + 0.5, -KEPT);
      }
      points[i] = point;
    }
    return points;
  }

  /** The coordinates in an order of their own for each seed. */
  private static int[] dealt(int dimensions, int seed) {
    int[] order = new int[dimensions];
    for (int d = 0; d < dimensions; d++) {
      int other = (int) (((mixed(~seed, d) & 0xffffffffL) * (d + 1)) >>> KEPT);
      order[d] = order[other];
      order[other] = d;
    }
    return order;
  }

  private static int scrambled(int bits, int seed) {
    int x = Integer.reverse(bits);
    x += seed;
    x ^= x * 0x6c50b47c;
    x ^= x * 0xb82f1e52;
    x ^= x * 0xc7afe638;
    x ^= x * 0x8d22f6e6;
    return Integer.reverse(x);
  }

  /**
   * A number that looks like chance, from two counters. Source: the finalizer in Steele, Lea and
   * Flood, Fast splittable pseudorandom number generators, OOPSLA 2014.
   */
  static int mixed(int seed, int counter) {
    long z = 0x9e3779b97f4a7c15L * (1L + counter) + 0xbf58476d1ce4e5b9L * (1L + seed);
    z = (z ^ (z >>> 30)) * 0xbf58476d1ce4e5b9L;
    z = (z ^ (z >>> 27)) * 0x94d049bb133111ebL;
    return (int) (z ^ (z >>> 31));
  }
}
