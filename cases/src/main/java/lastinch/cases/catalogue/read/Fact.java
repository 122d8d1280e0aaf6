package lastinch.cases.catalogue.read;

import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import lastinch.cases.units.BandedQuantity;
import lastinch.cases.units.Dimension;
import lastinch.solver.material.Basis;

/** What a materials file says behind one word. */
public sealed interface Fact permits Fact.Figure, Fact.Wording, Fact.Table, Fact.Freezing {

  /** How well it is known and where it stands. */
  Ground ground();

  /**
   * How well something is known and where it stands.
   *
   * @param basis how well it is known
   * @param source marks or free text as written; may be empty
   * @param note as written; may be empty
   * @param origin where it stands
   */
  record Ground(Basis basis, String source, String note, Origin origin) {
    public Ground {
      Objects.requireNonNull(basis, "basis");
      Objects.requireNonNull(source, "source");
      Objects.requireNonNull(note, "note");
      Objects.requireNonNull(origin, "origin");
    }
  }

  /**
   * A figure with its range.
   *
   * @param dimension its kind
   * @param quantity in SI
   * @param value number as written, without its unit
   * @param lowText lower end as written, without its unit; empty where there is none
   * @param highText upper end likewise
   */
  record Figure(
      Dimension dimension,
      BandedQuantity quantity,
      String value,
      String lowText,
      String highText,
      Ground ground)
      implements Fact {
    public double si() {
      return quantity.best().si();
    }
  }

  /** A word or sentence. */
  record Wording(String text, Ground ground) implements Fact {}

  /**
   * A property by heat.
   *
   * @param dimension of the property
   * @param rows heat and property
   */
  record Table(Dimension dimension, List<Row> rows, Ground ground) implements Fact {
    public Table {
      rows = List.copyOf(rows);
    }
  }

  /**
   * A row of a table, both in SI and as written.
   *
   * @param at first column [SI]
   * @param value second column [SI]
   * @param atText first column as written with its unit
   * @param valueText second column as written, without its unit
   * @param unitText unit of the second column as written
   */
  record Row(double at, double value, String atText, String valueText, String unitText) {}

  /**
   * How the solid share grows.
   *
   * @param way one of {@link MaterialWords#WAYS}
   * @param figures by word
   * @param below solid share [-] against degrees below the start [K], for the way {@code table}
   */
  record Freezing(String way, Map<String, Figure> figures, Optional<Table> below, Ground ground)
      implements Fact {
    double si(Property property) {
      return figures.get(property.word()).si();
    }
  }
}
