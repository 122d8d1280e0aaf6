package lastinch.ui.chart.pour;

import java.util.ArrayList;
import java.util.List;
import lastinch.solver.casting.Limb;
import lastinch.solver.casting.Station;
import lastinch.solver.geometry.gating.LimbEnds;
import lastinch.solver.geometry.gating.LimbProfile;
import lastinch.ui.chart.paper.Spot3;

/**
 * Middle line of a limb seen from above: straight along its heading, but bowed evenly where limbs
 * of other lengths join at one tip, so that every limb keeps its length and the ring closes.
 */
public final class LimbLine {
  /** Straight legs of a bowed line. */
  private static final int LEGS = 48;

  private static final int HALVINGS = 60;

  private final Spot3 start;
  private final double length;
  private final double chord;
  private final double bow;

  /**
   * A line.
   *
   * @param start of its first station
   * @param length along it [m]
   * @param chord direction from its start to its end [rad]
   * @param bow angle between the line at its start and its chord, left positive [rad]
   */
  private LimbLine(Spot3 start, double length, double chord, double bow) {
    this.start = start;
    this.length = length;
    this.chord = chord;
    this.bow = bow;
  }

  /** The line of a limb that starts at a place, among all limbs of the piece. */
  public static LimbLine of(Limb limb, Spot3 start, List<Limb> limbs) {
    LimbEnds ends = new LimbEnds(limbs);
    String tip = ends.end(limb);
    String root = ends.start(limb);
    if (tip.equals(root)) {
      double side = limb.heading() < 0.0 ? -1.0 : 1.0;
      return new LimbLine(start, limb.length(), limb.heading() - side * Math.PI, side * Math.PI);
    }
    List<Limb> joined =
        limbs.stream().filter(l -> ends.start(l).equals(root) && ends.end(l).equals(tip)).toList();
    if (joined.size() < 2) {
      return new LimbLine(start, limb.length(), limb.heading(), 0.0);
    }
    double ahead = joined.stream().mapToDouble(Limb::heading).average().orElse(0.0);
    double apart =
        joined.stream()
            .mapToDouble(l -> reach(l.length(), Math.min(Math.PI, Math.abs(l.heading() - ahead))))
            .min()
            .orElse(limb.length());
    double side = limb.heading() < ahead ? -1.0 : 1.0;
    return new LimbLine(start, limb.length(), ahead, side * bow(limb.length(), apart));
  }

  /** Distance from start to end of a line of a length bowed by an angle. */
  private static double reach(double length, double bow) {
    return bow < 1e-9 ? length : length / LEGS * Math.sin(bow) / Math.sin(bow / LEGS);
  }

  /** The bow that brings the end of a line so near to its start. */
  private static double bow(double length, double apart) {
    double low = 0.0;
    double high = Math.PI;
    for (int i = 0; i < HALVINGS; i++) {
      double middle = 0.5 * (low + high);
      if (reach(length, middle) > apart) {
        low = middle;
      } else {
        high = middle;
      }
    }
    return low < 1e-6 ? 0.0 : low;
  }

  /** Distances along the line at which it bends [m]. */
  List<Double> bends() {
    List<Double> bends = new ArrayList<>();
    for (int k = 1; bow != 0.0 && k < LEGS; k++) {
      bends.add(length * k / LEGS);
    }
    return bends;
  }

  /** Place at a distance along the line [m]. */
  public Spot3 at(double s) {
    Spot3 spot = start;
    double leg = length / LEGS;
    double left = s;
    for (int k = 0; k < LEGS && left > 0.0; k++) {
      double angle = chord + bow * (1.0 - (2.0 * k + 1.0) / LEGS);
      double part = k == LEGS - 1 ? left : Math.min(leg, left);
      spot = spot.plus(part, new Spot3(Math.cos(angle), Math.sin(angle), 0.0));
      left -= leg;
    }
    return spot;
  }

  /** The limb as a body along this line. */
  public DrawnBar bar(Limb limb) {
    List<Station> stations = limb.stations();
    double first = stations.get(0).at();
    List<Double> places = new ArrayList<>(bends());
    stations.forEach(s -> places.add(s.at() - first));
    return new DrawnBar(
        limb.name(),
        places.stream()
            .distinct()
            .sorted()
            .map(
                s ->
                    new DrawnBar.Knot(
                        at(s),
                        LimbProfile.widthAt(stations, first + s),
                        LimbProfile.thicknessAt(stations, first + s)))
            .toList());
  }
}
