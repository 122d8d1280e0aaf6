package lastinch.solver.geometry.gating;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import lastinch.solver.casting.Limb;

/** Names of the places where limbs begin and end, the same for all that meet there. */
public final class LimbEnds {
  /** Where the piece begins: at its boss, or at the first station. */
  public static final String START = "start";

  private static final String TIP = " tip";
  private static final String THICK_END = " thick end";

  /** What each end sits on or joins, by its name; ends that join nothing are not in it. */
  private final Map<String, String> next = new LinkedHashMap<>();

  private final Map<String, String> starts = new LinkedHashMap<>();
  private final Map<String, String> ends = new LinkedHashMap<>();

  public LimbEnds(List<Limb> limbs) {
    for (Limb limb : limbs) {
      next.put(limb.name(), limb.name() + TIP);
      next.put(limb.name() + THICK_END, limb.from().isEmpty() ? START : limb.from());
      if (!limb.to().isEmpty()) {
        next.put(limb.name() + TIP, limb.to());
      }
    }
    next.put("boss", START);
    for (Limb limb : limbs) {
      starts.put(limb.name(), named(limb.name() + THICK_END));
      ends.put(limb.name(), named(limb.name() + TIP));
    }
  }

  /** Joint at which a limb begins. */
  public String start(Limb limb) {
    return starts.get(limb.name());
  }

  /** Joint at which a limb ends. */
  public String end(Limb limb) {
    return ends.get(limb.name());
  }

  /** Whether more than one limb begins or ends at a joint. */
  public boolean isShared(String joint) {
    return Stream.concat(starts.values().stream(), ends.values().stream())
            .filter(joint::equals)
            .count()
        > 1;
  }

  /** Ends may each name the other, in a ring of names; the least of the ring then stands for it. */
  private String named(String end) {
    String at = end;
    for (int k = 0; next.containsKey(at) && k < next.size(); k++) {
      at = next.get(at);
    }
    String least = at;
    for (int k = 0; next.containsKey(at) && k < next.size(); k++) {
      at = next.get(at);
      least = at.compareTo(least) < 0 ? at : least;
    }
    return least;
  }
}
