package lastinch.solver.geometry.gating;

import java.util.List;
import java.util.OptionalDouble;
import lastinch.solver.casting.Station;

/** Width, thickness and edge of a limb between its stations, straight from one to the next. */
public final class LimbProfile {
  private LimbProfile() {}

  public static double widthAt(List<Station> stations, double at) {
    Station p = stations.get(stretch(stations, at));
    Station q = stations.get(stretch(stations, at) + 1);
    return p.width() + (q.width() - p.width()) * (at - p.at()) / (q.at() - p.at());
  }

  public static double thicknessAt(List<Station> stations, double at) {
    Station p = stations.get(stretch(stations, at));
    Station q = stations.get(stretch(stations, at) + 1);
    return p.thickness() + (q.thickness() - p.thickness()) * (at - p.at()) / (q.at() - p.at());
  }

  /**
   * Thickness measured 2 mm in from the rim, straight between the stations; empty unless both
   * stations about the place have it.
   */
  public static OptionalDouble edgeAt(List<Station> stations, double at) {
    Station p = stations.get(stretch(stations, at));
    Station q = stations.get(stretch(stations, at) + 1);
    if (p.edge().isEmpty() || q.edge().isEmpty()) {
      return OptionalDouble.empty();
    }
    double from = p.edge().getAsDouble();
    double to = q.edge().getAsDouble();
    return OptionalDouble.of(from + (to - from) * (at - p.at()) / (q.at() - p.at()));
  }

  /** Number of the station before a place, the last one never. */
  public static int stretch(List<Station> stations, double at) {
    int i = 0;
    while (i < stations.size() - 2 && at > stations.get(i + 1).at()) {
      i++;
    }
    return i;
  }
}
