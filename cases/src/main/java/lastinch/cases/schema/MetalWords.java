package lastinch.cases.schema;

import static lastinch.cases.schema.PieceWords.length;
import static lastinch.cases.schema.Word.may;
import static lastinch.cases.schema.Word.must;

import java.util.List;
import lastinch.cases.schema.Kind.Amount;
import lastinch.cases.schema.Kind.Choice;
import lastinch.cases.schema.Kind.Column;
import lastinch.cases.units.Dimension;

/** Words for the metal, the pour, what is wanted, and options for checking the sums. */
final class MetalWords {
  static final Part METAL =
      Part.of(
          "metal",
          must("alloy", Single.ALLOY, "what you melt").twins("metal"),
          may("melted", Amount.of(Dimension.MASS, "1 g", "500 kg"), "weight in the crucible")
              .orUnknown()
              .twins("weight", "charge"),
          may("crucible", Single.FREE, "one of your shop file's crucibles").orUnknown(),
          may(
                  "reads",
                  Amount.of(Dimension.HEAT, "50 degC", "2200 degC").banded(),
                  "the last reading before you pour")
              .orUnknown()
              .twins("reading", "temperature"),
          may("read", Choice.of("dipped", "dial", "optical", "by eye"), "how you read it")
              .orUnknown(),
          may(
                  "from reading to first metal",
                  Amount.of(Dimension.TIME, "0 s", "30 min").banded(),
                  "skimming, carrying, aiming")
              .orUnknown()
              .twins("waiting"),
          may(
                  "loses while waiting",
                  Amount.of(Dimension.COOLING_RATE, "0 K/s", "20 K/s").banded(),
                  "from the reading to the pour, if you measured it")
              .orUnknown(),
          may(
                  "loses over the lip",
                  Amount.of(Dimension.HEAT_DIFFERENCE, "0 degC", "200 degC").banded(),
                  "over the lip and in the stream, if you measured it")
              .orUnknown(),
          may(
                  "mush that stops it",
                  Amount.of(Dimension.SHARE, "5 %", "90 %").banded(),
                  "how thick the metal is when it no longer runs, if you know better")
              .orUnknown());

  static final Part POUR =
      Part.of(
              "pour",
              may(
                      "crucible empties in",
                      Amount.of(Dimension.TIME, "0.1 s", "10 min").banded(),
                      "from first metal in the cup to an empty crucible")
                  .orUnknown(),
              may(
                      "cup is full after",
                      Amount.of(Dimension.TIME, "0.1 s", "10 min").banded(),
                      "from first metal in the cup to a full cup, from a video")
                  .orUnknown(),
              may("pours at", Single.RATE, "how much a second").orUnknown().twins("rate"),
              may(
                  "pours as filmed",
                  new Kind.Table(
                      List.of(
                          new Column(
                              "at",
                              Amount.of(Dimension.TIME, "0 s", "10 min"),
                              true,
                              "s",
                              List.of("time")),
                          new Column(
                              "rate",
                              Amount.of(Dimension.MASS_RATE, "0 kg/s", "50 kg/s"),
                              true,
                              "",
                              List.of("pours at"))),
                      2,
                      "at"),
                  "how much a second at some moments"))
          .either(
              new Part.Either(
                  "how fast you pour",
                  List.of(
                      List.of("crucible empties in"),
                      List.of("cup is full after"),
                      List.of("pours at"),
                      List.of("pours as filmed")),
                  false,
                  List.of("crucible empties in", "cup is full after")));

  static final Part WANT =
      Part.of(
          "want",
          may(
              "heat to spare",
              Amount.of(Dimension.SHARE, "0 %", "90 %"),
              "how much must be left over"));

  private static final Choice YES_NO = Choice.of("yes", "no");

  private static final Part WET =
      Part.of(
          "starts wet",
          must("channel", Single.FREE, "sprue, runner, the name of a gate, boss, piece or a limb"),
          must("from", length("0 mm", "10 m"), "along it"),
          must("to", length("0 mm", "10 m"), "along it"),
          may("speed", Amount.of(Dimension.SPEED, "-20 m/s", "20 m/s"), "of the metal there"));

  static final Part CHECKING =
      Part.of(
          "for checking",
          may("mould stays at its heat", YES_NO, "the mould's face never warms"),
          may("friction factor", number("0", "10"), "held at this"),
          may("spreading", number("0", "100"), "of heat along the metal, 0 is off"),
          may("entry loss", number("0", "100"), "where metal leaves the cup"),
          may("pushes back", YES_NO, "surface tension and air"),
          may("freezing follows", Choice.of("straight line", "the alloy"), "how mush grows"),
          may("cup kept at", length("0 mm", "2 m"), "metal above the cup's floor"),
          may("enters at", Amount.of(Dimension.SPEED, "0.001 m/s", "20 m/s"), "into the piece"),
          may(
              "starts wet",
              new Kind.ListOf(new Kind.Group(WET)),
              "channels that hold metal at the start"),
          may("poured fluid", Choice.of("metal", "water"), "water neither freezes nor cools"),
          may("cell length", length("0.05 mm", "100 mm"), "longest slice of a channel"),
          may("front courant", number("0.01", "10"), "share of a slice crossed in a step"),
          may("heat step", Amount.of(Dimension.TIME, "0.01 ms", "1 s"), "longest"),
          may("share that freezes as mush", number("0", "1"), "of the new solid"),
          may("gap conducts perfectly", YES_NO, "nothing between metal and mould"),
          may("wall curvature", Choice.of("on", "off"), "mould round a thin section opens out"),
          may(
              "rims",
              Choice.of("on", "off"),
              "rims of a flat section have their own heat and flow"),
          may("lip costs nothing", YES_NO, "the metal enters as it reads"));

  private MetalWords() {}

  private static Amount number(String low, String high) {
    return Amount.of(Dimension.NUMBER, low, high);
  }
}
