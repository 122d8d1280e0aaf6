package lastinch.ui.words;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import lastinch.cases.format.Problem;
import lastinch.cases.format.Problems;
import lastinch.solver.filling.Need;
import lastinch.ui.words.study.HowPoured;

/** What to put right in a file, all at once, never scolding. */
public final class ProblemText {
  private static final int PLACE = 8;
  private static final int SHOWN = 26;
  private static final int INDENT = 10;

  private final Sentences sentences;

  public ProblemText(Sentences sentences) {
    this.sentences = Objects.requireNonNull(sentences, "sentences");
  }

  /** Things to put right, by file and place. */
  public List<String> problems(String file, List<Problem> problems) {
    Page page = new Page();
    page.paragraph(
        problems.size() == 1
            ? sentences.say("problems.one", "file", file)
            : problems.size() > Problems.MOST
                ? sentences.say(
                    "problems.more", "count", Integer.toString(Problems.MOST), "file", file)
                : sentences.say(
                    "problems.many", "count", Integer.toString(problems.size()), "file", file));
    String last = file;
    for (Problem problem : problems) {
      if (!problem.file().equals(last)) {
        page.line(sentences.say("problems.in", "file", problem.file()));
        last = problem.file();
      }
      add(page, problem);
    }
    return plain(page);
  }

  private void add(Page page, Problem problem) {
    String place = Page.pad(" " + problem.place(), PLACE);
    if (problem.shown().isEmpty()) {
      page.wrapped(place, " ".repeat(PLACE), sentences.say(problem));
    } else if (problem.shown().length() < SHOWN) {
      page.wrapped(
          place + Page.pad(problem.shown(), SHOWN),
          " ".repeat(PLACE + SHOWN),
          sentences.say(problem));
    } else {
      int most = Page.WIDTH - PLACE - 3;
      String shown =
          problem.shown().length() > most
              ? problem.shown().substring(0, most) + "..."
              : problem.shown();
      page.line(place + shown);
      page.wrapped(" ".repeat(INDENT), " ".repeat(INDENT), sentences.say(problem));
    }
  }

  /**
   * A sound plan that asks for more than there is, or for another way to pour it.
   *
   * @param finest edge of the finest squares it can be poured in, as it is typed
   */
  public List<String> unsupported(String file, List<Need> needs, String finest) {
    List<String> words = new ArrayList<>();
    for (Need need : needs) {
      String key = "need." + need.name();
      words.add(
          switch (need) {
            case SQUARES_TOO_FINE -> sentences.say(key, "square", finest);
            case MODEL_TOO_WIDE, MODEL_TOO_BRANCHED, METAL_IN_PLACE ->
                sentences.say(key, "words", HowPoured.TYPED);
            default -> sentences.say(key);
          });
    }
    Page page = new Page();
    page.paragraph(sentences.say("unsupported", "file", file, "needs", String.join(", ", words)));
    return plain(page);
  }

  /** Words already made, broken into lines. */
  public List<String> plain(String words) {
    Page page = new Page();
    page.paragraph(words);
    return plain(page);
  }

  /** One sentence, broken into lines. */
  public List<String> sentence(String key, String... namesAndValues) {
    Page page = new Page();
    page.paragraph(sentences.say(key, namesAndValues));
    return plain(page);
  }

  private static List<String> plain(Page page) {
    List<String> out = new ArrayList<>();
    for (String line : page.lines()) {
      out.add(PlainLetters.of(line));
    }
    return out;
  }
}
