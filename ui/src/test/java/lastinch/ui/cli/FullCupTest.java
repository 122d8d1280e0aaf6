package lastinch.ui.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A cup that is full before the verdict stands has its line in the course of the pour. */
class FullCupTest {
  private static final Path JOIN = Path.of("../cases/demo/teaching/streams-join.yaml");

  @TempDir private Path folder;

  @Test
  void aQuickHandFillsTheCupFirst() throws IOException {
    Path file = folder.resolve("quick.yaml");
    String plan = Files.readString(JOIN);
    Files.writeString(file, plan.replace("empties in: 1.5 s", "empties in: 0.8 s"));
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    PrintStream printed = new PrintStream(out, true, StandardCharsets.US_ASCII);
    Console here =
        new Console(printed, printed, true, folder, new ByteArrayInputStream(new byte[0]));
    int exit = new Main(here, new Shop()).run("pour", "--all", file.toString());
    assertThat(exit).isZero();
    assertThat(out.toString(StandardCharsets.US_ASCII).replaceAll("\\s+", " "))
        .contains("The cup is full for the first time");
  }
}
