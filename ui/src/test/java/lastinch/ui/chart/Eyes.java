package lastinch.ui.chart;

import java.awt.Color;

/** How light a colour is, and what eyes that lack one kind of cone make of it. */
final class Eyes {
  private Eyes() {}

  /**
   * Eyes: full, or without the long-wave, middle-wave or short-wave cone. Matrices on linear sRGB:
   * Machado, Oliveira and Fernandes, IEEE Trans. Visualization and Computer Graphics 15, 2009,
   * table 1, severity 1.0; written down from memory, each row adds up to 1.
   */
  enum Kind {
    FULL,
    NO_LONG,
    NO_MIDDLE,
    NO_SHORT;

    private double[][] matrix() {
      return switch (this) {
        case FULL -> new double[][] {{1, 0, 0}, {0, 1, 0}, {0, 0, 1}};
        case NO_LONG ->
            new double[][] {
              {0.152286, 1.052583, -0.204868},
              {0.114503, 0.786281, 0.099216},
              {-0.003882, -0.048116, 1.051998}
            };
        case NO_MIDDLE ->
            new double[][] {
              {0.367322, 0.860646, -0.227968},
              {0.280085, 0.672501, 0.047413},
              {-0.011820, 0.042940, 0.968881}
            };
        case NO_SHORT ->
            new double[][] {
              {1.255528, -0.076749, -0.178779},
              {-0.078411, 0.930809, 0.147602},
              {0.004733, 0.691367, 0.303900}
            };
      };
    }

    Color sees(Color c) {
      double[] in = {linear(c.getRed()), linear(c.getGreen()), linear(c.getBlue())};
      double[][] matrix = matrix();
      float[] out = new float[3];
      for (int k = 0; k < 3; k++) {
        double v = 0.0;
        for (int m = 0; m < 3; m++) {
          v += matrix[k][m] * in[m];
        }
        double held = Math.max(0.0, Math.min(1.0, v));
        out[k] =
            (float) (held <= 0.0031308 ? 12.92 * held : 1.055 * Math.pow(held, 1.0 / 2.4) - 0.055);
      }
      return new Color(out[0], out[1], out[2]);
    }
  }

  static double contrast(Color one, Color other) {
    double a = luminance(one);
    double b = luminance(other);
    return (Math.max(a, b) + 0.05) / (Math.min(a, b) + 0.05);
  }

  /** CIE L* of what a grey print shows. */
  static double lightness(Color c) {
    double y = luminance(c);
    return y > 216.0 / 24389.0 ? 116.0 * Math.cbrt(y) - 16.0 : y * 24389.0 / 27.0;
  }

  /** Relative luminance of an sRGB colour: W3C, WCAG 2.1, definitions. */
  static double luminance(Color c) {
    return 0.2126 * linear(c.getRed())
        + 0.7152 * linear(c.getGreen())
        + 0.0722 * linear(c.getBlue());
  }

  private static double linear(int level) {
    double v = level / 255.0;
    return v <= 0.04045 ? v / 12.92 : Math.pow((v + 0.055) / 1.055, 2.4);
  }
}
