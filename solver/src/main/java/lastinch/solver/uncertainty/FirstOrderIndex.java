package lastinch.solver.uncertainty;

import java.util.Arrays;
import java.util.Comparator;

/**
 * Share of the variance of an outcome that one input explains by itself, from runs that were made
 * anyway: runs are put in order of the input and cut into classes, and the variance between the
 * classes' means, less what chance puts there, is compared with all variance.
 *
 * <p>Sources: Plischke, Borgonovo and Smith, Global sensitivity measures from given data, European
 * J. Operational Research 226 (2013) 536; the correction for chance is Kelley's, An unbiased
 * correlation ratio measure, PNAS 21 (1935) 554.
 */
final class FirstOrderIndex {
  /** Repeats of the bootstrap, and those left out on each side for nine in ten. */
  private static final int REPEATS = 200;

  private static final int LEFT_OUT = 10;
  private static final double LEAST_PER_CLASS = 4.0;

  private FirstOrderIndex() {}

  /** A share with its bar [-]. */
  record Share(double value, double low, double high) {}

  /**
   * The share.
   *
   * @param input one number a run
   * @param outcome of the same runs
   * @param seed of the bootstrap
   */
  static Share of(double[] input, double[] outcome, int seed) {
    int[] order = order(input);
    int n = order.length;
    int classes = classes(n);
    double[] sorted = new double[n];
    int[] classOf = new int[n];
    for (int i = 0; i < n; i++) {
      sorted[i] = outcome[order[i]];
      classOf[i] = (int) ((long) i * classes / n);
    }
    int[] all = new int[n];
    Arrays.setAll(all, i -> i);
    double value = ratio(sorted, classOf, classes, all, true);
    double plain = ratio(sorted, classOf, classes, all, false);
    double[] again = new double[REPEATS];
    int[] drawn = new int[n];
    for (int b = 0; b < REPEATS; b++) {
      for (int i = 0; i < n; i++) {
        long word = ScrambledSobol.mixed(seed + b, i) & 0xffffffffL;
        drawn[i] = (int) ((word * n) >>> 32);
      }
      again[b] = ratio(sorted, classOf, classes, drawn, true);
    }
    Arrays.sort(again);
    // For runs drawn again the truth is the uncorrected share of those they are drawn from.
    double low = value + plain - again[REPEATS - 1 - LEFT_OUT];
    double high = value + plain - again[LEFT_OUT];
    return new Share(clipped(value), clipped(Math.min(low, value)), clipped(Math.max(high, value)));
  }

  /**
   * What is left of an outcome when the mean of its class is taken off each run; what other inputs
   * do then stands out.
   */
  static double[] without(double[] input, double[] outcome) {
    int[] order = order(input);
    int n = order.length;
    int classes = classes(n);
    double[] sum = new double[classes];
    int[] count = new int[classes];
    for (int i = 0; i < n; i++) {
      int c = (int) ((long) i * classes / n);
      sum[c] += outcome[order[i]];
      count[c]++;
    }
    double[] left = new double[n];
    for (int i = 0; i < n; i++) {
      int c = (int) ((long) i * classes / n);
      left[order[i]] = outcome[order[i]] - sum[c] / count[c];
    }
    return left;
  }

  private static int classes(int n) {
    return (int) Math.max(2.0, Math.floor(Math.min(Math.sqrt(n), n / LEAST_PER_CLASS)));
  }

  private static double clipped(double share) {
    return Math.max(0.0, Math.min(1.0, share));
  }

  /** Variance of an outcome. */
  static double variance(double[] outcome) {
    double mean = Arrays.stream(outcome).average().orElse(0.0);
    return Arrays.stream(outcome).map(y -> (y - mean) * (y - mean)).average().orElse(0.0);
  }

  private static int[] order(double[] input) {
    Integer[] places = new Integer[input.length];
    Arrays.setAll(places, i -> i);
    Arrays.sort(places, Comparator.comparingDouble(i -> input[i]));
    return Arrays.stream(places).mapToInt(Integer::intValue).toArray();
  }

  private static double ratio(
      double[] outcome, int[] classOf, int classes, int[] runs, boolean corrected) {
    double[] sum = new double[classes];
    int[] count = new int[classes];
    double mean = 0.0;
    for (int run : runs) {
      sum[classOf[run]] += outcome[run];
      count[classOf[run]]++;
      mean += outcome[run];
    }
    int n = runs.length;
    mean /= n;
    double all = 0.0;
    for (int run : runs) {
      all += (outcome[run] - mean) * (outcome[run] - mean);
    }
    double between = 0.0;
    int used = 0;
    for (int c = 0; c < classes; c++) {
      if (count[c] > 0) {
        double off = sum[c] / count[c] - mean;
        between += count[c] * off * off;
        used++;
      }
    }
    if (!(all > 0.0) || n <= used) {
      return 0.0;
    }
    double inside = (all - between) / (n - used);
    return corrected ? (between - (used - 1) * inside) / all : between / all;
  }
}
