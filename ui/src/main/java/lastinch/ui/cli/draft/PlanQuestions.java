package lastinch.ui.cli.draft;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import lastinch.cases.format.Problem;
import lastinch.cases.format.Saving;
import lastinch.cases.plan.ReadResult;
import lastinch.cases.units.Dimension;
import lastinch.cases.units.Parsed;
import lastinch.cases.units.Quantity;
import lastinch.cases.units.QuantityText;
import lastinch.ui.cli.Console;
import lastinch.ui.cli.Workshop;
import lastinch.ui.words.Sentences;
import lastinch.ui.words.StarterText;

/**
 * Asks for a plan, one question at a time. After every answer the file holds a plan that can be
 * poured, so a person may leave at any time.
 */
public final class PlanQuestions {
  private static final List<String> QUESTIONS =
      List.of(
          "length",
          "thickStart",
          "thickMiddle",
          "thickTip",
          "wideStart",
          "wideMiddle",
          "wideTip",
          "section",
          "boss",
          "bossLong",
          "bossWide",
          "bossDeep",
          "mould",
          "temperature",
          "stands",
          "alloy",
          "reads",
          "waiting",
          "pour",
          "melted");
  private static final List<String> LENGTHS =
      QUESTIONS.stream().filter(k -> k.matches("length|(thick|wide)\\w+|boss\\w+")).toList();
  private static final Map<String, List<String>> CHOICES =
      Map.of(
          "section", List.of("flat", "lens", "round"),
          "boss", List.of("yes", "no"),
          "mould", List.of("bonded sand", "green sand", "gypsum investment"),
          "stands", List.of("flat", "tilted", "upright"));

  private final Console surroundings;
  private final Workshop workshop;
  private final Sentences sentences;
  private final String title;
  private final Path file;

  public PlanQuestions(
      Console surroundings, Workshop workshop, Sentences sentences, String title, Path file) {
    this.surroundings = surroundings;
    this.workshop = workshop;
    this.sentences = sentences;
    this.title = title;
    this.file = file;
  }

  /**
   * Asks until all is answered or the person leaves.
   *
   * @return whether there is a file now
   * @throws IOException when it cannot be written
   */
  public boolean ask(PlanDraft start) throws IOException {
    say("ask.begin", "file", file.toString());
    PlanDraft draft = start;
    List<String> assumed = new ArrayList<>();
    for (String key : QUESTIONS) {
      if (key.startsWith("boss") && !key.equals("boss") && draft.is("boss", "no")) {
        continue;
      }
      Optional<PlanDraft> next = one(draft, key);
      if (next.isEmpty()) {
        return Files.exists(file);
      }
      if (next.get() == draft) {
        assumed.add(sentences.say("ask." + key + ".name"));
      }
      draft = next.get();
      Saving.toDisk().save(file, text(draft).getBytes(StandardCharsets.UTF_8));
    }
    if (!assumed.isEmpty()) {
      surroundings.print(
          new StarterText(sentences)
              .paragraph("ask.assumed", "things", String.join(", ", assumed)));
    }
    return true;
  }

  /** One question until it has an answer; the same draft where nothing was said. */
  private Optional<PlanDraft> one(PlanDraft draft, String key) throws IOException {
    while (true) {
      surroundings
          .out()
          .print(
              sentences.say("ask." + key)
                  + " "
                  + sentences.say("ask.enter", "usual", shown(draft, key))
                  + " ");
      surroundings.out().flush();
      Optional<String> typed = surroundings.readLine();
      if (typed.isEmpty()) {
        surroundings.out().println();
        return Optional.empty();
      }
      String answer = typed.get().strip().replaceAll("\\s+", " ");
      if (answer.equals("?")) {
        surroundings.print(new StarterText(sentences).paragraph("ask." + key + ".why"));
      } else if (answer.isEmpty() || QuantityText.isUnknown(answer)) {
        return Optional.of(draft);
      } else {
        Optional<PlanDraft> taken = taken(draft, key, answer);
        if (taken.isPresent()) {
          return taken;
        }
      }
    }
  }

  private String shown(PlanDraft draft, String key) {
    String usual = draft.usual(key);
    return QuantityText.isUnknown(usual) ? sentences.say("ask.unknown") : usual;
  }

  private Optional<PlanDraft> taken(PlanDraft draft, String key, String answer) throws IOException {
    List<String> choices = CHOICES.getOrDefault(key, List.of());
    String folded = answer.toLowerCase(Locale.ROOT);
    if (!choices.isEmpty() && !choices.contains(folded)) {
      say("ask.choice", "choices", String.join(", ", choices));
      return Optional.empty();
    }
    if (LENGTHS.contains(key)
        && QuantityText.quantity(answer, Dimension.LENGTH) instanceof Parsed.Bad<Quantity> bad) {
      say("ask.wrong", "problem", sentences.say(bad.said()));
      return Optional.empty();
    }
    PlanDraft next = draft.with(key, choices.isEmpty() ? answer : folded);
    List<Problem> problems = problems(next);
    if (problems.isEmpty()) {
      return Optional.of(next);
    }
    surroundings.print(
        new StarterText(sentences)
            .paragraph("ask.wrong", "problem", sentences.say(problems.get(0))));
    return Optional.empty();
  }

  /** What would be wrong with the file, read elsewhere first. */
  private List<Problem> problems(PlanDraft draft) throws IOException {
    Path trial = Files.createTempFile("lastinch-plan", ".yaml");
    try {
      Files.writeString(trial, text(draft), StandardCharsets.UTF_8);
      return workshop.read(trial, Optional.empty()) instanceof ReadResult.Unsound unsound
          ? unsound.problems()
          : List.of();
    } finally {
      Files.deleteIfExists(trial);
    }
  }

  private String text(PlanDraft draft) {
    return draft.text(
        title, file.toString(), sentences.say("ask.said"), sentences.say("ask.notSaid"));
  }

  private void say(String key, String... namesAndValues) {
    surroundings.print(new StarterText(sentences).paragraph(key, namesAndValues));
  }
}
