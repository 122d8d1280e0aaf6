package lastinch.cases.catalogue.read;

import static lastinch.cases.catalogue.read.Property.choice;
import static lastinch.cases.catalogue.read.Property.choices;
import static lastinch.cases.catalogue.read.Property.extra;
import static lastinch.cases.catalogue.read.Property.freezing;
import static lastinch.cases.catalogue.read.Property.needed;
import static lastinch.cases.catalogue.read.Property.table;
import static lastinch.cases.catalogue.read.Property.text;

import java.util.Arrays;
import java.util.List;
import lastinch.cases.catalogue.MetalKind;
import lastinch.cases.units.Dimension;

/** All words of a materials file, in printing order. */
public final class MaterialWords {
  static final String STARTS = "starts to freeze";
  static final String ENDS = "ends freezing";
  static final String FREEZING = "freezing follows";
  public static final String METAL = "metal";
  public static final String FAMILY = "family";
  static final String FILM = "oxide film";
  public static final String GIVES_OFF = "gives off";
  public static final String CONDUCTS = "conducts";
  static final String CONDUCTS_TABLE = "conducts by heat";
  public static final String TAKES = "heat per degree";
  static final String TAKES_TABLE = "heat per degree by heat";
  static final String CONTACT = "contact with liquid metal";
  static final String CONTACT_ALUMINIUM = "contact with liquid aluminium";
  static final String ROUGHNESS = "roughness";
  public static final String TURNS = "losses on entry and turning";
  static final String GAP = "contact across a gap";

  /** Hottest and coldest that any material here is asked about [K]. */
  private static final double COLD = 250.0;

  private static final double HOT = 2500.0;

  public static final List<Property> ALLOY =
      List.of(
          choice(
              METAL,
              Arrays.stream(MetalKind.values()).map(MetalKind::words).toList(),
              "family of metal; decides how hard a mould pulls its heat"),
          needed(STARTS, Dimension.HEAT, COLD, HOT, "where the first metal freezes on cooling"),
          needed(ENDS, Dimension.HEAT, COLD, HOT, "where the last metal freezes"),
          freezing(FREEZING, "how the solid share grows between the two"),
          needed("heat of freezing", Dimension.LATENT_HEAT, 1e4, 2e6, "given up while freezing"),
          needed("heat per degree liquid", Dimension.SPECIFIC_HEAT, 50, 5000, "held by the liquid"),
          needed("heat per degree solid", Dimension.SPECIFIC_HEAT, 50, 5000, "held by the solid"),
          needed("conducts liquid", Dimension.CONDUCTIVITY, 0.1, 1000, "heat through the liquid"),
          needed("conducts solid", Dimension.CONDUCTIVITY, 0.1, 1000, "heat through hot solid"),
          needed("density liquid", Dimension.DENSITY, 500, 25000, "where it starts to freeze"),
          needed("lighter per degree", Dimension.DENSITY_SLOPE, 0, 5, "above that heat"),
          extra("density just frozen", Dimension.DENSITY, 500, 25000, "where it ends freezing"),
          needed("density cold", Dimension.DENSITY, 500, 25000, "at 20 degC, for weights"),
          needed("viscosity", Dimension.VISCOSITY, 1e-5, 0.1, "where it starts to freeze"),
          needed("surface tension", Dimension.SURFACE_TENSION, 0, 5, "pushes back in thin edges"),
          needed("shrinks on freezing", Dimension.SHARE, -0.05, 0.2, "volume lost"),
          needed("mush that stops it", Dimension.SHARE, 0.01, 1, "solid share at which flow ends"),
          needed("wetting angle", Dimension.ANGLE, Math.PI / 2, Math.PI, "180 deg is no wetting"),
          choice(FILM, List.of("yes", "mild", "no"), "whether a film rides on the leading metal"),
          needed("film factor", Dimension.NUMBER, 1, 5, "times the push of surface tension"),
          needed("pours at", Dimension.HEAT, 300, HOT, "usual heat in the crucible"),
          extra("grows with heat", Dimension.EXPANSION, 0, 1e-4, "length, solid"),
          extra("pattern contraction", Dimension.SHARE, 0, 0.05, "pattern maker's allowance"),
          text("freezing class", "short I, middle II, long III"),
          choices(
              GIVES_OFF, Hazards.OF_ALLOYS, "fume that hurts; decides which cautions are printed"),
          text("caution", "what to watch"));

