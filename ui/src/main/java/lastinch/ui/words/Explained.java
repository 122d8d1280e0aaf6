package lastinch.ui.words;

import java.util.Objects;
import lastinch.cases.plan.Plan;
import lastinch.solver.decide.HeatAccount;
import lastinch.solver.decide.Least;
import lastinch.solver.result.PourResult;

/**
 * All that explains how a plan ended.
 *
 * @param file as the person named it
 * @param result of the plan as it stands
 * @param account where its heat went
 * @param changes what single changes would do
 */
public record Explained(
    Plan plan, String file, PourResult result, HeatAccount account, Least changes) {
  public Explained {
    Objects.requireNonNull(plan, "plan");
    Objects.requireNonNull(file, "file");
    Objects.requireNonNull(result, "result");
    Objects.requireNonNull(account, "account");
    Objects.requireNonNull(changes, "changes");
  }
}
