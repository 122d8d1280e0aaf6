package lastinch.validation.lengths;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.UnaryOperator;
import lastinch.solver.casting.Checking;
import lastinch.solver.casting.Limb;
import lastinch.solver.casting.Piece;
import lastinch.solver.casting.Place;
import lastinch.solver.casting.Pour;
import lastinch.solver.casting.PourCase;
import lastinch.solver.casting.SectionForm;
import lastinch.solver.casting.Side;
import lastinch.solver.casting.Station;
import lastinch.solver.casting.gating.Cup;
import lastinch.solver.casting.gating.Gating;
import lastinch.solver.casting.gating.Sprue;
import lastinch.solver.casting.gating.Vent;
import lastinch.solver.material.Band;
import lastinch.solver.study.Measure;
import lastinch.solver.study.RunCache;
import lastinch.solver.uncertainty.SampledInputs;
import lastinch.solver.uncertainty.ScrambledSobol;
import lastinch.solver.uncertainty.UncertainInput;

/** Pours rows: a long level channel, vented at its end, fed from a head that is held. */
final class LengthPour {
  /** Days that a range is made of; a power of two fills it evenest. */
  static final int DAYS = 64;

  /** Days beyond either end of nine in ten. */
  private static final int BEYOND = DAYS / 20;

  /** Longer than any metal here runs [m]; chosen. */
  private static final double LONG = 4.0;

  private final RunCache runs;
  private final UnaryOperator<PourCase> laws;

  /**
   * Pours with a change made to every job, such as an open factor at a value.
   *
   * @param runs makes and keeps them
   */
  LengthPour(RunCache runs, UnaryOperator<PourCase> laws) {
    this.runs = runs;
    this.laws = laws;
  }

  /**
   * What a row comes to.
   *
   * @param best with the middle of every range [mm]
   * @param low end of the range that holds nine days in ten [mm]
   * @param high its other end [mm]
   */
  record Found(double best, double low, double high) {}

  /** Lengths with the middle of every range, row by row [mm]. */
  double[] best(List<MeasuredLength> rows) {
    return reaches(rows.stream().map(LengthPour::middle).map(laws).toList());
  }

  /** Length and its range, row by row. */
  List<Found> found(List<MeasuredLength> rows) {
    double[] best = best(rows);
    List<PourCase> days = new ArrayList<>();
    rows.forEach(row -> days.addAll(days(row)));
    double[] drawn = reaches(days);
    List<Found> all = new ArrayList<>();
    for (int i = 0; i < rows.size(); i++) {
      double[] own = Arrays.copyOfRange(drawn, i * DAYS, (i + 1) * DAYS);
      Arrays.sort(own);
      all.add(new Found(best[i], own[BEYOND], own[DAYS - 1 - BEYOND]));
    }
    return all;
  }

  private List<PourCase> days(MeasuredLength row) {
    List<Band> setUp = setUp(row);
    List<UncertainInput> unknowns = UncertainInput.openIn(laws.apply(middle(row)));
    List<PourCase> days = new ArrayList<>();
    for (double[] point : ScrambledSobol.points(setUp.size() + unknowns.size(), DAYS, 0)) {
      double[] drawn = new double[setUp.size()];
      for (int i = 0; i < drawn.length; i++) {
        drawn[i] = SampledInputs.drawn(setUp.get(i), point[i]);
      }
      double[] rest = Arrays.copyOfRange(point, drawn.length, point.length);
      days.add(SampledInputs.of(laws.apply(job(row, drawn)), unknowns, rest));
    }
    return days;
  }

  /** A loss on entry that is typed goes with the factor on all such losses. */
  private static PourCase turned(PourCase job) {
    double turns = job.laws().turns().value();
    return job.checking().entryLoss().isPresent()
        ? job.withChecking(
            job.checking()
                .with(Checking.Figure.ENTRY_LOSS, turns * job.checking().entryLoss().getAsDouble()))
        : job;
  }

  private double[] reaches(List<PourCase> jobs) {
    return runs.pourAll(jobs.stream().map(LengthPour::turned).toList()).stream()
        .mapToDouble(r -> 1e3 * r.orElseThrow(RunCache.Cancelled::new).get(Measure.REACH))
        .toArray();
  }

  /** What is open in the set-up of a row, besides figures of metal and mould. */
  private static List<Band> setUp(MeasuredLength row) {
    Band size = row.channel().size();
    return row.drive() instanceof MeasuredLength.Drive.Held held
        ? List.of(size, held.head(), held.loss())
        : List.of(size);
  }

  /** The job with the middle of every range. */
  static PourCase middle(MeasuredLength row) {
    return job(row, setUp(row).stream().mapToDouble(Band::value).toArray());
  }

  private static PourCase job(MeasuredLength row, double[] setUp) {
    double width = setUp[0] * row.channel().width();
    double thickness = setUp[0] * row.channel().thickness();
    Limb limb =
        new Limb(
            Limb.ONLY,
            List.of(
                new Station(0.0, width, thickness, OptionalDouble.empty()),
                new Station(LONG, width, thickness, OptionalDouble.empty())),
            SectionForm.FLAT,
            "",
            "",
            0.0);
    return new PourCase(
            row.name(),
            new Piece(List.of(limb), Optional.empty()),
            row.mould(),
            new Gating(
                new Cup(60e-3, 40e-3),
                new Sprue(0.1, 20e-3, 16e-3, Optional.of(new Place.Into(Limb.ONLY))),
                Optional.empty(),
                Optional.empty(),
                List.of(),
                List.of(new Vent("end vent", new Place.At(Limb.ONLY, LONG, Side.TIP), 6e-3)),
                List.of(),
                List.of()),
            row.metal(),
            new Pour.AtRate(rate(row)),
            checking(row, setUp))
        .withLaws(MeasuredLengths.laws());
  }

  /** A basin takes whatever it needs [kg/s]. */
  private static Band rate(MeasuredLength row) {
    return row.drive() instanceof MeasuredLength.Drive.ByHand hand
        ? hand.rate().times(row.metal().alloy().densityLiquid().value())
        : Band.typed(10.0);
  }

  private static Checking checking(MeasuredLength row, double[] setUp) {
    return row.drive() instanceof MeasuredLength.Drive.Held
        ? Checking.NONE
            .with(Checking.Figure.CUP_KEPT_AT, setUp[1])
            .with(Checking.Figure.ENTRY_LOSS, setUp[2])
        : Checking.NONE;
  }
}
