package lastinch.solver.diagnosis;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import lastinch.solver.casting.Metal;
import lastinch.solver.casting.PourCase;
import lastinch.solver.result.HeatLossEntry;
import lastinch.solver.result.PassageRecord;
import lastinch.solver.result.PourResult;
import lastinch.solver.result.Stop;

/**
 * Where the leading metal spent its heat, from the reading in the crucible to where it ended, in
 * degrees' worth: heat over the heat per degree of the liquid [K]. Below the start of freezing a
 * thermometer falls far less. Where a run keeps no ledger it is read from how hot the metal came to
 * each place; then there is no line {@link Kind#FROM_BEHIND} and {@link Line#kept} is not known.
 *
 * @param lines in the order of the way
 * @param spent all that was spent [K]; the sum of the lines
 */
public record HeatLossBudget(List<Line> lines, double spent) {
  /** Stretches into which the piece is cut. */
  private static final int STRETCHES = 4;

  public HeatLossBudget {
    lines = List.copyOf(lines);
  }

  /** Whether it tells what metal lost from the warmth that metal behind gave back. */
  public boolean tellsWarmth() {
    return lines.stream().anyMatch(l -> l.kind() == Kind.FROM_BEHIND);
  }

  /** All that was given up, before what metal behind gave back is taken off [K]. */
  public double gross() {
    return lines.stream()
        .filter(l -> l.kind() != Kind.FROM_BEHIND)
        .mapToDouble(Line::degrees)
        .sum();
  }

  /** Part of all that was given up [-]; below zero for what came back. */
  public double share(Line line) {
    return line.degrees() / gross();
  }

  /** What a line stands for. */
  public enum Kind {
    /** Skimming and walking. */
    WAITING,
    /** Over the lip and down the stream. */
    LIP,
    /** A channel on the way. */
    CHANNEL,
    /** A stretch of the piece. */
    PIECE,
    /** Warmth that came from the metal behind; takes away from what was spent. */
    FROM_BEHIND
  }

  /**
   * A line.
   *
   * @param kind what it stands for
   * @param passage channel, empty for lines that have none
   * @param from along the channel [m]
   * @param to along the channel [m]
   * @param degrees worth of heat [K]
   * @param kept worth of the warmth that came from the metal behind here [K]; the line {@link
   *     Kind#FROM_BEHIND} has taken all of it away
   * @param seconds spent there [s]
   */
  public record Line(
      Kind kind,
      String passage,
      double from,
      double to,
      double degrees,
      double kept,
      double seconds) {
    public Line {
      Objects.requireNonNull(kind, "kind");
      Objects.requireNonNull(passage, "passage");
    }

    /** The same with more heat and time. */
    private Line plus(HeatLossEntry more, double end, double perDegree) {
      return new Line(
          kind,
          passage,
          Math.min(from, more.from()),
          Math.max(to, end),
          degrees + more.lost() / perDegree,
          kept + more.gained() / perDegree,
          seconds + more.seconds());
    }
  }

  /** The account of a run. */
  public static HeatLossBudget of(PourCase job, PourResult result) {
    Metal metal = job.metal();
    double perDegree = metal.alloy().specificHeatLiquid().value();
    List<Line> lines = new ArrayList<>();
    if (job.checking().lipLoss()) {
      double waiting = metal.coolingRate().value() * metal.waiting().value();
      lines.add(new Line(Kind.WAITING, "", 0.0, 0.0, waiting, 0.0, metal.waiting().value()));
      lines.add(new Line(Kind.LIP, "", 0.0, 0.0, metal.lipLoss().value(), 0.0, 0.0));
    }
    if (result.ledger().isEmpty()) {
      lines.addAll(ArrivalHeatLoss.of(job, result));
      return new HeatLossBudget(lines, lines.stream().mapToDouble(Line::degrees).sum());
    }
    double gained = 0.0;
    Map<String, Line> places = new LinkedHashMap<>();
    for (HeatLossEntry entry : result.ledger()) {
      gained += entry.gained() / perDegree;
      boolean piece = isPiece(result, entry.passage());
      String place = piece ? entry.passage() + "#" + stretch(result, entry) : entry.passage();
      Kind kind = piece ? Kind.PIECE : Kind.CHANNEL;
      Line before =
          places.getOrDefault(
              place, new Line(kind, entry.passage(), entry.from(), entry.from(), 0.0, 0.0, 0.0));
      places.put(place, before.plus(entry, Math.min(entry.to(), end(result, entry)), perDegree));
    }
    lines.addAll(places.values());
    lines.add(new Line(Kind.FROM_BEHIND, "", 0.0, 0.0, -gained, 0.0, 0.0));
    return new HeatLossBudget(lines, lines.stream().mapToDouble(Line::degrees).sum());
  }

  /** How far metal got in the channel of a line of the ledger [m]. */
  private static double end(PourResult result, HeatLossEntry entry) {
    return result.stops().stream()
        .filter(s -> s.passage().equals(entry.passage()) && s.at() >= entry.from())
        .mapToDouble(Stop::at)
        .min()
        .orElse(entry.to());
  }

  private static boolean isPiece(PourResult result, String passage) {
    return result.passages().stream()
        .anyMatch(p -> p.name().equals(passage) && p.role() == PassageRecord.Role.PIECE);
  }

  /** Number of the stretch of its channel in which a line of the ledger begins. */
  private static int stretch(PourResult result, HeatLossEntry entry) {
    double middle = 0.5 * (entry.from() + entry.to());
    return result.passages().stream()
        .filter(p -> p.name().equals(entry.passage()))
        .findFirst()
        .map(p -> stretch(p, middle))
        .orElse(0);
  }

  /** Number of the stretch of a channel that a place [m] lies in. */
  static int stretch(PassageRecord passage, double at) {
    return (int) Math.min(STRETCHES - 1.0, Math.floor(STRETCHES * at / passage.length()));
  }
}
