package lastinch.ui.cli.study;

import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import lastinch.cases.catalogue.CatalogueMaterials;
import lastinch.cases.catalogue.MaterialSheet;
import lastinch.cases.format.Problem;
import lastinch.cases.plan.Materials;
import lastinch.cases.plan.Plan;
import lastinch.cases.plan.ReadResult;
import lastinch.cases.units.DisplayUnits;
import lastinch.solver.casting.PourCase;
import lastinch.solver.filling.Need;
import lastinch.solver.filling.PlaneSettings;
import lastinch.solver.filling.RunObserver;
import lastinch.solver.run.DryPour;
import lastinch.solver.study.Pourer;
import lastinch.solver.study.RunCache;
import lastinch.ui.chart.ChartFiles;
import lastinch.ui.cli.AnsweringCommand;
import lastinch.ui.cli.CancelHook;
import lastinch.ui.cli.Console;
import lastinch.ui.cli.Exit;
import lastinch.ui.cli.OutFolder;
import lastinch.ui.cli.Progress;
import lastinch.ui.cli.Refusals;
import lastinch.ui.cli.Request;
import lastinch.ui.cli.SolverWords;
import lastinch.ui.cli.Version;
import lastinch.ui.cli.Workshop;
import lastinch.ui.cli.draft.UnitQuestion;
import lastinch.ui.report.Sheets;
import lastinch.ui.report.StudyReport;
import lastinch.ui.words.Figures;
import lastinch.ui.words.Sentences;
import lastinch.ui.words.Table;
import lastinch.ui.words.pour.AssumedText;
import lastinch.ui.words.study.HowPoured;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** What all commands share that make many runs of one plan or several. */
abstract class StudyCommand extends AnsweringCommand {
  private static final double NANOS = 1e9;
  private static final String COMMAND_LINE = "command line";

  @Option(names = "--all", descriptionKey = "all")
  private boolean all;

  private Optional<UnitQuestion> unit = Optional.empty();

  @Mixin private SolverWords solver = new SolverWords(HowPoured.USUAL_SQUARE_OF_MANY);

  StudyCommand(Console surroundings, Workshop workshop, Sentences sentences) {
    super(surroundings, workshop, sentences);
  }

  /** Folder for the answer, when named. */
  final Optional<Path> folder() {
    return wanted.out();
  }

  /** Case files asked about. */
  abstract List<Path> files();

  /** What is wrong with the words of the command itself, before any file is read. */
  List<String> wrongWords() {
    return List.of();
  }

  /** What of the words of the command does not fit the plans. */
  List<String> misfits(Request asked) {
    return List.of();
  }

  /**
   * Runs that the answer takes besides the plans themselves, as far as can be known beforehand.
   *
   * @param asked plans and what there is to choose from; they fit the words of the command
   */
  abstract int usualRuns(Request asked);

  /** Whether the plans are poured over the plane. */
  final boolean overPlane() {
    return solver.isPlane();
  }

  /** An answer in words, with what is to be known of the way it was poured. */
  private List<String> noted(Request asked, List<String> answer) {
    List<String> more = new ArrayList<>(planeNotes());
    if (changesThePiece() && asked.isPouredAsDrawn(asked.plan())) {
      more.add(sentences.say("plane.note.drawn"));
    }
    return asked.how().noted(answer, more, sentences, asked.figures());
  }

  /** Whether it would try how thick the piece is. */
  boolean changesThePiece() {
    return false;
  }

  /** What of the answer is other over the plane, one sentence each. */
  List<String> planeNotes() {
    return List.of();
  }

  /**
   * Finds the answer.
   *
   * @param asked plans and what there is to choose from; they fit the words of the command
   * @param studies makes the runs
   */
  abstract Answer answer(Request asked, RunCache studies);

  /** What the one page that holds everything is called. */
  String title(Request asked) {
    return asked.plan().title();
  }

