package lastinch.ui.words;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import lastinch.cases.catalogue.Catalogue;
import lastinch.cases.catalogue.CatalogueMaterials;
import lastinch.cases.plan.Materials;
import lastinch.solver.casting.PourCase;
import lastinch.solver.levers.Lever;
import lastinch.solver.levers.Levers;
import lastinch.solver.levers.Marks;
import lastinch.solver.levers.Owned;
import lastinch.solver.material.Band;
import lastinch.solver.uncertainty.UncertainInput;
import lastinch.ui.Studied;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** Every metal in every mould is told with its cautions, and so is every change that adds one. */
class CareTest {
  private static final double ZERO_C = 273.15;
  private static final Sentences SENTENCES = Sentences.english();
  private static final Care CARE = new Care(SENTENCES);
  private static final Materials MATERIALS = new CatalogueMaterials(Catalogue.builtIn());
  private static final PourCase FLAT = Studied.plan("feather-sand-flat.yaml").pourCase();

  static Stream<Arguments> everyMetalInEveryMould() {
    return MATERIALS.alloyNames().stream()
        .flatMap(a -> Catalogue.builtIn().mediumNames().stream().map(m -> Arguments.of(a, m)));
  }

  /** The flat feather of another metal, in another mould, both as hot as told [degC]. */
  private static PourCase job(String alloy, String medium, double metal, double mould) {
    return FLAT.withMould(
            FLAT.mould()
                .withMedium(MATERIALS.medium(medium, Materials.Make.NOT_SAID, alloy).orElseThrow())
                .withTemperature(Band.typed(ZERO_C + mould)))
        .withMetal(
            FLAT.metal()
                .withAlloy(MATERIALS.alloy(alloy).orElseThrow())
                .withReading(Band.typed(ZERO_C + metal)));
  }

  private static String brief(Caution caution) {
    return SENTENCES.say("care." + caution.name() + ".short");
  }

  @ParameterizedTest
  @MethodSource("everyMetalInEveryMould")
  void threeLinesHoldEveryCautionThatMayNotBeMissing(String alloy, String medium) {
    for (double mould : List.of(20.0, 2000.0 - ZERO_C)) {
      PourCase job = job(alloy, medium, 1500.0, mould);
      Page page = new Page();
      page.entry(SENTENCES.say("label.care"), CARE.brief(job));
      assertThat(page.lines()).hasSizeLessThanOrEqualTo(Care.MOST_LINES);
      for (Caution caution : Caution.of(job)) {
        if (Caution.ALWAYS_PRINTED.contains(caution)) {
          assertThat(CARE.brief(job)).contains(brief(caution));
        }
        if (medium.equals("gypsum investment") && caution == Caution.MOULD_TOO_HOT) {
          assertThat(CARE.brief(job)).contains(brief(caution));
        }
        assertThat(CARE.all(job)).contains(SENTENCES.say("care." + caution.name()));
      }
    }
  }

  @Test
  void cautionsFollowTheMaterialsAndNotTheirNames() {
    Map<String, List<Caution>> fumes = new TreeMap<>();
    for (String alloy : MATERIALS.alloyNames()) {
      List<Caution> of = Caution.of(job(alloy, "bonded sand", 400, 20));
      List<Caution> told =
          Stream.of(Caution.LEAD_FUME, Caution.ZINC_FUME).filter(of::contains).toList();
      if (!told.isEmpty()) {
        fumes.put(alloy, told);
      }
    }
    List<Caution> zinc = List.of(Caution.ZINC_FUME);
    List<Caution> both = List.of(Caution.LEAD_FUME, Caution.ZINC_FUME);
    assertThat(fumes)
        .containsExactlyInAnyOrderEntriesOf(
            Map.of(
                "coin alloy", zinc,
                "gunmetal", zinc,
                "pure zinc", zinc,
                "red brass", both,
                "yellow brass", both));
  }

  @Test
  void eachMouldBringsItsOwn() {
    assertThat(Caution.of(job("tin bronze", "green sand", 1100, 20)))
        .contains(Caution.STEAM, Caution.SILICA_DUST)
        .doesNotContain(Caution.METAL_MOULD, Caution.SULPHUR_FUME, Caution.QUENCH);
    assertThat(Caution.of(job("tin bronze", "steel", 1100, 20)))
        .contains(Caution.METAL_MOULD)
        .doesNotContain(Caution.STEAM, Caution.SILICA_DUST);
    assertThat(Caution.of(job("tin bronze", "gypsum investment", 1100, 700)))
        .contains(Caution.SULPHUR_FUME, Caution.HOT_MOULD, Caution.BURNOUT_FUME, Caution.QUENCH)
        .doesNotContain(Caution.MOULD_TOO_HOT, Caution.METAL_TOO_HOT);
    assertThat(Caution.of(job("tin bronze", "gypsum investment", 1300, 800)))
        .contains(Caution.MOULD_TOO_HOT, Caution.METAL_TOO_HOT);
  }

