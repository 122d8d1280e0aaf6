package lastinch.cases.schema;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import lastinch.cases.format.Node;
import lastinch.cases.format.Problems;
import lastinch.cases.format.Span;
import lastinch.cases.units.BandedQuantity;
import lastinch.cases.units.Parsed;
import lastinch.cases.units.QuantityText;
import lastinch.cases.units.Saying;

/** Reads tables {@code {unit, columns, rows}}. */
public final class Tables {
  private static final String NOT_MEASURED = "-";
  private static final int MOST_ROWS = 500;

  private final Kind.Table kind;
  private final Problems problems;
  private String unit = "";
  private final List<Kind.Column> columns = new ArrayList<>();

  private Tables(Kind.Table kind, Problems problems) {
    this.kind = kind;
    this.problems = problems;
  }

  /**
   * A row of a table.
   *
   * @param span where it stands
   * @param cells what was measured, by column
   * @param whole whether every cell could be read
   */
  public record Row(Span span, Map<String, BandedQuantity> cells, boolean whole) {}

  /** The rows of a table, as far as they can be read; empty when there are none to judge. */
  public static Optional<List<Row>> rows(Node node, Kind.Table kind, Problems problems) {
    return new Tables(kind, problems).read(node);
  }

  private Optional<List<Row>> read(Node node) {
    if (!(node instanceof Node.Entries map)) {
      problems.add(node.span(), "wrong.tableNeededUnitColumns");
      return Optional.empty();
    }
    words(map);
    map.get("unit").flatMap(n -> Values.text(n, problems)).ifPresent(u -> unit = u);
    boolean headed = readUnit(map);
    headed = readColumns(map) && headed;
    Optional<Node> rows = map.get("rows");
    if (rows.isEmpty()) {
      if (!map.damaged()) {
        problems.add(map.span(), "wrong.rowsMissingListFigures");
      }
      return Optional.empty();
    }
    if (!headed) {
      return Optional.empty();
    }
    if (!(rows.get() instanceof Node.Items list)) {
      if (!(rows.get() instanceof Node.Entries broken && broken.damaged())) {
        problems.add(rows.get().span(), "wrong.listRowsNeededEach");
      }
      return Optional.empty();
    }
    return Optional.of(rows(list, map.damaged()));
  }

  private void words(Node.Entries map) {
    List<String> known = List.of("unit", "columns", "rows");
    for (Node.Entry entry : map.entries()) {
      if (!known.contains(entry.key())) {
        Optional<String> near = NearestWord.of(entry.key(), known);
        Saying sentence = Saying.of("wrong.unknownWordTableTable");
        problems.add(entry.keySpan(), sentence, near);
      }
    }
  }

  private boolean readUnit(Node.Entries map) {
    if (unit.isEmpty()) {
      return true;
    }
    boolean fits =
        kind.columns().stream().anyMatch(c -> c.amount().dimension().unit(unit).isPresent());
    if (!fits) {
      problems.add(
          map.get("unit").orElse(map).span(),
          "wrong.unitsFit",
          kind.columns().get(0).amount().dimension().offered());
    }
    return fits;
  }

  private boolean readColumns(Node.Entries map) {
    Optional<Node> node = map.get("columns");
    if (node.isEmpty()) {
      if (!map.damaged()) {
        problems.add(map.span(), "wrong.columnsMissingColumns", example());
      }
      return false;
    }
    if (!(node.get() instanceof Node.Items list)) {
      problems.add(node.get().span(), "wrong.columnsGoBrackets", example());
      return false;
    }
    boolean sound = true;
    for (Node item : list.items()) {
      sound &= readColumn(item);
    }
    for (Kind.Column column : kind.columns()) {
      if (sound && column.need() && !isThere(column)) {
        problems.add(list.span(), "wrong.columnMissing", column.key());
        sound = false;
      }
    }
    return sound;
  }

  /** Whether a column of this kind of table, told by its key, was read. */
  private boolean isThere(Kind.Column column) {
    return columns.stream().anyMatch(c -> c.key().equals(column.key()));
  }

