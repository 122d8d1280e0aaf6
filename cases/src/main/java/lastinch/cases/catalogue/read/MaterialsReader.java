package lastinch.cases.catalogue.read;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import lastinch.cases.format.Node;
import lastinch.cases.format.Problems;
import lastinch.cases.schema.NearestWord;
import lastinch.cases.units.Saying;

/** Reads the words of a materials file; every fault is collected, none stops the rest. */
public final class MaterialsReader {
  static final String FORMAT = "last inch materials 1";
  public static final String ALLOYS = "alloys";
  public static final String MEDIA = "mould media";
  public static final String STEELS = "flask steels";
  static final String COMMON = "common figures";
  private static final List<String> TOP = List.of("format", "title", ALLOYS, MEDIA, STEELS, COMMON);
  private static final List<String> ABOUT =
      List.of("name", "based on", "also called", "made of", "note");
  private static final int MOST_NAME = 80;

  private final Problems problems;
  private final boolean own;
  private final FactReader facts;

  /**
   * Makes a reader.
   *
   * @param own whether this is a person's own file, in which basis and source may be left out
   */
  public MaterialsReader(boolean own, Problems problems) {
    this.own = own;
    this.problems = problems;
    this.facts = new FactReader(own, problems);
  }

  public MaterialsFile read(Node.Entries top) {
    checkFormat(top, problems);
    for (Node.Entry e : top.entries()) {
      if (!TOP.contains(e.key())) {
        unknownWord(e, TOP, problems);
      }
    }
    return new MaterialsFile(
        entries(top, ALLOYS, MaterialWords.ALLOY),
        entries(top, MEDIA, MaterialWords.MEDIUM),
        entries(top, STEELS, MaterialWords.STEEL),
        common(top));
  }

  public static void checkFormat(Node.Entries top, Problems problems) {
    Optional<Node.Entry> format = top.entry("format");
    if (format.isEmpty()) {
      problems.add(top.span(), Saying.of("wrong.firstLineMustSay"), "format: " + FORMAT);
    } else if (!(format.get().value() instanceof Node.Text t && t.text().equals(FORMAT))) {
      problems.add(format.get().value().span(), Saying.of("wrong.noMaterialsFile"), FORMAT);
    }
  }

  static void unknownWord(Node.Entry entry, List<String> known, Problems problems) {
    List<String> near = NearestWord.names(entry.key(), known);
    Saying sentence = Saying.of("wrong.noWordMaterialsFile", entry.key());
    if (near.isEmpty()) {
      problems.add(entry.keySpan(), "wrong.these", sentence, String.join(", ", known));
    } else {
      problems.add(entry.keySpan(), sentence, near.get(0));
    }
  }

  private Map<String, Fact> common(Node.Entries top) {
    Optional<Node> node = top.get(COMMON);
    if (node.isEmpty()) {
      return Map.of();
    }
    if (node.get() instanceof Node.Entries map) {
      return facts(map, MaterialWords.COMMON, List.of());
    }
    problems.add(node.get().span(), "wrong.wordsTheirValuesBelong");
    return Map.of();
  }

  private List<Entry> entries(Node.Entries top, String group, List<Property> schema) {
    Optional<Node> node = top.get(group);
    if (node.isEmpty()) {
      return List.of();
    }
    List<Entry> all = new ArrayList<>();
    if (!(node.get() instanceof Node.Items items)) {
      problems.add(node.get().span(), "wrong.listBelongsEachMaterial");
      return List.of();
    }
    for (Node item : items.items()) {
      if (item instanceof Node.Entries map) {
        entry(map, schema).ifPresent(all::add);
      } else {
        problems.add(item.span(), "wrong.materialFiguresBelongsNot", item.words());
      }
    }
    reportTwice(all);
    return all;
  }

  private void reportTwice(List<Entry> all) {
    Map<String, Entry> seen = new LinkedHashMap<>();
    for (Entry e : all) {
      Entry first = seen.putIfAbsent(Index.fold(e.name()), e);
      if (first != null) {
        problems.add(
            e.origin().span(),
            "wrong.appearsTwiceFirstLine",
            e.name(),
            first.origin().span().line());
      }
    }
  }

  private Optional<Entry> entry(Node.Entries map, List<Property> schema) {
    Optional<String> name = text(map, "name");
    if (name.isEmpty() || name.get().isBlank() || name.get().length() > MOST_NAME) {
      problems.add(map.span(), Saying.of("wrong.materialNeedsName1"), "name: my bronze");
      return Optional.empty();
    }
    Map<String, Fact> read = facts(map, schema, ABOUT);
    Origin origin = new Origin(map.get("name").map(Node::span).orElse(map.span()), own);
    return Optional.of(
        new Entry(
            name.get().strip(),
            text(map, "based on"),
            names(map),
            text(map, "made of").orElse(""),
            text(map, "note").orElse(""),
            read,
            Map.of(),
            origin));
  }

  private Map<String, Fact> facts(Node.Entries map, List<Property> schema, List<String> about) {
    Map<String, Fact> read = new LinkedHashMap<>();
    for (Node.Entry e : map.entries()) {
      if (about.contains(e.key())) {
        continue;
      }
      Optional<Property> property = Property.find(schema, e.key());
      if (property.isPresent()) {
        facts.read(property.get(), e).ifPresent(fact -> read.put(e.key(), fact));
      } else {
        List<String> known = new ArrayList<>(about);
        schema.forEach(p -> known.add(p.word()));
        unknownWord(e, known, problems);
      }
    }
    return read;
  }

  private Optional<String> text(Node.Entries map, String key) {
    Optional<Node> node = map.get(key);
    if (node.isEmpty()) {
      return Optional.empty();
    }
    if (node.get() instanceof Node.Text t && !t.isEmpty()) {
      return Optional.of(t.text().strip());
    }
    problems.add(node.get().span(), "wrong.singleValueBelongsBehind", key);
    return Optional.empty();
  }

  private List<String> names(Node.Entries map) {
    return map.get("also called").map(node -> texts(node, problems)).orElse(List.of());
  }

  public static List<String> texts(Node node, Problems problems) {
    List<String> names = new ArrayList<>();
    if (node instanceof Node.Items items) {
      for (Node item : items.items()) {
        if (item instanceof Node.Text t && !t.text().isBlank()) {
          names.add(t.text().strip());
        } else {
          problems.add(item.span(), "wrong.nameBelongs");
        }
      }
    } else {
      problems.add(node.span(), Saying.of("wrong.listNamesBelongs"), "[first name, second name]");
    }
    return names;
  }
}
