package lastinch.solver.uncertainty;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import lastinch.solver.casting.PourCase;
import lastinch.solver.levers.JobParameter;
import lastinch.solver.levers.ParameterUnit;
import lastinch.solver.material.Alloy;
import lastinch.solver.material.Band;
import lastinch.solver.material.MouldMedium;

/**
 * A figure of a job that nobody knows exactly: its band, and how to set it. This is the whole list,
 * in the order of the day; bands, chance and learning all go through it.
 */
@SuppressWarnings("ImmutableEnumChecker") // their functions hold nothing that changes
public enum UncertainInput {
  /** Temperature read in the crucible [K]. */
  READING(Effort.TOOL, JobParameter.READING),
  /** From the reading to first metal in the cup [s]. */
  WAITING(Effort.CLOCK, JobParameter.WAITING),
  /** What the metal loses while it waits [K/s]. */
  COOLING_RATE(Effort.TOOL, JobParameter.COOLS),
  /** What it loses over the lip and in the stream [K]. */
  LIP_LOSS(Effort.TOOL, JobParameter.LIP_LOSS),
  /** Seconds that the pour takes, however they are counted [s]. */
  POUR_SECONDS(Effort.CLOCK, JobParameter.POUR_SECONDS),
  /** Metal poured a second [kg/s]. */
  POUR_RATE(Effort.CLOCK, JobParameter.POUR_RATE),
  /** Mould before it leaves the kiln, or as it lies in the shop [K]. */
  MOULD_TEMPERATURE(Effort.TOOL, JobParameter.MOULD_TEMPERATURE),
  /** From opening the kiln to first metal [s]. */
  OUT_OF_KILN(Effort.CLOCK, JobParameter.OUT_OF_KILN),
  /** From the nearest edge of the piece to the flask wall [m]. */
  EDGE_TO_WALL(Effort.CLOCK, JobParameter.EDGE_TO_WALL),
  /** Wall of a shell [m]. */
  SHELL_WALL(Effort.CLOCK, JobParameter.SHELL_WALL),
  /** Leak along the parting outline [m]. */
  PARTING_CRACK(Effort.CLOCK, JobParameter.PARTING_CRACK),
  /** Heat passed from liquid metal to the mould face per degree [W/(m2 K)]. */
  CONTACT_LIQUID(Effort.TRIAL, JobParameter.CONTACT_LIQUID),
  /** The same across an open gap [W/(m2 K)]. */
  CONTACT_GAP(
      Effort.TRIAL, JobParameter.medium(MouldMedium.Figure.CONTACT_GAP, ParameterUnit.HEAT_PULL)),
  /** Solid share at which a skin begins to draw away [-]. */
  SKIN_FREES(Effort.TRIAL, JobParameter.medium(MouldMedium.Figure.SKIN_FREES, ParameterUnit.SHARE)),
  /** Solid share at which the gap is fully open [-]. */
  GAP_OPEN(Effort.TRIAL, JobParameter.medium(MouldMedium.Figure.GAP_OPEN, ParameterUnit.SHARE)),
  /** Factor on what the mould conducts [-]. */
  MOULD_CONDUCTS(
      Effort.TRIAL,
      JobParameter.medium(MouldMedium.Figure.CONDUCTIVITY_FACTOR, ParameterUnit.FACTOR)),
  /** How dense the mould is packed [kg/m3]; with its heat per degree, what it can hold. */
  MOULD_DENSITY(
      Effort.TRIAL, JobParameter.medium(MouldMedium.Figure.DENSITY, ParameterUnit.DENSITY)),
  /** How easily air goes through the mould [m2]. */
  PERMEABILITY(
      Effort.TRIAL,
      JobParameter.medium(MouldMedium.Figure.PERMEABILITY, ParameterUnit.PERMEABILITY)),
  /** Where the alloy starts to freeze [K]. */
  START_OF_FREEZING(
      Effort.TOOL, JobParameter.alloy(Alloy.Figure.START_OF_FREEZING, ParameterUnit.HEAT)),
  /** Heat given up over the whole of freezing [J/kg]. */
  LATENT_HEAT(Effort.NONE, JobParameter.alloy(Alloy.Figure.LATENT_HEAT, ParameterUnit.LATENT_HEAT)),
  /** Heat per degree of the liquid [J/(kg K)]. */
  SPECIFIC_HEAT_LIQUID(
      Effort.NONE,
      JobParameter.alloy(Alloy.Figure.SPECIFIC_HEAT_LIQUID, ParameterUnit.SPECIFIC_HEAT)),
  /** Heat per degree of the solid [J/(kg K)]. */
  SPECIFIC_HEAT_SOLID(
      Effort.NONE,
      JobParameter.alloy(Alloy.Figure.SPECIFIC_HEAT_SOLID, ParameterUnit.SPECIFIC_HEAT)),
  /** What the liquid conducts [W/(m K)]. */
  CONDUCTIVITY_LIQUID(
      Effort.NONE,
      JobParameter.alloy(Alloy.Figure.CONDUCTIVITY_LIQUID, ParameterUnit.CONDUCTIVITY)),
  /** What the solid conducts [W/(m K)]. */
  CONDUCTIVITY_SOLID(
      Effort.NONE, JobParameter.alloy(Alloy.Figure.CONDUCTIVITY_SOLID, ParameterUnit.CONDUCTIVITY)),
  /** Density of the liquid [kg/m3]. */
  DENSITY_LIQUID(
      Effort.NONE, JobParameter.alloy(Alloy.Figure.DENSITY_LIQUID, ParameterUnit.DENSITY)),
  /** Viscosity [Pa s]. */
  VISCOSITY(Effort.NONE, JobParameter.alloy(Alloy.Figure.VISCOSITY, ParameterUnit.VISCOSITY)),
  /** Surface tension [N/m]. */
  SURFACE_TENSION(
      Effort.NONE, JobParameter.alloy(Alloy.Figure.SURFACE_TENSION, ParameterUnit.SURFACE_TENSION)),
  /** Wetting angle against the mould [rad]. */
  WETTING_ANGLE(Effort.NONE, JobParameter.alloy(Alloy.Figure.WETTING_ANGLE, ParameterUnit.ANGLE)),
  /** What an oxide film multiplies the push by that a thin gap asks for [-]. */
  FILM_FACTOR(Effort.NONE, JobParameter.alloy(Alloy.Figure.FILM_FACTOR, ParameterUnit.FACTOR)),
  /** Solid share of the mush at which it stops [-]. */
  FLOW_STOP(Effort.TRIAL, JobParameter.FLOW_STOP),
  /** Factor on how heat spreads along the flowing metal [-]. */
  SPREADING(Effort.NONE, JobParameter.SPREADING),
  /** Freezing range over the drop in the skin at which half of new solid rides along [-]. */
  RANGE_RATIO(Effort.NONE, JobParameter.RANGE_RATIO),
  /** Factor on what is lost on entry and where metal turns [-]. */
  TURNS(Effort.NONE, JobParameter.TURNS),
  /** How rough the mould's face is [m]. */
  ROUGHNESS(Effort.NONE, JobParameter.medium(MouldMedium.Figure.ROUGHNESS, ParameterUnit.LENGTH));

