package lastinch.ui.words;

import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.PropertyResourceBundle;
import java.util.ResourceBundle;
import java.util.Set;
import lastinch.cases.format.Problem;
import lastinch.cases.units.Saying;

/**
 * The one file of sentences. A sentence holds places in braces, {@code {reach}}, that are filled by
 * name.
 */
public final class Sentences {
  private static final String FILE = "words.properties";
  private final ResourceBundle bundle;

  private Sentences(ResourceBundle bundle) {
    this.bundle = bundle;
  }

  /** Reads the file that ships with the program. */
  public static Sentences english() {
    try (InputStream in = Sentences.class.getResourceAsStream(FILE)) {
      if (in == null) {
        throw new IllegalStateException("missing resource " + FILE);
      }
      return new Sentences(
          new PropertyResourceBundle(new InputStreamReader(in, StandardCharsets.UTF_8)));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** The sentences as a bundle, for the help pages of the command line. */
  public ResourceBundle bundle() {
    return bundle;
  }

  /** Whether there is a sentence of that name. */
  public boolean has(String key) {
    return bundle.containsKey(key);
  }

  /** All names, in no particular order. */
  public Set<String> keys() {
    return bundle.keySet();
  }

  /**
   * A sentence with its places filled.
   *
   * @param key name of the sentence
   * @param namesAndValues name, value, name, value ...
   * @throws IllegalArgumentException when a place has no value or a value has no place
   */
  public String say(String key, String... namesAndValues) {
    if (namesAndValues.length % 2 != 0) {
      throw new IllegalArgumentException(key + ": names and values must come in pairs");
    }
    if (!bundle.containsKey(key)) {
      throw new IllegalArgumentException("no sentence " + key);
    }
    String pattern = bundle.getString(key);
    StringBuilder out = new StringBuilder();
    int used = 0;
    int from = 0;
    int open = pattern.indexOf('{');
    while (open >= 0) {
      int close = pattern.indexOf('}', open);
      out.append(pattern, from, open);
      out.append(value(key, pattern.substring(open + 1, close), namesAndValues));
      used++;
      from = close + 1;
      open = pattern.indexOf('{', from);
    }
    if (used * 2 < namesAndValues.length) {
      throw new IllegalArgumentException(key + ": more values than places");
    }
    return out.append(pattern.substring(from)).toString();
  }

  /** What is said in a file's problem, its places filled. */
  public String say(Saying said) {
    if (said.equals(Saying.NONE)) {
      return "";
    }
    String[] namesAndValues = new String[2 * said.values().size()];
    for (int i = 0; i < said.values().size(); i++) {
      Object value = said.values().get(i);
      namesAndValues[2 * i] = String.valueOf((char) ('a' + i));
      namesAndValues[2 * i + 1] = value instanceof Saying s ? say(s) : value.toString();
    }
    return say(said.key(), namesAndValues);
  }

  /** What is the matter, ended, with what to write instead behind it. */
  public String say(Problem problem) {
    String text = say(problem.said());
    String ended = text.endsWith(".") || text.endsWith("?") ? text : text + ".";
    return problem
        .suggestion()
        .map(s -> say("problems.suggested", "sentence", ended, "suggestion", s))
        .orElse(ended);
  }

  private static String value(String key, String name, String[] namesAndValues) {
    for (int i = 0; i < namesAndValues.length; i += 2) {
      if (namesAndValues[i].equals(name)) {
        return namesAndValues[i + 1];
      }
    }
    throw new IllegalArgumentException(key + ": no value for {" + name + "}");
  }
}
