package lastinch.solver.uncertainty;

import java.util.Optional;
import lastinch.solver.casting.Flask;
import lastinch.solver.casting.Metal;
import lastinch.solver.casting.ModelCoefficients;
import lastinch.solver.casting.Mould;
import lastinch.solver.casting.Orientation;
import lastinch.solver.casting.Pour;
import lastinch.solver.casting.PourCase;
import lastinch.solver.material.Alloy;
import lastinch.solver.material.Band;
import lastinch.solver.material.Basis;
import lastinch.solver.material.Citation;
import lastinch.solver.material.MouldMedium;
import lastinch.solver.run.SampleFoundry;
import lastinch.solver.run.SampleJob;

/** Jobs whose figures carry bands: all of them, or single ones. */
public final class BandedJob {
  private static final Citation INVENTED = new Citation(Basis.ESTIMATE, "invented", "");

  private BandedJob() {}

  /** The feather in sand with every figure known, the laws too. */
  public static PourCase exact(double emptiesIn) {
    PourCase job = SampleJob.featherInSand(emptiesIn).build();
    ModelCoefficients laws =
        job.laws()
            .withSpreading(Band.typed(job.laws().spreading().value()))
            .withRangeRatio(Band.typed(job.laws().rangeRatio().value()))
            .withTurns(Band.typed(job.laws().turns().value()));
    return job.withLaws(laws);
  }

  /** The same with a band round one figure, its ends as factors on the best figure. */
  public static PourCase with(PourCase job, UncertainInput unknown, double low, double high) {
    double best = unknown.band(job).orElseThrow().value();
    return spread(job, unknown, new Band(best, low * best, high * best, INVENTED));
  }

  private static PourCase spread(PourCase job, UncertainInput unknown, Band band) {
    Mould mould = job.mould();
    return switch (unknown) {
      case READING -> job.withMetal(job.metal().withReading(band));
      case POUR_SECONDS -> job.withPour(new Pour.Empties(band));
      case CONTACT_LIQUID ->
          job.withMould(
              mould.withMedium(mould.medium().with(MouldMedium.Figure.CONTACT_LIQUID, band)));
      case RANGE_RATIO -> job.withLaws(job.laws().withRangeRatio(band));
      default -> throw new IllegalArgumentException(unknown.name());
    };
  }

  /** A job in which each figure that can carry a band has one, none like another. */
  static PourCase allOpen() {
    Count n = new Count();
    Alloy alloy = SampleFoundry.tinBronze();
    for (Alloy.Figure figure : Alloy.Figure.values()) {
      alloy = alloy.with(figure, n.round(alloy.figure(figure).value()));
    }
    MouldMedium medium = SampleFoundry.gypsum();
    for (MouldMedium.Figure figure : MouldMedium.Figure.values()) {
      medium = medium.with(figure, n.round(medium.figure(figure).value()));
    }
    PourCase job = SampleJob.featherInGypsum(2.5).build();
    Flask flask = new Flask(0.1, 0.48, 2e-3, n.round(0.018), n.round(60.0), 7900.0, 500.0, 0.8);
    Mould mould =
        new Mould(
            medium,
            n.round(893.0),
            n.round(0.05),
            Optional.of(flask),
            Orientation.UPRIGHT_TIP_DOWN,
            n.round(5e-5),
            101325.0);
    Metal metal =
        new Metal(alloy, 1.0, n.round(1423.0), n.round(20.0), n.round(2.0), n.round(15.0));
    return new PourCase(
        "all open",
        job.piece(),
        mould,
        job.gating(),
        metal,
        new Pour.Empties(n.round(2.5)),
        job.checking(),
        ModelCoefficients.USUAL.withSpreading(n.round(1.0)).withRangeRatio(n.round(3.0)));
  }

  private static final class Count {
    private int made;

    Band round(double best) {
      made++;
      double part = 1e-3 * (50 + made) * 0.2;
      return new Band(best, best * (1.0 - part), best * (1.0 + part), INVENTED);
    }
  }
}
