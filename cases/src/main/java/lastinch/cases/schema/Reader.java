package lastinch.cases.schema;

import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.Optional;
import lastinch.cases.format.Node;
import lastinch.cases.format.Problems;

/** Reads a value of any single kind. */
public final class Reader {
  private Reader() {}

  /** The value, in the Java type of its kind; reports what is wrong. */
  public static Optional<?> read(Kind kind, Node value, Problems problems) {
    if (kind instanceof Kind.Amount amount) {
      return Values.amount(value, amount, problems);
    }
    if (kind instanceof Kind.Rate) {
      return Values.rate(value, problems);
    }
    if (kind instanceof Kind.Choice choice) {
      return Values.choice(value, choice, problems);
    }
    if (kind instanceof Kind.Name) {
      return Values.name(value, problems);
    }
    if (kind instanceof Kind.FileName) {
      return fileName(value, problems);
    }
    if (kind instanceof Kind.Table table) {
      return Tables.rows(value, table, problems);
    }
    return compound(kind, value, problems);
  }

  private static Optional<?> compound(Kind kind, Node value, Problems problems) {
    if (kind instanceof Kind.Stands) {
      return Compounds.stands(value, problems);
    }
    if (kind instanceof Kind.Heading) {
      return Compounds.heading(value, problems);
    }
    if (kind instanceof Kind.LimbEnd) {
      return Compounds.limbEnd(value, problems);
    }
    if (kind instanceof Kind.Distance) {
      return Compounds.along(value, problems);
    }
    if (kind instanceof Kind.Pin) {
      return Compounds.pin(value, problems);
    }
    if (kind instanceof Kind.Pair) {
      return Compounds.pair(value, problems);
    }
    if (kind instanceof Kind.Holds) {
      return Compounds.holds(value, problems);
    }
    return Values.text(value, problems);
  }

  private static Optional<Path> fileName(Node value, Problems problems) {
    Optional<String> text = Values.text(value, problems);
    if (text.isEmpty()) {
      return Optional.empty();
    }
    try {
      return Optional.of(Path.of(text.get()));
    } catch (InvalidPathException e) {
      problems.add(value.span(), "wrong.cannotNameFile");
      return Optional.empty();
    }
  }
}
