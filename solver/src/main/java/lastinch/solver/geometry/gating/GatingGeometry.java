package lastinch.solver.geometry.gating;

import java.util.ArrayList;
import java.util.List;
import java.util.NavigableMap;
import java.util.Optional;
import java.util.TreeMap;
import lastinch.solver.casting.Orientation;
import lastinch.solver.casting.Place;
import lastinch.solver.casting.PourCase;
import lastinch.solver.casting.Side;
import lastinch.solver.casting.gating.Gate;
import lastinch.solver.casting.gating.Runner;

/**
 * Where the gating of a job runs in the parting plane, in the order metal comes to it: foot of the
 * sprue, stretches of the runner, gates. A straight runner leads on from the first gate the way the
 * gate points, or level when the mould stands upright and the gate points up or down; a runner
 * beside the piece follows the outer ends of the gates. Heights are those along the piece's axis
 * times the rise of the mould.
 */
public final class GatingGeometry {
  /** Length of the neck of an overflow [m]; chosen, no source. */
  public static final double NECK = 5e-3;

  /** What joins no further apart joins at one place [m]; chosen, under half a usual cell. */
  public static final double TOGETHER = 2e-3;

  /** Finds where something joins the piece, and which way is out. */
  @FunctionalInterface
  public interface Rim {
    /**
     * A mouth on the rim.
     *
     * @param width breadth of what joins [m]
     */
    Mouth at(Place place, double width);
  }

  /** A place in the parting plane [m]. */
  public record Point(double x, double y) {}

  /**
   * A gate from its mouth outwards.
   *
   * @param mouth where it enters the piece
   */
  public record GateLine(Gate gate, Mouth mouth) {
    /** Place on its line so far beyond its outer end. */
    public Point end(double beyond) {
      return new Point(mouth.xOut(gate.length() + beyond), mouth.yOut(gate.length() + beyond));
    }
  }

  /**
   * A straight part of the runner, in the way metal takes.
   *
   * @param name as its channel
   * @param length [m]
   * @param gates those that leave at its end
   */
  public record Stretch(String name, Point from, Point to, double length, List<GateLine> gates) {}

  private final List<GateLine> gates = new ArrayList<>();
  private final List<Stretch> stretches = new ArrayList<>();
  private final Point foot;
  private final Optional<Stretch> runOn;
  private final Mouth first;
  private final boolean turned;

  /** Lays the gating of a job out. */
  public GatingGeometry(PourCase job, Rim rim) {
    Orientation attitude = job.mould().attitude();
    job.gating().gates().forEach(g -> gates.add(new GateLine(g, rim.at(g.place(), g.width()))));
    first =
        gates.isEmpty()
            ? rim.at(PiecePlaces.of(job).entry(job.gating()), job.gating().sprue().foot())
            : gates.get(0).mouth();
    Optional<Runner> runner = job.gating().runner();
    turned = runner.isPresent() && attitude.upright() && Math.abs(first.outX()) > 0.5;
    if (gates.isEmpty() || runner.isEmpty()) {
      foot = gates.isEmpty() ? new Point(first.x(), first.y()) : gates.get(0).end(0.0);
      runOn = Optional.empty();
    } else if (runner.get() instanceof Runner.Straight straight) {
      Gate gate = gates.get(0).gate();
      double length = straight.length() + (turned ? 0.5 * gate.width() : 0.0);
      foot =
          turned
              ? ahead(gates.get(0).end(0.5 * straight.width()), length)
              : gates.get(0).end(length);
      Point end = ahead(foot, -length);
      stretches.add(new Stretch("runner", foot, end, length, List.copyOf(gates)));
      Point from =
          turned
              ? ahead(end, -0.5 * gate.width())
              : aside(end, 0.5 * (gate.width() + straight.width()));
      runOn = runOn(from, ahead(from, -straight.runsOn()), straight);
    } else {
      Runner.Alongside side = (Runner.Alongside) runner.get();
      boolean fromTip = isFedFromTip(side, attitude);
      foot = follow(side, fromTip);
      Point last = stretches.get(stretches.size() - 1).to();
      double on = fromTip ? -side.runsOn() : side.runsOn();
      runOn = runOn(last, new Point(last.x() + on, last.y()), side);
    }
  }

  /** Goes along the outer ends of the gates; returns the foot of the sprue. */
  private Point follow(Runner.Alongside side, boolean fromTip) {
    NavigableMap<Double, List<GateLine>> stops = new TreeMap<>();
    for (GateLine gate : gates) {
      double x = gate.end(0.5 * side.width()).x();
      double key = fromTip ? -x : x;
      Double near = stops.ceilingKey(key - TOGETHER);
      boolean shares = near != null && near <= key + TOGETHER;
      stops.computeIfAbsent(shares ? near : key, k -> new ArrayList<>()).add(gate);
    }
    Point start = stops.firstEntry().getValue().get(0).end(0.5 * side.width());
    Point begin = new Point(start.x() + (fromTip ? side.width() : -side.width()), start.y());
    Point at = begin;
    for (List<GateLine> stop : stops.values()) {
      Point to = stop.get(0).end(0.5 * side.width());
      String name = stops.size() == 1 ? "runner" : "runner " + (stretches.size() + 1);
      double dx = to.x() - at.x();
      double dy = to.y() - at.y();
      stretches.add(new Stretch(name, at, to, Math.sqrt(dx * dx + dy * dy), List.copyOf(stop)));
      at = to;
    }
    return begin;
  }

  private static Optional<Stretch> runOn(Point from, Point to, Runner runner) {
    return runner.runsOn() > 0.0
        ? Optional.of(new Stretch("run-on", from, to, runner.runsOn(), List.of()))
        : Optional.empty();
  }

  /** Whether the sprue feeds a runner beside the piece at the end that is nearer to the tip. */
  public static boolean isFedFromTip(Runner.Alongside runner, Orientation attitude) {
    return switch (runner.fedFrom()) {
      case TIP -> true;
      case THICK_END -> false;
      case TOP -> attitude.rise() > 0.0;
      case BOTTOM -> attitude.rise() < 0.0;
    };
  }

  /** Side on which a runner lies beside the piece; left without one. */
  public static Side side(PourCase job) {
    return job.gating().runner().isPresent()
            && job.gating().runner().get() instanceof Runner.Alongside a
        ? a.side()
        : Side.LEFT;
  }

  /** Where the sprue comes down. */
  public Point foot() {
    return foot;
  }

  /** All gates, in the order of the job. */
  public List<GateLine> gates() {
    return gates;
  }

  /** The runner from the foot on; empty without one: all gates then leave from the foot. */
  public List<Stretch> stretches() {
    return stretches;
  }

  /** How the runner goes on past its last gate. */
  public Optional<Stretch> runOn() {
    return runOn;
  }

  /** Whether a straight runner turns off from the way its gate points. */
  public boolean isTurned() {
    return turned;
  }

  /** So far on from a place the way the gating leads away from the piece. */
  public Point ahead(Point from, double by) {
    return turned
        ? new Point(from.x(), from.y() + by)
        : new Point(from.x() + by * first.outX(), from.y() + by * first.outY());
  }

  private Point aside(Point from, double by) {
    return new Point(from.x() - by * first.outY(), from.y() + by * first.outX());
  }
}
