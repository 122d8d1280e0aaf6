package lastinch.ui.chart.paper;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Font;
import java.awt.Stroke;
import java.util.List;

/**
 * Paper and ink. Two inks that differ in lightness as well as in hue, so that a grey print and
 * every eye can tell them apart; and never by ink alone.
 */
public final class Look {
  public static final Color PAPER = new Color(0xFB, 0xF8, 0xF0);
  public static final Color BAND = new Color(0xF0, 0xEA, 0xDB);

  /** Good ground of a map. */
  public static final Color GOOD = new Color(0xBF, 0xDB, 0xC6);

  public static final Color FROZEN = new Color(0xE6, 0xE2, 0xDA);
  public static final Color INK = new Color(0x20, 0x1D, 0x1A);
  public static final Color SECOND_INK = new Color(0x82, 0x54, 0x1B);
  public static final Color FAINT_INK = new Color(0x67, 0x60, 0x55);
  public static final Color RULE = new Color(0xD8, 0xD0, 0xBE);

  static final Font TITLE = new Font(Font.SANS_SERIF, Font.BOLD, 17);
  public static final Font NUMBER = new Font(Font.SANS_SERIF, Font.BOLD, 64);
  static final Font SUBTITLE = new Font(Font.SANS_SERIF, Font.PLAIN, 13);
  static final Font CAPTION = new Font(Font.SANS_SERIF, Font.PLAIN, 12);
  public static final Font AXIS = new Font(Font.SANS_SERIF, Font.PLAIN, 13);
  public static final Font TICK = new Font(Font.SANS_SERIF, Font.PLAIN, 12);
  public static final Font LABEL = new Font(Font.SANS_SERIF, Font.BOLD, 13);
  public static final Font LABEL_SMALL = new Font(Font.SANS_SERIF, Font.BOLD, 12);
  public static final Font NAME = new Font(Font.SANS_SERIF, Font.ITALIC, 12);

  public static final Stroke METAL =
      new BasicStroke(2.6f, BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND);
  public static final Stroke FREEZING =
      new BasicStroke(
          2.2f, BasicStroke.CAP_BUTT, BasicStroke.JOIN_ROUND, 1f, new float[] {8f, 5f}, 0f);
  public static final Stroke THIN = new BasicStroke(0.8f);
  public static final Stroke HATCH = new BasicStroke(0.9f);
  public static final Stroke OUTLINE =
      new BasicStroke(1.2f, BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND);
  public static final Stroke FRONT = new BasicStroke(1.8f);
  public static final Stroke DASHED =
      new BasicStroke(
          1.1f, BasicStroke.CAP_BUTT, BasicStroke.JOIN_ROUND, 1f, new float[] {4f, 3.5f}, 0f);
  public static final Stroke FAINT_LAP =
      new BasicStroke(0.9f, BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND);
  public static final Stroke PLAIN_LAP =
      new BasicStroke(1.9f, BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND);

  /** Strokes of further curves, told apart by their dashes. */
  public static final List<Stroke> EARLIER =
      List.of(
          new BasicStroke(
              1.9f, BasicStroke.CAP_BUTT, BasicStroke.JOIN_ROUND, 1f, new float[] {9f, 4f}, 0f),
          new BasicStroke(
              1.9f, BasicStroke.CAP_BUTT, BasicStroke.JOIN_ROUND, 1f, new float[] {2f, 3f}, 0f),
          new BasicStroke(
              1.9f,
              BasicStroke.CAP_BUTT,
              BasicStroke.JOIN_ROUND,
              1f,
              new float[] {10f, 3f, 2f, 3f},
              0f));

  public static final Stroke MARK_LAP =
      new BasicStroke(2.8f, BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND);
  public static final Stroke SHUT =
      new BasicStroke(5f, BasicStroke.CAP_BUTT, BasicStroke.JOIN_ROUND);
  public static final Stroke SHUT_GAP =
      new BasicStroke(2.4f, BasicStroke.CAP_BUTT, BasicStroke.JOIN_ROUND);
  public static final Stroke MARK =
      new BasicStroke(3.2f, BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND);

  private Look() {}
}
