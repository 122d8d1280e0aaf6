package lastinch.ui.chart.paper;

import java.awt.geom.Rectangle2D;
import org.jfree.chart.JFreeChart;
import org.jfree.chart.axis.NumberAxis;
import org.jfree.chart.axis.NumberTickUnit;
import org.jfree.chart.plot.Plot;
import org.jfree.chart.plot.XYPlot;
import org.jfree.chart.ui.RectangleInsets;

/** Axes and plots as on ruled paper. */
public final class Sheet {
  public static final double TALL = 420.0;
  private static final double MOST_TICKS = 8.0;
  private static final double TICK_ROOM = 7.0;

  private Sheet() {}

  /** An axis with its quantity and unit. */
  public static NumberAxis axis(String label, double low, double high) {
    NumberAxis axis = new NumberAxis(label);
    axis.setRange(low, Math.max(high, low + 1e-9));
    axis.setLabelFont(Look.AXIS);
    axis.setTickLabelFont(Look.TICK);
    axis.setLabelPaint(Look.INK);
    axis.setTickLabelPaint(Look.INK);
    axis.setAxisLinePaint(Look.INK);
    axis.setTickMarkPaint(Look.INK);
    axis.setTickLabelInsets(new RectangleInsets(TICK_ROOM, TICK_ROOM, TICK_ROOM, TICK_ROOM));
    axis.setNumberFormatOverride(new PlainNumbers());
    axis.setTickUnit(new NumberTickUnit(step(axis.getRange().getLength())));
    return axis;
  }

  /** A step of 1, 2 or 5 times a power of ten that divides a length into at most eight. */
  public static double step(double length) {
    double power = Math.pow(10.0, Math.floor(Math.log10(length / MOST_TICKS)));
    for (double times : new double[] {1.0, 2.0, 5.0}) {
      if (length / (times * power) <= MOST_TICKS) {
        return times * power;
      }
    }
    return 10.0 * power;
  }

  public static XYPlot plot(NumberAxis across, NumberAxis up) {
    XYPlot plot = new XYPlot(null, across, up, null);
    plot.setBackgroundPaint(Look.PAPER);
    plot.setOutlinePaint(Look.INK);
    plot.setOutlineStroke(Look.THIN);
    plot.setDomainGridlinePaint(Look.RULE);
    plot.setRangeGridlinePaint(Look.RULE);
    plot.setDomainGridlineStroke(Look.THIN);
    plot.setRangeGridlineStroke(Look.THIN);
    plot.setAxisOffset(RectangleInsets.ZERO_INSETS);
    return plot;
  }

  /** A chart as the body of a picture. */
  public static Picture.Body body(Plot plot) {
    JFreeChart chart = new JFreeChart(null, null, plot, false);
    chart.setBackgroundPaint(Look.PAPER);
    chart.setPadding(new RectangleInsets(2.0, 0.0, 0.0, 12.0));
    return (g, area) -> chart.draw(g, area);
  }

  /** Place of a point of the plot on the paper. */
  public static double x(XYPlot plot, Rectangle2D area, double value) {
    return plot.getDomainAxis().valueToJava2D(value, area, plot.getDomainAxisEdge());
  }

  /** Height of a point of the plot on the paper. */
  public static double y(XYPlot plot, Rectangle2D area, double value) {
    return plot.getRangeAxis().valueToJava2D(value, area, plot.getRangeAxisEdge());
  }
}
