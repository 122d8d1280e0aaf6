package lastinch.cases.plan;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import lastinch.cases.format.CaseText;
import lastinch.cases.format.Node;
import lastinch.cases.format.Problems;
import lastinch.cases.format.SourceText;
import lastinch.cases.format.Span;
import lastinch.cases.plan.assembly.Fields;
import lastinch.cases.plan.assembly.MaterialNames;
import lastinch.cases.plan.assembly.UsualValues;
import lastinch.cases.plan.check.RequiredWords;
import lastinch.cases.schema.Compounds;
import lastinch.cases.schema.PartCheck;
import lastinch.cases.schema.Vocabulary;
import lastinch.cases.units.BandedQuantity;
import lastinch.solver.material.Band;
import lastinch.solver.material.Citation;

/** Reads what a shop owns. */
final class ShopReader {
  private ShopReader() {}

  /**
   * A shop file.
   *
   * @param source its text
   */
  record Read(SourceText source, ShopFile shop) {}

  /**
   * Reads a shop file.
   *
   * @param asked where the case names it
   * @param names judges the metals on its shelf
   */
  static Optional<Read> read(Path file, Span asked, MaterialNames names, Problems problems) {
    Optional<SourceText> source = Beside.read(file, asked, problems);
    if (source.isEmpty()) {
      return Optional.empty();
    }
    Optional<Node.Entries> map = CaseText.parse(source.get(), problems);
    if (map.isEmpty() || !Format.accepts(map.get(), "shop", Vocabulary.SHOP_FORMAT, problems)) {
      return Optional.empty();
    }
    int before = problems.count();
    Node.Entries sound =
        new RequiredWords(source.get(), Optional.empty(), true, "", problems)
            .check(
                Vocabulary.SHOP,
                Merge.alone(
                    Vocabulary.SHOP,
                    new PartCheck(problems).check(Vocabulary.SHOP, map.get()),
                    problems));
    for (Fields metal : new Fields(Vocabulary.SHOP, sound).list("metals")) {
      metal.node("alloy").ifPresent(names::alloy);
    }
    if (problems.count() > before) {
      return Optional.empty();
    }
    return Optional.of(new Read(source.get(), shop(new Fields(Vocabulary.SHOP, sound))));
  }

  private static ShopFile shop(Fields f) {
    List<ShopFile.Crucible> crucibles = new ArrayList<>();
    for (Fields c : f.list("crucibles")) {
      Compounds.Load load = c.compound("holds", Compounds.Load.class).orElseThrow();
      crucibles.add(new ShopFile.Crucible(c.word("name").orElseThrow(), load.mass(), load.metal()));
    }
    List<ShopFile.Can> cans = new ArrayList<>();
    for (Fields c : f.list("flasks")) {
      cans.add(
          new ShopFile.Can(
              c.need("inside"),
              c.need("tall"),
              c.si("wall").orElse(UsualValues.FLASK_WALL.value())));
    }
    return new ShopFile(
        crucibles,
        f.values("sprue pins", Compounds.Two.class).stream()
            .map(t -> new ShopFile.SpruePin(t.first(), t.second()))
            .toList(),
        f.values("gate cutters", BandedQuantity.class).stream().map(q -> q.best().si()).toList(),
        f.values("runner strip", Compounds.Two.class).stream()
            .map(t -> new ShopFile.Strip(t.first(), t.second()))
            .toList(),
        cans,
        f.group("kiln").map(ShopReader::kiln),
        f.group("thermocouple").map(ShopReader::thermocouple),
        f.si("most i lift"),
        f.group("investment").map(i -> i.si("never above")).orElse(OptionalDouble.empty()),
        f.si("usual skim"));
  }

  private static ShopFile.Kiln kiln(Fields kiln) {
    Compounds.Two inside = kiln.compound("inside", Compounds.Two.class).orElseThrow();
    return new ShopFile.Kiln(inside.first(), inside.second(), kiln.need("tall"));
  }

  private static ShopFile.Thermocouple thermocouple(Fields t) {
    String kind = t.word("kind").orElseThrow();
    Band off =
        t.amount("reads high by")
            .map(q -> new Band(q.best().si(), q.low(), q.high(), Citation.TYPED))
            .orElse(Band.typed(0.0, UsualValues.readingSpread(kind)));
    return new ShopFile.Thermocouple(kind, off);
  }
}
