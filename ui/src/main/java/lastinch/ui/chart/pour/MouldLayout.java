package lastinch.ui.chart.pour;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import lastinch.solver.casting.Boss;
import lastinch.solver.casting.Limb;
import lastinch.solver.casting.Orientation;
import lastinch.solver.casting.Place;
import lastinch.solver.casting.PourCase;
import lastinch.solver.casting.Side;
import lastinch.solver.casting.gating.Feeder;
import lastinch.solver.casting.gating.Overflow;
import lastinch.solver.casting.gating.Runner;
import lastinch.solver.casting.gating.Vent;
import lastinch.ui.chart.paper.Spot3;
import lastinch.ui.chart.paper.View;

/**
 * The cavity of a case laid out to scale: boss and limbs as bodies, and the places where channels
 * join them.
 */
public final class MouldLayout {
  private static final double NEAR = 1e-6;

  /**
   * Where something joins the piece.
   *
   * @param spot on its rim
   * @param out away from the piece, of length 1
   */
  record Mouth(Spot3 spot, Spot3 out) {}

  private final PourCase job;
  private final boolean upright;
  private final Spot3 up;
  private final Map<String, DrawnBar> piece = new LinkedHashMap<>();
  private final Map<String, DrawnBar> gating = new LinkedHashMap<>();
  private final Map<String, DrawnBar> open = new LinkedHashMap<>();

  private MouldLayout(PourCase job) {
    this.job = job;
    Orientation attitude = job.mould().attitude();
    upright = attitude.upright();
    up =
        upright
            ? new Spot3(attitude.angle() < 0.0 ? -1.0 : 1.0, 0.0, 0.0)
            : new Spot3(0.0, 0.0, 1.0);
  }

  public static MouldLayout of(PourCase job) {
    MouldLayout layout = new MouldLayout(job);
    layout.addPiece();
    new GatingLayout(job, layout).add();
    job.gating().overflows().forEach(layout::addOverflow);
    job.gating().feeders().forEach(layout::addFeeder);
    job.gating().vents().forEach(layout::addVent);
    return layout;
  }

  /** Boss and limbs by channel name. */
  public Map<String, DrawnBar> piece() {
    return piece;
  }

  /** Sprue, runner, gates and the rest that metal runs through, by channel name. */
  public Map<String, DrawnBar> gating() {
    return gating;
  }

  /** Cup, vents and passages without a record of their own, by name. */
  Map<String, DrawnBar> open() {
    return open;
  }

  boolean upright() {
    return upright;
  }

  /** Upwards in the mould. */
  Spot3 up() {
    return up;
  }

  private Limb limb(String name) {
    for (Limb limb : job.piece().limbs()) {
      if (limb.name().equals(name)) {
        return limb;
      }
    }
    return job.piece().limbs().get(0);
  }

  /** Along a limb as it runs at a distance on it. */
  private static Spot3 along(DrawnBar bar, double s) {
    double[] way = bar.way(View.FACE, s);
    return new Spot3(way[0], way[1], 0.0);
  }

  private static Spot3 left(DrawnBar bar, double s) {
    double[] way = bar.way(View.FACE, s);
    return new Spot3(-way[1], way[0], 0.0);
  }

  private void addPiece() {
    job.piece()
        .boss()
        .ifPresent(
            b ->
                piece.put(
                    "boss",
                    DrawnBar.straight(
                        "boss",
                        new Spot3(-b.length(), 0.0, 0.0),
                        Spot3.ZERO,
                        b.width(),
                        b.depth())));
    Map<String, Spot3> joints = new LinkedHashMap<>();
    joints.put(Joints.START, Spot3.ZERO);
    List<Limb> limbs = job.piece().limbs();
    for (Limb limb : limbs) {
      Spot3 start = joints.getOrDefault(Joints.start(limb, limbs), Spot3.ZERO);
      DrawnBar bar = LimbLine.of(limb, start, limbs).bar(limb);
      piece.put(limb.name(), bar);
      joints.putIfAbsent(Joints.end(limb, limbs), bar.at(bar.length()));
    }
  }

  /** Outer end of boss or first limb on the thick side. */
  double thickEnd() {
    return -job.piece().boss().map(Boss::length).orElse(0.0);
  }

  private boolean isBoss(Place place) {
    return job.piece().boss().isPresent()
        && ((place instanceof Place.Into into && "boss".equals(into.part()))
            || (place instanceof Place.At at
                && at.side() == Side.THICK_END
                && at.distance() <= NEAR));
  }

  /** Side of the piece that the runner leaves free: 1 left, -1 right. */
  double freeSide() {
    Optional<Runner> runner = job.gating().runner();
    boolean left =
        runner.isPresent() && runner.get() instanceof Runner.Alongside a && a.side() == Side.LEFT;
    return left ? -1.0 : 1.0;
  }

