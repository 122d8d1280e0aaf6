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
import lastinch.cases.units.Quantity;
import lastinch.cases.units.QuantityText;
import lastinch.cases.units.Saying;
import lastinch.cases.units.Unit;
import lastinch.solver.material.Basis;

/** Reads what stands behind one word of a material. */
final class FactReader {
  /** How the ways to know are written. */
  private static final Map<String, Basis> BASIS =
      Map.of(
          "published", Basis.OPENED,
          "derived", Basis.DERIVED,
          "from memory", Basis.MEMORY,
          "common practice", Basis.PRACTICE,
          "estimate", Basis.ESTIMATE,
          "measured here", Basis.TYPED);

  private static final List<String> GROUND = List.of("basis", "source", "note");

  private final boolean own;
  private final Problems problems;

  FactReader(boolean own, Problems problems) {
    this.own = own;
    this.problems = problems;
  }

  Optional<Fact> read(Property property, Node.Entry entry) {
    return switch (property.kind()) {
      case FIGURE -> figure(property, entry);
      case CHOICE, CHOICES, TEXT -> wording(property, entry);
      case TABLE -> table(property, entry);
      case FREEZING -> new FreezingReader(this, problems).read(property, entry);
    };
  }

  private Optional<Fact> figure(Property property, Node.Entry entry) {
    if (entry.value() instanceof Node.Text t) {
      return banded(property, t)
          .map(b -> (Fact) figure(property, b, bareGround(entry)))
          .filter(f -> allowedToBeBare(entry));
    }
    if (!(entry.value() instanceof Node.Entries map)) {
      problems.add(entry.value().span(), "wrong.figureBelongsNot", entry.value().words());
      return Optional.empty();
    }
    onlyWords(map, List.of("value", "between"));
    Optional<Fact.Ground> ground = ground(map, entry);
    Optional<Node> value = map.get("value");
    if (!(value.isPresent() && value.get() instanceof Node.Text t)) {
      problems.add(entry.keySpan(), "wrong.valueMissingUnder", entry.key());
      return Optional.empty();
    }
    Optional<BandedQuantity> best = banded(property, t);
    if (best.isEmpty() || ground.isEmpty()) {
      return Optional.empty();
    }
    if (map.get("between").isEmpty()) {
      return Optional.of(figure(property, best.get(), ground.get()));
    }
    return between(property, map, best.get(), ground.get());
  }

  private boolean allowedToBeBare(Node.Entry entry) {
    if (!own) {
      problems.add(entry.value().span(), "wrong.figureCatalogueNeedsBasis");
    }
    return own;
  }

  private Optional<Fact> between(
      Property property, Node.Entries map, BandedQuantity best, Fact.Ground ground) {
    Node node = map.get("between").orElseThrow();
    String[] ends = node instanceof Node.Text t ? t.text().split(" and ", -1) : new String[0];
    if (ends.length != 2 || best.banded()) {
      problems.add(
          node.span(),
          best.banded()
              ? Saying.of("wrong.sayOnceEitherBehind")
              : Saying.of("wrong.twoValuesBelongBetween"));
      return Optional.empty();
    }
    Optional<Quantity> low = quantity(property, ends[0], node);
    Optional<Quantity> high = quantity(property, ends[1], node);
    if (low.isEmpty() || high.isEmpty()) {
      return Optional.empty();
    }
    double l = low.get().si();
    double h = high.get().si();
    if (!(l <= best.best().si() && best.best().si() <= h)) {
      problems.add(node.span(), "wrong.valueMustLieBetween");
      return Optional.empty();
    }
    return Optional.of(
        new Fact.Figure(
            property.dimension(),
            new BandedQuantity(best.best(), l, h, true),
            number(best.best()),
            number(low.get()),
            number(high.get()),
            ground));
  }

  private static Fact.Figure figure(Property property, BandedQuantity b, Fact.Ground ground) {
    Quantity q = b.best();
    String typed = q.typed().split("\\+-|\\+/-|\u00b1", 2)[0].strip();
    String value = number(new Quantity(q.si(), q.unit(), typed));
    return new Fact.Figure(
        property.dimension(),
        b,
        value,
        b.banded() ? plain(q.unit().fromSi(b.low())) : "",
        b.banded() ? plain(q.unit().fromSi(b.high())) : "",
        ground);
  }

