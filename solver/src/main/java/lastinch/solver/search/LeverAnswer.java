package lastinch.solver.search;

import java.util.List;
import java.util.Objects;
import java.util.Optional;
import lastinch.solver.levers.Bound;
import lastinch.solver.levers.Lever;
import lastinch.solver.study.LookOut;
import lastinch.solver.study.Trial;

/**
 * What one lever can do alone. Every value in it was run.
 *
 * @param lever the lever
 * @param kind what became of it
 * @param at the smallest change that does it; when it already fills: the furthest that still does
 * @param justShort next to it, on the side where it does not
 * @param stopsAt furthest towards the answer where the piece does not fill at all, if it ever does
 *     not
 * @param withTool the nearest size the shop owns that does it
 * @param best of all values tried
 * @param end which end of what is practical the best value stands at, when it does
 * @param inert whether no value tried changes anything worth a word
 * @param lookOuts what comes with the answer
 * @param tried all values tried while scanning, rising
 */
public record LeverAnswer(
    Lever lever,
    Kind kind,
    Optional<Trial> at,
    Optional<Trial> justShort,
    Optional<Trial> stopsAt,
    Optional<Trial> withTool,
    Trial best,
    Optional<Bound> end,
    boolean inert,
    List<LookOut> lookOuts,
    List<Trial> tried) {
  public LeverAnswer {
    Objects.requireNonNull(lever, "lever");
    Objects.requireNonNull(kind, "kind");
    Objects.requireNonNull(best, "best");
    lookOuts = List.copyOf(lookOuts);
    tried = List.copyOf(tried);
  }

  /** What became of it. */
  public enum Kind {
    /** A value within practice fills with what was asked for. */
    ENOUGH,
    /** It helps, but no value within practice is enough. */
    NOT_ENOUGH,
    /** No value tried helps. */
    NO_HELP,
    /** It fills already; this is how far it may slip. */
    MAY_SLIP,
    /** It fills already, at every value tried. */
    HOLDS,
    /** It fills already; every choice was run beside the present one. */
    COMPARED,
    /** Runs with it give no answer. */
    NO_ANSWER
  }

  /** The value to print: with the tool the shop owns when there is one. */
  public Optional<Trial> chosen() {
    return withTool.isPresent() ? withTool : at;
  }
}
