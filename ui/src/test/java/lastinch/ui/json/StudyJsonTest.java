package lastinch.ui.json;

import static org.assertj.core.api.Assertions.assertThat;

import com.networknt.schema.InputFormat;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.Optional;
import lastinch.cases.plan.Plan;
import lastinch.solver.diagnosis.HeatLossBudget;
import lastinch.solver.filling.RunObserver;
import lastinch.solver.result.PourResult;
import lastinch.solver.run.DryPour;
import lastinch.ui.Studied;
import lastinch.ui.words.pour.Explained;
import lastinch.ui.words.study.HowPoured;
import org.junit.jupiter.api.Test;

/** Answers of studies obey the schemas that document them. */
class StudyJsonTest {
  private static final Plan FLAT = Studied.plan("feather-sand-flat.yaml");

  @Test
  void smallestChangeObeysItsSchemaWhateverTheOutcome() throws IOException {
    Schema schema = schema("least-schema.json");
    String enough = least(0.6, 0.08, 0.2);
    String already = least(0.9, 0.08, 0.2);
    String never = least(-0.1, 0.001, 0.2);
    for (String json : new String[] {enough, already, never}) {
      assertThat(schema.validate(json, InputFormat.JSON)).isEmpty();
    }
    assertThat(enough).contains("\"outcome\": \"enough\"").contains("\"already\": false");
    assertThat(already).contains("\"outcome\": \"maySlip\"").contains("\"already\": true");
    assertThat(never).contains("\"pick\": null");
  }

  @Test
  void valuesAreInTheUnitTheyName() {
    // 0.7 - 0.08 s = 0.2 at 6.25 s; the plan pours in 6 s and has 0.22
    assertThat(least(0.65, 0.08, 0.2))
        .contains("\"lever\": \"emptiesIn\"")
        .contains("\"unit\": \"s\"")
        .contains("\"now\": 6,")
        .contains("\"value\": 5.6,");
  }

  @Test
  void roomObeysItsSchema() throws IOException {
    String json =
        RoomJson.of(
            FLAT,
            "feather.yaml",
            Studied.room(FLAT, j -> 0.1 * (5.0 - Studied.seconds(j))),
            HowPoured.ALONG);
    assertThat(schema("room-schema.json").validate(json, InputFormat.JSON)).isEmpty();
    assertThat(json).contains("\"now\": 1150,").contains("\"highReason\": \"metalGasses\"");
  }

  @Test
  void comparisonObeysItsSchema() throws IOException {
    String json =
        CompareJson.of(
            Studied.compared(
                j -> 0.1 * (5.0 - Studied.seconds(j)),
                "feather-sand-flat.yaml",
                "feather-sand-tilted.yaml",
                "feather-investment-hot.yaml"),
            HowPoured.ALONG);
    assertThat(schema("compare-schema.json").validate(json, InputFormat.JSON)).isEmpty();
    assertThat(json).contains("\"pick\": \"B\"").contains("\"word\": \"mould/stands\"");
  }

  @Test
  void heatAccountAndChangesObeyTheirSchema() throws IOException {
    PourResult result = DryPour.run(FLAT.pourCase(), RunObserver.NONE, () -> false);
    Explained why =
        new Explained(
            FLAT,
            "feather.yaml",
            result,
            HeatLossBudget.of(FLAT.pourCase(), result),
            Studied.least(FLAT, j -> 0.6 - 0.08 * Studied.seconds(j), 0.2));
    String json = WhyJson.of(why, HowPoured.square(4e-3));
    assertThat(json).contains("\"solver\": \"plane\"").contains("\"square_mm\": 4");
    Schema schema = schema("why-schema.json");
    assertThat(schema.validate(json, InputFormat.JSON)).isEmpty();
    assertThat(json)
        .contains("\"kind\": \"fromBehind\"")
        .contains("\"channel\": \"runner\"")
        .contains("\"lever\": \"emptiesIn\"")
        .contains("\"outcome\": \"enough\"");
    assertThat(schema.validate(json.replace("\"changes\"", "\"levers\""), InputFormat.JSON))
        .isNotEmpty();
  }

  @Test
  void chanceObeysItsSchema() throws IOException {
    Schema schema = schema("sure-schema.json");
    for (boolean thorough : new boolean[] {false, true}) {
      String json =
          SureJson.of(
              FLAT,
              "feather.yaml",
              Studied.sure(FLAT, j -> 0.1 * (6.0 - Studied.seconds(j)), thorough),
              HowPoured.ALONG);
      assertThat(schema.validate(json, InputFormat.JSON)).isEmpty();
      assertThat(json)
          .contains("\"pours\": 256")
          .contains("\"measureFirst\": \"pourSeconds\"")
          .contains("\"missing_mm\"");
      assertThat(json.contains("\"together\": null")).isEqualTo(!thorough);
      assertThat(schema.validate(json.replace("\"share\"", "\"part\""), InputFormat.JSON))
          .isNotEmpty();
    }
  }

  @Test
  void causesObeyTheirSchema() throws IOException {
    Schema schema = schema("found-schema.json");
    String json =
        FoundJson.of(
            FLAT,
            "feather.yaml",
            Studied.blame(FLAT, j -> -0.1 + 0.1 * (6.0 - Studied.seconds(j)), 0.18),
            HowPoured.square(2e-3));
    assertThat(schema.validate(json, InputFormat.JSON)).isEmpty();
    assertThat(json)
        .contains("\"cause\": \"pour\"")
        .contains("\"planned\": 6,")
        .contains("\"explained\": true")
        .contains("\"lips\": [");
    assertThat(schema.validate(json.replace("\"misfit\"", "\"fit\""), InputFormat.JSON))
        .isNotEmpty();
  }

  @Test
  void layoutsObeyTheirSchema() throws IOException {
    Schema schema = schema("gates-schema.json");
    String json =
        GatesJson.of(
            FLAT,
            "feather.yaml",
            Studied.gates(FLAT, j -> 0.5 - 0.1 * j.gating().gates().size()),
            HowPoured.ALONG);
    assertThat(schema.validate(json, InputFormat.JSON)).isEmpty();
    assertThat(json).contains("\"loses\": \"best\"").contains("\"loses\": \"lessHeat\"");
    assertThat(schema.validate(json.replace("\"wide_mm\"", "\"wide\""), InputFormat.JSON))
        .isNotEmpty();
  }

  @Test
  void schemasRefuseUnknownKeys() throws IOException {
    String good = least(0.6, 0.08, 0.2);
    Schema schema = schema("least-schema.json");
    assertThat(schema.validate(good.replace("\"justShort\"", "\"almost\""), InputFormat.JSON))
        .isNotEmpty();
    assertThat(schema.validate(good.replace("noHelp", "useless"), InputFormat.JSON)).isNotEmpty();
  }

  private static String least(double most, double perSecond, double spare) {
    return LeastJson.of(
        FLAT,
        "feather.yaml",
        Studied.least(FLAT, j -> most - perSecond * Studied.seconds(j), spare),
        Optional.empty(),
        HowPoured.ALONG);
  }

  private static Schema schema(String name) throws IOException {
    try (InputStream in = LeastJson.class.getResourceAsStream(name)) {
      return SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
          .getSchema(new String(in.readAllBytes(), StandardCharsets.UTF_8), InputFormat.JSON);
    }
  }
}
