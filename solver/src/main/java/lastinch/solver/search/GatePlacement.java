package lastinch.solver.search;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.Supplier;
import lastinch.solver.casting.Limb;
import lastinch.solver.casting.PourCase;
import lastinch.solver.levers.Owned;
import lastinch.solver.result.Finding;
import lastinch.solver.study.Goal;
import lastinch.solver.study.RunCache;
import lastinch.solver.study.RunSummary;

/**
 * Where to gate a piece: the best layout of each number of gates, with and without one at the thick
 * end.
 *
 * @param plan as it stands
 * @param goal what is asked for
 * @param answers best first
 * @param runs made for all this
 */
public record GatePlacement(RunSummary plan, Goal goal, List<Answer> answers, int runs) {
  /** More gates are not cut for one piece. */
  public static final int MOST = 6;

  /** Heat to spare that is as good as more of it, when a gate is saved [-]; our own choice. */
  static final double TIE = 0.02;

  /** Widths that are tried when no cutters are owned [m]; common practice, no source. */
  private static final List<Double> USUAL_WIDTHS = List.of(12e-3, 20e-3, 30e-3);

  private static final int MOST_WIDTHS = 4;

  /** First step of the search along the piece, and the last, in parts of its length [-]. */
  private static final double FIRST_STEP = 1.0 / 8.0;

  private static final double LAST_STEP = 1.0 / 64.0;

  /** Runs that one number of gates may take. */
  private static final int MOST_RUNS = 110;

  public GatePlacement {
    Objects.requireNonNull(plan, "plan");
    answers = List.copyOf(answers);
  }

  /** Why a layout loses against the first. */
  public enum Loses {
    /** It is the first. */
    BEST,
    STOPS_SHORT,
    MEETS_COLD,
    SPLASHES,
    LESS_HEAT,
    /** As good, with more to cut. */
    MORE_GATES,
    NO_ANSWER
  }

  /**
   * The best layout of its kind.
   *
   * @param layout places and widths
   * @param job the plan gated so
   * @param glance what came of it
   * @param why it loses
   */
  public record Answer(GateLayout layout, PourCase job, RunSummary glance, Loses why) {
    public Answer {
      Objects.requireNonNull(layout, "layout");
      Objects.requireNonNull(job, "job");
      Objects.requireNonNull(glance, "glance");
      Objects.requireNonNull(why, "why");
    }
  }

  /** The best of all. */
  public Answer best() {
    return answers.get(0);
  }

  /** Whether the best fills and no streams meet cold. */
  public boolean solved() {
    return best().glance().filled();
  }

  private static boolean splashes(RunSummary g) {
    return g.findings().contains(Finding.Kind.GATE_SPLASHES);
  }

  /**
   * Better is more. First that it fills and nothing meets cold; then that it has what was asked for
   * without a splash at any gate; then heat.
   */
  static double goodness(RunSummary g, Goal goal) {
    if (!g.answered()) {
      return -10.0;
    }
    if (!g.filled()) {
      return g.end() == RunSummary.End.APART ? g.heat() - 1.0 : g.signed() - 2.0;
    }
    return g.heat() + (!splashes(g) && goal.isMetBy(g) ? 1.0 : 0.0);
  }

  /** Runs that so many gates at the most take, as a rule. */
  public static int usualRuns(int most) {
    return most * MOST_RUNS;
  }

  /**
   * Searches.
   *
   * @param studies makes the runs
   * @param job the plan; {@link GateLayout#suits} it
   * @param owned cutters and strips
   * @param goal what is wanted
   * @param most gates at the most, 1 to {@value #MOST}
   * @throws RunCache.Cancelled when stopped before its end
   */
  public static GatePlacement of(RunCache studies, PourCase job, Owned owned, Goal goal, int most) {
    RunSummary plan = studies.pour(job);
    List<Double> widths = widths(job, owned);
    List<Supplier<Optional<Answer>>> tasks = new ArrayList<>();
    for (int number = 1; number <= most; number++) {
      for (boolean thickEnd : new boolean[] {true, false}) {
        int sides = number - (thickEnd ? 1 : 0);
        tasks.add(() -> new Search(studies, job, owned, goal).best(sides, thickEnd, widths));
      }
    }
    studies.expect(usualRuns(most));
    List<Answer> found = new ArrayList<>();
    for (Optional<Optional<Answer>> done : studies.all(tasks)) {
      done.orElseThrow(RunCache.Cancelled::new).ifPresent(found::add);
    }
    return new GatePlacement(plan, goal, ranked(found, goal), studies.runs());
  }

  private static List<Double> widths(PourCase job, Owned owned) {
    TreeSet<Double> all =
        new TreeSet<>(owned.gateCutters().isEmpty() ? USUAL_WIDTHS : owned.gateCutters());
    all.add(job.gating().gates().get(0).width());
    return all.stream().limit(MOST_WIDTHS).toList();
  }

