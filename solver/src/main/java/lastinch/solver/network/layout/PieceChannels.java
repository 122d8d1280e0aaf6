package lastinch.solver.network.layout;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.DoubleFunction;
import lastinch.solver.casting.Boss;
import lastinch.solver.casting.Limb;
import lastinch.solver.casting.Place;
import lastinch.solver.casting.PourCase;
import lastinch.solver.casting.Side;
import lastinch.solver.casting.Station;
import lastinch.solver.casting.gating.Feeder;
import lastinch.solver.casting.gating.Gate;
import lastinch.solver.casting.gating.Overflow;
import lastinch.solver.charge.MouldTemperature;
import lastinch.solver.geometry.gating.GatingGeometry;
import lastinch.solver.geometry.gating.LimbAxis;
import lastinch.solver.geometry.gating.LimbEnds;
import lastinch.solver.geometry.gating.LimbProfile;
import lastinch.solver.geometry.gating.Mouth;
import lastinch.solver.geometry.gating.PiecePlaces;
import lastinch.solver.result.PassageRecord.Role;

/**
 * The piece as channels: boss and limbs, cut where gates, overflows and feeders join. Positions on
 * a limb count from its first station; the boss runs from its outer end to the first station of the
 * first limb.
 */
final class PieceChannels {
  private static final ChannelGraph.EndLosses NONE = new ChannelGraph.EndLosses(0.0, 0.0, 0.0, 0.0);

  private final PourCase job;
  private final MouldTemperature mouldHeat;
  private final double cell;
  private final double rise;
  private final Optional<Boss> boss;
  private final List<Limb> limbs;

  private final PiecePlaces places;
  private final LimbAxis axis;

  /** By limb name: joints at cuts, by distance; the ends are in it once numbered. */
  private final Map<String, TreeMap<Double, Integer>> cuts = new LinkedHashMap<>();

  private final TreeMap<Double, Integer> bossCuts = new TreeMap<>();

  /** Losses where metal comes in without a gate, by the area that it comes into. */
  private DoubleFunction<ChannelGraph.EndLosses> entered = area -> NONE;

  PieceChannels(PourCase job, MouldTemperature mouldHeat, double cell) {
    this.job = job;
    this.mouldHeat = mouldHeat;
    this.cell = cell;
    rise = job.mould().attitude().rise();
    boss = job.piece().boss();
    limbs = job.piece().limbs();
    places = PiecePlaces.of(job);
    axis = new LimbAxis(limbs);
    for (Limb limb : limbs) {
      cuts.put(limb.name(), new TreeMap<>());
    }
  }

  /** Whether the only way in is at the tip of the first limb. */
  boolean entersAtTip() {
    return places.entersAtTip(job.gating());
  }

  /**
   * Mouth of what joins, on the axis: a straight runner leads on from an end of a piece that lies;
   * other gating is level with its mouth.
   */
  Mouth mouth(Place place) {
    boolean level =
        places.isFedBeside() || PiecePlaces.isSide(place) || job.mould().attitude().upright();
    boolean tip = place instanceof Place.At at && at.side() == Side.TIP;
    return new Mouth(axisOf(place), 0.0, level ? 0.0 : tip ? 1.0 : -1.0, 0.0);
  }

  /** Notes all places where something joins. */
  void markAll(List<Gate> gates) {
    for (Gate gate : gates) {
      mark(gate.place());
    }
    for (Overflow o : job.gating().overflows()) {
      mark(o.place());
    }
    for (Feeder f : job.gating().feeders()) {
      mark(f.place());
    }
  }

  private void mark(Place place) {
    if (places.isBoss(place)) {
      bossCuts.put(places.bossDistance(), ChannelGraph.CLOSED);
    } else {
      cuts.get(places.limb(place).name()).put(cutAt(place), ChannelGraph.CLOSED);
    }
  }

  /** Distance of the cut that a place shares with what joins close by, or its own [m]. */
  private double cutAt(Place place) {
    double own = distanceOn(place);
    Limb limb = places.limb(place);
    if (own < GatingGeometry.TOGETHER) {
      return 0.0;
    }
    if (own > limb.length() - GatingGeometry.TOGETHER) {
      return limb.length();
    }
    Double near = cuts.get(limb.name()).ceilingKey(own - GatingGeometry.TOGETHER);
    return near != null && near <= own + GatingGeometry.TOGETHER ? near : own;
  }