  /** Where a gate of a given width joins the piece. */
  Mouth mouth(Place place, double width) {
    if (isBoss(place)) {
      Boss b = job.piece().boss().orElseThrow();
      boolean beside = job.gating().runner().filter(r -> r instanceof Runner.Alongside).isPresent();
      if (beside || upright) {
        double side = beside ? -freeSide() : 1.0;
        double x = beside ? -0.5 * b.length() : -b.length() + 0.5 * width;
        return new Mouth(new Spot3(x, side * 0.5 * b.width(), 0.0), new Spot3(0.0, side, 0.0));
      }
      return new Mouth(new Spot3(-b.length(), 0.0, 0.0), new Spot3(-1.0, 0.0, 0.0));
    }
    if (place instanceof Place.At at) {
      return onLimb(limb(at.limb()), at);
    }
    Limb limb = place instanceof Place.Into into ? limb(into.part()) : job.piece().limbs().get(0);
    DrawnBar bar = piece.get(limb.name());
    return new Mouth(bar.at(0.0), Spot3.ZERO.plus(-1.0, along(bar, 0.0)));
  }

  private Mouth onLimb(Limb limb, Place.At at) {
    DrawnBar bar = piece.get(limb.name());
    double s = Math.max(0.0, Math.min(bar.length(), at.distance()));
    return switch (at.side()) {
      case THICK_END -> new Mouth(bar.at(0.0), Spot3.ZERO.plus(-1.0, along(bar, 0.0)));
      case TIP -> new Mouth(bar.at(bar.length()), along(bar, bar.length()));
      case LEFT, RIGHT -> {
        double side = at.side() == Side.LEFT ? 1.0 : -1.0;
        Spot3 out = Spot3.ZERO.plus(side, left(bar, s));
        yield new Mouth(bar.at(s).plus(bar.half(View.FACE, s), out), out);
      }
    };
  }

  /** Greatest reach of the piece to its sides [m]. */
  double reach() {
    double most = 0.0;
    for (DrawnBar bar : piece.values()) {
      for (int i = 0; i <= 8; i++) {
        double s = bar.length() * i / 8.0;
        most = Math.max(most, Math.abs(bar.at(s).y()) + bar.half(View.FACE, s));
      }
    }
    return most;
  }

  private DrawnBar barOf(Place place) {
    if (isBoss(place)) {
      return piece.get("boss");
    }
    return piece.get(
        place instanceof Place.At at
            ? limb(at.limb()).name()
            : place instanceof Place.Into into ? limb(into.part()).name() : "");
  }

  private double distanceOn(Place place) {
    DrawnBar bar = barOf(place);
    if (isBoss(place)) {
      return 0.5 * bar.length();
    }
    if (place instanceof Place.At at) {
      return at.side() == Side.TIP ? bar.length() : Math.min(bar.length(), at.distance());
    }
    return bar.length();
  }

  private void addOverflow(Overflow o) {
    DrawnBar bar = barOf(o.place());
    double s = distanceOn(o.place());
    double side = freeSide();
    boolean chosen =
        o.place() instanceof Place.At at && (at.side() == Side.LEFT || at.side() == Side.RIGHT);
    if (chosen) {
      side = ((Place.At) o.place()).side() == Side.LEFT ? 1.0 : -1.0;
    }
    Spot3 out = new Spot3(0.0, side, 0.0);
    Spot3 rim = bar.at(s).plus(bar.half(View.FACE, s), out);
    double size = Math.cbrt(o.volume());
    Spot3 neck = rim.plus(NECK, out);
    String name = o.name() + " neck";
    gating.put(name, DrawnBar.straight(name, rim, neck, o.width(), o.thickness()));
    gating.put(o.name(), DrawnBar.straight(o.name(), neck, neck.plus(size, out), size, size));
  }

  private static final double NECK = 5e-3;
  private static final double VENT = 15e-3;

  private void addFeeder(Feeder f) {
    DrawnBar bar = barOf(f.place());
    double s = distanceOn(f.place());
    double rise = upright ? 0.5 * bar.length() : bar.half(View.EDGE, s);
    Spot3 foot = bar.at(s).plus(rise, up);
    gating.put(
        f.name(),
        DrawnBar.straight(f.name(), foot, foot.plus(f.tall(), up), f.across(), f.across()));
  }

  private void addVent(Vent v) {
    DrawnBar bar = barOf(v.place());
    double s = distanceOn(v.place());
    Spot3 out = upright ? new Spot3(0.0, freeSide(), 0.0) : up;
    Spot3 rim = bar.at(s).plus(bar.half(upright ? View.FACE : View.EDGE, s), out);
    open.put(
        v.name(), DrawnBar.straight(v.name(), rim, rim.plus(VENT, out), v.across(), v.across()));
  }
}
