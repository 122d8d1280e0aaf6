package lastinch.ui.cli;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.regex.Pattern;
import lastinch.ui.cli.draft.PlanDraft;
import lastinch.ui.cli.draft.PlanQuestions;
import lastinch.ui.words.ProblemText;
import lastinch.ui.words.Sentences;
import lastinch.ui.words.StarterText;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code lastinch new}: a commented case file to put own figures in. */
@Command(name = "new")
final class NewCommand implements Callable<Integer> {
  /** Kinds of starters, each a resource of that name. */
  static final List<String> KINDS =
      List.of("sand-flat", "sand-upright", "investment", "leaf", "wheel");

  private static final Pattern PLAIN_TITLE = Pattern.compile("[\\p{L}\\p{N}][\\p{L}\\p{N} ,.()-]*");
  private static final int LONGEST_NAME = 80;

  private final Console surroundings;
  private final Workshop workshop;
  private final Sentences sentences;
  private final ProblemText problemText;
  private final StarterText starterText;

  @Parameters(paramLabel = "NAME", arity = "0..1", descriptionKey = "name")
  private Optional<String> name = Optional.empty();

  @Option(names = "--kind", paramLabel = "KIND", descriptionKey = "kind")
  private Optional<String> kind = Optional.empty();

  @Option(names = "--out", paramLabel = "FILE", descriptionKey = "out")
  private Optional<Path> out = Optional.empty();

  @Option(names = "--ask", descriptionKey = "ask")
  private boolean ask;

  NewCommand(Console surroundings, Workshop workshop, Sentences sentences) {
    this.surroundings = surroundings;
    this.workshop = workshop;
    this.sentences = sentences;
    this.problemText = new ProblemText(sentences);
    this.starterText = new StarterText(sentences);
  }

  @Override
  public Integer call() {
    if (name.isEmpty() && kind.isEmpty() && out.isEmpty() && !ask) {
      surroundings.print(starterText.offer(KINDS));
      return Exit.SOLVED;
    }
    String chosen = kind.orElse(KINDS.get(0));
    if (!KINDS.contains(chosen)) {
      return refuse(
          problemText.sentence(
              "new.kind.unknown", "word", chosen, "kinds", String.join(", ", KINDS)));
    }
    String title = name.orElse(ask ? "my piece" : chosen).strip().replaceAll("(?i)\\.ya?ml$", "");
    if (title.isEmpty()
        || title.length() > LONGEST_NAME
        || title.chars().anyMatch(Character::isISOControl)) {
      return refuse(problemText.sentence("new.name.wrong"));
    }
    Path file = out.orElseGet(() -> Path.of(fileName(title)));
    if (Files.exists(file)) {
      return refuse(problemText.sentence("cli.exists", "file", file.toString()));
    }
    return ask ? ask(title, file) : write(chosen, title, file);
  }

  private int ask(String title, Path file) {
    try {
      PlanQuestions questions =
          new PlanQuestions(surroundings, workshop, sentences, inFile(title), file);
      if (questions.ask(new PlanDraft(starter("asked")))) {
        surroundings.print(starterText.written(file.toString()));
      } else {
        surroundings.print(starterText.paragraph("ask.nothing"));
      }
      return Exit.SOLVED;
    } catch (IOException e) {
      return refuse(
          problemText.sentence(
              "cli.cannot.other",
              "folder",
              file.toString(),
              "reason",
              String.valueOf(e.getMessage())));
    }
  }

  /** A title as it may stand in a file. */
  private static String inFile(String title) {
    return PLAIN_TITLE.matcher(title).matches() ? title : quoted(title);
  }

  private int write(String chosen, String title, Path file) {
    String text =
        starter(chosen).replace("{title}", inFile(title)).replace("{file}", file.toString());
    Path folder = file.toAbsolutePath().getParent();
    try (OutFolder target = OutFolder.prepare(folder)) {
      target.add(
          file.getFileName().toString(), f -> Files.writeString(f, text, StandardCharsets.UTF_8));
      target.finish();
    } catch (OutFolder.Unwritable e) {
      return refuse(e.lines(problemText));
    }
    surroundings.print(starterText.written(file.toString()));
    return Exit.SOLVED;
  }

  /** The text of a starter, with places for title and file. */
  static String starter(String kind) {
    try (InputStream in = NewCommand.class.getResourceAsStream("starters/" + kind + ".yaml")) {
      if (in == null) {
        throw new IllegalArgumentException("no starter " + kind);
      }
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static String quoted(String title) {
    return '"' + title.replace("\\", "\\\\").replace("\"", "\\\"") + '"';
  }

  private static String fileName(String title) {
    String bare =
        title
            .toLowerCase(Locale.ROOT)
            .replaceAll("[^\\p{L}\\p{N}]+", "-")
            .replaceAll("^-+|-+$", "");
    return (bare.isEmpty() ? "plan" : bare) + ".yaml";
  }

  private int refuse(List<String> lines) {
    surroundings.complain(lines);
    return Exit.BAD_INPUT;
  }
}
