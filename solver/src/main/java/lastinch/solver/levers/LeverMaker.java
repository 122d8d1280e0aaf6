package lastinch.solver.levers;

import java.util.List;
import lastinch.solver.material.Band;

/** Puts a lever together word by word. */
final class LeverMaker {
  private final String key;
  private final LeverUnit unit;
  private final double now;
  private double nowLow;
  private double nowHigh;
  private String part = "";
  private List<String> choices = List.of();
  private Range physical = Range.physics(-Double.MAX_VALUE, Double.MAX_VALUE);
  private Range practical = physical;
  private double zero;
  private double step = 1.0;
  private Effort effort = Effort.AT_THE_FURNACE;
  private List<Double> owned = List.of();

  private LeverMaker(String key, LeverUnit unit, double now) {
    this.key = key;
    this.unit = unit;
    this.now = now;
    this.nowLow = now;
    this.nowHigh = now;
  }

  static LeverMaker lever(String key, LeverUnit unit, double now) {
    return new LeverMaker(key, unit, now);
  }

  LeverMaker part(String name) {
    part = name;
    return this;
  }

  /** Where it lies nine times in ten. */
  LeverMaker band(Band band) {
    nowLow = band.low();
    nowHigh = band.high();
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

  Lever sets(Lever.Setter setter) {
    return new Lever(
        key, part, unit, now, nowLow, nowHigh, choices, physical, practical, zero, step, effort,
        owned, setter);
  }
}