  private boolean readColumn(Node item) {
    Optional<String> text = Values.text(item, problems).map(t -> t.toLowerCase(Locale.ROOT));
    if (text.isEmpty()) {
      return false;
    }
    for (Kind.Column column : kind.columns()) {
      boolean twin = column.twins().contains(text.get());
      if (twin || column.key().equals(text.get())) {
        if (isThere(column)) {
          problems.add(item.span(), "wrong.columnAppearsTwice");
          return false;
        }
        if (twin) {
          problems.note(item.span(), "wrong.taken", column.key());
        }
        columns.add(column);
        return true;
      }
    }
    List<String> keys = kind.columns().stream().map(Kind.Column::key).toList();
    Saying sentence = Saying.of("wrong.noSuchColumn", String.join(", ", keys));
    Optional<String> near = NearestWord.of(text.get(), keys);
    problems.add(item.span(), sentence, near);
    return false;
  }

  private String example() {
    return "[" + String.join(", ", kind.columns().stream().map(Kind.Column::key).toList()) + "]";
  }

  private List<Row> rows(Node.Items list, boolean damaged) {
    List<Row> rows = new ArrayList<>();
    if (list.items().size() > MOST_ROWS) {
      problems.add(list.span(), "wrong.moreThanRows", MOST_ROWS);
      return rows;
    }
    for (Node item : list.items()) {
      if (item instanceof Node.Items cells) {
        row(cells).ifPresent(rows::add);
      } else {
        problems.add(item.span(), "wrong.rowGoesBrackets0");
      }
    }
    if (list.items().size() < kind.fewest() && !damaged) {
      problems.add(list.span(), fewest());
    }
    rising(rows);
    return rows;
  }

  private Saying fewest() {
    return kind.columns().stream().anyMatch(c -> c.key().equals("thick"))
        ? Saying.of("wrong.twoPlacesLeastThick")
        : Saying.of("wrong.leastRowsNeeded", kind.fewest());
  }

  private Optional<Row> row(Node.Items cells) {
    if (cells.items().size() != columns.size()) {
      boolean comma = cells.span().text().matches("(?s).*\\d,\\d.*");
      Saying sentence =
          Saying.of(
              "wrong.figuresColumns",
              cells.items().size(),
              columns.size(),
              comma ? Saying.of("wrong.useDecimalPointNotComma") : Saying.NONE);
      problems.add(cells.span(), sentence);
      return Optional.empty();
    }
    Map<String, BandedQuantity> got = new LinkedHashMap<>();
    boolean whole = true;
    for (int i = 0; i < columns.size(); i++) {
      Kind.Column column = columns.get(i);
      Node cell = cells.items().get(i);
      if (isNotMeasured(cell)) {
        if (column.need()) {
          problems.add(cell.span(), "wrong.columnNeedsFigureEvery", column.key());
          whole = false;
        }
        continue;
      }
      Optional<BandedQuantity> value = cell(cell, column);
      whole &= value.isPresent();
      value.ifPresent(v -> got.put(column.key(), v));
    }
    return Optional.of(new Row(cells.span(), got, whole));
  }

  private static boolean isNotMeasured(Node cell) {
    return cell instanceof Node.Text text
        && (text.text().equals(NOT_MEASURED) || QuantityText.isUnknown(text.text()));
  }

  private Optional<BandedQuantity> cell(Node cell, Kind.Column column) {
    if (cell instanceof Node.Text text
        && !text.isEmpty()
        && QuantityText.number(text.text()) instanceof Parsed.Good<?>) {
      boolean fits = column.amount().dimension().unit(unit).isPresent() && !unit.isEmpty();
      String own = fits ? unit : column.ownUnit();
      if (!own.isEmpty()) {
        Node typed = new Node.Text(text.span(), text.text() + " " + own, text.quoted());
        return Values.amount(typed, column.amount(), problems);
      }
    }
    return Values.amount(cell, column.amount(), problems);
  }

  private void rising(List<Row> rows) {
    double before = Double.NEGATIVE_INFINITY;
    String beforeText = "";
    for (Row row : rows) {
      BandedQuantity here = row.cells().get(kind.rises());
      if (here == null) {
        continue;
      }
      if (here.best().si() <= before) {
        problems.add(
            row.span(), "wrong.columnMustRiseRow", kind.rises(), here.best().typed(), beforeText);
        return;
      }
      before = here.best().si();
      beforeText = here.best().typed();
    }
  }
}
