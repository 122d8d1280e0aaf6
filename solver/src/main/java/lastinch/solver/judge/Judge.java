package lastinch.solver.judge;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import lastinch.solver.casting.Pour;
import lastinch.solver.casting.PourCase;
import lastinch.solver.charge.MeltProperties;
import lastinch.solver.physics.SplashLimit;
import lastinch.solver.result.Finding;
import lastinch.solver.result.Finding.Severity;
import lastinch.solver.result.Spot;

/** What a caster should hear of a pour besides the verdict; each method is a rule. */
public final class Judge {
  /** Gap in capillary lengths up to which metal fills it from face to face [-]; ours, no source. */
  private static final double PUDDLE = 1.5;

  /** Push of the air ahead from which it is told of [Pa]; our own limit, no source. */
  private static final double AIR_COUNTS = 200.0;

  /** Kiln and nearest edge further apart than this are told of [K]; our own limit, no source. */
  private static final double FLASK_APART = 5.0;

  /** Widths of a side gate above which a piece lets its jet shoot across [-]; common practice. */
  private static final double JET = 3.0;

  /** Share of its length above which a piece fills across as much as along [-]; our own figure. */
  private static final double BROAD = 0.5;

  /** Share by which a typed time to fill and that of the rate may differ untold [-]; chosen. */
  private static final double TIMES_APART = 0.2;

  /** Share of the melt over the rim from which it is told of [-]; chosen. */
  private static final double SPILLED = 1e-3;

  /** Share of new solid that rides along, from and up to which the verdict hangs on it [-]. */
  private static final double MUSH_COUNTS = 0.1;

  private final PourCase job;
  private final MeltProperties melt;
  private final List<Finding> found = new ArrayList<>();

  /** Nothing found yet. */
  public Judge(PourCase job, MeltProperties melt) {
    this.job = job;
    this.melt = melt;
  }

  private void add(Severity severity, Finding.Detail detail) {
    found.add(new Finding(severity, Optional.empty(), detail));
  }

  private void add(Severity severity, Spot where, Finding.Detail detail) {
    found.add(new Finding(severity, Optional.of(where), detail));
  }

  /**
   * Metal against the room for it, and both typed times against each other.
   *
   * @param massToRim metal that fills everything to the rim [kg]
   * @param fed whether checking options feed the mould without a crucible
   */
  public void metal(double massToRim, boolean fed) {
    double melted = job.metal().melted();
    double needed = massToRim - job.gating().cup().volume() * melt.density;
    if (melted < needed && !fed) {
      add(Severity.SERIOUS, new Finding.TooLittleMetal(needed, melted));
    }
    if (job.pour() instanceof Pour.Both both) {
      double typed = both.empties().value();
      double implied = melted / both.rate(melted, massToRim);
      if (Math.abs(implied - typed) > TIMES_APART * typed) {
        add(Severity.WATCH, new Finding.PourTimesDisagree(typed, implied));
      }
    }
  }

  /** Metal over the rim of the cup [kg]. */
  public void spilled(double mass) {
    if (mass > SPILLED * job.metal().melted()) {
      add(Severity.WATCH, new Finding.CupOverflows(mass));
    }
  }

  /** The cup ran empty at a time [s] before the mould was full. */
  public void ranDry(double time) {
    add(Severity.SERIOUS, new Finding.CupRunsEmpty(time));
  }

  /** The sprue never stood full. */
  public void sprueNeverFull(double standing, double couldPass) {
    add(Severity.NOTE, new Finding.SprueNeverFull(standing, couldPass));
  }

  /** Fastest metal in a gate [m/s]. */
  public void gate(String name, double speed) {
    double limit = SplashLimit.TRADE;
    if (speed > limit) {
      add(
          speed > 2.0 * limit ? Severity.SERIOUS : Severity.WATCH,
          new Spot(name, 0.0),
          new Finding.GateSplashes(speed, limit));
    }
  }

  private double splashSpeed() {
    return SplashLimit.speed(
        Math.max(1e-6, job.metal().alloy().surfaceTension().value()), melt.density);
  }

  /** Fastest front in the piece [m/s]: whether its surface holds together. */
  public void front(Spot where, double speed) {
    double limit = splashSpeed();
    if (speed > limit && !melt.water) {
      add(Severity.NOTE, where, new Finding.FrontSplashes(speed, limit));
    }
  }

  /** Hardest run of metal square against the mould [m/s]. */
  public void against(Spot where, double speed) {
    if (speed > SplashLimit.TRADE) {
      add(Severity.NOTE, where, new Finding.RunsAgainstMould(speed, SplashLimit.TRADE));
    }
  }

  /** Highest free fall into the piece [m]. */
  public void fall(Spot where, double height) {
    double limit = SplashLimit.fallHeight(splashSpeed());
    if (height > limit) {
      add(Severity.WATCH, where, new Finding.Falls(height, limit));
    }
  }

  /** A thick place of the piece [m]. */
  public void thick(Spot where, double thickness) {
    double limit = PUDDLE * melt.capillaryLength;
    boolean lies = !job.mould().attitude().upright() && !melt.water;
    if (lies && thickness > limit) {
      add(Severity.NOTE, where, new Finding.Puddles(thickness, limit));
    }
  }

  /**
   * A jet from a side gate into a much wider piece crosses it, which a pour along channels does not
   * see.
   *
   * @param width of the piece there [m]
   * @param length of the piece [m]
   */
  public void jet(String gate, double gateWidth, double width, double length) {
    boolean broad = width > BROAD * length && width > gateWidth;
    if (broad || width > JET * gateWidth) {
      add(Severity.WATCH, new Spot(gate, 0.0), new Finding.WidePiece(width, gateWidth));
    }
  }

  /** Largest pressure of shut-in air above outside [Pa]. */
  public void air(double pressure) {
    if (pressure > AIR_COUNTS) {
      add(Severity.WATCH, new Finding.AirPushesBack(pressure));
    }
  }

  /** The mould against its medium, and its nearest edge [K] against the kiln. */
  public void mould(double atEdge) {
    double temperature = job.mould().temperature().value();
    double ceiling = job.mould().medium().ceiling().value();
    if (temperature > ceiling) {
      add(Severity.SERIOUS, new Finding.AboveCeiling(temperature, ceiling));
    }
    if (temperature - atEdge > FLASK_APART) {
      add(Severity.NOTE, new Finding.FlaskEdge(temperature, atEdge));
    }
  }

  /** Largest share of solid anywhere [-]: whether a gap may have opened. */
  public void solid(double most) {
    if (most > melt.contact.skinFrees) {
      add(Severity.NOTE, new Finding.GapCounts(most));
    }
  }

  /** Share of new solid that rides along in a part of the piece [-]. */
  public void mush(Optional<Spot> where, double share) {
    if (share > MUSH_COUNTS && share < 1.0 - MUSH_COUNTS) {
      found.add(new Finding(Severity.NOTE, where, new Finding.MushShareCounts(share)));
    }
  }

  /** Look-ups beyond the ends of a table of properties. */
  public void clamped(int count) {
    if (count > 0) {
      add(Severity.WATCH, new Finding.TableClamped(count));
    }
  }

  /** All that was found, heaviest first. */
  public List<Finding> heaviestFirst() {
    List<Finding> sorted = new ArrayList<>(found);
    sorted.sort((a, b) -> b.severity().compareTo(a.severity()));
    return List.copyOf(sorted);
  }
}
