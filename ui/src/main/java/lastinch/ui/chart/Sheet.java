package lastinch.ui.chart;

import java.awt.Color;
import java.awt.geom.Rectangle2D;
import lastinch.ui.words.PlainLetters;
import org.jfree.chart.JFreeChart;
import org.jfree.chart.axis.NumberAxis;
import org.jfree.chart.plot.XYPlot;
import org.jfree.chart.title.TextTitle;
import org.jfree.chart.ui.HorizontalAlignment;
import org.jfree.chart.ui.RectangleEdge;
import org.jfree.chart.ui.RectangleInsets;

/** A sheet of paper with two axes, a title above and a caption below. */
final class Sheet {
  private static final double MARGIN = 14.0;
  private static final double TICK_ROOM = 7.0;

  private Sheet() {}

  /** An axis with its quantity and unit. */
  static NumberAxis axis(String label, double low, double high) {
    NumberAxis axis = new NumberAxis(label);
    axis.setRange(low, high);
    axis.setLabelFont(Look.AXIS);
    axis.setTickLabelFont(Look.TICK);
    axis.setLabelPaint(Look.INK);
    axis.setTickLabelPaint(Look.INK);
    axis.setAxisLinePaint(Look.INK);
    axis.setTickMarkPaint(Look.INK);
    axis.setTickLabelInsets(new RectangleInsets(TICK_ROOM, TICK_ROOM, TICK_ROOM, TICK_ROOM));
    axis.setNumberFormatOverride(new PlainNumbers());
    return axis;
  }

  static XYPlot plot(NumberAxis across, NumberAxis up) {
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

  static JFreeChart chart(XYPlot plot, String title, String answer, String caption) {
    JFreeChart chart = new JFreeChart(PlainLetters.of(title), Look.TITLE, plot, false);
    chart.setBackgroundPaint(Look.PAPER);
    chart.setPadding(new RectangleInsets(MARGIN, MARGIN, MARGIN, MARGIN));
    left(chart.getTitle(), Look.INK);
    TextTitle sub = new TextTitle(answer, Look.SUBTITLE);
    left(sub, Look.INK);
    sub.setMargin(2.0, 0.0, 8.0, 0.0);
    chart.addSubtitle(sub);
    TextTitle foot = new TextTitle(caption, Look.CAPTION);
    foot.setPosition(RectangleEdge.BOTTOM);
    left(foot, Look.INK);
    foot.setMargin(10.0, 0.0, 0.0, 0.0);
    chart.addSubtitle(foot);
    return chart;
  }

  private static void left(TextTitle title, Color ink) {
    title.setPaint(ink);
    title.setHorizontalAlignment(HorizontalAlignment.LEFT);
    title.setTextAlignment(HorizontalAlignment.LEFT);
    title.setExpandToFitSpace(true);
  }

  /** Place of a point of the plot on the paper. */
  static double x(XYPlot plot, Rectangle2D area, double value) {
    return plot.getDomainAxis().valueToJava2D(value, area, plot.getDomainAxisEdge());
  }

  /** Height of a point of the plot on the paper. */
  static double y(XYPlot plot, Rectangle2D area, double value) {
    return plot.getRangeAxis().valueToJava2D(value, area, plot.getRangeAxisEdge());
  }
}
