package lastinch.cases.schema;

import static lastinch.cases.schema.PieceWords.length;
import static lastinch.cases.schema.Word.may;
import static lastinch.cases.schema.Word.must;

import lastinch.cases.schema.Kind.Amount;
import lastinch.cases.schema.Kind.Choice;
import lastinch.cases.units.Dimension;

/** Words of a shop file. */
final class ShopWords {
  private static final Part CRUCIBLE =
      Part.of(
          "crucible",
          must("name", Single.NAME, "what you call it"),
          must("holds", Single.HOLDS, "full to the brim"));

  private static final Part KILN =
      Part.of(
          "kiln",
          must("inside", Single.PAIR, "wide x deep"),
          must("tall", length("20 mm", "3 m"), "inside height").twins("height", "high"));

  private static final Part THERMOCOUPLE =
      Part.of(
          "thermocouple",
          must("kind", Choice.of("dipped", "dial", "optical"), "how it reads"),
          may(
                  "reads high by",
                  Amount.of(Dimension.HEAT_DIFFERENCE, "-100 degC", "100 degC").banded(),
                  "against a freezing metal; below nothing if it reads low")
              .orUnknown());

  private static final Part INVESTMENT =
      Part.of(
          "investment",
          may("follow", Single.FREE, "whose sheet you go by"),
          may(
              "never above",
              Amount.of(Dimension.HEAT, "400 degC", "1200 degC"),
              "the maker's limit"));

  private static final Part SHELF =
      Part.of(
          "metal on the shelf",
          must("name", Single.NAME, "what you call it"),
          must("alloy", Single.ALLOY, "what it is"),
          may("lot", Single.FREE, "what is stamped on it"),
          may("weighs", Amount.of(Dimension.MASS, "1 g", "10000 kg"), "how much there is"));

  private static final Part SCALE =
      Part.of(
          "scale",
          may("reads to", Amount.of(Dimension.MASS, "1 g", "1000 kg"), "its most"),
          may("steps of", Amount.of(Dimension.MASS, "0.001 g", "1 kg"), "its least"));

  static final Part SHOP =
      Part.of(
          "shop",
          must("format", Single.FREE, "last inch shop 1"),
          may("crucibles", new Kind.Named(CRUCIBLE), "what you melt in"),
          may("sprue pins", new Kind.ListOf(Single.PIN), "what you form sprues with"),
          may("gate cutters", new Kind.ListOf(length("1 mm", "300 mm")), "widths"),
          may("runner strip", new Kind.ListOf(Single.PAIR), "wide x deep").twins("runner strips"),
          may("flasks", new Kind.ListOf(new Kind.Group(MouldWords.FLASK)), "cans for investment"),
          may("kiln", new Kind.Group(KILN), "its inside"),
          may("thermocouple", new Kind.Group(THERMOCOUPLE), "how you read temperature")
              .twins("pyrometer"),
          may("scale", new Kind.Group(SCALE), "what you weigh with"),
          may("metals", new Kind.Named(SHELF), "what is on the shelf"),
          may("usual skim", Amount.of(Dimension.TIME, "0 s", "10 min"), "from reading to pouring"),
          may("most i lift", Amount.of(Dimension.MASS, "100 g", "100 kg"), "arms stretched out"),
          may("investment", new Kind.Group(INVESTMENT), "rules of your powder"));

  private ShopWords() {}
}
