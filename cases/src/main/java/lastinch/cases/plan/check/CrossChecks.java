package lastinch.cases.plan.check;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import lastinch.cases.format.Problems;
import lastinch.cases.plan.ShopFile;
import lastinch.cases.plan.assembly.Fields;
import lastinch.cases.plan.assembly.ModelFile;
import lastinch.cases.schema.Tables;
import lastinch.solver.material.Alloy;
import lastinch.solver.material.MouldMedium;

/** What has to fit together across a whole case, as far as it can be judged. */
public final class CrossChecks {
  private final Fields root;
  private final Optional<Alloy> alloy;
  private final Optional<MouldMedium> medium;
  private final Optional<ShopFile> shop;
  private final Optional<ModelFile> model;
  private final Problems problems;

  public CrossChecks(
      Fields root,
      Optional<Alloy> alloy,
      Optional<MouldMedium> medium,
      Optional<ShopFile> shop,
      Optional<ModelFile> model,
      Problems problems) {
    this.root = root;
    this.model = model;
    this.alloy = alloy;
    this.medium = medium;
    this.shop = shop;
    this.problems = problems;
  }

  public void check() {
    Optional<Fields> piece = root.group("piece");
    Optional<Fields> mould = root.group("mould");
    Optional<Fields> gating = root.group("gating");
    Optional<Fields> metal = root.group("metal");
    Optional<PieceChecks> pieceChecks = piece.map(p -> new PieceChecks(p, model, problems));
    pieceChecks.ifPresent(PieceChecks::check);
    Map<String, Double> lengths = pieceChecks.map(PieceChecks::lengths).orElse(Map.of());
    Optional<Fields> boss = piece.flatMap(p -> p.group("boss"));
    boolean bossAllowed = piece.isEmpty() || piece.get().damaged() || boss.isPresent();
    gating.ifPresent(g -> new GatingChecks(g, bossAllowed, lengths, problems).check());
    if (metal.isPresent() && mould.isPresent()) {
      new HeatChecks(metal.get(), mould.get(), alloy, medium, problems).check();
    }
    if (mould.isPresent()) {
      FlaskChecks flask = new FlaskChecks(mould.get(), problems);
      gating.ifPresent(g -> flask.height(g, boss, lengths));
      pieceChecks.ifPresent(p -> flask.width(p.widest()));
      flask.slurry();
      metal.ifPresent(m -> flask.crucible(m, shop));
    }
    root.group("pour").ifPresent(this::filmed);
    root.group("for checking").ifPresent(this::wet);
    if (problems.isEmpty()) {
      pieceChecks.ifPresent(PieceChecks::weighed);
    }
    Needs.sayNotYet(root, problems);
  }

  private void filmed(Fields pour) {
    Optional<List<Tables.Row>> rows = pour.table("pours as filmed");
    if (rows.isEmpty() || rows.get().isEmpty()) {
      return;
    }
    var first = rows.get().get(0).cells().get("at");
    if (first != null && first.best().si() != 0.0) {
      problems.add(rows.get().get(0).span(), "wrong.firstMomentFirstMetal");
    }
    boolean any =
        rows.get().stream()
            .anyMatch(r -> r.cells().get("rate") == null || r.cells().get("rate").best().si() > 0);
    if (!any) {
      problems.add(pour.span("pours as filmed"), "wrong.rateNothingPouredAll");
    }
  }

  private void wet(Fields checking) {
    for (Fields wet : checking.list("starts wet")) {
      if (wet.si("from").isPresent()
          && wet.si("to").isPresent()
          && wet.need("to") <= wet.need("from")) {
        problems.add(wet.span("to"), "wrong.endLieBeyondOther");
      }
    }
  }
}
