package lastinch.validation;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Font;
import java.awt.geom.Ellipse2D;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.Base64;
import org.jfree.chart.ChartUtils;
import org.jfree.chart.JFreeChart;
import org.jfree.chart.axis.LogarithmicAxis;
import org.jfree.chart.axis.NumberAxis;
import org.jfree.chart.plot.XYPlot;
import org.jfree.chart.renderer.xy.XYLineAndShapeRenderer;
import org.jfree.data.xy.XYSeries;
import org.jfree.data.xy.XYSeriesCollection;

/** A curve as a line with rings on it: the line is the source, the rings are the product. */
final class CurveChart {
  private static final int WIDE = 560;
  private static final int TALL = 300;
  private static final int SHARP = 2;
  private static final Color INK = new Color(0x11, 0x11, 0x11);
  private static final Font TICKS = new Font(Font.SANS_SERIF, Font.PLAIN, 12);
  private static final Font AXIS = new Font(Font.SANS_SERIF, Font.PLAIN, 13);

  private CurveChart() {}

  /** The chart as an image written out in the page itself. */
  static String dataUri(StudyCurve curve) {
    XYSeries expected = new XYSeries("expected");
    XYSeries got = new XYSeries("got");
    for (StudyCurve.Point p : curve.points()) {
      expected.add(p.at(), p.expected());
      got.add(p.at(), p.got());
    }
    XYSeriesCollection data = new XYSeriesCollection();
    data.addSeries(expected);
    data.addSeries(got);
    for (StudyCurve.Point p : curve.points()) {
      if (p.isRange()) {
        data.addSeries(range(p, data.getSeriesCount()));
      }
    }
    XYLineAndShapeRenderer pens = new XYLineAndShapeRenderer(true, false);
    pens.setSeriesPaint(0, INK);
    pens.setSeriesStroke(0, new BasicStroke(1.6f));
    pens.setSeriesLinesVisible(1, false);
    pens.setSeriesShapesVisible(1, true);
    pens.setSeriesShape(1, new Ellipse2D.Double(-4.5, -4.5, 9.0, 9.0));
    pens.setSeriesShapesFilled(1, false);
    pens.setSeriesPaint(1, INK);
    pens.setSeriesOutlineStroke(1, new BasicStroke(1.4f));
    for (int i = 2; i < data.getSeriesCount(); i++) {
      pens.setSeriesPaint(i, INK);
      pens.setSeriesStroke(i, new BasicStroke(0.7f));
    }
    boolean byRatio = curve.isByRatio();
    XYPlot plot = new XYPlot(data, axis(curve.across(), byRatio), axis(curve.up(), byRatio), pens);
    plot.setBackgroundPaint(Color.WHITE);
    plot.setDomainGridlinePaint(Color.LIGHT_GRAY);
    plot.setRangeGridlinePaint(Color.LIGHT_GRAY);
    JFreeChart chart = new JFreeChart(null, null, plot, false);
    chart.setBackgroundPaint(Color.WHITE);
    ByteArrayOutputStream png = new ByteArrayOutputStream();
    try {
      BufferedImage image = chart.createBufferedImage(WIDE * SHARP, TALL * SHARP, WIDE, TALL, null);
      ChartUtils.writeBufferedImageAsPNG(png, image);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return "data:image/png;base64," + Base64.getEncoder().encodeToString(png.toByteArray());
  }

  /** A thin line from end to end of a point's range. */
  private static XYSeries range(StudyCurve.Point point, int key) {
    XYSeries line = new XYSeries(key);
    line.add(point.at(), point.low());
    line.add(point.at(), point.high());
    return line;
  }

  private static NumberAxis axis(String label, boolean byRatio) {
    NumberAxis axis = byRatio ? new LogarithmicAxis(label) : new NumberAxis(label);
    axis.setAutoRangeIncludesZero(false);
    axis.setLabelFont(AXIS);
    axis.setTickLabelFont(TICKS);
    axis.setLabelPaint(INK);
    axis.setTickLabelPaint(INK);
    return axis;
  }
}