  /** A number with at most six figures and no trailing zeros. */
  static String plain(double number) {
    String text = String.format(Locale.ROOT, "%.6g", number);
    if (text.contains("e")) {
      return text.replaceFirst("\\.?0+e", "e");
    }
    return text.contains(".") ? text.replaceFirst("\\.?0+$", "") : text;
  }

  /** The number of a quantity as it was written. */
  static String number(Quantity q) {
    String typed = q.typed().strip();
    int end = 0;
    while (end < typed.length() && partOfNumber(typed, end)) {
      end++;
    }
    return typed.substring(0, end).strip();
  }

  private static boolean partOfNumber(String text, int i) {
    char c = text.charAt(i);
    boolean exponent =
        (c == 'e' || c == 'E')
            && i > 0
            && i + 1 < text.length()
            && "+-0123456789".indexOf(text.charAt(i + 1)) >= 0;
    return exponent || "+-.0123456789".indexOf(c) >= 0;
  }

  Optional<BandedQuantity> banded(Property property, Node.Text t) {
    Optional<BandedQuantity> read =
        problems.taken(t.span(), QuantityText.banded(t.text(), property.dimension()));
    return read.filter(b -> allowed(property, b.low(), b.high(), b.best().unit(), t));
  }

  private Optional<Quantity> quantity(Property property, String text, Node at) {
    Optional<Quantity> read =
        problems.taken(at.span(), QuantityText.quantity(text, property.dimension()));
    return read.filter(q -> allowed(property, q.si(), q.si(), q.unit(), at));
  }

  private boolean allowed(Property property, double low, double high, Unit unit, Node at) {
    if (low >= property.low() && high <= property.high()) {
      return true;
    }
    problems.add(
        at.span(),
        "wrong.may",
        property.word(),
        plain(unit.fromSi(property.low())),
        plain(unit.fromSi(property.high())),
        unit.symbol().isEmpty() ? Saying.NONE : " " + unit.symbol());
    return false;
  }

  private Optional<Fact> wording(Property property, Node.Entry entry) {
    Node.Text text;
    Optional<Fact.Ground> ground;
    if (entry.value() instanceof Node.Text t) {
      text = t;
      ground = Optional.of(bareGround(entry));
    } else if (entry.value() instanceof Node.Entries map
        && map.get("value", Node.Text.class).isPresent()) {
      onlyWords(map, List.of("value"));
      text = map.get("value", Node.Text.class).get();
      ground = ground(map, entry);
    } else {
      problems.add(entry.value().span(), "wrong.wordBelongsNot", entry.value().words());
      return Optional.empty();
    }
    if (property.kind() == Property.Kind.CHOICE) {
      String word = text.text().strip().toLowerCase(Locale.ROOT);
      if (!property.choices().contains(word)) {
        problems.add(text.span(), "wrong.oneTheseBelongs", String.join(", ", property.choices()));
        return Optional.empty();
      }
      return ground.map(g -> new Fact.Wording(word, g));
    }
    if (property.kind() == Property.Kind.CHOICES) {
      List<String> words = Hazards.words(text.text());
      if (!property.choices().containsAll(words)) {
        problems.add(
            text.span(), "wrong.someTheseBelongCommas", String.join(", ", property.choices()));
        return Optional.empty();
      }
      return ground.map(g -> new Fact.Wording(String.join(", ", words), g));
    }
    return ground.map(g -> new Fact.Wording(text.text().strip(), g));
  }

  private Optional<Fact> table(Property property, Node.Entry entry) {
    if (!(entry.value() instanceof Node.Entries map)) {
      problems.add(entry.value().span(), "wrong.tableBelongsNot", entry.value().words());
      return Optional.empty();
    }
    onlyWords(map, List.of("columns", "units", "rows"));
    Optional<Fact.Ground> ground = ground(map, entry);
    List<Fact.Row> rows = rows(map, entry, Dimension.HEAT, property);
    return rows.isEmpty()
        ? Optional.empty()
        : ground.map(g -> new Fact.Table(property.dimension(), rows, g));
  }

