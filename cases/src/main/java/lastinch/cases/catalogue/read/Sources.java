package lastinch.cases.catalogue.read;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import lastinch.cases.catalogue.MaterialSheet;
import lastinch.cases.format.Node;
import lastinch.cases.format.Problems;
import lastinch.solver.material.Citation;

/** What the source marks stand for. */
public final class Sources {
  private static final Pattern MARK = Pattern.compile("\\bS\\d+[a-g]?\\b");

  private final Map<String, String> references;

  private Sources(Map<String, String> references) {
    this.references = references;
  }

  public static Sources read(Node.Entries top, Problems problems) {
    MaterialsReader.checkFormat(top, problems);
    Optional<Node.Items> items = top.get("sources", Node.Items.class);
    if (items.isEmpty()) {
      problems.add(top.span(), "wrong.listSourcesMissing");
      return new Sources(Map.of());
    }
    return new Sources(pairs(items.get(), "name", "reference"));
  }

  /** Two texts of every item of a list, by the first. */
  public static Map<String, String> pairs(Node.Items items, String first, String second) {
    Map<String, String> read = new LinkedHashMap<>();
    for (Node item : items.items()) {
      if (item instanceof Node.Entries map) {
        map.get(first, Node.Text.class)
            .ifPresent(
                a -> map.get(second, Node.Text.class).ifPresent(b -> read.put(a.text(), b.text())));
      }
    }
    return read;
  }

  /** All marks. */
  public List<String> marks() {
    return List.copyOf(references.keySet());
  }

  /** Full references of the marks in a text, in the order of the source list. */
  public List<MaterialSheet.Source> in(String text) {
    List<MaterialSheet.Source> found = new ArrayList<>();
    Matcher m = MARK.matcher(text);
    List<String> marks = new ArrayList<>();
    while (m.find()) {
      marks.add(m.group());
    }
    references.forEach(
        (mark, reference) -> {
          if (marks.contains(mark)) {
            found.add(new MaterialSheet.Source(mark, reference));
          }
        });
    return found;
  }

  /** Where a fact comes from, with its source written out. */
  public Citation citation(Fact.Ground ground) {
    return new Citation(ground.basis(), reference(ground), ground.note());
  }

  private String reference(Fact.Ground ground) {
    String source = ground.source();
    if (source.isEmpty()) {
      return switch (ground.basis()) {
        case OPENED -> "published";
        case DERIVED -> "derived, formula in the note";
        case MEMORY -> "from memory, check before citing";
        case PRACTICE -> "common practice, no source";
        case ESTIMATE -> "estimate, no source found";
        case TYPED -> "typed in " + ground.origin().words();
      };
    }
    if (ground.origin().own()) {
      return source;
    }
    List<String> full = new ArrayList<>();
    for (String mark : source.split(" ", -1)) {
      full.add(references.getOrDefault(mark, mark));
    }
    return String.join("; ", full);
  }
}
