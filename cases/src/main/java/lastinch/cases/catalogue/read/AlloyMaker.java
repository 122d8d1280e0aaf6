package lastinch.cases.catalogue.read;

import java.util.List;
import java.util.Optional;
import lastinch.cases.format.Problems;
import lastinch.solver.material.Alloy;
import lastinch.solver.material.Band;
import lastinch.solver.material.Citation;
import lastinch.solver.material.Curve;
import lastinch.solver.material.FilmForming;
import lastinch.solver.material.FreezingCurve;

/** Makes an alloy of what the files say about it. */
public final class AlloyMaker {
  private final Entry entry;
  private final Sources sources;

  private AlloyMaker(Entry entry, Sources sources) {
    this.entry = entry;
    this.sources = sources;
  }

  /** The alloy, when nothing is missing and nothing contradicts. */
  public static Optional<Alloy> make(Entry entry, Sources sources, Problems problems) {
    int before = problems.count();
    RequiredFacts.check(entry, MaterialWords.ALLOY, "alloy", problems);
    if (problems.count() > before) {
      return Optional.empty();
    }
    AlloyMaker maker = new AlloyMaker(entry, sources);
    maker.checkHeats(problems);
    return problems.count() > before ? Optional.empty() : Optional.of(maker.alloy());
  }

  private void checkHeats(Problems problems) {
    Fact.Figure start = entry.figure(MaterialWords.STARTS).orElseThrow();
    Fact.Figure end = entry.figure(MaterialWords.ENDS).orElseThrow();
    Fact.Freezing freezing = freezing();
    if (end.si() > start.si()) {
      problems.add(later(start, end).span(), "wrong.mustEndFreezingBelow");
    }
    if (entry.figure("pours at").orElseThrow().si() < start.si()) {
      problems.add(
          later(start, entry.figure("pours at").orElseThrow()).span(),
          "wrong.cannotPouredBelowWhere");
    }
    Fact.Figure rest = freezing.figures().get(MaterialWords.REST.word());
    if (rest != null && rest.si() > start.si()) {
      problems.add(later(start, rest).span(), "wrong.restCannotFreezeAbove");
    }
    Fact.Figure melts = freezing.figures().get(MaterialWords.MELTS.word());
    if (melts != null && melts.si() < start.si()) {
      problems.add(later(start, melts).span(), "wrong.pureMetalMustFreeze");
    }
    if (freezing.way().equals("at one heat") && end.si() < start.si()) {
      problems.add(later(freezing, end).span(), "wrong.freezesOneHeatSo");
    }
  }

  /** Of two facts the one a person typed, else the second. */
  private static Origin later(Fact a, Fact b) {
    Origin first = a.ground().origin();
    Origin second = b.ground().origin();
    return first.own() && !second.own() ? first : second;
  }

  private Alloy alloy() {
    return new Alloy(
        entry.name(),
        curve(),
        band(MaterialWords.STARTS),
        band("heat of freezing"),
        band("heat per degree liquid"),
        band("heat per degree solid"),
        band("conducts liquid"),
        band("conducts solid"),
        band("density liquid"),
        0.0 - entry.figure("lighter per degree").orElseThrow().si(),
        band("density cold"),
        band("viscosity"),
        band("surface tension"),
        band("wetting angle"),
        band("film factor"),
        film(),
        band("mush that stops it"),
        band("shrinks on freezing"),
        band("pours at"),
        Hazards.of(entry));
  }

  private FilmForming film() {
    return switch (entry.wording(MaterialWords.FILM)) {
      case "yes" -> FilmForming.YES;
      case "mild" -> FilmForming.MILD;
      default -> FilmForming.NO;
    };
  }

  private Fact.Freezing freezing() {
    return (Fact.Freezing) entry.fact(MaterialWords.FREEZING).orElseThrow();
  }

  private FreezingCurve curve() {
    double start = entry.figure(MaterialWords.STARTS).orElseThrow().si();
    double end = entry.figure(MaterialWords.ENDS).orElseThrow().si();
    Fact.Freezing f = freezing();
    return switch (f.way()) {
      case "at one heat" -> new FreezingCurve.Isothermal(start);
      case "lever rule" ->
          new FreezingCurve.Lever(start, end, f.si(MaterialWords.MELTS), f.si(MaterialWords.KEPT));
      case "scheil" ->
          new FreezingCurve.Scheil(
              start,
              f.si(MaterialWords.REST),
              f.si(MaterialWords.MELTS),
              f.si(MaterialWords.FALLS),
              f.figures().containsKey(MaterialWords.BENDS.word()) ? f.si(MaterialWords.BENDS) : 0.0,
              f.si(MaterialWords.KEPT));
      case "table" -> tabled(start, f);
      default -> new FreezingCurve.Straight(start, end);
    };
  }

  /** Degrees below the start are kept; points at or below the arrest give way to it. */
  private static FreezingCurve tabled(double start, Fact.Freezing f) {
    double rest = f.si(MaterialWords.REST);
    List<Fact.Row> rows =
        f.below().orElseThrow().rows().stream().filter(r -> start - r.at() > rest).toList();
    int n = rows.size() + 1;
    double[] at = new double[n];
    double[] solid = new double[n];
    at[0] = rest;
    solid[0] = f.si(MaterialWords.BEFORE_REST);
    for (int i = 1; i < n; i++) {
      Fact.Row row = rows.get(n - 1 - i);
      at[i] = start - row.at();
      solid[i] = Math.min(row.value(), solid[0]);
    }
    return new FreezingCurve.Table(start, rest, Curve.of(at, solid));
  }

  private Band band(String word) {
    return band(entry.figure(word).orElseThrow(), sources);
  }

  public static Band band(Fact.Figure figure, Sources sources) {
    Citation citation = sources.citation(figure.ground());
    return new Band(figure.si(), figure.quantity().low(), figure.quantity().high(), citation);
  }
}
