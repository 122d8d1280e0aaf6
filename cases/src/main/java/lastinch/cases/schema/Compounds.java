package lastinch.cases.schema;

import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import lastinch.cases.format.Node;
import lastinch.cases.format.Problems;
import lastinch.cases.units.Dimension;
import lastinch.cases.units.Parsed;
import lastinch.cases.units.Quantity;
import lastinch.cases.units.QuantityText;
import lastinch.cases.units.Saying;
import lastinch.solver.casting.Orientation;

/** Reads values that are made of several: how it stands, pins, sections, places. */
public final class Compounds {
  private static final Pattern TILT = Pattern.compile("tip (up|down) (?:by )?(.+)");
  private static final Pattern OVER = Pattern.compile("(.+) over (.+)");
  private static final Pattern UPRIGHT = Pattern.compile("upright,? tip (up|down)");
  private static final Pattern HEADING = Pattern.compile("(.+?) (?:to the )?(left|right)");
  private static final Pattern STRAIGHT = Pattern.compile("(.+?) straight");
  private static final Pattern TO = Pattern.compile("(.+?) to (.+)");
  private static final Pattern TIMES = Pattern.compile("(.+?) ?[x\u00d7] ?(.+)");
  private static final Pattern HOLDS = Pattern.compile("(.+?(?:kg|g|lb|oz)) (\\D.*)");
  private static final Pattern SPOT = Pattern.compile("(.+?) by (.+)");
  private static final Pattern LIMB_AT = Pattern.compile("(.+?) at (.+)", Pattern.CASE_INSENSITIVE);
  private static final Pattern LIMB_END =
      Pattern.compile("(.+) (tip|thick end)", Pattern.CASE_INSENSITIVE);
  private static final double STEEPEST = Math.toRadians(80.0);

  private Compounds() {}

  /** How the mould stands. */
  public static Optional<Orientation> stands(Node node, Problems problems) {
    Optional<String> text = Values.text(node, problems);
    if (text.isEmpty()) {
      return Optional.empty();
    }
    String words = text.get().toLowerCase(Locale.ROOT);
    if (words.equals("flat")) {
      return Optional.of(Orientation.FLAT);
    }
    Matcher upright = UPRIGHT.matcher(words);
    if (upright.matches()) {
      return Optional.of(
          upright.group(1).equals("up")
              ? Orientation.UPRIGHT_TIP_UP
              : Orientation.UPRIGHT_TIP_DOWN);
    }
    Matcher tilt = TILT.matcher(words);
    if (!tilt.matches()) {
      problems.add(node.span(), "wrong.writeFlatTipUp");
      return Optional.empty();
    }
    Optional<Double> angle = slope(node, tilt.group(2), problems);
    if (angle.isEmpty()) {
      return Optional.empty();
    }
    if (!(angle.get() > 0.0 && angle.get() <= STEEPEST)) {
      problems.add(node.span(), "wrong.allowedMoreThan0");
      return Optional.empty();
    }
    return Optional.of(Orientation.tilted(tilt.group(1).equals("up") ? angle.get() : -angle.get()));
  }

  private static Optional<Double> slope(Node node, String words, Problems problems) {
    Matcher over = OVER.matcher(words);
    if (!over.matches()) {
      return plain(node, words, Dimension.ANGLE, problems).map(Quantity::si);
    }
    Optional<Quantity> rise = plain(node, over.group(1), Dimension.LENGTH, problems);
    Optional<Quantity> run = plain(node, over.group(2), Dimension.LENGTH, problems);
    if (rise.isEmpty() || run.isEmpty()) {
      return Optional.empty();
    }
    double sine = rise.get().si() / run.get().si();
    return Optional.of(sine >= 0.0 && sine < 1.0 ? StrictMath.asin(sine) : Double.NaN);
  }

  /** Direction of a limb, left positive [rad]. */
  public static Optional<Double> heading(Node node, Problems problems) {
    Optional<String> text = Values.text(node, problems);
    if (text.isEmpty()) {
      return Optional.empty();
    }
    String words = text.get().toLowerCase(Locale.ROOT);
    if (words.equals("straight on")) {
      return Optional.of(0.0);
    }
    if (words.equals("straight back")) {
      return Optional.of(Math.PI);
    }
    Matcher m = HEADING.matcher(words);
    if (!m.matches()) {
      problems.add(node.span(), "wrong.writeStraight30Deg");
      return Optional.empty();
    }
    Optional<Quantity> angle = plain(node, m.group(1), Dimension.ANGLE, problems);
    if (angle.isPresent() && !(angle.get().si() >= 0.0 && angle.get().si() <= Math.PI)) {
      problems.add(node.span(), "wrong.allowed0180Deg");
      return Optional.empty();
    }
    return angle.map(a -> m.group(2).equals("left") ? a.si() : -a.si());
  }

  /**
   * An end of a limb, or the boss.
   *
   * @param limb folded name, or {@code boss}
   * @param tip whether its tip is meant; else its thick end
   */
  public record End(String limb, boolean tip) {}

