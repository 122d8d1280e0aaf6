package lastinch.ui.chart.paper;

import java.awt.Graphics2D;
import java.awt.geom.Rectangle2D;
import java.util.Objects;

/**
 * A picture of a poured plan, without its title and its caption.
 *
 * @param heading what it shows, in a few words
 * @param message what it says of this plan, in one sentence; empty where the verdict says it
 * @param caption what marks in it mean that carry no words themselves; empty where there are none
 * @param tall height of its body when it is {@link Paper#INNER} wide, in dots
 * @param body draws it
 */
public record Picture(String heading, String message, String caption, double tall, Body body) {
  public Picture {
    Objects.requireNonNull(heading, "heading");
    Objects.requireNonNull(message, "message");
    Objects.requireNonNull(caption, "caption");
    Objects.requireNonNull(body, "body");
  }

  /** A picture whose message is the verdict. */
  public Picture(String heading, String caption, double tall, Body body) {
    this(heading, "", caption, tall, body);
  }

  /** The same picture with a message. */
  public Picture saying(String says) {
    return new Picture(heading, says, caption, tall, body);
  }

  /** Draws into a part of the paper. */
  @FunctionalInterface
  public interface Body {
    void draw(Graphics2D g, Rectangle2D area);
  }
}
