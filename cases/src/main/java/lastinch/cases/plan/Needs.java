package lastinch.cases.plan;

import java.util.ArrayList;
import java.util.List;
import lastinch.cases.format.Problems;
import lastinch.solver.casting.Gating;
import lastinch.solver.casting.Limb;
import lastinch.solver.casting.Piece;
import lastinch.solver.casting.Place;
import lastinch.solver.casting.Runner;
import lastinch.solver.run.UnsupportedCase.Need;

/** Parts of the solver that a plan asks for beyond a piece fed through one gate. */
final class Needs {
  private Needs() {}

  static List<Need> of(Piece piece, Gating gating) {
    List<Need> needs = new ArrayList<>();
    int ways = gating.gates().size() + (gating.sprue().into().isPresent() ? 1 : 0);
    if (ways > 1) {
      needs.add(Need.SEVERAL_GATES);
    }
    if (piece.limbs().size() > 1 || !piece.limbs().get(0).name().equals(Limb.ONLY)) {
      needs.add(Need.LIMBS);
    }
    if (gating.runner().filter(r -> r instanceof Runner.Alongside).isPresent()) {
      needs.add(Need.SIDE_RUNNER);
    }
    if (gating.runner().filter(r -> r.runsOn() > 0.0).isPresent()) {
      needs.add(Need.RUNNER_RUNS_ON);
    }
    if (!gating.overflows().isEmpty()) {
      needs.add(Need.OVERFLOWS);
    }
    if (!gating.feeders().isEmpty()) {
      needs.add(Need.FEEDERS);
    }
    boolean along =
        gating.gates().stream()
            .anyMatch(g -> g.place() instanceof Place.At at && at.distance() > 0.0);
    if (along) {
      needs.add(Need.GATE_ALONG_PIECE);
    }
    return needs;
  }

  /** Says of words that are understood but that no part of the solver can take yet. */
  static void sayNotYet(Fields root, Problems problems) {
    root.group("piece")
        .filter(p -> p.has("model"))
        .ifPresent(
            p ->
                problems.add(
                    p.span("model"),
                    "This needs the reader of drawn solids, not there yet; give stations"));
    root.group("gating")
        .filter(g -> !g.list("chills").isEmpty())
        .ifPresent(
            g -> problems.add(g.span("chills"), "This needs the sums for chills, not there yet"));
    if (root.has("pours from the same crucible")) {
      problems.add(
          root.span("pours from the same crucible"),
          "This needs the sums for several moulds from one melt, not there yet");
    }
  }
}
