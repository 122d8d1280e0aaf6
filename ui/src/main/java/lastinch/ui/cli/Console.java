package lastinch.ui.cli;

import java.io.BufferedOutputStream;
import java.io.FileDescriptor;
import java.io.FileOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Objects;
import java.util.Optional;

/**
 * Where a command runs.
 *
 * @param out for answers
 * @param err for what has to be put right and for progress
 * @param terminal whether a person looks on
 * @param faults folder for reports of our own faults
 * @param typed what a person types
 */
public record Console(
    PrintStream out, PrintStream err, boolean terminal, Path faults, InputStream typed) {
  private static final int LONGEST_LINE = 1000;

  public Console {
    Objects.requireNonNull(out, "out");
    Objects.requireNonNull(err, "err");
    Objects.requireNonNull(faults, "faults");
    Objects.requireNonNull(typed, "typed");
  }

  /** Where a person types into this process. */
  Console(PrintStream out, PrintStream err, boolean terminal, Path faults) {
    this(out, err, terminal, faults, System.in);
  }

  /** Those of this process. */
  static Console ofProcess() {
    return new Console(
        answers(new FileOutputStream(FileDescriptor.out)),
        System.err,
        isTerminal(),
        Path.of(System.getProperty("java.io.tmpdir", ".")));
  }

  /** Prints answers, all of them plain letters, for a reader who may leave. */
  static PrintStream answers(OutputStream to) {
    return new PrintStream(
        new BufferedOutputStream(new ReaderMayLeave(to)), true, StandardCharsets.US_ASCII);
  }

  /** From Java 22 on a console exists without a terminal, and has to be asked. */
  @SuppressWarnings("SystemConsoleNull") // Java 22 and later are asked below
  private static boolean isTerminal() {
    Object console = System.console();
    if (console == null) {
      return false;
    }
    try {
      return (boolean) java.io.Console.class.getMethod("isTerminal").invoke(console);
    } catch (ReflectiveOperationException beforeJava22) {
      return true;
    }
  }

  /** What the person types next, up to the end of the line. */
  public Optional<String> readLine() {
    StringBuilder line = new StringBuilder();
    try {
      int c = typed.read();
      if (c < 0) {
        return Optional.empty();
      }
      while (c >= 0 && c != '\n' && line.length() < LONGEST_LINE) {
        line.append((char) c);
        c = typed.read();
      }
    } catch (IOException gone) {
      return Optional.empty();
    }
    return Optional.of(line.toString());
  }

  public void print(Iterable<String> lines) {
    for (String line : lines) {
      out.println(line);
    }
  }

  public void complain(Iterable<String> lines) {
    for (String line : lines) {
      err.println(line);
    }
  }
}
