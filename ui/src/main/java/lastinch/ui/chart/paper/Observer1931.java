package lastinch.ui.chart.paper;

/**
 * Colour matching functions of the CIE 1931 standard observer (2 degrees) from 380 to 780 nm by 10
 * nm: CIE 15, Colorimetry, table T.4 (also ISO/CIE 11664-1). Written down from memory; a test holds
 * them against the published colours of the black body, of illuminant A and of even light.
 */
public final class Observer1931 {
  static final double FIRST = 380e-9;
  static final double STEP = 10e-9;

  private static final double[][] MATCHES = {
    {0.001368, 0.000039, 0.006450},
    {0.004243, 0.000120, 0.020050},
    {0.014310, 0.000396, 0.067850},
    {0.043510, 0.001210, 0.207400},
    {0.134380, 0.004000, 0.645600},
    {0.283900, 0.011600, 1.385600},
    {0.348280, 0.023000, 1.747060},
    {0.336200, 0.038000, 1.772110},
    {0.290800, 0.060000, 1.669200},
    {0.195360, 0.090980, 1.287640},
    {0.095640, 0.139020, 0.812950},
    {0.032010, 0.208020, 0.465180},
    {0.004900, 0.323000, 0.272000},
    {0.009300, 0.503000, 0.158200},
    {0.063270, 0.710000, 0.078250},
    {0.165500, 0.862000, 0.042160},
    {0.290400, 0.954000, 0.020300},
    {0.433450, 0.994950, 0.008750},
    {0.594500, 0.995000, 0.003900},
    {0.762100, 0.952000, 0.002100},
    {0.916300, 0.870000, 0.001650},
    {1.026300, 0.757000, 0.001100},
    {1.062200, 0.631000, 0.000800},
    {1.002600, 0.503000, 0.000340},
    {0.854450, 0.381000, 0.000190},
    {0.642400, 0.265000, 0.000050},
    {0.447900, 0.175000, 0.000020},
    {0.283500, 0.107000, 0.0},
    {0.164900, 0.061000, 0.0},
    {0.087400, 0.032000, 0.0},
    {0.046770, 0.017000, 0.0},
    {0.022700, 0.008210, 0.0},
    {0.011359, 0.004102, 0.0},
    {0.005790, 0.002091, 0.0},
    {0.002899, 0.001047, 0.0},
    {0.001440, 0.000520, 0.0},
    {0.000690, 0.000249, 0.0},
    {0.000332, 0.000120, 0.0},
    {0.000166, 0.000060, 0.0},
    {0.000083, 0.000030, 0.0},
    {0.000042, 0.000015, 0.0},
  };

  private Observer1931() {}

  /** Light of a given strength by wavelength. */
  @FunctionalInterface
  public interface Light {
    /** Strength at a wavelength [m], any unit. */
    double at(double wavelength);
  }

  /** What the eye makes of a light: X, Y, Z in the light's own unit. */
  public static double[] sees(Light light) {
    double[] xyz = new double[3];
    for (int i = 0; i < MATCHES.length; i++) {
      double strength = light.at(FIRST + i * STEP);
      for (int k = 0; k < 3; k++) {
        xyz[k] += strength * MATCHES[i][k] * STEP;
      }
    }
    return xyz;
  }
}
