package lastinch.cases.plan.check;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import lastinch.cases.format.Node;
import lastinch.cases.format.Problems;
import lastinch.cases.format.SourceText;
import lastinch.cases.format.Span;
import lastinch.cases.schema.Applies;
import lastinch.cases.schema.Kind;
import lastinch.cases.schema.Part;
import lastinch.cases.schema.Word;
import lastinch.cases.units.Saying;
import lastinch.solver.material.MouldFamily;

/** Takes out words that cannot apply and asks for words that have to be there. */
public final class RequiredWords {
  private final SourceText top;
  private final Optional<MouldFamily> family;
  private final boolean print;
  private final String mouldName;
  private final Problems problems;

  /**
   * A check.
   *
   * @param top the file that was asked for; a word typed there has to apply
   * @param mouldName for sentences
   */
  public RequiredWords(
      SourceText top,
      Optional<MouldFamily> family,
      boolean print,
      String mouldName,
      Problems problems) {
    this.top = top;
    this.family = family;
    this.print = print;
    this.mouldName = mouldName;
    this.problems = problems;
  }

  /** The same words without those that were inherited and cannot apply. */
  public Node.Entries check(Part part, Node.Entries map) {
    List<Node.Entry> kept = new ArrayList<>();
    for (Node.Entry entry : map.entries()) {
      Word word = part.word(entry.key()).orElseThrow();
      if (word.applies().holds(family, print)) {
        kept.add(new Node.Entry(entry.keySpan(), entry.key(), below(word, entry.value())));
      } else if (entry.keySpan().source() == top) {
        problems.add(entry.keySpan(), sentence(word));
      }
    }
    Node.Entries whole = new Node.Entries(map.span(), kept, map.flow(), map.damaged());
    if (!map.damaged()) {
      required(part, whole);
    }
    return whole;
  }

  private Saying sentence(Word word) {
    return word.applies() == Applies.PRINT
        ? Saying.of("wrong.countsOnly", word.applies().words())
        : Saying.of("wrong.wordMeansNothingCounts", mouldName, word.applies().words());
  }

  private Node below(Word word, Node value) {
    if (word.kind() instanceof Kind.Group group && value instanceof Node.Entries map) {
      return check(group.part(), map);
    }
    if (word.kind() instanceof Kind.Named named && value instanceof Node.Items items) {
      List<Node> checked = new ArrayList<>();
      for (Node item : items.items()) {
        checked.add(item instanceof Node.Entries map ? check(named.part(), map) : item);
      }
      return new Node.Items(items.span(), checked, items.flow());
    }
    return value;
  }

  private void required(Part part, Node.Entries map) {
    Span at = firstLine(map.span());
    for (Word word : part.words()) {
      if (word.required() && map.get(word.key()).isEmpty()) {
        problems.add(
            at, "wrong.wordMissingUnder", word.key(), part.name(), word.help(), brief(word));
      }
    }
    for (Part.Either either : part.eithers()) {
      boolean said = map.entries().stream().anyMatch(e -> either.way(e.key()) >= 0);
      if (either.required() && !said) {
        problems.add(at, "wrong.underNothingSays", part.name(), either.words(), either.listing());
      }
    }
  }

  private static String brief(Word word) {
    return word.kind().words();
  }

  private static Span firstLine(Span span) {
    int end = Math.min(span.end(), span.source().endOfLine(span.line()));
    return new Span(span.source(), span.start(), Math.max(span.start(), end));
  }
}
