package lastinch.solver.uncertainty;

import java.util.List;
import java.util.Objects;
import java.util.Optional;
import lastinch.solver.result.PourResult;
import lastinch.solver.study.VerdictWord;

/**
 * How far an answer holds: the pour with the best figures, on an unlucky and on a lucky day, and
 * what each unknown does by itself.
 *
 * @param best with the best figures
 * @param unlucky with every unknown moved a little towards its bad end, about one day in twenty
 * @param lucky the same towards the good ends
 * @param swings of all open figures that apply, in the order of {@link UncertainInput}
 * @param verdict by the precedence of {@link VerdictWord}
 * @param weakest the figure that moves the answer most, if any does
 * @param measure what to measure first: much of the spread for little effort, if anything helps
 */
public record BandStudy(
    PourResult best,
    PourResult unlucky,
    PourResult lucky,
    List<OneAtATimeEffect> swings,
    VerdictWord verdict,
    Optional<UncertainInput> weakest,
    Optional<UncertainInput> measure) {
  public BandStudy {
    Objects.requireNonNull(best, "best");
    Objects.requireNonNull(unlucky, "unlucky");
    Objects.requireNonNull(lucky, "lucky");
    swings = List.copyOf(swings);
    Objects.requireNonNull(verdict, "verdict");
    Objects.requireNonNull(weakest, "weakest");
    Objects.requireNonNull(measure, "measure");
  }
}
