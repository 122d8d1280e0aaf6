package lastinch.ui.cli;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import picocli.CommandLine;

/** Version of the program, put in by the build. */
public final class Version implements CommandLine.IVersionProvider {
  @Override
  public String[] getVersion() {
    return new String[] {"Last Inch " + number()};
  }

  public static String number() {
    try (InputStream in = Version.class.getResourceAsStream("version.txt")) {
      if (in == null) {
        throw new IllegalStateException("missing resource version.txt");
      }
      return new String(in.readAllBytes(), StandardCharsets.US_ASCII).strip();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
