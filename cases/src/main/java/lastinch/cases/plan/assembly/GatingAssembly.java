package lastinch.cases.plan.assembly;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import lastinch.cases.schema.Compounds;
import lastinch.solver.casting.Centreline;
import lastinch.solver.casting.Limb;
import lastinch.solver.casting.Model;
import lastinch.solver.casting.Piece;
import lastinch.solver.casting.Place;
import lastinch.solver.casting.Side;
import lastinch.solver.casting.gating.Cup;
import lastinch.solver.casting.gating.Feeder;
import lastinch.solver.casting.gating.Gate;
import lastinch.solver.casting.gating.Gating;
import lastinch.solver.casting.gating.Overflow;
import lastinch.solver.casting.gating.Runner;
import lastinch.solver.casting.gating.Sprue;
import lastinch.solver.casting.gating.Vent;
import lastinch.solver.casting.gating.Well;

/** Builds cup, sprue, runner, gates and vents. */
final class GatingAssembly {
  private final Fields gating;
  private final List<Limb> limbs;
  private final List<Centreline> lines;
  private final CavitySizes sizes;
  private final Side usualSide;

  private static final double NEAR = 1e-6;

  /**
   * An assembly.
   *
   * @param piece what it feeds
   * @param sizes distances along the piece are scaled as the piece is
   */
  GatingAssembly(Fields gating, Piece piece, CavitySizes sizes) {
    this.gating = gating;
    this.limbs = piece.limbs();
    this.lines = piece.model().map(Model::lines).orElse(List.of());
    this.sizes = sizes;
    this.usualSide =
        gating
            .group("runner")
            .flatMap(r -> r.word("along"))
            .filter(a -> a.startsWith("right"))
            .map(a -> Side.RIGHT)
            .orElse(Side.LEFT);
  }

  Gating build() {
    Fields cup = gating.group("cup").orElseThrow();
    Fields sprue = gating.group("sprue").orElseThrow();
    List<Gate> gates = new ArrayList<>();
    for (Fields g : gating.list("gates")) {
      gates.add(new Gate(name(g), place(g), g.need("wide"), g.need("thick"), g.need("long")));
    }
    List<Vent> vents = new ArrayList<>();
    for (Fields v : gating.list("vents")) {
      vents.add(new Vent(name(v), place(v), v.need("across")));
    }
    return new Gating(
        new Cup(cup.need("across"), cup.need("deep")),
        new Sprue(sprue.need("tall"), sprue.need("top"), sprue.need("foot"), placeIfSaid(sprue)),
        gating.group("well").map(w -> new Well(w.need("across"), w.need("deep"))),
        gating.group("runner").map(this::runner),
        gates,
        vents,
        overflows(),
        feeders());
  }

  private List<Overflow> overflows() {
    List<Overflow> all = new ArrayList<>();
    for (Fields o : gating.list("overflows")) {
      all.add(new Overflow(name(o), place(o), o.need("wide"), o.need("thick"), o.need("holds")));
    }
    return all;
  }

  private List<Feeder> feeders() {
    List<Feeder> all = new ArrayList<>();
    for (Fields f : gating.list("feeders")) {
      all.add(
          new Feeder(
              name(f),
              place(f),
              f.need("across"),
              f.need("tall"),
              f.need("neck"),
              f.word("open").orElse("yes").equals("yes"),
              f.word("sleeve").orElse("no").equals("yes")));
    }
    return all;
  }

  private Runner runner(Fields r) {
    double on = r.si("runs on by").orElse(0.0);
    if (r.has("along")) {
      return new Runner.Alongside(
          usualSide,
          r.si("away").orElse(0.0),
          r.need("wide"),
          r.need("deep"),
          fedFrom(r.word("fed from").orElse("bottom")),
          on);
    }
    return new Runner.Straight(r.need("long"), r.need("wide"), r.need("deep"), on);
  }

  private static Runner.FedFrom fedFrom(String word) {
    return switch (word) {
      case "top" -> Runner.FedFrom.TOP;
      case "thick end" -> Runner.FedFrom.THICK_END;
      case "tip" -> Runner.FedFrom.TIP;
      default -> Runner.FedFrom.BOTTOM;
    };
  }

  private static String name(Fields fields) {
    return fields.word("name").orElseThrow();
  }

  private Place place(Fields fields) {
    return placeIfSaid(fields).orElseThrow();
  }

  private Optional<Place> placeIfSaid(Fields fields) {
    Optional<String> into = fields.word("into");
    if (into.isPresent()) {
      String folded = into.get().toLowerCase(Locale.ROOT);
      boolean part = PlaceWords.PARTS.contains(folded);
      return Optional.of(new Place.Into(part ? folded : limb(into.get())));
    }
    Optional<Compounds.Along> along = fields.along("at");
    if (along.isPresent() && along.get().across().isPresent()) {
      return Optional.of(spot(along.get()));
    }
    return along.map(
        a ->
            new Place.At(
                limb(a.limb().orElse(Limb.ONLY)),
                sizes.along(a.distance().si()),
                fields.word("side").map(GatingAssembly::side).orElse(usualSide)));
  }

  /** A place read off the picture: the nearest distance and side go with it. */
  private Place spot(Compounds.Along typed) {
    Limb limb = limbs.get(0);
    double x = sizes.along(typed.distance().si());
    double y = sizes.along(typed.across().orElseThrow().si());
    double at = Math.max(0.0, Math.min(limb.length(), x));
    double middle = y;
    if (!lines.isEmpty()) {
      Centreline line = lines.get(0);
      at = line.nearest(x, y);
      double heading = line.headingAt(at);
      middle =
          StrictMath.cos(heading) * (y - line.yAt(at))
              - StrictMath.sin(heading) * (x - line.xAt(at));
    }
    Side side =
        at <= NEAR
            ? Side.THICK_END
            : at >= limb.length() - NEAR ? Side.TIP : middle >= 0.0 ? Side.LEFT : Side.RIGHT;
    return new Place.At(limb.name(), at, side, Optional.of(new Place.Spot(x, y)));
  }

  /** The name of a limb as it was given to it. */
  private String limb(String said) {
    return limbs.stream()
        .map(Limb::name)
        .filter(n -> n.equalsIgnoreCase(said))
        .findFirst()
        .orElse(said);
  }

  private static Side side(String word) {
    return switch (word) {
      case "right" -> Side.RIGHT;
      case "thick end" -> Side.THICK_END;
      case "tip" -> Side.TIP;
      default -> Side.LEFT;
    };
  }
}
