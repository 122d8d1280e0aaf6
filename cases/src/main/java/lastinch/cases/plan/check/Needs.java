package lastinch.cases.plan.check;

import lastinch.cases.format.Problems;
import lastinch.cases.plan.assembly.Fields;

/** Parts of the solver that a plan asks for and that are not there. */
public final class Needs {
  private Needs() {}

  /** Says of words that are understood but that no part of the solver can take yet. */
  public static void sayNotYet(Fields root, Problems problems) {
    root.group("gating")
        .filter(g -> !g.list("chills").isEmpty())
        .ifPresent(g -> problems.add(g.span("chills"), "wrong.needsSumsChillsNot"));
    if (root.has("pours from the same crucible")) {
      problems.add(root.span("pours from the same crucible"), "wrong.needsSumsSeveralMoulds");
    }
  }
}
