package lastinch.ui.chart.paper;

import java.awt.Color;
import java.awt.Font;
import java.awt.Graphics2D;
import java.awt.font.FontRenderContext;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import lastinch.ui.words.PlainLetters;

/** A sheet: what the picture says, of which plan and what it shows, the picture, its caption. */
public final class Paper {
  public static final double WIDE = 900.0;
  private static final double MARGIN = 16.0;
  public static final double INNER = WIDE - 2 * MARGIN;
  private static final double GAP = 8.0;
  private static final FontRenderContext CONTEXT = new FontRenderContext(null, true, true);

  private final Picture picture;
  private final List<String> message;
  private final List<String> about;
  private final List<String> caption;

  /**
   * A sheet.
   *
   * @param title of the plan
   * @param answer said where the picture has no message of its own
   */
  public Paper(String title, String answer, Picture picture) {
    this.picture = picture;
    String says = picture.message().isEmpty() ? answer : picture.message();
    this.message = wrapped(PlainLetters.of(says), Look.TITLE);
    this.about = wrapped(PlainLetters.of(title + ". " + picture.heading()), Look.SUBTITLE);
    this.caption = wrapped(picture.caption(), Look.CAPTION);
  }

  /** Height of the whole sheet. */
  public double tall() {
    return 2 * MARGIN
        + height(message, Look.TITLE)
        + height(about, Look.SUBTITLE)
        + height(caption, Look.CAPTION)
        + 2 * GAP
        + picture.tall();
  }

  public void draw(Graphics2D g) {
    g.setPaint(Look.PAPER);
    g.fill(new Rectangle2D.Double(0, 0, WIDE, tall()));
    double y = MARGIN;
    y = lines(g, message, Look.TITLE, Look.INK, y);
    y = lines(g, about, Look.SUBTITLE, Look.FAINT_INK, y) + GAP;
    picture.body().draw(g, new Rectangle2D.Double(MARGIN, y, INNER, picture.tall()));
    g.setClip(null);
    lines(g, caption, Look.CAPTION, Look.INK, y + picture.tall() + GAP);
  }

  private static double lines(Graphics2D g, List<String> lines, Font font, Color ink, double top) {
    g.setFont(font);
    g.setPaint(ink);
    double y = top;
    for (String line : lines) {
      g.drawString(line, (float) MARGIN, (float) (y + ascent(font)));
      y += step(font);
    }
    return y;
  }

  private static double height(List<String> lines, Font font) {
    return lines.size() * step(font);
  }

  private static double step(Font font) {
    return 1.32 * font.getSize2D();
  }

  private static double ascent(Font font) {
    return 1.05 * font.getSize2D();
  }

  /** Breadth of words in dots. */
  public static double wide(String text, Font font) {
    return font.getStringBounds(text, CONTEXT).getWidth();
  }

  private static List<String> wrapped(String text, Font font) {
    List<String> lines = new ArrayList<>();
    if (text.isEmpty()) {
      return lines;
    }
    StringBuilder line = new StringBuilder();
    for (String word : text.split(" ", -1)) {
      String longer = line.isEmpty() ? word : line + " " + word;
      if (!line.isEmpty() && wide(longer, font) > INNER) {
        lines.add(line.toString());
        line.setLength(0);
        line.append(word);
      } else {
        line.setLength(0);
        line.append(longer);
      }
    }
    lines.add(line.toString());
    return lines;
  }
}
