package lastinch.cases.plan;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import lastinch.cases.format.Node;
import lastinch.cases.format.Problems;
import lastinch.cases.schema.Kind;
import lastinch.cases.schema.NearestWord;
import lastinch.cases.schema.Part;
import lastinch.cases.schema.Values;
import lastinch.cases.schema.Vocabulary;
import lastinch.cases.schema.Word;
import lastinch.cases.units.Saying;

/** Lays a file over the one it is based on. */
final class Merge {
  private static final List<String> NEVER_INHERITED =
      List.of("format", "title", "based on", "for checking");

  private final Problems problems;

  private Merge(Problems problems) {
    this.problems = problems;
  }

  /** Everything a chain of files says, the nearest file winning. */
  static Node.Entries of(Chain chain, Problems problems) {
    Merge merge = new Merge(problems);
    List<Chain.Link> links = chain.links();
    Node.Entries map = new Node.Entries(links.get(0).map().span(), List.of(), false, false);
    for (int i = links.size() - 1; i >= 0; i--) {
      Node.Entries own = links.get(i).map();
      List<Node.Entry> kept = new ArrayList<>();
      for (Node.Entry entry : map.entries()) {
        if (!NEVER_INHERITED.contains(entry.key())) {
          kept.add(entry);
        }
      }
      Node.Entries base = new Node.Entries(map.span(), kept, false, map.damaged());
      map = merge.over(Vocabulary.CASE, base, own);
    }
    return map;
  }

  private Node.Entries over(Part part, Node.Entries base, Node.Entries own) {
    Map<String, Node.Entry> all = new LinkedHashMap<>();
    for (Node.Entry entry : base.entries()) {
      all.put(entry.key(), entry);
    }
    own.get(Vocabulary.LEAVE_OUT).ifPresent(list -> leaveOut(part, all, list));
    for (Part.Either either : part.eithers()) {
      dropOtherWays(either, all, own);
    }
    for (Node.Entry entry : own.entries()) {
      if (!entry.key().equals(Vocabulary.LEAVE_OUT)) {
        Node.Entry before = all.get(entry.key());
        Node value = before == null ? alone(part, entry) : value(part, before, entry);
        all.put(entry.key(), new Node.Entry(entry.keySpan(), entry.key(), value));
      }
    }
    return new Node.Entries(
        own.span(), new ArrayList<>(all.values()), own.flow(), own.damaged() || base.damaged());
  }

  private static void dropOtherWays(
      Part.Either either, Map<String, Node.Entry> all, Node.Entries own) {
    int typed = -1;
    for (Node.Entry entry : own.entries()) {
      typed = Math.max(typed, either.way(entry.key()));
    }
    if (typed < 0) {
      return;
    }
    for (int way = 0; way < either.ways().size(); way++) {
      if (way != typed) {
        either.ways().get(way).forEach(all::remove);
      }
    }
  }

  /** What a file says that is based on none, so that there is nothing to leave out. */
  static Node.Entries alone(Part part, Node.Entries own, Problems problems) {
    return new Merge(problems).alone(part, own);
  }

  private Node.Entries alone(Part part, Node.Entries own) {
    return over(part, new Node.Entries(own.span(), List.of(), own.flow(), false), own);
  }

  /** A value with nothing below it. */
  private Node alone(Part part, Node.Entry entry) {
    Kind kind = part.word(entry.key()).orElseThrow().kind();
    if (kind instanceof Kind.Group group && entry.value() instanceof Node.Entries own) {
      return alone(group.part(), own);
    }
    if (kind instanceof Kind.Named named && entry.value() instanceof Node.Items own) {
      return byName(named.part(), new Node.Items(own.span(), List.of(), own.flow()), own);
    }
    return entry.value();
  }

  private Node value(Part part, Node.Entry before, Node.Entry entry) {
    Kind kind = part.word(entry.key()).orElseThrow().kind();
    if (kind instanceof Kind.Group group
        && before.value() instanceof Node.Entries base
        && entry.value() instanceof Node.Entries own) {
      boolean replaced = entry.key().equals("mould") && namesOtherMaterial(base, own);
      return replaced ? alone(part, entry) : over(group.part(), base, own);
    }
    if (kind instanceof Kind.Named named
        && before.value() instanceof Node.Items base
        && entry.value() instanceof Node.Items own) {
      return byName(named.part(), base, own);
    }
    return entry.value();
  }

  private static boolean namesOtherMaterial(Node.Entries base, Node.Entries own) {
    Optional<String> now = name(own, "material");
    return now.isPresent() && !now.equals(name(base, "material"));
  }

  private Node byName(Part part, Node.Items base, Node.Items own) {
    Map<String, Node> all = new LinkedHashMap<>();
    int nameless = 0;
    for (Node item : base.items()) {
      all.put(
          item instanceof Node.Entries m ? name(m, "name").orElse("\n" + nameless++) : "", item);
    }
    for (Node item : own.items()) {
      if (!(item instanceof Node.Entries map)) {
        continue;
      }
      String key = name(map, "name").orElse("\n" + nameless++);
      Node before = all.get(key);
      all.put(key, before instanceof Node.Entries old ? over(part, old, map) : alone(part, map));
    }
    return new Node.Items(own.span(), new ArrayList<>(all.values()), own.flow());
  }

  private static Optional<String> name(Node.Entries map, String key) {
    return map.get(key)
        .flatMap(n -> Values.text(n, new Problems()))
        .map(t -> t.toLowerCase(Locale.ROOT));
  }

  private void leaveOut(Part part, Map<String, Node.Entry> all, Node list) {
    if (!(list instanceof Node.Items items)) {
      return;
    }
    for (Node item : items.items()) {
      Optional<String> name =
          Values.text(item, new Problems()).map(t -> t.toLowerCase(Locale.ROOT));
      if (name.isPresent()) {
        leaveOut(part, all, item, name.get());
      }
    }
  }

  private void leaveOut(Part part, Map<String, Node.Entry> all, Node item, String name) {
    List<String> hits = new ArrayList<>();
    List<String> known = new ArrayList<>();
    String key = part.word(name).map(Word::key).orElse(name);
    for (Node.Entry entry : all.values()) {
      known.add(entry.key());
      if (entry.key().equals(key)) {
        hits.add(entry.key());
      }
      if (entry.value() instanceof Node.Items members) {
        for (Node member : members.items()) {
          Optional<String> called =
              member instanceof Node.Entries m ? name(m, "name") : Optional.empty();
          called.ifPresent(known::add);
          if (called.isPresent() && called.get().equals(name)) {
            hits.add(entry.key());
          }
        }
      }
    }
    if (hits.isEmpty()) {
      Optional<String> near = NearestWord.of(name, known);
      Saying sentence = Saying.of("wrong.nothingNameLeaveOut");
      problems.add(item.span(), sentence, near);
    } else if (hits.size() > 1) {
      problems.add(item.span(), "wrong.moreThanOneThing", String.join(" and ", hits));
    } else if (hits.get(0).equals(key)) {
      all.remove(key);
    } else {
      all.put(hits.get(0), without(all.get(hits.get(0)), name));
    }
  }

  private static Node.Entry without(Node.Entry list, String name) {
    Node.Items items = (Node.Items) list.value();
    List<Node> kept = new ArrayList<>();
    for (Node item : items.items()) {
      if (!(item instanceof Node.Entries m && name(m, "name").equals(Optional.of(name)))) {
        kept.add(item);
      }
    }
    return new Node.Entry(
        list.keySpan(), list.key(), new Node.Items(items.span(), kept, items.flow()));
  }
}
