package lastinch.cases.catalogue;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import lastinch.cases.catalogue.read.Index;
import lastinch.solver.material.Basis;
import lastinch.solver.material.FilmForming;
import lastinch.solver.material.Hazard;
import lastinch.solver.material.MouldFamily;
import lastinch.solver.material.MouldMedium;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;

class CatalogueTest {
  private static final Catalogue CATALOGUE = Catalogue.builtIn();

  static List<String> alloys() {
    return CATALOGUE.alloyNames();
  }

  static List<String> media() {
    return CATALOGUE.mediumNames();
  }

  @Test
  void holdsTheAlloysAndMediaOfASmallShop() {
    assertThat(CATALOGUE.alloyNames())
        .containsExactly(
            "tin bronze",
            "gunmetal",
            "silicon bronze",
            "aluminium bronze",
            "coin alloy",
            "yellow brass",
            "red brass",
            "sterling silver",
            "A356",
            "pewter",
            "pure copper",
            "pure silver",
            "pure aluminium",
            "pure tin",
            "pure zinc");
    assertThat(CATALOGUE.mediumNames())
        .containsExactly(
            "oil-bonded sand",
            "resin-bonded sand",
            "water glass sand",
            "green sand",
            "gypsum investment",
            "phosphate investment",
            "ceramic shell",
            "graphite mould",
            "steel mould");
    assertThat(CATALOGUE.steelNames()).containsExactly("carbon steel", "stainless 304");
  }

  @ParameterizedTest
  @MethodSource("alloys")
  void everyAlloyLoadsAndFreezesFromNothingToAllSolid(String name) {
    var alloy = CATALOGUE.alloy(name);
    assertThat(alloy.name()).isEqualTo(name);
    double start = alloy.liquidus();
    double end = alloy.freezing().endOfFreezing();
    assertThat(alloy.freezing().solidFraction(start + 1.0)).isZero();
    assertThat(alloy.freezing().solidFraction(end - 1e-6)).isEqualTo(1.0);
    double before = 0.0;
    for (double t = start; t > end; t -= 0.5) {
      double solid = alloy.freezing().solidFraction(t);
      assertThat(solid).isBetween(before, 1.0);
      before = solid;
    }
  }

  @ParameterizedTest
  @MethodSource("media")
  void everyMediumLoadsForEveryMetalAndRamming(String name) {
    for (MetalKind kind : MetalKind.values()) {
      for (Ramming ramming : Ramming.values()) {
        MouldMedium m = CATALOGUE.medium(name, kind, ramming);
        assertThat(m.contactLiquid().value()).isGreaterThan(m.contactGap().value());
        assertThat(m.conductivityFactor().low()).isLessThan(1.0);
        assertThat(m.conductivityFactor().high()).isGreaterThan(1.0);
      }
    }
  }

  @ParameterizedTest
  @MethodSource("alloys")
  void givesOffZincAndLeadFumeWhereItIsMadeOfThem(String name) {
    String made = CATALOGUE.alloySheet(name).madeOf().replace("lead-free", "");
    List<Hazard> givesOff = CATALOGUE.alloy(name).givesOff();
    assertThat(givesOff.contains(Hazard.ZINC_FUME)).isEqualTo(made.contains("zinc"));
    assertThat(givesOff.contains(Hazard.LEAD_FUME)).isEqualTo(made.contains("lead"));
  }

  @Test
  void tellsWhichMouldsAreDampDustyOrGiveOffSulphur() {
    assertThat(mouldsWith(Hazard.STEAM)).containsExactly("green sand");
    assertThat(mouldsWith(Hazard.SULPHUR_FUME)).containsExactly("gypsum investment");
    List<String> dusty = new ArrayList<>(CATALOGUE.mediumNames());
    dusty.removeAll(List.of("graphite mould", "steel mould"));
    assertThat(mouldsWith(Hazard.SILICA_DUST)).containsExactlyElementsOf(dusty);
  }

  private static List<String> mouldsWith(Hazard hazard) {
    return CATALOGUE.mediumNames().stream()
        .filter(
            n -> CATALOGUE.medium(n, MetalKind.COPPER, Ramming.FIRM).givesOff().contains(hazard))
        .toList();
  }