  public static final List<Property> MEDIUM =
      List.of(
          choice(
              FAMILY,
              List.of("sand", "investment", "shell", "permanent"),
              "kind of mould; decides which words of a case apply"),
          needed(CONDUCTS, Dimension.CONDUCTIVITY, 0.01, 1000, "heat through the mould"),
          table(CONDUCTS_TABLE, Dimension.CONDUCTIVITY, 0.01, 1000, "the same by heat"),
          needed(TAKES, Dimension.SPECIFIC_HEAT, 50, 5000, "held by the mould"),
          table(TAKES_TABLE, Dimension.SPECIFIC_HEAT, 50, 5000, "the same by heat"),
          needed("density", Dimension.DENSITY, 100, 25000, "in bulk, firm"),
          needed("porosity", Dimension.SHARE, 0, 0.95, "share of air"),
          needed("permeability", Dimension.PERMEABILITY, 0, 1e-6, "how well air leaves"),
          extra("permeability number", Dimension.NUMBER, 0, 2000, "moulder's test, AFS"),
          needed(CONTACT, Dimension.HEAT_PULL, 1, 1e5, "how hard the mould pulls heat at first"),
          extra(CONTACT_ALUMINIUM, Dimension.HEAT_PULL, 1, 1e5, "the same for aluminium alloys"),
          needed(GAP, Dimension.HEAT_PULL, 0, 1e5, "once a frozen skin has drawn back"),
          extra(ROUGHNESS, Dimension.LENGTH, 0, 1e-2, "of the face, as grains; none is smooth"),
          needed("used up to", Dimension.HEAT, 300, 3000, "hottest the mould may be"),
          extra("usual heat", Dimension.HEAT, COLD, HOT, "mould when poured"),
          extra("usual heat for bronze", Dimension.HEAT, COLD, HOT, "mould when poured"),
          extra("usual heat for silver", Dimension.HEAT, COLD, HOT, "mould when poured"),
          extra("usual heat for brass", Dimension.HEAT, COLD, HOT, "mould when poured"),
          extra("usual heat for aluminium", Dimension.HEAT, COLD, HOT, "mould when poured"),
          extra("breaks down at", Dimension.HEAT, COLD, HOT, "where the binder decomposes"),
          extra("fired at", Dimension.HEAT, COLD, HOT, "before pouring"),
          extra("wall", Dimension.LENGTH, 1e-4, 1, "usual thickness of a shell"),
          extra("grows", Dimension.SHARE, 0, 0.05, "length, from cold to casting heat"),
          extra("grows with heat", Dimension.EXPANSION, 0, 1e-4, "length per degree"),
          choices(GIVES_OFF, Hazards.OF_MOULDS, "what hurts; decides which cautions are printed"),
          text("caution", "what to watch"));

  public static final List<Property> STEEL =
      List.of(
          needed(CONDUCTS, Dimension.CONDUCTIVITY, 0.1, 1000, "heat through the wall"),
          needed("density", Dimension.DENSITY, 500, 25000, "of the wall"),
          needed(TAKES, Dimension.SPECIFIC_HEAT, 50, 5000, "held by the wall"),
          needed("grows with heat", Dimension.EXPANSION, 0, 1e-4, "length per degree"),
          text("caution", "what to watch"));

  public static final List<Property> COMMON =
      List.of(
          needed("skin starts to free", Dimension.NUMBER, 0, 1, "solid share at the wall"),
          needed("gap fully open", Dimension.NUMBER, 0, 1, "solid share at the wall"),
          needed(TURNS, Dimension.NUMBER, 0.1, 20, "times those of water in pipes"),
          needed("range ratio scale", Dimension.NUMBER, 0.01, 100, "how much rides as mush"),
          needed("parting crack", Dimension.LENGTH, 0, 1e-3, "leak along the parting"),
          needed("vent discharge", Dimension.NUMBER, 0.05, 1, "orifice coefficient"),
          needed("glow of hot surfaces", Dimension.NUMBER, 0.05, 1, "emissivity"),
          needed("crucible cools by", Dimension.COOLING_RATE, 0, 100, "reading to lip"),
          needed("lip and stream cost", Dimension.HEAT_DIFFERENCE, 0, 300, "over the lip"),
          needed("air takes from outside", Dimension.HEAT_PULL, 0, 1000, "still air"),
          needed("air through sand rammed soft", Dimension.NUMBER, 0.01, 100, "times firm"),
          needed("density of sand rammed soft", Dimension.NUMBER, 0.5, 2, "times firm"),
          needed("air through sand rammed firm", Dimension.NUMBER, 0.01, 100, "times firm"),
          needed("density of sand rammed firm", Dimension.NUMBER, 0.5, 2, "times firm"),
          needed("air through sand rammed hard", Dimension.NUMBER, 0.01, 100, "times firm"),
          needed("density of sand rammed hard", Dimension.NUMBER, 0.5, 2, "times firm"));

  /** Ways in which the solid share may grow. */
  static final List<String> WAYS =
      List.of("straight line", "lever rule", "scheil", "at one heat", "table");

  static final Property MELTS =
      needed("pure metal freezes at", Dimension.HEAT, COLD, 3000, "where the line begins");
  static final Property FALLS =
      needed("falls per percent", Dimension.SLOPE, 1e-3, 100, "slope of the line");
  static final Property BENDS =
      extra("falls faster by", Dimension.BEND, 0, 10, "bend of the line, per percent squared");
  static final Property KEPT =
      needed("share kept in solid", Dimension.NUMBER, 0.001, 0.999, "partition ratio");
  static final Property REST =
      needed("rest freezes at", Dimension.HEAT, COLD, HOT, "the rest freezes at one heat");
  static final Property BEFORE_REST =
      needed("solid when the rest freezes", Dimension.SHARE, 0, 1, "just before it does");
  static final String BELOW_TABLE = "solid by degrees below";

  private MaterialWords() {}

  /** Figures that a way of freezing needs or allows. */
  static List<Property> freezingFigures(String way) {
    return switch (way) {
      case "lever rule" -> List.of(MELTS, KEPT);
      case "scheil" -> List.of(MELTS, FALLS, BENDS, KEPT, REST);
      case "table" -> List.of(REST, BEFORE_REST);
      default -> List.of();
    };
  }
}
