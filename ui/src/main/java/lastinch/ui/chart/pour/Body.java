package lastinch.ui.chart.pour;

import java.awt.geom.Path2D;
import java.util.ArrayList;
import java.util.List;
import lastinch.solver.result.EdgeStretch;
import lastinch.solver.result.StopReason;
import lastinch.ui.chart.paper.Pens;
import lastinch.ui.chart.paper.View;

/**
 * One stretch of metal of the piece as it comes out of the mould.
 *
 * @param bar the part of the piece it lies in
 * @param from [m] along it
 * @param to [m]
 * @param low shape of its end at {@code from}; {@link Pens.Lip#FULL} where the mould ends it
 * @param high shape of its end at {@code to}
 */
public record Body(DrawnBar bar, double from, double to, Pens.Lip low, Pens.Lip high) {
  /** Breadth of a rim that stayed open: a plan gives the edge 2 mm in. */
  private static final double RIM = 2e-3;

  /** Most of the half size that a rounded rim takes away. */
  private static final double MOST = 0.45;

  private static final int STEPS = 60;
  private static final int LIP_STEPS = 10;
  private static final int TEETH = 5;

  /** Shape of a lip for the reason metal stopped. */
  public static Pens.Lip lip(StopReason reason) {
    return switch (reason) {
      case NO_METAL -> Pens.Lip.LEVEL;
      case AIR -> Pens.Lip.RAGGED;
      case SLUSH, SKIN, FROZE_UPSTREAM, CAPILLARITY -> Pens.Lip.ROUNDED;
    };
  }

  /** Outline in a view; the rims of the given stretches are drawn in where they are rounded. */
  Path2D outline(View view, List<EdgeStretch> edges) {
    List<Double> places = new ArrayList<>();
    double lowLip = lipLength(view, from, low);
    double highLip = lipLength(view, to, high);
    for (int i = 0; i <= LIP_STEPS; i++) {
      places.add(from + lowLip * (1.0 - Math.cos(0.5 * Math.PI * i / LIP_STEPS)));
    }
    for (int i = 1; i < STEPS; i++) {
      places.add(from + lowLip + (to - highLip - from - lowLip) * i / STEPS);
    }
    for (int i = LIP_STEPS; i >= 0; i--) {
      places.add(to - highLip * (1.0 - Math.cos(0.5 * Math.PI * i / LIP_STEPS)));
    }
    return bar.band(view, places, s -> half(view, s, edges, lowLip, highLip));
  }

  private double half(View view, double s, List<EdgeStretch> edges, double lowLip, double highLip) {
    double half = bar.half(view, s);
    if (view == View.FACE && isRounded(s, edges)) {
      half -= Math.min(RIM, MOST * half);
    }
    return half * Math.min(share(s - from, lowLip), share(to - s, highLip));
  }

  private boolean isRounded(double s, List<EdgeStretch> edges) {
    for (EdgeStretch e : edges) {
      boolean here = e.passage().equals(bar.name()) && s >= e.from() && s <= e.to();
      if (here && e.state() == EdgeStretch.State.ROUNDED) {
        return true;
      }
    }
    return false;
  }

  /** Share of the half size that a round end leaves at a distance from its top. */
  private static double share(double off, double lip) {
    if (lip <= 0.0 || off >= lip) {
      return 1.0;
    }
    double inwards = 1.0 - Math.max(0.0, off) / lip;
    return Math.sqrt(Math.max(0.0, 1.0 - inwards * inwards));
  }

  private double lipLength(View view, double s, Pens.Lip lip) {
    return lip == Pens.Lip.ROUNDED ? Math.min(0.9 * bar.half(view, s), 0.3 * (to - from)) : 0.0;
  }

  /** A ragged end as a saw line across, in a view, to be cut out of the metal. */
  Path2D teeth(View view, boolean atHigh) {
    double s = atHigh ? to : from;
    double inwards = atHigh ? -1.0 : 1.0;
    double half = bar.half(view, s);
    double deep = Math.min(0.35 * half, 0.2 * (to - from));
    Path2D path = new Path2D.Double();
    for (int i = 0; i <= 2 * TEETH; i++) {
      double off = half * (1.0 - i / (double) TEETH);
      double[] p = bar.beside(view, s + (i % 2 == 0 ? 0.0 : inwards * deep), off);
      if (i == 0) {
        path.moveTo(p[0], p[1]);
      } else {
        path.lineTo(p[0], p[1]);
      }
    }
    path.closePath();
    return path;
  }
}
