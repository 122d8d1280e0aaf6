package lastinch.ui.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import lastinch.ui.words.ProblemText;

/** Keeps a report of a fault of ours and says where it lies. */
final class Faults {
  private final Console surroundings;
  private final ProblemText words;

  Faults(Console surroundings, ProblemText words) {
    this.surroundings = surroundings;
    this.words = words;
  }

  /** Keeps the report; gives the code to end with. */
  int report(Throwable fault, List<String> command) {
    StringWriter text = new StringWriter();
    PrintWriter writer = new PrintWriter(text);
    writer.println("Last Inch " + Version.number());
    writer.println("Java " + System.getProperty("java.version"));
    writer.println("System " + System.getProperty("os.name"));
    writer.println("Command lastinch " + String.join(" ", command));
    writer.println();
    fault.printStackTrace(writer);
    try {
      Path file = Files.createTempFile(surroundings.faults(), "lastinch-fault-", ".txt");
      Files.writeString(file, text.toString(), StandardCharsets.UTF_8);
      surroundings.complain(words.sentence("cli.fault", "file", file.toString()));
    } catch (IOException unsaved) {
      surroundings.complain(words.sentence("cli.fault.unsaved", "what", fault.toString()));
    }
    return Exit.OUR_FAULT;
  }
}
