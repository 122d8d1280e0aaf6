package lastinch.ui.cli;

import java.util.concurrent.Callable;
import picocli.AutoComplete;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Spec;

/** {@code lastinch completion}. */
@Command(name = "completion")
final class CompletionCommand implements Callable<Integer> {
  private final Console surroundings;

  @Spec private CommandSpec spec;

  CompletionCommand(Console surroundings) {
    this.surroundings = surroundings;
  }

  @Override
  public Integer call() {
    surroundings.out().print(AutoComplete.bash("lastinch", spec.root().commandLine()));
    surroundings.out().print('\n');
    return surroundings.out().checkError() ? Exit.BAD_INPUT : Exit.SOLVED;
  }
}
