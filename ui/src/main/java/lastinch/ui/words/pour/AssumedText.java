package lastinch.ui.words.pour;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import lastinch.cases.plan.Assumed;
import lastinch.solver.material.Band;
import lastinch.ui.words.Figures;
import lastinch.ui.words.Sentences;

/** What was taken where a file says nothing or that nobody knows. */
public final class AssumedText {
  private final Sentences sentences;
  private final Figures figures;

  public AssumedText(Sentences sentences, Figures figures) {
    this.sentences = Objects.requireNonNull(sentences, "sentences");
    this.figures = Objects.requireNonNull(figures, "figures");
  }

  /** One line for each, in the given order. */
  public List<String> lines(List<Assumed> assumed) {
    List<String> lines = new ArrayList<>();
    for (Assumed one : assumed) {
      Band band = one.band();
      String line =
          sentences.say(
              one.said() ? "assumed.said" : "assumed.absent",
              "what",
              sentences.say("assumed." + one.path().replace('/', '.').replace(' ', '_'))
                  + (one.spread() ? sentences.say("assumed.spread") : ""),
              "value",
              figures.shown(one.dimension(), band.value()));
      lines.add(
          band.isOpen()
              ? line
                  + " "
                  + sentences.say(
                      "assumed.range",
                      "low",
                      figures.shownBare(one.dimension(), band.low()),
                      "high",
                      figures.shownBare(one.dimension(), band.high()))
              : line);
    }
    return lines;
  }
}
