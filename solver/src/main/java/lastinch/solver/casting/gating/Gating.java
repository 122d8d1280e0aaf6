package lastinch.solver.casting.gating;

import java.util.List;
import java.util.Objects;
import java.util.Optional;

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
}
