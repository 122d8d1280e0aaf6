package lastinch.cases.plan.check;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import lastinch.cases.format.Problems;
import lastinch.cases.plan.assembly.Fields;
import lastinch.cases.plan.assembly.PlaceWords;
import lastinch.cases.schema.Compounds;
import lastinch.cases.schema.Limits;
import lastinch.cases.schema.NearestWord;
import lastinch.cases.units.Saying;
import lastinch.cases.units.Unit;

/** Whether gates, vents and the rest sit where there is something, and not on one another. */
final class GatingChecks {
  private final Fields gating;
  private final boolean hasBoss;
  private final Map<String, Double> lengths;
  private final Problems problems;

  /**
   * Checks.
   *
   * @param lengths of the limbs by folded name, see {@link PieceChecks#lengths()}
   */
  GatingChecks(Fields gating, boolean hasBoss, Map<String, Double> lengths, Problems problems) {
    this.gating = gating;
    this.hasBoss = hasBoss;
    this.lengths = lengths;
    this.problems = problems;
  }

  void check() {
    Map<String, Integer> names = new HashMap<>();
    for (String list : List.of("gates", "vents", "overflows", "feeders", "chills")) {
      for (Fields fields : gating.list(list)) {
        place(fields);
        Optional<String> name = fields.word("name").map(n -> n.toLowerCase(Locale.ROOT));
        if (name.isPresent()) {
          Integer before = names.putIfAbsent(name.get(), fields.span("name").line());
          if (before != null && before != fields.span("name").line()) {
            problems.add(fields.span("name"), "wrong.nameAlreadyUsedLine", before);
          }
        }
      }
    }
    gating.group("sprue").ifPresent(this::place);
    gating.group("cup").ifPresent(c -> gating.group("sprue").ifPresent(s -> mouth(c, s)));
    wayIn();
    apart();
  }

  /** A sprue begins in the floor of its cup. */
  private void mouth(Fields cup, Fields sprue) {
    if (cup.si("across").isPresent()
        && sprue.si("top").isPresent()
        && sprue.need("top") > cup.need("across")) {
      problems.add(sprue.span("top"), "wrong.sprueWiderThanCup", cup.typed("across").orElseThrow());
    }
  }

  private void wayIn() {
    Optional<Fields> sprue = gating.group("sprue");
    boolean damaged = gating.damaged() || sprue.map(Fields::damaged).orElse(true);
    boolean opens = sprue.map(s -> s.has("into") || s.has("at")).orElse(false);
    boolean gated = !gating.list("gates").isEmpty();
    if (!damaged && !gated && gating.has("runner")) {
      problems.add(gating.span("runner"), "wrong.runnerLeadsNowhereAdd");
    } else if (!damaged && !opens && !gated) {
      problems.add(gating.span(), "wrong.metalNoWayInto");
    }
  }

  private void place(Fields fields) {
    Optional<String> into = fields.word("into").map(i -> i.toLowerCase(Locale.ROOT));
    if (into.isPresent()) {
      into(fields, into.get());
    }
    Optional<Compounds.Along> along = fields.along("at");
    if (along.isEmpty()) {
      return;
    }
    if (along.get().across().isPresent()) {
      spot(fields, along.get());
      return;
    }
    String limb = along.get().limb().orElse("").toLowerCase(Locale.ROOT);
    Double length = lengths.get(limb);
    if (length == null) {
      if (!limb.isEmpty()) {
        noLimb(fields, "at", limb);
      } else if (!lengths.isEmpty()) {
        problems.add(fields.span("at"), "wrong.sayAlongWhichLimb", anyLimb());
      }
      return;
    }
    double at = along.get().distance().si();
    if (!(at >= 0.0 && at <= length)) {
      Unit unit = along.get().distance().unit();
      problems.add(fields.span("at"), "wrong.outsidePieceAllowed", Limits.show(0.0, length, unit));
    }
  }

  /** A place by coordinates has to lie in the rectangle of the piece, its middle line at 0. */
  private void spot(Fields fields, Compounds.Along typed) {
    Double length = lengths.get("");
    if (length == null) {
      if (!lengths.isEmpty()) {
        problems.add(fields.span("at"), "wrong.placeTwoSizesWorks");
      }
      return;
    }
    double x = typed.distance().si();
    if (!(x >= -length && x <= 2.0 * length)
        || !(Math.abs(typed.across().orElseThrow().si()) <= 2.0 * length)) {
      problems.add(fields.span("at"), "wrong.farOutsidePiece");
    }
  }

  private void into(Fields fields, String part) {
    boolean known =
        switch (part) {
          case "boss" -> hasBoss;
          case "cup" -> true;
          case "runner" -> gating.has("runner");
          default -> lengths.containsKey(part);
        };
    if (known) {
      return;
    }
    if (PlaceWords.PARTS.contains(part)) {
      problems.add(
          fields.span("into"),
          "wrong.noPlan",
          part,
          part.equals("boss") ? Saying.of("wrong.writePlace", thickEnd()) : Saying.NONE);
    } else {
      noLimb(fields, "into", part);
    }
  }

  private void noLimb(Fields fields, String key, String limb) {
    List<String> known = new ArrayList<>(lengths.keySet());
    known.remove("");
    known.addAll(PlaceWords.PARTS);
    Optional<String> near = NearestWord.of(limb, known);
    Saying sentence = Saying.of("wrong.noPartName");
    problems.add(fields.span(key), sentence, near);
  }

  /** The place where a boss would be. */
  private String thickEnd() {
    return "at: " + (lengths.containsKey("") ? "" : anyLimb() + " at ") + "0 mm, side: thick end";
  }

  private String anyLimb() {
    return lengths.keySet().stream().filter(k -> !k.isEmpty()).findFirst().orElse("LIMB");
  }

  /** Two gates may not cut into each other. */
  private void apart() {
    List<Fields> gates = gating.list("gates");
    for (int i = 1; i < gates.size(); i++) {
      for (int j = 0; j < i; j++) {
        if (meet(gates.get(j), gates.get(i))) {
          String other = gates.get(j).word("name").orElse("another gate");
          problems.add(gates.get(i).span(), "wrong.gateCutsIntoThey", other);
        }
      }
    }
  }

  private static boolean meet(Fields a, Fields b) {
    Optional<String> intoA = a.word("into").map(s -> s.toLowerCase(Locale.ROOT));
    if (intoA.isPresent()) {
      return intoA.equals(b.word("into").map(s -> s.toLowerCase(Locale.ROOT)));
    }
    Optional<Compounds.Along> atA = a.along("at");
    Optional<Compounds.Along> atB = b.along("at");
    if (atA.isEmpty()
        || atB.isEmpty()
        || atA.get().across().isPresent()
        || atB.get().across().isPresent()
        || !atA.get().limb().equals(atB.get().limb())
        || !a.word("side").equals(b.word("side"))) {
      return false;
    }
    double half = (a.si("wide").orElse(0.0) + b.si("wide").orElse(0.0)) / 2;
    double distance = Math.abs(atA.get().distance().si() - atB.get().distance().si());
    return distance < half;
  }
}
