package lastinch.cases.schema;

import java.util.List;
import java.util.Objects;
import java.util.Optional;
import lastinch.cases.format.Node;
import lastinch.cases.format.Problems;
import lastinch.cases.units.Dimension;
import lastinch.cases.units.QuantityText;
import lastinch.cases.units.Unit;

/** What may stand behind a word. */
public sealed interface Kind
    permits Single, Kind.Amount, Kind.Choice, Kind.Group, Kind.Named, Kind.ListOf, Kind.Table {

  /** What it is and how it is written, for documentation. */
  String words();

  /** The words that stand under it, where words do. */
  default Optional<Part> under() {
    return Optional.empty();
  }

  /** The value, in the Java type of its kind; reports what is wrong. */
  default Optional<?> read(Node value, Problems problems) {
    return Values.text(value, problems);
  }

  /**
   * A value with a unit.
   *
   * @param low least SI value allowed
   * @param high greatest SI value allowed
   * @param bands whether a band may follow
   */
  record Amount(Dimension dimension, double low, double high, boolean bands) implements Kind {
    public Amount {
      Objects.requireNonNull(dimension, "dimension");
    }

    /** An amount whose limits are written as a person would. */
    static Amount of(Dimension dimension, String low, String high) {
      return new Amount(dimension, si(dimension, low), si(dimension, high), false);
    }

    /** The same with a band allowed. */
    Amount banded() {
      return new Amount(dimension, low, high, true);
    }

    private static double si(Dimension dimension, String text) {
      return QuantityText.quantity(text, dimension).value().orElseThrow().si();
    }

    @Override
    public Optional<?> read(Node value, Problems problems) {
      return Values.amount(value, this, problems);
    }

    @Override
    public String words() {
      Unit unit = dimension.units().get(0);
      return dimension.words()
          + ", "
          + Limits.show(low, high, unit)
          + (bands ? ", +- allowed" : "");
    }
  }

  /** One of a few printed words. */
  record Choice(List<String> options) implements Kind {
    public Choice {
      options = List.copyOf(options);
    }

    static Choice of(String... words) {
      return new Choice(List.of(words));
    }

    @Override
    public Optional<?> read(Node value, Problems problems) {
      return Values.choice(value, this, problems);
    }

    @Override
    public String words() {
      return "one of: " + String.join(", ", options);
    }
  }

  /** Words under a word. */
  record Group(Part part) implements Kind {
    @Override
    public Optional<Part> under() {
      return Optional.of(part);
    }

    @Override
    public String words() {
      return "words: " + part.listing();
    }
  }

  /** A list of groups, each with a name. */
  record Named(Part part) implements Kind {
    @Override
    public Optional<Part> under() {
      return Optional.of(part);
    }

    @Override
    public String words() {
      return "a list, each with: " + part.listing();
    }
  }

  /** A list of values of one kind. */
  record ListOf(Kind item) implements Kind {
    @Override
    public Optional<Part> under() {
      return item.under();
    }

    @Override
    public String words() {
      return "a list of: " + item.words();
    }
  }

  /**
   * Rows of figures under columns.
   *
   * @param columns allowed, the required ones first
   * @param fewest rows
   * @param rises column whose figures must rise
   */
  record Table(List<Column> columns, int fewest, String rises) implements Kind {
    public Table {
      columns = List.copyOf(columns);
    }

    @Override
    public Optional<?> read(Node value, Problems problems) {
      return Tables.rows(value, this, problems);
    }

    @Override
    public String words() {
      return "a table {unit, columns, rows}, columns: "
          + String.join(", ", columns.stream().map(Column::key).toList());
    }
  }

  /**
   * A column of a table.
   *
   * @param need whether it must be there
   * @param ownUnit unit taken when neither the cell nor the table gives a fitting one; may be empty
   */
  record Column(String key, Amount amount, boolean need, String ownUnit, List<String> twins) {
    public Column {
      twins = List.copyOf(twins);
    }
  }
}