  @ParameterizedTest
  @MethodSource("alloys")
  void everyFigureOfAnAlloySaysWhereItComesFrom(String name) {
    grounded(CATALOGUE.alloySheet(name));
  }

  @ParameterizedTest
  @MethodSource("media")
  void everyFigureOfAMediumSaysWhereItComesFrom(String name) {
    grounded(CATALOGUE.mediumSheet(name));
  }

  @Test
  void everyFigureOfSteelsAndCommonFiguresSaysWhereItComesFrom() {
    CATALOGUE.steelNames().forEach(name -> grounded(CATALOGUE.steelSheet(name)));
    grounded(CATALOGUE.commonSheet());
  }

  private static void grounded(MaterialSheet sheet) {
    assertThat(sheet.rows()).isNotEmpty();
    Set<String> known = new HashSet<>();
    sheet.sources().forEach(s -> known.add(s.mark()));
    for (MaterialSheet.Row row : sheet.rows()) {
      assertThat(row.basis()).as(row.property()).isNotEqualTo(Basis.TYPED);
      if (row.basis() == Basis.OPENED) {
        assertThat(row.source()).as(row.property()).isNotEmpty();
      }
      if (!row.source().isEmpty()) {
        assertThat(known).as(row.property()).contains(row.source().split(" ", -1));
      }
      assertThat(row.changed()).isEmpty();
      row.figure()
          .ifPresent(
              f ->
                  assertThat(f.quantity().best().si())
                      .as(row.property())
                      .isBetween(f.quantity().low(), f.quantity().high()));
    }
  }

  @Test
  void everyReferenceIsUsedSomewhere() {
    Set<String> used = new HashSet<>();
    CATALOGUE
        .alloyNames()
        .forEach(n -> CATALOGUE.alloySheet(n).sources().forEach(s -> used.add(s.mark())));
    CATALOGUE
        .mediumNames()
        .forEach(n -> CATALOGUE.mediumSheet(n).sources().forEach(s -> used.add(s.mark())));
    CATALOGUE
        .steelNames()
        .forEach(n -> CATALOGUE.steelSheet(n).sources().forEach(s -> used.add(s.mark())));
    assertThat(Library.only().sources().marks()).allMatch(used::contains);
  }

  @Test
  void noNameStandsForTwoMaterials() {
    Map<String, String> seen = new HashMap<>();
    for (String name : CATALOGUE.alloyNames()) {
      unique(seen, name, CATALOGUE.otherAlloyNames(name));
    }
    Map<String, String> media = new HashMap<>();
    for (String name : CATALOGUE.mediumNames()) {
      unique(media, name, CATALOGUE.otherMediumNames(name));
    }
    assertThat(seen.size()).isGreaterThan(40);
    assertThat(media.size()).isGreaterThan(20);
  }

  private static void unique(Map<String, String> seen, String name, List<String> others) {
    assertThat(seen.put(Index.fold(name), name)).as(name).isNull();
    for (String other : others) {
      assertThat(seen.put(Index.fold(other), name)).as(other).isNull();
    }
  }

  @ParameterizedTest
  @CsvSource({
    "C90700, tin bronze",
    "Tin  Bronze, tin bronze",
    "c 87610, silicon bronze",
    "aluminum bronze, aluminium bronze",
    "Nordic Gold, coin alloy",
    "sterling, sterling silver",
    "AlSi7Mg, A356",
    "copper, pure copper"
  })
  void findsAlloysUnderTheNamesPeopleType(String typed, String name) {
    assertThat(CATALOGUE.findAlloy(typed)).contains(name);
  }

  @Test
  void namesTheNearestWhenAnAlloyIsUnknown() {
    assertThat(CATALOGUE.findAlloy("bronze")).isEmpty();
    assertThat(CATALOGUE.nearestAlloys("bronze"))
        .containsExactlyInAnyOrder("tin bronze", "silicon bronze", "aluminium bronze");
    assertThat(CATALOGUE.nearestAlloys("gunmetl")).containsExactly("gunmetal");
    assertThat(CATALOGUE.nearestAlloys("C9070")).contains("tin bronze");
    assertThat(CATALOGUE.nearestAlloys("qqqqq")).isEmpty();
    assertThatThrownBy(() -> CATALOGUE.alloy("bronze"))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("bronze");
  }

