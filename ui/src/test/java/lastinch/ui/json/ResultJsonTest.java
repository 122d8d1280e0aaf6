package lastinch.ui.json;

import static org.assertj.core.api.Assertions.assertThat;

import com.networknt.schema.InputFormat;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import lastinch.solver.casting.Checking;
import lastinch.solver.result.PourResult;
import lastinch.solver.result.StopReason;
import lastinch.solver.result.ToppedUp;
import lastinch.solver.uncertainty.UncertainInput;
import lastinch.ui.HandMade;
import lastinch.ui.HandMadeBands;
import lastinch.ui.words.PouredPlan;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;

class ResultJsonTest {
  static Stream<PourResult> results() {
    Stream<PourResult> stops =
        Arrays.stream(StopReason.values()).map(reason -> HandMade.stopped(reason, 0.18));
    return Stream.concat(
        stops,
        Stream.of(
            HandMade.slush(),
            HandMade.stoppedInGate(),
            HandMade.filled(0.2, HandMade.everyFinding()),
            HandMade.roundedEdges(),
            HandMade.cancelled(),
            HandMade.brokeDown()));
  }

  @ParameterizedTest
  @MethodSource("results")
  void everyEndingObeysTheSchema(PourResult result) throws IOException {
    assertThat(schema().validate(ResultJson.of(HandMade.plan(result)), InputFormat.JSON)).isEmpty();
  }

  @Test
  void theStateAfterToppingUpObeysTheSchema() throws IOException {
    ToppedUp stood =
        new ToppedUp(
            5.4,
            ToppedUp.Ended.AT_REST,
            OptionalDouble.of(5.3),
            0.03,
            0.12,
            List.of(new ToppedUp.Level("boss feeder", 0.045, 0.9)),
            0.98,
            0.12,
            0.0);
    PouredPlan plan = HandMade.plan(HandMade.slush()).with(Optional.of(stood));
    String json = ResultJson.of(plan);
    assertThat(schema().validate(json, InputFormat.JSON)).isEmpty();
    assertThat(json.replaceAll("\\s+", " "))
        .contains("\"cupFullAt_s\": 5.3")
        .contains("\"left_kg\": 0.12")
        .contains("{ \"name\": \"boss feeder\", \"height_mm\": 45");
  }

  @Test
  void otherDaysAndUnknownsObeyTheSchema() throws IOException {
    PouredPlan plan =
        HandMadeBands.plan(
            HandMade.slush(), HandMade.stopped(StopReason.SLUSH, 0.09), HandMade.roundedEdges());
    String json = ResultJson.of(plan);
    assertThat(schema().validate(json, InputFormat.JSON)).isEmpty();
    assertThat(json)
        .contains("\"verdict\": \"mayStopShort\"")
        .contains("\"badPour\"")
        .contains("\"goodPour\"")
        .contains("\"weakest\": \"contactLiquid\"")
        .contains("\"measureFirst\": \"pourSeconds\"");
    assertThat(schema().validate(json.replace("contactLiquid", "luck"), InputFormat.JSON))
        .isNotEmpty();
  }

  @ParameterizedTest
  @EnumSource(UncertainInput.class)
  void everyUnknownIsInTheSchema(UncertainInput unknown) throws IOException {
    PouredPlan plan = HandMadeBands.plan(HandMade.slush(), HandMade.slush(), unknown);
    assertThat(schema().validate(ResultJson.of(plan), InputFormat.JSON)).isEmpty();
  }

  @Test
  void theSchemaRefusesUnknownAndMissingKeys() throws IOException {
    String good = ResultJson.of(HandMade.plan(HandMade.slush()));
    assertThat(schema().validate(good.replace("\"reason\"", "\"why\""), InputFormat.JSON))
        .hasSizeGreaterThanOrEqualTo(2);
    assertThat(schema().validate(good.replace("slush", "tired"), InputFormat.JSON)).hasSize(1);
  }

  @Test
  void checkingOptionsAreMarked() throws IOException {
    Checking wet = Checking.NONE.with(Checking.Figure.CELL_LENGTH, 5e-3);
    PouredPlan plan = HandMade.plan(HandMade.pourCase(wet), HandMade.slush());
    String json = ResultJson.of(plan);
    assertThat(json).contains("\"checking\": true");
    assertThat(schema().validate(json, InputFormat.JSON)).isEmpty();
    assertThat(ResultJson.of(HandMade.plan(HandMade.slush()))).doesNotContain("checking");
  }

  @Test
  void figuresAreInTheUnitsOfTheirNames() {
    assertThat(ResultJson.of(HandMade.plan(HandMade.slush())))
        .contains("\"at_mm\": 214,")
        .contains("\"short_mm\": 106,")
        .contains("\"temperature_degC\": 950,")
        .contains("\"entered_degC\": 1098,")
        .contains("\"distance_mm\": -106,")
        .contains("\"froze_s\": null,");
    // a gate into the boss lies 40 mm before the first station
    assertThat(ResultJson.of(HandMade.plan(HandMade.slush())).replaceAll("\\s+", " "))
        .contains("\"name\": \"end gate\", \"at_mm\": -40,");
  }

  @Test
  void valuesOfAnUnknownAreInTheUnitBesideThem() {
    // each is at its 1 of the SI unit
    assertThat(unknown(UncertainInput.READING)).contains("\"unit\": \"degC\", \"best\": -272.15,");
    assertThat(unknown(UncertainInput.POUR_SECONDS)).contains("\"unit\": \"s\", \"best\": 1,");
    assertThat(unknown(UncertainInput.PARTING_CRACK)).contains("\"unit\": \"mm\", \"best\": 1000,");
    assertThat(unknown(UncertainInput.FLOW_STOP)).contains("\"unit\": \"%\", \"best\": 100,");
  }

  private static String unknown(UncertainInput unknown) {
    PouredPlan plan = HandMadeBands.plan(HandMade.slush(), HandMade.slush(), unknown);
    return ResultJson.of(plan).replaceAll("\\s+", " ");
  }

  @Test
  void foreignLettersAndQuotesAreEscaped() {
    JsonText json = new JsonText();
    json.open('{').put("title", "Federa\u00e7\u00e3o \"A\"\n\\").close('}');
    assertThat(json.text()).contains("\"Federa\\u00e7\\u00e3o \\\"A\\\"\\u000a\\\\\"");
  }

  @Test
  void numbersNeverDependOnTheMachine() {
    JsonText json = new JsonText();
    json.open('{')
        .put("small", 1.23456e-13, 3)
        .put("whole", 1800.0, 6)
        .put("none", Double.NaN, 3)
        .put("zero", -0.0, 3)
        .close('}');
    assertThat(json.text())
        .contains("\"small\": 1.23E-13")
        .contains("\"whole\": 1800,")
        .contains("\"none\": null")
        .contains("\"zero\": 0");
  }

  private static Schema schema() throws IOException {
    try (InputStream in = ResultJson.class.getResourceAsStream("result-schema.json")) {
      return SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
          .getSchema(new String(in.readAllBytes(), StandardCharsets.UTF_8), InputFormat.JSON);
    }
  }
}
