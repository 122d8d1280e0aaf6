package lastinch.ui.chart;

import java.awt.BasicStroke;
import java.awt.Graphics2D;
import java.awt.Stroke;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import lastinch.solver.result.PassageRecord;
import lastinch.ui.words.Compared;
import lastinch.ui.words.Figures;
import lastinch.ui.words.Sentences;
import org.jfree.chart.plot.XYPlot;

/** When metal got to each place of the piece, one line for each of several plans. */
final class ComparedFronts {
  private static final double ROOM = 1.15;
  private static final float[][] DASHES = {{}, {9f, 5f}, {2f, 4f}, {12f, 4f, 2f, 4f}};

  private final Compared compared;
  private final Sentences sentences;
  private final Figures figures;

  private ComparedFronts(Compared compared, Sentences sentences, Figures figures) {
    this.compared = compared;
    this.sentences = sentences;
    this.figures = figures;
  }

  static Picture of(Compared compared, Sentences sentences, Figures figures) {
    return new ComparedFronts(compared, sentences, figures).draw();
  }

  /** Place on the piece's ruler and time of arrival, in rising place. */
  private List<double[]> points(Compared.Poured p) {
    List<double[]> points = new ArrayList<>();
    for (PassageRecord c : p.result().passages()) {
      boolean piece = c.role() == PassageRecord.Role.PIECE || c.role() == PassageRecord.Role.BOSS;
      for (int i = 0; piece && i < c.size(); i++) {
        if (Double.isFinite(c.arrivalTime(i))) {
          points.add(new double[] {figures.length(c.start() + c.at(i)), c.arrivalTime(i)});
        }
      }
    }
    points.sort((a, b) -> Double.compare(a[0], b[0]));
    return points;
  }

  private Picture draw() {
    double low = 0.0;
    double high = 1e-3;
    double time = 0.1;
    for (Compared.Poured p : compared.plans()) {
      for (PassageRecord c : p.result().passages()) {
        if (c.role() == PassageRecord.Role.PIECE || c.role() == PassageRecord.Role.BOSS) {
          low = Math.min(low, figures.length(c.start()));
          high = Math.max(high, figures.length(c.start() + c.length()));
        }
      }
      for (double[] point : points(p)) {
        time = Math.max(time, point[1]);
      }
    }
    XYPlot plot =
        Sheet.plot(
            Sheet.axis(
                sentences.say("compare.chart.axis", "unit", figures.lengthUnit()), low, high),
            Sheet.axis(sentences.say("chart.axis.time"), 0.0, time * ROOM));
    plot.addAnnotation(new Drawing(this::fronts));
    return new Picture(
        sentences.say("compare.chart.title"),
        sentences.say("compare.chart.caption"),
        Sheet.TALL,
        Sheet.body(plot));
  }

  private void fronts(Graphics2D g, XYPlot plot, Rectangle2D area) {
    for (int n = 0; n < compared.plans().size(); n++) {
      Compared.Poured p = compared.plans().get(n);
      List<double[]> points = points(p);
      if (points.isEmpty()) {
        continue;
      }
      double[] x = new double[points.size()];
      double[] y = new double[points.size()];
      for (int i = 0; i < x.length; i++) {
        x[i] = Sheet.x(plot, area, points.get(i)[0]);
        y[i] = Sheet.y(plot, area, points.get(i)[1]);
      }
      Pens.line(g, Pens.curve(x, y), n % 2 == 0 ? Look.INK : Look.SECOND_INK, stroke(n));
      int last = x.length - 1;
      Pens.lip(g, Ending.of(p.result()), x[last], y[last], Pens.Way.RIGHT);
      Pens.wordsAtEnd(g, area, p.letter(), Look.LABEL, Look.INK, x[last] - 8.0, y[last] - 14.0);
    }
  }

  private static Stroke stroke(int number) {
    float[] dash = DASHES[number % DASHES.length];
    return dash.length == 0
        ? Look.METAL
        : new BasicStroke(2.2f, BasicStroke.CAP_BUTT, BasicStroke.JOIN_ROUND, 1f, dash, 0f);
  }
}
