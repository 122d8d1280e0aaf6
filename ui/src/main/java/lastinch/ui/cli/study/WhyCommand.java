package lastinch.ui.cli.study;

import java.util.List;
import java.util.Map;
import lastinch.solver.diagnosis.Diagnosis;
import lastinch.solver.diagnosis.HeatLossBudget;
import lastinch.solver.levers.Lever;
import lastinch.solver.result.Outcome;
import lastinch.solver.result.PourResult;
import lastinch.solver.search.SmallestChange;
import lastinch.solver.study.Goal;
import lastinch.solver.study.RunCache;
import lastinch.ui.chart.StudyCharts;
import lastinch.ui.cli.Console;
import lastinch.ui.cli.Request;
import lastinch.ui.cli.Workshop;
import lastinch.ui.json.FoundJson;
import lastinch.ui.json.WhyJson;
import lastinch.ui.words.Sentences;
import lastinch.ui.words.pour.Explained;
import lastinch.ui.words.study.BlameText;
import lastinch.ui.words.study.StudyTables;
import lastinch.ui.words.study.WhyText;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;

/** {@code lastinch why CASE}. */
@Command(name = "why")
public final class WhyCommand extends OnePlanCommand {
  /** Levers of which it is said what they would change; the others are for {@code least}. */
  private static final List<String> TELLING =
      List.of(
          "emptiesIn",
          "cupFullAfter",
          "poursAt",
          "waiting",
          "reading",
          "mouldTemperature",
          "sprueTall",
          "thicker");

  @Mixin private FoundOptions found = new FoundOptions();

  public WhyCommand(Console surroundings, Workshop workshop, Sentences sentences) {
    super(surroundings, workshop, sentences);
  }

  @Override
  List<String> wrongWords() {
    return found.unread(sentences);
  }

  @Override
  List<String> misfits(Request asked) {
    return found.given()
        ? found.contradictions(asked.plan().pourCase(), sentences, asked.figures())
        : List.of();
  }

  /** What explains a casting that was broken out. */
  private Answer blame(Request asked, RunCache studies) {
    Diagnosis blame =
        Diagnosis.of(
            studies,
            asked.runs(),
            asked.plan().pourCase(),
            asked.isPouredAsDrawn(asked.plan()),
            found.found());
    BlameText text = new BlameText(sentences, asked.figures());
    return new Answer(
        text.full(asked.plan(), blame),
        text.screen(asked.plan(), blame),
        text.brief(blame),
        FoundJson.of(asked.plan(), file(), blame, asked.how()),
        new StudyTables(sentences, asked.figures()).of(blame),
        new StudyCharts(sentences, asked.figures()).causes(asked.plan(), blame),
        Map.of(),
        true,
        true);
  }

  @Override
  List<String> planeNotes() {
    return found.given() ? List.of() : List.of(sentences.say("plane.note.account"));
  }

  private static List<Lever> telling(Request asked) {
    return asked.levers().stream().filter(l -> TELLING.contains(l.key())).toList();
  }

  @Override
  boolean changesThePiece() {
    return true;
  }

  @Override
  int usualRuns(Request asked) {
    return found.given()
        ? Diagnosis.usualRuns(asked.plan().pourCase(), asked.isPouredAsDrawn(asked.plan()))
        : SmallestChange.usualRuns(telling(asked));
  }

  @Override
  Answer answer(Request asked, RunCache studies) {
    if (found.given()) {
      return blame(asked, studies);
    }
    PourResult result = asked.runs().whole(asked.plan().pourCase(), studies::stopRequested);
    List<Lever> levers = telling(asked);
    double spare = asked.plan().want().spare();
    SmallestChange least =
        SmallestChange.of(studies, asked.plan().pourCase(), levers, Goal.heat(spare));
    Explained explained =
        new Explained(
            asked.plan(),
            file(),
            result,
            workshop.bands(asked.plan().pourCase(), result, asked.how(), studies::stopRequested),
            HeatLossBudget.of(asked.plan().pourCase(), result),
            least);
    WhyText text = new WhyText(sentences, asked.figures());
    return new Answer(
        text.full(explained, asked.how()),
        text.screen(explained, asked.how()),
        text.brief(explained),
        WhyJson.of(explained, asked.how()),
        new StudyTables(sentences, asked.figures()).of(explained),
        new StudyCharts(sentences, asked.figures()).explained(explained),
        Map.of(),
        least.whole(),
        !(result.outcome() instanceof Outcome.BrokeDown));
  }
}
