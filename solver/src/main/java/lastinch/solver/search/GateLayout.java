package lastinch.solver.search;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import lastinch.solver.casting.Boss;
import lastinch.solver.casting.Limb;
import lastinch.solver.casting.Model;
import lastinch.solver.casting.Place;
import lastinch.solver.casting.PourCase;
import lastinch.solver.casting.Side;
import lastinch.solver.casting.Station;
import lastinch.solver.casting.gating.Gate;
import lastinch.solver.casting.gating.Gating;
import lastinch.solver.casting.gating.Runner;
import lastinch.solver.levers.JobParameter;
import lastinch.solver.levers.Owned;

/**
 * One way to gate a piece of one limb.
 *
 * @param thickEnd whether a gate goes into the boss, or into the thick end where there is none
 * @param places of gates at the side, rising, from the first station [m]
 * @param width of every gate [m]; a gate at the thick end is no wider than that end
 */
public record GateLayout(boolean thickEnd, List<Double> places, double width) {
  /** So many widths of a gate are left between two; common practice, no source. */
  static final double APART = 2.0;

  /** A runner where the plan has none [m]; common practice, no source. */
  private static final Owned.Strip USUAL_STRIP = new Owned.Strip(15e-3, 12e-3);

  /** Metal is weighed out in such steps [kg]. */
  private static final double SCALE = 0.01;

  private static final double THINNEST = 0.8e-3;

  public GateLayout {
    places = List.copyOf(places);
    if (places.isEmpty() && !thickEnd) {
      throw new IllegalArgumentException("a layout needs a gate");
    }
  }

  /** How many gates there are. */
  public int number() {
    return places.size() + (thickEnd ? 1 : 0);
  }

  /** Whether the gates keep clear of each other and of the ends of the piece. */
  boolean isSound(double length) {
    double before = thickEnd ? -0.5 * width : -APART * width;
    for (double at : places) {
      if (at - before < APART * width || at < 0.5 * width || at > length - 0.5 * width) {
        return false;
      }
      before = at;
    }
    return true;
  }

  /** Whether a plan can be gated anew: a piece of one long limb that has a gate. */
  public static boolean suits(PourCase job) {
    return job.piece().limbs().size() == 1
        && job.piece().model().map(Model::form).orElse(Model.Form.LONG) == Model.Form.LONG
        && !job.gating().gates().isEmpty()
        && job.checking().cupKeptAt().isEmpty();
  }

  /** The plan gated so; what the longer runner and the gates hold is melted too. */
  public PourCase on(PourCase job, Owned owned) {
    Gating now = job.gating();
    Gate like = now.gates().get(0);
    List<Gate> gates = new ArrayList<>();
    if (thickEnd) {
      gates.add(
          new Gate(
              "thick end gate",
              thickEndPlace(job),
              Math.min(width, thickEndWidth(job)),
              like.thickness(),
              like.length()));
    }
    Side side = side(job);
    for (int i = 0; i < places.size(); i++) {
      double at = places.get(i);
      Place place = new Place.At(job.piece().limbs().get(0).name(), at, side);
      gates.add(
          new Gate("side gate " + (i + 1), place, width, thickness(job, at, like), like.length()));
    }
    Gating gating = now.withGates(gates);
    if (!places.isEmpty()) {
      gating = gating.withRunner(Optional.of(beside(job, owned)));
    }
    PourCase gated = job.withGating(gating);
    double more = Math.max(0.0, held(gated) - held(job));
    if (more <= 0.0) {
      return gated;
    }
    double melted = job.metal().melted() + more * job.metal().alloy().densityLiquid().value();
    double weighed = SCALE * Math.ceil(melted / SCALE - 1e-6);
    return JobParameter.MELTED.move(gated, weighed);
  }

  private static Place thickEndPlace(PourCase job) {
    return job.piece().boss().isPresent()
        ? new Place.Into("boss")
        : new Place.At(job.piece().limbs().get(0).name(), 0.0, Side.THICK_END);
  }

  /**
   * A thick end that is fed through thinner metal. The thinner section has less volume to its
   * cooling surface and freezes first (Chvorinov's rule), so nothing feeds the thick end while it
   * shrinks.
   *
   * @param thick thickness of the thick end [m]
   * @param thin least thickness on the way from the nearest gate [m]
   */
  public record Starved(double thick, double thin) {}

