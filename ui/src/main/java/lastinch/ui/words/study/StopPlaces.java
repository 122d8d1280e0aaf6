package lastinch.ui.words.study;

import java.util.ArrayList;
import java.util.List;
import lastinch.solver.casting.Limb;
import lastinch.solver.casting.PourCase;
import lastinch.solver.study.RunSummary;
import lastinch.solver.uncertainty.FillProbability;

/**
 * Where metal stopped on the days it did, by stretches of the piece.
 *
 * @param fromThickEnd true for places on the piece's ruler, false for lengths left empty
 * @param stretches rising; days on which nothing got in stand first, or last
 */
public record StopPlaces(boolean fromThickEnd, List<Stretch> stretches) {
  /** Stretches of a printed answer. */
  public static final int FEW = 4;

  /** Stretches of a picture. */
  public static final int MANY = 8;

  /** A ruler shows no less [m]. */
  private static final double RULER = 1e-3;

  public StopPlaces {
    stretches = List.copyOf(stretches);
  }

  /**
   * A stretch.
   *
   * @param before whether it stands for the days on which nothing got into the piece
   * @param from [m]
   * @param to [m]
   * @param days on which metal stopped there
   */
  public record Stretch(boolean before, double from, double to, int days) {}

  /** Sorts the days of a study into so many stretches. */
  public static StopPlaces of(PourCase job, FillProbability sure, int count) {
    double length = job.piece().limbs().stream().mapToDouble(Limb::length).sum();
    boolean places =
        job.piece().limbs().size() == 1
            && sure.stopped().stream()
                .allMatch(g -> Math.abs(g.reach() + g.missing() - length) < RULER);
    int[] days = new int[count];
    int nothing = 0;
    for (RunSummary g : sure.stopped()) {
      if (g.reach() < RULER) {
        nothing++;
      } else {
        double at = places ? g.reach() : g.missing();
        days[(int) Math.max(0.0, Math.min(count - 1.0, Math.floor(count * at / length)))]++;
      }
    }
    List<Stretch> all = new ArrayList<>();
    if (nothing > 0 && places) {
      all.add(new Stretch(true, 0.0, 0.0, nothing));
    }
    for (int i = 0; i < count; i++) {
      all.add(new Stretch(false, length * i / count, length * (i + 1) / count, days[i]));
    }
    if (nothing > 0 && !places) {
      all.add(new Stretch(true, 0.0, 0.0, nothing));
    }
    return new StopPlaces(places, all);
  }
}