  /**
   * An answer.
   *
   * @param text all of it
   * @param screen of that what is printed unless all is asked for
   * @param brief printed when asked to be quiet
   * @param json for other programs
   * @param tables besides the answer in words
   * @param charts its pictures
   * @param files besides the answer's own, by name
   * @param whole whether it was not stopped before its end
   * @param solved false when the plan itself broke down
   */
  record Answer(
      List<String> text,
      List<String> screen,
      List<String> brief,
      String json,
      List<Table> tables,
      ChartFiles charts,
      Map<String, OutFolder.Content> files,
      boolean whole,
      boolean solved) {}

  @Override
  public Integer call() {
    List<String> wrong = new ArrayList<>(wrongWords());
    wrong.addAll(solver.wrong(sentences));
    Optional<DisplayUnits> chosen = DisplayUnits.named(wanted.units());
    if (chosen.isEmpty()) {
      wrong.add(sentences.say("cli.units", "word", wanted.units()));
    }
    List<Plan> plans = new ArrayList<>();
    Map<Path, List<Problem>> problems = new LinkedHashMap<>();
    for (Path file : files()) {
      ReadResult read = read(file);
      if (read instanceof ReadResult.Unsound unsound) {
        problems.put(file, unsound.problems());
      } else {
        plans.add(((ReadResult.Sound) read).plan());
      }
    }
    Materials known = new CatalogueMaterials(workshop.shelf(wanted.materials()).catalogue());
    Figures figures = new Figures(chosen.orElse(DisplayUnits.METRIC));
    Request asked = new Request(plans, figures, known, solver.how(), new StudyRuns(run()));
    if (problems.isEmpty()) {
      wrong.addAll(misfits(asked));
    }
    if (!wrong.isEmpty() || !problems.isEmpty()) {
      return refusals().refuse(wrong, problems);
    }
    Map<Path, List<Need>> needs = new LinkedHashMap<>();
    for (int i = 0; i < plans.size(); i++) {
      List<Need> missing = needs(plans.get(i).pourCase());
      if (!missing.isEmpty()) {
        needs.put(files().get(i), missing);
      }
    }
    if (!needs.isEmpty()) {
      double finest =
          plans.stream().mapToDouble(p -> DryPour.finestSquare(p.pourCase())).max().orElseThrow();
      return refusals().unsupported(needs, figures.calipers(finest));
    }
    try {
      return study(asked);
    } catch (OutFolder.Unwritable e) {
      return refuse(e.lines(problemText));
    }
  }

  private Refusals refusals() {
    return new Refusals(surroundings, sentences, wanted.json(), COMMAND_LINE);
  }

  /** Reads a case file; a model's unit that was asked for once is not asked for again. */
  final ReadResult read(Path file) {
    if (unit.isEmpty()) {
      unit = Optional.of(new UnitQuestion(surroundings, problemText, wanted.json()));
    }
    return workshop.read(file, wanted.materials(), unit.get());
  }

  /** Pours a job the way that was asked for. */
  private Pourer.Run run() {
    return solver.isPlane()
        ? workshop.overPlane(solver.square())
        : (job, stop) -> workshop.pour(job, RunObserver.NONE, stop);
  }

  private List<Need> needs(PourCase job) {
    return solver.isPlane()
        ? DryPour.plane(PlaneSettings.squares(solver.square())).needs(job)
        : DryPour.NETWORK.needs(job);
  }

  private int study(Request asked) {
    // the folder is tidied up before the stopper lets the process end
    try (CancelHook stopper = CancelHook.listening()) {
      Optional<OutFolder> folder = wanted.out().map(OutFolder::prepare);
      try {
        return study(asked, folder, stopper);
      } finally {
        folder.ifPresent(OutFolder::close);
      }
    }
  }