  @Test
  void saysThatC87610IsReadAsAnotherAlloy() {
    assertThat(CATALOGUE.aliasNote("C87610").orElseThrow()).contains("C87300").contains("estimate");
    assertThat(CATALOGUE.aliasNote("C87300")).isEmpty();
    assertThat(CATALOGUE.alloy("C87610")).isEqualTo(CATALOGUE.alloy("silicon bronze"));
  }

  @ParameterizedTest
  @CsvSource({
    "tin bronze, NO, 1, 1, 1",
    "silicon bronze, MILD, 1.5, 1, 2",
    "aluminium bronze, YES, 2, 1, 2.5",
    "coin alloy, YES, 2, 1, 2.5",
    "yellow brass, YES, 2, 1, 2.5",
    "A356, YES, 2, 1, 2.5",
    "pure aluminium, YES, 2, 1, 2.5",
    "red brass, NO, 1, 1, 1",
    "sterling silver, NO, 1, 1, 1"
  })
  void filmFactorGoesWithTheFilm(
      String name, FilmForming film, double factor, double low, double high) {
    var alloy = CATALOGUE.alloy(name);
    assertThat(alloy.film()).isEqualTo(film);
    assertThat(alloy.filmFactor().value()).isEqualTo(factor);
    assertThat(alloy.filmFactor().low()).isEqualTo(low);
    assertThat(alloy.filmFactor().high()).isEqualTo(high);
  }

  @Test
  void contactWhileLiquidDependsOnTheMetal() {
    MouldMedium bronze = CATALOGUE.medium("oil sand", MetalKind.COPPER, Ramming.FIRM);
    MouldMedium aluminium = CATALOGUE.medium("oil sand", MetalKind.ALUMINIUM, Ramming.FIRM);
    assertThat(bronze.contactLiquid().value()).isEqualTo(1900.0);
    assertThat(aluminium.contactLiquid().value()).isEqualTo(1500.0);
    MouldMedium gypsum = CATALOGUE.medium("gypsum", MetalKind.ALUMINIUM, Ramming.FIRM);
    assertThat(gypsum.contactLiquid().value()).isEqualTo(1200.0);
  }

  @ParameterizedTest
  @EnumSource(Ramming.class)
  void rammingChangesAirAndDensityOfSandOnly(Ramming ramming) {
    double air = Map.of(Ramming.SOFT, 2.0, Ramming.FIRM, 1.0, Ramming.HARD, 0.5).get(ramming);
    double mass = Map.of(Ramming.SOFT, 0.96, Ramming.FIRM, 1.0, Ramming.HARD, 1.04).get(ramming);
    MouldMedium sand = CATALOGUE.medium("green sand", MetalKind.COPPER, ramming);
    assertThat(sand.permeability().value()).isEqualTo(1.2e-11 * air);
    assertThat(sand.density().value()).isEqualTo(1550.0 * mass);
    assertThat(1.0 - sand.porosity()).isEqualTo((1.0 - 0.415) * mass, within());
    MouldMedium gypsum = CATALOGUE.medium("gypsum", MetalKind.COPPER, ramming);
    assertThat(gypsum.permeability().value()).isEqualTo(2.3e-13);
    assertThat(gypsum.family()).isEqualTo(MouldFamily.INVESTMENT);
  }

  /** Two roundings of a share of order one. */
  private static org.assertj.core.data.Offset<Double> within() {
    return org.assertj.core.data.Offset.offset(1e-15);
  }

  @Test
  void contractionIsThePatternMakersFigureOrComesFromDensities() {
    assertThat(CATALOGUE.contraction("silicon bronze").orElseThrow()).isEqualTo(0.021);
    // 1 - (8357 / 8770)^(1/3) by hand; four figures of the densities.
    assertThat(CATALOGUE.contraction("tin bronze").orElseThrow())
        .isEqualTo(0.01595, org.assertj.core.data.Offset.offset(5e-5));
    assertThat(CATALOGUE.contraction("gunmetal")).isEmpty();
  }
}
