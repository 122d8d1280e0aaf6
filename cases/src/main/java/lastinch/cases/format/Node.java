package lastinch.cases.format;

import java.util.List;
import java.util.Objects;
import java.util.Optional;

/** A value in a file: text, a list or a map, with the place where it stands. */
public sealed interface Node permits Node.Text, Node.Items, Node.Entries {
  /** Where it stands. */
  Span span();

  /** What it is, with its article, for sentences. */
  String words();

  /**
   * A single value. It is always text; what it means is for the schema to say.
   *
   * @param span the token, quotes included
   * @param text without quotes; empty when nothing stands there
   * @param quoted whether quotes stood round it
   */
  record Text(Span span, String text, boolean quoted) implements Node {
    public Text {
      Objects.requireNonNull(span, "span");
      Objects.requireNonNull(text, "text");
    }

    @Override
    public String words() {
      return text.isEmpty() ? "nothing" : "a single value";
    }

    /** Whether nothing stands there. */
    public boolean isEmpty() {
      return text.isEmpty() && !quoted;
    }
  }

  /**
   * A list.
   *
   * @param span from its first character to behind its last
   * @param items in the file's order
   * @param flow whether it stands in brackets
   */
  record Items(Span span, List<Node> items, boolean flow) implements Node {
    public Items {
      Objects.requireNonNull(span, "span");
      items = List.copyOf(items);
    }

    @Override
    public String words() {
      return "a list";
    }
  }

  /**
   * Words with their values.
   *
   * @param span from its first character to behind its last
   * @param entries in the file's order, each word once
   * @param flow whether it stands in braces
   * @param damaged whether a line in it could not be read, so that something may be missing
   */
  record Entries(Span span, List<Entry> entries, boolean flow, boolean damaged) implements Node {
    public Entries {
      Objects.requireNonNull(span, "span");
      entries = List.copyOf(entries);
    }

    @Override
    public String words() {
      return "a group of words";
    }

    /** The entry for a folded word. */
    public Optional<Entry> entry(String key) {
      return entries.stream().filter(e -> e.key().equals(key)).findFirst();
    }

    /** The value for a folded word. */
    public Optional<Node> get(String key) {
      return entry(key).map(Entry::value);
    }

    /** The value for a folded word, when it is of a kind. */
    public <T extends Node> Optional<T> get(String key, Class<T> kind) {
      return get(key).filter(kind::isInstance).map(kind::cast);
    }
  }

  /**
   * A word and its value.
   *
   * @param keySpan where the word stands
   * @param key folded: lower case, single spaces
   * @param value what stands behind it
   */
  public record Entry(Span keySpan, String key, Node value) {
    public Entry {
      Objects.requireNonNull(keySpan, "keySpan");
      Objects.requireNonNull(key, "key");
      Objects.requireNonNull(value, "value");
    }

    /** Word and value together. */
    public Span span() {
      return value.span().source() == keySpan.source() ? keySpan.to(value.span()) : keySpan;
    }
  }
}
