package lastinch.ui.chart.paper;

/**
 * The colour in which hot metal glows: light of a black body by Planck's law (Planck, Annalen der
 * Physik 4, 1901, p. 553) as the CIE 1931 observer sees it, in the numbers of a screen (IEC
 * 61966-2-1, sRGB). A real surface is no black body and eyes differ: not for judging metal by eye.
 */
public final class Glow {
  /**
   * Below this nothing glows that an eye can see [K]: Draper, Philosophical Magazine 30, 1847, p.
   * 345 (977 degF).
   */
  static final double FIRST_GLOW = 798.0;

  /** From here on the colour is shown in full [K]; in between it fades in. */
  private static final double FULL_GLOW = 850.0;

  /** Share of the full colour; richer ones differ too little to weaker eyes [-]. */
  private static final double RICHNESS = 0.75;

  /** Close to the white of a screen [K]. */
  private static final double WHITE_HOT = 6500.0;

  private static final int HALVINGS = 24;

  /** Second radiation constant h c/k [m K]: CODATA 2018. */
  private static final double SECOND_CONSTANT = 1.438776877e-2;

  /** Linear sRGB from XYZ with white of luminance 1: IEC 61966-2-1. */
  private static final double[][] TO_SCREEN = {
    {3.2406, -1.5372, -0.4986}, {-0.9689, 1.8758, 0.0415}, {0.0557, -0.2040, 1.0570}
  };

  private Glow() {}

  /** Colour without brightness, x and y of CIE 1931, of a black body [K]. */
  public static double[] chromaticity(double kelvin) {
    double[] xyz = Observer1931.sees(l -> planck(l, kelvin));
    double sum = xyz[0] + xyz[1] + xyz[2];
    return new double[] {xyz[0] / sum, xyz[1] / sum};
  }

  private static double planck(double wavelength, double kelvin) {
    return Math.pow(wavelength, -5.0) / Math.expm1(SECOND_CONSTANT / (wavelength * kelvin));
  }

  /**
   * The colour of a black body at a chosen brightness. Where a screen cannot show its colour that
   * bright, the colour of the next hotter body is taken that it can show so.
   *
   * @param kelvin heat of the body [K]
   * @param lightness CIE L* wanted, 0 black to 100 white
   * @return red, green, blue, 0 to 1, as sent to a screen
   */
  static double[] screen(double kelvin, double lightness) {
    double luminance = luminance(lightness);
    double low = kelvin;
    double high = Math.max(kelvin, WHITE_HOT);
    if (largest(light(low, luminance)) > 1.0) {
      for (int i = 0; i < HALVINGS; i++) {
        double middle = 0.5 * (low + high);
        boolean shown = largest(light(middle, luminance)) <= 1.0;
        low = shown ? low : middle;
        high = shown ? middle : high;
      }
      low = high;
    }
    double[] rgb = light(low, luminance);
    double visible = (kelvin - FIRST_GLOW) / (FULL_GLOW - FIRST_GLOW);
    double rich = RICHNESS * Math.max(0.0, Math.min(1.0, visible));
    for (int k = 0; k < 3; k++) {
      // Towards the grey of the same brightness, so that brightness stays what was asked for.
      double fromGrey = rgb[k] - luminance;
      rich = -fromGrey * rich > luminance ? -luminance / fromGrey : rich;
    }
    double[] out = new double[3];
    for (int k = 0; k < 3; k++) {
      out[k] = gamma(luminance + rich * (rgb[k] - luminance));
    }
    return out;
  }

  private static double largest(double... rgb) {
    return Math.max(rgb[0], Math.max(rgb[1], rgb[2]));
  }

  /** Light of a black body's colour and a luminance, as linear red, green, blue of a screen. */
  private static double[] light(double kelvin, double luminance) {
    double[] xy = chromaticity(kelvin);
    double x = luminance * xy[0] / xy[1];
    double z = luminance * (1.0 - xy[0] - xy[1]) / xy[1];
    double[] rgb = new double[3];
    for (int k = 0; k < 3; k++) {
      rgb[k] = TO_SCREEN[k][0] * x + TO_SCREEN[k][1] * luminance + TO_SCREEN[k][2] * z;
    }
    return rgb;
  }

  /** Luminance of CIE L*, white = 1: CIE 15. */
  static double luminance(double lightness) {
    return lightness > 8.0 ? Math.pow((lightness + 16.0) / 116.0, 3.0) : lightness * 27.0 / 24389.0;
  }

  private static double gamma(double linear) {
    double v = Math.max(0.0, Math.min(1.0, linear));
    return v <= 0.0031308 ? 12.92 * v : 1.055 * Math.pow(v, 1.0 / 2.4) - 0.055;
  }
}
