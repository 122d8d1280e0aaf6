package lastinch.ui.words.study;

import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.TreeSet;
import lastinch.cases.plan.Plan;
import lastinch.solver.diagnosis.Difference;
import lastinch.solver.result.PourResult;
import lastinch.solver.study.LookOut;
import lastinch.solver.study.RunSummary;
import lastinch.solver.uncertainty.BandStudy;
import lastinch.ui.words.PouredPlan;

/**
 * Plans poured side by side.
 *
 * @param plans in the order asked, at least two
 * @param differences of the first plan from each of the others, in their order
 * @param runs made for all this
 */
public record Compared(List<Poured> plans, List<Difference> differences, int runs) {
  /** What a trouble costs against heat to spare; our own scale [-]. */
  private static final double SERIOUS = 0.5;

  private static final double OTHER = 0.05;

  public Compared {
    plans = List.copyOf(plans);
    differences = List.copyOf(differences);
  }

  /**
   * A plan with its result.
   *
   * @param letter it goes by
   * @param file as the person named it
   * @param bands how far the result holds, where it was worked out
   */
  public record Poured(
      String letter, String file, Plan plan, PourResult result, Optional<BandStudy> bands) {
    /** Of which one run is known. */
    public Poured(String letter, String file, Plan plan, PourResult result) {
      this(letter, file, plan, result, Optional.empty());
    }

    public Poured {
      Objects.requireNonNull(letter, "letter");
      Objects.requireNonNull(file, "file");
      Objects.requireNonNull(plan, "plan");
      Objects.requireNonNull(result, "result");
      Objects.requireNonNull(bands, "bands");
    }

    /** The plan as it was poured. */
    public PouredPlan poured() {
      return PouredPlan.studied(plan, file, result, bands);
    }

    /** Gates that bring hardly any of the metal. */
    public List<String> loafingGates() {
      return CompareCells.loafing(this);
    }

    /** What a study keeps of it. */
    public RunSummary glance() {
      return RunSummary.of(plan.pourCase(), result);
    }
  }

  /** Words of the case files in which the plans differ, each with what every plan says. */
  public Map<String, List<Optional<String>>> differing() {
    TreeSet<String> unordered = new TreeSet<>();
    Map<String, List<Optional<String>>> all = new LinkedHashMap<>();
    for (Poured p : plans) {
      for (String word : p.plan().typed().keySet()) {
        if (isInput(word) && unordered.add(word)) {
          List<Optional<String>> said =
              plans.stream().map(q -> Optional.ofNullable(q.plan().typed().get(word))).toList();
          if (said.stream().distinct().count() > 1) {
            all.put(word, said);
          }
        }
      }
    }
    return all;
  }

  private static boolean isInput(String word) {
    return !word.equals("title")
        && !word.equals("based on")
        && !word.equals("format")
        && !word.endsWith("/name");
  }

  /** The plan that fills with most to spare and least trouble, when any fills. */
  public Optional<Poured> pick() {
    return plans.stream()
        .filter(p -> p.glance().filled())
        .max(Comparator.comparingDouble(Compared::worth));
  }

  private static double worth(Poured p) {
    double worth = p.glance().heat();
    for (LookOut look : LookOut.of(p.glance())) {
      worth -= look.serious() ? SERIOUS : OTHER;
    }
    return worth;
  }
}
