package lastinch.solver.casting;

import java.util.List;
import java.util.Objects;

/**
 * A long part of the piece, by stations.
 *
 * @param name unique in the piece; a piece by plain stations has one limb, {@link #ONLY}
 * @param stations at least two, {@code at} rising from 0
 * @param section shape across
 * @param from where its first station sits: empty for the start of the piece, else a boss or limb
 *     end
 * @param to what its last station joins: empty for a closed tip, else a boss or limb end
 * @param heading direction seen from above (cope side) against the piece's own axis [rad], left
 *     positive
 */
public record Limb(
    String name,
    List<Station> stations,
    SectionForm section,
    String from,
    String to,
    double heading) {
  /** Name of the limb of a piece that was given by plain stations. */
  public static final String ONLY = "piece";

  public Limb {
    Objects.requireNonNull(name, "name");
    Objects.requireNonNull(section, "section");
    Objects.requireNonNull(from, "from");
    Objects.requireNonNull(to, "to");
    stations = List.copyOf(stations);
    if (stations.size() < 2) {
      throw new IllegalArgumentException("a limb needs two stations, got " + stations.size());
    }
    for (int i = 1; i < stations.size(); i++) {
      if (stations.get(i).at() <= stations.get(i - 1).at()) {
        throw new IllegalArgumentException("stations must rise, broken at number " + i);
      }
    }
  }

  /** Distance from first to last station [m]. */
  public double length() {
    return stations.get(stations.size() - 1).at() - stations.get(0).at();
  }

  public Limb withStations(List<Station> other) {
    return new Limb(name, other, section, from, to, heading);
  }
}
