package lastinch.solver.geometry.cavity;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import lastinch.solver.casting.Boss;
import lastinch.solver.casting.Centreline;
import lastinch.solver.casting.Limb;
import lastinch.solver.casting.LimbCourse;
import lastinch.solver.casting.Model;
import lastinch.solver.casting.Piece;
import lastinch.solver.casting.Place;
import lastinch.solver.casting.Side;
import lastinch.solver.casting.Solid;
import lastinch.solver.geometry.gating.LimbEnds;
import lastinch.solver.geometry.gating.Mouth;
import lastinch.solver.geometry.gating.PiecePlaces;

/** The piece laid out in the parting plane, and where places on it are. */
final class PieceShape {
  /** Stretches in which rims are looked for [m]; chosen. */
  private static final double STEP = 1e-4;

  /** So far in from an end there is piece behind it [m]; as deep as a gate is cut in. */
  private static final double INSIDE = 2e-3;

  /** Directions in which the nearest rim is looked for [-]: every 5 degrees; chosen. */
  private static final int RAYS = 72;

  private final Piece piece;
  private final Map<String, LimbCourse> limbs = new LinkedHashMap<>();
  private final List<GapRegion> regions = new ArrayList<>();
  private final PiecePlaces places;

  PieceShape(Piece piece, PiecePlaces places) {
    this.piece = piece;
    this.places = places;
    if (piece.model().isPresent()) {
      Model model = piece.model().get();
      model.lines().forEach(l -> limbs.put(l.limb(), l));
      if (limbs.isEmpty()) {
        limbs.put(Limb.ONLY, straight(model.solid()));
      }
      regions.add(new SolidRegion(model.solid(), model.lines()));
    } else {
      sweep(piece.limbs());
    }
    piece.boss().ifPresent(b -> regions.add(new BossRegion(b)));
  }

  private void sweep(List<Limb> all) {
    LimbEnds ends = new LimbEnds(all);
    Map<String, double[]> joints = new LinkedHashMap<>();
    for (Limb limb : all) {
      double[] start = joints.computeIfAbsent(ends.start(limb), j -> new double[2]);
      SweptLimb swept = new SweptLimb(limb, start[0], start[1]);
      joints.putIfAbsent(
          ends.end(limb), new double[] {swept.xAt(limb.length()), swept.yAt(limb.length())});
      limbs.put(limb.name(), swept);
      regions.add(swept);
    }
  }

  /** A stand-in for the middle line of a piece that has none: straight through from end to end. */
  private static Centreline straight(Solid solid) {
    double middle = 0.5 * (solid.low(1) + solid.high(1));
    return new Centreline(
        Limb.ONLY, new double[] {solid.low(0), solid.high(0)}, new double[] {middle, middle});
  }

  List<GapRegion> regions() {
    return regions;
  }

  double gapAt(double x, double y) {
    double gap = 0.0;
    for (GapRegion r : regions) {
      gap = Math.max(gap, r.gapAt(x, y));
    }
    return gap;
  }

  /** The middle of the piece at a place: x, y [m]. */
  double[] middle(Place place) {
    if (place instanceof Place.At at && at.spot().isPresent()) {
      return new double[] {at.spot().get().x(), at.spot().get().y()};
    }
    LimbCourse course = limbOf(place);
    return middle(place, PiecePlaces.distance(place, course.length()));
  }

  /** Where a vent opens: the middle of the piece at its place. */
  double[] ventPlace(Place place) {
    LimbCourse course = limbOf(place);
    return place instanceof Place.Into
        ? middle(place, PiecePlaces.ventDistance(place, course.length()))
        : middle(place);
  }

  private double[] middle(Place place, double along) {
    if (places.isBoss(place)) {
      return new double[] {-0.5 * places.bossLength(), 0.0};
    }
    LimbCourse course = limbOf(place);
    return new double[] {course.xAt(along), course.yAt(along)};
  }

  /** Where something joins the rim, and which way is out. */
  Mouth rim(Place place, Side usual) {
    if (place instanceof Place.At at && at.spot().isPresent()) {
      return nearest(at.spot().get());
    }
    if (places.isBoss(place)) {
      return places.isFedBeside() ? bossSide(usual) : bossEnd();
    }
    LimbCourse swept = limbOf(place);
    double s = PiecePlaces.distance(place, swept.length());
    Side side = place instanceof Place.At at ? at.side() : Side.THICK_END;
    double x = swept.xAt(s);
    double y = swept.yAt(s);
    double cos = StrictMath.cos(swept.headingAt(s));
    double sin = StrictMath.sin(swept.headingAt(s));
    return switch (side) {
      case LEFT -> outwards(x, y, -sin, cos);
      case RIGHT -> outwards(x, y, sin, -cos);
      case THICK_END -> end(new Mouth(x, y, -cos, -sin));
      case TIP -> end(new Mouth(x, y, cos, sin));
    };
  }

