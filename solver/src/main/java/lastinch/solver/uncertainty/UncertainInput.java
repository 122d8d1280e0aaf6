package lastinch.solver.uncertainty;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.BiFunction;
import java.util.function.Function;
import lastinch.solver.casting.Metal;
import lastinch.solver.casting.PourCase;
import lastinch.solver.material.Alloy;
import lastinch.solver.material.Band;
import lastinch.solver.material.MouldMedium;

/**
 * A figure of a job that nobody knows exactly: its band, and how to set it. This is the whole list,
 * in the order of the day; bands, chance and learning all go through it.
 */
@SuppressWarnings("ImmutableEnumChecker") // the functions hold nothing that changes
public enum UncertainInput {
  /** Temperature read in the crucible [K]. */
  READING(Nature.HEAT, Effort.TOOL, OfMetal.READING),
  /** From the reading to first metal in the cup [s]. */
  WAITING(Nature.TIME, Effort.CLOCK, OfMetal.WAITING),
  /** What the metal loses while it waits [K/s]. */
  COOLING_RATE(Nature.COOLING_RATE, Effort.TOOL, OfMetal.COOLING_RATE),
  /** What it loses over the lip and in the stream [K]. */
  LIP_LOSS(Nature.HEAT_DIFFERENCE, Effort.TOOL, OfMetal.LIP_LOSS),
  /** Seconds that the pour takes, however they are counted [s]. */
  POUR_SECONDS(Nature.TIME, Effort.CLOCK, PourInputs::seconds, PourInputs::withSeconds),
  /** Metal poured a second [kg/s]. */
  POUR_RATE(Nature.MASS_RATE, Effort.CLOCK, PourInputs::rate, PourInputs::withRate),
  /** Mould before it leaves the kiln, or as it lies in the shop [K]. */
  MOULD_TEMPERATURE(
      Nature.HEAT, Effort.TOOL, MouldInputs::temperature, MouldInputs::withTemperature),
  /** From opening the kiln to first metal [s]. */
  OUT_OF_KILN(Nature.TIME, Effort.CLOCK, MouldInputs::out, MouldInputs::withOut),
  /** From the nearest edge of the piece to the flask wall [m]. */
  EDGE_TO_WALL(Nature.LENGTH, Effort.CLOCK, MouldInputs::edge, MouldInputs::withEdge),
  /** Wall of a shell [m]. */
  SHELL_WALL(Nature.LENGTH, Effort.CLOCK, MouldInputs::wall, MouldInputs::withWall),
  /** Leak along the parting outline [m]. */
  PARTING_CRACK(Nature.LENGTH, Effort.CLOCK, MouldInputs::crack, MouldInputs::withCrack),
  /** Heat passed from liquid metal to the mould face per degree [W/(m2 K)]. */
  CONTACT_LIQUID(MouldMedium.Figure.CONTACT_LIQUID, Nature.CONDUCTANCE),
  /** The same across an open gap [W/(m2 K)]. */
  CONTACT_GAP(MouldMedium.Figure.CONTACT_GAP, Nature.CONDUCTANCE),
  /** Solid share at which a skin begins to draw away [-]. */
  SKIN_FREES(MouldMedium.Figure.SKIN_FREES, Nature.SHARE),
  /** Solid share at which the gap is fully open [-]. */
  GAP_OPEN(MouldMedium.Figure.GAP_OPEN, Nature.SHARE),
  /** Factor on what the mould conducts [-]. */
  MOULD_CONDUCTS(MouldMedium.Figure.CONDUCTIVITY_FACTOR, Nature.FACTOR),
  /** How dense the mould is packed [kg/m3]; with its heat per degree, what it can hold. */
  MOULD_DENSITY(MouldMedium.Figure.DENSITY, Nature.DENSITY),
  /** How easily air goes through the mould [m2]. */
  PERMEABILITY(MouldMedium.Figure.PERMEABILITY, Nature.PERMEABILITY),
  /** Where the alloy starts to freeze [K]. */
  START_OF_FREEZING(Alloy.Figure.START_OF_FREEZING, Nature.HEAT, Effort.TOOL),
  /** Heat given up over the whole of freezing [J/kg]. */
  LATENT_HEAT(Alloy.Figure.LATENT_HEAT, Nature.HEAT_OF_FREEZING, Effort.NONE),
  /** Heat per degree of the liquid [J/(kg K)]. */
  SPECIFIC_HEAT_LIQUID(Alloy.Figure.SPECIFIC_HEAT_LIQUID, Nature.SPECIFIC_HEAT, Effort.NONE),
  /** Heat per degree of the solid [J/(kg K)]. */
  SPECIFIC_HEAT_SOLID(Alloy.Figure.SPECIFIC_HEAT_SOLID, Nature.SPECIFIC_HEAT, Effort.NONE),
  /** What the liquid conducts [W/(m K)]. */
  CONDUCTIVITY_LIQUID(Alloy.Figure.CONDUCTIVITY_LIQUID, Nature.CONDUCTIVITY, Effort.NONE),
  /** What the solid conducts [W/(m K)]. */
  CONDUCTIVITY_SOLID(Alloy.Figure.CONDUCTIVITY_SOLID, Nature.CONDUCTIVITY, Effort.NONE),
  /** Density of the liquid [kg/m3]. */
  DENSITY_LIQUID(Alloy.Figure.DENSITY_LIQUID, Nature.DENSITY, Effort.NONE),
  /** Viscosity [Pa s]. */
  VISCOSITY(Alloy.Figure.VISCOSITY, Nature.VISCOSITY, Effort.NONE),
  /** Surface tension [N/m]. */
  SURFACE_TENSION(Alloy.Figure.SURFACE_TENSION, Nature.SURFACE_TENSION, Effort.NONE),
  /** Wetting angle against the mould [rad]. */
  WETTING_ANGLE(Alloy.Figure.WETTING_ANGLE, Nature.ANGLE, Effort.NONE),
  /** What an oxide film multiplies the push by that a thin gap asks for [-]. */
  FILM_FACTOR(Alloy.Figure.FILM_FACTOR, Nature.FACTOR, Effort.NONE),
  /** Solid share of the mush at which it stops [-]. */
  FLOW_STOP(Alloy.Figure.FLOW_STOP, Nature.SHARE, Effort.TRIAL),
  /** Factor on how heat spreads along the flowing metal [-]. */
  SPREADING(Nature.FACTOR, Effort.NONE, ModelInputs::spreading, ModelInputs::withSpreading),
  /** Freezing range over the drop in the skin at which half of new solid rides along [-]. */
  RANGE_RATIO(Nature.FACTOR, Effort.NONE, ModelInputs::rangeRatio, ModelInputs::withRangeRatio);

