package lastinch.cases.format;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.Iterator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;
import lastinch.cases.units.OneLine;
import lastinch.cases.units.Saying;
import org.snakeyaml.engine.v2.api.LoadSettings;
import org.snakeyaml.engine.v2.common.ScalarStyle;
import org.snakeyaml.engine.v2.events.AliasEvent;
import org.snakeyaml.engine.v2.events.CollectionStartEvent;
import org.snakeyaml.engine.v2.events.Event;
import org.snakeyaml.engine.v2.events.MappingStartEvent;
import org.snakeyaml.engine.v2.events.NodeEvent;
import org.snakeyaml.engine.v2.events.ScalarEvent;
import org.snakeyaml.engine.v2.exceptions.Mark;
import org.snakeyaml.engine.v2.parser.ParserImpl;
import org.snakeyaml.engine.v2.scanner.StreamReader;

/** Turns the stream of tokens into words and values with their places. */
final class NodeBuilder {
  private static final int MOST_DEPTH = 8;
  private static final Pattern LONE_DASH = Pattern.compile("(?<=[\\[,])(\\s*)-(?=\\s*[,\\]])");
  private static final String STAND_IN = "\u2013";

  private final SourceText source;
  private final int base;
  private final Problems problems;
  private final boolean wideCharacters;
  private Iterator<Event> events = List.<Event>of().iterator();

  /**
   * A builder.
   *
   * @param base offset in the source of the first character that will be read
   * @param problems what is refused is added here; updated
   */
  NodeBuilder(SourceText source, int base, Problems problems) {
    this.source = source;
    this.base = base;
    this.problems = problems;
    this.wideCharacters = source.text().chars().anyMatch(c -> Character.isSurrogate((char) c));
  }

  /** Offset in UTF-16 units of a mark that counts characters. */
  static int offset(String text, int base, int characters) {
    int most = text.codePointCount(base, text.length());
    return text.offsetByCodePoints(base, Math.min(characters, most));
  }

  /** Reads the first document; a second one is a problem. */
  Optional<Node> document(String text) {
    LoadSettings settings =
        LoadSettings.builder()
            .setUseMarks(true)
            .setLabel(source.name())
            .setCodePointLimit(SourceText.MOST_BYTES + 1)
            .build();
    events = new ParserImpl(settings, new StreamReader(settings, standIns(text)));
    Optional<Node> top = Optional.empty();
    while (events.hasNext()) {
      Event event = events.next();
      switch (event.getEventId()) {
        case StreamStart, DocumentStart, DocumentEnd, StreamEnd, Comment -> {}
        default -> {
          Node node = node(event, 1);
          if (top.isEmpty()) {
            top = Optional.of(node);
          } else {
            problems.add(
                source.span(node.span().start(), node.span().start()),
                "wrong.secondPlanBeginsKeep");
          }
        }
      }
    }
    return top;
  }

  /** YAML takes no lone dash for a value in brackets; ours means "not measured". */
  private static String standIns(String text) {
    return LONE_DASH.matcher(text).replaceAll("$1" + STAND_IN);
  }

  private Node node(Event event, int depth) {
    if (depth > MOST_DEPTH) {
      problems.add(at(event), "wrong.nestedTooDeepCheck");
      throw new CaseText.TooDeep();
    }
    if (event instanceof AliasEvent) {
      problems.add(at(event), SPECIAL);
      return new Node.Text(at(event), "", true);
    }
    NodeEvent start = (NodeEvent) event;
    boolean tagged =
        event instanceof ScalarEvent scalar
            ? scalar.getTag().isPresent()
            : ((CollectionStartEvent) event).getTag().isPresent();
    if (start.getAnchor().isPresent() || tagged) {
      problems.add(at(event), SPECIAL);
    }
    if (event instanceof ScalarEvent scalar) {
      return text(scalar);
    }
    return event instanceof MappingStartEvent map
        ? entries(map, depth)
        : items((CollectionStartEvent) event, depth);
  }

  private static final Saying SPECIAL = Saying.of("wrong.valueStartsMeaningOwn");

