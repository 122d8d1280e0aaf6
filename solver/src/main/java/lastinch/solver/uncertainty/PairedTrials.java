package lastinch.solver.uncertainty;

/**
 * Indices from runs made in pairs: two samples A and B, and A with one column of B for each input.
 *
 * <p>Alone: Saltelli et al., Variance based sensitivity analysis of model output, Computer Physics
 * Communications 181 (2010) 259. In all, with every interplay: Jansen, Analysis of variance designs
 * for model output, Computer Physics Communications 117 (1999) 35.
 */
final class PairedTrials {
  private PairedTrials() {}

  /** Share of the variance from one input alone [-]. */
  static double alone(double[] a, double[] b, double[] mixed) {
    double mean = mean(a, b);
    double sum = 0.0;
    for (int i = 0; i < a.length; i++) {
      sum += (b[i] - mean) * (mixed[i] - a[i]);
    }
    return share(sum / a.length, variance(a, b));
  }

  /** Share of the variance from one input with all that it does together with others [-]. */
  static double inAll(double[] a, double[] b, double[] mixed) {
    double sum = 0.0;
    for (int i = 0; i < a.length; i++) {
      sum += (a[i] - mixed[i]) * (a[i] - mixed[i]);
    }
    return share(0.5 * sum / a.length, variance(a, b));
  }

  private static double share(double part, double whole) {
    return whole > 0.0 ? Math.max(0.0, part / whole) : 0.0;
  }

  private static double mean(double[] a, double[] b) {
    double sum = 0.0;
    for (int i = 0; i < a.length; i++) {
      sum += a[i] + b[i];
    }
    return sum / (2.0 * a.length);
  }

  private static double variance(double[] a, double[] b) {
    double mean = mean(a, b);
    double sum = 0.0;
    for (int i = 0; i < a.length; i++) {
      sum += (a[i] - mean) * (a[i] - mean) + (b[i] - mean) * (b[i] - mean);
    }
    return sum / (2.0 * a.length - 1.0);
  }
}
