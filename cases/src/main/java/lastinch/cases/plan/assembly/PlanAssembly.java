package lastinch.cases.plan.assembly;

import java.nio.file.Path;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import lastinch.cases.format.Problems;
import lastinch.cases.plan.Materials;
import lastinch.cases.plan.Plan;
import lastinch.cases.plan.ShopFile;
import lastinch.cases.plan.Want;
import lastinch.solver.casting.Metal;
import lastinch.solver.casting.Mould;
import lastinch.solver.casting.Piece;
import lastinch.solver.casting.Pour;
import lastinch.solver.casting.PourCase;
import lastinch.solver.casting.gating.Gating;
import lastinch.solver.material.Alloy;
import lastinch.solver.material.MouldFamily;

/** Turns a checked case into a plan. */
public final class PlanAssembly {
  private final Fields root;
  private final Alloy alloy;
  private final Materials materials;
  private final Optional<ShopFile> shop;
  private final Optional<ModelFile> model;

  public PlanAssembly(
      Fields root,
      Alloy alloy,
      Materials materials,
      Optional<ShopFile> shop,
      Optional<ModelFile> model) {
    this.root = root;
    this.model = model;
    this.alloy = alloy;
    this.materials = materials;
    this.shop = shop;
  }

  public Plan build(Path file, String digest, Map<String, String> typed, Problems problems) {
    Assumptions taken = new Assumptions();
    Fields pieceWords = root.group("piece").orElseThrow();
    Fields mouldWords = root.group("mould").orElseThrow();
    CavitySizes sizes = CavitySizes.of(pieceWords, mouldWords, alloy.name(), materials, taken);
    Piece piece = PieceAssembly.of(pieceWords, sizes, model);
    Mould mould = new MouldAssembly(mouldWords, alloy.name(), materials, taken).build();
    noteMake(mouldWords, mould, problems);
    Gating gating = new GatingAssembly(root.group("gating").orElseThrow(), piece, sizes).build();
    Fields metalWords = root.group("metal").orElseThrow();
    double toRim =
        (Volumes.piece(piece) + Volumes.gating(gating))
            * alloy.density(alloy.pourTemperature().value());
    MetalAssembly metalAssembly =
        new MetalAssembly(metalWords, alloy, materials.common(), shop, taken);
    Metal metal = metalAssembly.build(toRim);
    Pour pour = metalAssembly.pour(root.group("pour"));
    noteApart(pour, metal, toRim, problems);
    String title = root.typed("title").orElseThrow();
    PourCase pourCase =
        new PourCase(
            title,
            piece,
            mould,
            gating,
            metal,
            pour,
            CheckingAssembly.of(root.group("for checking")),
            materials.common().laws());
    return new Plan(
        title,
        file,
        digest,
        pourCase,
        new Want(root.group("want").map(w -> w.si("heat to spare")).orElse(OptionalDouble.empty())),
        taken.list(),
        mouldWords.typed("material").orElseThrow(),
        typed,
        shop);
  }

  private static void noteMake(Fields words, Mould mould, Problems problems) {
    if (mould.medium().family() == MouldFamily.SAND) {
      if (words.typed("material").orElse("").equalsIgnoreCase("bonded sand")
          && words.word("bonded with").isEmpty()) {
        problems.note(words.span("material"), "wrong.binderNotGivenOil");
      }
      if (words.word("rammed").isEmpty()) {
        problems.note(words.span("material"), "wrong.rammingNotGivenFirm");
      }
    }
  }

  /** Two times for one pour may disagree; the second sets the rate. */
  private void noteApart(Pour pour, Metal metal, double toRim, Problems problems) {
    if (pour instanceof Pour.Both both) {
      double byCrucible = metal.melted() / both.empties().value();
      double byCup = toRim / both.cupFull().value();
      if (Math.abs(byCrucible - byCup) > UsualValues.APART * byCup) {
        problems.note(
            root.group("pour").orElseThrow().span("cup is full after"),
            "wrong.twoTimesDoNot",
            grams(byCrucible),
            grams(byCup));
      }
    }
  }

  private static String grams(double kilograms) {
    return Math.round(1000 * kilograms) + " g";
  }
}
