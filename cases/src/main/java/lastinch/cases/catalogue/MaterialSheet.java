package lastinch.cases.catalogue;

import java.util.List;
import java.util.Objects;
import java.util.Optional;
import lastinch.cases.units.BandedQuantity;
import lastinch.cases.units.Dimension;
import lastinch.solver.material.Basis;

/**
 * All that is known of one material, ready to be printed.
 *
 * @param name as printed
 * @param madeOf in plain words; empty for a mould medium
 * @param alsoCalled other names that are understood
 * @param note what a reader must know first; may be empty
 * @param rows one figure or wording each, in printing order
 * @param sources full references of the marks used in the rows, by mark
 */
public record MaterialSheet(
    String name,
    String madeOf,
    List<String> alsoCalled,
    String note,
    List<Row> rows,
    List<Source> sources) {

  public MaterialSheet {
    Objects.requireNonNull(name, "name");
    Objects.requireNonNull(madeOf, "madeOf");
    Objects.requireNonNull(note, "note");
    alsoCalled = List.copyOf(alsoCalled);
    rows = List.copyOf(rows);
    sources = List.copyOf(sources);
  }

  /**
   * One line of the sheet.
   *
   * @param property in trade words
   * @param value figure as written in its file, without its unit; or a wording
   * @param low lower end of the range as written, empty where there is none
   * @param high upper end of the range as written, empty where there is none
   * @param unit of the three figures, empty where there is none
   * @param figure the same in SI with its kind, for other units; empty for a wording
   * @param basis how well it is known
   * @param source marks of its sources, such as {@code S5a}, or free text of a person's own file;
   *     empty where the basis says all
   * @param note beside it; may be empty
   * @param changed where a person's own file changed it and what the catalogue says; empty where
   *     nobody did
   */
  public record Row(
      String property,
      String value,
      String low,
      String high,
      String unit,
      Optional<Figure> figure,
      Basis basis,
      String source,
      String note,
      Optional<String> changed) {
    public Row {
      Objects.requireNonNull(property, "property");
      Objects.requireNonNull(value, "value");
      Objects.requireNonNull(low, "low");
      Objects.requireNonNull(high, "high");
      Objects.requireNonNull(unit, "unit");
      Objects.requireNonNull(figure, "figure");
      Objects.requireNonNull(basis, "basis");
      Objects.requireNonNull(source, "source");
      Objects.requireNonNull(note, "note");
      Objects.requireNonNull(changed, "changed");
    }
  }

  /**
   * A figure in SI.
   *
   * @param dimension its kind
   * @param quantity best figure and range
   */
  public record Figure(Dimension dimension, BandedQuantity quantity) {
    public Figure {
      Objects.requireNonNull(dimension, "dimension");
      Objects.requireNonNull(quantity, "quantity");
    }
  }

  /**
   * A reference.
   *
   * @param mark short mark used in the rows
   * @param reference in full
   */
  public record Source(String mark, String reference) {
    public Source {
      Objects.requireNonNull(mark, "mark");
      Objects.requireNonNull(reference, "reference");
    }
  }
}
