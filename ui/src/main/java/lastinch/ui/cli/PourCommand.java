package lastinch.ui.cli;

import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalLong;
import lastinch.cases.catalogue.CatalogueMaterials;
import lastinch.cases.catalogue.MaterialSheet;
import lastinch.cases.format.Problem;
import lastinch.cases.plan.OwnedThings;
import lastinch.cases.plan.Plan;
import lastinch.cases.plan.ReadResult;
import lastinch.cases.units.DisplayUnits;
import lastinch.solver.casting.PourCase;
import lastinch.solver.filling.Need;
import lastinch.solver.filling.RunObserver;
import lastinch.solver.levers.Owned;
import lastinch.solver.result.Outcome;
import lastinch.solver.result.PlaneField;
import lastinch.solver.result.PourResult;
import lastinch.solver.result.Poured;
import lastinch.solver.run.DryPour;
import lastinch.solver.run.UnsupportedCase;
import lastinch.solver.search.GridSensitivity;
import lastinch.solver.search.NextStep;
import lastinch.solver.study.Pourer;
import lastinch.solver.study.RunCache;
import lastinch.solver.uncertainty.BandStudy;
import lastinch.ui.chart.ChartFiles;
import lastinch.ui.chart.plane.FillingFilm;
import lastinch.ui.cli.draft.UnitQuestion;
import lastinch.ui.cli.study.RunTimeEstimate;
import lastinch.ui.json.PlaneCsv;
import lastinch.ui.json.ProblemsJson;
import lastinch.ui.json.ResultJson;
import lastinch.ui.report.Report;
import lastinch.ui.report.Sheets;
import lastinch.ui.words.Figures;
import lastinch.ui.words.PouredPlan;
import lastinch.ui.words.Sentences;
import lastinch.ui.words.pour.AssumedText;
import lastinch.ui.words.pour.PourText;
import lastinch.ui.words.pour.VerdictSentence;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code lastinch pour CASE}. */
@Command(name = "pour")
final class PourCommand extends AnsweringCommand {
  private static final long NANOS_PER_MILLI = 1_000_000L;
  private static final double NANOS = 1e9;

  /** Parts of a pour that its bar tells apart. */
  private static final int MANY = 1000;

  @Parameters(paramLabel = "CASE", descriptionKey = "case")
  private Path file;

  @Option(names = "--all", descriptionKey = "all")
  private boolean all;

  @Option(names = "--expect", paramLabel = "fills", descriptionKey = "expect")
  private Optional<String> expected = Optional.empty();

  @Mixin private PlaneWords planeWords = new PlaneWords();

  PourCommand(Console surroundings, Workshop workshop, Sentences sentences) {
    super(surroundings, workshop, sentences);
  }

  @Override
  public Integer call() {
    Optional<DisplayUnits> chosen = DisplayUnits.named(wanted.units());
    if (chosen.isEmpty()) {
      return refuse("cli.units", "word", wanted.units());
    }
    if (expected.filter(e -> !e.equals("fills")).isPresent()) {
      return refuse("cli.expect", "word", expected.get());
    }
    List<String> wrong = planeWords.wrong(sentences, wanted.out().isPresent());
    if (!wrong.isEmpty()) {
      return refuse(wrong.stream().flatMap(w -> problemText.plain(w).stream()).toList());
    }
    ReadResult read =
        workshop.read(
            file, wanted.materials(), new UnitQuestion(surroundings, problemText, wanted.json()));
    if (read instanceof ReadResult.Unsound unsound) {
      return problems(unsound);
    }
    ReadResult.Sound sound = (ReadResult.Sound) read;
    Figures figures = new Figures(chosen.get());
    try {
      return pourAndAnswer(sound, figures);
    } catch (UnsupportedCase e) {
      double finest = DryPour.finestSquare(sound.plan().pourCase());
      return unsupported(e.needs(), figures.calipers(finest));
    } catch (OutFolder.Unwritable e) {
      return refuse(e.lines(problemText));
    }
  }

