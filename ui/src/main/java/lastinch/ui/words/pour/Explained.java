package lastinch.ui.words.pour;

import java.util.Objects;
import java.util.Optional;
import lastinch.cases.plan.Plan;
import lastinch.solver.diagnosis.HeatLossBudget;
import lastinch.solver.result.PourResult;
import lastinch.solver.search.SmallestChange;
import lastinch.solver.uncertainty.BandStudy;
import lastinch.ui.words.PouredPlan;

/**
 * All that explains how a plan ended.
 *
 * @param file as the person named it
 * @param result of the plan as it stands
 * @param bands how far that answer holds, where it was worked out
 * @param account where its heat went
 * @param changes what single changes would do
 */
public record Explained(
    Plan plan,
    String file,
    PourResult result,
    Optional<BandStudy> bands,
    HeatLossBudget account,
    SmallestChange changes) {
  /** Of which one run is known. */
  public Explained(
      Plan plan, String file, PourResult result, HeatLossBudget account, SmallestChange changes) {
    this(plan, file, result, Optional.empty(), account, changes);
  }

  public Explained {
    Objects.requireNonNull(plan, "plan");
    Objects.requireNonNull(file, "file");
    Objects.requireNonNull(result, "result");
    Objects.requireNonNull(bands, "bands");
    Objects.requireNonNull(account, "account");
    Objects.requireNonNull(changes, "changes");
  }

  /** The plan as it was poured. */
  public PouredPlan poured() {
    return PouredPlan.studied(plan, file, result, bands);
  }
}
