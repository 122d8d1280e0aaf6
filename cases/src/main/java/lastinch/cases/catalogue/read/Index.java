package lastinch.cases.catalogue.read;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import lastinch.cases.format.Node;
import lastinch.cases.format.Problems;

/** Which file holds which material, and under which names a case may call for it. */
public final class Index {
  /**
   * One material of the catalogue.
   *
   * @param name as printed
   * @param file that holds it
   * @param alsoCalled other names
   * @param standIns names of other materials that are read as this one, and why
   */
  public record Line(
      String name, String file, List<String> alsoCalled, Map<String, String> standIns) {
    public Line {
      alsoCalled = List.copyOf(alsoCalled);
    }
  }

  private final Map<String, List<Line>> groups;

  private Index(Map<String, List<Line>> groups) {
    this.groups = groups;
  }

  /** The lines of a group in printing order. */
  public List<Line> group(String group) {
    return groups.getOrDefault(group, List.of());
  }

  /** Names are the same when they differ only by capitals, spaces and hyphens. */
  public static String fold(String name) {
    return name.toLowerCase(Locale.ROOT).replaceAll("[\\s-]+", "");
  }

  public static Index read(Node.Entries top, Problems problems) {
    Map<String, List<Line>> groups = new LinkedHashMap<>();
    MaterialsReader.checkFormat(top, problems);
    Optional<Node.Entries> all = top.get("index", Node.Entries.class);
    if (all.isEmpty()) {
      problems.add(top.span(), "wrong.indexMissing");
      return new Index(groups);
    }
    for (Node.Entry group : all.get().entries()) {
      List<Line> lines = new ArrayList<>();
      if (group.value() instanceof Node.Items items) {
        for (Node item : items.items()) {
          line(item, problems).ifPresent(lines::add);
        }
      }
      groups.put(group.key(), List.copyOf(lines));
    }
    return new Index(groups);
  }

  private static Optional<Line> line(Node item, Problems problems) {
    if (item instanceof Node.Entries map) {
      Optional<Node.Text> name = map.get("name", Node.Text.class);
      Optional<Node.Text> file = map.get("file", Node.Text.class);
      if (name.isPresent() && file.isPresent()) {
        List<String> others =
            map.get("also called").map(n -> MaterialsReader.texts(n, problems)).orElse(List.of());
        return Optional.of(new Line(name.get().text(), file.get().text(), others, standIns(map)));
      }
    }
    problems.add(item.span(), "wrong.nameFileBelong");
    return Optional.empty();
  }

  private static Map<String, String> standIns(Node.Entries map) {
    Map<String, String> read = new LinkedHashMap<>();
    map.get("read as this", Node.Items.class)
        .ifPresent(items -> Sources.pairs(items, "name", "because").forEach(read::put));
    return read;
  }
}
