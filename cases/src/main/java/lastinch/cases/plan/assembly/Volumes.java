package lastinch.cases.plan.assembly;

import java.util.List;
import lastinch.solver.casting.Limb;
import lastinch.solver.casting.Piece;
import lastinch.solver.casting.SectionForm;
import lastinch.solver.casting.Station;
import lastinch.solver.casting.gating.Gate;
import lastinch.solver.casting.gating.Gating;
import lastinch.solver.casting.gating.Runner;
import lastinch.solver.casting.gating.Sprue;

/** Volumes of piece and gating [m3], for weights that a person can check on a scale. */
public final class Volumes {
  private Volumes() {}

  /** Piece with its boss. */
  public static double piece(Piece piece) {
    double volume = piece.boss().map(b -> b.length() * b.width() * b.depth()).orElse(0.0);
    if (piece.model().isPresent()) {
      return volume + piece.model().get().solid().volume();
    }
    for (Limb limb : piece.limbs()) {
      List<Station> s = limb.stations();
      for (int i = 1; i < s.size(); i++) {
        volume += between(s.get(i - 1), s.get(i), limb.section());
      }
    }
    return volume;
  }

  /** Both sizes run straight between stations, so that the area is a parabola. */
  private static double between(Station a, Station b, SectionForm form) {
    double wide = (a.width() + b.width()) / 2;
    double thick = (a.thickness() + b.thickness()) / 2;
    double mean = (a.width() * a.thickness() + 4 * wide * thick + b.width() * b.thickness()) / 6;
    return share(form) * mean * (b.at() - a.at());
  }

  /** Area of a section over width times thickness [-]; a lens is two shallow parabolas. */
  private static double share(SectionForm form) {
    return switch (form) {
      case FLAT -> 1.0;
      case LENS -> 2.0 / 3.0;
      case ROUND -> Math.PI / 4;
    };
  }

  /** Cup to the rim, sprue, well, runner and gates. */
  static double gating(Gating gating) {
    Sprue s = gating.sprue();
    double volume =
        gating.cup().volume()
            + Math.PI
                / 12
                * s.tall()
                * (s.top() * s.top() + s.top() * s.foot() + s.foot() * s.foot());
    volume += gating.well().map(w -> Math.PI / 4 * w.across() * w.across() * w.depth()).orElse(0.0);
    volume += gating.runner().map(Volumes::runner).orElse(0.0);
    for (Gate gate : gating.gates()) {
      volume += gate.width() * gate.thickness() * gate.length();
    }
    return volume;
  }

  private static double runner(Runner runner) {
    double length = runner instanceof Runner.Straight s ? s.length() : 0.0;
    return runner.width() * runner.depth() * (length + runner.runsOn());
  }
}