  private double distanceOn(Place place) {
    return PiecePlaces.distance(place, places.limb(place).length());
  }

  /**
   * Numbers the joints of the piece.
   *
   * @param next first free number
   * @param entry joint that feeds the piece directly, or closed
   * @return first free number afterwards
   */
  int number(int next, int entry) {
    int free = next;
    boolean tip = entersAtTip();
    LimbEnds ends = new LimbEnds(limbs);
    Map<String, Integer> named = new LinkedHashMap<>();
    for (Limb limb : limbs) {
      TreeMap<Double, Integer> on = cuts.get(limb.name());
      boolean first = limb.equals(limbs.get(0));
      boolean start =
          on.containsKey(0.0)
              || ends.isShared(ends.start(limb))
              || (first && (boss.isPresent() || limbs.size() > 1));
      if (first && entry != ChannelGraph.CLOSED && (tip || boss.isEmpty())) {
        named.put(tip ? ends.end(limb) : ends.start(limb), entry);
      }
      if (!named.containsKey(ends.start(limb))) {
        named.put(ends.start(limb), start ? free++ : ChannelGraph.CLOSED);
      }
      for (Map.Entry<Double, Integer> cut : on.entrySet()) {
        if (cut.getKey() > 0.0 && cut.getKey() < limb.length()) {
          cut.setValue(free++);
        }
      }
      if (!named.containsKey(ends.end(limb))) {
        boolean joined = on.containsKey(limb.length()) || ends.isShared(ends.end(limb));
        named.put(ends.end(limb), joined ? free++ : ChannelGraph.CLOSED);
      }
      on.put(0.0, named.get(ends.start(limb)));
      on.put(limb.length(), named.get(ends.end(limb)));
    }
    return numberBoss(free, entry, tip);
  }

  private int numberBoss(int next, int entry, boolean tip) {
    int free = next;
    if (boss.isEmpty()) {
      return free;
    }
    if (entry != ChannelGraph.CLOSED && !tip) {
      bossCuts.put(0.0, entry);
    }
    for (Map.Entry<Double, Integer> cut : bossCuts.entrySet()) {
      if (cut.getValue() == ChannelGraph.CLOSED) {
        cut.setValue(free++);
      }
    }
    bossCuts.putIfAbsent(0.0, ChannelGraph.CLOSED);
    bossCuts.put(boss.get().length(), cuts.get(limbs.get(0).name()).get(0.0));
    return free;
  }

  /** Remembers the losses of coming into the piece, by its area, when there is no gate. */
  void enteredWith(DoubleFunction<ChannelGraph.EndLosses> losses) {
    entered = losses;
  }

  /** Joint at a place. */
  int jointOf(Place place) {
    return places.isBoss(place)
        ? bossCuts.get(places.bossDistance())
        : cuts.get(places.limb(place).name()).get(cutAt(place));
  }

  /** Position of a place along the piece's axis [m]. */
  double axisOf(Place place) {
    return places.isBoss(place)
        ? places.bossDistance() - places.bossLength()
        : axis.at(places.limb(place), distanceOn(place));
  }

  /** Whether metal at a place can go both ways along the piece. */
  boolean isThrough(Place place) {
    if (places.isBoss(place)) {
      return places.bossDistance() > 0.0;
    }
    double d = cutAt(place);
    return d > 0.0 && d < places.limb(place).length();
  }

  /** Area of the piece at a place [m2]. */
  double areaAt(Place place) {
    if (places.isBoss(place)) {
      return SectionShape.flat(boss.orElseThrow().width(), boss.orElseThrow().depth()).area();
    }
    Limb limb = places.limb(place);
    return SectionShape.of(limb, limb.stations().get(0).at() + distanceOn(place)).area();
  }

