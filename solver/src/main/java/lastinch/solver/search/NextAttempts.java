package lastinch.solver.search;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import lastinch.solver.casting.PourCase;
import lastinch.solver.levers.Lever;
import lastinch.solver.levers.Levers;
import lastinch.solver.levers.Owned;
import lastinch.solver.material.MouldFamily;
import lastinch.solver.result.EdgeStretch;
import lastinch.solver.result.Finding;
import lastinch.solver.result.FlowLimit;
import lastinch.solver.result.GateRecord;
import lastinch.solver.result.PourResult;
import lastinch.solver.result.StopReason;

/**
 * The single changes worth a run for a job, each one sensible step of a lever within practice: what
 * a caster would try first. The sizes of the steps are our own choice.
 */
final class NextAttempts {
  /** A pour that is clearly quicker or slower to the hand [-]. */
  private static final double FASTER = 2.0 / 3.0;

  private static final double MUCH_FASTER = 0.5;
  private static final double SLOWER = 1.5;

  /** Above so many seconds [s] a pour is timed to so much [s]. */
  private static final double LONG_POUR = 2.0;

  private static final double CLOCK = 0.5;
  private static final double HALF_THE_WAIT = 0.5;
  private static final double WAITS = 5.0;

  /** Hotter by so much [K]: more than a meter errs, less than would make another job of it. */
  private static final double HOTTER_METAL = 30.0;

  private static final double HOTTER_MOULD = 50.0;
  private static final double LARGER = 1.5;
  private static final double MUCH_LARGER = 2.0;
  private static final double TALLER = 0.05;
  private static final double LEAST_VENT = 2e-3;
  private static final double MORE_METAL = 1.1;
  private static final double TIP_LOWER = Math.toRadians(-10.0);

  /** A step cut short by practice to less than this share of itself is no step [-]. */
  private static final double STILL_A_STEP = 0.3;

  private final PourCase job;
  private final PourResult best;
  private final List<Lever> levers;
  private final List<Try> tries = new ArrayList<>();

  /** A lever and where it is put. */
  record Try(Lever lever, double value) {}

  private NextAttempts(PourCase job, PourResult best, Owned owned) {
    this.job = job;
    this.best = best;
    this.levers = Levers.of(job, owned);
  }

  /**
   * What to try.
   *
   * @param best the job poured with the best figures
   * @param troubles of the job, worst first
   */
  static List<Try> of(PourCase job, PourResult best, Owned owned, List<Trouble> troubles) {
    NextAttempts all = new NextAttempts(job, best, owned);
    boolean onlySplash = troubles.equals(List.of(Trouble.SPLASHES));
    if (!troubles.isEmpty()) {
      all.metal();
      if (onlySplash) {
        all.pour(SLOWER);
      } else {
        all.hotterAndSooner(troubles.get(0).compareTo(Trouble.LITTLE_SPARE) < 0);
      }
      all.gate();
      all.head();
      all.air();
    }
    return List.copyOf(all.tries);
  }

  private void metal() {
    boolean tooLittle =
        best.stops().stream().anyMatch(s -> s.reason() == StopReason.NO_METAL)
            || has(Finding.Kind.TOO_LITTLE_METAL);
    if (tooLittle) {
      step("melted", "", MORE_METAL * Math.max(best.massToRim(), job.metal().melted()));
    }
  }

  private void hotterAndSooner(boolean serious) {
    pour(FASTER);
    if (serious) {
      pour(MUCH_FASTER);
    }
    if (job.metal().waiting().value() > WAITS) {
      step("waiting", "", HALF_THE_WAIT * job.metal().waiting().value());
    }
    step("reading", "", job.metal().reading().value() + HOTTER_METAL);
    if (job.mould().medium().family() != MouldFamily.SAND) {
      step("mouldTemperature", "", job.mould().temperature().value() + HOTTER_MOULD);
    }
  }

