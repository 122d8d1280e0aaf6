package lastinch.cases.format;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import lastinch.cases.units.Saying;
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
          problems.add(complaint.span(), complaint.said());
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
      problems.add(top.span(), "wrong.colonMissingLinesForm");
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
  record Complaint(Span span, int line, Saying said, boolean costsTheRest) {

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

    private static final Saying PLAIN_LINE = Saying.of("wrong.lineCannotReadLines");

    private static Saying sentence(String what, String context, String line) {
      if (context.contains("double-quoted") && what.contains("escape")) {
        return Saying.of("wrong.betweenQuotesBackslashMeaning");
      }
      if (context.contains("quoted scalar")) {
        return Saying.of("wrong.quoteOpensDoesNot");
      }
      if (what.contains("TAB") || what.contains("\\t")) {
        return Saying.of("wrong.tabUseSpaces");
      }
      if (context.contains("flow sequence")) {
        return Saying.of("wrong.bracketOpensDoesNot");
      }
      if (context.contains("flow mapping")) {
        return Saying.of("wrong.braceOpensDoesNot", "{", "}");
      }
      if (what.contains("mapping values are not allowed")) {
        return Saying.of("wrong.secondColonOneLine");
      }
      if (what.contains("could not find expected ':'")) {
        return line.matches("\\s*(- )?[\\w ]+:\\S.*")
            ? Saying.of("wrong.putSpaceBehindColon")
            : Saying.of("wrong.colonMissingLinesForm");
      }
      if (what.contains("cannot start any token")) {
        return Saying.of("wrong.valueCannotStartCharacter");
      }
      if (what.contains("expected <block end>")) {
        return Saying.of("wrong.lineDoesNotStand");
      }
      if (what.contains("<document start>")) {
        return Saying.of("wrong.moreThanOneMap");
      }
      return PLAIN_LINE;
    }
  }
}
