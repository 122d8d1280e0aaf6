package lastinch.solver.levers;

import static lastinch.solver.levers.LeverMaker.lever;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import lastinch.solver.casting.Limb;
import lastinch.solver.casting.PourCase;
import lastinch.solver.casting.Station;
import lastinch.solver.levers.Bound.Reason;

/** Levers of the piece: thicker all over, thicker where it is thinnest, thicker at its rim. */
final class PieceLevers {
  /** What is added on a thin piece and filed off again [m]; common practice, no source. */
  private static final double FILED = 1.5e-3;

  /** Thinner is not cast by gravity [m]; the limit of case files is 0.2 mm. */
  private static final double THINNEST = 0.4e-3;

  static final List<LeverEntry> ENTRIES =
      List.of(
          new LeverEntry("thicker", PieceLevers::thicker),
          new LeverEntry("thinnest", PieceLevers::thinnest),
          new LeverEntry("edge", PieceLevers::edge));

  private PieceLevers() {}

  private static double least(PourCase job) {
    return job.piece().limbs().stream()
        .flatMap(l -> l.stations().stream())
        .mapToDouble(Station::thickness)
        .min()
        .orElseThrow();
  }

  private static List<Lever> thicker(PourCase job, Owned owned) {
    double spare = least(job) - THINNEST;
    return List.of(
        lever("thicker", JobParameter.THICKER, job)
            .physical(-Math.max(0.0, spare), 0.05)
            .practical(
                Bound.practice(-Math.max(0.0, 0.8 * spare), Reason.THINNEST),
                Bound.practice(FILED, Reason.FILING))
            .marks(0.0, owned.marks().calipers())
            .effort(Effort.ON_THE_PATTERN)
            .make());
  }

  /** No place of the first limb thinner than the value; where it was thicker it stays. */
  private static List<Lever> thinnest(PourCase job, Owned owned) {
    Limb limb = job.piece().limbs().get(0);
    double least = limb.stations().stream().mapToDouble(Station::thickness).min().orElseThrow();
    double most = limb.stations().stream().mapToDouble(Station::thickness).max().orElseThrow();
    if (most - least < owned.marks().calipers()) {
      return List.of();
    }
    return List.of(
        lever(
                "thinnest",
                JobParameter.stations(ParameterUnit.LENGTH, least, PieceLevers::raised),
                job)
            .physical(least, most)
            .practical(
                Bound.practice(least, Reason.THINNEST),
                Bound.practice(Math.min(most, least + FILED), Reason.FILING))
            .marks(least, owned.marks().calipers())
            .effort(Effort.ON_THE_PATTERN)
            .make());
  }

  /** Stations raised to a least thickness, with one more where the old surface comes through. */
  static List<Station> raised(List<Station> stations, double least) {
    List<Station> all = new ArrayList<>();
    for (int i = 0; i < stations.size(); i++) {
      Station here = stations.get(i);
      if (i > 0) {
        Station before = stations.get(i - 1);
        double a = before.thickness() - least;
        double b = here.thickness() - least;
        if (a * b < 0.0) {
          Station met = between(before, here, a / (a - b), least);
          // a crossing within rounding of a station is that station
          if (met.at() > before.at() && met.at() < here.at()) {
            all.add(met);
          }
        }
      }
      all.add(here.with(Math.max(least, here.thickness()), here.edge()));
    }
    return all;
  }

  private static Station between(Station a, Station b, double share, double thickness) {
    OptionalDouble edge =
        a.edge().isPresent() && b.edge().isPresent()
            ? OptionalDouble.of(
                Math.min(thickness, mix(a.edge().getAsDouble(), b.edge().getAsDouble(), share)))
            : OptionalDouble.empty();
    return new Station(
        mix(a.at(), b.at(), share), mix(a.width(), b.width(), share), thickness, edge);
  }

  private static double mix(double a, double b, double share) {
    return a + share * (b - a);
  }

  /** Added to the rim alone, at most up to the middle's thickness. */
  private static List<Lever> edge(PourCase job, Owned owned) {
    boolean measured =
        job.piece().limbs().stream()
            .flatMap(l -> l.stations().stream())
            .anyMatch(s -> s.edge().isPresent());
    if (!measured) {
      return List.of();
    }
    return List.of(
        lever(
                "edge",
                JobParameter.stations(ParameterUnit.LENGTH_CHANGE, 0.0, PieceLevers::rimmed),
                job)
            .physical(0.0, 0.05)
            .practical(Bound.practice(0.0, Reason.THINNEST), Bound.practice(FILED, Reason.FILING))
            .marks(0.0, owned.marks().calipers())
            .effort(Effort.ON_THE_PATTERN)
            .make());
  }

  private static List<Station> rimmed(List<Station> stations, double by) {
    List<Station> all = new ArrayList<>();
    for (Station s : stations) {
      OptionalDouble edge =
          s.edge().isPresent()
              ? OptionalDouble.of(Math.min(s.thickness(), s.edge().getAsDouble() + by))
              : s.edge();
      all.add(s.with(s.thickness(), edge));
    }
    return all;
  }
}