  /** Whether the thick end is fed through thinner metal; empty when a gate opens into it. */
  public Optional<Starved> starved(PourCase job) {
    List<Station> stations = job.piece().limbs().get(0).stations();
    double thick = job.piece().boss().map(Boss::depth).orElse(stations.get(0).thickness());
    if (thickEnd) {
      return Optional.empty();
    }
    double nearest = places.get(0);
    double thin = thicknessAt(stations, nearest);
    for (Station s : stations) {
      thin = s.at() < nearest ? Math.min(thin, s.thickness()) : thin;
    }
    return thin < thick ? Optional.of(new Starved(thick, thin)) : Optional.empty();
  }

  /** No gate at the thick end is wider than what it enters [m]. */
  private static double thickEndWidth(PourCase job) {
    return job.piece()
        .boss()
        .map(b -> Math.max(b.width(), b.length()))
        .orElseGet(() -> job.piece().limbs().get(0).stations().get(0).width());
  }

  private static Side side(PourCase job) {
    Optional<Side> typed =
        job.gating().gates().stream()
            .map(Gate::place)
            .filter(Place.At.class::isInstance)
            .map(p -> ((Place.At) p).side())
            .filter(s -> s == Side.LEFT || s == Side.RIGHT)
            .findFirst();
    return job.gating()
        .runner()
        .filter(Runner.Alongside.class::isInstance)
        .map(r -> ((Runner.Alongside) r).side())
        .or(() -> typed)
        .orElse(Side.LEFT);
  }

  /** No gate thicker than the piece where it enters. */
  private static double thickness(PourCase job, double at, Gate like) {
    double here = thicknessAt(job.piece().limbs().get(0).stations(), at);
    double tenth = 1e-4;
    return Math.max(THINNEST, Math.floor(Math.min(like.thickness(), here) / tenth + 1e-6) * tenth);
  }

  private static double thicknessAt(List<Station> stations, double at) {
    for (int i = 1; i < stations.size(); i++) {
      Station a = stations.get(i - 1);
      Station b = stations.get(i);
      if (at <= b.at()) {
        double share = (at - a.at()) / (b.at() - a.at());
        return a.thickness() + Math.max(0.0, share) * (b.thickness() - a.thickness());
      }
    }
    return stations.get(stations.size() - 1).thickness();
  }

  private static Runner beside(PourCase job, Owned owned) {
    Optional<Runner> now = job.gating().runner();
    if (now.isPresent() && now.get() instanceof Runner.Alongside) {
      return now.get();
    }
    Owned.Strip strip = owned.strips().stream().findFirst().orElse(USUAL_STRIP);
    boolean upright = job.mould().attitude().upright();
    return new Runner.Alongside(
        side(job),
        job.gating().gates().get(0).length(),
        now.map(Runner::width).orElse(strip.wide()),
        now.map(Runner::depth).orElse(strip.deep()),
        upright ? Runner.FedFrom.BOTTOM : Runner.FedFrom.THICK_END,
        now.map(Runner::runsOn).orElse(0.0));
  }

  /** What runner and gates hold [m3]. */
  private static double held(PourCase job) {
    double gates =
        job.gating().gates().stream()
            .mapToDouble(g -> g.width() * g.thickness() * g.length())
            .sum();
    return gates
        + job.gating().runner().map(r -> r.width() * r.depth() * length(job, r)).orElse(0.0);
  }

  private static double length(PourCase job, Runner runner) {
    if (runner instanceof Runner.Straight s) {
      return s.length();
    }
    double low = Double.POSITIVE_INFINITY;
    double high = Double.NEGATIVE_INFINITY;
    for (Gate gate : job.gating().gates()) {
      double at =
          gate.place() instanceof Place.At there
              ? there.distance()
              : -0.5 * job.piece().boss().map(b -> b.length()).orElse(0.0);
      low = Math.min(low, at);
      high = Math.max(high, at);
    }
    Limb limb = job.piece().limbs().get(0);
    boolean fromTip = runner instanceof Runner.Alongside a && a.fedFrom() == Runner.FedFrom.TIP;
    return fromTip ? limb.length() - low : Math.max(high - low, high);
  }
}
