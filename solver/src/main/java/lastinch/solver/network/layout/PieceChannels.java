package lastinch.solver.network.layout;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import lastinch.solver.casting.Boss;
import lastinch.solver.casting.Limb;
import lastinch.solver.casting.Place;
import lastinch.solver.casting.PourCase;
import lastinch.solver.casting.Side;
import lastinch.solver.casting.Station;
import lastinch.solver.casting.gating.Feeder;
import lastinch.solver.casting.gating.Gate;
import lastinch.solver.casting.gating.Overflow;
import lastinch.solver.casting.gating.Runner;
import lastinch.solver.charge.Closures;
import lastinch.solver.charge.MouldTemperature;
import lastinch.solver.physics.Losses;
import lastinch.solver.result.PassageRecord.Role;

/**
 * The piece as channels: boss and limbs, cut where gates, overflows and feeders join. Positions on
 * a limb count from its first station; the boss runs from its outer end to the first station of the
 * first limb.
 */
final class PieceChannels {
  /** Places on a limb closer than this are one [m]; numerical, over rounding. */
  private static final double NEAR = 1e-6;

  /** What joins a limb no further apart joins it at one place [m]; chosen, under half a cell. */
  static final double TOGETHER = 2e-3;

  private static final ChannelGraph.EndLosses NONE = new ChannelGraph.EndLosses(0.0, 0.0, 0.0, 0.0);

  private final PourCase job;
  private final MouldTemperature mouldHeat;
  private final double cell;
  private final double rise;
  private final Optional<Boss> boss;
  private final List<Limb> limbs;

  /** By limb name: joints at cuts, by distance; the ends are in it once numbered. */
  private final Map<String, TreeMap<Double, Integer>> cuts = new LinkedHashMap<>();

  private final LimbAxis axis = new LimbAxis();
  private final TreeMap<Double, Integer> bossCuts = new TreeMap<>();
  private double enteredArea;
  private double enteredBend;
  private boolean enteredDirectly;

  PieceChannels(PourCase job, MouldTemperature mouldHeat, double cell) {
    this.job = job;
    this.mouldHeat = mouldHeat;
    this.cell = cell;
    rise = job.mould().attitude().rise();
    boss = job.piece().boss();
    limbs = job.piece().limbs();
    for (Limb limb : limbs) {
      cuts.put(limb.name(), new TreeMap<>());
    }
  }

  private Limb limb(String name) {
    for (Limb limb : limbs) {
      if (limb.name().equals(name)) {
        return limb;
      }
    }
    return limbs.get(0);
  }

  /** Whether the only way in is at the tip of the first limb. */
  boolean entersAtTip() {
    List<Gate> gates = job.gating().gates();
    Optional<Place> place =
        gates.isEmpty()
            ? job.gating().sprue().into()
            : gates.size() == 1 ? Optional.of(gates.get(0).place()) : Optional.empty();
    return place.isPresent()
        && place.get() instanceof Place.At at
        && (at.side() == Side.TIP || at.distance() >= limbs.get(0).length() - NEAR);
  }

  /** Axis position of the outer end of boss or piece on the side metal comes in [m]. */
  double mouthAxis() {
    return entersAtTip() ? limbs.get(0).length() : -boss.map(Boss::length).orElse(0.0);
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
    if (isBoss(place)) {
      bossCuts.put(bossDistance(), ChannelGraph.CLOSED);
    } else {
      cuts.get(limbOf(place).name()).put(cutAt(place), ChannelGraph.CLOSED);
    }
  }

  /** Distance of the cut that a place shares with what joins close by, or its own [m]. */
  private double cutAt(Place place) {
    double own = distanceOn(place);
    Limb limb = limbOf(place);
    if (own < TOGETHER) {
      return 0.0;
    }
    if (own > limb.length() - TOGETHER) {
      return limb.length();
    }
    Double near = cuts.get(limb.name()).ceilingKey(own - TOGETHER);
    return near != null && near <= own + TOGETHER ? near : own;
  }

  private boolean isBoss(Place place) {
    return boss.isPresent()
        && ((place instanceof Place.Into into && "boss".equals(into.part()))
            || (place instanceof Place.At at
                && at.side() == Side.THICK_END
                && at.distance() <= NEAR));
  }

  /** Distance from the outer end of the boss at which things join it [m]. */
  private double bossDistance() {
    boolean side =
        job.gating().runner().isPresent()
            && job.gating().runner().get() instanceof Runner.Alongside;
    return side ? 0.5 * boss.orElseThrow().length() : 0.0;
  }

  private Limb limbOf(Place place) {
    if (place instanceof Place.At at) {
      return limb(at.limb());
    }
    return place instanceof Place.Into into ? limb(into.part()) : limbs.get(0);
  }

