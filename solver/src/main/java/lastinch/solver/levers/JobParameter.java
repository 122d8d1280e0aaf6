package lastinch.solver.levers;

import static lastinch.solver.levers.ParameterUnit.COOLING_RATE;
import static lastinch.solver.levers.ParameterUnit.FACTOR;
import static lastinch.solver.levers.ParameterUnit.HEAT;
import static lastinch.solver.levers.ParameterUnit.HEAT_DIFFERENCE;
import static lastinch.solver.levers.ParameterUnit.LENGTH;
import static lastinch.solver.levers.ParameterUnit.MASS_RATE;
import static lastinch.solver.levers.ParameterUnit.TIME;

import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.BiFunction;
import java.util.function.Function;
import lastinch.solver.casting.Flask;
import lastinch.solver.casting.Metal;
import lastinch.solver.casting.Mould;
import lastinch.solver.casting.Pour;
import lastinch.solver.casting.PourCase;
import lastinch.solver.casting.Station;
import lastinch.solver.casting.gating.Gate;
import lastinch.solver.material.Alloy;
import lastinch.solver.material.Band;
import lastinch.solver.material.MouldMedium;
import lastinch.solver.shop.LipLoss;

/**
 * One figure of a job: how it is read and how it is written. What a person moves, what nobody knows
 * exactly, what may have gone wrong and what two plans differ in all go through it.
 *
 * @param unit of its values
 * @param reader the figure with its band, exact where it has none; empty when a job has no such
 *     figure
 * @param writer the job with the figure exchanged
 * @param follows the band round another value that a person sets
 */
