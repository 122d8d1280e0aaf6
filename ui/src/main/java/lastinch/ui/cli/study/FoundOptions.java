package lastinch.ui.cli.study;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import lastinch.cases.units.Dimension;
import lastinch.cases.units.Parsed;
import lastinch.cases.units.Quantity;
import lastinch.cases.units.QuantityText;
import lastinch.solver.casting.Limb;
import lastinch.solver.casting.PourCase;
import lastinch.solver.casting.gating.Gate;
import lastinch.solver.diagnosis.Observation;
import lastinch.ui.words.Figures;
import lastinch.ui.words.Sentences;
import picocli.CommandLine.Option;

/** What a person found on a casting, as options. */
final class FoundOptions {
  /** Between a limb and a place on it. */
  private static final String AT = " at ";

  @Option(names = "--stopped", paramLabel = "180mm", descriptionKey = "stopped")
  private Optional<String> stopped = Optional.empty();

  @Option(names = "--lap", paramLabel = "120mm", descriptionKey = "lap")
  private Optional<String> lap = Optional.empty();

  @Option(names = "--lip", paramLabel = "LOOK", descriptionKey = "lip")
  private Optional<String> lip = Optional.empty();

  @Option(names = "--gate-closed", paramLabel = "NAME", descriptionKey = "gateClosed")
  private Optional<String> gateClosed = Optional.empty();

  @Option(names = "--edge-rounded-from", paramLabel = "110mm", descriptionKey = "rounded")
  private Optional<String> rounded = Optional.empty();

  @Option(names = "--weighed", paramLabel = "280g", descriptionKey = "weighed")
  private Optional<String> weighed = Optional.empty();

  /** Whether anything was found. */
  boolean given() {
    return Stream.of(stopped, lap, lip, gateClosed, rounded, weighed).anyMatch(Optional::isPresent);
  }

  /** What of it cannot be read. */
  List<String> unread(Sentences sentences) {
    List<String> wrong = new ArrayList<>();
    unread(wrong, sentences, "--stopped", distance(stopped), Dimension.LENGTH);
    unread(wrong, sentences, "--lap", distance(lap), Dimension.LENGTH);
    unread(wrong, sentences, "--edge-rounded-from", distance(rounded), Dimension.LENGTH);
    List<String> limbs = limbs();
    if (limbs.size() > 1) {
      wrong.add(sentences.say("found.limbs.differ", "limbs", String.join(", ", limbs)));
    }
    unread(wrong, sentences, "--weighed", weighed, Dimension.MASS);
    if (lip.isPresent() && lip().isEmpty()) {
      wrong.add(sentences.say("found.lip.unread", "word", lip.get()));
    }
    return wrong;
  }

  /** What stands after the name of a limb: 60mm of "north arm at 60mm". */
  private static Optional<String> distance(Optional<String> typed) {
    return typed.map(t -> t.contains(AT) ? t.substring(t.lastIndexOf(AT) + AT.length()) : t);
  }

  /** Limbs that places were given on, each once. */
  private List<String> limbs() {
    return Stream.of(stopped, lap, rounded)
        .flatMap(Optional::stream)
        .filter(t -> t.contains(AT))
        .map(t -> t.substring(0, t.lastIndexOf(AT)).strip())
        .distinct()
        .toList();
  }

  private static void unread(
      List<String> wrong,
      Sentences sentences,
      String option,
      Optional<String> typed,
      Dimension dimension) {
    if (typed.isPresent()
        && QuantityText.quantity(typed.get(), dimension) instanceof Parsed.Bad<Quantity> bad) {
      wrong.add(
          sentences.say(
              "found.unread",
              "option",
              option,
              "word",
              typed.get(),
              "reason",
              sentences.say(bad.said())));
    }
  }

  private Optional<Observation.Lip> lip() {
    return lip.flatMap(
        typed ->
            Arrays.stream(Observation.Lip.values())
                .filter(l -> l.name().equals(typed.strip().toUpperCase(Locale.ROOT)))
                .findFirst());
  }

  /** What was found; only of options that can be read. */
  Observation found() {
    return new Observation(
        si(distance(stopped), Dimension.LENGTH),
        si(distance(lap), Dimension.LENGTH),
        lip(),
        gateClosed.map(String::strip),
        si(distance(rounded), Dimension.LENGTH),
        si(weighed, Dimension.MASS),
        limbs().stream().findFirst());
  }

  private static OptionalDouble si(Optional<String> typed, Dimension dimension) {
    return typed
        .flatMap(t -> QuantityText.quantity(t, dimension).value())
        .map(q -> OptionalDouble.of(q.si()))
        .orElse(OptionalDouble.empty());
  }

  /** What of it cannot be on a casting of a plan, all of it. */
  List<String> contradictions(PourCase job, Sentences sentences, Figures figures) {
    return found().contradictions(job).stream()
        .filter(c -> c != Observation.Contradiction.NOTHING)
        .map(c -> sentence(c, job, sentences, figures))
        .toList();
  }

  private String sentence(
      Observation.Contradiction what, PourCase job, Sentences sentences, Figures figures) {
    String key = "found.wrong." + what.name();
    List<String> named = limbs();
    String length =
        figures.ruler(
            job.piece().limbs().stream()
                .filter(l -> named.isEmpty() || named.contains(l.name()))
                .mapToDouble(Limb::length)
                .sum());
    String limbs = job.piece().limbs().stream().map(Limb::name).collect(Collectors.joining(", "));
    String whole = figures.mass(Observation.wholeMass(job));
    String weight = weighed.orElse("");
    return switch (what) {
      case NOTHING, LINE_WITH_ONE_STREAM, NO_RULER -> sentences.say(key);
      case WHICH_LIMB ->
          sentences.say(key, "limbs", limbs, "limb", job.piece().limbs().get(0).name());
      case NO_SUCH_LIMB -> sentences.say(key, "limb", named.get(0), "limbs", limbs);
      case STOPPED_BEYOND -> sentences.say(key, "stopped", stopped.orElse(""), "length", length);
      case LAP_BEYOND ->
          sentences.say(key, "lap", lap.orElse(""), "stopped", stopped.orElse(length));
      case ROUNDED_BEYOND ->
          sentences.say(key, "rounded", rounded.orElse(""), "stopped", stopped.orElse(length));
      case FILLED_WITH_LIP -> sentences.say(key, "stopped", stopped.orElse(""));
      case NO_SUCH_GATE -> sentences.say(key, "gate", gateClosed.orElse(""), "gates", gates(job));
      case HEAVIER_THAN_MELTED ->
          sentences.say(key, "weighed", weight, "melted", figures.mass(job.metal().melted()));
      case HEAVIER_THAN_THE_PIECE -> sentences.say(key, "weighed", weight, "whole", whole);
      case WEIGHT_AGAINST_LENGTH ->
          sentences.say(key, "weighed", weight, "stopped", stopped.orElse(""), "whole", whole);
    };
  }

  private static String gates(PourCase job) {
    return job.gating().gates().stream().map(Gate::name).collect(Collectors.joining(", "));
  }
}
