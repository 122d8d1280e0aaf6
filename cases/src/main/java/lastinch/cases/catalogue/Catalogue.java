package lastinch.cases.catalogue;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import lastinch.cases.catalogue.read.AlloyMaker;
import lastinch.cases.catalogue.read.Entry;
import lastinch.cases.catalogue.read.Fact;
import lastinch.cases.catalogue.read.Index;
import lastinch.cases.catalogue.read.MaterialWords;
import lastinch.cases.catalogue.read.MaterialsFile;
import lastinch.cases.catalogue.read.MaterialsReader;
import lastinch.cases.catalogue.read.MediumMaker;
import lastinch.cases.catalogue.read.Origin;
import lastinch.cases.catalogue.read.Property;
import lastinch.cases.catalogue.read.RequiredFacts;
import lastinch.cases.catalogue.read.Sources;
import lastinch.cases.format.Node;
import lastinch.cases.format.Problems;
import lastinch.cases.plan.Materials;
import lastinch.solver.casting.ModelCoefficients;
import lastinch.solver.material.Alloy;
import lastinch.solver.material.Band;
import lastinch.solver.material.MouldMedium;

/**
 * Alloys, mould media, flask steels and common figures, with a person's own files laid over them.
 * Only the files that are asked for are read.
 */
public final class Catalogue {
  private static final Catalogue BUILT_IN = new Catalogue(List.of());

  private final List<MaterialsFile> own;
  private final MaterialSet alloys;
  private final MaterialSet media;
  private final MaterialSet steels;

  private Catalogue(List<MaterialsFile> own) {
    this.own = List.copyOf(own);
    Index index = Library.only().index();
    this.alloys =
        new MaterialSet(
            index.group(MaterialsReader.ALLOYS),
            MaterialsFile::alloys,
            own.stream().flatMap(f -> f.alloys().stream()).toList());
    this.media =
        new MaterialSet(
            index.group(MaterialsReader.MEDIA),
            MaterialsFile::media,
            own.stream().flatMap(f -> f.media().stream()).toList());
    this.steels =
        new MaterialSet(
            index.group(MaterialsReader.STEELS),
            MaterialsFile::steels,
            own.stream().flatMap(f -> f.steels().stream()).toList());
  }

  /** The catalogue as it is shipped. */
  public static Catalogue builtIn() {
    return BUILT_IN;
  }

  /**
   * This catalogue with a person's own materials file laid over it; the later file wins.
   *
   * @param top the words of the file, its format line among them
   * @param problems takes all that is wrong with it
   * @return this catalogue unchanged where anything is wrong
   */
  public Catalogue with(Node.Entries top, Problems problems) {
    int before = problems.count();
    List<MaterialsFile> files = new ArrayList<>(own);
    files.add(new MaterialsReader(true, problems).read(top));
    if (problems.count() > before) {
      return this;
    }
    Catalogue changed = new Catalogue(files);
    changed.check(files.get(files.size() - 1), problems);
    return problems.count() > before ? this : changed;
  }

  private void check(MaterialsFile file, Problems problems) {
    int before = problems.count();
    alloys.check(problems);
    media.check(problems);
    steels.check(problems);
    if (problems.count() > before) {
      return;
    }
    Sources sources = Library.only().sources();
    for (Entry e : file.alloys()) {
      AlloyMaker.make(entry(alloys, e.name()), sources, problems);
    }
    for (Entry e : file.media()) {
      MediumMaker.check(entry(media, e.name()), problems);
    }
    for (Entry e : file.steels()) {
      RequiredFacts.check(entry(steels, e.name()), MaterialWords.STEEL, "flask steel", problems);
    }
    Fact.Figure skin = common("skin starts to free");
    Fact.Figure gap = common("gap fully open");
    if (gap.si() < skin.si()) {
      Origin at = (gap.ground().origin().own() ? gap : skin).ground().origin();
      problems.add(at.span(), "wrong.gapCannotOpenBefore");
    }
  }

  /** Alloys in printing order. */
  public List<String> alloyNames() {
    return alloys.names();
  }

  /** Mould media in printing order. */
  public List<String> mediumNames() {
    return media.names();
  }

  /** Flask steels in printing order. */
  public List<String> steelNames() {
    return steels.names();
  }

  /** The alloy's name as printed for a name as typed; capitals, spaces and hyphens do not count. */
  public Optional<String> findAlloy(String typed) {
    return alloys.find(typed);
  }

  /** The medium's name as printed for a name as typed. */
  public Optional<String> findMedium(String typed) {
    return media.find(typed);
  }

  /** The steel's name as printed for a name as typed. */
  public Optional<String> findSteel(String typed) {
    return steels.find(typed);
  }

  /** Alloys that someone may have meant, nearest first. */
  public List<String> nearestAlloys(String typed) {
    return alloys.nearest(typed);
  }

  /** Mould media that someone may have meant, nearest first. */
  public List<String> nearestMedia(String typed) {
    return media.nearest(typed);
  }

  /** Flask steels that someone may have meant, nearest first. */
  public List<String> nearestSteels(String typed) {
    return steels.nearest(typed);
  }

  /**
   * An alloy.
   *
   * @param name any name that {@link #findAlloy} knows
   * @throws IllegalArgumentException for any other
   */
  public Alloy alloy(String name) {
    Problems problems = new Problems();
    return AlloyMaker.make(entry(alloys, name), Library.only().sources(), problems)
        .orElseThrow(() -> new IllegalStateException(problems.errors().toString()));
  }

