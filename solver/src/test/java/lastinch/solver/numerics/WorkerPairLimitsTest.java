package lastinch.solver.numerics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What a team does with work: all of it, once, and what goes wrong in a part is told. */
class WorkerPairLimitsTest {
  private static final int TURNS = 20_000;

  @ParameterizedTest
  @ValueSource(ints = {1, 2, 5})
  void everyPartIsDoneOnceEveryTurn(int threads) {
    int[] done = new int[2];
    int[] seen = new int[2];
    try (WorkerPair team = WorkerPair.of(threads)) {
      for (int turn = 1; turn <= TURNS; turn++) {
        team.run(part -> done[part]++);
        // each part has to see what both did in the turn before
        int want = turn;
        team.run(part -> seen[part] += done[0] == want && done[1] == want ? 1 : 0);
      }
    }
    assertThat(done).containsOnly(TURNS);
    assertThat(seen).containsOnly(TURNS);
  }

  @ParameterizedTest
  @ValueSource(ints = {1, 2})
  void whatOnePartThrowsIsThrownAndTheTeamGoesOn(int threads) {
    int[] done = new int[2];
    try (WorkerPair team = WorkerPair.of(threads)) {
      for (int bad = 0; bad < 2; bad++) {
        int thrower = bad;
        for (int turn = 0; turn < 50; turn++) {
          assertThatThrownBy(() -> team.run(part -> throwIf(part == thrower)))
              .isInstanceOf(IllegalStateException.class)
              .hasMessage("part");
        }
      }
      Arrays.fill(done, 0);
      team.run(part -> done[part]++);
    }
    assertThat(done).containsOnly(1);
  }

  private static void throwIf(boolean wanted) {
    if (wanted) {
      throw new IllegalStateException("part");
    }
  }

  @Test
  void theWorkerGoesHome() throws InterruptedException {
    List<Thread> before = workers();
    List<Thread> during;
    try (WorkerPair team = WorkerPair.of(2)) {
      team.run(part -> {});
      during = workers();
    }
    during.removeAll(before);
    assertThat(during).isNotEmpty();
    for (Thread worker : during) {
      worker.join(5000);
      assertThat(worker.isAlive()).isFalse();
    }
  }

  private static List<Thread> workers() {
    List<Thread> found = new ArrayList<>(Thread.getAllStackTraces().keySet());
    found.removeIf(t -> !t.getName().equals("second hand of a run"));
    return found;
  }
}
