package lastinch.solver.run;

import java.util.Random;
import lastinch.solver.casting.Orientation;
import lastinch.solver.casting.Pour;
import lastinch.solver.casting.SectionForm;
import lastinch.solver.casting.Side;
import lastinch.solver.material.Band;
import lastinch.solver.material.Curve;

/**
 * Jobs of every kind with one path for the metal, each wholly set by its number: attitudes in turn,
 * sand, gypsum or steel, sizes, vents, pours and metals by chance.
 */
public final class SeededJobs {
  private static final String[] STANDS = {"flat", "tipUp", "tipDown", "uprightDown", "uprightUp"};
  private static final String[] MOULDS = {"sand", "gypsum", "steel"};
  private static final SectionForm[] FORMS = {
    SectionForm.FLAT, SectionForm.LENS, SectionForm.ROUND
  };
  private final int number;
  private final Random chance;

  private SeededJobs(int number) {
    this.number = number;
    this.chance = new Random(7919L * number + 17L);
  }

  /** The job with a number. */
  public static SampleJob job(int number) {
    return new SeededJobs(number).make();
  }

  /** In a few words. */
  public static String words(int number) {
    return "job " + number + ", " + STANDS[number % 5] + ", " + MOULDS[number / 5 % 3];
  }

  private double between(double low, double high) {
    return low + (high - low) * chance.nextDouble();
  }

  /** Evenly over the ratio. */
  private double spread(double low, double high) {
    return low * StrictMath.pow(high / low, chance.nextDouble());
  }

  private boolean once(double share) {
    return chance.nextDouble() < share;
  }

  private SampleJob make() {
    double length = spread(0.05, 0.5);
    double width = spread(0.008, 0.05);
    double thick = Math.min(0.8 * width, spread(1.5e-3, 8e-3));
    double thin = Math.max(0.8e-3, thick * between(0.25, 1.0));
    double narrow = Math.max(1.2 * thin, width * between(0.3, 1.0));
    SampleJob job =
        SampleJob.empty()
            .station(0.0, width, thick)
            .station(length * between(0.3, 0.7), between(narrow, width), between(thin, thick))
            .station(length, narrow, thin)
            .section(FORMS[chance.nextInt(FORMS.length)])
            .alloy(once(0.15) ? SampleFoundry.pureMetal() : SampleFoundry.tinBronze())
            .reads(between(1060.0, 1220.0) + SampleJob.ZERO)
            .waits(between(0.0, 40.0), between(10.0, 20.0));
    boolean boss = once(0.5);
    if (boss) {
      job.boss(between(0.01, 0.05), width * between(0.6, 1.2), thick * between(1.5, 3.0));
    }
    mould(job);
    gating(job, boss, width, thick, narrow, thin);
    if (once(0.7)) {
      job.vent(length * between(0.6, 1.0), spread(1e-3, 4e-3));
    }
    hand(job);
    return job;
  }

  private void mould(SampleJob job) {
    job.attitude(
        switch (number % 5) {
          case 0 -> Orientation.FLAT;
          case 1 -> Orientation.tilted(between(0.02, 0.6));
          case 2 -> Orientation.tilted(-between(0.02, 0.6));
          case 3 -> Orientation.UPRIGHT_TIP_DOWN;
          default -> Orientation.UPRIGHT_TIP_UP;
        });
    switch (number / 5 % 3) {
      case 0 -> job.medium(SampleFoundry.sand()).mouldAt(293.15);
      case 1 -> job.medium(SampleFoundry.gypsum()).mouldAt(between(700.0, 1000.0));
      default -> job.medium(SampleFoundry.steel()).mouldAt(between(300.0, 650.0));
    }
    job.crack(once(0.5) ? spread(2e-5, 1e-4) : 0.0);
  }

  private void gating(
      SampleJob job, boolean boss, double width, double thick, double narrow, double thin) {
    double foot = spread(0.008, 0.018);
    double tall = between(0.02, 0.3);
    boolean fromTip = once(0.25);
    job.cup(spread(0.03, 0.07), between(0.02, 0.05));
    if (once(0.5)) {
      job.well(foot * between(1.2, 2.0), between(0.005, 0.02));
    }
    double top = foot * between(1.0, 1.5);
    job.sprue(tall, top, foot);
    boolean gate = once(0.75);
    double gateLength = between(0.004, 0.03);
    if (gate && once(0.6)) {
      job.runner(between(0.02, 0.15), between(0.008, 0.018), between(0.006, 0.014));
    }
    if (fromTip && gate) {
      double high = thin * between(0.8, 1.0);
      job.gateAt(Side.TIP, narrow * between(0.4, 1.0), high, gateLength);
    } else if (fromTip) {
      job.sprueAt(tall, top, foot, Side.TIP);
    } else if (gate && boss) {
      job.gateIntoBoss(width * between(0.4, 1.0), thick * between(0.4, 1.0), gateLength);
    } else if (gate) {
      double high = thick * between(0.4, 1.0);
      job.gateAt(Side.THICK_END, width * between(0.4, 1.0), high, gateLength);
    } else if (boss) {
      job.sprueIntoBoss(tall, top, foot);
    } else {
      job.sprueAt(tall, top, foot, Side.THICK_END);
    }
  }

  private void hand(SampleJob job) {
    job.melted(spread(0.15, 3.0));
    if (once(0.2)) {
      double rate = spread(0.1, 0.8);
      job.pour(
          new Pour.ByCurve(
              Curve.of(new double[] {0.0, 1.0, 3.0}, new double[] {rate, 1.5 * rate, 0.5 * rate})));
    } else if (once(0.3)) {
      job.pour(new Pour.CupFull(Band.typed(between(1.0, 6.0))));
    } else {
      job.empties(between(1.0, 8.0));
    }
  }
}
