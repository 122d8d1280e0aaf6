package lastinch.ui.cli;

import java.io.FilterOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.util.Locale;
import java.util.Objects;

/**
 * Where answers go, to a reader who may have read enough: once the other end of a pipe is closed,
 * what follows is dropped quietly. Anything else that keeps an answer back, such as a full disk,
 * stays an error.
 */
final class ReaderMayLeave extends FilterOutputStream {
  private boolean gone;

  ReaderMayLeave(OutputStream out) {
    super(Objects.requireNonNull(out, "out"));
  }

  @Override
  public void write(int b) throws IOException {
    write(new byte[] {(byte) b}, 0, 1);
  }

  @Override
  public void write(byte[] bytes, int from, int count) throws IOException {
    if (!gone) {
      try {
        out.write(bytes, from, count);
      } catch (IOException e) {
        leftOrThrow(e);
      }
    }
  }

  @Override
  public void flush() throws IOException {
    if (!gone) {
      try {
        out.flush();
      } catch (IOException e) {
        leftOrThrow(e);
      }
    }
  }

  /** Java tells a closed pipe from a full disk by the system's own words alone. */
  private void leftOrThrow(IOException e) throws IOException {
    gone = String.valueOf(e.getMessage()).toLowerCase(Locale.ROOT).contains("pipe");
    if (!gone) {
      throw e;
    }
  }
}
