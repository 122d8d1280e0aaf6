package lastinch.cases.format;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import lastinch.cases.units.Saying;
import org.snakeyaml.engine.v2.exceptions.YamlEngineException;

/**
 * Reads the text of a file into words and values with their places.
 *
 * <p>The text is one YAML 1.2 document with a map at its top. Every value is text. Tags, anchors,
 * aliases, merge keys and block scalars are refused. When the text as a whole cannot be read, each
 * block that starts at the left edge is read by itself, so that a broken line costs only its own
 * block.
 */
public final class CaseText {
  private static final int MOST_BROKEN_BLOCKS = 20;

  /** Longest line that is read [characters]; our own choice, a whole table fits in it. */
  private static final int LONGEST_LINE = 5000;

  private CaseText() {}

  /**
   * Reads a text.
   *
   * @return the map at its top as far as it could be read; empty when there is none
   */
  public static Optional<Node.Entries> parse(SourceText source, Problems problems) {
    if (!isText(source, problems) || !hasShortLines(source, problems) || isBlank(source)) {
      if (problems.isEmpty()) {
        problems.add(Problem.ofFile(source.name(), "wrong.nothingFile"));
      }
      return Optional.empty();
    }
    boolean[] tabbed = tabbedLines(source, problems);
    if (tabbed.length > 0) {
      return byBlocks(source, tabbed, problems);
    }
    Problems own = new Problems();
    int start = source.startsWithMark() ? 1 : 0;
    try {
      Optional<Node> top =
          new NodeBuilder(source, start, own).document(source.text().substring(start));
      problems.addErrors(own);
      own.notes().forEach(problems::keep);
      return asMap(source, top, problems);
    } catch (TooDeep e) {
      problems.addErrors(own);
      return Optional.empty();
    } catch (YamlEngineException e) {
      return byBlocks(source, new boolean[source.lines() + 1], problems);
    }
  }

  private static Optional<Node.Entries> asMap(
      SourceText source, Optional<Node> top, Problems problems) {
    if (top.isPresent() && top.get() instanceof Node.Entries map) {
      return Optional.of(map);
    }
    if (problems.isEmpty()) {
      problems.add(Problem.ofFile(source.name(), NOT_A_CASE));
    }
    return Optional.empty();
  }

  private static final Saying NOT_A_CASE = Saying.of("wrong.doesNotLookLike");

  private static boolean isText(SourceText source, Problems problems) {
    String text = source.text();
    for (int i = source.startsWithMark() ? 1 : 0; i < text.length(); i++) {
      char c = text.charAt(i);
      if ((c < ' ' && c != '\n' && c != '\r' && c != '\t') || c == '\ufffe' || c == '\u007f') {
        problems.add(source.span(i, i), "wrong.characterNoTextEditor");
        return false;
      }
    }
    return true;
  }

  private static boolean hasShortLines(SourceText source, Problems problems) {
    for (int line = 1; line <= source.lines(); line++) {
      int start = source.startOfLine(line);
      if (source.endOfLine(line) - start > LONGEST_LINE) {
        problems.add(source.span(start, start), "wrong.lineMoreThanCharacters", LONGEST_LINE);
        return false;
      }
    }
    return true;
  }

  private static boolean isBlank(SourceText source) {
    for (int line = 1; line <= source.lines(); line++) {
      String content = content(source, line);
      if (!content.isEmpty() && !content.equals("---") && !content.equals("...")) {
        return false;
      }
    }
    return true;
  }

  /** A line without its ends and without a comment that fills it. */
  private static String content(SourceText source, int line) {
    int start = source.startOfLine(line);
    if (start == 0 && source.startsWithMark()) {
      start = 1;
    }
    String content = source.text().substring(start, Math.max(start, source.endOfLine(line)));
    content = content.strip();
    return content.startsWith("#") ? "" : content;
  }

  private static boolean[] tabbedLines(SourceText source, Problems problems) {
    boolean[] tabbed = new boolean[source.lines() + 1];
    boolean any = false;
    for (int line = 1; line <= source.lines(); line++) {
      int start = source.startOfLine(line);
      int end = source.endOfLine(line);
      int i = start;
      while (i < end && source.text().charAt(i) == ' ') {
        i++;
      }
      if (i < end && source.text().charAt(i) == '\t' && !content(source, line).isEmpty()) {
        problems.add(source.span(i, i), "wrong.lineStartsTabUse", line);
        tabbed[line] = true;
        any = true;
      }
    }
    return any ? tabbed : new boolean[0];
  }

  private static Optional<Node.Entries> byBlocks(
      SourceText source, boolean[] broken, Problems problems) {
    List<Node.Entry> all = new ArrayList<>();
    int blocksBroken = 0;
    boolean whole = true;
    int line = 1;
    while (line <= source.lines()) {
      int next = line + 1;
      while (next <= source.lines() && !startsBlock(source, next)) {
        next++;
      }
      Block block = new Block(source, line, next, broken);
      Optional<Node.Entries> read = block.read(problems);
      if (block.isDamaged()) {
        blocksBroken++;
        whole = false;
      }
      read.ifPresent(map -> merge(all, map, problems));
      if (blocksBroken > MOST_BROKEN_BLOCKS) {
        problems.add(Problem.ofFile(source.name(), NOT_A_CASE));
        break;
      }
      line = next;
    }
    if (all.isEmpty()) {
      if (problems.isEmpty()) {
        problems.add(Problem.ofFile(source.name(), NOT_A_CASE));
      }
      return Optional.empty();
    }
    return Optional.of(
        new Node.Entries(source.span(0, source.text().length()), all, false, !whole));
  }

  private static void merge(List<Node.Entry> all, Node.Entries map, Problems problems) {
    for (Node.Entry entry : map.entries()) {
      Optional<Node.Entry> twin = all.stream().filter(e -> e.key().equals(entry.key())).findFirst();
      if (twin.isPresent()) {
        NodeBuilder.duplicate(problems, twin.get(), entry.keySpan());
      } else {
        all.add(entry);
      }
    }
  }

  private static boolean startsBlock(SourceText source, int line) {
    int start = source.startOfLine(line);
    if (start >= source.endOfLine(line)) {
      return false;
    }
    char c = source.text().charAt(start);
    boolean listItem = c == '-' && !source.text().startsWith("---", start);
    return !Character.isWhitespace(c) && c != '#' && c != '}' && c != ']' && !listItem;
  }

  /** The file goes deeper than any of ours; reading stops there. */
  static final class TooDeep extends RuntimeException {
    private static final long serialVersionUID = 1L;

    TooDeep() {
      super("deeper than 8", null, false, false);
    }
  }
}
