package lastinch.ui.words;

import java.util.List;
import lastinch.solver.result.Gap;
import lastinch.solver.result.PassageRecord;
import lastinch.solver.result.PourResult;

/** What stays empty of a piece, in words. */
public final class Gaps {
  private final PourResult result;
  private final Sentences sentences;
  private final Figures figures;
  private final List<Gap> all;

  public Gaps(PourResult result, Sentences sentences, Figures figures) {
    this.result = result;
    this.sentences = sentences;
    this.figures = figures;
    this.all = result.gaps();
  }

  /** Whether metal comes to some of it from both sides. */
  public boolean anyHole() {
    return all.stream().anyMatch(Gap::hole);
  }

  /** The verdict, with every empty stretch and the number of parts where there is one limb. */
  public String verdict(Scene scene, String word) {
    String parts =
        hasLimbs()
            ? ""
            : sentences.say(
                "verdict.stopsShort.between.parts",
                "parts",
                figures.whole(1 + (int) all.stream().filter(Gap::hole).count()));
    List<String> told = all.stream().map(this::gap).toList();
    return sentences.say(
        "verdict.stopsShort.between", "word", word, "gaps", scene.list(told), "parts", parts);
  }

  /** The first hole, from one end to the other. */
  public String hole() {
    return span(all.stream().filter(Gap::hole).findFirst().orElseThrow());
  }

  private String gap(Gap gap) {
    String length = figures.ruler(gap.length());
    return hasLimbs()
        ? sentences.say(
            "verdict.stopsShort.gap.limb",
            "span",
            span(gap),
            "limb",
            gap.passage(),
            "length",
            length)
        : sentences.say("verdict.stopsShort.gap", "span", span(gap), "length", length);
  }

  private boolean hasLimbs() {
    return result.passages().stream().filter(p -> p.role() == PassageRecord.Role.PIECE).count() > 1;
  }

  private double onRuler(Gap gap, double at) {
    return result.passages().stream()
        .filter(p -> p.name().equals(gap.passage()))
        .mapToDouble(p -> p.start() + at)
        .findFirst()
        .orElse(at);
  }

  private String span(Gap gap) {
    return sentences.say(
        "verdict.span",
        "from",
        figures.rulerBare(onRuler(gap, gap.from())),
        "to",
        figures.ruler(onRuler(gap, gap.to())));
  }
}
