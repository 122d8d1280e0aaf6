package lastinch.validation.pour;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.DataOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.Properties;
import java.util.stream.Stream;
import lastinch.cases.catalogue.Catalogue;
import lastinch.cases.catalogue.CatalogueMaterials;
import lastinch.cases.plan.CaseReader;
import lastinch.cases.plan.ReadResult;
import lastinch.solver.casting.PourCase;
import lastinch.solver.filling.Phase;
import lastinch.solver.filling.PlaneSettings;
import lastinch.solver.filling.RunObserver;
import lastinch.solver.result.FrontTrack;
import lastinch.solver.result.PassageRecord;
import lastinch.solver.result.PourResult;
import lastinch.solver.run.DryPour;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Results of the demo and teaching plans, down to the last bit, by a digest that knows no names of
 * classes or components: code may be moved and renamed at will, and whoever changes a number says
 * so by changing its line in {@code result-bits.properties}. Keys that end in {@code @4mm} are
 * poured over the plane in squares of 4 mm.
 */
class ResultBitsPinnedValueTest {
  private static final double SQUARE = 4e-3;

  static Stream<String> plans() throws IOException {
    return pinned().stringPropertyNames().stream().sorted();
  }

  @ParameterizedTest
  @MethodSource("plans")
  void aPlanGivesTheSameBits(String key) throws Exception {
    assertThat(bits(poured(key))).isEqualTo(pinned().getProperty(key));
  }

  @Test
  void anotherLastBitWouldBeNoticed() throws Exception {
    PourResult result = poured("strip-low-head");
    byte[] whole = written(result);
    whole[7] ^= 1;
    assertThat(digest(whole)).isNotEqualTo(digest(written(result)));
    assertThat(plans()).hasSizeGreaterThan(20);
  }

  private static Properties pinned() throws IOException {
    Properties pinned = new Properties();
    try (InputStream in =
        ResultBitsPinnedValueTest.class.getResourceAsStream("result-bits.properties")) {
      pinned.load(in);
    }
    return pinned;
  }

  private static PourResult poured(String key) {
    String name = key.replace("@4mm", "");
    ReadResult read =
        CaseReader.read(
            Path.of("..", "cases", "demo", name + ".yaml"),
            new CatalogueMaterials(Catalogue.builtIn()));
    assertThat(read).isInstanceOf(ReadResult.Sound.class);
    PourCase job = ((ReadResult.Sound) read).plan().pourCase();
    return name.equals(key)
        ? DryPour.run(job, RunObserver.NONE, () -> false)
        : DryPour.run(
                DryPour.plane(PlaneSettings.squares(SQUARE)),
                job,
                Phase.FILLING,
                RunObserver.NONE,
                () -> false)
            .filling();
  }

  private static String bits(PourResult result) throws Exception {
    return digest(written(result));
  }

  private static String digest(byte[] bytes) throws NoSuchAlgorithmException {
    return HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(bytes), 0, 8);
  }

  private static byte[] written(PourResult result) throws IOException {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    try (DataOutputStream out = new DataOutputStream(bytes)) {
      out.writeDouble(result.filledFraction());
      out.writeDouble(result.reach());
      out.writeDouble(result.sprueStanding());
      out.writeDouble(result.massToRim());
      for (PassageRecord p : result.passages()) {
        passage(out, p);
      }
      FrontTrack track = result.track();
      for (int i = 0; i < track.size(); i++) {
        out.writeDouble(track.time(i));
        out.writeDouble(track.at(i));
        out.writeDouble(track.temperature(i));
      }
      // records print their doubles so that no two differ alike; their names are left out
      String records =
          ""
              + result.outcome()
              + result.stops()
              + result.edges()
              + result.gates()
              + result.meetings()
              + result.laps()
              + result.margin()
              + result.ledger()
              + result.accounts();
      out.write(records.replaceAll("[A-Za-z]+=|[A-Z][A-Za-z]*(?=\\[)", "").getBytes(UTF_8));
    }
    return bytes.toByteArray();
  }

  private static void passage(DataOutputStream out, PassageRecord p) throws IOException {
    for (int i = 0; i < p.size(); i++) {
      out.writeDouble(p.arrivalTime(i));
      out.writeDouble(p.arrivalTemperature(i));
      out.writeDouble(p.arrivalSpeed(i));
      out.writeDouble(p.freezeTime(i));
      out.writeDouble(p.finalTemperature(i));
      out.writeDouble(p.finalSolid(i));
      out.writeDouble(p.lapIndex(i));
    }
  }
}
