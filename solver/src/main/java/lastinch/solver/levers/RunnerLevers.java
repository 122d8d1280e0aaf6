package lastinch.solver.levers;

import static lastinch.solver.levers.LeverMaker.lever;

import java.util.List;
import java.util.Optional;
import lastinch.solver.casting.PourCase;
import lastinch.solver.casting.gating.Runner;
import lastinch.solver.levers.Bound.Reason;

/** Levers of the runner: how long, how wide, how deep. */
final class RunnerLevers {
  /** Sizes that are carved by hand [m]; common practice, no source. */
  private static final double SMALL = 8e-3;

  private static final double BIG = 30e-3;
  private static final double SHORT = 15e-3;
  private static final double LONG = 0.3;

  static final List<LeverEntry> ENTRIES =
      List.of(
          new LeverEntry("runnerLong", (job, owned) -> of(job, owned, Size.LONG)),
          new LeverEntry("runnerWide", (job, owned) -> of(job, owned, Size.WIDE)),
          new LeverEntry("runnerDeep", (job, owned) -> of(job, owned, Size.DEEP)));

  private RunnerLevers() {}

  private enum Size {
    LONG("runnerLong"),
    WIDE("runnerWide"),
    DEEP("runnerDeep");

    private final String key;

    Size(String key) {
      this.key = key;
    }

    private double of(Runner runner) {
      return switch (this) {
        case LONG -> runner instanceof Runner.Straight s ? s.length() : 0.0;
        case WIDE -> runner.width();
        case DEEP -> runner.depth();
      };
    }

    private Runner at(Runner runner, double value) {
      return switch (this) {
        case LONG -> runner instanceof Runner.Straight s ? s.withLength(value) : runner;
        case WIDE -> runner.withWidth(value);
        case DEEP -> runner.withDepth(value);
      };
    }

    private List<Double> owned(Owned shop) {
      return switch (this) {
        case LONG -> List.of();
        case WIDE -> shop.strips().stream().map(Owned.Strip::wide).toList();
        case DEEP -> shop.strips().stream().map(Owned.Strip::deep).toList();
      };
    }
  }

  private static List<Lever> of(PourCase job, Owned owned, Size size) {
    Optional<Runner> runner = job.gating().runner();
    boolean length = size == Size.LONG;
    if (runner.isEmpty() || (length && !(runner.get() instanceof Runner.Straight))) {
      return List.of();
    }
    double now = size.of(runner.get());
    return List.of(
        lever(size.key, ParameterUnit.LENGTH, now, (j, v) -> set(j, size, v))
            .physical(2e-3, length ? 5.0 : 0.5)
            .practical(
                Bound.practice(Math.min(now, length ? SHORT : SMALL), Reason.SHOP_SIZES),
                Bound.practice(Math.max(now, length ? LONG : BIG), Reason.SHOP_SIZES))
            .marks(0.0, owned.marks().ruler() * (length ? 5.0 : 1.0))
            .effort(Effort.WHILE_MOULDING)
            .owned(size.owned(owned))
            .make());
  }

  private static PourCase set(PourCase job, Size size, double value) {
    return job.gating()
        .runner()
        .map(r -> job.withGating(job.gating().withRunner(Optional.of(size.at(r, value)))))
        .orElse(job);
  }
}
