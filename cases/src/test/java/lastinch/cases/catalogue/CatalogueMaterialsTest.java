package lastinch.cases.catalogue;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.Optional;
import lastinch.cases.format.CaseText;
import lastinch.cases.format.Problems;
import lastinch.cases.format.SourceText;
import lastinch.cases.plan.Materials;
import lastinch.cases.plan.Materials.Make;
import lastinch.solver.material.MouldMedium;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class CatalogueMaterialsTest {
  private static final Materials MATERIALS = new CatalogueMaterials(Catalogue.builtIn());

  @ParameterizedTest
  @CsvSource({
    "oil, oil-bonded sand",
    "resin, resin-bonded sand",
    "water glass, water glass sand",
    "clay, green sand"
  })
  void theBinderSaysWhichBondedSand(String binder, String name) {
    Make make = new Make(Optional.of(binder), Optional.empty());
    assertThat(MATERIALS.medium("bonded sand", make, "tin bronze").orElseThrow().name())
        .isEqualTo(name);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "bonded sand",
        "green sand",
        "gypsum investment",
        "phosphate investment",
        "ceramic shell",
        "graphite",
        "steel"
      })
  void findsEveryMediumThatACaseMayName(String name) {
    assertThat(MATERIALS.medium(name, Make.NOT_SAID)).isPresent();
    assertThat(MATERIALS.mediumAliases()).contains(name);
  }

  @Test
  void ramsAndMeetsTheAlloy() {
    Make hard = new Make(Optional.of("oil"), Optional.of("hard"));
    MouldMedium sand = MATERIALS.medium("bonded sand", hard, "A356").orElseThrow();
    assertThat(sand.contactLiquid().value()).isEqualTo(1500.0);
    assertThat(sand.permeability().value()).isEqualTo(0.6e-11);
  }

  @Test
  void unknownNamesAreEmpty() {
    assertThat(MATERIALS.alloy("bronze")).isEmpty();
    assertThat(MATERIALS.medium("mud", Make.NOT_SAID)).isEmpty();
    assertThat(MATERIALS.flaskSteel("brass")).isEmpty();
    assertThat(MATERIALS.contraction("mud")).isEmpty();
  }

  @Test
  void flaskSteelComesWithTheGlowOfHotSurfaces() {
    Materials.FlaskSteel steel = MATERIALS.flaskSteel("stainless").orElseThrow();
    assertThat(steel).isEqualTo(new Materials.FlaskSteel("stainless 304", 7900.0, 550.0, 0.8));
  }

  @Test
  void saysWhatC87610IsReadAs() {
    assertThat(MATERIALS.alloyNote("C87610")).isPresent();
    assertThat(MATERIALS.alloyNote("tin bronze")).isEmpty();
    assertThat(MATERIALS.alloyAliases()).contains("C87610", "C90700", "tin bronze");
  }

  @Test
  void ownMaterialsAreLaidOver() {
    Problems problems = new Problems();
    SourceText text =
        SourceText.of(
            Path.of("own.yaml"),
            """
            format: last inch materials 1
            alloys:
              - {name: my bronze, based on: tin bronze, viscosity: 6 mPa s}
            """);
    Materials own = MATERIALS.with(CaseText.parse(text, problems).orElseThrow(), problems);
    assertThat(problems.errors()).isEmpty();
    assertThat(own.alloy("my bronze").orElseThrow().viscosity().value()).isEqualTo(0.006);
    assertThat(MATERIALS.alloy("my bronze")).isEmpty();
  }
}