  private Node text(ScalarEvent scalar) {
    Span span = at(scalar);
    if (scalar.getScalarStyle() == ScalarStyle.LITERAL
        || scalar.getScalarStyle() == ScalarStyle.FOLDED) {
      problems.add(
          source.span(span.start(), Math.min(span.start() + 1, span.end())),
          "wrong.valueWrittenOneLine");
    } else if (source.lineOf(span.start()) != source.lineOf(span.end())) {
      boolean quoted = !scalar.isPlain();
      problems.add(
          firstLine(span),
          quoted
              ? Saying.of("wrong.quoteOpensDoesNotClose")
              : Saying.of("wrong.valueRunsNextLine"));
    } else {
      noteHash(span, scalar);
    }
    boolean oneLine = source.lineOf(span.start()) == source.lineOf(span.end());
    String value = scalar.isPlain() && oneLine ? span.text() : scalar.getValue();
    return new Node.Text(span, value, !scalar.isPlain());
  }

  private Span firstLine(Span span) {
    return source.span(span.start(), source.endOfLine(span.line()));
  }

  /** A # that follows a value with no space behind it was perhaps not meant as a comment. */
  private void noteHash(Span span, ScalarEvent scalar) {
    if (!scalar.isPlain() || span.start() == span.end()) {
      return;
    }
    int i = span.end();
    int end = source.endOfLine(span.line());
    while (i < end && source.text().charAt(i) == ' ') {
      i++;
    }
    if (i > span.end()
        && i + 1 < end
        && source.text().charAt(i) == '#'
        && Character.isLetterOrDigit(source.text().charAt(i + 1))) {
      problems.note(source.span(i, end), "wrong.whatFollowsSkippedIf");
    }
  }

  private Node items(CollectionStartEvent start, int depth) {
    List<Node> items = new ArrayList<>();
    Event event = next();
    while (event.getEventId() != Event.ID.SequenceEnd) {
      items.add(node(event, depth + 1));
      event = next();
    }
    return new Node.Items(whole(start, event, last(items)), items, start.isFlow());
  }

  private static int last(List<Node> items) {
    return items.isEmpty() ? -1 : items.get(items.size() - 1).span().end();
  }

  private Node entries(MappingStartEvent start, int depth) {
    List<Node.Entry> entries = new ArrayList<>();
    Map<String, Node.Entry> seen = new HashMap<>();
    int last = -1;
    Event event = next();
    while (event.getEventId() != Event.ID.MappingEnd) {
      Node key = node(event, depth + 1);
      Node value = node(next(), depth + 1);
      last = value.span().end();
      if (!(key instanceof Node.Text word)) {
        problems.add(key.span(), "wrong.wordNeededFrontColon");
      } else if (!decimalComma(word, value, entries)) {
        Node.Entry entry = new Node.Entry(word.span(), fold(word.text()), value);
        if (word.text().equals("<<")) {
          problems.add(word.span(), "wrong.unknownWordUseBased");
        } else if (seen.containsKey(entry.key())) {
          duplicate(problems, seen.get(entry.key()), entry.keySpan());
        } else {
          seen.put(entry.key(), entry);
          entries.add(entry);
        }
      }
      event = next();
    }
    return new Node.Entries(whole(start, event, last), entries, start.isFlow(), false);
  }

  static void duplicate(Problems problems, Node.Entry first, Span again) {
    problems.add(again, "wrong.wordAppearsTwiceFirst", first.keySpan().line());
  }

  /** In braces {@code wide: 20,5 mm} comes as two entries; says so and what to write. */
  private boolean decimalComma(Node.Text word, Node value, List<Node.Entry> before) {
    if (before.isEmpty()
        || !(value instanceof Node.Text none)
        || !none.isEmpty()
        || !(before.get(before.size() - 1).value() instanceof Node.Text head)
        || !head.text().matches("[+-]?\\d+")
        || !word.text().matches("\\d.*")) {
      return false;
    }
    problems.add(
        head.span().to(word.span()),
        Saying.of("wrong.useDecimalPointNot"),
        head.text() + "." + word.text());
    return true;
  }

  private Event next() {
    return events.next();
  }

  /** Folds a word: lower case, single spaces. */
  static String fold(String word) {
    return OneLine.of(word).toLowerCase(Locale.ROOT);
  }

  private Span whole(CollectionStartEvent start, Event end, int lastChild) {
    int from = offset(start.getStartMark());
    int to = start.isFlow() ? offset(end.getEndMark()) : Math.max(from, lastChild);
    return source.span(from, to);
  }

  private Span at(Event event) {
    int from = offset(event.getStartMark());
    return source.span(from, Math.max(from, offset(event.getEndMark())));
  }

  private int offset(Optional<Mark> mark) {
    int characters = mark.map(Mark::getIndex).orElse(0);
    return wideCharacters
        ? offset(source.text(), base, characters)
        : Math.min(base + characters, source.text().length());
  }
}
