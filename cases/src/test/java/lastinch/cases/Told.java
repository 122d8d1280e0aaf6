package lastinch.cases;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Properties;
import lastinch.cases.format.Problem;
import lastinch.cases.units.Saying;

/** Problems as people read them: the sentences stand in the file beside the commands. */
public final class Told {
  private static final Properties WORDS = words();

  private Told() {}

  private static Properties words() {
    Path file = Path.of("..", "ui/src/main/resources/lastinch/ui/words/words.properties");
    Properties words = new Properties();
    try (var reader = Files.newBufferedReader(file)) {
      words.load(reader);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return words;
  }

  /** What is said, its places filled. */
  public static String sentence(Saying said) {
    if (said.equals(Saying.NONE)) {
      return "";
    }
    String pattern = WORDS.getProperty(said.key());
    if (pattern == null) {
      throw new IllegalArgumentException("no sentence " + said.key());
    }
    StringBuilder text = new StringBuilder();
    int from = 0;
    for (int i = 0; i < said.values().size(); i++) {
      int place = pattern.indexOf("{" + (char) ('a' + i) + "}", from);
      if (place < 0) {
        throw new IllegalArgumentException(said.key() + " has no place for " + said.values());
      }
      Object value = said.values().get(i);
      text.append(pattern, from, place);
      text.append(value instanceof Saying inner ? sentence(inner) : value.toString());
      from = place + 3;
    }
    return text.append(pattern.substring(from)).toString();
  }

  public static String sentence(Problem problem) {
    return sentence(problem.said());
  }

  /** The sentence, ended, with the suggestion behind it. */
  public static String message(Problem problem) {
    String text = sentence(problem);
    String ended = text.endsWith(".") || text.endsWith("?") ? text : text + ".";
    return problem.suggestion().map(s -> ended + " Did you mean: " + s).orElse(ended);
  }
}
