package lastinch.ui.chart.pour;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import lastinch.solver.casting.Limb;
import lastinch.solver.casting.PourCase;
import lastinch.solver.geometry.gating.LimbEnds;
import lastinch.solver.result.Meeting;
import lastinch.solver.result.PassageRecord;
import lastinch.solver.result.PourResult;
import lastinch.solver.result.Stop;
import lastinch.ui.chart.paper.Pens;

/** Stretches of metal that the piece is made of when it comes out, and what hangs together. */
public final class Bodies {
  private static final double TOUCH = 1e-4;
  private static final double NEAR_STOP = 6e-3;

  private final List<Body> bodies = new ArrayList<>();
  private final int pieces;

  private Bodies(PourCase job, PourResult result, Map<String, DrawnBar> bars) {
    for (PassageRecord p : result.passages()) {
      DrawnBar bar = bars.get(p.name());
      if (bar == null) {
        continue;
      }
      List<Stretch> metal =
          Stretch.joined(Stretch.of(p, result.course(), job.metal().alloy().flowStop().value()));
      for (Stretch s : metal) {
        cut(bar, s, result);
      }
    }
    pieces = count(job);
  }

  static Bodies of(PourCase job, PourResult result, Map<String, DrawnBar> bars) {
    return new Bodies(job, result, bars);
  }

  /** All stretches. */
  public List<Body> list() {
    return bodies;
  }

  /** Number of parts that hang together when the gates are cut off; 0 without metal. */
  public int pieces() {
    return pieces;
  }

  /** Cuts metal where two fronts met and did not join. */
  private void cut(DrawnBar bar, Stretch metal, PourResult result) {
    double from = metal.from();
    List<Meeting> shuts =
        result.meetings().stream()
            .filter(m -> m.kind() == Meeting.Kind.COLD_SHUT && m.passage().equals(bar.name()))
            .filter(m -> m.at() > metal.from() + TOUCH && m.at() < metal.to() - TOUCH)
            .sorted(Comparator.comparingDouble(Meeting::at))
            .toList();
    Pens.Lip low = end(bar, from, result);
    for (Meeting m : shuts) {
      bodies.add(new Body(bar, from, m.at() - TOUCH, low, Pens.Lip.ROUNDED));
      from = m.at() + TOUCH;
      low = Pens.Lip.ROUNDED;
    }
    bodies.add(new Body(bar, from, metal.to(), low, end(bar, metal.to(), result)));
  }

  private static Pens.Lip end(DrawnBar bar, double at, PourResult result) {
    if (at < TOUCH || at > bar.length() - TOUCH) {
      return Pens.Lip.FULL;
    }
    for (Stop stop : result.stops()) {
      if (stop.passage().equals(bar.name()) && Math.abs(stop.at() - at) < NEAR_STOP) {
        return Body.lip(stop.reason());
      }
    }
    return result.stops().isEmpty() ? Pens.Lip.LEVEL : Body.lip(result.stops().get(0).reason());
  }

  private int count(PourCase job) {
    int[] group = new int[bodies.size()];
    for (int i = 0; i < group.length; i++) {
      group[i] = i;
    }
    Map<String, Integer> atJoint = new LinkedHashMap<>();
    for (int i = 0; i < group.length; i++) {
      Body b = bodies.get(i);
      for (String joint : joints(job, b)) {
        Integer other = atJoint.putIfAbsent(joint, i);
        if (other != null) {
          merge(group, i, other);
        }
      }
    }
    return (int) Arrays.stream(group).distinct().count();
  }

  private static void merge(int[] group, int a, int b) {
    int from = group[a];
    int to = group[b];
    for (int i = 0; i < group.length; i++) {
      group[i] = group[i] == from ? to : group[i];
    }
  }

  /** Joints of the piece that a body reaches. */
  private static List<String> joints(PourCase job, Body b) {
    List<String> reached = new ArrayList<>();
    boolean low = b.from() < TOUCH;
    boolean high = b.to() > b.bar().length() - TOUCH;
    if ("boss".equals(b.bar().name())) {
      if (high) {
        reached.add(LimbEnds.START);
      }
      return reached;
    }
    LimbEnds ends = new LimbEnds(job.piece().limbs());
    for (Limb limb : job.piece().limbs()) {
      boolean here = limb.name().equals(b.bar().name());
      if (here && low) {
        reached.add(ends.start(limb));
      }
      if (here && high) {
        reached.add(ends.end(limb));
      }
    }
    return reached;
  }
}
