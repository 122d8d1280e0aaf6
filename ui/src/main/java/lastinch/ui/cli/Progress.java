package lastinch.ui.cli;

import lastinch.solver.filling.RunObserver;
import me.tongfei.progressbar.ConsoleProgressBarConsumer;
import me.tongfei.progressbar.ProgressBar;
import me.tongfei.progressbar.ProgressBarBuilder;
import me.tongfei.progressbar.ProgressBarStyle;

/** A bar on a terminal for runs that take longer than a blink. */
public final class Progress implements RunObserver, AutoCloseable {
  /** Shorter runs show nothing [ns]. */
  private static final long BLINK = 500_000_000L;

  private static final int WHOLE = 100;
  private static final int COLUMNS = 70;

  private final Console surroundings;
  private final String title;
  private final long start = System.nanoTime();
  private ProgressBar bar;

  public Progress(Console surroundings, String title) {
    this.surroundings = surroundings;
    this.title = title;
  }

  @Override
  public void onStep(double time, double filled) {
    reached(filled, 1.0, "");
  }

  /**
   * Moves the bar; from any thread. While nobody knows how much there is to do it shows nothing.
   *
   * @param done in the unit of {@code all}
   * @param all there is to do; 0 while nobody knows
   * @param beside a few words beside it; may be empty
   */
  public synchronized void reached(double done, double all, String beside) {
    if (!(all > 0.0)) {
      return;
    }
    if (bar == null) {
      if (System.nanoTime() - start < BLINK) {
        return;
      }
      bar =
          new ProgressBarBuilder()
              .setTaskName(title)
              .setInitialMax(WHOLE)
              .setStyle(ProgressBarStyle.ASCII)
              .hideEta()
              .clearDisplayOnFinish()
              .setConsumer(new ConsoleProgressBarConsumer(surroundings.err(), COLUMNS))
              .build();
    }
    bar.setExtraMessage(beside);
    bar.stepTo(Math.round(done / all * WHOLE));
  }

  /** Takes the bar away; it comes back when there is more to show. */
  public synchronized void hide() {
    if (bar != null) {
      bar.close();
      bar = null;
    }
  }

  @Override
  public void close() {
    hide();
  }
}