  private int study(Request asked, Optional<OutFolder> folder, CancelHook stopper) {
    long start = System.nanoTime();
    int atOnce = Runtime.getRuntime().availableProcessors();
    try (Progress progress = new Progress(surroundings, sentences.say("cli.study.progress"));
        RunCache studies =
            new RunCache(
                Pourer.of(asked.runs()),
                atOnce,
                watch(progress, asked.figures()),
                stopper::stopRequested)) {
      Answer answer;
      try {
        if (solver.isPlane() && wanted.talks()) {
          foretell(asked, atOnce, stopper);
        }
        answer = answer(asked, studies);
      } catch (RunCache.Cancelled e) {
        progress.hide();
        surroundings.complain(stopped(studies));
        return Exit.CANCELLED;
      }
      progress.hide();
      boolean said = print(asked, answer, (System.nanoTime() - start) / NANOS, studies);
      if (folder.isPresent() && answer.whole() && !stopper.stopRequested()) {
        write(asked, answer, folder.get());
      }
      if (!answer.whole() || stopper.stopRequested()) {
        return Exit.CANCELLED;
      }
      if (!said) {
        return refuse("cli.cannot.print");
      }
      return answer.solved() ? Exit.SOLVED : Exit.BROKE_DOWN;
    }
  }

  /** Says how long it may take; the first plan shows how fast it goes. */
  private void foretell(Request asked, int atOnce, CancelHook stopper) {
    RunTimeEstimate pace = new RunTimeEstimate(surroundings, sentences, asked.figures());
    int more = usualRuns(asked) + asked.plans().size() - 1;
    pace.before(more + 1, asked.how());
    long start = System.nanoTime();
    asked.runs().whole(asked.plan().pourCase(), stopper::stopRequested);
    pace.afterFirst((System.nanoTime() - start) / NANOS, more, atOnce);
  }

  /** The one page that holds everything. */
  private StudyReport report(Request asked, Answer answer, List<String> text) {
    List<StudyReport.Described> described = new ArrayList<>();
    Set<MaterialSheet> sheets = new LinkedHashSet<>();
    for (int i = 0; i < asked.plans().size(); i++) {
      Plan plan = asked.plans().get(i);
      described.add(
          new StudyReport.Described(
              plan.title(),
              files().get(i).toString(),
              plan.digest(),
              new AssumedText(sentences, asked.figures()).lines(plan.assumed()),
              plan.pourCase()));
      sheets.addAll(Sheets.of(plan.pourCase(), workshop.shelf(wanted.materials()).catalogue()));
    }
    return new StudyReport(
        title(asked),
        String.join(" ", answer.brief()),
        described,
        asked.how().brief(sentences, asked.figures()),
        answer.charts(),
        text,
        answer.tables(),
        List.copyOf(sheets));
  }

  private RunCache.Watch watch(Progress progress, Figures figures) {
    if (!surroundings.terminal() || !wanted.talks()) {
      return RunCache.Watch.NONE;
    }
    RunTimeEstimate pace = new RunTimeEstimate(surroundings, sentences, figures);
    return (done, expected) -> progress.reached(done, expected, pace.left(done, expected));
  }

  /** How far a study had come when somebody stopped it. */
  private List<String> stopped(RunCache studies) {
    return problemText.sentence(
        "study.stopped",
        "runs",
        Integer.toString(studies.runs()),
        "expected",
        Integer.toString(studies.expected()));
  }

  private boolean print(Request asked, Answer answer, double seconds, RunCache studies) {
    if (wanted.json()) {
      surroundings.out().println(answer.json());
      return !surroundings.out().checkError();
    }
    if (!answer.whole()) {
      surroundings.print(stopped(studies));
    }
    if (wanted.quiet()) {
      surroundings.print(answer.whole() ? answer.brief() : List.of());
    } else {
      surroundings.print(noted(asked, all ? answer.text() : answer.screen()));
      int runs = studies.runs();
      surroundings.print(
          problemText.sentence(
              runs == 1 ? "study.solved.one" : "study.solved",
              "runs",
              Integer.toString(runs),
              "seconds",
              new Figures(DisplayUnits.METRIC).seconds(seconds)));
    }
    return !surroundings.out().checkError();
  }

  private void write(Request asked, Answer answer, OutFolder folder) {
    List<String> text = noted(asked, answer.text());
    add(folder, text, answer.json(), answer.charts(), () -> false);
    answer.files().forEach(folder::add);
    StudyReport report = report(asked, answer, text);
    String maker = "Last Inch " + Version.number();
    folder.add(
        "report.html",
        f ->
            Files.writeString(
                f, report.page(sentences, asked.figures(), maker), StandardCharsets.UTF_8));
    finish(folder);
  }
}
