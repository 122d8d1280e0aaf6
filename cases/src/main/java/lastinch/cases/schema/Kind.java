package lastinch.cases.schema;

import java.util.List;
import java.util.Objects;
import lastinch.cases.units.Dimension;
import lastinch.cases.units.QuantityText;
import lastinch.cases.units.Unit;

/** What may stand behind a word. */
public sealed interface Kind
    permits Kind.Amount,
        Kind.Rate,
        Kind.Choice,
        Kind.Free,
        Kind.Name,
        Kind.AlloyName,
        Kind.MediumName,
        Kind.FileName,
        Kind.Stands,
        Kind.Heading,
        Kind.LimbEnd,
        Kind.Distance,
        Kind.Into,
        Kind.Pin,
        Kind.Pair,
        Kind.Holds,
        Kind.Group,
        Kind.Named,
        Kind.ListOf,
        Kind.Table {

  /** What it is and how it is written, for documentation. */
  String words();

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
    public String words() {
      Unit unit = dimension.units().get(0);
      return dimension.words()
          + ", "
          + Limits.show(low, high, unit)
          + (bands ? ", +- allowed" : "");
    }
  }

  /** A weight or a volume per time. */
  record Rate() implements Kind {
    @Override
    public String words() {
      return "a weight or volume per time, 0.005 to 50 kg/s, +- allowed";
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
    public String words() {
      return "one of: " + String.join(", ", options);
    }
  }

  /** Any text on one line. */
  record Free() implements Kind {
    @Override
    public String words() {
      return "text on one line";
    }
  }

  /** A name, unique in its list. */
  record Name() implements Kind {
    @Override
    public String words() {
      return "a name, 1 to 80 characters";
    }
  }

  /** A metal of the catalogue. */
  record AlloyName() implements Kind {
    @Override
    public String words() {
      return "a metal; see: lastinch alloys";
    }
  }

  /** A mould medium of the catalogue. */
  record MediumName() implements Kind {
    @Override
    public String words() {
      return "a mould; see: lastinch moulds";
    }
  }

  /** Another file, found from the folder of this one. */
  record FileName() implements Kind {
    @Override
    public String words() {
      return "a file, found from this one's folder";
    }
  }

  /** How the mould stands. */
  record Stands() implements Kind {
    @Override
    public String words() {
      return "flat; tip up 15 deg; tip down 40 mm over 400 mm; upright, tip down; upright, tip up";
    }
  }

  /** Direction of a limb. */
  record Heading() implements Kind {
    @Override
    public String words() {
      return "straight on; 30 deg left; 30 deg right; straight back";
    }
  }

  /** Where a limb begins or ends. */
  record LimbEnd() implements Kind {
    @Override
    public String words() {
      return "boss; LIMB tip; LIMB thick end";
    }
  }

  /** A distance along the piece or one of its limbs. */
  record Distance() implements Kind {
    @Override
    public String words() {
      return "a length from the thick end; with limbs: LIMB at 120 mm";
    }
  }

  /** A named part that something enters. */
  record Into() implements Kind {
    @Override
    public String words() {
      return "boss, cup, runner or the name of a limb";
    }
  }

  /** A sprue pin. */
  record Pin() implements Kind {
    @Override
    public String words() {
      return "18 to 14 mm; 20 mm straight";
    }
  }

  /** Two lengths. */
  record Pair() implements Kind {
    @Override
    public String words() {
      return "15 x 12 mm";
    }
  }

  /** A weight of a metal. */
  record Holds() implements Kind {
    @Override
    public String words() {
      return "2 kg bronze";
    }
  }

  /** Words under a word. */
  record Group(Part part) implements Kind {
    @Override
    public String words() {
      return "words: " + part.listing();
    }
  }

  /** A list of groups, each with a name. */
  record Named(Part part) implements Kind {
    @Override
    public String words() {
      return "a list, each with: " + part.listing();
    }
  }

  /** A list of values of one kind. */
  record ListOf(Kind item) implements Kind {
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
