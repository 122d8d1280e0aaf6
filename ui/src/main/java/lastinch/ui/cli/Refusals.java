package lastinch.ui.cli;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import lastinch.cases.format.Problem;
import lastinch.solver.filling.Need;
import lastinch.ui.json.ProblemsJson;
import lastinch.ui.words.ProblemText;
import lastinch.ui.words.Sentences;

/**
 * Says why a study is not begun, to a person or as JSON.
 *
 * @param surroundings where it goes
 * @param sentences the sentences
 * @param json for other programs
 * @param commandLine name that the words of the command go by
 */
public record Refusals(
    Console surroundings, Sentences sentences, boolean json, String commandLine) {
  /** Says what is wrong with the words of the command and with the files, all of it. */
  public int refuse(List<String> said, Map<Path, List<Problem>> problems) {
    if (json) {
      List<Problem> all = new ArrayList<>();
      said.forEach(s -> all.add(Problem.ofFile(commandLine, "wrong.asWritten", s)));
      problems.values().forEach(all::addAll);
      List<String> names = new ArrayList<>();
      if (!said.isEmpty()) {
        names.add(commandLine);
      }
      problems.keySet().forEach(f -> names.add(f.toString()));
      surroundings
          .out()
          .println(ProblemsJson.of(sentences, String.join(", ", names), all, List.of()));
    } else {
      said.forEach(s -> surroundings.complain(new ProblemText(sentences).plain(s)));
      problems.forEach(
          (file, list) ->
              surroundings.complain(new ProblemText(sentences).problems(file.toString(), list)));
    }
    return Exit.BAD_INPUT;
  }

  /**
   * Says of every plan what it needs.
   *
   * @param finest edge of the finest squares that the plans can be poured in, as it is typed
   */
  public int unsupported(Map<Path, List<Need>> needs, String finest) {
    if (json) {
      String names = String.join(", ", needs.keySet().stream().map(Path::toString).toList());
      List<Need> all = needs.values().stream().flatMap(List::stream).distinct().toList();
      surroundings.out().println(ProblemsJson.of(sentences, names, List.of(), all));
    } else {
      needs.forEach(
          (file, list) ->
              surroundings.complain(
                  new ProblemText(sentences).unsupported(file.toString(), list, finest)));
    }
    return Exit.BAD_INPUT;
  }
}
