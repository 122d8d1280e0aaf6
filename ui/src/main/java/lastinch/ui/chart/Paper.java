package lastinch.ui.chart;

import java.awt.Color;
import java.awt.Font;
import java.awt.Graphics2D;
import java.awt.font.FontRenderContext;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import lastinch.ui.words.PlainLetters;

/** A sheet with a title and the verdict above a picture and its caption below. */
final class Paper {
  static final double WIDE = 900.0;
  private static final double MARGIN = 16.0;
  static final double INNER = WIDE - 2 * MARGIN;
  private static final double GAP = 8.0;
  private static final FontRenderContext CONTEXT = new FontRenderContext(null, true, true);

  private final Picture picture;
  private final List<String> title;
  private final List<String> answer;
  private final List<String> caption;

  Paper(String title, String answer, Picture picture) {
    this.picture = picture;
    this.title = wrapped(PlainLetters.of(title), Look.TITLE);
    this.answer = wrapped(answer, Look.SUBTITLE);
    this.caption = wrapped(picture.caption(), Look.CAPTION);
  }

  /** Height of the whole sheet. */
  double tall() {
    return 2 * MARGIN
        + height(title, Look.TITLE)
        + height(answer, Look.SUBTITLE)
        + height(caption, Look.CAPTION)
        + 2 * GAP
        + picture.tall();
  }

  void draw(Graphics2D g) {
    g.setPaint(Look.PAPER);
    g.fill(new Rectangle2D.Double(0, 0, WIDE, tall()));
    double y = MARGIN;
    y = lines(g, title, Look.TITLE, Look.INK, y);
    y = lines(g, answer, Look.SUBTITLE, Look.INK, y) + GAP;
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
  static double wide(String text, Font font) {
    return font.getStringBounds(text, CONTEXT).getWidth();
  }

  private static List<String> wrapped(String text, Font font) {
    List<String> lines = new ArrayList<>();
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
