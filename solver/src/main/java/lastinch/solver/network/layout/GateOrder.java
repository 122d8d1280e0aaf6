package lastinch.solver.network.layout;

import java.util.ArrayList;
import java.util.List;
import java.util.NavigableMap;
import java.util.TreeMap;
import java.util.function.ToDoubleFunction;
import lastinch.solver.casting.gating.Gate;

/** In which order a runner beside the piece comes to its gates. */
final class GateOrder {
  private GateOrder() {}

  /**
   * Gates by their places along the axis, counted back from the tip or not; those that lie close
   * together leave the runner at one place.
   *
   * @param axis place of a gate along the axis [m]
   */
  static NavigableMap<Double, List<Gate>> of(
      List<Gate> gates, ToDoubleFunction<Gate> axis, boolean fromTip) {
    NavigableMap<Double, List<Gate>> places = new TreeMap<>();
    for (Gate gate : gates) {
      double key = fromTip ? -axis.applyAsDouble(gate) : axis.applyAsDouble(gate);
      Double near = places.ceilingKey(key - PieceChannels.TOGETHER);
      boolean shares = near != null && near <= key + PieceChannels.TOGETHER;
      places.computeIfAbsent(shares ? near : key, a -> new ArrayList<>()).add(gate);
    }
    return places;
  }
}
