package lastinch.ui.cli.study;

import java.util.List;
import java.util.Optional;
import lastinch.cases.plan.Plan;
import lastinch.cases.units.Dimension;
import lastinch.cases.units.Quantity;
import lastinch.cases.units.QuantityText;
import lastinch.ui.words.Sentences;
import picocli.CommandLine.Option;

/** Heat to spare that is wanted, as an option. */
final class SpareOption {
  private static final double MOST = 0.95;

  @Option(names = "--spare", paramLabel = "20%", descriptionKey = "spare")
  private Optional<String> spare = Optional.empty();

  /** What of it cannot be read. */
  List<String> wrong(Sentences sentences) {
    return spare.isPresent() && share().isEmpty()
        ? List.of(sentences.say("least.spare.wrong", "word", spare.get()))
        : List.of();
  }

  /** As typed, else as the plan wants it [-]. */
  double of(Plan plan) {
    return share().orElseGet(plan.want()::spare);
  }

  /** A share typed with or without its sign, when it can be meant. */
  private Optional<Double> share() {
    return spare
        .map(typed -> typed.strip().endsWith("%") ? typed : typed + " %")
        .flatMap(typed -> QuantityText.quantity(typed, Dimension.SHARE).value())
        .map(Quantity::si)
        .filter(s -> s >= 0.0 && s <= MOST);
  }
}
