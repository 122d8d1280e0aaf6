package lastinch.ui.cli;

import java.util.List;
import lastinch.cases.plan.Materials;
import lastinch.cases.plan.OwnedThings;
import lastinch.cases.plan.Plan;
import lastinch.solver.levers.Lever;
import lastinch.solver.levers.Levers;
import lastinch.solver.levers.Owned;
import lastinch.ui.cli.study.StudyRuns;
import lastinch.ui.words.Figures;
import lastinch.ui.words.study.HowPoured;

/**
 * Plans and what there is to choose from.
 *
 * @param plans in the order asked
 * @param figures units in which it is answered
 * @param materials metals and moulds
 * @param how they are poured
 * @param runs pours them
 */
public record Request(
    List<Plan> plans, Figures figures, Materials materials, HowPoured how, StudyRuns runs) {
  public Plan plan() {
    return plans.get(0);
  }

  /** Whether the model of a plan's piece is poured as it was drawn. */
  public boolean isPouredAsDrawn(Plan plan) {
    return how.isPlane() && plan.pourCase().piece().model().isPresent();
  }

  /** Levers of the plan that the way of pouring it can answer. */
  public List<Lever> levers() {
    List<Lever> all = Levers.of(plan().pourCase(), owned());
    return isPouredAsDrawn(plan()) ? Levers.besidesThePiece(all) : all;
  }

  public Owned owned() {
    return OwnedThings.of(plan(), materials, figures.units());
  }
}
