package lastinch.ui.chart.pour;

import java.awt.Graphics2D;
import java.awt.geom.Line2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import lastinch.ui.chart.paper.Labels;
import lastinch.ui.chart.paper.Look;
import lastinch.ui.chart.paper.Pens;
import lastinch.ui.chart.paper.Sheet;
import lastinch.ui.words.Figures;
import lastinch.ui.words.PlainLetters;
import org.jfree.chart.axis.AxisState;
import org.jfree.chart.axis.NumberAxis;
import org.jfree.chart.axis.NumberTick;
import org.jfree.chart.plot.XYPlot;
import org.jfree.chart.ui.RectangleEdge;
import org.jfree.chart.ui.RectangleInsets;
import org.jfree.chart.ui.TextAnchor;

/**
 * An axis along channels and parts of the piece, one after the other, each as long as it is; parts
 * of the piece carry their own rulers, so that a place reads as in the words.
 */
public final class WayAxis extends NumberAxis {
  private static final long serialVersionUID = 1L;
  private static final double TICKS_APART = 44.0;
  private static final double TICK_ROOM = 7.0;

  private final transient List<Part> parts;
  private final transient Figures figures;

  /**
   * A part of the way.
   *
   * @param name of channel or limb
   * @param length [m]
   * @param start of its ruler [m]
   * @param ruled whether its ruler is drawn
   */
  public record Part(String name, double length, double start, boolean ruled) {}

  public WayAxis(String label, List<Part> parts, Figures figures) {
    super(label);
    this.parts = List.copyOf(parts);
    this.figures = figures;
    setRange(0.0, Math.max(1e-6, parts.stream().mapToDouble(Part::length).sum()));
    setLabelFont(Look.AXIS);
    setTickLabelFont(Look.TICK);
    setLabelPaint(Look.INK);
    setTickLabelPaint(Look.INK);
    setAxisLinePaint(Look.INK);
    setTickMarkPaint(Look.INK);
    setTickLabelInsets(new RectangleInsets(TICK_ROOM, TICK_ROOM, TICK_ROOM, TICK_ROOM));
  }

  @Override
  public List<NumberTick> refreshTicks(
      Graphics2D g2, AxisState state, Rectangle2D dataArea, RectangleEdge edge) {
    double perMetre = dataArea.getWidth() / getRange().getLength();
    boolean metric = figures.lengthUnit().equals("mm");
    double step = metric ? 0.01 : 0.0254;
    for (int i = 0; step * perMetre < TICKS_APART; i++) {
      step *= metric && i % 3 == 1 ? 2.5 : 2.0;
    }
    List<NumberTick> ticks = new ArrayList<>();
    double base = 0.0;
    for (Part part : parts) {
      for (double s = 0.0; part.ruled() && s < part.length() - 0.6 * step; s += step) {
        ticks.add(tick(base + s, part.start() + s));
      }
      base += part.length();
    }
    Part last = parts.isEmpty() ? null : parts.get(parts.size() - 1);
    if (last != null && last.ruled()) {
      ticks.add(tick(base, last.start() + last.length()));
    }
    return ticks;
  }

  private NumberTick tick(double at, double onRuler) {
    return new NumberTick(
        at, figures.rulerBare(onRuler), TextAnchor.TOP_CENTER, TextAnchor.CENTER, 0.0);
  }

  /** Where a part begins on the axis [m]; negative for one that is not on it. */
  double base(String name) {
    double base = 0.0;
    for (Part part : parts) {
      if (part.name().equals(name)) {
        return base;
      }
      base += part.length();
    }
    return -1.0;
  }

  /** Grounds every second part, from the last but one on, and names them all at the top. */
  public void bands(Graphics2D g, XYPlot plot, Rectangle2D area, Labels labels) {
    double base = 0.0;
    List<Rectangle2D> bands = new ArrayList<>();
    for (int i = 0; i < parts.size(); i++) {
      double from = Sheet.x(plot, area, base);
      base += parts.get(i).length();
      double to = Sheet.x(plot, area, base);
      bands.add(new Rectangle2D.Double(from, area.getMinY(), to - from, area.getHeight()));
      if ((parts.size() - i) % 2 == 0) {
        g.setPaint(Look.BAND);
        g.fill(bands.get(i));
      }
      Pens.line(g, new Line2D.Double(to, area.getMinY(), to, area.getMaxY()), Look.RULE, Look.THIN);
    }
    for (int i = 0; i < parts.size(); i++) {
      double middle = bands.get(i).getCenterX();
      String name = PlainLetters.of(parts.get(i).name());
      labels.write(g, name, Look.NAME, Look.FAINT_INK, middle, area.getMinY() + 2.0, 0.0, 1.0);
    }
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof WayAxis axis && super.equals(other) && parts.equals(axis.parts);
  }

  @Override
  public int hashCode() {
    return Objects.hash(super.hashCode(), parts);
  }
}
