package lastinch.solver.search;

import java.util.ArrayList;
import java.util.List;
import lastinch.solver.result.Finding;
import lastinch.solver.study.RunSummary;
import lastinch.solver.study.VerdictWord;

/** What spoils a casting, worst first, judged on a plan's best pour and on its bad one together. */
public enum Trouble {
  /** The best pour does not fill. */
  STOPS,
  /** The best pour is full, but two streams in it do not join. */
  APART,
  /** The bad pour does not fill, or its streams do not join. */
  BAD_POUR_FAILS,
  /** It fills with less heat to spare than is wanted, or just so in the bad pour. */
  LITTLE_SPARE,
  /** The rim stays rounded. */
  EDGE_ROUNDED,
  /** A gate runs faster than the splash limit. */
  SPLASHES;

  /** Whether a pair of pours has it. */
  boolean isIn(Pair pair) {
    return switch (this) {
      case STOPS ->
          pair.best().end() != RunSummary.End.FILLED && pair.best().end() != RunSummary.End.APART;
      case APART -> pair.best().end() == RunSummary.End.APART;
      case BAD_POUR_FAILS -> !pair.bad().filled();
      case LITTLE_SPARE -> pair.best().filled() && pair.bad().filled() && measure(pair) < 0.0;
      case EDGE_ROUNDED -> pair.best().edgesRounded();
      case SPLASHES -> pair.best().findings().contains(Finding.Kind.GATE_SPLASHES);
    };
  }

  /** How far a pair is from having it, or how deep in it; more is better [-]. */
  double measure(Pair pair) {
    return switch (this) {
      case STOPS, APART -> pair.best().goodness();
      case LITTLE_SPARE ->
          Math.min(pair.best().heat() - pair.wanted(), pair.bad().heat() - VerdictWord.JUST);
      case BAD_POUR_FAILS -> pair.bad().goodness();
      case EDGE_ROUNDED -> 0.0;
      case SPLASHES -> -pair.best().gateSpeed();
    };
  }

  /** All troubles of a pair, worst first. */
  static List<Trouble> of(Pair pair) {
    List<Trouble> all = new ArrayList<>();
    for (Trouble trouble : values()) {
      if (trouble.isIn(pair)) {
        all.add(trouble);
      }
    }
    return all;
  }

  /**
   * A plan poured with its best figures and on its bad pour.
   *
   * @param best with the best figures
   * @param bad the bad pour, 1 in 20
   * @param wanted heat to spare that is wanted [-]
   */
  record Pair(RunSummary best, RunSummary bad, double wanted) {}
}