  /** A pour that takes so many times as long. */
  private void pour(double times) {
    for (String key : List.of("emptiesIn", "cupFullAfter")) {
      Levers.find(levers, key, "").ifPresent(lever -> clocked(lever, lever.now() * times));
    }
    Levers.find(levers, "poursAt", "").ifPresent(lever -> step("poursAt", "", lever.now() / times));
  }

  private void clocked(Lever lever, double wanted) {
    double seconds = wanted >= LONG_POUR ? Math.rint(wanted / CLOCK) * CLOCK : wanted;
    step(lever.key(), "", seconds);
  }

  /** The gate that runs fastest, wider: the next cutters of the shop's, else half as wide again. */
  private void gate() {
    Optional<GateRecord> fastest =
        best.gates().stream().max(Comparator.comparingDouble(GateRecord::peakSpeed));
    if (fastest.isEmpty()) {
      return;
    }
    String part = best.gates().size() > 1 ? fastest.get().name() : "";
    Levers.find(levers, "gateWide", part).ifPresent(this::wider);
    if (best.flowLimitedBy() == FlowLimit.GATES) {
      Levers.find(levers, "gateThick", part)
          .ifPresent(lever -> step("gateThick", part, LARGER * lever.now()));
    }
  }

  private void wider(Lever lever) {
    List<Double> cutters =
        lever.owned().stream().filter(w -> w > lever.now() + 0.5 * lever.step()).sorted().toList();
    if (cutters.isEmpty()) {
      step(lever.key(), lever.part(), LARGER * lever.now());
      step(lever.key(), lever.part(), MUCH_LARGER * lever.now());
    } else {
      cutters.stream().limit(2).forEach(width -> step(lever.key(), lever.part(), width));
    }
  }

  /** More height above, where the metal stands to the top of the sprue; else it does nothing. */
  private void head() {
    boolean wanted =
        best.flowLimitedBy() == FlowLimit.HEAD
            || best.stops().stream().anyMatch(s -> s.reason() == StopReason.CAPILLARITY)
            || best.edges().stream().anyMatch(e -> e.cause() == EdgeStretch.Cause.PUSH);
    if (!wanted) {
      return;
    }
    if (!has(Finding.Kind.SPRUE_NEVER_FULL)) {
      step("sprueTall", "", job.gating().sprue().tall() + TALLER);
    }
    Levers.find(levers, "tipUp", "").ifPresent(lever -> step("tipUp", "", lever.now() + TIP_LOWER));
  }

  private void air() {
    if (has(Finding.Kind.AIR_PUSHES_BACK)
        || best.stops().stream().anyMatch(s -> s.reason() == StopReason.AIR)) {
      Levers.find(levers, "vent", "")
          .ifPresent(lever -> step("vent", "", Math.max(LEAST_VENT, LARGER * lever.now())));
    }
  }

  private boolean has(Finding.Kind kind) {
    return best.findings().stream().anyMatch(f -> f.kind() == kind);
  }

  /** Puts a lever as near to a value as practice and the instrument allow. */
  private void step(String key, String part, double wanted) {
    Levers.find(levers, key, part)
        .ifPresent(
            lever -> {
              double value = onMark(lever, wanted);
              if (Math.abs(value - lever.now()) >= STILL_A_STEP * Math.abs(wanted - lever.now())
                  && Math.abs(value - lever.now()) > 0.5 * lever.step()
                  && lever.physical().holds(value)
                  && tries.stream().noneMatch(t -> t.lever().equals(lever) && t.value() == value)) {
                tries.add(new Try(lever, value));
              }
            });
  }

  private static double onMark(Lever lever, double wanted) {
    if (lever.owned().contains(wanted)) {
      return wanted;
    }
    double low = lever.practical().low().value();
    double high = lever.practical().high().value();
    double value = lever.mark(lever.nearestMark(Math.max(low, Math.min(high, wanted))));
    double tiny = 1e-9 * Math.max(1.0, Math.abs(value));
    if (value > high + tiny) {
      value -= lever.step();
    }
    return value < low - tiny ? value + lever.step() : value;
  }
}
