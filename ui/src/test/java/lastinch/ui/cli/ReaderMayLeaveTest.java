package lastinch.ui.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.DisabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;

/** A reader that stops reading, and a disk that is full. */
class ReaderMayLeaveTest {
  @TempDir Path folder;

  private final ByteArrayOutputStream err = new ByteArrayOutputStream();

  private int list(OutputStream to) {
    PrintStream complaints = new PrintStream(err, true, StandardCharsets.US_ASCII);
    Console there = new Console(Console.answers(to), complaints, false, folder);
    return new Main(there, new Shop()).run("alloys");
  }

  @Test
  @DisabledOnOs(OS.WINDOWS) // no shell there that closes its input
  void aReaderThatStopsReadingIsNoError() throws IOException, InterruptedException {
    Process reader =
        new ProcessBuilder("sh", "-c", "exec 0<&-; echo closed; exec sleep 60").start();
    try {
      byte[] said = reader.getInputStream().readNBytes("closed".length());
      assertThat(new String(said, StandardCharsets.US_ASCII)).isEqualTo("closed");
      assertThat(list(reader.getOutputStream())).isEqualTo(Exit.SOLVED);
      assertThat(err.size()).isZero();
    } finally {
      reader.destroyForcibly();
    }
  }

  @Test
  void whatTheReaderTookComesWholeAndNothingIsSentAfterItLeft() {
    ByteArrayOutputStream taken = new ByteArrayOutputStream();
    int[] refused = {0};
    OutputStream leaves =
        new OutputStream() {
          @Override
          public void write(int b) throws IOException {
            if (taken.size() == 40) {
              refused[0]++;
              throw new IOException("Broken pipe");
            }
            taken.write(b);
          }
        };
    assertThat(list(leaves)).isEqualTo(Exit.SOLVED);
    assertThat(taken.size()).isEqualTo(40);
    assertThat(refused[0]).isEqualTo(1);
    assertThat(err.size()).isZero();
  }

  @Test
  void aFullDiskIsTold() {
    OutputStream full =
        new OutputStream() {
          @Override
          public void write(int b) throws IOException {
            throw new IOException("No space left on device");
          }
        };
    assertThat(list(full)).isEqualTo(Exit.BAD_INPUT);
    assertThat(err.toString(StandardCharsets.US_ASCII)).contains("the disk is full");
  }
}