  private double distanceOn(Place place) {
    Limb limb = limbOf(place);
    if (place instanceof Place.At at) {
      double wanted =
          at.side() == Side.TIP ? limb.length() : at.side() == Side.THICK_END ? 0.0 : at.distance();
      double d = Math.max(0.0, Math.min(limb.length(), wanted));
      return d < NEAR ? 0.0 : d > limb.length() - NEAR ? limb.length() : d;
    }
    return 0.0;
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
    Map<String, Integer> named = new LinkedHashMap<>();
    for (Limb limb : limbs) {
      TreeMap<Double, Integer> on = cuts.get(limb.name());
      boolean first = limb.name().equals(limbs.get(0).name());
      boolean atStart = on.containsKey(0.0);
      boolean atEnd = on.containsKey(limb.length());
      int start;
      if (!first && !limb.from().isEmpty()) {
        start = named.getOrDefault(limb.from(), named.getOrDefault("start", ChannelGraph.CLOSED));
      } else if (first && boss.isEmpty() && entry != ChannelGraph.CLOSED && !tip) {
        start = entry;
      } else if (first && (boss.isPresent() || atStart || limbs.size() > 1)) {
        start = free++;
      } else {
        start = atStart ? free++ : ChannelGraph.CLOSED;
      }
      if (first) {
        named.put("start", start);
        named.put("boss", start);
      }
      for (Map.Entry<Double, Integer> cut : on.entrySet()) {
        if (cut.getKey() > 0.0 && cut.getKey() < limb.length()) {
          cut.setValue(free++);
        }
      }
      int end;
      if (!limb.to().isEmpty() && named.containsKey(limb.to())) {
        end = named.get(limb.to());
      } else if (first && tip && entry != ChannelGraph.CLOSED) {
        end = entry;
      } else if (atEnd || isJoinedLater(limb)) {
        end = free++;
      } else {
        end = ChannelGraph.CLOSED;
      }
      named.put(limb.name(), end);
      named.put(limb.name() + PartNames.TIP, end);
      named.put(limb.name() + PartNames.THICK_END, start);
      on.put(0.0, start);
      on.put(limb.length(), end);
      axis.place(limb, first);
    }
    return numberBoss(free, entry, tip);
  }

  private boolean isJoinedLater(Limb limb) {
    for (Limb other : limbs) {
      if (PartNames.isEndOf(limb, other.from()) || PartNames.isEndOf(limb, other.to())) {
        return true;
      }
    }
    return false;
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

  /** Remembers what the piece is entered from when there is no gate. */
  void enteredFrom(double area, double bend) {
    enteredArea = area;
    enteredBend = bend;
    enteredDirectly = true;
  }

  /** Joint at a place. */
  int jointOf(Place place) {
    return isBoss(place)
        ? bossCuts.get(bossDistance())
        : cuts.get(limbOf(place).name()).get(cutAt(place));
  }

  /** Position of a place along the piece's axis [m]. */
  double axisOf(Place place) {
    if (isBoss(place)) {
      return bossDistance() - boss.orElseThrow().length();
    }
    Limb limb = limbOf(place);
    return axis.at(limb, distanceOn(place));
  }

  /** Whether metal at a place can go both ways along the piece. */
  boolean isThrough(Place place) {
    if (isBoss(place)) {
      return bossDistance() > 0.0;
    }
    double d = cutAt(place);
    return d > 0.0 && d < limbOf(place).length();
  }

  /** Area of the piece at a place [m2]. */
  double areaAt(Place place) {
    if (isBoss(place)) {
      return SectionShape.flat(boss.orElseThrow().width(), boss.orElseThrow().depth()).area();
    }
    Limb limb = limbOf(place);
    double first = limb.stations().get(0).at();
    return LimbProfile.section(limb.section(), limb.stations(), first + distanceOn(place)).area();
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
                at.size() == 2 ? "boss" : "boss" + PartNames.PART + (k + 1),
                Role.BOSS,
                to - from,
                from - b.length(),
                (from - b.length()) * rise,
                (to - b.length()) * rise,
                cell,
                s -> block,
                s -> mouldHeat.at(depth)));
        ChannelGraph.EndLosses in =
            k == 0 && enteredDirectly && !entersAtTip() ? entered(block.area()) : NONE;
        links.add(new ChannelGraph.Link(bossCuts.get(from), bossCuts.get(to), in));
      }
    }
    for (Limb limb : limbs) {
      addLimb(limb, bossArea, shapes, links);
    }
  }

  private ChannelGraph.EndLosses entered(double area) {
    if (enteredArea > 1.0) {
      double entry = Closures.entryLoss(job);
      return new ChannelGraph.EndLosses(entry, Losses.EXIT, 0.0, 0.0);
    }
    return SectionChange.losses(enteredArea, area, enteredBend);
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
              at.size() == 2 ? limb.name() : limb.name() + PartNames.PART + (k + 1),
              Role.PIECE,
              to - from,
              from,
              base + from * slope,
              base + to * slope,
              cell,
              s -> LimbProfile.section(limb.section(), stations, first + from + s),
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
    } else if (k == 0 && first && enteredDirectly && !entersAtTip()) {
      a = entered(areaA);
    }
    if (k == last && first && enteredDirectly && entersAtTip()) {
      b = entered(areaB);
    }
    return new ChannelGraph.EndLosses(a.intoA(), a.outOfA(), b.intoA(), b.outOfA());
  }

  /** Where a vent leaves the piece. */
  ChannelGraph.VentPoint vent(Place place, double area, List<ChannelShape> shapes) {
    boolean inBoss = isBoss(place);
    String limb = inBoss ? "boss" : limbOf(place).name();
    double at =
        inBoss
            ? 0.5 * boss.orElseThrow().length()
            : place instanceof Place.Into ? limbOf(place).length() : distanceOn(place);
    double ruler = inBoss ? at - boss.orElseThrow().length() : at;
    int found = 0;
    for (int k = 0; k < shapes.size(); k++) {
      ChannelShape shape = shapes.get(k);
      boolean same = shape.limb.equals(limb);
      if (same && ruler >= shape.start - NEAR && ruler <= shape.start + shape.length + NEAR) {
        found = k;
      }
    }
    ChannelShape shape = shapes.get(found);
    double within = Math.max(0.0, Math.min(shape.length, ruler - shape.start));
    return new ChannelGraph.VentPoint(found, within, area);
  }
}
