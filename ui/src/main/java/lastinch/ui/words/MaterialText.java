package lastinch.ui.words;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import lastinch.cases.catalogue.MaterialSheet;
import lastinch.cases.units.DisplayUnits;

/** Metals and mould materials with their figures, ranges and sources. */
public final class MaterialText {
  private static final int PROPERTY = 26;
  private static final int VALUE = 17;
  private static final int RANGE = 15;
  private static final int MARK = 8;
  private static final int NOTE = 4;

  private final Sentences sentences;
  private final Figures figures;

  public MaterialText(Sentences sentences, Figures figures) {
    this.sentences = Objects.requireNonNull(sentences, "sentences");
    this.figures = Objects.requireNonNull(figures, "figures");
  }

  /** Names, one a line, with what each is made of. */
  public List<String> list(List<MaterialSheet> sheets, String command) {
    Page page = new Page();
    for (MaterialSheet sheet : sheets) {
      page.wrapped(
          Page.pad(sheet.name(), PROPERTY),
          " ".repeat(PROPERTY),
          sheet.madeOf().isEmpty() ? sheet.note() : sheet.madeOf());
    }
    page.blank();
    page.line(sentences.say("material.show", "command", command));
    return plain(page);
  }

  /** One material in full. */
  public List<String> sheet(MaterialSheet sheet) {
    Page page = new Page();
    page.line(sheet.name().toUpperCase(Locale.ROOT));
    if (!sheet.madeOf().isEmpty()) {
      page.paragraph(sheet.madeOf());
    }
    if (!sheet.alsoCalled().isEmpty()) {
      page.paragraph(
          sentences.say("material.also", "names", String.join(", ", sheet.alsoCalled())));
    }
    if (!sheet.note().isEmpty()) {
      page.paragraph(sheet.note());
    }
    page.blank();
    page.line(
        Page.pad(sentences.say("material.head.what"), PROPERTY)
            + Page.pad(sentences.say("material.head.value"), VALUE)
            + Page.pad(sentences.say("material.head.range"), RANGE)
            + sentences.say("material.head.from"));
    for (MaterialSheet.Row row : sheet.rows()) {
      row(page, row);
    }
    page.blank();
    page.paragraph(sentences.say("material.range"));
    if (!sheet.sources().isEmpty()) {
      page.blank();
      page.line(sentences.say("material.sources"));
      for (MaterialSheet.Source source : sheet.sources()) {
        page.wrapped(
            "  " + Page.pad(source.mark(), MARK), " ".repeat(MARK + 2), source.reference());
      }
    }
    return plain(page);
  }

  private void row(Page page, MaterialSheet.Row row) {
    String value = value(row);
    String range = range(row);
    String basis = sentences.say("basis." + row.basis().name());
    String from = row.source().isEmpty() ? basis : basis + ", " + row.source();
    if (value.length() < VALUE && range.length() < RANGE) {
      page.wrapped(
          Page.pad(row.property(), PROPERTY) + Page.pad(value, VALUE) + Page.pad(range, RANGE),
          " ".repeat(PROPERTY + VALUE),
          from);
    } else {
      page.wrapped(
          Page.pad(row.property(), PROPERTY),
          " ".repeat(PROPERTY),
          value + (range.isEmpty() ? "" : " (" + range + ")"));
      page.wrapped(" ".repeat(PROPERTY + VALUE), " ".repeat(PROPERTY + VALUE), from);
    }
    if (!row.note().isEmpty()) {
      page.wrapped(" ".repeat(NOTE), " ".repeat(NOTE), row.note());
    }
    row.changed().ifPresent(changed -> page.wrapped(" ".repeat(NOTE), " ".repeat(NOTE), changed));
  }

  private boolean asWritten(MaterialSheet.Row row) {
    return figures.units() == DisplayUnits.METRIC || row.figure().isEmpty();
  }

  private String value(MaterialSheet.Row row) {
    return asWritten(row)
        ? (row.value() + " " + row.unit()).strip()
        : figures.shown(row.figure().get().dimension(), row.figure().get().quantity().best().si());
  }

  private String range(MaterialSheet.Row row) {
    if (row.low().isEmpty() || row.high().isEmpty()) {
      return "";
    }
    return asWritten(row)
        ? sentences.say("material.between", "low", row.low(), "high", row.high())
        : sentences.say(
            "material.between",
            "low",
            bare(row, row.figure().get().quantity().low()),
            "high",
            bare(row, row.figure().get().quantity().high()));
  }

  private String bare(MaterialSheet.Row row, double si) {
    String shown = figures.shown(row.figure().get().dimension(), si);
    int space = shown.indexOf(' ');
    return space < 0 ? shown : shown.substring(0, space);
  }

  private static List<String> plain(Page page) {
    List<String> out = new ArrayList<>();
    for (String line : page.lines()) {
      out.add(PlainLetters.of(line));
    }
    return out;
  }
}
