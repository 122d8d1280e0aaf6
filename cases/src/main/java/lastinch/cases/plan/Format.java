package lastinch.cases.plan;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import lastinch.cases.format.Node;
import lastinch.cases.format.Problem;
import lastinch.cases.format.Problems;
import lastinch.cases.format.Span;
import lastinch.cases.units.OneLine;
import lastinch.cases.units.Saying;

/** The first line of a file: what kind of file it is and which number its format has. */
final class Format {
  private static final Pattern LINE = Pattern.compile("last inch (\\w+) (\\d{1,6})");
  private static final List<String> KINDS = List.of("case", "shop", "materials");

  private Format() {}

  /** Whether a file says that it is of a kind; reports why not. A plain slip is no refusal. */
  static boolean accepts(Node.Entries map, String kind, int newest, Problems problems) {
    String right = "last inch " + kind + " " + newest;
    Optional<Node.Entry> entry = map.entry("format");
    if (entry.isEmpty()) {
      if (!map.damaged()) {
        problems.add(
            new Problem(
                map.span().source().name(),
                1,
                1,
                "",
                Saying.of("wrong.firstLineSayWhat"),
                Optional.of("format: " + right)));
      }
      return true;
    }
    Span span = entry.get().value().span();
    String said =
        entry.get().value() instanceof Node.Text text
            ? OneLine.of(text.text()).toLowerCase(Locale.ROOT)
            : "";
    Matcher m = LINE.matcher(said);
    if (!m.matches() || !KINDS.contains(m.group(1))) {
      problems.add(span, Saying.of("wrong.saysWhatKindFile"), right);
      return true;
    }
    if (!m.group(1).equals(kind)) {
      problems.add(span, "wrong.fileWhereFileNeeded", m.group(1), kind);
      return false;
    }
    if (Integer.parseInt(m.group(2)) != newest) {
      problems.add(span, Saying.of("wrong.formatAnotherNumberThan"), right);
    }
    if (!map.entries().get(0).key().equals("format") && !map.damaged()) {
      problems.add(entry.get().keySpan(), "wrong.wordFormatComeFirst");
    }
    return true;
  }
}
