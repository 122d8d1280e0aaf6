package lastinch.solver.geometry.cavity;

import java.util.List;
import lastinch.solver.casting.GapMap.Kind;
import lastinch.solver.casting.GapMap.Part;
import lastinch.solver.casting.Limb;
import lastinch.solver.casting.LimbCourse;
import lastinch.solver.casting.SectionForm;
import lastinch.solver.casting.Station;
import lastinch.solver.geometry.gating.LimbProfile;

/**
 * A limb whose section is swept along its axis; width and thickness run straight from station to
 * station. The measured edge does not change the sweep.
 *
 * @param swept the limb
 * @param x0 place of its first station [m]
 * @param y0 place of its first station [m]
 */
record SweptLimb(Limb swept, double x0, double y0) implements GapRegion, LimbCourse {
  @Override
  public Part part() {
    return new Part(Kind.PIECE, swept.name());
  }

  @Override
  public String limb() {
    return swept.name();
  }

  @Override
  public double length() {
    return swept.length();
  }

  @Override
  public double headingAt(double along) {
    return swept.heading();
  }

  double cos() {
    return StrictMath.cos(swept.heading());
  }

  double sin() {
    return StrictMath.sin(swept.heading());
  }

  @Override
  public double xAt(double along) {
    return x0 + along * cos();
  }

  @Override
  public double yAt(double along) {
    return y0 + along * sin();
  }

  @Override
  public double alongAt(double x, double y) {
    double s = (x - x0) * cos() + (y - y0) * sin();
    return Math.max(0.0, Math.min(swept.length(), s));
  }

  @Override
  public double gapAt(double x, double y) {
    double s = (x - x0) * cos() + (y - y0) * sin();
    if (s < 0.0 || s > swept.length()) {
      return 0.0;
    }
    List<Station> stations = swept.stations();
    double at = stations.get(0).at() + s;
    int k = LimbProfile.stretch(stations, at);
    Station p = stations.get(k);
    Station q = stations.get(k + 1);
    double share = (at - p.at()) / (q.at() - p.at());
    double width = p.width() + share * (q.width() - p.width());
    double across = 2.0 * ((y - y0) * cos() - (x - x0) * sin()) / width;
    if (Math.abs(across) >= 1.0) {
      return 0.0;
    }
    return (p.thickness() + share * (q.thickness() - p.thickness()))
        * form(swept.section(), across);
  }

  /** Gap against that in the middle [-], across from -1 to 1. */
  private static double form(SectionForm form, double across) {
    return switch (form) {
      case FLAT -> 1.0;
      case LENS -> 1.0 - across * across;
      case ROUND -> Math.sqrt(1.0 - across * across);
    };
  }

  @Override
  public PlanBox box() {
    double reach = 0.5 * swept.stations().stream().mapToDouble(Station::width).max().orElseThrow();
    return PlanBox.around(x0, y0, reach)
        .with(PlanBox.around(xAt(swept.length()), yAt(swept.length()), reach));
  }
}
