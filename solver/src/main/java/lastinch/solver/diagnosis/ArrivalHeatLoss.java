package lastinch.solver.diagnosis;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import lastinch.solver.casting.Limb;
import lastinch.solver.casting.PourCase;
import lastinch.solver.material.MetalTable;
import lastinch.solver.result.PassageRecord;
import lastinch.solver.result.PourResult;
import lastinch.solver.result.Stop;

/**
 * Where the metal that came last had lost its heat, read from how hot metal was when it first came
 * to each place on the way: runner, gate of origin, boss, limbs. For runs that keep no ledger. A
 * line is what metal lost there less what metal behind gave back; the two are not told apart.
 */
final class ArrivalHeatLoss {
  private static final double COVERED = 50.0;

  private final MetalTable table;
  private final double perDegree;
  private final Map<String, HeatLossBudget.Line> places = new LinkedHashMap<>();
  private double heat;

  private ArrivalHeatLoss(PourCase job, PourResult result) {
    this.perDegree = job.metal().alloy().specificHeatLiquid().value();
    this.table =
        MetalTable.of(
            job.metal().alloy(),
            job.checking().freezingStraight(),
            job.mould().temperature().value() - COVERED,
            result.entered() + COVERED);
    this.heat = table.enthalpy(result.entered());
  }

  /** Lines of the account from the foot of the sprue to where the metal ended. */
  static List<HeatLossBudget.Line> of(PourCase job, PourResult result) {
    Optional<Place> end = end(result);
    if (end.isEmpty()) {
      return List.of();
    }
    ArrivalHeatLoss account = new ArrivalHeatLoss(job, result);
    List<PassageRecord> way = way(job, result, end.get());
    for (int i = 0; i + 1 < way.size(); i++) {
      account.pass(way.get(i), exit(way.get(i), way.get(i + 1)));
    }
    account.pass(end.get().passage(), end.get().cell());
    return new ArrayList<>(account.places.values());
  }

  /** A cell of a channel. */
  private record Place(PassageRecord passage, int cell) {}

  /** Where it stopped, or the last place of the piece that was filled. */
  private static Optional<Place> end(PourResult result) {
    if (!result.stops().isEmpty()) {
      Stop stop = result.stops().get(0);
      return result.passages().stream()
          .filter(p -> p.name().equals(stop.passage()))
          .findFirst()
          .flatMap(p -> nearest(p, stop.at()));
    }
    Optional<Place> last = Optional.empty();
    for (PassageRecord p : result.passages()) {
      for (int i = 0; p.role() == PassageRecord.Role.PIECE && i < p.size(); i++) {
        boolean later =
            last.isEmpty() || p.arrivalTime(i) > last.get().passage.arrivalTime(last.get().cell);
        last = p.reached(i) && later ? Optional.of(new Place(p, i)) : last;
      }
    }
    return last;
  }

  private static Optional<Place> nearest(PassageRecord p, double at) {
    int best = -1;
    for (int i = 0; i < p.size(); i++) {
      boolean nearer = best < 0 || Math.abs(p.at(i) - at) < Math.abs(p.at(best) - at);
      best = p.reached(i) && nearer ? i : best;
    }
    return best < 0 ? Optional.empty() : Optional.of(new Place(p, best));
  }

  /** Channels that the metal at the end came through, that of the end last. */
  private static List<PassageRecord> way(PourCase job, PourResult result, Place end) {
    String gate = end.passage().gate(end.cell());
    List<PassageRecord> way = new ArrayList<>();
    for (PassageRecord p : result.passages()) {
      boolean before = first(p) >= 0 && !p.name().equals(end.passage().name());
      boolean leads =
          p.role() == PassageRecord.Role.RUNNER
              || (p.role() == PassageRecord.Role.BOSS && isEarlier(p, end.passage()))
              || (p.role() == PassageRecord.Role.GATE && p.name().equals(gate));
      if (before && leads) {
        way.add(p);
      }
    }
    way.addAll(limbs(job, result, end.passage()));
    way.sort((a, b) -> Double.compare(a.arrivalTime(first(a)), b.arrivalTime(first(b))));
    way.remove(end.passage());
    way.add(end.passage());
    return way;
  }

