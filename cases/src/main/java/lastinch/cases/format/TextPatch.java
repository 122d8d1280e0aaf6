package lastinch.cases.format;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * Changes values in the text of a case file and nothing else: comments, order, units as typed, line
 * ends and byte order mark stay. A place is named by the words that lead to it; an item of a list
 * by its name or its number from 1: {@code gating, gates, end gate, wide}.
 */
public final class TextPatch {
  private final SourceText source;
  private final Node.Entries top;

  private TextPatch(SourceText source, Node.Entries top) {
    this.source = source;
    this.top = top;
  }

  /** A patch of a text that can be read; empty, with what is wrong, when it cannot. */
  public static Optional<TextPatch> of(SourceText source, Problems problems) {
    Problems own = new Problems();
    Optional<Node.Entries> top = CaseText.parse(source, own);
    problems.addErrors(own);
    return own.isEmpty() ? top.map(t -> new TextPatch(source, t)) : Optional.empty();
  }

  /** The text as it stands now. */
  public String text() {
    return source.text();
  }

  /** The value at a place, as typed. */
  public Optional<String> get(List<String> place) {
    return node(place).map(n -> n.span().text());
  }

  /**
   * Puts a value at a place; the word is added where it is missing.
   *
   * @param value as it shall stand in the file; quotes are added where they are needed
   * @throws IllegalArgumentException when the words before the last lead nowhere
   */
  public TextPatch set(List<String> place, String value) {
    String written = written(value, inBrackets(place));
    Optional<Node> old = node(place);
    if (old.isPresent()) {
      Span span = old.get().span();
      String lead = span.start() == span.end() ? " " : "";
      return replaced(span.start(), span.end(), lead + written);
    }
    List<String> parentPlace = place.subList(0, place.size() - 1);
    String key = place.get(place.size() - 1);
    if (parentPlace.isEmpty()) {
      return addedAtTheEnd(top, "", key, written);
    }
    Optional<Node> parent = node(parentPlace);
    if (parent.isEmpty() || !(parent.get() instanceof Node.Entries map)) {
      throw new IllegalArgumentException("no group of words at " + parentPlace);
    }
    if (map.flow()) {
      int close = map.span().end() - 1;
      int at = close;
      while (source.text().charAt(at - 1) == ' ') {
        at--;
      }
      String comma = map.entries().isEmpty() ? "" : ", ";
      return replaced(at, at, comma + key + ": " + written);
    }
    Span first = map.entries().get(0).keySpan();
    int indent = first.start() - source.startOfLine(first.line());
    return addedAtTheEnd(map, " ".repeat(indent), key, written);
  }

  /**
   * Takes a word with its value away, or an item of a list.
   *
   * @throws IllegalArgumentException when there is nothing at the place
   */
  public TextPatch remove(List<String> place) {
    Node node = node(place).orElseThrow(() -> new IllegalArgumentException("nothing at " + place));
    Node parent = place.size() == 1 ? top : node(place.subList(0, place.size() - 1)).orElseThrow();
    if (parent instanceof Node.Entries map) {
      Node.Entry entry =
          map.entries().stream().filter(e -> e.value().equals(node)).findFirst().orElseThrow();
      Span whole = entry.span();
      return map.flow() ? removedFromFlow(whole) : removedLines(whole);
    }
    Node.Items items = (Node.Items) parent;
    return items.flow() ? removedFromFlow(node.span()) : removedLines(node.span());
  }

  /**
   * Saves the text in the place of its file, whole or not at all.
   *
   * @throws IOException when the disk does not take it; the file then stands as it was
   */
  public void save(Saving saving) throws IOException {
    saving.save(source.path(), source.text().getBytes(StandardCharsets.UTF_8));
  }

  private TextPatch removedFromFlow(Span span) {
    String text = source.text();
    int start = span.start();
    int end = span.end();
    int after = skip(text, end, 1);
    if (after < text.length() && text.charAt(after) == ',') {
      end = skip(text, after + 1, 1);
    } else {
      int before = skip(text, start - 1, -1);
      if (text.charAt(before) == ',') {
        start = skip(text, before - 1, -1) + 1;
      }
    }
    return replaced(start, end, "");
  }

  private static int skip(String text, int from, int step) {
    int i = from;
    while (i >= 0 && i < text.length() && text.charAt(i) == ' ') {
      i += step;
    }
    return i;
  }

