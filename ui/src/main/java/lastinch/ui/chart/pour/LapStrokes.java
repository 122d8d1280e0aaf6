package lastinch.ui.chart.pour;

import java.awt.Graphics2D;
import java.awt.Shape;
import java.awt.Stroke;
import java.awt.geom.Area;
import java.awt.geom.Path2D;
import java.util.Map;
import lastinch.solver.result.LapStretch;
import lastinch.solver.result.PassageRecord;
import lastinch.solver.result.PourResult;
import lastinch.ui.chart.paper.Frame;
import lastinch.ui.chart.paper.Look;
import lastinch.ui.chart.paper.Pens;
import lastinch.ui.chart.paper.View;

/** Lap lines as ink strokes across the metal, bowed the way the front went. */
final class LapStrokes {
  private static final double APART = 6e-3;
  private static final int POINTS = 12;
  private static final double BOW = 0.35;

  private final PourResult result;
  private final Map<String, DrawnBar> bars;

  LapStrokes(PourResult result, Map<String, DrawnBar> bars) {
    this.result = result;
    this.bars = bars;
  }

  void draw(Graphics2D g, View view, Frame frame, Area metal) {
    Shape before = g.getClip();
    g.clip(metal);
    for (LapStretch lap : result.laps()) {
      DrawnBar bar = bars.get(lap.passage());
      if (bar == null || bar.isEndOn(view)) {
        continue;
      }
      PassageRecord record = record(lap.passage());
      double apart = lap.worstIndex() < LapStretch.PLAIN ? 2.0 * APART : APART;
      for (double s = lap.from() + 0.5 * apart; s < lap.to(); s += apart) {
        boolean plain = lap.worstIndex() >= LapStretch.PLAIN;
        Stroke stroke =
            lap.worstIndex() >= LapStretch.HALTS
                ? Look.MARK_LAP
                : plain ? Look.PLAIN_LAP : Look.FAINT_LAP;
        double share = plain ? 1.0 : 0.7;
        Pens.line(g, frame.place(stroke(bar, view, s, share, way(record, s))), Look.INK, stroke);
      }
    }
    g.setClip(before);
  }

  private PassageRecord record(String name) {
    return result.passages().stream().filter(p -> p.name().equals(name)).findFirst().orElseThrow();
  }

  /** 1 where metal came up the ruler, -1 where it came down it. */
  private static double way(PassageRecord record, double s) {
    int i = 0;
    while (i < record.size() - 2 && record.at(i + 1) < s) {
      i++;
    }
    boolean up =
        !record.reached(i + 1)
            || (record.reached(i) && record.arrivalTime(i) <= record.arrivalTime(i + 1));
    return up ? 1.0 : -1.0;
  }

  private static Path2D stroke(DrawnBar bar, View view, double s, double share, double way) {
    double half = share * bar.half(view, s);
    Path2D path = new Path2D.Double();
    for (int i = 0; i <= POINTS; i++) {
      double off = 2.0 * i / POINTS - 1.0;
      double bow = view == View.FACE ? BOW * half * (1.0 - off * off - 0.5) : 0.0;
      double[] p = bar.beside(view, s + way * bow, off * half);
      if (i == 0) {
        path.moveTo(p[0], p[1]);
      } else {
        path.lineTo(p[0], p[1]);
      }
    }
    return path;
  }
}
