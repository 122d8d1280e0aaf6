package lastinch.ui.chart.pour;

import java.awt.Shape;
import java.awt.geom.Area;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import lastinch.ui.chart.paper.Spot3;
import lastinch.ui.chart.paper.View;

/** A channel or a part of the piece as a body: a middle line with its sizes along it. */
public final class DrawnBar {
  private static final double END_ON = 1e-6;

  /** Cosine of a bend that counts as none. */
  private static final double STRAIGHT = 0.98;

  /**
   * A point of the middle line.
   *
   * @param spot where it is
   * @param wide size in the parting plane, square to the line [m]
   * @param deep size square to the parting plane [m]
   */
  record Knot(Spot3 spot, double wide, double deep) {}

  /** Half the size drawn at a distance along the bar [m]. */
  @FunctionalInterface
  interface Half {
    double at(double s);
  }

  private final String name;
  private final List<Knot> knots;
  private final double[] along;

  DrawnBar(String name, List<Knot> knots) {
    this.name = name;
    this.knots = List.copyOf(knots);
    along = new double[knots.size()];
    for (int i = 1; i < along.length; i++) {
      along[i] = along[i - 1] + knots.get(i - 1).spot().distance(knots.get(i).spot());
    }
  }

  /** A bar of one size. */
  static DrawnBar straight(String name, Spot3 from, Spot3 to, double wide, double deep) {
    return new DrawnBar(name, List.of(new Knot(from, wide, deep), new Knot(to, wide, deep)));
  }

  public String name() {
    return name;
  }

  public double length() {
    return along[along.length - 1];
  }

  private int before(double s) {
    int i = 0;
    while (i < along.length - 2 && s > along[i + 1]) {
      i++;
    }
    return i;
  }

  private double share(int i, double s) {
    double part = along[i + 1] - along[i];
    return part > 0.0 ? Math.max(0.0, Math.min(1.0, (s - along[i]) / part)) : 0.0;
  }

  public Spot3 at(double s) {
    int i = before(s);
    double share = share(i, s);
    Spot3 a = knots.get(i).spot();
    Spot3 b = knots.get(i + 1).spot();
    return new Spot3(
        a.x() + share * (b.x() - a.x()),
        a.y() + share * (b.y() - a.y()),
        a.n() + share * (b.n() - a.n()));
  }

  /** Half the size that a view shows across the bar [m]. */
  public double half(View view, double s) {
    int i = before(s);
    double share = share(i, s);
    Knot a = knots.get(i);
    Knot b = knots.get(i + 1);
    return view == View.FACE
        ? 0.5 * (a.wide() + share * (b.wide() - a.wide()))
        : 0.5 * (a.deep() + share * (b.deep() - a.deep()));
  }

  /** Way along the bar as a view shows it, of length 1; null length when it is looked at end on. */
  double[] way(View view, double s) {
    return wayFrom(view, before(s));
  }

  private double[] wayFrom(View view, int i) {
    double u = knots.get(i + 1).spot().u() - knots.get(i).spot().u();
    double v = knots.get(i + 1).spot().v(view) - knots.get(i).spot().v(view);
    double size = Math.hypot(u, v);
    return size < END_ON ? new double[] {0.0, 0.0} : new double[] {u / size, v / size};
  }

  boolean isEndOn(View view) {
    double[] way = way(view, 0.5 * length());
    return way[0] == 0.0 && way[1] == 0.0;
  }

  /** Outline of a stretch as a view shows it [m]. */
  public Shape outline(View view, double from, double to) {
    return outline(view, from, to, s -> half(view, s));
  }

  /** Outline of a stretch with another size across. */
  public Shape outline(View view, double from, double to, Half half) {
    if (isEndOn(view)) {
      return endOn(view, from);
    }
    if (isBent(view, from, to)) {
      return bent(view, from, to, half);
    }
    List<Double> places = new ArrayList<>();
    places.add(from);
    for (double s : along) {
      if (s > from && s < to) {
        places.add(s);
      }
    }
    places.add(to);
    return band(view, places, half);
  }

  /** Band along given places. */
  Path2D band(View view, List<Double> places, Half half) {
    Path2D path = new Path2D.Double();
    for (int i = 0; i < places.size(); i++) {
      double[] p = beside(view, places.get(i), half.at(places.get(i)));
      if (i == 0) {
        path.moveTo(p[0], p[1]);
      } else {
        path.lineTo(p[0], p[1]);
      }
    }
    for (int i = places.size() - 1; i >= 0; i--) {
      double[] p = beside(view, places.get(i), -half.at(places.get(i)));
      path.lineTo(p[0], p[1]);
    }
    path.closePath();
    return path;
  }

  /** Point beside the middle line, to the left of the way along it. */
  double[] beside(View view, double s, double off) {
    double[] way = way(view, s);
    Spot3 p = at(s);
    return new double[] {p.u() - off * way[1], p.v(view) + off * way[0]};
  }

  private boolean isBent(View view, double from, double to) {
    for (int i = 1; i < along.length - 1; i++) {
      double[] a = wayFrom(view, i - 1);
      double[] b = wayFrom(view, i);
      if (along[i] > from && along[i] < to && a[0] * b[0] + a[1] * b[1] < STRAIGHT) {
        return true;
      }
    }
    return false;
  }

  /** Leg by leg, each a little longer at a bend, so that its corner is square and whole. */
  private Shape bent(View view, double from, double to, Half half) {
    Area all = new Area();
    for (int i = 0; i + 1 < along.length; i++) {
      double a = Math.max(from, along[i]);
      double b = Math.min(to, along[i + 1]);
      if (b <= a) {
        continue;
      }
      double before = i > 0 && a == along[i] ? half.at(a) : 0.0;
      double after = i + 2 < along.length && b == along[i + 1] ? half.at(b) : 0.0;
      double[] way = wayFrom(view, i);
      double middle = 0.5 * (a + b);
      Path2D leg = new Path2D.Double();
      double[][] corners = {
        corner(middle, a - before, half.at(a), view, way),
        corner(middle, b + after, half.at(b), view, way),
        corner(middle, b + after, -half.at(b), view, way),
        corner(middle, a - before, -half.at(a), view, way)
      };
      leg.moveTo(corners[0][0], corners[0][1]);
      for (int k = 1; k < corners.length; k++) {
        leg.lineTo(corners[k][0], corners[k][1]);
      }
      leg.closePath();
      all.add(new Area(leg));
    }
    return all;
  }

  private double[] corner(double middle, double s, double off, View view, double[] way) {
    Spot3 p = at(middle);
    double u = p.u() + (s - middle) * way[0];
    double v = p.v(view) + (s - middle) * way[1];
    return new double[] {u - off * way[1], v + off * way[0]};
  }

  private Shape endOn(View view, double s) {
    Spot3 p = at(s);
    double wide = half(View.FACE, s);
    double deep = half(View.EDGE, s);
    if (view == View.FACE) {
      return new Ellipse2D.Double(p.u() - wide, p.v(view) - wide, 2 * wide, 2 * wide);
    }
    return new Rectangle2D.Double(p.u() - wide, p.v(view) - deep, 2 * wide, 2 * deep);
  }
}
