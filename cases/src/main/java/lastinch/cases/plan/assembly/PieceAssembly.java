package lastinch.cases.plan.assembly;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import lastinch.cases.schema.Compounds;
import lastinch.cases.schema.Tables;
import lastinch.cases.units.BandedQuantity;
import lastinch.solver.casting.Boss;
import lastinch.solver.casting.Limb;
import lastinch.solver.casting.Piece;
import lastinch.solver.casting.SectionForm;
import lastinch.solver.casting.Station;
import lastinch.solver.geometry.solid.SlicedPart;

/** Builds the cavity of the piece. */
public final class PieceAssembly {
  private PieceAssembly() {}

  public static Piece of(Fields piece, CavitySizes sizes, Optional<ModelFile> model) {
    if (model.isPresent()) {
      SlicedPart drawn = model.get().cavity(sizes);
      return new Piece(
          drawn.limbs(), piece.group("boss").map(b -> boss(b, sizes)), Optional.of(drawn.model()));
    }
    List<Limb> limbs = new ArrayList<>();
    if (piece.has("limbs")) {
      for (Fields limb : piece.list("limbs")) {
        limbs.add(
            new Limb(
                limb.word("name").orElseThrow(),
                stations(limb, sizes),
                section(limb),
                end(limb, "from"),
                end(limb, "to"),
                limb.compound("heading", Double.class).orElse(0.0)));
      }
    } else {
      limbs.add(new Limb(Limb.ONLY, stations(piece, sizes), section(piece), "", "", 0.0));
    }
    return new Piece(limbs, piece.group("boss").map(b -> boss(b, sizes)));
  }

  private static Boss boss(Fields boss, CavitySizes sizes) {
    return new Boss(
        sizes.toFace(boss.need("long")),
        sizes.across(boss.need("wide")),
        sizes.across(boss.need("deep")));
  }

  private static String end(Fields limb, String key) {
    Optional<Compounds.End> end = limb.compound(key, Compounds.End.class);
    if (end.isEmpty()) {
      return "";
    }
    return end.get().limb().equals("boss")
        ? "boss"
        : end.get().limb() + (end.get().tip() ? " tip" : " thick end");
  }

  private static SectionForm section(Fields fields) {
    return switch (fields.word("section").orElse("flat").toLowerCase(Locale.ROOT)) {
      case "lens" -> SectionForm.LENS;
      case "round" -> SectionForm.ROUND;
      default -> SectionForm.FLAT;
    };
  }

  private static List<Station> stations(Fields fields, CavitySizes sizes) {
    List<Station> stations = new ArrayList<>();
    for (Tables.Row row : fields.table("stations").orElseThrow()) {
      BandedQuantity edge = row.cells().get("edge");
      stations.add(
          new Station(
              sizes.along(row.cells().get("at").best().si()),
              sizes.across(row.cells().get("wide").best().si()),
              sizes.across(row.cells().get("thick").best().si()),
              edge == null
                  ? OptionalDouble.empty()
                  : OptionalDouble.of(sizes.across(edge.best().si()))));
    }
    return stations;
  }
}
