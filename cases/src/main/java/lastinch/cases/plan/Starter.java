package lastinch.cases.plan;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** Commented files to begin a plan of one's own from. */
public enum Starter {
  SAND_FLAT("sand flat", "a piece that lies flat in sand"),
  SAND_UPRIGHT("sand upright", "a piece that stands on its tip in sand"),
  INVESTMENT("investment", "a print or wax in a hot flask"),
  LEAF("leaf", "a flat leaf, wide and thin all over"),
  WHEEL("wheel", "a wheel or trivet with thin spokes");

  private final String words;
  private final String help;

  Starter(String words, String help) {
    this.words = words;
    this.help = help;
  }

  /** What a person types to get it. */
  public String words() {
    return words;
  }

  /** What it is for, in one line. */
  public String help() {
    return help;
  }

  /** The starter of a name; a dash may stand for a space. */
  public static Optional<Starter> named(String typed) {
    String folded = typed.strip().toLowerCase(Locale.ROOT).replace('-', ' ');
    return Arrays.stream(values()).filter(s -> s.words.equals(folded)).findFirst();
  }

  /** All names, for sentences. */
  public static List<String> names() {
    return Arrays.stream(values()).map(Starter::words).toList();
  }

  /** The whole text of the file. */
  public String text() {
    String file = "/lastinch/cases/starters/" + words.replace(' ', '-') + ".yaml";
    try (InputStream in = Starter.class.getResourceAsStream(file)) {
      if (in == null) {
        throw new IllegalStateException("the program is not whole: " + file + " is missing");
      }
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