  private int pourAndAnswer(ReadResult.Sound sound, Figures figures) {
    Optional<OutFolder> folder = wanted.out().map(OutFolder::prepare);
    try (CancelHook stopper = CancelHook.listening();
        AutoFolder open = new AutoFolder(folder)) {
      PouredPlan plan = pour(sound, figures, stopper);
      boolean whole = print(plan, figures);
      boolean cancelled = plan.result().outcome() instanceof Outcome.Cancelled;
      if (open.folder().isPresent() && !cancelled) {
        write(plan, figures, open.folder().get(), stopper);
      }
      if (cancelled || stopper.stopRequested()) {
        return Exit.CANCELLED;
      }
      if (!whole) {
        return refuse("cli.cannot.print");
      }
      return ending(plan);
    }
  }

  private PouredPlan pour(ReadResult.Sound sound, Figures figures, CancelHook stopper) {
    Plan plan = sound.plan();
    long start = System.nanoTime();
    Poured ended = pourWatched(plan, figures, stopper);
    PourResult result = ended.filling();
    Optional<PlaneField> field = ended.field();
    double seconds = (System.nanoTime() - start) / NANOS;
    Optional<GridSensitivity> spread =
        planeWords.wantsAgain() && lastinch.solver.study.VerdictWord.of(result).isPresent()
            ? again(plan.pourCase(), result, seconds, figures, stopper)
            : Optional.empty();
    Optional<BandStudy> bands =
        workshop.bands(plan.pourCase(), result, planeWords.how(), stopper::stopRequested);
    Optional<NextStep> next =
        bands.flatMap(
            b ->
                workshop.next(
                    plan.pourCase(),
                    b,
                    owned(plan, figures),
                    plan.want().spare(),
                    stopper::stopRequested));
    long millis = (System.nanoTime() - start) / NANOS_PER_MILLI;
    List<String> noted = notes(sound.notes());
    if (field.isPresent()) {
      noted.addAll(
          planeWords.notes(
              sentences, figures, file.toString(), plan.pourCase(), result.accounts()));
    }
    PouredPlan poured =
        new PouredPlan(
                plan.pourCase(),
                result,
                file.toString(),
                plan.digest(),
                new AssumedText(sentences, figures).lines(plan.assumed()),
                noted,
                crucibleFull(plan),
                OptionalLong.of(millis),
                bands)
            .with(ended.toppedUp());
    PouredPlan advised = next.map(poured::advised).orElse(poured);
    return field.map(f -> advised.with(f, spread)).orElse(advised);
  }

  private Poured pourWatched(Plan plan, Figures figures, CancelHook stopper) {
    if (!surroundings.terminal() || !wanted.talks()) {
      return pour(plan.pourCase(), RunObserver.NONE, stopper);
    }
    try (Progress progress = new Progress(surroundings, sentences.say("cli.progress"))) {
      RunTimeEstimate pace = new RunTimeEstimate(surroundings, sentences, figures);
      RunObserver bar =
          (time, filled) -> progress.reached(filled, 1.0, pace.left((int) (MANY * filled), MANY));
      return pour(plan.pourCase(), bar, stopper);
    }
  }

  private Owned owned(Plan plan, Figures figures) {
    return OwnedThings.of(
        plan,
        new CatalogueMaterials(workshop.shelf(wanted.materials()).catalogue()),
        figures.units());
  }

  /** The plan over squares a little finer and coarser; empty when it was stopped. */
  private Optional<GridSensitivity> again(
      PourCase job, PourResult first, double seconds, Figures figures, CancelHook stopper) {
    RunTimeEstimate pace = new RunTimeEstimate(surroundings, sentences, figures);
    int atOnce = Runtime.getRuntime().availableProcessors();
    boolean talks = wanted.talks();
    if (talks) {
      pace.again(seconds, GridSensitivity.more(), atOnce);
    }
    double square = planeWords.square();
    try (Progress progress = new Progress(surroundings, sentences.say("cli.progress"));
        RunCache studies =
            new RunCache(
                Pourer.of(workshop.overPlane(square)),
                atOnce,
                talks && surroundings.terminal()
                    ? (done, all) -> progress.reached(done, all, pace.left(done, all))
                    : RunCache.Watch.NONE,
                stopper::stopRequested)) {
      return GridSensitivity.around(job, square, first, workshop::overPlane, studies);
    } catch (RunCache.Cancelled e) {
      return Optional.empty();
    }
  }

