package lastinch.ui.words.study;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.OptionalDouble;
import lastinch.ui.words.Figures;
import lastinch.ui.words.Page;
import lastinch.ui.words.PlainLetters;
import lastinch.ui.words.Sentences;

/**
 * How the runs of an answer were poured.
 *
 * @param square edge of the squares [m] when it was over the plane; else along the channels
 */
public record HowPoured(OptionalDouble square) {
  /** Along the channels. */
  public static final HowPoured ALONG = new HowPoured(OptionalDouble.empty());

  /** What a person types for the plane. */
  public static final String TYPED = "--solver plane";

  /** Edge of the squares of a single pour, and of each of many, when none is typed [m]. */
  public static final double USUAL_SQUARE = 2e-3;

  public static final double USUAL_SQUARE_OF_MANY = 4e-3;

  public HowPoured {
    Objects.requireNonNull(square, "square");
  }

  /** Over the plane, in squares of an edge [m]. */
  public static HowPoured square(double edge) {
    return new HowPoured(OptionalDouble.of(edge));
  }

  /** Whether it was over the plane. */
  public boolean isPlane() {
    return square.isPresent();
  }

  /**
   * A case file as it is typed in a command that pours it the same way.
   *
   * @param usual edge of the squares of that command when none is typed [m]
   */
  public String typed(String file, double usual) {
    if (!isPlane()) {
      return file;
    }
    double edge = square.getAsDouble();
    return edge == usual
        ? file + " " + TYPED
        : file
            + " "
            + TYPED
            + " --square "
            + BigDecimal.valueOf(edge * 1e3)
                .setScale(2, RoundingMode.HALF_EVEN)
                .stripTrailingZeros()
                .toPlainString()
            + "mm";
  }

  /** The same for a command that makes many pours. */
  public String typed(String file) {
    return typed(file, USUAL_SQUARE_OF_MANY);
  }

  /** Name of the way, for other programs. */
  public String solver() {
    return isPlane() ? "plane" : "network";
  }

  /** The way in a few words. */
  public String brief(Sentences sentences, Figures figures) {
    return isPlane()
        ? sentences.say("how.plane", "square", figures.calipers(square.getAsDouble()))
        : sentences.say("how.network");
  }

  /**
   * An answer in words with what a person should know of the way, before its cautions; the same
   * answer where it was poured along the channels.
   *
   * @param answer line by line
   * @param more what is to be known besides, one sentence each
   */
  public List<String> noted(
      List<String> answer, List<String> more, Sentences sentences, Figures figures) {
    if (!isPlane()) {
      return answer;
    }
    List<String> notes = new ArrayList<>();
    notes.add(sentences.say("plane.note.how", "square", figures.calipers(square.getAsDouble())));
    notes.add(sentences.say("plane.note.limits"));
    notes.addAll(more);
    Page page = new Page();
    String label = sentences.say("label.noted");
    for (String note : notes) {
      page.entry(label, note);
      label = "";
    }
    String end = Page.pad(sentences.say("label.left"), Page.LABEL);
    int at = answer.size();
    while (at > 0 && !answer.get(at - 1).startsWith(end)) {
      at--;
    }
    int before = at > 0 ? at - 1 : answer.size();
    List<String> all = new ArrayList<>(answer.subList(0, before));
    all.addAll(PlainLetters.all(page.lines()));
    all.addAll(answer.subList(before, answer.size()));
    return List.copyOf(all);
  }
}
