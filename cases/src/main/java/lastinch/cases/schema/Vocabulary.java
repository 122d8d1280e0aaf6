package lastinch.cases.schema;

import static lastinch.cases.schema.Word.may;
import static lastinch.cases.schema.Word.must;

import lastinch.cases.schema.Kind.Amount;
import lastinch.cases.units.Dimension;

/** All words of all kinds of file. */
public final class Vocabulary {
  /** Number of the newest case format. */
  public static final int CASE_FORMAT = 1;

  /** Number of the newest shop format. */
  public static final int SHOP_FORMAT = 1;

  /** Word that takes inherited things away; it may stand in every group. */
  public static final String LEAVE_OUT = "leave out";

  /** Words of a case file. */
  public static final Part CASE =
      Part.of(
          "case",
          must("format", Single.FREE, "last inch case 1"),
          must("title", Single.FREE, "what you call this plan"),
          may("based on", Single.FILE, "another case; this one says only what differs"),
          may("shop", Single.FILE, "what your shop owns"),
          may("materials", Single.FILE, "metals and moulds of your own"),
          must("piece", new Kind.Group(PieceWords.PIECE), "what you want to cast"),
          must("mould", new Kind.Group(MouldWords.MOULD), "what it is cast in").twins("mold"),
          must("gating", new Kind.Group(GatingWords.GATING), "how metal gets in"),
          must("metal", new Kind.Group(MetalWords.METAL), "what is cast"),
          may("pour", new Kind.Group(MetalWords.POUR), "how fast"),
          may(
              "pours from the same crucible",
              new Kind.ListOf(Single.FILE),
              "plans poured before this one from one melt, in order"),
          may(
              "seconds between",
              Amount.of(Dimension.TIME, "1 s", "10 min"),
              "from one mould to the next"),
          may("want", new Kind.Group(MetalWords.WANT), "what you ask of it"),
          may(
              "for checking",
              new Kind.Group(MetalWords.CHECKING),
              "switches physics off; not a forecast"));

  /** Words of a shop file. */
  public static final Part SHOP = ShopWords.SHOP;

  private Vocabulary() {}
}