  private TextPatch removedLines(Span span) {
    int first = span.line();
    int last = source.lineOf(Math.max(span.start(), span.end() - 1));
    int start = source.startOfLine(first);
    int end = last < source.lines() ? source.startOfLine(last + 1) : source.text().length();
    if (first == 1 && source.startsWithMark()) {
      start = 1;
    }
    String dash = source.text().substring(start, span.start());
    boolean sharesADash = dash.strip().equals("-") && isKeyOfAnItem(span) && last < source.lines();
    return sharesADash ? replaced(span.start(), nextWord(last), "") : replaced(start, end, "");
  }

  /** Whether a span is the first word of an item, with more words under the same dash. */
  private boolean isKeyOfAnItem(Span span) {
    int last = source.lineOf(Math.max(span.start(), span.end() - 1));
    if (last >= source.lines()) {
      return false;
    }
    int column = span.start() - source.startOfLine(span.line());
    int next = nextWord(last);
    return next < source.text().length()
        && next - source.startOfLine(last + 1) == column
        && source.text().charAt(next) != '-';
  }

  private int nextWord(int line) {
    return skip(source.text(), source.startOfLine(line + 1), 1);
  }

  private TextPatch addedAtTheEnd(Node.Entries map, String indent, String key, String written) {
    Node.Entry last = map.entries().get(map.entries().size() - 1);
    int line = source.lineOf(Math.max(last.span().start(), last.span().end() - 1));
    int at = source.endOfLine(line);
    String lineEnd = source.text().contains("\r\n") ? "\r\n" : "\n";
    return replaced(at, at, lineEnd + indent + key + ": " + written);
  }

  private TextPatch replaced(int start, int end, String with) {
    String text = source.text().substring(0, start) + with + source.text().substring(end);
    SourceText changed = SourceText.of(source.path(), text);
    Problems problems = new Problems();
    Optional<Node.Entries> read = CaseText.parse(changed, problems);
    if (read.isEmpty() || !problems.isEmpty()) {
      throw new IllegalArgumentException("the change would break the file: " + problems.errors());
    }
    return new TextPatch(changed, read.get());
  }

  private Optional<Node> node(List<String> place) {
    Node at = top;
    for (String step : place) {
      Optional<Node> below = below(at, step);
      if (below.isEmpty()) {
        return Optional.empty();
      }
      at = below.get();
    }
    return Optional.of(at);
  }

  private static Optional<Node> below(Node node, String step) {
    if (node instanceof Node.Entries map) {
      return map.get(NodeBuilder.fold(step));
    }
    if (!(node instanceof Node.Items items)) {
      return Optional.empty();
    }
    for (Node item : items.items()) {
      if (item instanceof Node.Entries map
          && map.get("name").orElse(item) instanceof Node.Text name
          && name.text().strip().equalsIgnoreCase(step)) {
        return Optional.of(item);
      }
    }
    boolean number = step.matches("\\d{1,4}");
    int index = number ? Integer.parseInt(step) : 0;
    return index >= 1 && index <= items.items().size()
        ? Optional.of(items.items().get(index - 1))
        : Optional.empty();
  }

  /** Whether a place lies inside brackets or braces, where commas part values. */
  private boolean inBrackets(List<String> place) {
    for (int i = 1; i < place.size(); i++) {
      Optional<Node> above = node(place.subList(0, i));
      boolean flow =
          above.isPresent()
              && ((above.get() instanceof Node.Entries map && map.flow())
                  || (above.get() instanceof Node.Items items && items.flow()));
      if (flow) {
        return true;
      }
    }
    return top.flow();
  }

  /** A value as it can stand in the file: quoted where its letters would mean something else. */
  private static String written(String value, boolean inBrackets) {
    String plain = value.strip();
    boolean whole = plain.startsWith("[") || plain.startsWith("{");
    boolean special =
        plain.isEmpty()
            || startsSpecially(plain)
            || plain.contains(": ")
            || plain.contains(" #")
            || plain.endsWith(":")
            || (inBrackets && plain.matches(".*[,\\[\\]{}].*"));
    return !whole && special ? "'" + plain.replace("'", "''") + "'" : plain;
  }

  private static boolean startsSpecially(String plain) {
    boolean number = plain.matches("-[\\d.].*|-");
    return !number && "&*!|>%@`'\"#-?:,]}".indexOf(plain.charAt(0)) >= 0;
  }

  /** Words that lead to a place, from a text with slashes between them. */
  public static List<String> place(String path) {
    List<String> steps = new ArrayList<>();
    for (String step : path.split("/", -1)) {
      steps.add(step.strip().toLowerCase(Locale.ROOT));
    }
    return steps;
  }
}
