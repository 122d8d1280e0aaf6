package lastinch.ui.chart.paper;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.geom.Line2D;
import java.awt.geom.Rectangle2D;
import lastinch.solver.casting.PourCase;
import lastinch.ui.words.Figures;
import lastinch.ui.words.Sentences;

/** The scale of a glow picture: a ruler of heat with numbers, and what hatching and paper mean. */
public final class Swatches {
  public static final double TALL = 70.0;
  private static final double STRIP = 16.0;
  private static final double LONG = 420.0;
  private static final double BOX = 30.0;
  private static final int SHADES = 60;
  private static final double ROUND = 25.0;
  private static final int MOST_TICKS = 8;

  private final GlowScale scale;
  private final double starts;
  private final Sentences sentences;
  private final Figures figures;

  public Swatches(PourCase job, double hottest, Sentences sentences, Figures figures) {
    this.scale = scale(job, hottest);
    this.starts = job.metal().alloy().freezing().liquidus();
    this.sentences = sentences;
    this.figures = figures;
  }

  public GlowScale scale() {
    return scale;
  }

  /** From where the alloy ends to freeze or stops flowing to the heat it goes in at. */
  private static GlowScale scale(PourCase job, double hottest) {
    double stop = job.metal().alloy().flowStop().value();
    double low = job.metal().alloy().freezing().liquidus();
    while (low > 300.0 && job.metal().alloy().freezing().solidFraction(low) < stop) {
      low -= 1.0;
    }
    double from = ROUND * Math.floor(low / ROUND);
    double to = ROUND * Math.ceil(Math.max(hottest, from + ROUND) / ROUND);
    return new GlowScale(from, to);
  }

  public void draw(Graphics2D g, Rectangle2D area) {
    double x = area.getMinX();
    double y = area.getMinY() + 34.0;
    g.setFont(Look.NAME);
    g.setPaint(Look.INK);
    g.drawString(
        sentences.say("chart.scale", "unit", unit()), (float) x, (float) (area.getMinY() + 12.0));
    for (int i = 0; i < SHADES; i++) {
      double kelvin = scale.coldest() + (i + 0.5) / SHADES * (scale.hottest() - scale.coldest());
      g.setPaint(scale.color(kelvin));
      g.fill(new Rectangle2D.Double(x + i * LONG / SHADES, y, LONG / SHADES + 0.6, STRIP));
    }
    Pens.line(g, new Rectangle2D.Double(x, y, LONG, STRIP), Look.INK, Look.THIN);
    ticks(g, x, y);
    double box = x + LONG + 40.0;
    key(g, box, y, Look.FROZEN, true, sentences.say("chart.scale.frozen"));
    double next =
        box + BOX + 12.0 + Paper.wide(sentences.say("chart.scale.frozen"), Look.TICK) + 24;
    key(g, next, y, Look.PAPER, false, sentences.say("chart.scale.empty"));
  }

  private String unit() {
    String shown = figures.heat(scale.hottest());
    return shown.substring(shown.indexOf(' ') + 1);
  }

  private double x(double left, double kelvin) {
    return left + LONG * (kelvin - scale.coldest()) / (scale.hottest() - scale.coldest());
  }

  private void ticks(Graphics2D g, double left, double top) {
    double low = figures.heatValue(scale.coldest());
    double high = figures.heatValue(scale.hottest());
    double step = 10.0;
    while ((high - low) / step > MOST_TICKS) {
      step = step == 10.0 ? 20.0 : step == 20.0 ? 50.0 : 2.0 * step;
    }
    double per = (scale.hottest() - scale.coldest()) / (high - low);
    g.setFont(Look.TICK);
    for (double v = step * Math.ceil(low / step); v <= high; v += step) {
      double x = x(left, scale.coldest() + (v - low) * per);
      Pens.line(g, new Line2D.Double(x, top + STRIP, x, top + STRIP + 4.0), Look.INK, Look.THIN);
      String text = figures.whole(v);
      g.drawString(
          text, (float) (x - 0.5 * Paper.wide(text, Look.TICK)), (float) (top + STRIP + 17.0));
    }
    if (starts > scale.coldest() && starts < scale.hottest()) {
      double x = x(left, starts);
      Pens.line(g, new Line2D.Double(x, top - 3.0, x, top + STRIP + 3.0), Look.INK, Look.FRONT);
      String text = sentences.say("chart.scale.starts");
      g.setFont(Look.NAME);
      g.drawString(text, (float) (x + 4.0), (float) (top - 4.0));
    }
  }

  private static void key(
      Graphics2D g, double x, double y, Color ground, boolean hatched, String words) {
    Rectangle2D box = new Rectangle2D.Double(x, y, BOX, STRIP);
    g.setPaint(ground);
    g.fill(box);
    if (hatched) {
      Pens.hatch(g, box, Look.INK, Pens.FINE);
    }
    Pens.line(g, box, Look.INK, Look.THIN);
    g.setFont(Look.TICK);
    g.setPaint(Look.INK);
    g.drawString(words, (float) (x + BOX + 8.0), (float) (y + 12.0));
  }
}
