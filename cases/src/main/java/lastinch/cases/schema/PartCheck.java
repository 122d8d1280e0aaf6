package lastinch.cases.schema;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import lastinch.cases.format.Node;
import lastinch.cases.format.Problems;
import lastinch.cases.units.Saying;

/**
 * Checks the words and values of one file, each by itself. What is required and which metals and
 * moulds there are is checked later, when everything the file is based on is known.
 */
public final class PartCheck {
  private final Problems problems;

  /**
   * A check.
   *
   * @param problems what is found is added here; updated
   */
  public PartCheck(Problems problems) {
    this.problems = problems;
  }

  /** The same words under their right keys, unknown words left out. */
  public Node.Entries check(Part part, Node.Entries map) {
    List<Node.Entry> sound = new ArrayList<>();
    Set<String> seen = new HashSet<>();
    boolean damaged = map.damaged();
    for (Node.Entry entry : map.entries()) {
      if (entry.key().equals(Vocabulary.LEAVE_OUT)) {
        leaveOut(entry.value());
        sound.add(entry);
        continue;
      }
      Optional<Word> word = part.word(entry.key());
      if (word.isEmpty()) {
        unknown(part, entry);
        damaged = true;
      } else if (!seen.add(word.get().key())) {
        problems.add(entry.keySpan(), "wrong.wordAppearsTwice", word.get().key());
      } else {
        if (!word.get().key().equals(entry.key())) {
          problems.note(entry.keySpan(), "wrong.taken", word.get().key());
        }
        Node value = value(word.get(), entry);
        sound.add(new Node.Entry(entry.keySpan(), word.get().key(), value));
      }
    }
    eithers(part, sound);
    return new Node.Entries(map.span(), sound, map.flow(), damaged);
  }

  private void eithers(Part part, List<Node.Entry> entries) {
    for (Part.Either either : part.eithers()) {
      Node.Entry first = null;
      for (Node.Entry entry : entries) {
        int way = either.way(entry.key());
        if (way < 0) {
          continue;
        }
        if (first == null) {
          first = entry;
        } else if (either.way(first.key()) != way
            && !(either.together().contains(entry.key())
                && either.together().contains(first.key()))) {
          String lead = either.ways().get(way).get(0);
          problems.add(
              entry.keySpan(),
              "wrong.onlyOneCanSay",
              lead.equals(entry.key()) ? Saying.NONE : Saying.of("wrong.goes", entry.key(), lead),
              either.listing(),
              either.words(),
              first.key(),
              first.keySpan().line());
        }
      }
    }
  }

  private void unknown(Part part, Node.Entry entry) {
    String key = entry.key();
    int colon = key.indexOf(':');
    if (colon > 0 && part.word(key.substring(0, colon).strip()).isPresent()) {
      problems.add(
          entry.keySpan(),
          Saying.of("wrong.putSpaceBehindColon"),
          key.substring(0, colon) + ": " + key.substring(colon + 1).strip());
      return;
    }
    for (Word word : part.words()) {
      if (key.startsWith(word.key() + " ") && entry.value() instanceof Node.Text t && t.isEmpty()) {
        problems.add(
            entry.keySpan(),
            Saying.of("wrong.colonMissing"),
            word.key() + ": " + key.substring(word.key().length()).strip());
        return;
      }
    }
    Optional<Saying> gravity = GravityOnly.sentence(key);
    if (gravity.isPresent()) {
      problems.add(entry.keySpan(), gravity.get());
      return;
    }
    List<String> candidates = new ArrayList<>();
    for (Word word : part.words()) {
      candidates.add(word.key());
      candidates.addAll(word.twins());
    }
    Optional<String> near = NearestWord.of(key, candidates).flatMap(part::word).map(Word::key);
    if (near.isPresent()) {
      problems.add(entry.keySpan(), Saying.of("wrong.unknownWord"), near.get());
      return;
    }
    Optional<String> home = Documentation.homeOf(key);
    problems.add(
        entry.keySpan(),
        home.map(h -> Saying.of("wrong.unknownWordBelongsUnder", h))
            .orElse(Saying.of("wrong.unknownWordUnderStand", part.name(), part.listing())));
  }

  private void leaveOut(Node value) {
    if (!(value instanceof Node.Items items)) {
      problems.add(value.span(), "wrong.listBracketsNeededLeave");
      return;
    }
    for (Node item : items.items()) {
      Values.text(item, problems);
    }
  }

  private Node value(Word word, Node.Entry entry) {
    Node value = entry.value();
    if (word.unknown() && Values.isUnknown(value)) {
      return value;
    }
    Kind kind = word.kind();
    if (kind instanceof Kind.Group group) {
      return group(group.part(), value);
    }
    if (kind instanceof Kind.Named named) {
      return named(named.part(), value);
    }
    if (kind instanceof Kind.ListOf list) {
      return list(list.item(), value);
    }
    if (kind instanceof Kind.Amount && Values.isUnknown(value)) {
      problems.add(value.span(), "wrong.knownGiveMeasuredValue", entry.key());
      return value;
    }
    kind.read(value, problems);
    return value;
  }

  private Node group(Part part, Node value) {
    if (value instanceof Node.Entries map) {
      return check(part, map);
    }
    if (value instanceof Node.Text text && text.isEmpty()) {
      problems.add(value.span(), "wrong.nothingWrittenUnderWord", part.listing());
    } else if (Values.isUnknown(value)) {
      problems.add(value.span(), usualSizes(part));
    } else {
      problems.add(value.span(), "wrong.wordsValuesNeeded", part.listing());
    }
    return new Node.Entries(value.span(), List.of(), false, true);
  }

  /** What to do where a whole part is not known. */
  private static Saying usualSizes(Part part) {
    return Saying.of("wrong.sizesNeededPlanMade", part.listing());
  }

  private Node named(Part part, Node value) {
    if (!(value instanceof Node.Items items)) {
      if (Values.isUnknown(value)) {
        problems.add(value.span(), usualSizes(part));
      } else if (!(value instanceof Node.Entries map && map.damaged())) {
        problems.add(value.span(), "wrong.listNeededEachLine", "{", "}");
      }
      return new Node.Items(value.span(), List.of(), false);
    }
    List<Node> sound = new ArrayList<>();
    Set<String> seen = new HashSet<>();
    for (Node item : items.items()) {
      if (!(item instanceof Node.Entries map)) {
        problems.add(item.span(), "wrong.wordsValuesNeeded", part.listing());
        continue;
      }
      Node.Entries checked = check(part, map);
      sound.add(checked);
      Optional<String> name = checked.get("name").flatMap(n -> Values.name(n, new Problems()));
      if (checked.get("name").isEmpty() && !checked.damaged()) {
        problems.add(map.span(), "wrong.needsName", part.name());
      }
      if (name.isPresent() && !seen.add(name.get().toLowerCase(Locale.ROOT))) {
        problems.add(map.span(), "wrong.anotherNameAbove", part.name());
      }
    }
    return new Node.Items(items.span(), sound, items.flow());
  }

  private Node list(Kind kind, Node value) {
    if (!(value instanceof Node.Items items)) {
      problems.add(value.span(), "wrong.listBracketsNeeded");
      return new Node.Items(value.span(), List.of(), false);
    }
    List<Node> sound = new ArrayList<>();
    for (Node item : items.items()) {
      if (kind instanceof Kind.Group group) {
        sound.add(group(group.part(), item));
      } else {
        kind.read(item, problems);
        sound.add(item);
      }
    }
    return new Node.Items(items.span(), sound, items.flow());
  }
}
