package lastinch.ui.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import lastinch.cases.units.Dimension;
import lastinch.solver.casting.PourCase;
import lastinch.solver.filling.PlaneSettings;
import lastinch.solver.result.ConservationFigures;
import lastinch.solver.run.DryPour;
import lastinch.ui.words.Figures;
import lastinch.ui.words.Sentences;
import lastinch.ui.words.study.GridWords;
import lastinch.ui.words.study.HowPoured;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** Words of a single pour that choose how it is poured and what is kept of the filling. */
final class PlaneWords {
  private static final double SHORTEST = 1e-3;
  private static final double LONGEST = 60.0;

  @Mixin private SolverWords solver = new SolverWords(HowPoured.USUAL_SQUARE);

  @Option(names = "--every", paramLabel = "TIME", descriptionKey = "every")
  private Optional<String> every = Optional.empty();

  @Option(names = "--again", descriptionKey = "again")
  private boolean again;

  /** The way that was asked for. */
  HowPoured how() {
    return solver.how();
  }

  /** Whether the plan is poured as a plane. */
  boolean isPlane() {
    return solver.isPlane();
  }

  /** Edge of the squares [m]. */
  double square() {
    return solver.square();
  }

  /** How the plan is poured over the plane, on as many threads as there are processors. */
  PlaneSettings settings() {
    int threads = Runtime.getRuntime().availableProcessors();
    return PlaneSettings.squares(square()).keeping(every()).on(threads);
  }

  /** Seconds between two moments kept [s]: as asked, else enough to see the pressure half-way. */
  private double every() {
    return every
        .map(e -> SolverWords.si(e, Dimension.TIME, SHORTEST, LONGEST).orElse(LONGEST))
        .orElse(0.1);
  }

  /** Whether it is poured again with other squares. */
  boolean wantsAgain() {
    return again;
  }

  /** Whether frames and a moving picture are wanted. */
  boolean wantsFilm() {
    return every.isPresent();
  }

  /**
   * What is wrong with them, all together.
   *
   * @param folder whether there is a folder to write to
   */
  List<String> wrong(Sentences sentences, boolean folder) {
    List<String> wrong = new ArrayList<>(solver.wrong(sentences));
    if (every.isPresent()
        && SolverWords.si(every.get(), Dimension.TIME, SHORTEST, LONGEST).isEmpty()) {
      wrong.add(sentences.say("plane.wrong.every", "word", every.get()));
    }
    if (every.isPresent() && !folder) {
      wrong.add(sentences.say("plane.every.out"));
    }
    if (every.isPresent() && solver.isNetwork()) {
      wrong.add(sentences.say("plane.only", "option", "--every", "words", HowPoured.TYPED));
    }
    if (again && solver.isNetwork()) {
      wrong.add(sentences.say("plane.only", "option", "--again", "words", HowPoured.TYPED));
    }
    return wrong;
  }

  /**
   * What a person should know of an answer from the plane.
   *
   * @param file the case file as the person named it
   * @param job what it describes
   */
  List<String> notes(
      Sentences sentences,
      Figures figures,
      String file,
      PourCase job,
      ConservationFigures accounts) {
    String range =
        DryPour.NETWORK.needs(job).isEmpty()
            ? sentences.say("plane.note.range.quick", "file", file, "words", HowPoured.TYPED)
            : sentences.say("plane.note.range", "file", solver.how().typed(file));
    List<String> notes = new ArrayList<>();
    GridWords.astray(sentences, accounts).ifPresent(notes::add);
    notes.add(sentences.say("plane.note.how", "square", figures.calipers(square())));
    notes.add(sentences.say(again ? "plane.note.again" : "plane.note.one", "command", range));
    notes.add(sentences.say("plane.note.limits"));
    return notes;
  }
}