  /** Rows of a table with two columns; the first strictly rising. */
  List<Fact.Row> rows(Node.Entries map, Node.Entry entry, Dimension first, Property second) {
    List<String> units = map.get("units").map(n -> cells(n, 2)).orElse(List.of());
    Optional<Node.Items> items = map.get("rows", Node.Items.class);
    if (units.size() != 2 || items.isEmpty()) {
      problems.add(entry.keySpan(), "wrong.tableNeedsUnitsFirst");
      return List.of();
    }
    List<Fact.Row> rows = new ArrayList<>();
    double before = Double.NEGATIVE_INFINITY;
    for (Node item : items.get().items()) {
      List<String> cells = cells(item, 2);
      if (cells.size() != 2) {
        return List.of();
      }
      String atText = cells.get(0) + " " + units.get(0);
      Optional<Quantity> at = problems.taken(item.span(), QuantityText.quantity(atText, first));
      Optional<Quantity> value = quantity(second, cells.get(1) + " " + units.get(1), item);
      if (at.isEmpty() || value.isEmpty()) {
        return List.of();
      }
      if (at.get().si() <= before) {
        problems.add(item.span(), "wrong.firstColumnMustRise");
        return List.of();
      }
      before = at.get().si();
      rows.add(
          new Fact.Row(
              before, value.get().si(), atText, cells.get(1), value.get().unit().symbol()));
    }
    if (rows.size() < 2) {
      problems.add(items.get().span(), "wrong.tableNeedsTwoRows");
      return List.of();
    }
    return rows;
  }

  private List<String> cells(Node node, int count) {
    List<String> cells = new ArrayList<>();
    if (node instanceof Node.Items items) {
      items.items().stream()
          .filter(Node.Text.class::isInstance)
          .map(Node.Text.class::cast)
          .forEach(t -> cells.add(t.text().strip()));
    }
    if (cells.size() != count) {
      problems.add(node.span(), "wrong.valuesBelongBrackets", count);
      return List.of();
    }
    return cells;
  }

  /** Reports words that are neither among {@code own} nor about the ground of a figure. */
  void onlyWords(Node.Entries map, List<String> words) {
    List<String> known = new ArrayList<>(words);
    known.addAll(GROUND);
    for (Node.Entry e : map.entries()) {
      if (!known.contains(e.key())) {
        MaterialsReader.unknownWord(e, known, problems);
      }
    }
  }

  private Fact.Ground bareGround(Node.Entry entry) {
    return new Fact.Ground(own ? Basis.TYPED : Basis.ESTIMATE, "", "", origin(entry));
  }

  private Origin origin(Node.Entry entry) {
    return new Origin(entry.keySpan(), own);
  }

  /** Basis, source and note of a fact. */
  Optional<Fact.Ground> ground(Node.Entries map, Node.Entry entry) {
    Map<String, String> said = new LinkedHashMap<>();
    for (String key : GROUND) {
      if (map.get(key).isPresent()) {
        if (map.get(key).get() instanceof Node.Text t && !t.text().isBlank()) {
          said.put(key, t.text().strip());
        } else {
          problems.add(map.get(key).get().span(), "wrong.singleValueBelongsBehind", key);
          return Optional.empty();
        }
      }
    }
    String basisWord = said.getOrDefault("basis", own ? "measured here" : "");
    Basis basis = BASIS.get(basisWord.toLowerCase(Locale.ROOT));
    if (basis == null) {
      problems.add(
          map.get("basis").map(Node::span).orElse(entry.keySpan()),
          "wrong.basisMustOne",
          String.join(", ", BASIS.keySet().stream().sorted().toList()));
      return Optional.empty();
    }
    return Optional.of(
        new Fact.Ground(
            basis, said.getOrDefault("source", ""), said.getOrDefault("note", ""), origin(entry)));
  }
}
