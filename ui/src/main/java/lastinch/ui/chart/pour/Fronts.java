package lastinch.ui.chart.pour;

import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import lastinch.solver.result.PassageRecord;
import lastinch.solver.result.PourResult;
import lastinch.ui.chart.paper.Sheet;
import org.jfree.chart.plot.XYPlot;

/** When metal got to each place of boss and limbs, as lines over a {@link WayAxis}. */
public final class Fronts {
  private Fronts() {}

  /** Boss and limbs of a result. */
  public static List<PassageRecord> parts(PourResult result) {
    return result.passages().stream()
        .filter(p -> p.role() == PassageRecord.Role.BOSS || p.role() == PassageRecord.Role.PIECE)
        .toList();
  }

  /** Boss and limbs as parts of an axis. */
  public static List<WayAxis.Part> axisParts(PourResult result) {
    return parts(result).stream()
        .map(
            p ->
                new WayAxis.Part(
                    p.name(), p.length(), p.start(), p.role() == PassageRecord.Role.PIECE))
        .toList();
  }

  /** Lines without a gap or a cold shut in them, on the paper. */
  public static List<List<Point2D>> lines(
      Race race, PassageRecord part, XYPlot plot, Rectangle2D area) {
    List<List<Point2D>> lines = new ArrayList<>();
    for (int[] run : race.runs()) {
      List<Point2D> line = new ArrayList<>();
      for (int i = run[0]; i <= run[1]; i++) {
        line.add(point(part, race.at(i), race.arrives(i), plot, area));
      }
      lines.add(line);
    }
    return lines;
  }

  /** A place on a part's ruler and a time, on the paper. */
  public static Point2D point(
      PassageRecord part, double onRuler, double time, XYPlot plot, Rectangle2D area) {
    double base = plot.getDomainAxis() instanceof WayAxis axis ? axis.base(part.name()) : 0.0;
    return new Point2D.Double(
        Sheet.x(plot, area, base + onRuler - part.start()), Sheet.y(plot, area, time));
  }
}
