package lastinch.validation.lengths;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.UnaryOperator;
import lastinch.solver.study.RunCache;
import lastinch.validation.Rows;
import lastinch.validation.Study;
import lastinch.validation.StudyCurve;
import lastinch.validation.StudyKind;

/**
 * Lengths that were measured, row by row, against the length this program gives: the one thing that
 * exact checks cannot show.
 */
public final class MeasuredLengthsStudy implements Study {
  @Override
  public String title() {
    return "Lengths that were measured";
  }

  @Override
  public StudyKind kind() {
    return StudyKind.TREND;
  }

  @Override
  public String source() {
    return "Spirals of red brass and Cu-10Sn-1P: a foundry's table, its section from memory, its"
        + " head not given. Plates of 3.2 mm: common practice, no source, with a margin in them."
        + " Tubes: Bang, Kwon, Chung, Kim and Kim, Metals 12, 1986 (2022), abstract, its bore and"
        + " suction not given. Grey iron spirals: a regression over carbon and temperature, AFS"
        + " about 1952 from memory, read in two pages that use it. 8 x 8 mm channels: foundry"
        + " textbooks, from memory, heads not given";
  }

  @Override
  public String setting() {
    return "Metals and moulds of the catalogue; grey iron, steel, magnesium, silumin and the quartz"
        + " tube with handbook figures from memory. A long level channel of the section, vented at"
        + " its end. What a source leaves out is a range: head 30 to 150 mm, loss before the mouth"
        + " 0.5 to 6 speed heads, suction as 200 to 500 mm, a section from memory 15 % either way;"
        + " plates at a careful hand's 0.04 to 0.08 litres a second; 15 K lost over the lip, iron"
        + " and steel more as they glow. Length: middle of every range. 9 in 10: "
        + LengthPour.DAYS
        + " days drawn from all ranges, those of metal and mould among them";
  }

  @Override
  public String note() {
    return "These rows show how true a length is, where all other studies show how exactly the"
        + " equations are solved. Factor: computed over measured. Before any law was touched the"
        + " rows gave a geometric mean of 2.96, a spread of 1.61, 3 of 16 inside. Two figures were"
        + " fitted to them, contact of sand and losses on entry: see calibration.md. Not poured: A356 in a tube at 5 and 30 kPa, for 5 kPa cannot lift it"
        + " as far as is reported; filigree of platinum and sterling that is only said to fill.";
  }

  @Override
  public void compare(Rows rows) {
    List<MeasuredLength> lengths = MeasuredLengths.all();
    List<LengthPour.Found> found;
    try (RunCache runs = RunCache.onAllCores(RunCache.Watch.NONE, () -> false)) {
      found = new LengthPour(runs, UnaryOperator.identity()).found(lengths);
    }
    StudyCurve curve =
        rows.ratioCurve("Computed length by measured length", "measured [mm]", "length [mm]");
    LengthScore score = new LengthScore();
    for (int i = 0; i < found.size(); i++) {
      MeasuredLength length = lengths.get(i);
      LengthPour.Found f = found.get(i);
      score.add(length, f);
      curve.point(length.measured(), length.measured(), f.best(), f.low(), f.high());
      rows.told(
          length.name() + ": measured " + range(length.from(), length.to()),
          String.format(
              Locale.ROOT,
              "%.0f mm (9 in 10: %.0f to %.0f), factor %.2f",
              f.best(),
              f.low(),
              f.high(),
              f.best() / length.measured()));
    }
    rows.told(
        "geometric mean of the factors, and their spread as a factor",
        String.format(Locale.ROOT, "%.2f, spread %.2f", score.mean(), score.spread()));
    rows.told(
        "rows whose measured length lies inside the range computed",
        String.format(Locale.ROOT, "%d of %d", score.inside(), score.count()));
  }

  private static String range(double from, double to) {
    return from == to
        ? String.format(Locale.ROOT, "%.0f mm", from)
        : String.format(Locale.ROOT, "%.0f to %.0f mm", from, to);
  }

  @Override
  public Optional<Study> spoiled() {
    return Optional.empty();
  }
}
