package lastinch.cases.catalogue;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import lastinch.cases.Told;
import lastinch.cases.format.CaseText;
import lastinch.cases.format.Problem;
import lastinch.cases.format.Problems;
import lastinch.cases.format.SourceText;
import lastinch.solver.material.Basis;
import lastinch.solver.material.FreezingCurve;
import lastinch.solver.material.MouldMedium;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class OwnMaterialsTest {
  private static final String HEAD = "format: last inch materials 1\n";

  private static Catalogue read(String text, Problems problems) {
    SourceText source = SourceText.of(Path.of("own.yaml"), text);
    return CaseText.parse(source, problems)
        .map(top -> Catalogue.builtIn().with(top, problems))
        .orElse(Catalogue.builtIn());
  }

  private static Catalogue sound(String text) {
    Problems problems = new Problems();
    Catalogue catalogue = read(text, problems);
    assertThat(problems.errors()).isEmpty();
    return catalogue;
  }

  private static List<Problem> wrong(String text) {
    Problems problems = new Problems();
    assertThat(read(text, problems)).isSameAs(Catalogue.builtIn());
    return problems.errors();
  }

  @Test
  void oneFigureMayBeChangedAndTheSheetSaysSo() {
    Catalogue own =
        sound(
            HEAD
                + "alloys:\n"
                + "  - name: tin bronze\n"
                + "    surface tension: 1.0 N/m +- 0.2 N/m\n");
    var alloy = own.alloy("tin bronze");
    assertThat(alloy.surfaceTension().value()).isEqualTo(1.0);
    assertThat(alloy.surfaceTension().low()).isEqualTo(0.8);
    assertThat(alloy.surfaceTension().source().basis()).isEqualTo(Basis.TYPED);
    assertThat(alloy.surfaceTension().source().reference()).isEqualTo("typed in own.yaml, line 4");
    assertThat(alloy.latentHeat()).isEqualTo(Catalogue.builtIn().alloy("tin bronze").latentHeat());
    MaterialSheet.Row row =
        own.alloySheet("tin bronze").rows().stream()
            .filter(r -> r.property().equals("surface tension"))
            .findFirst()
            .orElseThrow();
    assertThat(row.value()).isEqualTo("1.0");
    assertThat(row.low()).isEqualTo("0.8");
    assertThat(row.high()).isEqualTo("1.2");
    assertThat(row.changed()).contains("own.yaml, line 4; the catalogue says 1.1 N/m");
    assertThat(Catalogue.builtIn().alloy("tin bronze").surfaceTension().value()).isEqualTo(1.1);
  }

  @Test
  void anAliasNamesTheSameMaterial() {
    Catalogue own = sound(HEAD + "alloys:\n  - name: C90700\n    viscosity: 6 mPa s\n");
    assertThat(own.alloyNames()).isEqualTo(Catalogue.builtIn().alloyNames());
    assertThat(own.alloy("tin bronze").viscosity().value()).isEqualTo(0.006);
  }

  @Test
  void aNewAlloyMayLeanOnAKnownOne() {
    Catalogue own =
        sound(
            HEAD
                + "alloys:\n"
                + "  - name: scrap bronze\n"
                + "    based on: tin bronze\n"
                + "    also called: [scrap]\n"
                + "    starts to freeze:\n"
                + "      value: 1810 degF\n"
                + "      between: 1800 degF and 1830 degF\n"
                + "      source: cooling log of my own\n");
    assertThat(own.alloyNames()).endsWith("scrap bronze");
    var alloy = own.alloy("SCRAP");
    assertThat(alloy.name()).isEqualTo("scrap bronze");
    assertThat(alloy.liquidus())
        .isEqualTo((1810.0 - 32.0) * 5.0 / 9.0 + 273.15, Offset.offset(1e-9));
    assertThat(alloy.freezing()).isInstanceOf(FreezingCurve.Scheil.class);
    assertThat(own.alloy("tin bronze")).isEqualTo(Catalogue.builtIn().alloy("tin bronze"));
  }

  @Test
  void theLeverRuleMayBeAskedFor() {
    Catalogue own =
        sound(
            HEAD
                + "alloys:\n"
                + "  - name: lever bronze\n"
                + "    based on: tin bronze\n"
                + "    freezing follows:\n"
                + "      way: lever rule\n"
                + "      pure metal freezes at: 1084.6 degC\n"
                + "      share kept in solid: 0.45\n");
    FreezingCurve curve = own.alloy("lever bronze").freezing();
    assertThat(curve)
        .isEqualTo(new FreezingCurve.Lever(999 + 273.15, 831 + 273.15, 1084.6 + 273.15, 0.45));
  }

  @Test
  void aSingleConductivityTakesThePlaceOfTheTable() {
    Catalogue own =
        sound(HEAD + "mould media:\n  - name: oil sand\n    conducts: 0.8 W/(m K) +- 25 %\n");
    MouldMedium sand = own.medium("oil-bonded sand", MetalKind.COPPER, Ramming.FIRM);
    assertThat(sand.conductivity().isConstant()).isTrue();
    assertThat(sand.conductivity().at(700.0)).isEqualTo(0.8);
    assertThat(sand.conductivityFactor().low()).isEqualTo(0.75, Offset.offset(1e-12));
    assertThat(
            Catalogue.builtIn()
                .medium("oil sand", MetalKind.COPPER, Ramming.FIRM)
                .conductivity()
                .isConstant())
        .isFalse();
  }

  @Test
  void commonFiguresMayBeChanged() {
    Catalogue own = sound(HEAD + "common figures:\n  crucible cools by: 4 degF/s\n");
    assertThat(own.commonFigures().coolingRate().value()).isEqualTo(4.0 * 5.0 / 9.0);
    assertThat(own.commonFigures().lipLoss().value()).isEqualTo(15.0);
    assertThat(own.commonSheet().rows())
        .anyMatch(r -> r.changed().orElse("").contains("the catalogue says 2 K/s"));
  }

  @Test
  void allThatIsWrongIsToldAtOnceWithLineAndRange() {
    List<Problem> problems =
        wrong(
            HEAD
                + "alloys:\n"
                + "  - name: tin bronze\n"
                + "    surface tenshun: 1 N/m\n"
                + "    viscosity: 5\n"
                + "    film factor: 9\n"
                + "    conducts liquid: 75 W/(m2 K)\n"
                + "    heat of freezing:\n"
                + "      value: 190 kJ/kg\n"
                + "      between: 195 kJ/kg and 200 kJ/kg\n"
                + "    oxide film: perhaps\n"
                + "  - name: mystery metal\n"
                + "    based on: tin brnze\n"
                + "mould medium:\n"
                + "  - name: mud\n");
    assertThat(problems).extracting(Problem::line).contains(4, 5, 6, 7, 10, 11, 14);
    assertThat(problems).allMatch(p -> p.file().equals("own.yaml"));
    assertThat(Told.message(at(problems, 4))).contains("surface tension");
    assertThat(Told.message(at(problems, 5))).contains("mPa s");
    assertThat(Told.message(at(problems, 6))).contains("1 to 5");
    assertThat(Told.message(at(problems, 10))).contains("between its two ends");
    assertThat(Told.message(at(problems, 11))).contains("yes, mild, no");
    assertThat(Told.message(at(problems, 14))).contains("mould media");
  }

  private static Problem at(List<Problem> problems, int line) {
    return problems.stream().filter(p -> p.line() == line).findFirst().orElseThrow();
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "ends freezing: 1005 degC|must end freezing at or below",
        "pours at: 900 degC|cannot be poured below",
        "surface tension: 0.1 N/m +- 0.2 N/m|may be 0 to 5 N/m",
        "viscosity: -1 mPa s|may be 0.01 to 100 mPa s",
        "density cold: 1e308 kg/m3|may be 500 to 25000 kg/m3",
        "density cold: NaN kg/m3|number is needed",
        "density cold: 8,77 g/cm3|8.77 g/cm3",
        "based on: unobtainium|not known",
        "based on: gunmetl|gunmetal"
      })
  void refusesWhatCannotBe(String line, String said) {
    List<Problem> problems = wrong(HEAD + "alloys:\n  - name: tin bronze\n    " + line + "\n");
    assertThat(problems).hasSize(1);
    assertThat(Told.message(problems.get(0))).contains(said);
    assertThat(problems.get(0).line()).isBetween(3, 4);
  }

  @Test
  void aNewAlloyThatLeansOnNothingIsToldWhatItLacks() {
    List<Problem> problems =
        wrong(HEAD + "alloys:\n  - name: mine\n    starts to freeze: 900 degC\n");
    assertThat(problems).hasSize(1);
    assertThat(Told.message(problems.get(0)))
        .contains("still needs")
        .contains("heat of freezing")
        .contains("based on")
        .doesNotContain("starts to freeze");
  }

  @Test
  void aRoundTripIsNamed() {
    List<Problem> problems =
        wrong(HEAD + "alloys:\n  - {name: a, based on: b}\n  - {name: b, based on: a}\n");
    assertThat(problems).isNotEmpty().allMatch(p -> Told.sentence(p).contains("round trip"));
  }

  @Test
  void oneMaterialTwiceInAFileIsRefused() {
    List<Problem> problems =
        wrong(
            HEAD
                + "alloys:\n"
                + "  - {name: tin bronze, viscosity: 5 mPa s}\n"
                + "  - {name: Tin-Bronze, viscosity: 6 mPa s}\n");
    assertThat(problems).hasSize(1);
    assertThat(Told.sentence(problems.get(0))).contains("appears twice").contains("line 3");
  }

  @Test
  void aFileOfAnotherKindIsRefused() {
    assertThat(Told.message(wrong("format: last inch case 1\n").get(0)))
        .contains("last inch materials 1");
    assertThat(Told.message(wrong("alloys: []\n").get(0)))
        .contains("format: last inch materials 1");
  }

  @Test
  void contactAcrossAGapCannotBeatContactWithLiquid() {
    List<Problem> problems =
        wrong(HEAD + "mould media:\n  - name: gypsum\n    contact across a gap: 1500 W/(m2 K)\n");
    assertThat(problems).hasSize(1);
    assertThat(Told.sentence(problems.get(0))).contains("cannot pull harder");
  }
}
