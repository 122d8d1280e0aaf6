package lastinch.ui.cli;

import java.nio.file.Path;
import java.util.Optional;
import picocli.CommandLine.Option;

/** How an answer is wanted, the same for every command that gives one. */
public final class AnswerOptions {
  @Option(names = "--json", descriptionKey = "json")
  private boolean json;

  @Option(names = "--out", paramLabel = "DIR", descriptionKey = "out")
  private Optional<Path> out = Optional.empty();

  @Option(names = "--units", paramLabel = "mm|in", descriptionKey = "units")
  private String units = "mm";

  @Option(names = "--quiet", descriptionKey = "quiet")
  private boolean quiet;

  @Option(names = "--materials", paramLabel = "FILE", descriptionKey = "materials")
  private Optional<Path> materials = Optional.empty();

  /** Whether other programs read it. */
  public boolean json() {
    return json;
  }

  /** Folder for it, when one was named. */
  public Optional<Path> out() {
    return out;
  }

  /** Units as typed. */
  public String units() {
    return units;
  }

  /** Whether the verdict is enough. */
  public boolean quiet() {
    return quiet;
  }

  /** Whether a person waits for words. */
  public boolean talks() {
    return !json && !quiet;
  }

  /** A person's own file of metals and moulds. */
  public Optional<Path> materials() {
    return materials;
  }
}
