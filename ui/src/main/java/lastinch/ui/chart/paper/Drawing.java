package lastinch.ui.chart.paper;

import java.awt.Graphics2D;
import java.awt.geom.Rectangle2D;
import org.jfree.chart.annotations.AbstractXYAnnotation;
import org.jfree.chart.axis.ValueAxis;
import org.jfree.chart.plot.PlotRenderingInfo;
import org.jfree.chart.plot.XYPlot;

/** Something drawn by hand on a plot. */
public final class Drawing extends AbstractXYAnnotation {
  private static final long serialVersionUID = 1L;
  private final transient Pen pen;

  /** Draws on the paper of a plot. */
  @FunctionalInterface
  public interface Pen {
    void draw(Graphics2D g, XYPlot plot, Rectangle2D area);
  }

  public Drawing(Pen pen) {
    this.pen = pen;
  }

  @Override
  public void draw(
      Graphics2D g2,
      XYPlot plot,
      Rectangle2D dataArea,
      ValueAxis domainAxis,
      ValueAxis rangeAxis,
      int rendererIndex,
      PlotRenderingInfo info) {
    pen.draw(g2, plot, dataArea);
  }

  @Override
  public boolean equals(Object other) {
    return this == other;
  }

  @Override
  public int hashCode() {
    return System.identityHashCode(this);
  }
}