  /** Adds the channels of boss and limbs. */
  void add(List<ChannelShape> shapes, List<ChannelGraph.Link> links) {
    double bossArea = 0.0;
    if (boss.isPresent()) {
      Boss b = boss.get();
      SectionShape block = SectionShape.flat(b.width(), b.depth());
      bossArea = block.area();
      double depth = mouldHeat.depthUnderWall(b.width());
      List<Double> at = new ArrayList<>(bossCuts.keySet());
      for (int k = 0; k + 1 < at.size(); k++) {
        double from = at.get(k);
        double to = at.get(k + 1);
        shapes.add(
            new ChannelShape(
                at.size() == 2 ? "boss" : "boss" + ChannelShape.PART + (k + 1),
                Role.BOSS,
                to - from,
                from - b.length(),
                (from - b.length()) * rise,
                (to - b.length()) * rise,
                cell,
                s -> block,
                s -> mouldHeat.at(depth)));
        ChannelGraph.EndLosses in = k == 0 && !entersAtTip() ? entered.apply(block.area()) : NONE;
        links.add(new ChannelGraph.Link(bossCuts.get(from), bossCuts.get(to), in));
      }
    }
    for (Limb limb : limbs) {
      addLimb(limb, bossArea, shapes, links);
    }
  }

  private void addLimb(
      Limb limb, double bossArea, List<ChannelShape> shapes, List<ChannelGraph.Link> links) {
    List<Station> stations = limb.stations();
    double first = stations.get(0).at();
    double widest = stations.stream().mapToDouble(Station::width).max().orElseThrow();
    double slope = axis.along(limb) * rise;
    double base = axis.at(limb, 0.0) * rise;
    List<Double> at = new ArrayList<>(cuts.get(limb.name()).keySet());
    for (int k = 0; k + 1 < at.size(); k++) {
      double from = at.get(k);
      double to = at.get(k + 1);
      ChannelShape part =
          new ChannelShape(
              at.size() == 2 ? limb.name() : limb.name() + ChannelShape.PART + (k + 1),
              Role.PIECE,
              to - from,
              from,
              base + from * slope,
              base + to * slope,
              cell,
              s -> SectionShape.of(limb, first + from + s),
              s ->
                  mouldHeat.at(
                      mouldHeat.depthUnderWall(
                          LimbProfile.widthAt(stations, first + from + s), widest)));
      shapes.add(part);
      links.add(
          new ChannelGraph.Link(
              cuts.get(limb.name()).get(from),
              cuts.get(limb.name()).get(to),
              lossesOf(limb, k, at.size() - 2, part, bossArea)));
    }
  }

  private ChannelGraph.EndLosses lossesOf(
      Limb limb, int k, int last, ChannelShape part, double bossArea) {
    boolean first = limb.name().equals(limbs.get(0).name());
    ChannelGraph.EndLosses a = NONE;
    ChannelGraph.EndLosses b = NONE;
    double areaA = part.faceArea[0];
    double areaB = part.faceArea[part.cells];
    if (k == 0 && bossArea > 0.0 && (first || "boss".equals(limb.from()))) {
      a = SectionChange.losses(bossArea, areaA, 0.0);
    } else if (k == 0 && first && !entersAtTip()) {
      a = entered.apply(areaA);
    }
    if (k == last && first && entersAtTip()) {
      b = entered.apply(areaB);
    }
    return new ChannelGraph.EndLosses(a.intoA(), a.outOfA(), b.intoA(), b.outOfA());
  }

  /** Where a vent leaves the piece. */
  ChannelGraph.VentPoint vent(Place place, double area, List<ChannelShape> shapes) {
    boolean inBoss = places.isBoss(place);
    Limb on = places.limb(place);
    String limb = inBoss ? "boss" : on.name();
    double at = inBoss ? 0.5 * places.bossLength() : PiecePlaces.ventDistance(place, on.length());
    double ruler = inBoss ? at - places.bossLength() : at;
    int found = 0;
    for (int k = 0; k < shapes.size(); k++) {
      ChannelShape shape = shapes.get(k);
      boolean same = shape.limb.equals(limb);
      if (same
          && ruler >= shape.start - PiecePlaces.NEAR
          && ruler <= shape.start + shape.length + PiecePlaces.NEAR) {
        found = k;
      }
    }
    ChannelShape shape = shapes.get(found);
    double within = Math.max(0.0, Math.min(shape.length, ruler - shape.start));
    return new ChannelGraph.VentPoint(found, within, area);
  }
}
