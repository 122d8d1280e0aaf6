package lastinch.solver.study;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.BooleanSupplier;
import java.util.function.Supplier;
import lastinch.solver.casting.PourCase;

/**
 * Makes many runs at once. Answers do not depend on how many threads there are: each run is a
 * function of its job alone and results are handed back in the order of the questions. Runs that
 * were made are kept, so a study that was stopped goes on where it was when it is asked again.
 */
public final class RunCache implements AutoCloseable {
  private final Pourer pourer;
  private final Watch watch;
  private final BooleanSupplier stop;
  private final ExecutorService threads;
  private final ConcurrentHashMap<PourCase, RunSummary> made = new ConcurrentHashMap<>();
  private final AtomicInteger runs = new AtomicInteger();
  private final AtomicInteger beside = new AtomicInteger();
  private final AtomicInteger expected = new AtomicInteger();

  /** Told of progress, from several threads. */
  @FunctionalInterface
  public interface Watch {
    /** Watches nothing. */
    Watch NONE = (done, expected) -> {};

    /**
     * Called after every run.
     *
     * @param done runs made
     * @param expected runs there will be, as far as is known, at least {@code done}; 0 while nobody
     *     knows
     */
    void onRun(int done, int expected);
  }

  /** Somebody asked the study to stop. */
  public static final class Cancelled extends RuntimeException {
    private static final long serialVersionUID = 1L;

    /** Without the cost of a trace: it is no fault. */
    public Cancelled() {
      super("stopped", null, false, false);
    }
  }

  /**
   * Makes ready.
   *
   * @param pourer answers a job
   * @param threads how many runs at once, at least 1
   * @param watch told of progress
   * @param stop polled before and during every run
   */
  public RunCache(Pourer pourer, int threads, Watch watch, BooleanSupplier stop) {
    this.pourer = Objects.requireNonNull(pourer, "pourer");
    this.watch = Objects.requireNonNull(watch, "watch");
    this.stop = Objects.requireNonNull(stop, "stop");
    this.threads =
        Executors.newFixedThreadPool(
            threads,
            task -> {
              Thread thread = new Thread(task, "dry pours");
              thread.setDaemon(true);
              return thread;
            });
  }

  /** A study of dry pours on all cores. */
  public static RunCache onAllCores(Watch watch, BooleanSupplier stop) {
    return new RunCache(Pourer.DRY, Runtime.getRuntime().availableProcessors(), watch, stop);
  }

  /** Announces runs to come, for the progress. */
  public void expect(int more) {
    expected.addAndGet(more);
  }

  /** Whether somebody asked to stop; for runs made beside the study's own. */
  public boolean stopRequested() {
    return stop.getAsBoolean();
  }

  /** How many different runs were made. */
  public int runs() {
    return made.size() + beside.get();
  }

  /** How many runs there will be as far as is known; at least those that were made. */
  public int expected() {
    return Math.max(runs(), expected.get());
  }

  /** Counts a run that is made beside those that are kept, for the progress. */
  public void count() {
    beside.incrementAndGet();
    tell();
  }

  private void tell() {
    int done = runs.incrementAndGet();
    int all = expected.get();
    watch.onRun(done, all == 0 ? 0 : Math.max(done, all));
  }

  /**
   * The answer to one job, from before when it was asked before.
   *
   * @throws Cancelled when asked to stop
   */
  public RunSummary pour(PourCase job) {
    RunSummary known = made.get(job);
    if (known != null) {
      return known;
    }
    if (stop.getAsBoolean()) {
      throw new Cancelled();
    }
    RunSummary glance = pourer.pour(job, stop);
    made.put(job, glance);
    tell();
    return glance;
  }

  /**
   * Does tasks that do not depend on each other, side by side; a task may pour many jobs one after
   * the other.
   *
   * @return results in the order of the tasks; empty where the study was stopped before
   */
  public <T> List<Optional<T>> all(List<? extends Supplier<T>> tasks) {
    List<Future<Optional<T>>> futures = new ArrayList<>();
    for (Supplier<T> task : tasks) {
      futures.add(threads.submit(() -> done(task)));
    }
    List<Optional<T>> results = new ArrayList<>();
    for (Future<Optional<T>> future : futures) {
      results.add(wait(future));
    }
    return results;
  }

  /** Pours jobs side by side; glances in their order, empty where the study was stopped before. */
  public List<Optional<RunSummary>> pourAll(List<PourCase> jobs) {
    List<Supplier<RunSummary>> tasks = new ArrayList<>();
    for (PourCase job : jobs) {
      tasks.add(() -> pour(job));
    }
    return all(tasks);
  }

  private static <T> Optional<T> done(Supplier<T> task) {
    try {
      return Optional.of(task.get());
    } catch (Cancelled e) {
      return Optional.empty();
    }
  }

  private static <T> Optional<T> wait(Future<Optional<T>> future) {
    try {
      return future.get();
    } catch (ExecutionException e) {
      if (e.getCause() instanceof RuntimeException fault) {
        throw fault;
      }
      if (e.getCause() instanceof Error fault) {
        throw fault;
      }
      throw new IllegalStateException(e);
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      return Optional.empty();
    }
  }

  /** Lets the threads go. */
  @Override
  public void close() {
    threads.shutdownNow();
  }
}
