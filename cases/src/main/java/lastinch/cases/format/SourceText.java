package lastinch.cases.format;

import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Objects;
import java.util.Optional;

/** The text of one file with its lines, exactly as it stands, a byte order mark included. */
public final class SourceText {
  /** Largest file that is read [bytes]. */
  public static final int MOST_BYTES = 1 << 20;

  private final String name;
  private final Path path;
  private final String text;
  private final int[] lineStart;

  private SourceText(String name, Path path, String text) {
    this.name = Objects.requireNonNull(name, "name");
    this.path = Objects.requireNonNull(path, "path");
    this.text = Objects.requireNonNull(text, "text");
    this.lineStart = lineStarts(text);
  }

  /** A text that is already in memory. */
  public static SourceText of(Path path, String text) {
    return new SourceText(path.toString(), path, text);
  }

  /**
   * Reads a file; what stands in the way becomes a problem.
   *
   * @param path the file, named in messages as given
   */
  public static Optional<SourceText> read(Path path, Problems problems) {
    String name = path.toString();
    if (Files.isDirectory(path)) {
      problems.add(Problem.ofFile(name, "wrong.folderNameFile"));
      return Optional.empty();
    }
    byte[] bytes;
    try (InputStream in = Files.newInputStream(path)) {
      bytes = in.readNBytes(MOST_BYTES + 1);
    } catch (NoSuchFileException e) {
      problems.add(Problem.ofFile(name, "wrong.noSuchFile"));
      return Optional.empty();
    } catch (IOException e) {
      problems.add(Problem.ofFile(name, "wrong.fileCannotReadYours"));
      return Optional.empty();
    }
    if (bytes.length > MOST_BYTES) {
      problems.add(Problem.ofFile(name, "wrong.fileLargerThan1"));
      return Optional.empty();
    }
    return decode(path, bytes, problems);
  }

  /** Takes bytes for UTF-8 text; what is no text becomes a problem. */
  public static Optional<SourceText> decode(Path path, byte[] bytes, Problems problems) {
    try {
      String text =
          StandardCharsets.UTF_8
              .newDecoder()
              .onMalformedInput(CodingErrorAction.REPORT)
              .onUnmappableCharacter(CodingErrorAction.REPORT)
              .decode(ByteBuffer.wrap(bytes))
              .toString();
      return Optional.of(of(path, text));
    } catch (CharacterCodingException e) {
      problems.add(Problem.ofFile(path.toString(), "wrong.notPlainTextUtf"));
      return Optional.empty();
    }
  }

  /** The file as it was named. */
  public String name() {
    return name;
  }

  /** The file. */
  public Path path() {
    return path;
  }

  /** The whole text, line ends and byte order mark as they stand. */
  public String text() {
    return text;
  }

  /** How many lines there are. */
  public int lines() {
    return lineStart.length;
  }

  /** Offset of the first character of a line, counted from 1. */
  public int startOfLine(int line) {
    return lineStart[line - 1];
  }

  /** Offset behind the last character of a line, its line end left out. */
  public int endOfLine(int line) {
    int end = line < lineStart.length ? lineStart[line] : text.length();
    while (end > lineStart[line - 1]
        && (text.charAt(end - 1) == '\n' || text.charAt(end - 1) == '\r')) {
      end--;
    }
    return end;
  }

  /** Line of an offset, from 1. */
  public int lineOf(int offset) {
    int found = Arrays.binarySearch(lineStart, offset);
    return found >= 0 ? found + 1 : -found - 1;
  }

  /** Column of an offset, from 1, in characters as a person counts them. */
  public int columnOf(int offset) {
    int start = lineStart[lineOf(offset) - 1];
    if (start == 0 && startsWithMark()) {
      start = Math.min(1, offset);
    }
    return text.codePointCount(start, offset) + 1;
  }

  /** Whether the text begins with a byte order mark. */
  public boolean startsWithMark() {
    return !text.isEmpty() && text.charAt(0) == '\ufeff';
  }

  /** A stretch of this text. */
  public Span span(int start, int end) {
    return new Span(this, start, end);
  }

  private static int[] lineStarts(String text) {
    int count = 1;
    for (int i = 0; i < text.length(); i++) {
      if (endsLine(text, i)) {
        count++;
      }
    }
    int[] starts = new int[count];
    int at = 1;
    for (int i = 0; i < text.length(); i++) {
      if (endsLine(text, i)) {
        starts[at++] = i + 1;
      }
    }
    return starts;
  }

  private static boolean endsLine(String text, int i) {
    char c = text.charAt(i);
    return c == '\n' || (c == '\r' && (i + 1 == text.length() || text.charAt(i + 1) != '\n'));
  }
}