  @Test
  void aChangeTellsWhatItAddsAndWhatItMakesWorse() {
    PourCase bronze = job("tin bronze", "bonded sand", 1050, 20);
    PourCase brass = job("yellow brass", "bonded sand", 1050, 20);
    assertThat(CARE.change(bronze, bronze)).isEmpty();
    assertThat(CARE.change(bronze, job("tin bronze", "bonded sand", 1100, 20))).isEmpty();
    assertThat(CARE.change(bronze, brass))
        .hasValueSatisfying(
            s -> assertThat(s).contains(brief(Caution.ZINC_FUME), brief(Caution.LEAD_FUME)));
    assertThat(CARE.change(brass, bronze)).isEmpty();
    assertThat(CARE.change(brass, job("yellow brass", "bonded sand", 1100, 20)))
        .hasValueSatisfying(s -> assertThat(s).contains(SENTENCES.say("care.ZINC_FUME.more")));
    assertThat(CARE.change(brass, job("yellow brass", "bonded sand", 1000, 20))).isEmpty();
    PourCase flask = job("tin bronze", "gypsum investment", 1050, 600);
    assertThat(CARE.change(flask, job("tin bronze", "gypsum investment", 1050, 800)))
        .hasValueSatisfying(
            s ->
                assertThat(s)
                    .contains(
                        brief(Caution.MOULD_TOO_HOT), SENTENCES.say("care.SULPHUR_FUME.more")));
  }

  @Test
  void dampSandSaysThatItsWaterIsNotCalculated() {
    assertThat(CARE.leftOut(job("tin bronze", "green sand", 1100, 20)))
        .isEqualTo(SENTENCES.say("left.damp"))
        .contains("water in the sand");
    assertThat(CARE.damp(job("tin bronze", "green sand", 1100, 20))).isPresent();
    assertThat(CARE.damp(job("tin bronze", "bonded sand", 1100, 20))).isEmpty();
    assertThat(CARE.leftOut(job("tin bronze", "bonded sand", 1100, 20)))
        .isEqualTo(SENTENCES.say("left.always"));
  }

  @Test
  void everyLeverThatHeatsZincOrGypsumCarriesItsCautionBeside() {
    PourCase brass = job("yellow brass", "bonded sand", 1050, 20);
    Lever reading = lever(brass, "reading");
    Page page = new Page();
    CARE.beside(page, "  ", brass, reading, reading.now() + 50.0);
    assertThat(flowing(page)).contains(SENTENCES.say("care.ZINC_FUME.more"));
    Page cooler = new Page();
    CARE.beside(cooler, "  ", brass, reading, reading.now() - 10.0);
    assertThat(cooler.lines()).isEmpty();
    PourCase flask = Studied.plan("feather-investment-hot.yaml").pourCase();
    Lever mould = lever(flask, "mouldTemperature");
    Page hotter = new Page();
    CARE.beside(hotter, "  ", flask, mould, mould.practical().high().value());
    assertThat(flowing(hotter)).contains(SENTENCES.say("care.SULPHUR_FUME.more"));
  }

  private static String flowing(Page page) {
    return String.join(" ", page.lines()).replace('\u00a0', ' ').replaceAll(" +", " ");
  }

  private static Lever lever(PourCase job, String key) {
    // marks of a thermocouple, a ruler, calipers: 5 K, 1 mm, 0.1 mm
    Owned nothing = Owned.nothing(new Marks(ZERO_C, 5.0, 1e-3, 1e-4));
    return Levers.find(Levers.of(job, nothing), key, "").orElseThrow();
  }

  @Test
  void aTrialStripIsMadeTheWayTheMouldIs() {
    PourCase flask = Studied.plan("feather-investment-hot.yaml").pourCase();
    for (UncertainInput unknown :
        List.of(UncertainInput.CONTACT_LIQUID, UncertainInput.FLOW_STOP)) {
      assertThat(Measuring.how(SENTENCES, unknown, FLAT).orElseThrow()).startsWith("Ram a strip");
      assertThat(Measuring.how(SENTENCES, unknown, flask).orElseThrow())
          .startsWith("Invest a strip")
          .doesNotContain("400 mm");
    }
  }
}
