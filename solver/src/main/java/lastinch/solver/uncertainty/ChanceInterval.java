package lastinch.solver.uncertainty;

import org.apache.commons.math3.distribution.BetaDistribution;
import org.apache.commons.math3.distribution.TDistribution;

/**
 * A share of days with the interval in which its true value lies nine times in ten.
 *
 * @param share found [-]
 * @param low lower end [-]
 * @param high upper end [-]
 */
public record ChanceInterval(double share, double low, double high) {
  /** Left out above and below: a tenth in all [-]. */
  private static final double TAIL = 0.05;

  /** The same for Student's interval: from few samples, it is kept a little wide on purpose [-]. */
  private static final double STUDENT_TAIL = 0.025;

  /** Counts nearer to none or all than this leave too little spread to judge by. */
  private static final int FEW = 10;

  /**
   * From samples that are independent of each other, each even in itself. Where few days, or all
   * but a few, come out one way, the exact interval of counting holds; else Student's, from the
   * spread of the samples, and never beyond the exact one.
   *
   * @param yes days that came out so, for each sample
   * @param counted days that gave an answer, for each sample
   */
  static ChanceInterval of(int[] yes, int[] counted) {
    int all = 0;
    int so = 0;
    for (int i = 0; i < yes.length; i++) {
      all += counted[i];
      so += yes[i];
    }
    ChanceInterval exact = exact(so, all);
    if (so < FEW || all - so < FEW || yes.length < 2) {
      return exact;
    }
    double sum = 0.0;
    for (int i = 0; i < yes.length; i++) {
      double off = yes[i] - exact.share * counted[i];
      sum += off * off;
    }
    int n = yes.length;
    double error = Math.sqrt(sum * n / (n - 1.0)) / all;
    double student =
        new TDistribution(null, n - 1.0).inverseCumulativeProbability(1.0 - STUDENT_TAIL);
    double half = student * error;
    return new ChanceInterval(
        exact.share,
        Math.max(exact.low, exact.share - half),
        Math.min(exact.high, exact.share + half));
  }

  /**
   * The exact interval of counting independent days. Source: Clopper and Pearson, Biometrika 26
   * (1934) 404.
   */
  static ChanceInterval exact(int yes, int all) {
    if (all == 0) {
      return new ChanceInterval(0.0, 0.0, 1.0);
    }
    double low =
        yes == 0
            ? 0.0
            : new BetaDistribution(null, yes, all - yes + 1.0).inverseCumulativeProbability(TAIL);
    double high =
        yes == all
            ? 1.0
            : new BetaDistribution(null, yes + 1.0, all - (double) yes)
                .inverseCumulativeProbability(1.0 - TAIL);
    return new ChanceInterval((double) yes / all, low, high);
  }
}
