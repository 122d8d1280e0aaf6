package lastinch.cases.plan;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import lastinch.cases.format.CaseText;
import lastinch.cases.format.Node;
import lastinch.cases.format.Problems;
import lastinch.cases.format.SourceText;
import lastinch.cases.mesh.UnitAnswer;
import lastinch.cases.plan.assembly.Fields;
import lastinch.cases.plan.assembly.MaterialNames;
import lastinch.cases.plan.assembly.ModelFile;
import lastinch.cases.plan.assembly.MouldAssembly;
import lastinch.cases.plan.assembly.PlanAssembly;
import lastinch.cases.plan.assembly.TypedValues;
import lastinch.cases.plan.check.CrossChecks;
import lastinch.cases.plan.check.RequiredWords;
import lastinch.cases.schema.PartCheck;
import lastinch.cases.schema.Values;
import lastinch.cases.schema.Vocabulary;
import lastinch.solver.material.Alloy;
import lastinch.solver.material.MouldMedium;

/** Reads a case file with all it is based on, checks it and turns it into a plan. */
public final class CaseReader {
  private final Path file;
  private final Problems problems = new Problems();
  private final UnitAnswer unit;
  private Materials materials;

  private CaseReader(Path file, Materials materials, UnitAnswer unit) {
    this.file = file;
    this.materials = materials;
    this.unit = unit;
  }

  /**
   * Reads a case file. Nothing a person can write makes this throw.
   *
   * @param file the case file
   * @param materials metals and mould media it may name
   */
  public static ReadResult read(Path file, Materials materials) {
    return read(file, materials, UnitAnswer.NOBODY);
  }

  /**
   * Reads a case file beside somebody who may be asked. Nothing a person can write makes this
   * throw.
   *
   * @param file the case file
   * @param materials metals and mould media it may name
   * @param unit is asked for the unit of a model when no file says it
   */
  public static ReadResult read(Path file, Materials materials, UnitAnswer unit) {
    return new CaseReader(file, materials, unit).read();
  }

  private ReadResult read() {
    Optional<Chain> chain = Chain.read(file, new PartCheck(problems), problems);
    if (chain.isEmpty() || !chain.get().isWhole()) {
      return unsound(); // without its base nothing can be said of what the rest lacks
    }
    Node.Entries merged = Merge.of(chain.get(), problems);
    List<SourceText> beside = new ArrayList<>();
    ownMaterials(merged).ifPresent(beside::add);
    MaterialNames names = new MaterialNames(materials, problems);
    Fields raw = new Fields(Vocabulary.CASE, merged);
    raw.group("metal").flatMap(m -> m.node("alloy")).ifPresent(names::alloy);
    raw.group("mould").flatMap(m -> m.node("material")).ifPresent(names::medium);
    Optional<ShopReader.Read> shop = shop(merged, names);
    shop.ifPresent(s -> beside.add(s.source()));
    Node.Entries fit = fit(chain.get(), merged);
    Fields root = new Fields(Vocabulary.CASE, fit);
    Optional<Alloy> alloy =
        root.group("metal").flatMap(m -> m.typed("alloy")).flatMap(materials::alloy);
    Optional<ModelFile> model =
        root.group("piece")
            .flatMap(p -> p.group("model"))
            .flatMap(m -> ModelFile.of(m, unit, problems));
    model.map(ModelFile::file).ifPresent(beside::add);
    CrossChecks checks =
        new CrossChecks(
            root, alloy, medium(merged), shop.map(ShopReader.Read::shop), model, problems);
    checks.check();
    if (!problems.isEmpty()) {
      return unsound();
    }
    List<SourceText> sources = new ArrayList<>();
    chain.get().links().forEach(l -> sources.add(l.source()));
    sources.addAll(beside);
    Plan plan =
        new PlanAssembly(
                root, alloy.orElseThrow(), materials, shop.map(ShopReader.Read::shop), model)
            .build(file, Digest.of(sources), TypedValues.of(fit), problems);
    return new ReadResult.Sound(plan, problems.notes());
  }

  private ReadResult unsound() {
    return new ReadResult.Unsound(problems.errors(), problems.notes());
  }

  private Optional<ShopReader.Read> shop(Node.Entries merged, MaterialNames names) {
    Optional<Node> named = merged.get("shop");
    Optional<String> name = named.flatMap(n -> Values.text(n, new Problems()));
    if (name.isEmpty()) {
      return Optional.empty();
    }
    Path from = named.get().span().source().path();
    return Beside.of(from, name.get())
        .flatMap(p -> ShopReader.read(p, named.get().span(), names, problems));
  }

  /** Lays the person's own materials over the catalogue. */
  private Optional<SourceText> ownMaterials(Node.Entries merged) {
    Optional<Node> named = merged.get("materials");
    Optional<String> name = named.flatMap(n -> Values.text(n, new Problems()));
    Optional<Path> path = name.flatMap(n -> Beside.of(named.get().span().source().path(), n));
    if (path.isEmpty()) {
      return Optional.empty();
    }
    Optional<SourceText> source = Beside.read(path.get(), named.get().span(), problems);
    if (source.isEmpty()) {
      return Optional.empty();
    }
    CaseText.parse(source.get(), problems)
        .ifPresent(map -> materials = materials.with(map, problems));
    return source;
  }

  private Optional<MouldMedium> medium(Node.Entries merged) {
    return new Fields(Vocabulary.CASE, merged)
        .group("mould")
        .flatMap(
            m ->
                m.typed("material").flatMap(name -> materials.medium(name, MouldAssembly.make(m))));
  }

  private Node.Entries fit(Chain chain, Node.Entries merged) {
    Fields raw = new Fields(Vocabulary.CASE, merged);
    boolean print =
        raw.group("piece")
            .flatMap(p -> p.word("sizes are"))
            .map(s -> s.equals("of the print"))
            .orElse(false);
    String name = raw.group("mould").flatMap(m -> m.typed("material")).orElse("this mould");
    return new RequiredWords(
            chain.top().source(), medium(merged).map(MouldMedium::family), print, name, problems)
        .check(Vocabulary.CASE, merged);
  }
}
