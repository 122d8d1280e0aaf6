package lastinch.ui.words;

import lastinch.solver.uncertainty.UncertainInput;

/** Why one thing is measured first though another matters more. */
public final class MeasureWords {
  private MeasureWords() {}

  /**
   * A sentence with a space before it; empty when what is measured is what matters most.
   *
   * @param measure what is measured first: it tells most for the effort
   * @param most what matters most
   */
  public static String why(Sentences sentences, UncertainInput measure, UncertainInput most) {
    return measure == most
        ? ""
        : " "
            + sentences.say(
                "measure.first." + measure.effort().name(),
                "most",
                sentences.say("unknown." + most.name()));
  }
}