  /** What kind of quantity it is, always in SI units and kelvin. */
  public enum Nature {
    /** [K], a temperature. */
    HEAT,
    /** [K], a difference. */
    HEAT_DIFFERENCE,
    /** [K/s]. */
    COOLING_RATE,
    /** [s]. */
    TIME,
    /** [kg/s]. */
    MASS_RATE,
    /** [m]. */
    LENGTH,
    /** [W/(m2 K)]. */
    CONDUCTANCE,
    /** [W/(m K)]. */
    CONDUCTIVITY,
    /** [kg/m3]. */
    DENSITY,
    /** [m2]. */
    PERMEABILITY,
    /** [J/kg]. */
    HEAT_OF_FREEZING,
    /** [J/(kg K)]. */
    SPECIFIC_HEAT,
    /** [Pa s]. */
    VISCOSITY,
    /** [N/m]. */
    SURFACE_TENSION,
    /** [rad]. */
    ANGLE,
    /** [-], 0 to 1. */
    SHARE,
    /** [-]. */
    FACTOR
  }

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

  private final Nature nature;
  private final Effort effort;
  private final Function<PourCase, Optional<Band>> band;
  private final BiFunction<PourCase, Band, PourCase> set;

  UncertainInput(
      Nature nature,
      Effort effort,
      Function<PourCase, Optional<Band>> band,
      BiFunction<PourCase, Band, PourCase> set) {
    this.nature = nature;
    this.effort = effort;
    this.band = band;
    this.set = set;
  }

  UncertainInput(Nature nature, Effort effort, OfMetal figure) {
    this(
        nature,
        effort,
        job -> Optional.of(figure.of(job.metal())),
        (job, value) -> job.withMetal(figure.with(job.metal(), value)));
  }

  UncertainInput(Alloy.Figure figure, Nature nature, Effort effort) {
    this(
        nature,
        effort,
        job -> Optional.of(job.metal().alloy().figure(figure)),
        (job, value) ->
            job.withMetal(job.metal().withAlloy(job.metal().alloy().with(figure, value))));
  }

  UncertainInput(MouldMedium.Figure figure, Nature nature) {
    this(
        nature,
        Effort.TRIAL,
        job -> Optional.of(job.mould().medium().figure(figure)),
        (job, value) ->
            job.withMould(job.mould().withMedium(job.mould().medium().with(figure, value))));
  }

  /** What kind of quantity it is. */
  public Nature nature() {
    return nature;
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
    return band.apply(job).map(this::possible);
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
    return switch (nature) {
      case HEAT, HEAT_DIFFERENCE, COOLING_RATE -> 0.0;
      case TIME -> this == POUR_SECONDS ? LEAST_PART * best : 0.0;
      case ANGLE -> Math.PI / 2;
      default -> this == FILM_FACTOR ? 1.0 : LEAST_PART * best;
    };
  }

  /** Most it can be. */
  double most() {
    return switch (nature) {
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
    return set.apply(job, known.at(value));
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
    Band known =
        band(job).orElseThrow(() -> new IllegalArgumentException("the job has no " + name()));
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

  /** Figures of what is in the crucible. */
  private enum OfMetal {
    READING,
    WAITING,
    COOLING_RATE,
    LIP_LOSS;

    Band of(Metal m) {
      return switch (this) {
        case READING -> m.reading();
        case WAITING -> m.waiting();
        case COOLING_RATE -> m.coolingRate();
        case LIP_LOSS -> m.lipLoss();
      };
    }

    Metal with(Metal m, Band band) {
      return switch (this) {
        case READING -> m.withReading(band);
        case WAITING -> m.withWaiting(band);
        case COOLING_RATE -> m.withCoolingRate(band);
        case LIP_LOSS -> m.withLipLoss(band);
      };
    }
  }
}
