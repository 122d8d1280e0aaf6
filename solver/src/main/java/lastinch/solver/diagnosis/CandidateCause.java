package lastinch.solver.diagnosis;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.function.BiFunction;
import lastinch.solver.casting.PourCase;
import lastinch.solver.casting.gating.Gate;
import lastinch.solver.casting.gating.Vent;
import lastinch.solver.levers.LeverUnit;
import lastinch.solver.levers.PieceLevers;
import lastinch.solver.levers.PourLevers;
import lastinch.solver.material.Band;
import lastinch.solver.uncertainty.SampledInputs;
import lastinch.solver.uncertainty.UncertainInput;

/**
 * One thing that may have been other than planned.
 *
 * @param key name of its words
 * @param part which one, when a job has several; empty else
 * @param unknown the figure it stands for, if it is one
 * @param unit of its values
 * @param now value in the plan
 * @param low least that is looked at
 * @param high most that is looked at
 * @param usual by how much it is off nine times in ten at the most; for a figure with even steps of
 *     its logarithm a factor less one
 * @param even whether equal steps are equal factors
 * @param effort of finding it out
 * @param setter puts a value into a job
 */
public record CandidateCause(
    String key,
    String part,
    Optional<UncertainInput> unknown,
    LeverUnit unit,
    double now,
    double low,
    double high,
    double usual,
    boolean even,
    UncertainInput.Effort effort,
    BiFunction<PourCase, Double, PourCase> setter) {
  /** Key of a piece that came out thinner or thicker than planned. */
  static final String PIECE_THINNER = "thinner";

  /** How far beyond what a person wrote it is looked: factors and differences; our own choice. */
  private static final double FACTOR = 3.0;

  private static final double COLDER = 150.0;
  private static final double HOTTER = 60.0;
  private static final double THINNER = 1e-3;

  /** How far off things are that carry no band, nine times in ten; our own choice, no source. */
  private static final double PIECE_OFF = 3e-4;

  private static final double CARVED_OFF = 0.2;
  private static final double WEIGHED_OFF = 0.05;
  private static final double BLOCKED = 1e-4;
  private static final double LEAST_BAND = 0.02;

  public CandidateCause {
    Objects.requireNonNull(key, "key");
    Objects.requireNonNull(part, "part");
    Objects.requireNonNull(unknown, "unknown");
    Objects.requireNonNull(unit, "unit");
    Objects.requireNonNull(effort, "effort");
    Objects.requireNonNull(setter, "setter");
  }

  /** The job with it at a value. */
  PourCase set(PourCase job, double value) {
    return setter.apply(job, value);
  }

  /** A value a share of the way from the least to the most that is looked at. */
  double at(double share) {
    return even
        ? low * StrictMath.exp(share * StrictMath.log(high / low))
        : low + share * (high - low);
  }

  /** How far a value is from the plan, in parts of what is usual [-]. */
  public double parts(double value) {
    double off = even ? Math.abs(StrictMath.log(value / now)) : Math.abs(value - now);
    return off / (even ? StrictMath.log1p(usual) : usual);
  }

  /** Everything about a job that is looked at, in the order of the day. */
  static List<CandidateCause> of(PourCase job) {
    List<CandidateCause> all = new ArrayList<>();
    factor(all, job, UncertainInput.POUR_SECONDS, "pour", LeverUnit.TIME, FACTOR);
    factor(all, job, UncertainInput.POUR_RATE, "pourRate", LeverUnit.MASS_RATE, FACTOR);
    double reading = job.metal().reading().value();
    difference(all, job, UncertainInput.READING, "colder", reading - COLDER, reading + HOTTER);
    Band mould = job.mould().temperature();
    difference(
        all,
        job,
        UncertainInput.MOULD_TEMPERATURE,
        "mould",
        Math.max(260.0, mould.value() - 3.0 * half(mould)),
        mould.value() + 3.0 * half(mould));
    factor(all, job, UncertainInput.CONTACT_LIQUID, "contact", LeverUnit.HEAT_PULL, FACTOR);
    Band stop = job.metal().alloy().flowStop();
    all.add(
        of(UncertainInput.FLOW_STOP, "flowStop", LeverUnit.SHARE, stop.value())
            .between(0.5 * stop.value(), Math.min(0.95, 1.6 * stop.value()), half(stop), false));
    all.add(melted(job));
    all.add(thinner(job));
    if (!job.gating().vents().isEmpty()) {
      all.add(vents());
    }
    for (Gate gate : job.gating().gates()) {
      all.add(gate(gate));
    }
    all.add(sprue(job));
    return List.copyOf(all);
  }

  private static double half(Band band) {
    return Math.max(0.5 * (band.high() - band.low()), LEAST_BAND * Math.abs(band.value()));
  }

  private static void factor(
      List<CandidateCause> all,
      PourCase job,
      UncertainInput unknown,
      String key,
      LeverUnit unit,
      double most) {
    unknown
        .band(job)
        .ifPresent(
            b -> {
              double wide =
                  Math.max(
                      1.0 + LEAST_BAND,
                      Math.max(b.high() / b.value(), b.value() / Math.max(1e-300, b.low())));
              all.add(
                  of(unknown, key, unit, b.value())
                      .between(b.value() / most, b.value() * most, wide - 1.0, true));
            });
  }

  private static void difference(
      List<CandidateCause> all,
      PourCase job,
      UncertainInput unknown,
      String key,
      double low,
      double high) {
    unknown
        .band(job)
        .ifPresent(
            b ->
                all.add(
                    of(unknown, key, LeverUnit.HEAT, b.value())
                        .between(low, high, Math.max(5.0, 0.5 * (b.high() - b.low())), false)));
  }

  private static CandidateCause of(UncertainInput unknown, String key, LeverUnit unit, double now) {
    return new CandidateCause(
        key,
        "",
        Optional.of(unknown),
        unit,
        now,
        now,
        now,
        1.0,
        false,
        unknown.effort(),
        (j, v) -> SampledInputs.put(j, unknown, v));
  }

  private CandidateCause between(double least, double most, double by, boolean factors) {
    return new CandidateCause(
        key, part, unknown, unit, now, least, most, by, factors, effort, setter);
  }

  private static CandidateCause plain(
      String key,
      String part,
      double now,
      UncertainInput.Effort effort,
      LeverUnit unit,
      BiFunction<PourCase, Double, PourCase> setter) {
    return new CandidateCause(
        key, part, Optional.empty(), unit, now, now, now, 1.0, false, effort, setter);
  }

  /** Less metal in the crucible, poured as fast as planned. */
  private static CandidateCause melted(PourCase job) {
    double now = job.metal().melted();
    return plain(
            "melted",
            "",
            now,
            UncertainInput.Effort.CLOCK,
            LeverUnit.MASS,
            PourLevers::meltedAtSameRate)
        .between(0.3 * now, 1.1 * now, WEIGHED_OFF, true);
  }

  private static CandidateCause thinner(PourCase job) {
    double least =
        job.piece().limbs().stream()
            .flatMap(l -> l.stations().stream())
            .mapToDouble(s -> s.thickness())
            .min()
            .orElseThrow();
    return plain(
            PIECE_THINNER,
            "",
            0.0,
            UncertainInput.Effort.CLOCK,
            LeverUnit.LENGTH_CHANGE,
            (j, v) -> j.withPiece(j.piece().withStations(s -> PieceLevers.added(s, v))))
        .between(-Math.min(THINNER, 0.6 * least), THINNER, PIECE_OFF, false);
  }

  /** All vents narrower than drawn, down to blocked. */
  private static CandidateCause vents() {
    return plain(
            "vents",
            "",
            1.0,
            UncertainInput.Effort.CLOCK,
            LeverUnit.SHARE,
            (j, v) -> {
              List<Vent> vents = new ArrayList<>();
              for (Vent vent : j.gating().vents()) {
                if (v * vent.across() > BLOCKED) {
                  vents.add(vent.withAcross(v * vent.across()));
                }
              }
              return j.withGating(j.gating().withVents(vents));
            })
        .between(0.0, 1.0, 0.5, false);
  }

  private static CandidateCause gate(Gate gate) {
    return plain(
            "gate",
            gate.name(),
            gate.thickness(),
            UncertainInput.Effort.CLOCK,
            LeverUnit.LENGTH,
            (j, v) -> j.withGating(j.gating().withGate(gate.name(), g -> g.withThickness(v))))
        .between(0.2 * gate.thickness(), 1.5 * gate.thickness(), CARVED_OFF, true);
  }

  /** Something in the way in the sprue. */
  private static CandidateCause sprue(PourCase job) {
    double foot = job.gating().sprue().foot();
    return plain(
            "sprue",
            "",
            foot,
            UncertainInput.Effort.CLOCK,
            LeverUnit.LENGTH,
            (j, v) -> j.withGating(j.gating().withSprue(j.gating().sprue().withFoot(v))))
        .between(0.3 * foot, 1.1 * foot, CARVED_OFF / 2, true);
  }
}
