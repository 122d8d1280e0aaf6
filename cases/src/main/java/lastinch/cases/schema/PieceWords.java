package lastinch.cases.schema;

import static lastinch.cases.schema.Word.may;
import static lastinch.cases.schema.Word.must;

import java.util.List;
import lastinch.cases.schema.Kind.Amount;
import lastinch.cases.schema.Kind.Choice;
import lastinch.cases.schema.Kind.Column;
import lastinch.cases.units.Dimension;

/** Words that describe the piece. */
final class PieceWords {
  private static final Kind.Table STATIONS =
      new Kind.Table(
          List.of(
              column("at", "0 mm", "5 m", true, "from", "position", "distance"),
              column("wide", "0.5 mm", "1 m", true, "width"),
              column("thick", "0.2 mm", "60 mm", true, "thickness", "deep"),
              column("edge", "0.1 mm", "60 mm", false, "rim")),
          2,
          "at");

  private static final Choice SECTION = Choice.of("lens", "flat", "round");

  private static final Part BOSS =
      Part.of(
          "boss",
          may("at", Choice.of("thick end"), "which end it sits at"),
          must("long", length("1 mm", "1 m"), "along the piece").twins("length"),
          must("wide", length("1 mm", "1 m"), "across the piece").twins("width"),
          must("deep", length("0.5 mm", "500 mm"), "through the parting line")
              .twins("depth", "thick", "tall", "high"));

  private static final Part LIMB =
      Part.of(
          "limb",
          must("name", Single.NAME, "what you call it"),
          must("stations", STATIONS, "where you put calipers, from thick end to tip"),
          may("section", SECTION, "shape across").twins("shape"),
          may("from", Single.LIMB_END, "what it grows from; absent: the start of the piece"),
          may("to", Single.LIMB_END, "what its tip joins; absent: nothing, it is closed"),
          may("heading", Single.HEADING, "which way it goes, seen from above"));

  private static final Part MODEL =
      Part.of(
          "model",
          must("file", Single.FILE, "STL, 3MF or OBJ, beside this file"),
          may("unit", Choice.of("mm", "cm", "m", "in"), "what one unit is where the file is silent")
              .twins("units"),
          may(
                  "up",
                  Choice.of("as found", "z", "-z", "y", "-y", "x", "-x"),
                  "which way of the file points out of the cope; as found: the thinnest way")
              .twins("parting side"),
          may(
                  "parting at",
                  length("0 mm", "500 mm"),
                  "height of the parting line above the lowest place of the piece as it lies;"
                      + " absent: where it locks least")
              .twins("parting height", "parting"),
          may(
              "thick end",
              Choice.of("as found", "other end", "x", "-x", "y", "-y", "z", "-z"),
              "which end is 0 mm, or the side of the file it is on"),
          may(
              "scale",
              Amount.of(Dimension.SHARE, "1 %", "10000 %"),
              "larger or smaller than drawn"));

  static final Part PIECE =
      Part.of(
              "piece",
              must(
                      "sizes are",
                      Choice.of("of the pattern", "of the finished casting", "of the print"),
                      "what you put your calipers on, or what the model was drawn as")
                  .twins("sizes"),
              may(
                      "pattern is larger by",
                      Amount.of(Dimension.SHARE, "0 %", "5 %"),
                      "how much larger than the finished casting it was made")
                  .orUnknown()
                  .twins("contraction", "shrinkage"),
              may("grind off", length("0 mm", "10 mm"), "metal you will take off each face"),
              may("boss", new Kind.Group(BOSS), "thick block in front of the first station"),
              may("stations", STATIONS, "where you put calipers, from thick end to tip"),
              may("section", SECTION, "shape across").twins("shape"),
              may("limbs", new Kind.Named(LIMB), "parts of a piece that branches"),
              may("model", new Kind.Group(MODEL), "a drawn solid instead of calipers"),
              may("print weighs", Amount.of(Dimension.MASS, "0.1 g", "50 kg"), "kitchen scale")
                  .orUnknown()
                  .only(Applies.PRINT),
              may(
                      "resin density",
                      Amount.of(Dimension.DENSITY, "0.5 g/cm3", "3 g/cm3"),
                      "from the bottle")
                  .orUnknown()
                  .only(Applies.PRINT))
          .either(
              new Part.Either(
                  "the shape of the piece",
                  List.of(List.of("stations", "section"), List.of("limbs"), List.of("model")),
                  true,
                  List.of()));

  private PieceWords() {}

  private static Column column(String key, String low, String high, boolean need, String... twins) {
    return new Column(key, length(low, high), need, "", List.of(twins));
  }

  static Amount length(String low, String high) {
    return Amount.of(Dimension.LENGTH, low, high);
  }
}
