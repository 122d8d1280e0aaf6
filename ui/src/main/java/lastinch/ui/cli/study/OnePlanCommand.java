package lastinch.ui.cli.study;

import java.nio.file.Path;
import java.util.List;
import lastinch.ui.cli.Console;
import lastinch.ui.cli.Workshop;
import lastinch.ui.words.Sentences;
import picocli.CommandLine.Parameters;

/** What all studies of a single plan share. */
abstract class OnePlanCommand extends StudyCommand {
  @Parameters(paramLabel = "CASE", descriptionKey = "case")
  private Path file;

  OnePlanCommand(Console surroundings, Workshop workshop, Sentences sentences) {
    super(surroundings, workshop, sentences);
  }

  @Override
  final List<Path> files() {
    return List.of(file);
  }

  /** The plan's file as the person named it. */
  final String file() {
    return file.toString();
  }
}
