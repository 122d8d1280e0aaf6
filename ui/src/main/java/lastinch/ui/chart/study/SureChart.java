package lastinch.ui.chart.study;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Line2D;
import java.awt.geom.Rectangle2D;
import java.util.List;
import lastinch.cases.plan.Plan;
import lastinch.solver.uncertainty.FillProbability;
import lastinch.solver.uncertainty.Influence;
import lastinch.ui.chart.paper.Look;
import lastinch.ui.chart.paper.Paper;
import lastinch.ui.chart.paper.Pens;
import lastinch.ui.chart.paper.Picture;
import lastinch.ui.words.Figures;
import lastinch.ui.words.PlainLetters;
import lastinch.ui.words.Sentences;
import lastinch.ui.words.study.StopPlaces;
import lastinch.ui.words.study.SureText;

/** Ten dots; where metal stops; what makes the days differ. */
public final class SureChart {
  private static final double DOT = 30.0;
  private static final double DOT_STEP = 44.0;
  private static final double DOTS = 92.0;

  private static final double STOPS = 190.0;
  private static final double TICKS = 52.0;
  private static final double ROW = 26.0;
  private static final double HEAD = 24.0;
  private static final double NAMES = 400.0;
  private static final double SHARES = 380.0;
  private static final double FILLS = 0.97;

  private final StopPlaces places;
  private final FillProbability sure;
  private final Sentences sentences;
  private final Figures figures;
  private final List<Influence> worth;

  private SureChart(Plan plan, FillProbability sure, Sentences sentences, Figures figures) {
    this.places = StopPlaces.of(plan.pourCase(), sure, StopPlaces.MANY);
    this.sure = sure;
    this.sentences = sentences;
    this.figures = figures;
    this.worth = SureText.worth(sure);
  }

  public static Picture of(Plan plan, FillProbability sure, Sentences sentences, Figures figures) {
    SureChart chart = new SureChart(plan, sure, sentences, figures);
    return new Picture(
        sentences.say("chance.chart.heading"),
        new SureText(sentences, figures).headline(sure),
        chart.worth.isEmpty() ? "" : sentences.say("chance.chart.caption"),
        DOTS + HEAD + STOPS + TICKS + HEAD + ROW * chart.worth.size() + TICKS,
        chart::draw);
  }

  private void draw(Graphics2D g, Rectangle2D area) {
    dots(g, area);
    double top = area.getY() + DOTS;
    stops(g, area, top);
    matters(g, area, top + HEAD + STOPS + TICKS);
  }

  /** The main number, and ten pours as dots. */
  private void dots(Graphics2D g, Rectangle2D area) {
    boolean known = SureText.isKnown(sure);
    int filled = known ? SureText.tenths(sure) : 0;
    double left = area.getX() + 6.0;
    if (known) {
      String number = figures.whole(perHundred(sure.fills()));
      g.setFont(Look.NUMBER);
      g.setPaint(Look.INK);
      g.drawString(number, (float) left, (float) (area.getY() + 62.0));
      double after = left + Paper.wide(number, Look.NUMBER) + 12.0;
      String words = sentences.say("chance.chart.of");
      write(g, words, Look.INK, after, area.getY() + 62.0);
      left = after + Paper.wide(words, Look.AXIS) + 50.0;
    }
    for (int i = 0; i < 10; i++) {
      Ellipse2D dot = new Ellipse2D.Double(left + i * DOT_STEP, area.getY() + 34.0, DOT, DOT);
      if (i < filled) {
        g.setPaint(Look.INK);
        g.fill(dot);
      } else {
        Pens.line(g, dot, Look.FAINT_INK, Look.DASHED);
      }
    }
  }

  private double perHundred(int days) {
    return 100.0 * days / Math.max(1, sure.days() - sure.silent());
  }

  /** Whole numbers of pours in a hundred, so rounded that all of them add up to a hundred. */
  private int[] hundred() {
    int n = places.stretches().size();
    double[] exact = new double[n + 1];
    for (int i = 0; i < n; i++) {
      exact[i] = perHundred(places.stretches().get(i).days());
    }
    // what fills keeps the number that is written large
    int left =
        100 - (int) Math.rint(perHundred(sure.fills())) - (int) Math.rint(perHundred(sure.apart()));
    int[] whole = new int[n];
    for (int i = 0; i < n; i++) {
      whole[i] = (int) exact[i];
      left -= whole[i];
    }
    for (; left > 0; left--) {
      int most = 0;
      for (int i = 1; i < n; i++) {
        most = exact[i] - whole[i] > exact[most] - whole[most] ? i : most;
      }
      if (n > 0) {
        whole[most]++;
      }
    }
    return whole;
  }

