package lastinch.solver.network;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.sun.management.ThreadMXBean;
import java.lang.management.ManagementFactory;
import java.nio.ByteBuffer;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import lastinch.solver.casting.Orientation;
import lastinch.solver.casting.Pour;
import lastinch.solver.casting.PourCase;
import lastinch.solver.filling.RunObserver;
import lastinch.solver.material.Band;
import lastinch.solver.material.Curve;
import lastinch.solver.result.FlowLimit;
import lastinch.solver.result.Outcome;
import lastinch.solver.result.PassageRecord;
import lastinch.solver.result.PourResult;
import lastinch.solver.result.StopReason;
import lastinch.solver.run.DryPour;
import lastinch.solver.run.SampleFoundry;
import lastinch.solver.run.SampleJob;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What must hold of whole runs: repeatable, unwatched, lean, and sensible at the limits. */
class WholeRunLimitsTest {
  private static PourResult pour(PourCase job) {
    return DryPour.run(job, RunObserver.NONE, () -> false);
  }

  private static String digest(PourResult r) throws NoSuchAlgorithmException {
    MessageDigest sha = MessageDigest.getInstance("SHA-256");
    for (PassageRecord p : r.passages()) {
      for (int i = 0; i < p.size(); i++) {
        add(sha, p.arrivalTime(i));
        add(sha, p.arrivalTemperature(i));
        add(sha, p.finalTemperature(i));
        add(sha, p.finalSolid(i));
        add(sha, p.lapIndex(i));
      }
    }
    add(sha, r.outcome().time());
    add(sha, r.margin().heat());
    return HexFormat.of().formatHex(sha.digest());
  }

  private static void add(MessageDigest sha, double value) {
    sha.update(ByteBuffer.allocate(8).putLong(Double.doubleToRawLongBits(value)).array());
  }

  @Test
  void sameCaseGivesTheSameBitsWatchedOrNot() throws NoSuchAlgorithmException {
    PourCase job = SampleJob.featherInSand(6.0).build();
    double[] seen = {0.0};
    String first = digest(pour(job));
    String again = digest(DryPour.run(job, (time, filled) -> seen[0] += filled, () -> false));
    assertThat(again).isEqualTo(first);
    assertThat(seen[0]).isPositive();
    assertThat(digest(pour(SampleJob.featherInSand(6.001).build()))).isNotEqualTo(first);
  }

  @ParameterizedTest
  @ValueSource(doubles = {3.0, 6.0})
  void aRunAllocatesNextToNothingEventsIncluded(double seconds) {
    ThreadMXBean threads = (ThreadMXBean) ManagementFactory.getThreadMXBean();
    long id = Thread.currentThread().getId();
    long bytes = 0;
    for (int k = 0; k < 20; k++) {
      NetworkRun run = new NetworkRun(SampleJob.featherInSand(seconds).build());
      long before = threads.getThreadAllocatedBytes(id);
      while (run.ending.outcome().isEmpty()) {
        run.step();
      }
      bytes = threads.getThreadAllocatedBytes(id) - before;
    }
    // the outcome itself and its wrapper; one object a step would be 20 kB and more
    assertThat(bytes).isLessThan(4096L);
  }

  @Test
  void stoppedOnRequestItKeepsWhatThereIs() {
    int[] polls = {0};
    PourResult r =
        DryPour.run(SampleJob.featherInSand(6.0).build(), RunObserver.NONE, () -> polls[0]++ > 400);
    assertThat(r.outcome()).isInstanceOf(Outcome.Cancelled.class);
    assertThat(r.accounts().poured()).isPositive();
    assertThat(Math.abs(r.accounts().metalError())).isLessThan(1e-10);
  }

  @Test
  void noTiltIsFlat() throws NoSuchAlgorithmException {
    PourCase flat = SampleJob.featherInSand(6.0).build();
    PourCase tilted = SampleJob.featherInSand(6.0).attitude(Orientation.tilted(0.0)).build();
    assertThat(digest(pour(tilted))).isEqualTo(digest(pour(flat)));
  }

  @Test
  void aMouldAsHotAsTheMetalNeverStopsIt() {
    PourResult r = pour(SampleJob.featherInSand(9.0).mouldAt(1050.0 + SampleJob.ZERO).build());
    assertThat(r.outcome()).isInstanceOf(Outcome.Filled.class);
    assertThat(r.margin().heat()).isGreaterThan(0.9);
  }

  @Test
  void contactWithAnOpenGapDoesNotMatterWhileNothingHasFrozenSoFar() {
    // whole sections: flow stops at 0.3 solid, the skin frees itself from 0.4 on
    SampleJob.Options whole = SampleJob.Options.ordinary().wholeSections();
    SampleJob feather = SampleJob.featherInSand(7.0).checking(whole);
    PourResult tight = pour(feather.medium(SampleFoundry.sand(1200.0, 20.0)).build());
    PourResult wide = pour(feather.medium(SampleFoundry.sand(1200.0, 600.0)).build());
    assertThat(tight.outcome()).isInstanceOf(Outcome.Misrun.class);
    assertThat(wide.reach()).isCloseTo(tight.reach(), within(1e-9));
  }

  @Test
  void withTooLittleMetalItSaysSo() {
    PourResult r =
        pour(SampleJob.featherInSand(1.0).melted(0.33).mouldAt(1000.0 + SampleJob.ZERO).build());
    assertThat(r.outcome()).isInstanceOf(Outcome.Misrun.class);
    assertThat(r.stops().get(0).reason()).isEqualTo(StopReason.NO_METAL);
  }

  @Test
  void aMeasuredPourFasterThanTheSprueRunsOverTheRim() {
    Curve flood = Curve.of(new double[] {0.0, 10.0}, new double[] {3.0, 3.0});
    PourResult r =
        pour(SampleJob.featherInSand(3.0).melted(6.0).pour(new Pour.ByCurve(flood)).build());
    assertThat(r.accounts().spilled()).isGreaterThan(0.05);
    assertThat(Math.abs(r.accounts().metalError())).isLessThan(1e-10);
    PourResult careful =
        pour(
            SampleJob.featherInSand(3.0)
                .melted(6.0)
                .pour(new Pour.Empties(Band.typed(2.0)))
                .build());
    assertThat(careful.accounts().spilled()).isEqualTo(0.0);
  }

  @Test
  void whileTheHandHoldsThePourBackATallerSprueAddsLittle() {
    PourResult low = pour(SampleJob.featherInSand(7.0).build());
    PourResult tall = pour(SampleJob.featherInSand(7.0).sprue(0.24, 0.018, 0.014).build());
    assertThat(low.flowLimitedBy()).isEqualTo(FlowLimit.HAND);
    // the longer fall costs some heat; twice the head through a full sprue would run 40 % faster
    assertThat(tall.reach()).isCloseTo(low.reach(), within(0.1 * low.reach()));
  }
}
