package lastinch.ui.chart.study;

import java.util.ArrayList;
import java.util.List;
import lastinch.solver.result.Meeting;
import lastinch.solver.result.Outcome;
import lastinch.ui.words.Sentences;
import lastinch.ui.words.study.Compared;

/** What pictures of several plans say: which of them come out whole. */
public final class ComparedWords {
  private ComparedWords() {}

  public static String message(Compared compared, Sentences sentences) {
    List<String> whole = new ArrayList<>();
    List<String> not = new ArrayList<>();
    for (Compared.Poured p : compared.plans()) {
      boolean apart =
          p.result().meetings().stream().anyMatch(m -> m.kind() == Meeting.Kind.COLD_SHUT);
      boolean filled = p.result().outcome() instanceof Outcome.Filled;
      (filled && !apart ? whole : not).add(p.letter());
    }
    if (not.isEmpty()) {
      return sentences.say("compare.says.all");
    }
    return whole.isEmpty()
        ? sentences.say("compare.says.none")
        : sentences.say(
            "compare.says.some", "whole", list(whole, sentences), "not", list(not, sentences));
  }

  private static String list(List<String> letters, Sentences sentences) {
    if (letters.size() == 1) {
      return letters.get(0);
    }
    return sentences.say(
        "list.and",
        "first",
        String.join(", ", letters.subList(0, letters.size() - 1)),
        "last",
        letters.get(letters.size() - 1));
  }
}
