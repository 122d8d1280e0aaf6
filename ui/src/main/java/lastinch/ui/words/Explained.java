package lastinch.ui.words;

import java.util.Objects;
import java.util.Optional;
import lastinch.cases.plan.Plan;
import lastinch.solver.decide.BandStudy;
import lastinch.solver.decide.HeatAccount;
import lastinch.solver.decide.Least;
import lastinch.solver.result.PourResult;

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
    HeatAccount account,
    Least changes) {
  /** Of which one run is known. */
  public Explained(Plan plan, String file, PourResult result, HeatAccount account, Least changes) {
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
