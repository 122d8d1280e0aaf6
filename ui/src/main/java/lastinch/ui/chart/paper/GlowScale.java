package lastinch.ui.chart.paper;

import java.awt.Color;

/**
 * Heat as the colour in which metal glows at it, drawn so that lightness rises evenly from the
 * coldest to the hottest: what looks lighter is hotter, in colour, in a grey print and to eyes that
 * do not tell red from green. Heat without a visible glow comes out grey.
 */
public final class GlowScale {
  /** CIE L* of both ends; neither is as dark as ink or as light as paper. */
  public static final double DARKEST = 38.0;

  public static final double LIGHTEST = 91.0;
  private static final int SHADES = 256;

  private final double coldest;
  private final double hottest;
  private final int[] shades = new int[SHADES];

  /**
   * A scale between two heats [K]; beyond them the end colours hold.
   *
   * @throws IllegalArgumentException when the second is not above the first
   */
  public GlowScale(double coldest, double hottest) {
    if (!(hottest > coldest) || !(coldest > 0.0)) {
      throw new IllegalArgumentException("no scale from " + coldest + " to " + hottest + " K");
    }
    this.coldest = coldest;
    this.hottest = hottest;
    for (int i = 0; i < SHADES; i++) {
      double share = i / (SHADES - 1.0);
      double[] rgb =
          Glow.screen(
              coldest + share * (hottest - coldest), DARKEST + share * (LIGHTEST - DARKEST));
      shades[i] = new Color((float) rgb[0], (float) rgb[1], (float) rgb[2]).getRGB();
    }
  }

  /** Lower end [K]. */
  public double coldest() {
    return coldest;
  }

  /** Upper end [K]. */
  public double hottest() {
    return hottest;
  }

  /** Colour of a heat [K] as a picture stores it, opaque. */
  public int rgb(double kelvin) {
    double share = (kelvin - coldest) / (hottest - coldest);
    return shades[(int) Math.rint(Math.max(0.0, Math.min(1.0, share)) * (SHADES - 1))];
  }

  /** Colour of a heat [K]. */
  public Color color(double kelvin) {
    return new Color(rgb(kelvin));
  }
}