  /** Middle of the outer end of the boss. */
  Mouth bossEnd() {
    return new Mouth(-places.bossLength(), 0.0, -1.0, 0.0);
  }

  /** Middle of a side of the boss. */
  Mouth bossSide(Side side) {
    Boss boss = piece.boss().orElseThrow();
    double out = side == Side.RIGHT ? -1.0 : 1.0;
    return new Mouth(-0.5 * boss.length(), out * 0.5 * boss.width(), 0.0, out);
  }

  /** The place on the rim nearest to a spot; out is straight away from the piece. */
  private Mouth nearest(Place.Spot spot) {
    boolean inside = gapAt(spot.x(), spot.y()) > 0.0;
    PlanBox all = regions.stream().map(GapRegion::box).reduce(PlanBox::with).orElseThrow();
    double far = all.highX() - all.lowX() + all.highY() - all.lowY();
    double best = far;
    double bestX = 1.0;
    double bestY = 0.0;
    for (int k = 0; k < RAYS; k++) {
      double dx = StrictMath.cos(2.0 * Math.PI * k / RAYS);
      double dy = StrictMath.sin(2.0 * Math.PI * k / RAYS);
      double d = STEP;
      while (d < best && gapAt(spot.x() + d * dx, spot.y() + d * dy) > 0.0 == inside) {
        d += STEP;
      }
      if (d < best) {
        best = d;
        bestX = dx;
        bestY = dy;
      }
    }
    double sign = inside ? 1.0 : -1.0;
    double reach = inside ? best - STEP : best;
    return new Mouth(
        spot.x() + reach * bestX, spot.y() + reach * bestY, sign * bestX, sign * bestY);
  }

  /** An end of the piece; one that has nothing in its middle is taken where there is some. */
  private Mouth end(Mouth middle) {
    PlanBox all = regions.stream().map(GapRegion::box).reduce(PlanBox::with).orElseThrow();
    double far = all.highX() - all.lowX() + all.highY() - all.lowY();
    for (double d = 0.0; d < far; d += STEP) {
      for (int side : new int[] {1, -1}) {
        double from = side * d;
        if (isInside(middle, from)) {
          double to = from;
          while (d > 0.0 && isInside(middle, to + side * STEP)) {
            to += side * STEP;
          }
          double t = 0.5 * (from + to);
          return new Mouth(
              middle.x() - t * middle.outY(),
              middle.y() + t * middle.outX(),
              middle.outX(),
              middle.outY());
        }
      }
    }
    return middle;
  }

  /** Whether there is cavity just inside of a rim, so far to the side of it. */
  private boolean isInside(Mouth rim, double aside) {
    double x = rim.xOut(-INSIDE) - aside * rim.outY();
    double y = rim.yOut(-INSIDE) + aside * rim.outX();
    return gapAt(x, y) > 0.0;
  }

  /** The last place along a line at which there is cavity. */
  private Mouth outwards(double x, double y, double outX, double outY) {
    PlanBox all = regions.stream().map(GapRegion::box).reduce(PlanBox::with).orElseThrow();
    double far = all.highX() - all.lowX() + all.highY() - all.lowY();
    double inside = 0.0;
    for (double d = 0.0; d < far; d += STEP) {
      if (gapAt(x + d * outX, y + d * outY) > 0.0) {
        inside = d;
      }
    }
    double outside = inside + STEP;
    for (int k = 0; k < 30; k++) {
      double half = 0.5 * (inside + outside);
      if (gapAt(x + half * outX, y + half * outY) > 0.0) {
        inside = half;
      } else {
        outside = half;
      }
    }
    return new Mouth(x + inside * outX, y + inside * outY, outX, outY);
  }

  private LimbCourse limbOf(Place place) {
    LimbCourse first = limbs.values().iterator().next();
    String name =
        place instanceof Place.At at
            ? at.limb()
            : place instanceof Place.Into into ? into.part() : first.limb();
    return Optional.ofNullable(limbs.get(name)).orElse(first);
  }
}