  /** Best first; the fewest gates of those that are as good as the best. */
  private static List<Answer> ranked(List<Answer> found, Goal goal) {
    List<Answer> all = new ArrayList<>(found);
    all.sort(Comparator.comparingDouble(a -> -goodness(a.glance(), goal)));
    if (all.isEmpty()) {
      return all;
    }
    double most = goodness(all.get(0).glance(), goal);
    Answer first =
        all.stream()
            .filter(a -> goodness(a.glance(), goal) >= most - TIE)
            .min(Comparator.comparingInt(a -> a.layout().number()))
            .orElseThrow();
    all.remove(first);
    all.add(0, first);
    List<Answer> told = new ArrayList<>();
    for (Answer a : all) {
      told.add(new Answer(a.layout(), a.job(), a.glance(), why(a, first, goal)));
    }
    return told;
  }

  private static Loses why(Answer a, Answer first, Goal goal) {
    if (a.layout().equals(first.layout())) {
      return Loses.BEST;
    }
    RunSummary g = a.glance();
    if (!g.answered()) {
      return Loses.NO_ANSWER;
    }
    if (!g.filled()) {
      return g.end() == RunSummary.End.APART ? Loses.MEETS_COLD : Loses.STOPS_SHORT;
    }
    if (goodness(g, goal) >= goodness(first.glance(), goal) - TIE) {
      return Loses.MORE_GATES;
    }
    return splashes(g) && !splashes(first.glance()) ? Loses.SPLASHES : Loses.LESS_HEAT;
  }

  /** Search among layouts of one number of gates. */
  private static final class Search {
    private final RunCache studies;
    private final PourCase job;
    private final Owned owned;
    private final Goal goal;
    private final double length;
    private final TreeMap<String, Answer> tried = new TreeMap<>();
    private int runs;

    Search(RunCache studies, PourCase job, Owned owned, Goal goal) {
      this.studies = studies;
      this.job = job;
      this.owned = owned;
      this.goal = goal;
      this.length = job.piece().limbs().stream().mapToDouble(Limb::length).sum();
    }

    /** The best layout; empty when so many gates find no room. */
    Optional<Answer> best(int sides, boolean thickEnd, List<Double> widths) {
      Optional<Answer> best = Optional.empty();
      for (double width : widths) {
        for (double pull : sides == 0 ? new double[] {0.0} : new double[] {0.0, 0.2}) {
          best = better(best, pour(start(sides, thickEnd, width, pull)));
        }
      }
      double step = FIRST_STEP;
      while (best.isPresent() && sides > 0 && step >= LAST_STEP && runs < MOST_RUNS) {
        Optional<Answer> moved = moved(best.get(), step, widths);
        if (moved.isPresent()) {
          best = moved;
        } else {
          step /= 2.0;
        }
      }
      return best;
    }

    /** Gates spread evenly, each in the middle of its share; pulled towards the thin end or not. */
    private GateLayout start(int sides, boolean thickEnd, double width, double pull) {
      List<Double> places = new ArrayList<>();
      for (int i = 0; i < sides; i++) {
        double even = thickEnd ? (i + 1.0) / (sides + 0.5) : (2.0 * i + 1.0) / (2.0 * sides);
        places.add(marked(length * Math.min(1.0, even * (1.0 - pull) + pull * even * even)));
      }
      return new GateLayout(thickEnd, places, width);
    }

    private double marked(double at) {
      double mark = 5.0 * owned.marks().ruler();
      return mark * Math.rint(at / mark);
    }

    /** The best neighbour, when it is better: one gate moved, or all of another width. */
    private Optional<Answer> moved(Answer from, double step, List<Double> widths) {
      Optional<Answer> best = Optional.of(from);
      GateLayout now = from.layout();
      for (int i = 0; i < now.places().size() && runs < MOST_RUNS; i++) {
        for (double way : new double[] {step, -step}) {
          List<Double> places = new ArrayList<>(now.places());
          places.set(i, marked(places.get(i) + way * length));
          best = better(best, pour(new GateLayout(now.thickEnd(), places, now.width())));
        }
      }
      for (double width : widths) {
        best = better(best, pour(new GateLayout(now.thickEnd(), now.places(), width)));
      }
      return best.filter(b -> !b.layout().equals(from.layout()));
    }

    private Optional<Answer> better(Optional<Answer> best, Optional<Answer> other) {
      if (best.isEmpty() || other.isEmpty()) {
        return best.or(() -> other);
      }
      double gain = goodness(other.get().glance(), goal) - goodness(best.get().glance(), goal);
      return gain > 1e-6 ? other : best;
    }

    private Optional<Answer> pour(GateLayout layout) {
      if (!layout.isSound(length)) {
        return Optional.empty();
      }
      String key = layout.toString();
      Answer known = tried.get(key);
      if (known == null) {
        runs++;
        PourCase gated = layout.on(job, owned);
        known = new Answer(layout, gated, studies.pour(gated), Loses.BEST);
        tried.put(key, known);
      }
      return Optional.of(known);
    }
  }
}
