package lastinch.cases.plan.check;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.TreeMap;
import lastinch.cases.format.Problems;
import lastinch.cases.plan.assembly.CavitySizes;
import lastinch.cases.plan.assembly.Fields;
import lastinch.cases.plan.assembly.ModelFile;
import lastinch.cases.plan.assembly.PieceAssembly;
import lastinch.cases.plan.assembly.Volumes;
import lastinch.cases.schema.Compounds;
import lastinch.cases.schema.Limits;
import lastinch.cases.schema.Tables;
import lastinch.cases.units.BandedQuantity;
import lastinch.cases.units.Dimension;
import lastinch.cases.units.Saying;
import lastinch.solver.casting.Piece;

/** What has to fit together in the piece. */
final class PieceChecks {
  /** Weighing and measuring may differ by this much before it is said: 8 %, our choice. */
  private static final double APART = 0.08;

  /** Beyond this one of the two is plainly wrong: 30 %, our choice. */
  private static final double FAR_APART = 0.30;

  private final Fields piece;
  private final Optional<ModelFile> model;
  private final Problems problems;

  PieceChecks(Fields piece, Optional<ModelFile> model, Problems problems) {
    this.piece = piece;
    this.model = model;
    this.problems = problems;
  }

  void check() {
    stations(piece);
    Set<String> names = new HashSet<>();
    for (Fields limb : piece.list("limbs")) {
      stations(limb);
      limb.word("name").ifPresent(n -> names.add(n.toLowerCase(Locale.ROOT)));
    }
    for (Fields limb : piece.list("limbs")) {
      end(limb, "from", names);
      end(limb, "to", names);
    }
  }

  private void stations(Fields fields) {
    Optional<List<Tables.Row>> rows = fields.table("stations");
    if (rows.isEmpty()) {
      return;
    }
    for (int i = 0; i < rows.get().size(); i++) {
      Tables.Row row = rows.get().get(i);
      Map<String, BandedQuantity> cells = row.cells();
      BandedQuantity at = cells.get("at");
      if (i == 0 && at != null && at.best().si() != 0.0) {
        problems.add(row.span(), "wrong.firstPlaceWhere0");
      }
      BandedQuantity edge = cells.get("edge");
      BandedQuantity thick = cells.get("thick");
      if (edge != null && thick != null && edge.best().si() > thick.best().si()) {
        problems.add(
            row.span(), "wrong.edgeCannotThickerThan", edge.best().typed(), thick.best().typed());
      }
    }
  }

  private void end(Fields limb, String key, Set<String> names) {
    Optional<Compounds.End> end = limb.compound(key, Compounds.End.class);
    if (end.isEmpty()) {
      return;
    }
    String of = end.get().limb().toLowerCase(Locale.ROOT);
    if (of.equals("boss")) {
      if (!piece.has("boss")) {
        problems.add(limb.span(key), "wrong.pieceNoBoss");
      }
    } else if (!names.contains(of)) {
      problems.add(limb.span(key), "wrong.noLimbName");
    } else if (limb.word("name").map(n -> n.toLowerCase(Locale.ROOT)).equals(Optional.of(of))) {
      problems.add(limb.span(key), "wrong.limbCannotGrowJoin");
    }
  }

  /** How long each limb is, by folded name; a piece by plain stations under an empty name. */
  Map<String, Double> lengths() {
    Map<String, Double> lengths = new TreeMap<>();
    length(piece).ifPresent(l -> lengths.put("", l));
    model.ifPresent(m -> lengths.put("", m.drawn().length()));
    for (Fields limb : piece.list("limbs")) {
      OptionalDouble length = length(limb);
      Optional<String> name = limb.word("name");
      if (name.isPresent() && length.isPresent()) {
        lengths.put(name.get().toLowerCase(Locale.ROOT), length.getAsDouble());
      }
    }
    return lengths;
  }

  private static OptionalDouble length(Fields fields) {
    Optional<List<Tables.Row>> rows = fields.table("stations");
    if (rows.isEmpty() || rows.get().isEmpty()) {
      return OptionalDouble.empty();
    }
    List<Tables.Row> all = rows.get();
    BandedQuantity last = all.get(all.size() - 1).cells().get("at");
    return last == null ? OptionalDouble.empty() : OptionalDouble.of(last.best().si());
  }

  /** Greatest width of the piece as measured [m]. */
  double widest() {
    double widest = piece.group("boss").map(b -> b.si("wide").orElse(0.0)).orElse(0.0);
    widest = Math.max(widest, model.map(m -> m.drawn().widest()).orElse(0.0));
    List<Fields> all = new ArrayList<>(piece.list("limbs"));
    all.add(piece);
    for (Fields fields : all) {
      for (Tables.Row row : fields.table("stations").orElse(List.of())) {
        BandedQuantity wide = row.cells().get("wide");
        widest = wide == null ? widest : Math.max(widest, wide.best().si());
      }
    }
    return widest;
  }

  /** Holds the weight of the print against its measures. */
  void weighed() {
    OptionalDouble mass = piece.si("print weighs");
    OptionalDouble density = piece.si("resin density");
    if (mass.isEmpty() || density.isEmpty()) {
      return;
    }
    Piece print = PieceAssembly.of(piece, new CavitySizes(1.0, 0.0), model);
    double measured = Volumes.piece(print) * density.getAsDouble();
    double ratio = measured / mass.getAsDouble();
    double off = Math.abs(ratio - 1.0);
    if (off <= APART) {
      return;
    }
    Saying sentence =
        Saying.of(
            "wrong.measuresPrintWeighsScale",
            Limits.show(measured, Dimension.MASS.unit("g").orElseThrow()),
            piece.typed("print weighs").orElse(""),
            ratio > 1.0 ? Saying.of("wrong.hollowSizeTooLarge") : Saying.of("wrong.sizeTooSmall"));
    if (off > FAR_APART) {
      problems.add(piece.span("print weighs"), sentence);
    } else {
      problems.note(piece.span("print weighs"), sentence);
    }
  }
}