public record JobParameter(
    ParameterUnit unit,
    Function<PourCase, Optional<Band>> reader,
    BiFunction<PourCase, Band, PourCase> writer,
    BiFunction<Band, Double, Band> follows) {
  /** Temperature read in the crucible. */
  public static final JobParameter READING =
      metal(HEAT, Metal::reading, Metal::withReading, Band::shiftedTo);

  /** From the reading to first metal in the cup. */
  public static final JobParameter WAITING =
      metal(TIME, Metal::waiting, Metal::withWaiting, JobParameter::atLeastZero);

  /** What the metal loses while it waits. */
  public static final JobParameter COOLS =
      metal(COOLING_RATE, Metal::coolingRate, Metal::withCoolingRate, Band::scaledTo);

  /** What it loses over the lip and in the stream. */
  public static final JobParameter LIP_LOSS =
      metal(HEAT_DIFFERENCE, Metal::lipLoss, Metal::withLipLoss, Band::scaledTo);

  /** Weight in the crucible, poured as many kilograms a second whatever it is. */
  public static final JobParameter MELTED =
      exact(ParameterUnit.MASS, job -> job.metal().melted(), JobParameter::meltedAtSameRate);

  /** Solid share of the mush at which it stops. */
  public static final JobParameter FLOW_STOP = alloy(Alloy.Figure.FLOW_STOP, ParameterUnit.SHARE);

  /** Seconds that set the rate, however they are counted; where both are given, to the full cup. */
  public static final JobParameter POUR_SECONDS =
      new JobParameter(
          TIME, JobParameter::pourSeconds, JobParameter::withPourSeconds, Band::scaledTo);

  /** Metal poured a second. */
  public static final JobParameter POUR_RATE =
      new JobParameter(
          MASS_RATE,
          job ->
              job.pour() instanceof Pour.AtRate r
                  ? Optional.of(r.kilogramsPerSecond())
                  : Optional.empty(),
          (job, rate) -> job.withPour(new Pour.AtRate(rate)),
          Band::scaledTo);

  /** Mould before it leaves the kiln, or as it lies in the shop. */
  public static final JobParameter MOULD_TEMPERATURE =
      mould(HEAT, m -> Optional.of(m.temperature()), Mould::withTemperature, Band::shiftedTo);

  /** From opening the kiln to first metal. */
  public static final JobParameter OUT_OF_KILN =
      mould(
          TIME,
          m -> m.flask().map(Flask::out),
          (m, out) -> m.withFlask(m.flask().map(f -> f.withOut(out))),
          Band::scaledTo);

  /** From the nearest edge of the piece to the flask wall. */
  public static final JobParameter EDGE_TO_WALL =
      mould(
          LENGTH,
          m -> m.flask().map(f -> atMost(f.edgeToWall(), f.inside() / 2)),
          (m, edge) -> m.withFlask(m.flask().map(f -> f.withEdgeToWall(edge))),
          Band::scaledTo);

  /** Wall of a shell. */
  public static final JobParameter SHELL_WALL =
      mould(LENGTH, m -> positive(m.wallThickness()), Mould::withWallThickness, Band::scaledTo);

  /** Leak along the parting outline. */
  public static final JobParameter PARTING_CRACK =
      mould(LENGTH, m -> positive(m.partingCrack()), Mould::withPartingCrack, Band::scaledTo);

  /** How hard a medium pulls heat from liquid metal. */
  public static final JobParameter CONTACT_LIQUID =
      medium(MouldMedium.Figure.CONTACT_LIQUID, ParameterUnit.HEAT_PULL);

  /** Factor on how heat spreads along the flowing metal, unless a checking option holds it. */
  public static final JobParameter SPREADING =
      new JobParameter(
          FACTOR,
          job -> unless(job.checking().spreading(), job.laws().spreading()),
          (job, factor) -> job.withLaws(job.laws().withSpreading(factor)),
          Band::at);

  /** Freezing range over the drop in the skin at which half of new solid rides along. */
  public static final JobParameter RANGE_RATIO =
      new JobParameter(
          FACTOR,
          job -> unless(job.checking().mushShare(), job.laws().rangeRatio()),
          (job, ratio) -> job.withLaws(job.laws().withRangeRatio(ratio)),
          Band::at);

  /** Factor on what is lost on entry and where metal turns. */
  public static final JobParameter TURNS =
      new JobParameter(
          FACTOR,
          job -> Optional.of(job.laws().turns()),
          (job, factor) -> job.withLaws(job.laws().withTurns(factor)),
          Band::at);

  /** Added to the thickness of every station. */
  public static final JobParameter THICKER =
      stations(ParameterUnit.LENGTH_CHANGE, 0.0, JobParameter::added);

  public JobParameter {
    Objects.requireNonNull(unit, "unit");
    Objects.requireNonNull(reader, "reader");
    Objects.requireNonNull(writer, "writer");
    Objects.requireNonNull(follows, "follows");
  }

  /** The figure as a job has it. */
  public Optional<Band> in(PourCase job) {
    return reader.apply(job);
  }

  /** The job with the figure and its band exchanged. */
  public PourCase put(PourCase job, Band band) {
    return writer.apply(job, band);
  }

  /** The job with the figure at a value, its band gone with it; as it was where it has none. */
  public PourCase move(PourCase job, double value) {
    return in(job).map(band -> put(job, follows.apply(band, value))).orElse(job);
  }

  /** A figure without a band. */
  public static JobParameter exact(
      ParameterUnit unit,
      Function<PourCase, Double> reader,
      BiFunction<PourCase, Double, PourCase> writer) {
    return new JobParameter(
        unit,
        job -> Optional.of(Band.typed(reader.apply(job))),
        (job, band) -> writer.apply(job, band.value()),
        Band::at);
  }

  /** Something done to the stations of every limb. */
  static JobParameter stations(
      ParameterUnit unit, double now, BiFunction<List<Station>, Double, List<Station>> change) {
    return exact(
        unit,
        job -> now,
        (job, v) -> job.withPiece(job.piece().withStations(s -> change.apply(s, v))));
  }

  /** A size of one gate [m]; empty where no gate has the name. */
  public static JobParameter gate(
      String name, Function<Gate, Double> reader, BiFunction<Gate, Double, Gate> writer) {
    return new JobParameter(
        LENGTH,
        job ->
            job.gating().gates().stream()
                .filter(g -> g.name().equals(name))
                .map(g -> Band.typed(reader.apply(g)))
                .findFirst(),
        (job, band) ->
            job.withGating(job.gating().withGate(name, g -> writer.apply(g, band.value()))),
        Band::at);
  }

  /** A figure of the alloy. */
  public static JobParameter alloy(Alloy.Figure figure, ParameterUnit unit) {
    return metal(
        unit,
        m -> m.alloy().figure(figure),
        (m, band) -> m.withAlloy(m.alloy().with(figure, band)),
        Band::at);
  }

  /** A figure of what the mould is made of. */
  public static JobParameter medium(MouldMedium.Figure figure, ParameterUnit unit) {
    return mould(
        unit,
        m -> Optional.of(m.medium().figure(figure)),
        (m, band) -> m.withMedium(m.medium().with(figure, band)),
        Band::at);
  }

  private static JobParameter metal(
      ParameterUnit unit,
      Function<Metal, Band> reader,
      BiFunction<Metal, Band, Metal> writer,
      BiFunction<Band, Double, Band> follows) {
    return new JobParameter(
        unit,
        job -> Optional.of(reader.apply(job.metal())),
        (job, band) -> job.withMetal(writer.apply(job.metal(), band)),
        follows);
  }

  private static JobParameter mould(
      ParameterUnit unit,
      Function<Mould, Optional<Band>> reader,
      BiFunction<Mould, Band, Mould> writer,
      BiFunction<Band, Double, Band> follows) {
    return new JobParameter(
        unit,
        job -> reader.apply(job.mould()),
        (job, band) -> job.withMould(writer.apply(job.mould(), band)),
        follows);
  }

  private static Band atLeastZero(Band band, double value) {
    Band moved = band.shiftedTo(value);
    return new Band(value, Math.max(0.0, moved.low()), moved.high(), moved.source());
  }

  private static Band atMost(Band band, double most) {
    return new Band(band.value(), band.low(), Math.min(band.high(), most), band.source());
  }

  private static Optional<Band> positive(Band band) {
    return band.value() > 0.0 ? Optional.of(band) : Optional.empty();
  }

  private static Optional<Band> unless(OptionalDouble held, Band band) {
    return held.isPresent() ? Optional.empty() : Optional.of(band);
  }

  private static Optional<Band> pourSeconds(PourCase job) {
    if (job.pour() instanceof Pour.Empties e) {
      return Optional.of(e.seconds());
    }
    if (job.pour() instanceof Pour.CupFull c) {
      return Optional.of(c.seconds());
    }
    return job.pour() instanceof Pour.Both b ? Optional.of(b.cupFull()) : Optional.empty();
  }

  private static PourCase withPourSeconds(PourCase job, Band seconds) {
    if (job.pour() instanceof Pour.CupFull) {
      return job.withPour(new Pour.CupFull(seconds));
    }
    return job.withPour(
        job.pour() instanceof Pour.Both b
            ? new Pour.Both(b.empties(), seconds)
            : new Pour.Empties(seconds));
  }

  private static PourCase meltedAtSameRate(PourCase job, double melted) {
    double factor = melted / job.metal().melted();
    PourCase more = job.withMetal(LipLoss.otherMass(job.metal(), melted));
    if (job.pour() instanceof Pour.Empties e) {
      return more.withPour(new Pour.Empties(e.seconds().times(factor)));
    }
    if (job.pour() instanceof Pour.Both b) {
      return more.withPour(new Pour.Both(b.empties().times(factor), b.cupFull()));
    }
    return more;
  }

  private static List<Station> added(List<Station> stations, double by) {
    return stations.stream()
        .map(
            s -> {
              double thick = s.thickness() + by;
              OptionalDouble edge = s.edge();
              return s.with(
                  thick,
                  edge.isPresent()
                      ? OptionalDouble.of(Math.max(1e-4, Math.min(thick, edge.getAsDouble() + by)))
                      : edge);
            })
        .toList();
  }
}
