package lastinch.solver.casting.gating;

import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.function.UnaryOperator;

/** How metal gets from the crucible to the piece and air gets out. Lists keep the file's order. */
public record Gating(
    Cup cup,
    Sprue sprue,
    Optional<Well> well,
    Optional<Runner> runner,
    List<Gate> gates,
    List<Vent> vents,
    List<Overflow> overflows,
    List<Feeder> feeders) {
  public Gating {
    Objects.requireNonNull(cup, "cup");
    Objects.requireNonNull(sprue, "sprue");
    gates = List.copyOf(gates);
    vents = List.copyOf(vents);
    overflows = List.copyOf(overflows);
    feeders = List.copyOf(feeders);
  }

  public Gating withCup(Cup other) {
    return new Gating(other, sprue, well, runner, gates, vents, overflows, feeders);
  }

  public Gating withSprue(Sprue other) {
    return new Gating(cup, other, well, runner, gates, vents, overflows, feeders);
  }

  public Gating withWell(Optional<Well> other) {
    return new Gating(cup, sprue, other, runner, gates, vents, overflows, feeders);
  }

  public Gating withRunner(Optional<Runner> other) {
    return new Gating(cup, sprue, well, other, gates, vents, overflows, feeders);
  }

  public Gating withGates(List<Gate> other) {
    return new Gating(cup, sprue, well, runner, other, vents, overflows, feeders);
  }

  public Gating withVents(List<Vent> other) {
    return new Gating(cup, sprue, well, runner, gates, other, overflows, feeders);
  }

  public Gating withOverflows(List<Overflow> other) {
    return new Gating(cup, sprue, well, runner, gates, vents, other, feeders);
  }

  public Gating withFeeders(List<Feeder> other) {
    return new Gating(cup, sprue, well, runner, gates, vents, overflows, other);
  }

  /** One gate, found by its name, changed. */
  public Gating withGate(String name, UnaryOperator<Gate> change) {
    return withGates(gates.stream().map(g -> g.name().equals(name) ? change.apply(g) : g).toList());
  }
}
