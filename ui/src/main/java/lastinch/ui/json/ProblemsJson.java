package lastinch.ui.json;

import java.util.List;
import lastinch.cases.format.Problem;
import lastinch.solver.filling.Need;
import lastinch.ui.words.Sentences;

/** What has to be put right, in the format {@value #FORMAT}. */
public final class ProblemsJson {
  /** Name and version of the format. */
  public static final String FORMAT = "last inch problems 2";

  private ProblemsJson() {}

  /**
   * The answer as text, without a line end.
   *
   * @param file the case file as the person named it
   * @param problems to put right; line and column are 0 when a whole file is meant
   * @param needs what a sound plan asks for beyond what there is
   */
  public static String of(
      Sentences sentences, String file, List<Problem> problems, List<Need> needs) {
    JsonText json = new JsonText();
    json.open('{').put("format", FORMAT).put("file", file).open("problems", '[');
    for (Problem problem : problems) {
      json.open('{')
          .put("file", problem.file())
          .put("line", problem.line())
          .put("column", problem.column())
          .put("shown", problem.shown())
          .put("sentence", sentences.say(problem.said()));
      if (problem.suggestion().isPresent()) {
        json.put("suggestion", problem.suggestion().get());
      } else {
        json.nothing("suggestion");
      }
      json.close('}');
    }
    json.close(']').open("needs", '[');
    for (Need need : needs) {
      json.item(ResultJson.camel(need));
    }
    return json.close(']').close('}').text();
  }
}
