package lastinch.cases.schema;

import static lastinch.cases.schema.PieceWords.length;
import static lastinch.cases.schema.Word.may;
import static lastinch.cases.schema.Word.must;

import lastinch.cases.schema.Kind.Amount;
import lastinch.cases.schema.Kind.Choice;
import lastinch.cases.units.Dimension;

/** Words that describe the mould. */
final class MouldWords {
  static final Part FLASK =
      Part.of(
          "flask",
          must("inside", length("20 mm", "1 m"), "inner diameter").twins("across", "diameter"),
          must("tall", length("20 mm", "2 m"), "height").twins("height", "high"),
          may("wall", length("0.2 mm", "20 mm"), "thickness of the steel").orUnknown(),
          may("steel", Choice.of("stainless", "mild"), "what it is made of").orUnknown());

  static final Part MOULD =
      Part.of(
          "mould",
          must("material", Single.MEDIUM, "what the mould is made of").twins("medium", "sand"),
          may("bonded with", Choice.of("oil", "resin", "water glass"), "what binds the sand")
              .orUnknown()
              .only(Applies.SAND)
              .twins("binder", "set with"),
          may("rammed", Choice.of("soft", "firm", "hard"), "a thumb leaves 3 mm, 1 mm or nothing")
              .orUnknown()
              .only(Applies.SAND),
          may("powder", Amount.of(Dimension.MASS, "10 g", "500 kg"), "dry investment")
              .orUnknown()
              .only(Applies.INVESTMENT),
          may("water", Amount.of(Dimension.MASS, "1 g", "500 kg"), "water mixed into it")
              .orUnknown()
              .only(Applies.INVESTMENT),
          may("flask", new Kind.Group(FLASK), "the steel can").only(Applies.INVESTMENT),
          may(
                  "nearest edge to wall",
                  length("0 mm", "500 mm"),
                  "ruler, before investing: from the piece to the can")
              .orUnknown()
              .only(Applies.INVESTMENT),
          may("under the tip", length("0 mm", "500 mm"), "investment below the piece")
              .orUnknown()
              .only(Applies.INVESTMENT),
          may(
                  "investment grows by",
                  Amount.of(Dimension.SHARE, "-1 %", "3 %").banded(),
                  "from the print to the hot mould")
              .orUnknown()
              .only(Applies.INVESTMENT),
          may(
                  "temperature",
                  Amount.of(Dimension.HEAT, "-40 degC", "1400 degC").banded(),
                  "of the mould; for a flask what the kiln reads")
              .orUnknown()
              .twins("heat", "temp"),
          may(
                  "held there",
                  Amount.of(Dimension.TIME, "0 s", "100 h"),
                  "at that temperature in the kiln")
              .orUnknown()
              .only(Applies.INVESTMENT),
          may(
                  "out of kiln to first metal",
                  Amount.of(Dimension.TIME, "0 s", "1 h").banded(),
                  "from opening the kiln to pouring")
              .orUnknown()
              .only(Applies.INVESTMENT),
          may("wall", length("1 mm", "300 mm"), "thickness of a shell or of a mould you reuse")
              .orUnknown()
              .only(Applies.WALLED),
          may("parting crack", length("0 mm", "0.5 mm").banded(), "gap at the parting line")
              .orUnknown()
              .only(Applies.PARTED),
          may(
                  "air behind",
                  Amount.of(Dimension.PRESSURE, "1 kPa", "120 kPa"),
                  "air pressure outside the mould; ordinary air has 101 kPa")
              .orUnknown(),
          may(
                  "mould pulls heat",
                  Amount.of(Dimension.HEAT_PULL, "10 W/m2K", "100000 W/m2K").banded(),
                  "from liquid metal that touches it, if you know better than the usual figure")
              .orUnknown(),
          must("stands", Single.STANDS, "how the mould stands when you pour")
              .twins("attitude", "orientation", "position"));

  private MouldWords() {}
}
