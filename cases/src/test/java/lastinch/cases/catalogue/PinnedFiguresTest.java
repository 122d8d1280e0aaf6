package lastinch.cases.catalogue;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.List;
import lastinch.cases.plan.Materials;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Every figure of the catalogue against the collection it was taken from. */
class PinnedFiguresTest {
  private static final Catalogue CATALOGUE = Catalogue.builtIn();

  /** Fields of a line of the collection. */
  private record Pinned(
      String group,
      String name,
      String word,
      String value,
      String low,
      String high,
      String unit,
      String basis,
      String source) {
    static Pinned of(String line) {
      String[] f = line.split(",", -1);
      return new Pinned(f[0], f[1], f[2], f[3], f[4], f[5], f[6], f[7], f[8]);
    }
  }

  private static List<Pinned> pinned() throws IOException {
    try (InputStream in = PinnedFiguresTest.class.getResourceAsStream("pinned-figures.csv")) {
      return new String(in.readAllBytes(), StandardCharsets.UTF_8)
          .lines()
          .filter(line -> !line.startsWith("#"))
          .skip(1)
          .map(Pinned::of)
          .toList();
    }
  }

  private static MaterialSheet sheet(Pinned p) {
    return switch (p.group()) {
      case "alloy" -> CATALOGUE.alloySheet(p.name());
      case "medium" -> CATALOGUE.mediumSheet(p.name());
      case "steel" -> CATALOGUE.steelSheet(p.name());
      default -> CATALOGUE.commonSheet();
    };
  }

  @Test
  void everyFigureStandsAsItWasCollected() throws IOException {
    List<Pinned> all = pinned();
    assertThat(all).hasSizeGreaterThan(300);
    for (Pinned p : all) {
      MaterialSheet.Row row =
          sheet(p).rows().stream()
              .filter(r -> r.property().equals(p.word()))
              .findFirst()
              .orElseThrow(() -> new AssertionError("missing: " + p));
      assertThat(row.unit()).as(p.toString()).isEqualTo(unitShown(p.unit()));
      assertThat(row.basis().name()).as(p.toString()).isEqualTo(p.basis());
      assertThat(row.source()).as(p.toString()).isEqualTo(p.source());
      same(p, row.value(), p.value());
      same(p, row.low(), p.low());
      same(p, row.high(), p.high());
    }
  }

  /** Units are printed in their shortest spelling. */
  private static String unitShown(String unit) {
    return switch (unit) {
      case "W/(m2 K)" -> "W/m2K";
      case "W/(m K)" -> "W/mK";
      case "J/(kg K)" -> "J/kgK";
      case "kg/(m3 K)" -> "kg/m3K";
      default -> unit;
    };
  }

  private static void same(Pinned p, String shown, String expected) {
    if (expected.isEmpty()) {
      assertThat(shown).as(p.toString()).isEmpty();
    } else {
      assertThat(Double.parseDouble(shown))
          .as(p.toString())
          .isEqualTo(Double.parseDouble(expected));
    }
  }

  /**
   * Silica sand by heat from memory of casting handbooks; quartz and burnt gypsum investment from
   * the NASA thermodynamic file, spike at 575 degC left out.
   */
  @ParameterizedTest
  @CsvSource({
    "oil-bonded sand, conducts at 20 degC, 0.70",
    "green sand, conducts at 500 degC, 0.50",
    "resin-bonded sand, conducts at 1000 degC, 0.90",
    "oil-bonded sand, heat per degree at 20 degC, 740",
    "oil-bonded sand, heat per degree at 227 degC, 1003",
    "water glass sand, heat per degree at 427 degC, 1137",
    "oil-bonded sand, heat per degree at 627 degC, 1131",
    "oil-bonded sand, heat per degree at 827 degC, 1164",
    "gypsum investment, heat per degree at 227 degC, 990",
    "gypsum investment, heat per degree at 427 degC, 1115",
    "gypsum investment, heat per degree at 627 degC, 1130"
  })
  void tablesByHeatStandAsTheyWereCollected(String medium, String word, String value) {
    assertThat(CATALOGUE.mediumSheet(medium).rows())
        .anyMatch(r -> r.property().equals(word) && r.value().equals(value));
  }

  /** Flask steels from memory. */
  @ParameterizedTest
  @CsvSource({"carbon steel, 7850, 600", "stainless 304, 7900, 550"})
  void flaskSteelsStandAsTheyWereCollected(String name, double density, double specificHeat) {
    Materials.FlaskSteel steel = CATALOGUE.steel(name);
    assertThat(steel.density()).isEqualTo(density);
    assertThat(steel.specificHeat()).isEqualTo(specificHeat);
  }
}
