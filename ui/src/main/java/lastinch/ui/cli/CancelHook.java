package lastinch.ui.cli;

import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicBoolean;

/**
 * Turns Ctrl-C into a wish to stop. The process ends when the command has tidied up, or after a few
 * seconds in any case.
 */
public final class CancelHook implements AutoCloseable {
  private static final long PATIENCE_SECONDS = 3;

  private final AtomicBoolean asked = new AtomicBoolean();
  private final CountDownLatch tidy = new CountDownLatch(1);

  private final Runnable patienceEnds;

  /**
   * Makes one that is not listening yet.
   *
   * @param patienceEnds done when the command has not tidied up in time
   */
  CancelHook(Runnable patienceEnds) {
    this.patienceEnds = patienceEnds;
  }

  /** Starts to listen. */
  public static CancelHook listening() {
    CancelHook stopper = new CancelHook(() -> Runtime.getRuntime().halt(Exit.CANCELLED));
    Runtime.getRuntime().addShutdownHook(new Thread(stopper::ask, "stop"));
    return stopper;
  }

  /** Asks the command to stop and waits until it has tidied up. */
  void ask() {
    asked.set(true);
    try {
      if (!tidy.await(PATIENCE_SECONDS, TimeUnit.SECONDS)) {
        patienceEnds.run();
      }
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    }
  }

  public boolean stopRequested() {
    return asked.get();
  }

  /** The command has tidied up. */
  @Override
  public void close() {
    tidy.countDown();
  }
}
