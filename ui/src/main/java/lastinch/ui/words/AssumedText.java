package lastinch.ui.words;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import lastinch.cases.plan.Assumed;
import lastinch.solver.material.Band;

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
      String key = one.said() ? "assumed.said" : "assumed.absent";
      String value = figures.shown(one.dimension(), band.value());
      lines.add(
          band.isOpen()
              ? sentences.say(
                  key + ".banded",
                  "what",
                  one.words(),
                  "value",
                  value,
                  "low",
                  figures.shown(one.dimension(), band.low()),
                  "high",
                  figures.shown(one.dimension(), band.high()))
              : sentences.say(key, "what", one.words(), "value", value));
    }
    return lines;
  }
}
