package lastinch.cases.format;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.snakeyaml.engine.v2.exceptions.MarkedYamlEngineException;
import org.snakeyaml.engine.v2.exceptions.YamlEngineException;

/** A few lines that begin at the left edge, read by themselves with broken lines left out. */
final class Block {
  private static final int MOST_TRIES = 8;

  private final SourceText source;
  private final int firstLine;
  private final int nextLine;
  private final boolean[] broken;
  private boolean damaged;

  /**
   * A block.
   *
   * @param firstLine its first line, from 1
   * @param nextLine the line behind its last
   * @param broken lines to leave out; updated
   */
  Block(SourceText source, int firstLine, int nextLine, boolean[] broken) {
    this.source = source;
    this.firstLine = firstLine;
    this.nextLine = nextLine;
    this.broken = broken;
  }

  boolean isDamaged() {
    return damaged;
  }

  Optional<Node.Entries> read(Problems problems) {
    for (int line = firstLine; line < nextLine; line++) {
      damaged |= broken[line];
    }
    boolean reported = damaged;
    for (int attempt = 0; attempt < MOST_TRIES; attempt++) {
      Problems own = new Problems();
      int start =
          source.startOfLine(firstLine) == 0 && source.startsWithMark()
              ? 1
              : source.startOfLine(firstLine);
      try {
        Optional<Node> top = new NodeBuilder(source, start, own).document(remaining(start));
        problems.addErrors(own);
        own.notes().forEach(problems::keep);
        return top.flatMap(t -> asMap(t, problems));
      } catch (CaseText.TooDeep e) {
        problems.addErrors(own);
        damaged = true;
        return Optional.empty();
      } catch (YamlEngineException e) {
        Complaint complaint = Complaint.of(source, start, e, firstLine, nextLine);
        if (!reported) {
          problems.add(complaint.span(), complaint.sentence());
          reported = true;
        }
        damaged = true;
        if (!leaveOut(complaint)) {
          return Optional.empty();
        }
      }
    }
    return Optional.empty();
  }

  private Optional<Node.Entries> asMap(Node top, Problems problems) {
    if (top instanceof Node.Entries map) {
      return Optional.of(damaged ? poisoned(map) : map);
    }
    if (!damaged) {
      problems.add(top.span(), "A colon is missing here; lines have the form  word: value");
      damaged = true;
    }
    return Optional.empty();
  }

  /** Leaves out a broken line and all that hangs below it; false when nothing is left. */
  private boolean leaveOut(Complaint complaint) {
    int line = Math.min(Math.max(complaint.line(), firstLine), nextLine - 1);
    while (line > firstLine && broken[line]) {
      line--;
    }
    if (broken[line]) {
      return false;
    }
    int indent = indent(line);
    broken[line] = true;
    for (int below = line + 1; below < nextLine; below++) {
      if (!complaint.costsTheRest() && indent(below) <= indent) {
        break;
      }
      broken[below] = true;
    }
    return line > firstLine;
  }

  private int indent(int line) {
    int start = source.startOfLine(line);
    int end = source.endOfLine(line);
    int i = start;
    while (i < end && source.text().charAt(i) == ' ') {
      i++;
    }
    return i == end ? Integer.MAX_VALUE : i - start;
  }

  private String remaining(int start) {
    int end = nextLine <= source.lines() ? source.startOfLine(nextLine) : source.text().length();
    StringBuilder text = new StringBuilder(source.text().substring(start, end));
    for (int line = firstLine; line < nextLine; line++) {
      if (broken[line]) {
        for (int i = Math.max(start, source.startOfLine(line)); i < source.endOfLine(line); i++) {
          text.setCharAt(i - start, ' ');
        }
      }
    }
    return text.toString();
  }

  /** The same map, every group in it marked as not fully read. */
  private static Node.Entries poisoned(Node.Entries map) {
    List<Node.Entry> entries = new ArrayList<>();
    for (Node.Entry entry : map.entries()) {
      entries.add(new Node.Entry(entry.keySpan(), entry.key(), poisonedValue(entry.value())));
    }
    return new Node.Entries(map.span(), entries, map.flow(), true);
  }

  private static Node poisonedValue(Node value) {
    if (value instanceof Node.Entries map) {
      return poisoned(map);
    }
    if (value instanceof Node.Items items) {
      return new Node.Items(
          items.span(), items.items().stream().map(Block::poisonedValue).toList(), items.flow());
    }
    Node.Text text = (Node.Text) value;
    return text.isEmpty() ? new Node.Entries(text.span(), List.of(), false, true) : text;
  }

  /** What the reader of the text complained of, in plain words. */
  record Complaint(Span span, int line, String sentence, boolean costsTheRest) {

    static Complaint of(
        SourceText source, int start, YamlEngineException e, int firstLine, int nextLine) {
      if (!(e instanceof MarkedYamlEngineException marked)) {
        int at = source.startOfLine(firstLine);
        return new Complaint(
            source.span(at, source.endOfLine(firstLine)), firstLine, PLAIN_LINE, true);
      }
      String what = marked.getProblem() == null ? "" : marked.getProblem();
      String context = marked.getContext() == null ? "" : marked.getContext();
      boolean opened =
          context.contains("quoted scalar")
              || context.contains("flow mapping")
              || context.contains("flow sequence");
      boolean useContext =
          marked.getContextMark().isPresent()
              && (opened || what.contains("could not find expected ':'"));
      var mark = useContext ? marked.getContextMark() : marked.getProblemMark();
      int at =
          mark.map(m -> NodeBuilder.offset(source.text(), start, m.getIndex()))
              .orElse(source.startOfLine(firstLine));
      int line = Math.min(source.lineOf(Math.min(at, source.text().length())), nextLine - 1);
      line = Math.max(line, firstLine);
      int from = Math.min(at, source.endOfLine(line));
      from = Math.max(from, source.startOfLine(line));
      Span span = source.span(from, source.endOfLine(line));
      return new Complaint(span, line, sentence(what, context, lineText(source, line)), opened);
    }

    private static String lineText(SourceText source, int line) {
      return source.text().substring(source.startOfLine(line), source.endOfLine(line));
    }

    private static final String PLAIN_LINE =
        "This line cannot be read; lines have the form  word: value";

    private static String sentence(String what, String context, String line) {
      if (context.contains("double-quoted") && what.contains("escape")) {
        return "Between \" quotes a backslash has a meaning of its own; use ' quotes";
      }
      if (context.contains("quoted scalar")) {
        return "A quote opens here and does not close. Inches can be written as in";
      }
      if (what.contains("TAB") || what.contains("\\t")) {
        return "There is a Tab here; use spaces";
      }
      if (context.contains("flow sequence")) {
        return "The bracket [ that opens here does not close with ], or a comma is missing";
      }
      if (context.contains("flow mapping")) {
        return "The brace { that opens here does not close with }, or a comma is missing";
      }
      if (what.contains("mapping values are not allowed")) {
        return "A second colon in one line, or a line too far to the right. Text that holds a"
            + " colon goes between ' quotes";
      }
      if (what.contains("could not find expected ':'")) {
        return line.matches("\\s*(- )?[\\w ]+:\\S.*")
            ? "Put a space behind the colon"
            : "A colon is missing here; lines have the form  word: value";
      }
      if (what.contains("cannot start any token")) {
        return "A value cannot start with this character; put it between ' quotes";
      }
      if (what.contains("expected <block end>")) {
        return "This line does not stand under the one above it: check the spaces before it";
      }
      if (what.contains("<document start>")) {
        return "This is more than one map; keep  word: value  lines only";
      }
      return PLAIN_LINE;
    }
  }
}