  /**
   * The family a metal belongs to.
   *
   * @param alloy any name that {@link #findAlloy} knows
   */
  public MetalKind metalKind(String alloy) {
    String words = entry(alloys, alloy).wording(MaterialWords.METAL);
    for (MetalKind kind : MetalKind.values()) {
      if (kind.words().equals(words)) {
        return kind;
      }
    }
    throw new IllegalStateException("no metal family " + words);
  }

  /**
   * What an alias has to say for itself when it stands for another alloy; empty for a name that
   * means what it says.
   */
  public Optional<String> aliasNote(String typed) {
    return alloys.aliasNote(typed);
  }

  /** Other names under which an alloy is found. */
  public List<String> otherAlloyNames(String name) {
    return alloys.otherNames(name);
  }

  /** Other names under which a mould medium is found. */
  public List<String> otherMediumNames(String name) {
    return media.otherNames(name);
  }

  /**
   * Linear contraction of an alloy from freezing to 20 degC [-]: the pattern maker's figure, else
   * from the densities just frozen and cold; empty where neither is known.
   */
  public Optional<Double> contraction(String name) {
    Entry entry = entry(alloys, name);
    Optional<Double> cold = entry.figure("density cold").map(Fact.Figure::si);
    Optional<Double> frozen = entry.figure("density just frozen").map(Fact.Figure::si);
    return entry
        .figure("pattern contraction")
        .map(Fact.Figure::si)
        .or(() -> cold.flatMap(c -> frozen.map(f -> 1.0 - StrictMath.cbrt(f / c))));
  }

  /**
   * A mould medium as it meets a metal.
   *
   * @param name any name that {@link #findMedium} knows
   * @param kind of metal; decides how hard the mould pulls heat while the metal is liquid
   * @param ramming of sand; counts for nothing elsewhere
   */
  public MouldMedium medium(String name, MetalKind kind, Ramming ramming) {
    Entry entry = entry(media, name);
    Sources sources = Library.only().sources();
    boolean sand = entry.wording(MaterialWords.FAMILY).equals("sand");
    return MediumMaker.make(
        entry,
        sources,
        kind,
        sand ? common("air through sand rammed " + ramming.words()).si() : 1.0,
        sand ? common("density of sand rammed " + ramming.words()).si() : 1.0,
        commonBand("skin starts to free"),
        commonBand("gap fully open"));
  }

  /**
   * A flask steel.
   *
   * @param name any name that {@link #findSteel} knows
   */
  public Materials.FlaskSteel steel(String name) {
    Entry steel = entry(steels, name);
    return new Materials.FlaskSteel(
        steel.name(),
        steel.figure("density").orElseThrow().si(),
        steel.figure(MaterialWords.TAKES).orElseThrow().si(),
        common("glow of hot surfaces").si());
  }

  /** Figures that hold for every pour until a case says otherwise. */
  public Materials.Common commonFigures() {
    return new Materials.Common(
        commonBand("parting crack"),
        commonBand("crucible cools by"),
        commonBand("lip and stream cost"),
        new ModelCoefficients(
            ModelCoefficients.USUAL.spreading(),
            commonBand("range ratio scale"),
            commonBand(MaterialWords.TURNS),
            commonBand("vent discharge"),
            commonBand("air takes from outside"),
            commonBand("glow of hot surfaces")));
  }

  private Band commonBand(String word) {
    return AlloyMaker.band(common(word), Library.only().sources());
  }

  private Fact.Figure common(String word) {
    return (Fact.Figure) commonFacts().get(word);
  }

  private Map<String, Fact> commonFacts() {
    Map<String, Fact> facts = new LinkedHashMap<>(Library.only().file("common.yaml").common());
    own.forEach(file -> facts.putAll(file.common()));
    return facts;
  }

  /** All that is known of an alloy. */
  public MaterialSheet alloySheet(String name) {
    return sheet(alloys, name, MaterialWords.ALLOY);
  }

  /** All that is known of a mould medium. */
  public MaterialSheet mediumSheet(String name) {
    return sheet(media, name, MaterialWords.MEDIUM);
  }

  /** All that is known of a flask steel. */
  public MaterialSheet steelSheet(String name) {
    return sheet(steels, name, MaterialWords.STEEL);
  }

  /** The figures that hold for every pour. */
  public MaterialSheet commonSheet() {
    Map<String, Fact> shipped = Library.only().file("common.yaml").common();
    Map<String, Fact> facts = commonFacts();
    Origin origin = facts.values().iterator().next().ground().origin();
    Entry entry =
        new Entry(
            "figures that hold for every pour",
            Optional.empty(),
            List.of(),
            "",
            "",
            facts,
            shipped,
            origin);
    return SheetMaker.make(entry, List.of(), MaterialWords.COMMON, Library.only().sources());
  }

  private static MaterialSheet sheet(MaterialSet shelf, String name, List<Property> schema) {
    Entry entry = entry(shelf, name);
    return SheetMaker.make(entry, shelf.otherNames(entry.name()), schema, Library.only().sources());
  }

  private static Entry entry(MaterialSet shelf, String name) {
    return shelf.entry(
        shelf
            .find(name)
            .orElseThrow(() -> new IllegalArgumentException("no material named " + name)));
  }
}
