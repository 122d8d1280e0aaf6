package lastinch.cases.schema;

import static lastinch.cases.schema.PieceWords.length;
import static lastinch.cases.schema.Word.may;
import static lastinch.cases.schema.Word.must;

import java.util.ArrayList;
import java.util.List;
import lastinch.cases.schema.Kind.Amount;
import lastinch.cases.schema.Kind.Choice;
import lastinch.cases.units.Dimension;

/** Words that describe how metal gets in and air gets out. */
final class GatingWords {
  private static final Choice YES_NO = Choice.of("yes", "no");

  private static final Word INTO = may("into", Single.INTO, "the part it enters");
  private static final Word AT =
      may(
          "at",
          Single.DISTANCE,
          "where it enters, from the thick end; or 120 by 15 mm as read off the picture");
  private static final Word SIDE =
      may(
          "side",
          Choice.of("left", "right", "thick end", "tip"),
          "seen from above (cope side), thick end towards you");

  private static final Part CUP =
      Part.of(
          "cup",
          must("across", length("10 mm", "400 mm"), "inside, rim to rim")
              .twins("diameter", "dia", "wide"),
          must("deep", length("2 mm", "400 mm"), "from its rim to where the sprue begins")
              .twins("depth", "tall"));

  private static final Part SPRUE =
      placed(
          "sprue",
          false,
          must("tall", length("1 mm", "2 m"), "from the cup's floor to its foot")
              .twins("height", "long", "length", "high"),
          must("top", length("2 mm", "150 mm"), "diameter under the cup"),
          must("foot", length("2 mm", "150 mm"), "diameter at the foot").twins("bottom", "base"));

  private static final Part WELL =
      Part.of(
          "well",
          must("across", length("2 mm", "200 mm"), "pocket under the sprue")
              .twins("diameter", "dia", "wide"),
          must("deep", length("0.5 mm", "200 mm"), "below the runner's floor").twins("depth"));

  private static final Part RUNNER =
      Part.of(
              "runner",
              may("long", length("2 mm", "3 m"), "from the sprue's foot to the gate")
                  .twins("length"),
              may(
                  "along",
                  Choice.of("left side", "right side"),
                  "beside the piece, seen from above"),
              may("away", length("0 mm", "500 mm"), "between the piece and the runner"),
              may(
                  "fed from",
                  Choice.of("bottom", "top", "thick end", "tip"),
                  "the end at which the sprue comes in"),
              must("wide", length("1 mm", "200 mm"), "across").twins("width"),
              must("deep", length("1 mm", "200 mm"), "through the parting line")
                  .twins("depth", "thick", "tall"),
              may("runs on by", length("0 mm", "1 m"), "past the last gate"))
          .either(
              new Part.Either(
                  "where the runner goes",
                  List.of(List.of("long"), List.of("along", "away", "fed from")),
                  true,
                  List.of()));

  private static final Word NAME = must("name", Single.NAME, "what you call it");

  private static final Part GATE =
      placed(
          "gate",
          true,
          NAME,
          must("wide", length("0.5 mm", "400 mm"), "width").twins("width"),
          must("thick", length("0.3 mm", "80 mm"), "thickness").twins("thickness", "deep"),
          must("long", length("0.5 mm", "500 mm"), "from the runner to the piece").twins("length"));

  private static final Part VENT =
      placed(
          "vent",
          true,
          NAME,
          must("across", length("0.2 mm", "30 mm"), "diameter").twins("diameter", "dia", "wide"),
          may("rises to", Choice.of("top"), "where it comes out"));

  private static final Part OVERFLOW =
      placed(
          "overflow",
          true,
          NAME,
          must("wide", length("0.5 mm", "400 mm"), "width of its neck").twins("width"),
          must("thick", length("0.3 mm", "80 mm"), "thickness of its neck").twins("thickness"),
          must("holds", Amount.of(Dimension.VOLUME, "0.01 cm3", "5 L"), "what it takes")
              .twins("volume"));

  private static final Part FEEDER =
      placed(
          "feeder",
          true,
          NAME,
          must("across", length("2 mm", "400 mm"), "diameter").twins("diameter", "dia"),
          must("tall", length("2 mm", "600 mm"), "height").twins("height", "high"),
          must("neck", length("1 mm", "400 mm"), "diameter of its neck").twins("neck across"),
          may("open", YES_NO, "whether air reaches its top"),
          may("sleeve", YES_NO, "whether it has an insulating sleeve"));

  private static final Part CHILL =
      placed(
          "chill",
          true,
          NAME,
          must("long", length("1 mm", "500 mm"), "along the piece").twins("length"),
          must("wide", length("1 mm", "500 mm"), "across the piece").twins("width"),
          must("thick", length("1 mm", "200 mm"), "away from the piece").twins("thickness", "deep"),
          may("metal", Choice.of("steel", "graphite", "copper"), "what it is made of"));

  static final Part GATING =
      Part.of(
          "gating",
          must("cup", new Kind.Group(CUP), "what you pour into").twins("basin", "pouring cup"),
          must("sprue", new Kind.Group(SPRUE), "the way down").twins("downsprue"),
          may("well", new Kind.Group(WELL), "pocket under the sprue").twins("sprue base"),
          may("runner", new Kind.Group(RUNNER), "from the sprue to the gates"),
          may("gates", new Kind.Named(GATE), "the ways into the piece").twins("ingates", "gate"),
          may("vents", new Kind.Named(VENT), "the ways out for air").twins("vent"),
          may("overflows", new Kind.Named(OVERFLOW), "pockets for the first, cold metal")
              .twins("flow-offs", "overflow"),
          may("feeders", new Kind.Named(FEEDER), "what makes up for shrinkage")
              .twins("risers", "feeder", "riser"),
          may("chills", new Kind.Named(CHILL), "blocks that draw heat (chills)").twins("chill"));

  private GatingWords() {}

  private static Part placed(String name, boolean required, Word... words) {
    List<Word> all = new ArrayList<>(List.of(words));
    int front = all.isEmpty() || !all.get(0).key().equals("name") ? all.size() : 1;
    all.addAll(front, List.of(INTO, AT, SIDE));
    return new Part(name, all, List.of())
        .either(
            new Part.Either(
                "where the " + name + " sits",
                List.of(List.of("into"), List.of("at", "side")),
                required,
                List.of()));
  }
}
