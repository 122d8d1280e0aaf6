package lastinch.solver.diagnosis;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;
import lastinch.solver.casting.Limb;
import lastinch.solver.casting.Model;
import lastinch.solver.casting.PourCase;
import lastinch.solver.casting.gating.Gate;

/**
 * What was found on a casting that was poured for real. Places are on the piece's ruler, from its
 * thick end.
 *
 * @param stopped where the metal ends [m]; the length of the piece where it filled
 * @param lap where the first plain lap line begins [m]
 * @param lip what the end looks like
 * @param gateClosed a gate that closed by freezing
 * @param roundedFrom where the rim begins to be rounded [m]
 * @param weighed the piece without its gates [kg]
 * @param limb on whose ruler the places are, from where it begins; empty for a piece of one limb
 */
public record Observation(
    OptionalDouble stopped,
    OptionalDouble lap,
    Optional<Lip> lip,
    Optional<String> gateClosed,
    OptionalDouble roundedFrom,
    OptionalDouble weighed,
    Optional<String> limb) {
  /** How well a person reads a ruler on a rough casting [m]; our own figure, no source. */
  static final double RULER = 5e-3;

  /** How well it can be said where laps or a rounded rim begin [m]; our own figure, no source. */
  static final double VAGUE = 15e-3;

  /** Share of the piece's weight to which the sum knows it [-]; our own figure, no source. */
  static final double WEIGHT = 0.03;

  /** Misfit of a look that is plainly another one. */
  static final double OTHER = 16.0;

  public Observation {
    Objects.requireNonNull(stopped, "stopped");
    Objects.requireNonNull(lap, "lap");
    Objects.requireNonNull(lip, "lip");
    Objects.requireNonNull(gateClosed, "gateClosed");
    Objects.requireNonNull(roundedFrom, "roundedFrom");
    Objects.requireNonNull(weighed, "weighed");
    Objects.requireNonNull(limb, "limb");
  }

  /** On a piece of one limb. */
  public Observation(
      OptionalDouble stopped,
      OptionalDouble lap,
      Optional<Lip> lip,
      Optional<String> gateClosed,
      OptionalDouble roundedFrom,
      OptionalDouble weighed) {
    this(stopped, lap, lip, gateClosed, roundedFrom, weighed, Optional.empty());
  }

  /** What the end of the metal looks like. */
  public enum Lip {
    /** Smooth and round: it turned to mush, or the gap was too thin. */
    ROUNDED,
    /** Flat: there was no more metal. */
    LEVEL,
    /** Ragged, perhaps black: air. */
    RAGGED,
    /** A line where two streams met. */
    LINE,
    /** Deep ripples: it came in pulses. */
    RIPPLED,
    /** A hole with metal round it. */
    HOLE
  }

  /** What can be found. */
  public enum Kind {
    STOPPED,
    LAP,
    LIP,
    GATE_CLOSED,
    ROUNDED_FROM,
    WEIGHED
  }

  /** What cannot be, or not together. */
  public enum Contradiction {
    /** Nothing was found. */
    NOTHING,
    /** The piece is not that long. */
    STOPPED_BEYOND,
    /** No metal lies where the lap is said to be. */
    LAP_BEYOND,
    /** No metal lies where the rim is said to be rounded. */
    ROUNDED_BEYOND,
    /** It filled, so its end has no lip of that kind. */
    FILLED_WITH_LIP,
    /** One stream meets nothing. */
    LINE_WITH_ONE_STREAM,
    /** There is no gate of that name. */
    NO_SUCH_GATE,
    /** More than was melted. */
    HEAVIER_THAN_MELTED,
    /** More than the piece holds. */
    HEAVIER_THAN_THE_PIECE,
    /** A short piece that weighs as much as a whole one, or the other way round. */
    WEIGHT_AGAINST_LENGTH,
    /** Places on a piece of several limbs, which have no one ruler. */
    WHICH_LIMB,
    /** There is no limb of that name. */
    NO_SUCH_LIMB,
    /** A drawn piece that is wide, branches or has holes has no ruler along it. */
    NO_RULER
  }

  /** Everything that cannot be, in a fixed order; empty when all is sound. */
  public List<Contradiction> contradictions(PourCase job) {
    List<Contradiction> all = new ArrayList<>();
    double length = BrokenOut.length(job, limb);
    double end = stopped.orElse(length);
    when(all, given().isEmpty(), Contradiction.NOTHING);
    boolean wide = job.piece().model().filter(m -> m.form() != Model.Form.LONG).isPresent();
    when(all, wide, Contradiction.NO_RULER);
    if (wide) {
      return all;
    }
    boolean several = job.piece().limbs().size() > 1;
    boolean places = stopped.isPresent() || lap.isPresent() || roundedFrom.isPresent();
    when(all, several && places && limb.isEmpty(), Contradiction.WHICH_LIMB);
    boolean unknown =
        limb.isPresent()
            && job.piece().limbs().stream().map(Limb::name).noneMatch(limb.get()::equals);
    when(all, unknown, Contradiction.NO_SUCH_LIMB);
    if (unknown) {
      return all;
    }
    when(all, end > length + RULER || end < 0.0, Contradiction.STOPPED_BEYOND);
    double last = several || job.gating().gates().size() > 1 ? length : Math.min(end, length);
    when(all, beyond(lap, last), Contradiction.LAP_BEYOND);
    when(all, beyond(roundedFrom, last), Contradiction.ROUNDED_BEYOND);
    boolean whole = stopped.isPresent() && Math.abs(end - length) < RULER / 2;
    boolean ends =
        lip.filter(l -> l == Lip.LEVEL || l == Lip.RAGGED || l == Lip.ROUNDED).isPresent();
    when(all, whole && ends, Contradiction.FILLED_WITH_LIP);
    boolean oneStream = job.gating().gates().size() < 2 && !several;
    when(
        all,
        oneStream && lip.filter(l -> l == Lip.LINE).isPresent(),
        Contradiction.LINE_WITH_ONE_STREAM);
    when(all, gateClosed.isPresent() && !hasGate(job), Contradiction.NO_SUCH_GATE);
    weights(all, job, end, length);
    return all;
  }

  private boolean hasGate(PourCase job) {
    return job.gating().gates().stream().map(Gate::name).anyMatch(gateClosed.orElse("")::equals);
  }

  private void weights(List<Contradiction> all, PourCase job, double end, double length) {
    if (weighed.isEmpty()) {
      return;
    }
    double whole = BrokenOut.wholeMass(job);
    double share = weighed.getAsDouble() / whole;
    boolean melted = weighed.getAsDouble() > job.metal().melted();
    when(all, melted, Contradiction.HEAVIER_THAN_MELTED);
    boolean heavy = share > 1.0 + 3.0 * WEIGHT;
    when(all, heavy && !melted, Contradiction.HEAVIER_THAN_THE_PIECE);
    boolean one = job.piece().limbs().size() == 1;
    boolean shortButWhole = end < 0.5 * length && share > 1.0 - WEIGHT;
    boolean wholeButLight = end > length - RULER && share < 0.7;
    boolean against = one && stopped.isPresent() && (shortButWhole || wholeButLight);
    when(all, against && !heavy && !melted, Contradiction.WEIGHT_AGAINST_LENGTH);
  }

  private static boolean beyond(OptionalDouble place, double last) {
    return place.isPresent()
        && (place.getAsDouble() > last + 2.0 * RULER || place.getAsDouble() < 0.0);
  }

  private static void when(List<Contradiction> all, boolean so, Contradiction what) {
    if (so) {
      all.add(what);
    }
  }

  /** Weight of the whole piece of a job without its gates [kg]. */
  public static double wholeMass(PourCase job) {
    return BrokenOut.wholeMass(job);
  }

  /** What was found at all. */
  public List<Kind> given() {
    List<Kind> all = new ArrayList<>();
    for (Kind kind : Kind.values()) {
      boolean there =
          switch (kind) {
            case STOPPED -> stopped.isPresent();
            case LAP -> lap.isPresent();
            case LIP -> lip.isPresent();
            case GATE_CLOSED -> gateClosed.isPresent();
            case ROUNDED_FROM -> roundedFrom.isPresent();
            case WEIGHED -> weighed.isPresent();
          };
      if (there) {
        all.add(kind);
      }
    }
    return all;
  }

  /**
   * How far a run is from each thing found: squares of distances in units of how well it is read.
   */
  Map<Kind, Double> misfits(PourCase job, BrokenOut seen) {
    Map<Kind, Double> all = new EnumMap<>(Kind.class);
    for (Kind kind : given()) {
      all.put(kind, seen.answered() ? misfit(kind, job, seen) : 4.0 * OTHER);
    }
    return all;
  }

  private double misfit(Kind kind, PourCase job, BrokenOut seen) {
    return switch (kind) {
      case STOPPED -> square(seen.stopped() - stopped.orElseThrow(), RULER);
      case LAP -> place(lap.orElseThrow(), seen.plainLaps());
      case ROUNDED_FROM -> place(roundedFrom.orElseThrow(), seen.roundedFrom());
      case LIP -> seen.lips().contains(lip.orElseThrow()) ? 0.0 : OTHER;
      case GATE_CLOSED -> seen.closedGates().contains(gateClosed.orElseThrow()) ? 0.0 : OTHER;
      case WEIGHED ->
          square(seen.mass() - weighed.orElseThrow(), WEIGHT * BrokenOut.wholeMass(job));
    };
  }

  private static double place(double found, OptionalDouble seen) {
    return seen.isPresent() ? square(found - seen.getAsDouble(), VAGUE) : OTHER;
  }

  private static double square(double off, double unit) {
    return off * off / (unit * unit);
  }
}
