package lastinch.ui.chart.paper;

import java.awt.image.BufferedImage;
import java.util.Objects;

/**
 * A map of a plane field as dots: paper where nothing is, glow where metal flows, hatching where it
 * does not flow any more. One dot of the field may become several dots of the picture.
 */
public final class GlowRaster {
  /** Distance of the hatching lines and their breadth in dots of the picture. */
  private static final int GAP = 8;

  private static final int BREADTH = 2;

  /** What a place holds. */
  public enum Holds {
    /** Cavity without metal. */
    NOTHING,
    /** Metal that flows. */
    FLOWING,
    /** Metal that does not flow any more. */
    FROZEN,
    /** Outside the cavity: left as it is below the map. */
    OUTSIDE
  }

  /** Field by place; the first row is the lowest. */
  public interface Field {
    /** Places across. */
    int across();

    /** Places up. */
    int up();

    /** What a place holds. */
    Holds holds(int i, int j);

    /** Heat of its metal [K]; asked only where metal flows. */
    double kelvin(int i, int j);
  }

  private final GlowScale scale;
  private final int dots;

  /**
   * A way to draw fields.
   *
   * @param scale colours
   * @param dots of the picture to each place of the field, at least 1
   */
  public GlowRaster(GlowScale scale, int dots) {
    this.scale = Objects.requireNonNull(scale, "scale");
    if (dots < 1) {
      throw new IllegalArgumentException("dots = " + dots + ", at least 1");
    }
    this.dots = dots;
  }

  /** Draws a field; clear where it is outside. */
  public BufferedImage image(Field field) {
    int wide = field.across() * dots;
    int tall = field.up() * dots;
    BufferedImage image = new BufferedImage(wide, tall, BufferedImage.TYPE_INT_ARGB);
    int[] row = new int[wide];
    for (int y = 0; y < tall; y++) {
      int j = field.up() - 1 - y / dots;
      for (int x = 0; x < wide; x++) {
        row[x] = dot(field, x / dots, j, x, y);
      }
      image.getRaster().setDataElements(0, y, wide, 1, row);
    }
    return image;
  }

  private int dot(Field field, int i, int j, int x, int y) {
    return switch (field.holds(i, j)) {
      case OUTSIDE -> 0;
      case NOTHING -> Look.PAPER.getRGB();
      case FLOWING -> scale.rgb(field.kelvin(i, j));
      case FROZEN -> (x + y) % GAP < BREADTH ? Look.INK.getRGB() : Look.FROZEN.getRGB();
    };
  }
}
