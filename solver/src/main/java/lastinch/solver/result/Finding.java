package lastinch.solver.result;

import java.lang.reflect.RecordComponent;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;

/**
 * Something the caster should hear; the words are made elsewhere.
 *
 * @param severity how much it matters
 * @param where place, if it has one
 * @param detail what it is, with its figures in SI units
 */
public record Finding(Severity severity, Optional<Spot> where, Detail detail) {
  public Finding {
    Objects.requireNonNull(severity, "severity");
    Objects.requireNonNull(where, "where");
    Objects.requireNonNull(detail, "detail");
  }

  public enum Severity {
    NOTE,
    WATCH,
    SERIOUS
  }

  /** What it is. */
  public Kind kind() {
    return Kind.of(detail);
  }

  /**
   * Its figures, as a kind that is known.
   *
   * @throws ClassCastException when it is of another kind
   */
  public <T extends Detail> T as(Class<T> type) {
    return type.cast(detail);
  }

  /** Its figures by name, in the order they should be read; for answers to other programs. */
  public Map<String, Double> figures() {
    Map<String, Double> named = new LinkedHashMap<>();
    try {
      for (RecordComponent c : detail.getClass().getRecordComponents()) {
        named.put(c.getName(), (Double) c.getAccessor().invoke(detail));
      }
    } catch (ReflectiveOperationException e) {
      throw new IllegalStateException(e);
    }
    return named;
  }

  /** Kinds of finding, by the record of their figures. */
  public enum Kind {
    SPRUE_NEVER_FULL(SprueNeverFull.class),
    PUDDLES(Puddles.class),
    GATE_SPLASHES(GateSplashes.class),
    FRONT_SPLASHES(FrontSplashes.class),
    RUNS_AGAINST_MOULD(RunsAgainstMould.class),
    FALLS(Falls.class),
    AIR_PUSHES_BACK(AirPushesBack.class),
    MUSH_SHARE_COUNTS(MushShareCounts.class),
    GAP_COUNTS(GapCounts.class),
    TOO_LITTLE_METAL(TooLittleMetal.class),
    POUR_TIMES_DISAGREE(PourTimesDisagree.class),
    WIDE_PIECE(WidePiece.class),
    ABOVE_CEILING(AboveCeiling.class),
    FLASK_EDGE(FlaskEdge.class),
    CUP_OVERFLOWS(CupOverflows.class),
    CUP_RUNS_EMPTY(CupRunsEmpty.class),
    TABLE_CLAMPED(TableClamped.class);

    private final Class<? extends Detail> type;

    Kind(Class<? extends Detail> type) {
      this.type = type;
    }

    private static Kind of(Detail detail) {
      for (Kind kind : values()) {
        if (kind.type.isInstance(detail)) {
          return kind;
        }
      }
      throw new IllegalStateException("no kind for " + detail);
    }
  }

  /** Figures of one kind of finding; all components are numbers. */
  public sealed interface Detail {}

  /** Metal that goes faster than a limit. */
  public sealed interface Fast extends Detail {
    /** [m/s]. */
    double speed();

    /** [m/s]. */
    double limit();
  }

  /**
   * Metal falls in a sprue that never fills.
   *
   * @param standing greatest height of standing metal [m]
   * @param couldPass times the pour that a full sprue could pass [-]
   */
  public record SprueNeverFull(double standing, double couldPass) implements Detail {}

  /**
   * Thick place where metal puddles before it fills.
   *
   * @param thickness [m]
   * @param limit from which it puddles [m]
   */
  public record Puddles(double thickness, double limit) implements Detail {}

  /**
   * Gate faster than the splash limit.
   *
   * @param speed [m/s]
   * @param limit [m/s]
   */
  public record GateSplashes(double speed, double limit) implements Fast {}

  /**
   * Front faster than the splash limit in the piece.
   *
   * @param speed [m/s]
   * @param limit [m/s]
   */
  public record FrontSplashes(double speed, double limit) implements Fast {}

  /**
   * Metal runs against the mould, square to it.
   *
   * @param speed [m/s]
   * @param limit [m/s]
   */
  public record RunsAgainstMould(double speed, double limit) implements Fast {}

  /**
   * Metal fell free into the piece.
   *
   * @param height [m]
   * @param limit [m]
   */
  public record Falls(double height, double limit) implements Detail {}

  /**
   * Air pressed together ahead of the metal.
   *
   * @param pressure above outside [Pa]
   */
  public record AirPushesBack(double pressure) implements Detail {}

  /**
   * The verdict hangs on how much new solid rides along.
   *
   * @param share of it [-]
   */
  public record MushShareCounts(double share) implements Detail {}

  /**
   * Contact with an open gap counts.
   *
   * @param solid largest share anywhere [-]
   */
  public record GapCounts(double solid) implements Detail {}

  /**
   * Not enough metal to fill.
   *
   * @param needed [kg]
   * @param melted [kg]
   */
  public record TooLittleMetal(double needed, double melted) implements Detail {}

  /**
   * Both pour times typed, and they disagree.
   *
   * @param typed [s]
   * @param implied by the other [s]
   */
  public record PourTimesDisagree(double typed, double implied) implements Detail {}

  /**
   * Piece wide against its side gate; a pour along channels does not see the jet.
   *
   * @param width of the piece [m]
   * @param gate width of the gate [m]
   */
  public record WidePiece(double width, double gate) implements Detail {}

  /**
   * Mould hotter than its medium allows.
   *
   * @param temperature [K]
   * @param ceiling [K]
   */
  public record AboveCeiling(double temperature, double ceiling) implements Detail {}

  /**
   * Flask edge colder than the kiln.
   *
   * @param kiln [K]
   * @param edge [K]
   */
  public record FlaskEdge(double kiln, double edge) implements Detail {}

  /**
   * Metal ran over the rim of the cup.
   *
   * @param mass [kg]
   */
  public record CupOverflows(double mass) implements Detail {}

  /**
   * The cup ran empty before the mould was full.
   *
   * @param time [s]
   */
  public record CupRunsEmpty(double time) implements Detail {}

  /**
   * A table of properties was left on a side.
   *
   * @param count of look-ups [-]
   */
  public record TableClamped(double count) implements Detail {}
}