  /** Where a limb begins or ends. */
  public static Optional<End> limbEnd(Node node, Problems problems) {
    Optional<String> text = Values.text(node, problems);
    if (text.isEmpty()) {
      return Optional.empty();
    }
    if (text.get().equalsIgnoreCase("boss")) {
      return Optional.of(new End("boss", false));
    }
    Matcher m = LIMB_END.matcher(text.get());
    if (!m.matches()) {
      Matcher along = LIMB_AT.matcher(text.get());
      problems.add(
          node.span(),
          along.matches()
              ? Saying.of(
                  "wrong.limbsJoinTheirEnds", along.group(1), along.group(2), along.group(1))
              : Saying.of("wrong.writeBossNameLimb"));
      return Optional.empty();
    }
    return Optional.of(new End(m.group(1), m.group(2).equalsIgnoreCase("tip")));
  }

  /**
   * A distance along a limb, or a place by its coordinates.
   *
   * @param limb its name; empty for the piece itself
   * @param distance along the limb, or along the edge of the picture
   * @param across to the left as printed up the side of the picture, when it is a place
   */
  public record Along(Optional<String> limb, Quantity distance, Optional<Quantity> across) {}

  /** A distance along the piece or a limb. */
  public static Optional<Along> along(Node node, Problems problems) {
    Optional<String> text = Values.text(node, problems);
    if (text.isEmpty()) {
      return Optional.empty();
    }
    Matcher spot = SPOT.matcher(text.get());
    if (spot.matches()) {
      Optional<Quantity> across = plain(node, spot.group(2), Dimension.LENGTH, problems);
      boolean bare = QuantityText.number(spot.group(1)) instanceof Parsed.Good<?>;
      String first =
          bare && across.isPresent()
              ? spot.group(1) + " " + across.get().unit().symbol()
              : spot.group(1);
      Optional<Quantity> along = plain(node, first, Dimension.LENGTH, problems);
      return along.isEmpty() || across.isEmpty()
          ? Optional.empty()
          : Optional.of(new Along(Optional.empty(), along.get(), across));
    }
    Matcher m = LIMB_AT.matcher(text.get());
    Optional<String> limb = m.matches() ? Optional.of(m.group(1)) : Optional.empty();
    String distance = m.matches() ? m.group(2) : text.get();
    return plain(node, distance, Dimension.LENGTH, problems)
        .map(d -> new Along(limb, d, Optional.empty()));
  }

  /**
   * Two lengths [m].
   *
   * @param first top of a pin, width of a section
   * @param second foot of a pin, depth of a section
   */
  public record Two(double first, double second) {}

  /** A sprue pin. */
  public static Optional<Two> pin(Node node, Problems problems) {
    Optional<String> text = Values.text(node, problems);
    if (text.isEmpty()) {
      return Optional.empty();
    }
    Matcher straight = STRAIGHT.matcher(text.get());
    if (straight.matches()) {
      return plain(node, straight.group(1), Dimension.LENGTH, problems)
          .flatMap(q -> sensible(node, new Two(q.si(), q.si()), problems));
    }
    return two(node, text.get(), TO, "18 to 14 mm, or 20 mm straight", problems);
  }

  /** A section {@code 15 x 12 mm}. */
  public static Optional<Two> pair(Node node, Problems problems) {
    return Values.text(node, problems).flatMap(t -> two(node, t, TIMES, "15 x 12 mm", problems));
  }

  private static Optional<Two> two(
      Node node, String text, Pattern shape, String example, Problems problems) {
    Matcher m = shape.matcher(text);
    if (!m.matches()) {
      problems.add(node.span(), "wrong.twoLengthsNeeded", example);
      return Optional.empty();
    }
    Optional<Quantity> second = plain(node, m.group(2), Dimension.LENGTH, problems);
    if (second.isEmpty()) {
      return Optional.empty();
    }
    boolean bare = QuantityText.number(m.group(1)) instanceof Parsed.Good<?>;
    String first = bare ? m.group(1) + " " + second.get().unit().symbol() : m.group(1);
    return plain(node, first, Dimension.LENGTH, problems)
        .flatMap(f -> sensible(node, new Two(f.si(), second.get().si()), problems));
  }

  private static Optional<Two> sensible(Node node, Two two, Problems problems) {
    Kind.Amount range = Kind.Amount.of(Dimension.LENGTH, "1 mm", "3 m");
    boolean inside =
        two.first >= range.low()
            && two.first <= range.high()
            && two.second >= range.low()
            && two.second <= range.high();
    if (!inside) {
      problems.add(node.span(), "wrong.allowed1Mm3");
      return Optional.empty();
    }
    return Optional.of(two);
  }

  /** A weight [kg] of a metal. */
  public record Load(double mass, String metal) {}

  /** What a crucible holds. */
  public static Optional<Load> holds(Node node, Problems problems) {
    Optional<String> text = Values.text(node, problems);
    if (text.isEmpty()) {
      return Optional.empty();
    }
    Matcher m = HOLDS.matcher(text.get());
    if (!m.matches()) {
      problems.add(node.span(), "wrong.weightMetalNeeded2");
      return Optional.empty();
    }
    Optional<Quantity> mass = plain(node, m.group(1), Dimension.MASS, problems);
    if (mass.isPresent() && !(mass.get().si() > 0.0 && mass.get().si() < 1e4)) {
      problems.add(node.span(), "wrong.allowedMoreThan0Up");
      return Optional.empty();
    }
    return mass.map(q -> new Load(q.si(), m.group(2)));
  }

  private static Optional<Quantity> plain(
      Node node, String text, Dimension dimension, Problems problems) {
    return problems.taken(node.span(), QuantityText.quantity(text, dimension));
  }
}
