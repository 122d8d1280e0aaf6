package lastinch.solver.levers;

import java.util.List;
import java.util.function.BiFunction;
import lastinch.solver.casting.PourCase;
import lastinch.solver.material.Band;

/** Puts a lever together word by word. */
final class LeverMaker {
  private final String key;
  private final JobParameter parameter;
  private final Band now;
  private String part = "";
  private List<String> choices = List.of();
  private Range physical = Range.physics(-Double.MAX_VALUE, Double.MAX_VALUE);
  private Range practical = physical;
  private double zero;
  private double step = 1.0;
  private Effort effort = Effort.AT_THE_FURNACE;
  private List<Double> owned = List.of();

  private LeverMaker(String key, JobParameter parameter, Band now) {
    this.key = key;
    this.parameter = parameter;
    this.now = now;
  }

  /** A lever that moves a figure which the job has. */
  static LeverMaker lever(String key, JobParameter parameter, PourCase job) {
    return new LeverMaker(key, parameter, parameter.in(job).orElseThrow());
  }

  /** A lever of its own figure, which has no band. */
  static LeverMaker lever(
      String key, ParameterUnit unit, double now, BiFunction<PourCase, Double, PourCase> writer) {
    return new LeverMaker(key, JobParameter.exact(unit, job -> now, writer), Band.typed(now));
  }

  LeverMaker part(String name) {
    part = name;
    return this;
  }

  LeverMaker choices(List<String> names) {
    choices = names;
    double last = names.size() - 1.0;
    physical =
        new Range(Bound.ours(0.0, Bound.Reason.CHOICES), Bound.ours(last, Bound.Reason.CHOICES));
    practical = physical;
    return this;
  }

  LeverMaker physical(double low, double high) {
    physical = Range.physics(low, high);
    return this;
  }

  /** What shops do, cut to what can be described. */
  LeverMaker practical(Bound low, Bound high) {
    practical = new Range(low, high).within(physical);
    return this;
  }

  LeverMaker marks(double from, double distance) {
    zero = from;
    step = distance;
    return this;
  }

  LeverMaker effort(Effort costs) {
    effort = costs;
    return this;
  }

  LeverMaker owned(List<Double> values) {
    owned = values.stream().distinct().sorted().toList();
    return this;
  }

  Lever make() {
    return new Lever(
        key, part, parameter, now, choices, physical, practical, zero, step, effort, owned);
  }
}
