package lastinch.solver.decide;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.function.BiFunction;
import java.util.function.BooleanSupplier;
import lastinch.solver.casting.PourCase;
import lastinch.solver.result.PourResult;
import lastinch.solver.run.DryPour;
import lastinch.solver.run.RunObserver;

/**
 * Pours many jobs side by side. What comes back stands in the order of the jobs and does not depend
 * on how many workers there were.
 */
final class ManyPours {
  private final int workers;
  private final BooleanSupplier stopRequested;

  /**
   * A place to pour.
   *
   * @param workers how many jobs at once, at least 1
   * @param stopRequested polled from all workers
   */
  ManyPours(int workers, BooleanSupplier stopRequested) {
    if (workers < 1) {
      throw new IllegalArgumentException("workers = " + workers + ", allowed 1 or more");
    }
    this.workers = workers;
    this.stopRequested = stopRequested;
  }

  /**
   * Pours all jobs and keeps what is asked of each.
   *
   * @param jobs the jobs
   * @param kept what to keep of a job and its result
   * @return in the order of the jobs; empty when it was asked to stop
   */
  <T> Optional<List<T>> pour(List<PourCase> jobs, BiFunction<PourCase, PourResult, T> kept) {
    AtomicBoolean abandoned = new AtomicBoolean();
    BooleanSupplier stop = () -> abandoned.get() || stopRequested.getAsBoolean();
    List<Callable<T>> tasks = new ArrayList<>();
    for (PourCase job : jobs) {
      tasks.add(() -> kept.apply(job, DryPour.run(job, RunObserver.NONE, stop)));
    }
    Optional<List<T>> found =
        workers == 1 || jobs.size() < 2 ? inTurn(tasks, stop) : sideBySide(tasks, abandoned);
    return stop.getAsBoolean() ? Optional.empty() : found;
  }

  private static <T> Optional<List<T>> inTurn(List<Callable<T>> tasks, BooleanSupplier stop) {
    List<T> found = new ArrayList<>();
    for (Callable<T> task : tasks) {
      if (stop.getAsBoolean()) {
        return Optional.empty();
      }
      try {
        found.add(task.call());
      } catch (RuntimeException e) {
        throw e;
      } catch (Exception e) {
        throw new IllegalStateException(e);
      }
    }
    return Optional.of(found);
  }

  private <T> Optional<List<T>> sideBySide(List<Callable<T>> tasks, AtomicBoolean abandoned) {
    ExecutorService pool =
        Executors.newFixedThreadPool(
            Math.min(workers, tasks.size()),
            work -> {
              Thread thread = new Thread(work, "pour");
              thread.setDaemon(true);
              return thread;
            });
    boolean finished = false;
    try {
      List<Future<T>> futures = new ArrayList<>();
      for (Callable<T> task : tasks) {
        futures.add(pool.submit(task));
      }
      List<T> found = new ArrayList<>();
      for (Future<T> future : futures) {
        found.add(future.get());
      }
      finished = true;
      return Optional.of(found);
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      return Optional.empty();
    } catch (ExecutionException e) {
      if (e.getCause() instanceof RuntimeException r) {
        throw r;
      }
      throw new IllegalStateException(e.getCause());
    } finally {
      abandoned.set(!finished);
      pool.shutdownNow();
    }
  }
}
