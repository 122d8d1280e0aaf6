package lastinch.ui.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import lastinch.cases.units.Dimension;
import lastinch.cases.units.Parsed;
import lastinch.cases.units.Quantity;
import lastinch.cases.units.QuantityText;
import lastinch.ui.words.Sentences;
import lastinch.ui.words.study.HowPoured;
import picocli.CommandLine.Option;

/**
 * Words of a command line that choose how plans are poured: along their channels, or as a plane.
 */
public final class SolverWords {
  private static final String NETWORK = "network";
  private static final String PLANE = "plane";
  private static final double FINEST = 0.25e-3;
  private static final double COARSEST = 5e-3;

  private final double usualSquare;

  @Option(names = "--solver", paramLabel = "network|plane", descriptionKey = "solver")
  private String solver = NETWORK;

  @Option(names = "--square", paramLabel = "SIZE", descriptionKey = "square")
  private Optional<String> square = Optional.empty();

  /**
   * Words of a command.
   *
   * @param usualSquare edge of the squares when none is typed [m]
   */
  public SolverWords(double usualSquare) {
    this.usualSquare = usualSquare;
  }

  /** Whether plans are poured as a plane. */
  public boolean isPlane() {
    return solver.equals(PLANE);
  }

  /** Whether they are poured along their channels. */
  boolean isNetwork() {
    return solver.equals(NETWORK);
  }

  /** Edge of the squares [m]. */
  public double square() {
    return square.map(s -> length(s).orElse(usualSquare)).orElse(usualSquare);
  }

  /** The way of pouring that was chosen. */
  public HowPoured how() {
    return isPlane() ? HowPoured.square(square()) : HowPoured.ALONG;
  }

  /** What is wrong with them, all together. */
  public List<String> wrong(Sentences sentences) {
    List<String> wrong = new ArrayList<>();
    if (!isNetwork() && !isPlane()) {
      wrong.add(
          sentences.say(
              "plane.wrong.solver",
              "option",
              "--solver",
              "words",
              NETWORK + " or " + PLANE,
              "word",
              solver));
    }
    if (square.isPresent() && length(square.get()).isEmpty()) {
      wrong.add(sentences.say("plane.wrong.square", "word", square.get()));
    }
    if (square.isPresent() && isNetwork()) {
      wrong.add(sentences.say("plane.only", "option", "--square", "words", HowPoured.TYPED));
    }
    return wrong;
  }

  private static OptionalDouble length(String text) {
    return si(text, Dimension.LENGTH, FINEST, COARSEST);
  }

  /** A quantity between two ends, both in SI units; empty when it cannot be meant. */
  static OptionalDouble si(String text, Dimension dimension, double least, double most) {
    Parsed<Quantity> parsed = QuantityText.quantity(text, dimension);
    double value = parsed.value().map(Quantity::si).orElse(-1.0);
    return value >= least * (1.0 - 1e-9) && value <= most * (1.0 + 1e-9)
        ? OptionalDouble.of(value)
        : OptionalDouble.empty();
  }
}
