package lastinch.cases.plan.assembly;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import lastinch.cases.format.Node;
import lastinch.cases.format.Problems;
import lastinch.cases.format.Span;
import lastinch.cases.schema.Compounds;
import lastinch.cases.schema.Kind;
import lastinch.cases.schema.Part;
import lastinch.cases.schema.Tables;
import lastinch.cases.schema.Values;
import lastinch.cases.units.BandedQuantity;

/**
 * Values of a group of words that were checked before. A value that is absent, not known or wrong
 * is empty here; what is wrong has been reported already.
 */
public final class Fields {
  private final Part part;
  private final Node.Entries map;

  public Fields(Part part, Node.Entries map) {
    this.part = part;
    this.map = map;
  }

  public Span span() {
    return map.span();
  }

  public boolean damaged() {
    return map.damaged();
  }

  public boolean has(String key) {
    return map.get(key).isPresent();
  }

  /** What stands behind a word. */
  public Optional<Node> node(String key) {
    return map.get(key);
  }

  /** Whether the person wrote that it is not known. */
  boolean saidUnknown(String key) {
    return map.get(key).map(Values::isUnknown).orElse(false);
  }

  /** Where the value of a word stands, or the whole group. */
  public Span span(String key) {
    return map.get(key).map(Node::span).orElse(map.span());
  }

  /** The value of a word as typed. */
  public Optional<String> typed(String key) {
    return map.get(key).flatMap(n -> Values.text(n, new Problems()));
  }

  private <T> Optional<T> read(String key, Class<T> type) {
    Optional<Node> node = map.get(key);
    if (node.isEmpty() || Values.isUnknown(node.get())) {
      return Optional.empty();
    }
    Kind kind = part.word(key).orElseThrow().kind();
    return kind.read(node.get(), new Problems()).map(type::cast);
  }

  public Optional<BandedQuantity> amount(String key) {
    return read(key, BandedQuantity.class);
  }

  /** The SI value of a word. */
  public OptionalDouble si(String key) {
    Optional<BandedQuantity> amount = amount(key);
    return amount.isPresent()
        ? OptionalDouble.of(amount.get().best().si())
        : OptionalDouble.empty();
  }

  /** The SI value of a word that is known to be there. */
  public double need(String key) {
    return si(key).orElseThrow();
  }

  public Optional<String> word(String key) {
    return read(key, String.class);
  }

  Optional<Values.RateValue> rate(String key) {
    return read(key, Values.RateValue.class);
  }

  public <T> Optional<T> compound(String key, Class<T> type) {
    return read(key, type);
  }

  public Optional<Compounds.Along> along(String key) {
    return read(key, Compounds.Along.class);
  }

  public Optional<List<Tables.Row>> table(String key) {
    Optional<Node> node = map.get(key);
    return node.flatMap(
        n -> Tables.rows(n, (Kind.Table) part.word(key).orElseThrow().kind(), new Problems()));
  }

  /** The words under a word. */
  public Optional<Fields> group(String key) {
    Optional<Node> node = map.get(key);
    return node.isPresent() && node.get() instanceof Node.Entries entries
        ? Optional.of(new Fields(under(key), entries))
        : Optional.empty();
  }

  private Part under(String key) {
    return part.word(key).orElseThrow().kind().under().orElseThrow();
  }

  /** The groups of a list; none when the word is absent. */
  public List<Fields> list(String key) {
    List<Fields> found = new ArrayList<>();
    Optional<Node> node = map.get(key);
    if (node.isPresent() && node.get() instanceof Node.Items items) {
      Part of = under(key);
      for (Node item : items.items()) {
        if (item instanceof Node.Entries entries) {
          found.add(new Fields(of, entries));
        }
      }
    }
    return found;
  }

  /** The single values of a list; none when the word is absent. */
  public <T> List<T> values(String key, Class<T> type) {
    List<T> found = new ArrayList<>();
    Optional<Node> node = map.get(key);
    if (node.isPresent() && node.get() instanceof Node.Items items) {
      Kind.ListOf kind = (Kind.ListOf) part.word(key).orElseThrow().kind();
      for (Node item : items.items()) {
        kind.item().read(item, new Problems()).map(type::cast).ifPresent(found::add);
      }
    }
    return found;
  }
}
