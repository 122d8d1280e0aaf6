package lastinch.cases.catalogue;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import lastinch.cases.catalogue.read.Entry;
import lastinch.cases.catalogue.read.Fact;
import lastinch.cases.catalogue.read.MaterialWords;
import lastinch.cases.catalogue.read.Property;
import lastinch.cases.catalogue.read.Sources;

/** Lays out what the files say about a material for printing. */
final class SheetMaker {
  /** Words that sort a material into a class; they are no knowledge with a source. */
  private static final List<String> CLASSES = List.of(MaterialWords.METAL, MaterialWords.FAMILY);

  private final Sources sources;
  private final List<MaterialSheet.Row> rows = new ArrayList<>();

  private SheetMaker(Sources sources) {
    this.sources = sources;
  }

  static MaterialSheet make(
      Entry entry, List<String> otherNames, List<Property> schema, Sources sources) {
    SheetMaker maker = new SheetMaker(sources);
    for (Property p : schema) {
      if (CLASSES.contains(p.word())) {
        continue;
      }
      entry
          .fact(p.word())
          .ifPresent(f -> maker.add(p, f, Optional.ofNullable(entry.replaced().get(p.word()))));
    }
    return new MaterialSheet(
        entry.name(),
        entry.madeOf(),
        otherNames,
        entry.note(),
        maker.rows,
        maker.sources(entry.note()));
  }

  private List<MaterialSheet.Source> sources(String note) {
    StringBuilder all = new StringBuilder(note);
    for (MaterialSheet.Row row : rows) {
      all.append(' ').append(row.value());
      all.append(' ').append(row.source()).append(' ').append(row.note());
    }
    return sources.in(all.toString());
  }

  private void add(Property p, Fact fact, Optional<Fact> before) {
    Optional<String> changed = changed(fact, before);
    if (fact instanceof Fact.Figure f) {
      add(p.word(), f, changed);
    } else if (fact instanceof Fact.Wording w) {
      add(p.word(), w.text(), w.ground(), changed);
    } else if (fact instanceof Fact.Table t) {
      for (Fact.Row row : t.rows()) {
        add(p.word().replace("by heat", "at ") + row.atText(), row, t.ground(), changed);
      }
    } else if (fact instanceof Fact.Freezing f) {
      add(p.word(), f.way(), f.ground(), changed);
      Fact.Ground under = withoutNote(f.ground());
      f.figures().forEach((word, figure) -> add(word, grounded(figure, under), Optional.empty()));
      for (Fact.Row row : f.below().map(Fact.Table::rows).orElse(List.of())) {
        add("solid " + row.atText() + " below start", row, under, Optional.empty());
      }
    }
  }

  /** Figures under one heading share its note, which is printed once. */
  private static Fact.Ground withoutNote(Fact.Ground g) {
    return new Fact.Ground(g.basis(), g.source(), "", g.origin());
  }

  private static Fact.Figure grounded(Fact.Figure f, Fact.Ground ground) {
    return new Fact.Figure(
        f.dimension(), f.quantity(), f.value(), f.lowText(), f.highText(), ground);
  }

  private void add(String word, Fact.Figure f, Optional<String> changed) {
    rows.add(
        new MaterialSheet.Row(
            word,
            f.value(),
            f.lowText(),
            f.highText(),
            f.quantity().best().unit().symbol(),
            Optional.of(new MaterialSheet.Figure(f.dimension(), f.quantity())),
            f.ground().basis(),
            f.ground().source(),
            f.ground().note(),
            changed));
  }

  private void add(String word, String text, Fact.Ground ground, Optional<String> changed) {
    rows.add(
        new MaterialSheet.Row(
            word,
            text,
            "",
            "",
            "",
            Optional.empty(),
            ground.basis(),
            ground.source(),
            ground.note(),
            changed));
  }

  private void add(String word, Fact.Row row, Fact.Ground ground, Optional<String> changed) {
    rows.add(
        new MaterialSheet.Row(
            word,
            row.valueText(),
            "",
            "",
            row.unitText(),
            Optional.empty(),
            ground.basis(),
            ground.source(),
            ground.note(),
            changed));
  }

  private static Optional<String> changed(Fact fact, Optional<Fact> before) {
    if (!fact.ground().origin().own()) {
      return Optional.empty();
    }
    String where = fact.ground().origin().words();
    return Optional.of(
        before
            .map(b -> where + "; the catalogue says " + words(b))
            .orElse(where + "; not in the catalogue"));
  }

  private static String words(Fact fact) {
    if (fact instanceof Fact.Figure f) {
      return (f.value() + " " + f.quantity().best().unit().symbol()).strip();
    }
    if (fact instanceof Fact.Wording w) {
      return w.text();
    }
    return fact instanceof Fact.Freezing f ? f.way() : "another table";
  }
}
