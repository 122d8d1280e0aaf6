package lastinch.solver.diagnosis;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import lastinch.solver.casting.PourCase;
import lastinch.solver.casting.gating.Gate;
import lastinch.solver.levers.JobParameter;
import lastinch.solver.levers.ParameterUnit;
import lastinch.solver.material.Band;
import lastinch.solver.uncertainty.SampledInputs;
import lastinch.solver.uncertainty.UncertainInput;

/**
 * One thing that may have been other than planned.
 *
 * @param key name of its words
 * @param part which one, when a job has several; empty else
 * @param unknown the figure it stands for, if it is one
 * @param parameter the figure of the job
 * @param now value in the plan
 * @param low least that is looked at
 * @param high most that is looked at
 * @param usual by how much it is off nine times in ten at the most; for a figure with even steps of
 *     its logarithm a factor less one
 * @param even whether equal steps are equal factors
 */
public record CandidateCause(
    String key,
    String part,
    Optional<UncertainInput> unknown,
    JobParameter parameter,
    double now,
    double low,
    double high,
    double usual,
    boolean even) {
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

  /** All vents narrower than drawn, down to blocked. */
  private static final JobParameter VENTS =
      JobParameter.exact(ParameterUnit.SHARE, job -> 1.0, CandidateCause::narrower);

  /** Something in the way in the sprue. */
  private static final JobParameter SPRUE_FOOT =
      JobParameter.exact(
          ParameterUnit.LENGTH,
          job -> job.gating().sprue().foot(),
          (job, v) -> job.withGating(job.gating().withSprue(job.gating().sprue().withFoot(v))));

  public CandidateCause {
    Objects.requireNonNull(key, "key");
    Objects.requireNonNull(part, "part");
    Objects.requireNonNull(unknown, "unknown");
    Objects.requireNonNull(parameter, "parameter");
  }

  /** What its values are measured in. */
  public ParameterUnit unit() {
    return parameter.unit();
  }

  /** What it takes to find it out. */
  UncertainInput.Effort effort() {
    return unknown.map(UncertainInput::effort).orElse(UncertainInput.Effort.CLOCK);
  }

  /** The job with it at a value. */
  PourCase set(PourCase job, double value) {
    return unknown
        .map(u -> SampledInputs.put(job, u, value))
        .orElseGet(() -> parameter.move(job, value));
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
    factor(all, job, UncertainInput.POUR_SECONDS, "pour");
    factor(all, job, UncertainInput.POUR_RATE, "pourRate");
    double reading = job.metal().reading().value();
    all.add(difference(job, UncertainInput.READING, "colder", reading - COLDER, reading + HOTTER));
    Band mould = job.mould().temperature();
    all.add(
        difference(
            job,
            UncertainInput.MOULD_TEMPERATURE,
            "mould",
            Math.max(260.0, mould.value() - 3.0 * half(mould)),
            mould.value() + 3.0 * half(mould)));
    factor(all, job, UncertainInput.CONTACT_LIQUID, "contact");
    Band stop = job.metal().alloy().flowStop();
    all.add(
        of(UncertainInput.FLOW_STOP, "flowStop", stop.value())
            .between(0.5 * stop.value(), Math.min(0.95, 1.6 * stop.value()), half(stop), false));
    double melted = job.metal().melted();
    all.add(
        plain("melted", "", melted, JobParameter.MELTED)
            .between(0.3 * melted, 1.1 * melted, WEIGHED_OFF, true));
    double least =
        job.piece().limbs().stream()
            .flatMap(l -> l.stations().stream())
            .mapToDouble(s -> s.thickness())
            .min()
            .orElseThrow();
    all.add(
        plain(PIECE_THINNER, "", 0.0, JobParameter.THICKER)
            .between(-Math.min(THINNER, 0.6 * least), THINNER, PIECE_OFF, false));
    if (!job.gating().vents().isEmpty()) {
      all.add(plain("vents", "", 1.0, VENTS).between(0.0, 1.0, 0.5, false));
    }
    for (Gate gate : job.gating().gates()) {
      double thick = gate.thickness();
      JobParameter figure = JobParameter.gate(gate.name(), Gate::thickness, Gate::withThickness);
      all.add(
          plain("gate", gate.name(), thick, figure)
              .between(0.2 * thick, 1.5 * thick, CARVED_OFF, true));
    }
    double foot = job.gating().sprue().foot();
    all.add(
        plain("sprue", "", foot, SPRUE_FOOT).between(0.3 * foot, 1.1 * foot, CARVED_OFF / 2, true));
    return List.copyOf(all);
  }

  private static double half(Band band) {
    return Math.max(0.5 * (band.high() - band.low()), LEAST_BAND * Math.abs(band.value()));
  }

  private static void factor(
      List<CandidateCause> all, PourCase job, UncertainInput unknown, String key) {
    unknown
        .band(job)
        .ifPresent(
            b -> {
              double wide =
                  Math.max(
                      1.0 + LEAST_BAND,
                      Math.max(b.high() / b.value(), b.value() / Math.max(1e-300, b.low())));
              all.add(
                  of(unknown, key, b.value())
                      .between(b.value() / FACTOR, b.value() * FACTOR, wide - 1.0, true));
            });
  }

  private static CandidateCause difference(
      PourCase job, UncertainInput unknown, String key, double low, double high) {
    Band b = unknown.band(job).orElseThrow();
    return of(unknown, key, b.value())
        .between(low, high, Math.max(5.0, 0.5 * (b.high() - b.low())), false);
  }

  private static CandidateCause of(UncertainInput unknown, String key, double now) {
    return new CandidateCause(
        key, "", Optional.of(unknown), unknown.parameter(), now, now, now, 1.0, false);
  }

  private CandidateCause between(double least, double most, double by, boolean factors) {
    return new CandidateCause(key, part, unknown, parameter, now, least, most, by, factors);
  }

  /** Something that carries no band. */
  private static CandidateCause plain(String key, String part, double now, JobParameter parameter) {
    return new CandidateCause(key, part, Optional.empty(), parameter, now, now, now, 1.0, false);
  }

  private static PourCase narrower(PourCase job, double share) {
    return job.withGating(
        job.gating()
            .withVents(
                job.gating().vents().stream()
                    .filter(vent -> share * vent.across() > BLOCKED)
                    .map(vent -> vent.withAcross(share * vent.across()))
                    .toList()));
  }
}
