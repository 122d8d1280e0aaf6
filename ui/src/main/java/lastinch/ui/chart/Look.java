package lastinch.ui.chart;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Font;
import java.awt.Stroke;

/**
 * Paper and ink. Two inks that differ in lightness as well as in hue, so that a grey print and
 * every eye can tell them apart; and never by ink alone.
 */
final class Look {
  static final Color PAPER = new Color(0xFB, 0xF8, 0xF0);
  static final Color BAND = new Color(0xF0, 0xEA, 0xDB);

  /** Good ground of a map. */
  static final Color GOOD = new Color(0xBF, 0xDB, 0xC6);

  static final Color FROZEN = new Color(0xE6, 0xE2, 0xDA);
  static final Color INK = new Color(0x20, 0x1D, 0x1A);
  static final Color SECOND_INK = new Color(0x8A, 0x5A, 0x1E);
  static final Color FAINT_INK = new Color(0x6B, 0x64, 0x58);
  static final Color RULE = new Color(0xD8, 0xD0, 0xBE);

  static final Font TITLE = new Font(Font.SANS_SERIF, Font.BOLD, 17);
  static final Font NUMBER = new Font(Font.SANS_SERIF, Font.BOLD, 64);
  static final Font SUBTITLE = new Font(Font.SANS_SERIF, Font.PLAIN, 13);
  static final Font CAPTION = new Font(Font.SANS_SERIF, Font.PLAIN, 12);
  static final Font AXIS = new Font(Font.SANS_SERIF, Font.PLAIN, 13);
  static final Font TICK = new Font(Font.SANS_SERIF, Font.PLAIN, 12);
  static final Font LABEL = new Font(Font.SANS_SERIF, Font.BOLD, 13);
  static final Font LABEL_SMALL = new Font(Font.SANS_SERIF, Font.BOLD, 12);
  static final Font NAME = new Font(Font.SANS_SERIF, Font.ITALIC, 12);

  static final Stroke METAL = new BasicStroke(2.6f, BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND);
  static final Stroke FREEZING =
      new BasicStroke(
          2.2f, BasicStroke.CAP_BUTT, BasicStroke.JOIN_ROUND, 1f, new float[] {8f, 5f}, 0f);
  static final Stroke THIN = new BasicStroke(0.8f);
  static final Stroke HATCH = new BasicStroke(0.9f);
  static final Stroke OUTLINE =
      new BasicStroke(1.2f, BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND);
  static final Stroke FRONT = new BasicStroke(1.8f);
  static final Stroke DASHED =
      new BasicStroke(
          1.1f, BasicStroke.CAP_BUTT, BasicStroke.JOIN_ROUND, 1f, new float[] {4f, 3.5f}, 0f);
  static final Stroke FAINT_LAP =
      new BasicStroke(0.9f, BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND);
  static final Stroke PLAIN_LAP =
      new BasicStroke(1.9f, BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND);

  /** Strokes of further curves, told apart by their dashes. */
  static final Stroke[] EARLIER = {
    new BasicStroke(
        1.9f, BasicStroke.CAP_BUTT, BasicStroke.JOIN_ROUND, 1f, new float[] {9f, 4f}, 0f),
    new BasicStroke(
        1.9f, BasicStroke.CAP_BUTT, BasicStroke.JOIN_ROUND, 1f, new float[] {2f, 3f}, 0f),
    new BasicStroke(
        1.9f, BasicStroke.CAP_BUTT, BasicStroke.JOIN_ROUND, 1f, new float[] {10f, 3f, 2f, 3f}, 0f)
  };

  static final Stroke MARK_LAP =
      new BasicStroke(2.8f, BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND);
  static final Stroke SHUT = new BasicStroke(5f, BasicStroke.CAP_BUTT, BasicStroke.JOIN_ROUND);
  static final Stroke SHUT_GAP =
      new BasicStroke(2.4f, BasicStroke.CAP_BUTT, BasicStroke.JOIN_ROUND);
  static final Stroke MARK = new BasicStroke(3.2f, BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND);

  private Look() {}
}
