package lastinch.ui.words;

import java.util.Optional;
import lastinch.solver.casting.PourCase;
import lastinch.solver.uncertainty.UncertainInput;

/** How a figure is found out in the mould that a job has. */
public final class Measuring {
  private Measuring() {}

  /**
   * What to do, in a sentence; a trial that suits one mould does not suit another. Empty for a
   * figure that no shop finds out.
   */
  public static Optional<String> how(Sentences sentences, UncertainInput unknown, PourCase job) {
    String key = "measure." + unknown.name();
    String own = key + "." + job.mould().medium().family().name();
    if (sentences.has(own)) {
      return Optional.of(sentences.say(own));
    }
    return sentences.has(key) ? Optional.of(sentences.say(key)) : Optional.empty();
  }
}
