package lastinch.ui.words;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.function.Predicate;
import lastinch.solver.casting.PourCase;
import lastinch.solver.material.Hazard;
import lastinch.solver.material.MouldFamily;

/**
 * What can hurt whoever does a job, most serious first. A caution belongs to a job by its metal,
 * its mould and their temperatures alone, never by what came of a pour.
 */
@SuppressWarnings("ImmutableEnumChecker") // predicates that hold nothing
public enum Caution {
  WATER(job -> true),
  STEAM(job -> mould(job, Hazard.STEAM)),
  METAL_MOULD(job -> job.mould().medium().family() == MouldFamily.PERMANENT),
  LEAD_FUME(job -> metal(job, Hazard.LEAD_FUME), With.METAL),
  ZINC_FUME(job -> metal(job, Hazard.ZINC_FUME), With.METAL),
  MOULD_TOO_HOT(job -> job.mould().temperature().value() > ceiling(job), With.MOULD),
  METAL_TOO_HOT(job -> job.metal().reading().value() > hottest(job), With.METAL),
  SULPHUR_FUME(job -> mould(job, Hazard.SULPHUR_FUME), With.MOULD),
  HOT_MOULD(job -> job.mould().temperature().value() > Caution.BURNS),
  SILICA_DUST(job -> mould(job, Hazard.SILICA_DUST)),
  BURNOUT_FUME(job -> mould(job, Hazard.BURNOUT_FUME)),
  BINDER_SMOKE(job -> mould(job, Hazard.BINDER_SMOKE)),
  QUENCH(job -> job.mould().medium().family() == MouldFamily.INVESTMENT),
  GEAR(job -> true),
  NEVER_SAFE(job -> true);

  /** A touch of a mould hotter than this burns [K]: 60 degC, from memory. */
  private static final double BURNS = 333.15;

  /** Cautions that are printed however little room there is. */
  static final Set<Caution> ALWAYS_PRINTED =
      Set.of(WATER, STEAM, METAL_MOULD, LEAD_FUME, ZINC_FUME, NEVER_SAFE);

  /** What makes it worse as its temperature rises. */
  private enum With {
    NOTHING,
    METAL,
    MOULD
  }

  private final Predicate<PourCase> belongs;
  private final With grows;

  Caution(Predicate<PourCase> belongs) {
    this(belongs, With.NOTHING);
  }

  Caution(Predicate<PourCase> belongs, With grows) {
    this.belongs = belongs;
    this.grows = grows;
  }

  /** Whether a change of a job makes it worse than it was: hotter metal, a hotter mould. */
  boolean grows(PourCase before, PourCase after) {
    return switch (grows) {
      case NOTHING -> false;
      case METAL -> after.metal().reading().value() > before.metal().reading().value();
      case MOULD -> after.mould().temperature().value() > before.mould().temperature().value();
    };
  }

  /** The cautions of a job, most serious first. */
  public static List<Caution> of(PourCase job) {
    List<Caution> all = new ArrayList<>();
    for (Caution caution : values()) {
      if (caution.belongs.test(job)) {
        all.add(caution);
      }
    }
    return List.copyOf(all);
  }

  private static boolean metal(PourCase job, Hazard hazard) {
    return job.metal().alloy().givesOff().contains(hazard);
  }

  private static boolean mould(PourCase job, Hazard hazard) {
    return job.mould().medium().givesOff().contains(hazard);
  }

  private static double ceiling(PourCase job) {
    return job.mould().medium().ceiling().value();
  }

  /** Hottest that the metal is usually poured [K]. */
  private static double hottest(PourCase job) {
    return job.metal().alloy().pourTemperature().high();
  }
}
