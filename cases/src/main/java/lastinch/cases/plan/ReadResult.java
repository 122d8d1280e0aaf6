package lastinch.cases.plan;

import java.util.List;
import java.util.Objects;
import lastinch.cases.format.Problem;

/** What came of reading a case file. */
public sealed interface ReadResult permits ReadResult.Sound, ReadResult.Unsound {
  /** Things that were accepted but should be known, by file and place. */
  List<Problem> notes();

  /** A plan that can be poured dry. */
  record Sound(Plan plan, List<Problem> notes) implements ReadResult {
    public Sound {
      Objects.requireNonNull(plan, "plan");
      notes = List.copyOf(notes);
    }
  }

  /** Things to put right, at least one, by file and place. */
  record Unsound(List<Problem> problems, List<Problem> notes) implements ReadResult {
    public Unsound {
      problems = List.copyOf(problems);
      notes = List.copyOf(notes);
      if (problems.isEmpty()) {
        throw new IllegalArgumentException("nothing is wrong, so the plan is sound");
      }
    }
  }
}
