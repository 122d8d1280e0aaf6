package lastinch.ui.words;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.OptionalDouble;

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
    notes.add(sentences.say("plane.note.commands", "words", TYPED));
    Page page = new Page();
    String label = sentences.say("label.noted");
    for (String note : notes) {
      page.entry(label, note);
      label = "";
    }
    String care = Page.pad(sentences.say("label.care"), Page.LABEL);
    int at = answer.size();
    while (at > 0 && !answer.get(at - 1).startsWith(care)) {
      at--;
    }
    int before = at > 0 ? at - 1 : answer.size();
    List<String> all = new ArrayList<>(answer.subList(0, before));
    all.addAll(PlainLetters.all(page.lines()));
    all.addAll(answer.subList(before, answer.size()));
    return List.copyOf(all);
  }
}
