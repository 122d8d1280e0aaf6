package lastinch.ui.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.File;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.DisabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Ctrl-C in the middle of a pour. */
class InterruptionTest {
  /** Starts a child with the usual ear for Ctrl-C, whatever its parent does (GNU coreutils). */
  private static final List<String> HEARS_CTRL_C = List.of("env", "--default-signal=INT");

  @TempDir Path folder;

  @ParameterizedTest
  @ValueSource(strings = {"pour", "why", "compare"})
  @DisabledOnOs(OS.WINDOWS) // no signal can be sent to a process there
  void aRealCtrlCEndsWith130AndLeavesNoFile(String command)
      throws IOException, InterruptedException {
    Path begun = folder.resolve("begun");
    Path plan = folder.resolve("leaf.yaml");
    Files.writeString(
        plan, NewCommand.starter("leaf").replace("{title}", "Leaf").replace("{file}", "leaf.yaml"));
    Path answers = folder.resolve("answers.log");
    List<String> line = new ArrayList<>(ctrlCIsIgnored() ? HEARS_CTRL_C : List.of());
    line.addAll(
        List.of(
            Path.of(System.getProperty("java.home"), "bin", "java").toString(),
            "-cp",
            System.getProperty("surefire.test.class.path", System.getProperty("java.class.path")),
            EndlessPour.class.getName(),
            begun.toString(),
            command,
            plan.toString()));
    if (command.equals("compare")) {
      line.add(plan.toString());
    }
    line.addAll(List.of("--out", folder.resolve("pictures").toString()));
    Process process =
        new ProcessBuilder(line).redirectErrorStream(true).redirectOutput(answers.toFile()).start();
    try {
      while (!Files.exists(begun) && process.isAlive()) {
        Thread.sleep(20);
      }
      assertThat(process.isAlive()).as(Files.readString(answers)).isTrue();
      new ProcessBuilder("kill", "-INT", Long.toString(process.pid()))
          .redirectOutput(new File("/dev/null"))
          .start()
          .waitFor();
      assertThat(process.waitFor(2, TimeUnit.MINUTES)).as("ended at all").isTrue();
      assertThat(process.exitValue()).isEqualTo(Exit.CANCELLED);
    } finally {
      process.destroyForcibly();
    }
    if (command.equals("pour")) {
      assertThat(Files.readString(answers, StandardCharsets.US_ASCII)).contains("STOPPED BY YOU");
    }
    try (Stream<Path> left = Files.list(folder)) {
      assertThat(left.map(f -> f.getFileName().toString()))
          .containsExactlyInAnyOrder("begun", "leaf.yaml", "answers.log");
    }
  }

  /**
   * A process started in the background by a script is born deaf to Ctrl-C, and so its children.
   */
  private static boolean ctrlCIsIgnored() throws IOException {
    Path status = Path.of("/proc/self/status");
    if (!Files.isReadable(status)) {
      return false;
    }
    try (Stream<String> lines = Files.lines(status)) {
      return lines
          .filter(line -> line.startsWith("SigIgn:"))
          .mapToLong(line -> Long.parseUnsignedLong(line.substring(7).strip(), 16))
          .anyMatch(mask -> (mask & 2L) != 0L);
    }
  }

  @Test
  void askingToStopWaitsUntilTheCommandHasTidiedUp() throws InterruptedException {
    CancelHook stopper = new CancelHook(() -> {});
    assertThat(stopper.stopRequested()).isFalse();
    Thread asking = new Thread(stopper::ask);
    asking.start();
    while (!stopper.stopRequested()) {
      Thread.onSpinWait();
    }
    assertThat(asking.isAlive()).isTrue();
    stopper.close();
    asking.join();
    assertThat(stopper.stopRequested()).isTrue();
  }
}