  /**
   * A limb and those that led to it: each has an end on the next or the other way round and was
   * reached before.
   */
  private static List<PassageRecord> limbs(PourCase job, PourResult result, PassageRecord last) {
    List<PassageRecord> chain = new ArrayList<>(List.of(last));
    Optional<PassageRecord> before = Optional.of(last);
    while (before.isPresent()) {
      PassageRecord next = before.get();
      before =
          result.passages().stream()
              .filter(p -> first(p) >= 0 && isEarlier(p, next) && !chain.contains(p))
              .filter(p -> touch(job, p.name(), next.name()))
              .min((a, b) -> Double.compare(a.arrivalTime(first(a)), b.arrivalTime(first(b))));
      before.ifPresent(chain::add);
    }
    return chain;
  }

  private static boolean touch(PourCase job, String a, String b) {
    Optional<Limb> one = limb(job, a);
    Optional<Limb> other = limb(job, b);
    return one.isPresent()
        && other.isPresent()
        && (joins(one.get(), other.get()) || joins(other.get(), one.get()));
  }

  /** Whether an end of a limb sits on another. */
  private static boolean joins(Limb limb, Limb other) {
    String tip = other.name() + " tip";
    return List.of(other.name(), tip).contains(limb.from())
        || List.of(other.name(), tip).contains(limb.to());
  }

  private static Optional<Limb> limb(PourCase job, String name) {
    return job.piece().limbs().stream().filter(l -> l.name().equals(name)).findFirst();
  }

  /** Cell that metal came to first; -1 when it came to none. */
  private static int first(PassageRecord p) {
    int found = -1;
    for (int i = 0; i < p.size(); i++) {
      boolean earlier = found < 0 || p.arrivalTime(i) < p.arrivalTime(found);
      found = p.reached(i) && earlier ? i : found;
    }
    return found;
  }

  private static boolean isEarlier(PassageRecord p, PassageRecord other) {
    return first(p) >= 0 && p.arrivalTime(first(p)) < other.arrivalTime(first(other));
  }

  /** Cell of a channel that metal came to last before it was in the next. */
  private static int exit(PassageRecord p, PassageRecord next) {
    double until = next.arrivalTime(first(next));
    int found = first(p);
    for (int i = 0; i < p.size(); i++) {
      boolean inTime = p.reached(i) && p.arrivalTime(i) <= until;
      found = inTime && p.arrivalTime(i) > p.arrivalTime(found) ? i : found;
    }
    return found;
  }

  /** Follows the metal through a channel to one of its cells. */
  private void pass(PassageRecord p, int to) {
    int from = first(p);
    int way = to < from ? -1 : 1;
    double half = 0.5 * p.length() / p.size();
    double time = p.arrivalTime(from);
    for (int i = from; i != to + way; i += way) {
      if (p.reached(i)) {
        double now = worth(p, i);
        double lost = (heat - now) / perDegree;
        double seconds = Math.max(0.0, p.arrivalTime(i) - time);
        add(p, p.at(i) - half, p.at(i) + half, lost, seconds);
        heat = now;
        time = Math.max(time, p.arrivalTime(i));
      }
    }
  }

  private double worth(PassageRecord p, int cell) {
    double solid = p.arrivalSolid(cell);
    return solid > 0.0
        ? table.enthalpyAtSolid(Math.min(1.0, solid))
        : table.enthalpy(p.arrivalTemperature(cell));
  }

  private void add(PassageRecord p, double from, double to, double lost, double seconds) {
    boolean piece = p.role() == PassageRecord.Role.PIECE;
    String place = piece ? p.name() + "#" + HeatLossBudget.stretch(p, 0.5 * (from + to)) : p.name();
    HeatLossBudget.Line before = places.get(place);
    HeatLossBudget.Kind kind = piece ? HeatLossBudget.Kind.PIECE : HeatLossBudget.Kind.CHANNEL;
    places.put(
        place,
        before == null
            ? new HeatLossBudget.Line(kind, p.name(), from, to, lost, 0.0, seconds)
            : new HeatLossBudget.Line(
                kind,
                p.name(),
                Math.min(before.from(), from),
                Math.max(before.to(), to),
                before.degrees() + lost,
                0.0,
                before.seconds() + seconds));
  }
}
