package lastinch.cases.catalogue.read;

import java.util.List;
import java.util.Optional;
import lastinch.cases.catalogue.MetalKind;
import lastinch.cases.format.Problems;
import lastinch.solver.material.Band;
import lastinch.solver.material.Curve;
import lastinch.solver.material.MouldFamily;
import lastinch.solver.material.MouldMedium;

/** Makes a mould medium of what the files say about it. */
public final class MediumMaker {
  private final Entry entry;
  private final Sources sources;

  private MediumMaker(Entry entry, Sources sources) {
    this.entry = entry;
    this.sources = sources;
  }

  /** Reports what is missing or contradicts. */
  public static void check(Entry entry, Problems problems) {
    int before = problems.count();
    RequiredFacts.check(entry, MaterialWords.MEDIUM, "mould medium", problems);
    if (problems.count() > before) {
      return;
    }
    Fact.Figure gap = entry.figure(MaterialWords.GAP).orElseThrow();
    for (String word : List.of(MaterialWords.CONTACT, MaterialWords.CONTACT_ALUMINIUM)) {
      Optional<Fact.Figure> contact = entry.figure(word);
      if (contact.isPresent() && contact.get().si() < gap.si()) {
        Origin at =
            gap.ground().origin().own() ? gap.ground().origin() : contact.get().ground().origin();
        problems.add(at.span(), "wrong.cannotPullHarderThan", MaterialWords.GAP, word);
      }
    }
  }

  /**
   * The medium as it meets a metal.
   *
   * @param kind decides the contact while liquid
   * @param permeabilityFactor for ramming [-]
   * @param densityFactor for ramming [-]
   * @param skinFrees solid share at which a skin begins to draw away [-]
   * @param gapOpen solid share at which the gap is fully open [-]
   */
  public static MouldMedium make(
      Entry entry,
      Sources sources,
      MetalKind kind,
      double permeabilityFactor,
      double densityFactor,
      Band skinFrees,
      Band gapOpen) {
    MediumMaker m = new MediumMaker(entry, sources);
    double solid = 1.0 - entry.figure("porosity").orElseThrow().si();
    boolean aluminium =
        kind == MetalKind.ALUMINIUM && entry.facts().containsKey(MaterialWords.CONTACT_ALUMINIUM);
    return new MouldMedium(
        entry.name(),
        m.family(),
        m.curve(MaterialWords.CONDUCTS, MaterialWords.CONDUCTS_TABLE),
        m.share(MaterialWords.CONDUCTS),
        m.curve(MaterialWords.TAKES, MaterialWords.TAKES_TABLE),
        times(m.band("density"), densityFactor),
        Math.max(0.0, 1.0 - solid * densityFactor),
        times(m.band("permeability"), permeabilityFactor),
        m.band(aluminium ? MaterialWords.CONTACT_ALUMINIUM : MaterialWords.CONTACT),
        m.band(MaterialWords.GAP),
        skinFrees,
        gapOpen,
        entry.figure(MaterialWords.ROUGHNESS).isPresent()
            ? m.band(MaterialWords.ROUGHNESS)
            : Band.typed(0.0),
        m.band("used up to"),
        Hazards.of(entry));
  }

  private MouldFamily family() {
    return switch (entry.wording(MaterialWords.FAMILY)) {
      case "sand" -> MouldFamily.SAND;
      case "investment" -> MouldFamily.INVESTMENT;
      case "shell" -> MouldFamily.SHELL;
      default -> MouldFamily.PERMANENT;
    };
  }

  private Curve curve(String single, String table) {
    if (!(entry.fact(table).orElse(null) instanceof Fact.Table t)) {
      return Curve.constant(entry.figure(single).orElseThrow().si());
    }
    return Curve.of(
        t.rows().stream().mapToDouble(Fact.Row::at).toArray(),
        t.rows().stream().mapToDouble(Fact.Row::value).toArray());
  }

  /** The range of a figure as a band on 1, for a whole curve. */
  private Band share(String word) {
    Band b = band(word);
    return new Band(1.0, b.low() / b.value(), b.high() / b.value(), b.source());
  }

  private static Band times(Band b, double factor) {
    return new Band(b.value() * factor, b.low() * factor, b.high() * factor, b.source());
  }

  private Band band(String word) {
    return AlloyMaker.band(entry.figure(word).orElseThrow(), sources);
  }
}
