package lastinch.ui;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import lastinch.solver.casting.Checking;
import lastinch.solver.casting.PourCase;
import lastinch.solver.material.Band;
import lastinch.solver.material.Basis;
import lastinch.solver.material.Citation;
import lastinch.solver.result.PourResult;
import lastinch.solver.study.Measure;
import lastinch.solver.study.VerdictWord;
import lastinch.solver.uncertainty.BandStudy;
import lastinch.solver.uncertainty.OneAtATimeEffect;
import lastinch.solver.uncertainty.UncertainInput;
import lastinch.ui.words.PouredPlan;

/** Invented plans with other days beside the best one. No figure here is a forecast. */
public final class HandMadeBands {
  private static final Citation INVENTED = new Citation(Basis.ESTIMATE, "invented", "");

  private HandMadeBands() {}

  /** A plan with an unlucky and a lucky day; how hard the mould pulls heat matters most. */
  public static PouredPlan plan(PourResult best, PourResult unlucky, PourResult lucky) {
    List<OneAtATimeEffect> swings = new ArrayList<>();
    swings.add(swing(UncertainInput.READING, new Band(1423.15, 1408.15, 1438.15, INVENTED), 0.1));
    swings.add(swing(UncertainInput.POUR_SECONDS, new Band(5.0, 3.5, 6.5, INVENTED), 0.2));
    swings.add(
        swing(UncertainInput.CONTACT_LIQUID, new Band(1200.0, 500.0, 2500.0, INVENTED), 0.7));
    return of(
        best, unlucky, lucky, swings, UncertainInput.CONTACT_LIQUID, UncertainInput.POUR_SECONDS);
  }

  /** The same with one unknown that is weakest and worth finding out. */
  public static PouredPlan plan(PourResult best, PourResult other, UncertainInput unknown) {
    OneAtATimeEffect swing = swing(unknown, new Band(1.0, 0.5, 2.0, INVENTED), 1.0);
    return of(best, other, other, List.of(swing), unknown, unknown);
  }

  private static OneAtATimeEffect swing(UncertainInput unknown, Band band, double share) {
    PourCase job = HandMade.pourCase(Checking.NONE);
    return new OneAtATimeEffect(
        unknown,
        band,
        Studied.glance(job, 0.5 * share),
        Studied.glance(job, -0.4 * share),
        Measure.MARGIN,
        share);
  }

  private static PouredPlan of(
      PourResult best,
      PourResult unlucky,
      PourResult lucky,
      List<OneAtATimeEffect> swings,
      UncertainInput weakest,
      UncertainInput measure) {
    PouredPlan plain = HandMade.plan(HandMade.pourCase(Checking.NONE), best);
    VerdictWord verdict = VerdictWord.of(best, List.of(unlucky, lucky)).orElseThrow();
    return new PouredPlan(
            plain.pourCase(),
            plain.result(),
            plain.file(),
            plain.digest(),
            plain.assumed(),
            plain.noted(),
            plain.crucibleFull(),
            plain.milliseconds(),
            Optional.of(
                new BandStudy(
                    best,
                    unlucky,
                    lucky,
                    swings,
                    verdict,
                    Optional.of(weakest),
                    measure.effort() == UncertainInput.Effort.NONE
                        ? Optional.empty()
                        : Optional.of(measure))))
        .with(plain.toppedUp());
  }
}
