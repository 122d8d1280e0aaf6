package lastinch.ui.chart.pour;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import lastinch.solver.casting.Boss;
import lastinch.solver.casting.Limb;
import lastinch.solver.casting.Orientation;
import lastinch.solver.casting.Place;
import lastinch.solver.casting.PourCase;
import lastinch.solver.casting.Side;
import lastinch.solver.casting.gating.Feeder;
import lastinch.solver.casting.gating.Overflow;
import lastinch.solver.casting.gating.Vent;
import lastinch.solver.geometry.gating.GatingGeometry;
import lastinch.solver.geometry.gating.LimbEnds;
import lastinch.solver.geometry.gating.Mouth;
import lastinch.solver.geometry.gating.PiecePlaces;
import lastinch.ui.chart.paper.Spot3;
import lastinch.ui.chart.paper.View;

/**
 * The cavity of a case laid out to scale: boss and limbs as bodies, and the places where channels
 * join them.
 */
public final class MouldLayout {
  /** How far a vent is drawn out of the piece [m]; chosen. */
  private static final double VENT = 15e-3;

  private final PourCase job;
  private final PiecePlaces places;
  private final boolean upright;
  private final Spot3 up;
  private final Map<String, DrawnBar> piece = new LinkedHashMap<>();
  private final Map<String, DrawnBar> gating = new LinkedHashMap<>();
  private final Map<String, DrawnBar> open = new LinkedHashMap<>();

  private MouldLayout(PourCase job) {
    this.job = job;
    places = PiecePlaces.of(job);
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
    List<Limb> limbs = job.piece().limbs();
    LimbEnds ends = new LimbEnds(limbs);
    Map<String, Spot3> joints = new LinkedHashMap<>();
    for (Limb limb : limbs) {
      Spot3 start = joints.computeIfAbsent(ends.start(limb), j -> Spot3.ZERO);
      DrawnBar bar = LimbLine.of(limb, start, limbs).bar(limb);
      piece.put(limb.name(), bar);
      joints.putIfAbsent(ends.end(limb), bar.at(bar.length()));
    }
  }

  /** Outer end of boss or first limb on the thick side. */
  double thickEnd() {
    return -places.bossLength();
  }

  /** Side of the piece that the runner leaves free: 1 left, -1 right. */
  double freeSide() {
    return places.isFedBeside() && GatingGeometry.side(job) == Side.LEFT ? -1.0 : 1.0;
  }

  /** Where a gate of a given width joins the piece. */
  Mouth mouth(Place place, double width) {
    if (places.isBoss(place)) {
      Boss b = job.piece().boss().orElseThrow();
      if (places.isFedBeside() || upright) {
        double side = places.isFedBeside() ? -freeSide() : 1.0;
        double x = places.isFedBeside() ? -0.5 * b.length() : -b.length() + 0.5 * width;
        return new Mouth(x, side * 0.5 * b.width(), 0.0, side);
      }
      return new Mouth(-b.length(), 0.0, -1.0, 0.0);
    }
    DrawnBar bar = barOf(place);
    double s = PiecePlaces.distance(place, bar.length());
    Spot3 at = bar.at(s);
    double[] way = bar.way(View.FACE, s);
    return switch (place instanceof Place.At on ? on.side() : Side.THICK_END) {
      case THICK_END -> new Mouth(at.x(), at.y(), -way[0], -way[1]);
      case TIP -> new Mouth(at.x(), at.y(), way[0], way[1]);
      case LEFT -> rim(at, bar.half(View.FACE, s), -way[1], way[0]);
      case RIGHT -> rim(at, bar.half(View.FACE, s), way[1], -way[0]);
    };
  }

  private static Mouth rim(Spot3 middle, double half, double outX, double outY) {
    return new Mouth(middle.x() + half * outX, middle.y() + half * outY, outX, outY);
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
    return piece.get(places.isBoss(place) ? "boss" : places.limb(place).name());
  }

  private double distanceOn(Place place) {
    DrawnBar bar = barOf(place);
    return places.isBoss(place) ? 0.5 * bar.length() : PiecePlaces.distance(place, bar.length());
  }

  private void addOverflow(Overflow o) {
    DrawnBar bar = barOf(o.place());
    double s = distanceOn(o.place());
    double side = freeSide();
    if (PiecePlaces.isSide(o.place())) {
      side = ((Place.At) o.place()).side() == Side.LEFT ? 1.0 : -1.0;
    }
    Spot3 out = new Spot3(0.0, side, 0.0);
    Spot3 rim = bar.at(s).plus(bar.half(View.FACE, s), out);
    Spot3 neck = rim.plus(GatingGeometry.NECK, out);
    Spot3 end = neck.plus(o.side(), out);
    String name = o.name() + " neck";
    gating.put(name, DrawnBar.straight(name, rim, neck, o.width(), o.thickness()));
    gating.put(o.name(), DrawnBar.straight(o.name(), neck, end, o.side(), o.side()));
  }

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
    double s =
        places.isBoss(v.place())
            ? 0.5 * bar.length()
            : PiecePlaces.ventDistance(v.place(), bar.length());
    Spot3 out = upright ? new Spot3(0.0, freeSide(), 0.0) : up;
    Spot3 rim = bar.at(s).plus(bar.half(upright ? View.FACE : View.EDGE, s), out);
    open.put(
        v.name(), DrawnBar.straight(v.name(), rim, rim.plus(VENT, out), v.across(), v.across()));
  }
}
