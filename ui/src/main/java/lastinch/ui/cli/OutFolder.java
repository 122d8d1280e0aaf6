package lastinch.ui.cli;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.NotDirectoryException;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import lastinch.ui.words.ProblemText;

/**
 * A folder that gets all of its new files or none: they are written beside it and moved in when all
 * are complete.
 */
public final class OutFolder implements AutoCloseable {
  private final Path target;
  private final Path draft;

  /** Writes one file. */
  public interface Content {
    void writeTo(Path file) throws IOException;
  }

  private OutFolder(Path target, Path draft) {
    this.target = target;
    this.draft = draft;
  }

  /**
   * Makes ready to write.
   *
   * @throws Unwritable when that cannot be
   */
  public static OutFolder prepare(Path target) {
    Path whole = target.toAbsolutePath().normalize();
    try {
      if (Files.exists(whole) && !Files.isDirectory(whole)) {
        throw new NotDirectoryException(whole.toString());
      }
      Path parent = Files.isDirectory(whole) ? whole : whole.getParent();
      Path existing = parent;
      while (!Files.exists(existing)) {
        existing = existing.getParent();
      }
      if (!Files.isDirectory(existing)) {
        throw new NotDirectoryException(existing.toString());
      }
      if (!Files.isWritable(existing)) {
        throw new AccessDeniedException(existing.toString());
      }
      Path draft = Files.createTempDirectory(existing, ".lastinch-");
      return new OutFolder(whole, draft);
    } catch (IOException e) {
      throw new Unwritable(target, e);
    }
  }

  /** Writes a file that shows up only with {@link #finish}. */
  public void add(String name, Content content) {
    try {
      content.writeTo(draft.resolve(name));
    } catch (IOException e) {
      throw new Unwritable(target, e);
    } catch (UncheckedIOException e) {
      throw new Unwritable(target, e.getCause());
    }
  }

  /** Lets all files show up; gives their names. */
  public List<String> finish() {
    try (Stream<Path> files = Files.list(draft)) {
      Files.createDirectories(target);
      List<String> names = new ArrayList<>();
      for (Path file : files.sorted().toList()) {
        Path name = file.getFileName();
        Files.move(
            file,
            target.resolve(name),
            StandardCopyOption.ATOMIC_MOVE,
            StandardCopyOption.REPLACE_EXISTING);
        names.add(name.toString());
      }
      return names;
    } catch (IOException e) {
      throw new Unwritable(target, e);
    }
  }

  /** Takes away what was not finished. */
  @Override
  public void close() {
    try (Stream<Path> files = Files.list(draft)) {
      for (Path file : files.toList()) {
        Files.deleteIfExists(file);
      }
      Files.deleteIfExists(draft);
    } catch (IOException e) {
      throw new Unwritable(target, e);
    }
  }

  /** A place that cannot be written to. */
  public static final class Unwritable extends RuntimeException {
    private static final long serialVersionUID = 1L;
    private final transient Path place;

    Unwritable(Path place, IOException cause) {
      super(cause.toString(), cause);
      this.place = place;
    }

    /** What a person is told. */
    public List<String> lines(ProblemText words) {
      return sentence().equals("cli.cannot.other")
          ? words.sentence(sentence(), "folder", place.toString(), "reason", reason())
          : words.sentence(sentence(), "folder", place.toString());
    }

    /** Name of the sentence that says why. */
    String sentence() {
      Throwable cause = getCause();
      boolean unexplained = cause instanceof FileSystemException f && f.getReason() == null;
      if (cause instanceof NotDirectoryException) {
        return "cli.cannot.notFolder";
      }
      if (cause instanceof AccessDeniedException || unexplained) {
        return "cli.cannot.denied";
      }
      String text = String.valueOf(cause.getMessage()).toLowerCase(Locale.ROOT);
      return text.contains("no space") || text.contains("quota") || text.contains("disk full")
          ? "cli.cannot.full"
          : "cli.cannot.other";
    }

    /** What the machine says about it. */
    String reason() {
      return getCause() instanceof FileSystemException f && f.getReason() != null
          ? f.getReason()
          : String.valueOf(getCause().getMessage());
    }
  }
}
