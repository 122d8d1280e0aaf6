package lastinch.ui.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import lastinch.cases.units.Dimension;
import lastinch.cases.units.Parsed;
import lastinch.cases.units.Quantity;
import lastinch.cases.units.QuantityText;
import lastinch.solver.result.PlaneField;
import lastinch.ui.words.Figures;
import lastinch.ui.words.ProblemText;
import lastinch.ui.words.Sentences;
import picocli.CommandLine.Option;

/** Words of a command line that choose how a plan is poured: along its channels, or as a plane. */
final class PlaneWords {
  private static final String NETWORK = "network";
  private static final String PLANE = "plane";
  private static final String TYPED = "--solver " + PLANE;
  private static final double USUAL_SQUARE = 2e-3;
  private static final double FINEST = 0.25e-3;
  private static final double COARSEST = 5e-3;
  private static final double SHORTEST = 1e-3;
  private static final double LONGEST = 60.0;

  @Option(names = "--solver", paramLabel = "network|plane", descriptionKey = "solver")
  private String solver = NETWORK;

  @Option(names = "--square", paramLabel = "SIZE", descriptionKey = "square")
  private Optional<String> square = Optional.empty();

  @Option(names = "--every", paramLabel = "TIME", descriptionKey = "every")
  private Optional<String> every = Optional.empty();

  /** Whether the plan is poured as a plane. */
  boolean isPlane() {
    return solver.equals(PLANE);
  }

  /** Edge of the squares [m]. */
  double square() {
    return square
        .map(s -> si(s, Dimension.LENGTH, FINEST, COARSEST).orElse(USUAL_SQUARE))
        .orElse(USUAL_SQUARE);
  }

  /** Seconds between two moments kept [s]: as asked, else enough to see the pressure half-way. */
  double every() {
    return every.map(e -> si(e, Dimension.TIME, SHORTEST, LONGEST).orElse(LONGEST)).orElse(0.1);
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
  Optional<List<String>> wrong(ProblemText words, boolean folder) {
    List<String> lines = new ArrayList<>();
    if (!solver.equals(NETWORK) && !solver.equals(PLANE)) {
      lines.addAll(
          words.sentence(
              "plane.wrong.solver",
              "option",
              "--solver",
              "words",
              NETWORK + " or " + PLANE,
              "word",
              solver));
    }
    if (square.isPresent() && si(square.get(), Dimension.LENGTH, FINEST, COARSEST).isEmpty()) {
      lines.addAll(words.sentence("plane.wrong.square", "word", square.get()));
    }
    if (every.isPresent() && si(every.get(), Dimension.TIME, SHORTEST, LONGEST).isEmpty()) {
      lines.addAll(words.sentence("plane.wrong.every", "word", every.get()));
    }
    if (every.isPresent() && !folder) {
      lines.addAll(words.sentence("plane.every.out"));
    }
    if (solver.equals(NETWORK) && (square.isPresent() || every.isPresent())) {
      lines.addAll(words.sentence("plane.only", "words", TYPED));
    }
    return lines.isEmpty() ? Optional.empty() : Optional.of(lines);
  }

  private static OptionalDouble si(String text, Dimension dimension, double least, double most) {
    Parsed<Quantity> parsed = QuantityText.quantity(text, dimension);
    double value = parsed.value().map(Quantity::si).orElse(-1.0);
    return value >= least * (1.0 - 1e-9) && value <= most * (1.0 + 1e-9)
        ? OptionalDouble.of(value)
        : OptionalDouble.empty();
  }

  /** What a person should know of an answer from the plane. */
  List<String> notes(Sentences sentences, Figures figures, PlaneField field) {
    return List.of(
        sentences.say("plane.note.how", "square", figures.calipers(field.map().cell())),
        sentences.say("plane.note.one", "words", TYPED),
        sentences.say("plane.note.limits"));
  }
}
