package lastinch.ui.words;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import lastinch.solver.casting.PourCase;
import lastinch.solver.levers.Lever;
import lastinch.solver.material.Hazard;

/** Cautions in words: the one place that every answer, report and page takes them from. */
public final class Care {
  /** Most lines that the short paragraph takes. */
  public static final int MOST_LINES = 3;

  private static final String KEY = "care.";
  private static final String SHORT = ".short";
  private static final String MORE = ".more";

  private final Sentences sentences;

  public Care(Sentences sentences) {
    this.sentences = Objects.requireNonNull(sentences, "sentences");
  }

  /** All cautions of a job in full, most serious first, one sentence or two each. */
  public List<String> all(PourCase job) {
    return all(List.of(job));
  }

  /** All cautions of some jobs in full, each once. */
  public List<String> all(List<PourCase> jobs) {
    return cautions(jobs).stream().map(c -> sentences.say(KEY + c.name())).toList();
  }

  /** The most serious cautions of a job, short: {@value #MOST_LINES} lines beside a label. */
  public String brief(PourCase job) {
    return brief(List.of(job));
  }

  /** The most serious cautions of some jobs. */
  public String brief(List<PourCase> jobs) {
    Set<Caution> wanted = cautions(jobs);
    Set<Caution> taken = EnumSet.copyOf(wanted);
    taken.retainAll(Caution.ALWAYS_PRINTED);
    for (Caution caution : wanted) {
      if (taken.add(caution) && !fits(brief(taken))) {
        taken.remove(caution);
      }
    }
    return brief(taken);
  }

  private String brief(Set<Caution> taken) {
    return String.join(
        " ", taken.stream().map(c -> sentences.say(KEY + c.name() + SHORT)).toList());
  }

  private static boolean fits(String text) {
    Page page = new Page();
    page.entry("", text);
    return page.lines().size() <= MOST_LINES;
  }

  private static Set<Caution> cautions(List<PourCase> jobs) {
    Set<Caution> all = EnumSet.noneOf(Caution.class);
    jobs.forEach(job -> all.addAll(Caution.of(job)));
    return all;
  }

  /** The end of every answer about a plan: what is not calculated, and the short paragraph. */
  public void add(Page page, PourCase job) {
    add(page, List.of(job));
  }

  /** The end of every answer about some plans: what is not calculated, and the short paragraph. */
  public void add(Page page, List<PourCase> jobs) {
    page.entry(sentences.say("label.left"), leftOut(jobs));
    page.entry(sentences.say("label.care"), brief(jobs));
  }

  /**
   * What a change of a job brings with it that can hurt: cautions that the job did not have before,
   * and what grows with a higher temperature. Printed beside the change.
   *
   * @return empty when there is nothing to say
   */
  public Optional<String> change(PourCase before, PourCase after) {
    List<Caution> had = Caution.of(before);
    List<String> more = new ArrayList<>();
    for (Caution caution : Caution.of(after)) {
      if (!had.contains(caution)) {
        more.add(sentences.say(KEY + caution.name() + SHORT));
      } else if (caution.grows(before, after)) {
        more.add(sentences.say(KEY + caution.name() + MORE));
      }
    }
    return more.isEmpty() ? Optional.empty() : Optional.of(String.join(" ", more));
  }

  /** Prints what a lever at a value brings with it that can hurt, in the lines below that lever. */
  public void beside(Page page, String indent, PourCase job, Lever lever, double value) {
    change(job, lever.set(job, value)).ifPresent(text -> page.wrapped(indent, indent, text));
  }

  /** What is not calculated and could still spoil the casting, for the end of every answer. */
  public String leftOut(PourCase job) {
    return leftOut(List.of(job));
  }

  private String leftOut(List<PourCase> jobs) {
    return sentences.say(jobs.stream().anyMatch(Care::isDamp) ? "left.damp" : "left.always");
  }

  /** In one line what is not calculated of a damp mould; empty for any other. */
  public Optional<String> damp(PourCase job) {
    return isDamp(job) ? Optional.of(sentences.say("left.damp.short")) : Optional.empty();
  }

  private static boolean isDamp(PourCase job) {
    return job.mould().medium().givesOff().contains(Hazard.STEAM);
  }
}
