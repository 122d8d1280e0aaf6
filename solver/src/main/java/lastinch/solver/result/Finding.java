package lastinch.solver.result;

import java.util.Map;
import java.util.Objects;
import java.util.Optional;

/**
 * Something the caster should hear, as typed figures; the words are made elsewhere.
 *
 * @param kind what it is
 * @param severity how much it matters
 * @param where place, if it has one
 * @param figures named figures in SI units, in the order they should be read
 */
public record Finding(
    Kind kind, Severity severity, Optional<Spot> where, Map<String, Double> figures) {
  public Finding {
    Objects.requireNonNull(kind, "kind");
    Objects.requireNonNull(severity, "severity");
    Objects.requireNonNull(where, "where");
    figures = java.util.Collections.unmodifiableMap(new java.util.LinkedHashMap<>(figures));
  }

  public enum Severity {
    NOTE,
    WATCH,
    SERIOUS
  }

  /** Kinds of finding; each names its figures. */
  public enum Kind {
    /**
     * Metal falls in a sprue that never fills: {@code standing} [m], {@code couldPass} [-] times
     * the pour.
     */
    SPRUE_NEVER_FULL,
    /**
     * Thick place where metal puddles before it fills: {@code thickness} [m], {@code limit} [m].
     */
    PUDDLES,
    /** Gate faster than the splash limit: {@code speed} [m/s], {@code limit} [m/s]. */
    GATE_SPLASHES,
    /**
     * Front faster than the splash limit in the piece: {@code speed} [m/s], {@code limit} [m/s].
     */
    FRONT_SPLASHES,
    /** Metal runs against the mould, square to it: {@code speed} [m/s], {@code limit} [m/s]. */
    RUNS_AGAINST_MOULD,
    /** Metal fell free into the piece: {@code height} [m], {@code limit} [m]. */
    FALLS,
    /** Air pressed together ahead of the metal: {@code pressure} [Pa] above outside. */
    AIR_PUSHES_BACK,
    /** Verdict hangs on the share of solid that rides along: {@code share} [-]. */
    MUSH_SHARE_COUNTS,
    /** Contact with an open gap counts: {@code solid} [-]. */
    GAP_COUNTS,
    /**
     * Boss freezes long after the rest with nothing feeding it: {@code boss} [s], {@code next} [s].
     */
    BOSS_UNFED,
    /** Not enough metal to fill: {@code needed} [kg], {@code melted} [kg]. */
    TOO_LITTLE_METAL,
    /** Both pour times typed and they disagree: {@code typed} [s], {@code implied} [s]. */
    POUR_TIMES_DISAGREE,
    /**
     * Piece wide against its side gate: {@code width} [m], {@code gate} [m]; the quick look does
     * not see the jet.
     */
    WIDE_PIECE,
    /** Mould hotter than its medium allows: {@code temperature} [K], {@code ceiling} [K]. */
    ABOVE_CEILING,
    /** Flask edge colder than the kiln: {@code kiln} [K], {@code edge} [K]. */
    FLASK_EDGE,
    /** Metal ran over the cup rim: {@code mass} [kg]. */
    CUP_OVERFLOWS,
    /** Cup ran empty before the mould was full: {@code time} [s]. */
    CUP_RUNS_EMPTY,
    /** Property table left on a side: {@code count}. */
    TABLE_CLAMPED
  }
}
