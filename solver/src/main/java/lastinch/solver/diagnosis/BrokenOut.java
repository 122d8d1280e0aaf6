package lastinch.solver.diagnosis;

import java.util.Collections;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.TreeSet;
import lastinch.solver.casting.Boss;
import lastinch.solver.casting.Limb;
import lastinch.solver.casting.PourCase;
import lastinch.solver.casting.Station;
import lastinch.solver.result.EdgeStretch;
import lastinch.solver.result.GateRecord;
import lastinch.solver.result.LapStretch;
import lastinch.solver.result.Meeting;
import lastinch.solver.result.Outcome;
import lastinch.solver.result.PassageRecord;
import lastinch.solver.result.PourResult;
import lastinch.solver.result.Stop;
import lastinch.solver.result.StopReason;

/**
 * What a person would see of a casting broken out of the mould. Places are on the piece's ruler,
 * from its thick end.
 *
 * @param answered whether the run gave an answer
 * @param stopped where the metal ends [m]; the length of the piece where it filled
 * @param filled whether it filled, or the limb did whose ruler it is
 * @param plainLaps where the first plain lap lines begin [m], if there are any
 * @param lips every look that its end or its meetings could be called
 * @param closedGates gates that closed by freezing, by name
 * @param roundedFrom where the rim begins to be rounded [m], if it is
 * @param mass of the piece without its gates [kg]
 */
public record BrokenOut(
    boolean answered,
    double stopped,
    boolean filled,
    OptionalDouble plainLaps,
    Set<Observation.Lip> lips,
    Set<String> closedGates,
    OptionalDouble roundedFrom,
    double mass) {
  public BrokenOut {
    lips = Collections.unmodifiableSet(new TreeSet<>(lips));
    closedGates = Collections.unmodifiableSet(new TreeSet<>(closedGates));
  }

  /** What is seen of a run, with places on the ruler of a limb, or of the one limb there is. */
  static BrokenOut of(PourCase job, PourResult result, Optional<String> limb) {
    boolean answered =
        result.outcome() instanceof Outcome.Filled || result.outcome() instanceof Outcome.Misrun;
    Set<String> closed = new TreeSet<>();
    result.gates().stream()
        .filter(g -> g.froze().isPresent())
        .map(GateRecord::name)
        .forEach(closed::add);
    return new BrokenOut(
        answered,
        limb.map(name -> stopped(job, result, name)).orElseGet(() -> stopped(job, result)),
        isFilled(job, result, limb),
        result.laps().stream()
            .filter(l -> l.worstIndex() >= LapStretch.PLAIN && isPiece(result, l.passage()))
            .filter(l -> limb.isEmpty() || limb.get().equals(l.passage()))
            .mapToDouble(l -> start(result, l.passage()) + l.from())
            .min(),
        lips(result),
        closed,
        result.edges().stream()
            .filter(e -> e.state() == EdgeStretch.State.ROUNDED)
            .filter(e -> limb.isEmpty() || limb.get().equals(e.passage()))
            .mapToDouble(EdgeStretch::from)
            .min(),
        result.filledFraction() * wholeMass(job));
  }

  private static double stopped(PourCase job, PourResult result) {
    double length = length(job);
    if (result.outcome() instanceof Outcome.Filled) {
      return length;
    }
    List<Stop> stops = result.stops().stream().filter(s -> isPiece(result, s.passage())).toList();
    return stops.isEmpty()
        ? result.reach()
        : start(result, stops.get(0).passage()) + stops.get(0).at();
  }

  private static boolean isFilled(PourCase job, PourResult result, Optional<String> limb) {
    return result.outcome() instanceof Outcome.Filled
        || limb.filter(name -> stopped(job, result, name) >= length(job, limb)).isPresent();
  }

  /** Where the metal ends in one limb [m]: its length where it filled, 0 where it stayed empty. */
  private static double stopped(PourCase job, PourResult result, String limb) {
    double length = length(job, Optional.of(limb));
    if (result.outcome() instanceof Outcome.Filled) {
      return length;
    }
    return result.stops().stream()
        .filter(s -> s.passage().equals(limb))
        .mapToDouble(s -> start(result, limb) + s.at())
        .min()
        .orElseGet(() -> isReached(result, limb) ? length : 0.0);
  }

  private static boolean isReached(PourResult result, String limb) {
    return result.passages().stream()
        .filter(p -> p.name().equals(limb))
        .anyMatch(p -> Double.isFinite(p.arrivalTime(0)));
  }

  private static Set<Observation.Lip> lips(PourResult result) {
    EnumSet<Observation.Lip> lips = EnumSet.noneOf(Observation.Lip.class);
    for (Stop stop : result.stops()) {
      lips.add(lip(stop.reason()));
      if (stop.reason() == StopReason.AIR) {
        lips.add(Observation.Lip.HOLE);
      }
    }
    for (Meeting meeting : result.meetings()) {
      if (meeting.kind() != Meeting.Kind.JOINED) {
        lips.add(Observation.Lip.LINE);
      }
      if (meeting.kind() == Meeting.Kind.COLD_SHUT) {
        lips.add(Observation.Lip.HOLE);
      }
    }
    if (result.laps().stream().anyMatch(l -> l.worstIndex() > LapStretch.HALTS)) {
      lips.add(Observation.Lip.RIPPLED);
    }
    return lips;
  }

  private static Observation.Lip lip(StopReason reason) {
    return switch (reason) {
      case NO_METAL -> Observation.Lip.LEVEL;
      case AIR -> Observation.Lip.RAGGED;
      case SLUSH, SKIN, FROZE_UPSTREAM, CAPILLARITY -> Observation.Lip.ROUNDED;
    };
  }

  private static boolean isPiece(PourResult result, String passage) {
    return result.passages().stream()
        .anyMatch(p -> p.name().equals(passage) && p.role() == PassageRecord.Role.PIECE);
  }

  private static double start(PourResult result, String passage) {
    return result.passages().stream()
        .filter(p -> p.name().equals(passage))
        .mapToDouble(PassageRecord::start)
        .findFirst()
        .orElse(0.0);
  }

  /** Length of a limb, or of all [m]. */
  static double length(PourCase job, Optional<String> limb) {
    return job.piece().limbs().stream()
        .filter(l -> limb.isEmpty() || limb.get().equals(l.name()))
        .mapToDouble(Limb::length)
        .sum();
  }

  /** Length of all limbs [m]. */
  static double length(PourCase job) {
    return job.piece().limbs().stream().mapToDouble(Limb::length).sum();
  }

  /** Mass of the whole piece without its gates [kg]. */
  static double wholeMass(PourCase job) {
    double volume = job.piece().boss().map(BrokenOut::volume).orElse(0.0);
    for (Limb limb : job.piece().limbs()) {
      for (int i = 1; i < limb.stations().size(); i++) {
        Station a = limb.stations().get(i - 1);
        Station b = limb.stations().get(i);
        volume += 0.5 * (area(limb, a) + area(limb, b)) * (b.at() - a.at());
      }
    }
    return volume * job.metal().alloy().densitySolid().value();
  }

  private static double volume(Boss boss) {
    return boss.length() * boss.width() * boss.depth();
  }

  private static double area(Limb limb, Station s) {
    double box = s.width() * s.thickness();
    return s.cut().isPresent()
        ? s.cut().get().area()
        : switch (limb.section()) {
          case FLAT -> box;
          case LENS -> box * 2.0 / 3.0;
          case ROUND -> box * Math.PI / 4.0;
        };
  }
}