  /** Days on which metal stopped in each stretch, drawn as blocks standing on the piece. */
  private void stops(Graphics2D g, Rectangle2D area, double top) {
    write(
        g,
        sentences.say(places.fromThickEnd() ? "chance.chart.stops" : "chance.chart.stops.missing"),
        Look.FAINT_INK,
        area.getX(),
        top + 14.0);
    double left = area.getX() + 8.0;
    double wide = FILLS * area.getWidth() - 16.0;
    double ground = top + HEAD + STOPS;
    int[] hundred = hundred();
    double most = 1.0;
    int before = 0;
    for (int i = 0; i < hundred.length; i++) {
      boolean none = places.stretches().get(i).before();
      most = none ? most : Math.max(most, hundred[i]);
      before += none ? hundred[i] : 0;
    }
    double end = places.stretches().stream().mapToDouble(StopPlaces.Stretch::to).max().orElse(1.0);
    for (int i = 0; i < hundred.length; i++) {
      StopPlaces.Stretch s = places.stretches().get(i);
      if (s.before() || hundred[i] == 0) {
        continue;
      }
      double x = left + wide * s.from() / end;
      double tall = (STOPS - 20.0) * hundred[i] / most;
      Rectangle2D block =
          new Rectangle2D.Double(
              x + 1.0, ground - tall, wide * (s.to() - s.from()) / end - 2.0, tall);
      g.setPaint(Look.FROZEN);
      g.fill(block);
      Pens.line(g, block, Look.INK, Look.OUTLINE);
      String count = figures.whole(hundred[i]);
      double middle = block.getCenterX() - 0.5 * Paper.wide(count, Look.AXIS);
      write(g, count, Look.INK, middle, ground - tall - 4.0);
    }
    Pens.line(g, new Line2D.Double(left, ground, left + wide, ground), Look.INK, Look.OUTLINE);
    for (int i = 0; i <= StopPlaces.FEW; i++) {
      double x = left + wide * i / StopPlaces.FEW;
      String place =
          i == StopPlaces.FEW ? figures.ruler(end) : figures.rulerBare(end * i / StopPlaces.FEW);
      Pens.line(g, new Line2D.Double(x, ground, x, ground + 5.0), Look.INK, Look.THIN);
      g.setFont(Look.TICK);
      g.setPaint(Look.INK);
      double half = i == 0 ? 0.0 : 0.5 * Paper.wide(place, Look.TICK);
      g.drawString(place, (float) (x - half), (float) (ground + 18.0));
    }
    if (sure.apart() > 0) {
      String apart = figures.whole(perHundred(sure.apart()));
      String words = sentences.say("chance.chart.apart", "count", apart);
      write(g, words, Look.INK, left + 0.5 * wide, ground + 36.0);
    }
    if (before > 0) {
      String none = figures.whole(before);
      write(g, sentences.say("chance.chart.before", "count", none), Look.INK, left, ground + 36.0);
    }
  }

  /** A bar for each figure with the range of its share. */
  private void matters(Graphics2D g, Rectangle2D area, double top) {
    if (worth.isEmpty()) {
      return;
    }
    write(g, sentences.say("chance.chart.matters"), Look.FAINT_INK, area.getX(), top + 14.0);
    double left = area.getX() + NAMES;
    double y = top + HEAD;
    for (Influence i : worth) {
      String name = PlainLetters.of(sentences.say("unknown." + i.unknown().name()));
      write(g, name, Look.INK, area.getX() + 8.0, y + 16.0);
      Rectangle2D bar = new Rectangle2D.Double(left, y + 4.0, SHARES * i.alone(), ROW - 10.0);
      g.setPaint(Look.FROZEN);
      g.fill(bar);
      Pens.line(g, bar, Look.INK, Look.OUTLINE);
      double middle = bar.getCenterY();
      double low = left + SHARES * i.low();
      double high = left + SHARES * i.high();
      Pens.line(g, new Line2D.Double(low, middle, high, middle), Look.INK, Look.FRONT);
      Pens.line(g, new Line2D.Double(low, middle - 4, low, middle + 4), Look.INK, Look.FRONT);
      Pens.line(g, new Line2D.Double(high, middle - 4, high, middle + 4), Look.INK, Look.FRONT);
      write(g, figures.whole(100.0 * i.alone()), Look.INK, high + 10.0, y + 16.0);
      y += ROW;
    }
    Pens.line(g, new Line2D.Double(left, top + HEAD, left, y), Look.INK, Look.OUTLINE);
  }

  private static void write(Graphics2D g, String text, Color ink, double x, double y) {
    g.setFont(Look.AXIS);
    g.setPaint(ink);
    g.drawString(text, (float) x, (float) y);
  }
}
