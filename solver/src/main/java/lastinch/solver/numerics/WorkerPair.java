package lastinch.solver.numerics;

import java.util.concurrent.atomic.AtomicInteger;
import java.util.concurrent.locks.LockSupport;

/**
 * Two hands for one run: work that falls into two parts which have nothing to do with each other is
 * done by the caller alone, one part after the other, or by the caller and one worker at the same
 * time. What comes out is the same to the last bit, because the parts are the same.
 *
 * <p>Work is given to whoever comes first: when the worker is not there by the time the caller is
 * through with its own part, because others have the processor, the caller does the worker's part
 * too; and when the worker was sent away in the middle of its part, or keeps coming too late, the
 * caller works on alone for a while, for twice as long each time. The worker waits awake for a
 * moment, because the next work of a run comes within microseconds, and sleeps after that. Nothing
 * is allocated after construction. A team belongs to one run and has to be closed.
 */
public final class WorkerPair implements AutoCloseable {
  /** Looks at the worker's mark before the caller rests [-]. */
  private static final int PATIENCE = 5000;

  /** How long the caller rests [ns]. */
  private static final long REST = 10_000;

  /** Looks at the caller's mark before the worker goes to sleep [-]. */
  private static final int LOOKS = 20_000;

  /** Turns that the caller takes alone after the worker was sent away, at first and at most [-]. */
  private static final int LEAST_ALONE = 2_000;

  private static final int MOST_ALONE = 128_000;

  /**
   * Turns that the worker comes too late for, fewer than one in four kept, before it is let go [-].
   */
  private static final int MISSED = 500;

  /** Turns together after which the worker is trusted again [-]. */
  private static final int TRUSTED = 20_000;

  private final boolean paired;
  private final Thread worker;
  private Work work = part -> {};
  private volatile int given;

  /** Last turn whose second part somebody has taken. */
  private final AtomicInteger taken = new AtomicInteger();

  private volatile int done;
  private volatile boolean sleeps;
  private volatile boolean ends;
  private Throwable failure;
  private int alone;
  private int penalty = LEAST_ALONE;
  private int together;
  private int missed;

  /** Work in two parts. */
  @FunctionalInterface
  public interface Work {
    /** Does one part, 0 or 1. */
    void part(int part);
  }

  private WorkerPair(boolean paired) {
    this.paired = paired;
    worker = paired ? new Thread(this::work, "second hand of a run") : Thread.currentThread();
    if (paired) {
      worker.setDaemon(true);
      worker.start();
    }
  }

  /** The caller alone. */
  public static WorkerPair alone() {
    return new WorkerPair(false);
  }

  /**
   * A team of a number of threads.
   *
   * @param threads 1 or more; more than two are no faster than two
   */
  public static WorkerPair of(int threads) {
    return new WorkerPair(threads > 1);
  }

  /** Whether both parts are done at the same time. */
  boolean isHelped() {
    return paired;
  }

  /** Does both parts; what either throws is thrown once both have ended. */
  public void run(Work twoParts) {
    if (!paired || alone > 0) {
      alone = Math.max(0, alone - 1);
      twoParts.part(0);
      twoParts.part(1);
      return;
    }
    work = twoParts;
    int turn = given + 1;
    given = turn;
    if (sleeps) {
      sleeps = false;
      LockSupport.unpark(worker);
    }
    boolean mine = false;
    try {
      twoParts.part(0);
    } finally {
      mine = taken.compareAndSet(turn - 1, turn);
      if (!mine) {
        await(turn);
      }
    }
    if (mine) {
      missed++;
      if (missed >= MISSED) {
        goOnAlone();
      }
      twoParts.part(1);
    }
    if (failure != null) {
      Throwable thrown = failure;
      failure = null;
      if (thrown instanceof Error error) {
        throw error;
      }
      throw (RuntimeException) thrown;
    }
  }

  /** Waits for the worker, who has begun; gives it the processor if there is only one. */
  private void await(int turn) {
    int looks = 0;
    while (done != turn) {
      looks++;
      if (looks % PATIENCE == 0) {
        LockSupport.parkNanos(REST);
      } else {
        Thread.onSpinWait();
      }
    }
    together++;
    missed = Math.max(0, missed - 3);
    if (looks >= PATIENCE) {
      goOnAlone();
    } else if (together >= TRUSTED) {
      penalty = LEAST_ALONE;
    }
  }

  private void goOnAlone() {
    alone = penalty;
    penalty = Math.min(MOST_ALONE, 2 * penalty);
    together = 0;
    missed = 0;
  }

  private void work() {
    int seen = 0;
    while (!ends) {
      int looks = 0;
      while (given == seen && !ends) {
        looks++;
        if (looks > LOOKS) {
          sleep(seen);
        } else {
          Thread.onSpinWait();
        }
      }
      seen = given;
      if (!ends && taken.compareAndSet(seen - 1, seen)) {
        help(seen);
      }
    }
  }

  private void help(int turn) {
    try {
      work.part(1);
    } catch (RuntimeException | Error e) {
      failure = e;
    } finally {
      done = turn;
    }
  }

  private void sleep(int turn) {
    sleeps = true;
    if (given == turn && !ends) {
      LockSupport.park(this);
    }
    sleeps = false;
  }

  /** Sends the worker home. */
  @Override
  public void close() {
    ends = true;
    if (paired) {
      LockSupport.unpark(worker);
    }
  }
}
