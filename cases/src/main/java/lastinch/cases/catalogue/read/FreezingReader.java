package lastinch.cases.catalogue.read;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import lastinch.cases.format.Node;
import lastinch.cases.format.Problems;
import lastinch.cases.units.BandedQuantity;
import lastinch.cases.units.Dimension;

/** Reads how the solid share of an alloy grows while it cools. */
final class FreezingReader {
  private static final Property SHARE =
      Property.needed(MaterialWords.BELOW_TABLE, Dimension.SHARE, 0.0, 1.0, "solid share");

  private final FactReader facts;
  private final Problems problems;

  FreezingReader(FactReader facts, Problems problems) {
    this.facts = facts;
    this.problems = problems;
  }

  Optional<Fact> read(Property property, Node.Entry entry) {
    if (!(entry.value() instanceof Node.Entries map)) {
      problems.add(entry.value().span(), "wrong.needsWayMoreUnder", property.word());
      return Optional.empty();
    }
    Optional<String> way = way(map, entry);
    Optional<Fact.Ground> ground = facts.ground(map, entry);
    if (way.isEmpty() || ground.isEmpty()) {
      return Optional.empty();
    }
    List<Property> wanted = MaterialWords.freezingFigures(way.get());
    List<String> words = new ArrayList<>(List.of("way"));
    wanted.forEach(p -> words.add(p.word()));
    boolean byTable = way.get().equals("table");
    if (byTable) {
      words.add(MaterialWords.BELOW_TABLE);
    }
    facts.onlyWords(map, words);
    Optional<Map<String, Fact.Figure>> figures = figures(map, entry, wanted, ground.get());
    if (figures.isEmpty()) {
      return Optional.empty();
    }
    if (!byTable) {
      return Optional.of(
          new Fact.Freezing(way.get(), figures.get(), Optional.empty(), ground.get()));
    }
    return below(map, entry, ground.get())
        .map(t -> new Fact.Freezing(way.get(), figures.get(), Optional.of(t), ground.get()));
  }

  private Optional<String> way(Node.Entries map, Node.Entry entry) {
    if (map.get("way").isPresent() && map.get("way").get() instanceof Node.Text t) {
      String word = t.text().strip().toLowerCase(Locale.ROOT);
      if (MaterialWords.WAYS.contains(word)) {
        return Optional.of(word);
      }
    }
    problems.add(
        map.get("way").map(Node::span).orElse(entry.keySpan()),
        "wrong.wayMustOne",
        String.join(", ", MaterialWords.WAYS));
    return Optional.empty();
  }

  private Optional<Map<String, Fact.Figure>> figures(
      Node.Entries map, Node.Entry entry, List<Property> wanted, Fact.Ground ground) {
    Map<String, Fact.Figure> read = new LinkedHashMap<>();
    boolean whole = true;
    for (Property p : wanted) {
      Optional<Node> node = map.get(p.word());
      if (node.isEmpty()) {
        if (p.required()) {
          problems.add(entry.keySpan(), "wrong.missing", p.word());
          whole = false;
        }
        continue;
      }
      Optional<BandedQuantity> b =
          node.get() instanceof Node.Text t ? facts.banded(p, t) : Optional.empty();
      if (b.isEmpty()) {
        whole = false;
        continue;
      }
      read.put(
          p.word(),
          new Fact.Figure(
              p.dimension(), b.get(), FactReader.number(b.get().best()), "", "", ground));
    }
    return whole ? Optional.of(read) : Optional.empty();
  }

  private Optional<Fact.Table> below(Node.Entries map, Node.Entry entry, Fact.Ground ground) {
    Optional<Node.Entries> table = map.get(MaterialWords.BELOW_TABLE, Node.Entries.class);
    if (table.isEmpty()) {
      problems.add(entry.keySpan(), "wrong.missing", MaterialWords.BELOW_TABLE);
      return Optional.empty();
    }
    List<Fact.Row> rows = facts.rows(table.get(), entry, Dimension.HEAT_DIFFERENCE, SHARE);
    if (rows.isEmpty()) {
      return Optional.empty();
    }
    for (int i = 1; i < rows.size(); i++) {
      if (rows.get(i).value() < rows.get(i - 1).value()) {
        problems.add(table.get().span(), "wrong.solidShareCannotFall");
        return Optional.empty();
      }
    }
    if (rows.get(0).at() != 0.0 || rows.get(0).value() != 0.0) {
      problems.add(table.get().span(), "wrong.firstRowMust0");
      return Optional.empty();
    }
    return Optional.of(new Fact.Table(Dimension.SHARE, rows, ground));
  }
}