  /** What it takes a caster to know it better; our own order. */
  public enum Effort {
    /** A clock, a ruler or a filmed pour: a minute. */
    CLOCK,
    /** A thermocouple or another tool of the shop: a quarter of an hour. */
    TOOL,
    /** A strip poured beside the job, or records of real pours. */
    TRIAL,
    /** Nothing a caster can do. */
    NONE;

    /** How the efforts weigh against each other [-]; our own choice, no source. */
    public double weight() {
      return switch (this) {
        case CLOCK -> 1.0;
        case TOOL -> 3.0;
        case TRIAL -> 10.0;
        case NONE -> Double.POSITIVE_INFINITY;
      };
    }
  }

  /** High over low from which a band is halved on the scale of its logarithm [-]. */
  static final double WIDE = 2.0;

  /** Least share of its best figure that a positive figure is taken at [-]. */
  private static final double LEAST_PART = 0.05;

  private final Effort effort;
  private final JobParameter parameter;

  UncertainInput(Effort effort, JobParameter parameter) {
    this.effort = effort;
    this.parameter = parameter;
  }

  /** The figure of the job. */
  public JobParameter parameter() {
    return parameter;
  }

  /** What it takes to know it better. */
  public Effort effort() {
    return effort;
  }

  /**
   * Its band in a job, cut where it would reach what cannot be; empty where the job has no such
   * figure.
   */
  public Optional<Band> band(PourCase job) {
    return parameter.in(job).map(this::possible);
  }

  private Band possible(Band typed) {
    double best = typed.value();
    return new Band(
        best,
        Math.min(best, Math.max(least(best), typed.low())),
        Math.max(best, Math.min(most(), typed.high())),
        typed.source());
  }

  /** Least it can be, for a best figure; what is below is cut off. */
  double least(double best) {
    return switch (parameter.unit()) {
      case HEAT, HEAT_DIFFERENCE, COOLING_RATE -> 0.0;
      case TIME -> this == POUR_SECONDS ? LEAST_PART * best : 0.0;
      case ANGLE -> Math.PI / 2;
      default -> this == FILM_FACTOR ? 1.0 : this == SPREADING ? 0.0 : LEAST_PART * best;
    };
  }

  /** Most it can be. */
  double most() {
    return switch (parameter.unit()) {
      case SHARE -> 1.0;
      case ANGLE -> Math.PI;
      default -> Double.POSITIVE_INFINITY;
    };
  }

  /** Whether a job has the figure and does not know it exactly. */
  public boolean isOpen(PourCase job) {
    return band(job).filter(Band::isOpen).isPresent();
  }

  /** The figures of a job that are not known exactly, in the order of this list. */
  public static List<UncertainInput> openIn(PourCase job) {
    List<UncertainInput> open = new ArrayList<>();
    for (UncertainInput unknown : values()) {
      if (unknown.isOpen(job)) {
        open.add(unknown);
      }
    }
    return open;
  }

  /**
   * The job with this figure at another value; its band stays.
   *
   * @param value in SI units
   * @throws IllegalArgumentException when the job has no such figure
   */
  public PourCase set(PourCase job, double value) {
    Band known =
        band(job).orElseThrow(() -> new IllegalArgumentException("the job has no " + name()));
    return parameter.put(job, known.at(value));
  }

  /**
   * A value a part of the way from the best figure to an end of the band, on the scale of the
   * logarithm where the band is wide.
   *
   * @param job that has the figure
   * @param up towards the upper end, else the lower
   * @param part of the way [-], 0 = best, 1 = the end
   */
  public double towards(PourCase job, boolean up, double part) {
    return towards(
        band(job).orElseThrow(() -> new IllegalArgumentException("the job has no " + name())),
        up,
        part);
  }

  static double towards(Band known, boolean up, double part) {
    double end = up ? known.high() : known.low();
    if (isWide(known)) {
      return known.value() * StrictMath.exp(part * StrictMath.log(end / known.value()));
    }
    return known.value() + part * (end - known.value());
  }

  /** Whether a band is so wide that its middle is taken on the scale of the logarithm. */
  public static boolean isWide(Band band) {
    return band.low() > 0.0 && band.high() > WIDE * band.low();
  }
}
