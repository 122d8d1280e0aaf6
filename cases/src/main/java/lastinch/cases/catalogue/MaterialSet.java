package lastinch.cases.catalogue;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import lastinch.cases.catalogue.read.Entry;
import lastinch.cases.catalogue.read.Index;
import lastinch.cases.catalogue.read.MaterialsFile;
import lastinch.cases.format.Problems;
import lastinch.cases.schema.NearestWord;
import lastinch.cases.units.Saying;

/** All materials of one group: those of the catalogue with a person's own laid over them. */
final class MaterialSet {
  private final List<Index.Line> lines;
  private final Function<MaterialsFile, List<Entry>> group;
  private final List<Entry> own;
  private final Map<String, String> byFold = new LinkedHashMap<>();

  /**
   * Makes a shelf.
   *
   * @param lines the catalogue's materials of the group
   * @param group picks the group from a file
   * @param own a person's own entries, the later ones winning
   */
  MaterialSet(List<Index.Line> lines, Function<MaterialsFile, List<Entry>> group, List<Entry> own) {
    this.lines = lines;
    this.group = group;
    this.own = List.copyOf(own);
    for (Index.Line line : lines) {
      byFold.put(Index.fold(line.name()), line.name());
      line.alsoCalled().forEach(other -> byFold.put(Index.fold(other), line.name()));
      line.standIns().keySet().forEach(other -> byFold.put(Index.fold(other), line.name()));
    }
    for (Entry e : own) {
      String name = byFold.computeIfAbsent(Index.fold(e.name()), f -> e.name());
      e.alsoCalled().forEach(other -> byFold.putIfAbsent(Index.fold(other), name));
    }
  }

  /** All names, the catalogue's first. */
  List<String> names() {
    return new ArrayList<>(new LinkedHashSet<>(byFold.values()));
  }

  /** The name as printed for a name as typed. */
  Optional<String> find(String typed) {
    return Optional.ofNullable(byFold.get(Index.fold(typed)));
  }

  /** Names that someone may have meant. */
  List<String> nearest(String typed) {
    Set<String> near = new LinkedHashSet<>(NearestWord.names(typed, names()));
    if (near.isEmpty()) {
      Set<String> all = new LinkedHashSet<>();
      lines.forEach(line -> all.addAll(otherNames(line.name())));
      NearestWord.names(typed, all).forEach(other -> find(other).ifPresent(near::add));
    }
    return List.copyOf(near);
  }

  /** Why a name is read as another material; empty for a name that means what it says. */
  Optional<String> aliasNote(String typed) {
    String folded = Index.fold(typed);
    return lines.stream()
        .flatMap(line -> line.standIns().entrySet().stream())
        .filter(e -> Index.fold(e.getKey()).equals(folded))
        .map(Map.Entry::getValue)
        .findFirst();
  }

  /** Other names of a material. */
  List<String> otherNames(String name) {
    Set<String> others = new LinkedHashSet<>();
    lines.stream()
        .filter(l -> l.name().equals(name))
        .forEach(
            l -> {
              others.addAll(l.alsoCalled());
              others.addAll(l.standIns().keySet());
            });
    own.stream()
        .filter(e -> find(e.name()).orElse("").equals(name))
        .forEach(e -> others.addAll(e.alsoCalled()));
    return List.copyOf(others);
  }

  /**
   * The whole entry of a material.
   *
   * @param name as printed
   */
  Entry entry(String name) {
    return resolve(name, own.size(), new LinkedHashSet<>(), new Problems());
  }

  /** Reports own entries that lean on something missing or on each other. */
  void check(Problems problems) {
    for (Entry e : own) {
      resolve(find(e.name()).orElse(e.name()), own.size(), new LinkedHashSet<>(), problems);
    }
  }

  /** Entry made of the first {@code count} own entries and the catalogue. */
  private Entry resolve(String name, int count, Set<String> asked, Problems problems) {
    for (int i = count - 1; i >= 0; i--) {
      Entry mine = own.get(i);
      if (find(mine.name()).orElse("").equals(name)) {
        return named(name, laidOver(mine, name, i, asked, problems));
      }
    }
    Index.Line line =
        lines.stream()
            .filter(l -> l.name().equals(name))
            .findFirst()
            .orElseThrow(() -> new IllegalArgumentException("no material named " + name));
    return group.apply(Library.only().file(line.file())).stream()
        .filter(e -> e.name().equals(name))
        .findFirst()
        .orElseThrow(() -> new IllegalStateException(line.file() + " does not hold " + name));
  }

  private Entry laidOver(Entry mine, String name, int i, Set<String> asked, Problems problems) {
    if (mine.basedOn().isEmpty()) {
      boolean known = lines.stream().anyMatch(l -> l.name().equals(name));
      return known ? mine.over(resolve(name, i, asked, problems)) : mine;
    }
    String wanted = mine.basedOn().get();
    Optional<String> base = find(wanted);
    if (base.isEmpty()) {
      problems.add(
          mine.origin().span(),
          "wrong.basedWhichNotKnown",
          mine.name(),
          wanted,
          suggestion(wanted));
      return mine;
    }
    if (!asked.add(name) || (base.get().equals(name) && !inCatalogue(name))) {
      problems.add(mine.origin().span(), "wrong.basedItselfRoundTrip", mine.name());
      return mine;
    }
    int below = base.get().equals(name) ? i : own.size();
    return mine.over(resolve(base.get(), below, asked, problems));
  }

  private boolean inCatalogue(String name) {
    return lines.stream().anyMatch(l -> l.name().equals(name));
  }

  private Saying suggestion(String wanted) {
    List<String> near = nearest(wanted);
    return near.isEmpty() ? Saying.NONE : Saying.of("wrong.didYouMean", String.join(" or ", near));
  }

  private static Entry named(String name, Entry e) {
    return new Entry(
        name,
        e.basedOn(),
        e.alsoCalled(),
        e.madeOf(),
        e.note(),
        e.facts(),
        e.replaced(),
        e.origin());
  }
}
