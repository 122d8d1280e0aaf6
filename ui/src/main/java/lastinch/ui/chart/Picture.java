package lastinch.ui.chart;

import java.awt.Graphics2D;
import java.awt.geom.Rectangle2D;
import java.util.Objects;

/**
 * A picture of a poured plan, without its title and its caption.
 *
 * @param heading what it shows, in a few words
 * @param caption what to see in it
 * @param tall height of its body when it is {@link Paper#INNER} wide, in dots
 * @param body draws it
 */
record Picture(String heading, String caption, double tall, Body body) {
  Picture {
    Objects.requireNonNull(heading, "heading");
    Objects.requireNonNull(caption, "caption");
    Objects.requireNonNull(body, "body");
  }

  /** Draws into a part of the paper. */
  @FunctionalInterface
  interface Body {
    void draw(Graphics2D g, Rectangle2D area);
  }
}