  private Poured pour(PourCase job, RunObserver observer, CancelHook stopper) {
    return planeWords.isPlane()
        ? workshop.toTheEnd(job, planeWords.settings(), observer, stopper::stopRequested)
        : workshop.toTheEnd(job, observer, stopper::stopRequested);
  }

  /** Share of the named crucible that the metal fills, when the shop file holds that crucible. */
  private static OptionalDouble crucibleFull(Plan plan) {
    String name = plan.typed().getOrDefault("metal/crucible", "");
    return plan.shop().stream()
        .flatMap(s -> s.crucibles().stream())
        .filter(c -> c.name().equalsIgnoreCase(name))
        .mapToDouble(c -> plan.pourCase().metal().melted() / c.holds())
        .findFirst();
  }

  private List<String> notes(List<Problem> notes) {
    List<String> lines = new ArrayList<>();
    for (Problem note : notes) {
      lines.add(
          note.place().isEmpty()
              ? sentences.say("noted.file", "file", note.file(), "sentence", sentences.say(note))
              : sentences.say(
                  "noted.line",
                  "file",
                  note.file(),
                  "place",
                  note.place(),
                  "sentence",
                  sentences.say(note)));
    }
    return lines;
  }

  /** Prints the answer; false when it could not be printed to the end. */
  private boolean print(PouredPlan plan, Figures figures) {
    PourText text = new PourText(sentences, figures);
    if (wanted.json()) {
      surroundings.out().println(ResultJson.of(plan));
    } else {
      surroundings.print(
          wanted.quiet() ? text.verdict(plan) : all ? text.full(plan) : text.brief(plan));
    }
    return !surroundings.out().checkError();
  }

  private void write(PouredPlan plan, Figures figures, OutFolder folder, CancelHook stopper) {
    List<String> text = new PourText(sentences, figures).full(plan);
    ChartFiles charts = new ChartFiles(plan, sentences, figures);
    add(folder, text, ResultJson.of(plan), charts, stopper::stopRequested);
    if (stopper.stopRequested()) {
      return;
    }
    plan.field().ifPresent(field -> planeFiles(plan, field, figures, folder));
    if (stopper.stopRequested()) {
      return;
    }
    List<MaterialSheet> sheets =
        Sheets.of(plan.pourCase(), workshop.shelf(wanted.materials()).catalogue());
    folder.add(
        "report.html",
        f ->
            Files.writeString(
                f,
                Report.of(
                    plan, charts, sheets, sentences, figures, "Last Inch " + Version.number()),
                StandardCharsets.UTF_8));
    finish(folder);
  }

  private void planeFiles(PouredPlan plan, PlaneField field, Figures figures, OutFolder folder) {
    folder.add("map.csv", f -> PlaneCsv.write(field, f));
    if (planeWords.wantsFilm()) {
      FillingFilm film = new FillingFilm(plan, field, sentences, figures);
      for (int i = 0; i < film.size(); i++) {
        int frame = i;
        folder.add(FillingFilm.name(frame), f -> film.png(frame, f));
      }
      folder.add("filling.gif", film::gif);
    }
  }

  private int ending(PouredPlan plan) {
    if (plan.result().outcome() instanceof Outcome.BrokeDown) {
      return Exit.BROKE_DOWN;
    }
    if (expected.isPresent() && !VerdictSentence.meetsFills(plan)) {
      surroundings.complain(problemText.sentence("cli.expect.unmet"));
      return Exit.EXPECTATION_NOT_MET;
    }
    return Exit.SOLVED;
  }

  private int problems(ReadResult.Unsound unsound) {
    if (wanted.json()) {
      surroundings
          .out()
          .println(ProblemsJson.of(sentences, file.toString(), unsound.problems(), List.of()));
      return Exit.BAD_INPUT;
    }
    return refuse(problemText.problems(file.toString(), unsound.problems()));
  }

  private int unsupported(List<Need> needs, String finest) {
    if (wanted.json()) {
      surroundings.out().println(ProblemsJson.of(sentences, file.toString(), List.of(), needs));
      return Exit.BAD_INPUT;
    }
    return refuse(problemText.unsupported(file.toString(), needs, finest));
  }

  /** Closes a folder that may not be there. */
  private record AutoFolder(Optional<OutFolder> folder) implements AutoCloseable {
    @Override
    public void close() {
      folder.ifPresent(OutFolder::close);
    }
  }
}
