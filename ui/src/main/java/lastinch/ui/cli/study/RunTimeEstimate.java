package lastinch.ui.cli.study;

import java.util.Objects;
import lastinch.ui.cli.Console;
import lastinch.ui.words.Figures;
import lastinch.ui.words.ProblemText;
import lastinch.ui.words.Sentences;
import lastinch.ui.words.study.HowPoured;

/** Says before many slow runs how long they may take, and while they are made how long is left. */
public final class RunTimeEstimate {
  private static final double NANOS = 1e9;

  /** So long runs are watched before anything is said of those to come [s]; our own choice. */
  private static final double WATCHED = 2.0;

  private final Console surroundings;
  private final Sentences sentences;
  private final Figures figures;
  private final long start = System.nanoTime();

  public RunTimeEstimate(Console surroundings, Sentences sentences, Figures figures) {
    this.surroundings = Objects.requireNonNull(surroundings, "surroundings");
    this.sentences = Objects.requireNonNull(sentences, "sentences");
    this.figures = Objects.requireNonNull(figures, "figures");
  }

  /**
   * Says how many runs there will be, before the first.
   *
   * @param runs as far as can be known
   */
  void before(int runs, HowPoured how) {
    say("pace.before", "runs", roughly(runs), "how", how.brief(sentences, figures));
  }

  /**
   * Says how long all may take, after the first.
   *
   * @param seconds it took [s]
   * @param runs still to be made, as far as can be known
   * @param atOnce how many of them at a time
   */
  void afterFirst(double seconds, int runs, int atOnce) {
    double all = Math.ceil((double) runs / atOnce) * seconds;
    say("pace.first", "seconds", figures.seconds(seconds), "all", figures.span(all));
  }

  /**
   * Says that a plan is poured again, after the first time.
   *
   * @param seconds the first took [s]
   * @param runs to come
   * @param atOnce how many of them at a time
   */
  public void again(double seconds, int runs, int atOnce) {
    double all = Math.ceil((double) runs / atOnce) * seconds;
    say("pace.again", "runs", Integer.toString(runs), "all", figures.span(all));
  }

  /** How long is left, in a few words; empty while that cannot be told. */
  public String left(int done, int expected) {
    double gone = (System.nanoTime() - start) / NANOS;
    return gone < WATCHED || done == 0 || expected == 0
        ? ""
        : sentences.say("pace.left", "time", figures.span(gone / done * (expected - done)));
  }

  /** A count that is not known to the last: 540 for 536. */
  private static String roughly(int count) {
    int step = count < 20 ? 1 : count < 1000 ? 10 : 100;
    return Integer.toString(step * (int) Math.ceil((double) count / step));
  }

  private void say(String key, String... values) {
    surroundings.complain(new ProblemText(sentences).sentence(key, values));
  }
}
