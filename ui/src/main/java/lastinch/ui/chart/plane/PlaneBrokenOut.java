package lastinch.ui.chart.plane;

import java.awt.Graphics2D;
import java.awt.Shape;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.function.IntPredicate;
import java.util.stream.IntStream;
import lastinch.solver.casting.GapMap;
import lastinch.solver.result.LapStretch;
import lastinch.solver.result.Meeting;
import lastinch.solver.result.PlaneField;
import lastinch.ui.chart.paper.Look;
import lastinch.ui.chart.paper.Messages;
import lastinch.ui.chart.paper.Pens;
import lastinch.ui.chart.paper.Picture;
import lastinch.ui.words.Figures;
import lastinch.ui.words.PouredPlan;
import lastinch.ui.words.Sentences;

/** The piece as it would come out, from a pour over the plane: what is there and what is not. */
public final class PlaneBrokenOut {
  /** Distance of lap strokes and their half length [m]. */
  private static final double EVERY = 8e-3;

  private static final double HALF = 2e-3;
  private static final double KEY = 8.0;

  /** Half the size of a cross [px]. */
  private static final double CROSS = 4.0;

  private final PlaneField field;
  private final GapMap map;
  private final PlaneSheet sheet;
  private final List<LapStretch> laps;
  private final Sentences sentences;
  private final Figures figures;

  private PlaneBrokenOut(PouredPlan plan, PlaneField field, Sentences sentences, Figures figures) {
    this.field = field;
    this.sentences = sentences;
    this.figures = figures;
    map = field.map();
    laps = plan.result().laps();
    sheet = new PlaneSheet(map, plan.pourCase().mould().attitude());
  }

  public static Picture of(
      PouredPlan plan, PlaneField field, Sentences sentences, Figures figures) {
    PlaneBrokenOut picture = new PlaneBrokenOut(plan, field, sentences, figures);
    return new Picture(
            sentences.say("chart.broken.heading"),
            picture.caption(),
            picture.sheet.tall() + KEY,
            picture::draw)
        .saying(new Messages(plan, sentences, figures).brokenOutOfThePlane());
  }

  /** What the marks mean that are drawn, and no others. */
  private String caption() {
    List<String> said = new ArrayList<>();
    said.add(sentences.say("chart.plane.broken.caption"));
    marks(
        "laps", !laps.isEmpty() && any(k -> isWithin(k) && field.lap(k) >= LapStretch.CLEAN), said);
    marks("joined", anyLine(Meeting.Kind.JOINED), said);
    marks("line", anyLine(Meeting.Kind.LAP), said);
    marks("shut", anyLine(Meeting.Kind.COLD_SHUT), said);
    marks("air", !holes().isEmpty(), said);
    marks("mould", any(field::runsAgainstMould), said);
    return String.join(" ", said);
  }

  private void marks(String name, boolean drawn, List<String> said) {
    if (drawn) {
      said.add(sentences.say("chart.plane.broken." + name));
    }
  }

  private boolean anyLine(Meeting.Kind kind) {
    return any(k -> map.isOpen(k) && field.isLine(k) && field.line(k) == kind);
  }

  private boolean any(IntPredicate square) {
    return IntStream.range(0, map.grid().size()).anyMatch(square);
  }

  private boolean isPiece(int k) {
    if (!map.isOpen(k)) {
      return false;
    }
    GapMap.Kind kind = map.parts().get(map.part(k)).kind();
    return kind == GapMap.Kind.PIECE || kind == GapMap.Kind.BOSS;
  }

  private boolean isMetal(int k) {
    return field.reached(k) && field.fill(k) >= 0.5;
  }

  private void draw(Graphics2D g, Rectangle2D area) {
    Path2D outline = sheet.outline(area);
    Path2D metal = sheet.border(area, k -> field.reached(k) ? field.fill(k) : 0.0);
    Shape clip = g.getClip();
    g.clip(outline);
    g.clip(metal);
    sheet.squares(g, area, k -> isPiece(k) ? Look.FROZEN : Look.BAND);
    if (!laps.isEmpty()) {
      laps(g, area);
    }
    g.setClip(clip);
    Pens.line(g, outline, Look.FAINT_INK, Look.THIN);
    g.clip(metal);
    Pens.line(g, outline, Look.INK, Look.OUTLINE);
    g.setClip(clip);
    g.clip(outline);
    Pens.line(g, metal, Look.INK, Look.OUTLINE);
    g.setClip(clip);
    lines(g, area);
    air(g, area);
    impacts(g, area);
    sheet.ruler(g, area, figures);
  }

  /** Strokes along the front as it came, where it left laps. */
  private void laps(Graphics2D g, Rectangle2D area) {
    int step = Math.max(1, (int) Math.rint(EVERY / map.cell()));
    for (int j = step / 2; j < map.ny(); j += step) {
      for (int i = step / 2; i < map.nx(); i += step) {
        int k = map.grid().index(i, j);
        if (isWithin(k) && field.lap(k) >= LapStretch.CLEAN) {
          stroke(g, area, i, j);
        }
      }
    }
  }

  /** Whether a square of the piece has metal and its neighbours are of the piece too. */
  private boolean isWithin(int k) {
    return isPiece(k)
        && isMetal(k)
        && isPiece(k - 1)
        && isPiece(k + 1)
        && isPiece(k - map.nx())
        && isPiece(k + map.nx());
  }

  private double slope(int k, int before, int after) {
    boolean a = before >= 0 && before < map.grid().size() && field.reached(before);
    boolean b = after >= 0 && after < map.grid().size() && field.reached(after);
    double from = a ? field.time(before) : field.time(k);
    double to = b ? field.time(after) : field.time(k);
    return to - from;
  }

  private void stroke(Graphics2D g, Rectangle2D area, int i, int j) {
    int k = map.grid().index(i, j);
    double dx = slope(k, k - 1, k + 1);
    double dy = slope(k, k - map.nx(), k + map.nx());
    double size = Math.hypot(dx, dy);
    if (size == 0.0) {
      return;
    }
    double half = HALF / map.cell();
    double x = i + 0.5;
    double y = j + 0.5;
    Point2D a = sheet.at(area, x - half * dy / size, y + half * dx / size);
    Point2D b = sheet.at(area, x + half * dy / size, y - half * dx / size);
    boolean plain = field.lap(k) >= LapStretch.PLAIN;
    Pens.line(g, new Line2D.Double(a, b), Look.INK, plain ? Look.PLAIN_LAP : Look.FAINT_LAP);
  }

  private void lines(Graphics2D g, Rectangle2D area) {
    double size = Math.max(2.5, 0.5 * sheet.scale() * map.cell());
    for (int k = 0; k < map.grid().size(); k++) {
      if (!map.isOpen(k) || !field.isLine(k)) {
        continue;
      }
      Point2D p = PlaneMaps.middle(sheet, area, k);
      Ellipse2D dot =
          new Ellipse2D.Double(p.getX() - 0.5 * size, p.getY() - 0.5 * size, size, size);
      Meeting.Kind kind = field.line(k);
      g.setPaint(kind == Meeting.Kind.JOINED ? Look.SECOND_INK : Look.INK);
      if (kind == Meeting.Kind.COLD_SHUT) {
        g.fill(new Rectangle2D.Double(p.getX() - size, p.getY() - size, 2 * size, 2 * size));
      } else {
        g.fill(dot);
      }
    }
  }

  /** Crosses where metal ran hard against the mould, the hardest of each neighbourhood. */
  private void impacts(Graphics2D g, Rectangle2D area) {
    int near = Math.max(1, (int) Math.rint(EVERY / map.cell()));
    for (int k = 0; k < map.grid().size(); k++) {
      if (field.runsAgainstMould(k) && isHardest(k, near)) {
        Point2D p = PlaneMaps.middle(sheet, area, k);
        double x = p.getX();
        double y = p.getY();
        Pens.line(
            g, new Line2D.Double(x - CROSS, y - CROSS, x + CROSS, y + CROSS), Look.INK, Look.FRONT);
        Pens.line(
            g, new Line2D.Double(x - CROSS, y + CROSS, x + CROSS, y - CROSS), Look.INK, Look.FRONT);
      }
    }
  }

  private boolean isHardest(int k, int near) {
    int i = k % map.nx();
    int j = k / map.nx();
    for (int b = Math.max(0, j - near); b <= Math.min(map.ny() - 1, j + near); b++) {
      for (int a = Math.max(0, i - near); a <= Math.min(map.nx() - 1, i + near); a++) {
        int other = map.grid().index(a, b);
        boolean first = field.impact(other) == field.impact(k) && other < k;
        if (field.impact(other) > field.impact(k) || first) {
          return false;
        }
      }
    }
    return true;
  }

  /** Rings round empty places that metal has closed in. */
  private void air(Graphics2D g, Rectangle2D area) {
    for (List<Integer> hole : holes()) {
      double x = 0.0;
      double y = 0.0;
      for (int k : hole) {
        Point2D p = PlaneMaps.middle(sheet, area, k);
        x += p.getX() / hole.size();
        y += p.getY() / hole.size();
      }
      double r = 6.0 + sheet.scale() * map.cell() * Math.sqrt(hole.size() / Math.PI);
      Pens.line(g, new Ellipse2D.Double(x - r, y - r, 2 * r, 2 * r), Look.INK, Look.OUTLINE);
    }
  }

  private List<List<Integer>> holes() {
    List<List<Integer>> holes = new ArrayList<>();
    boolean[] seen = new boolean[map.grid().size()];
    for (int k = 0; k < seen.length; k++) {
      if (!seen[k] && isPiece(k) && !isMetal(k)) {
        List<Integer> cells = new ArrayList<>();
        if (flood(k, seen, cells)) {
          holes.add(cells);
        }
      }
    }
    return holes;
  }

  /** Gathers an empty place; true when nothing but metal is round it. */
  private boolean flood(int seed, boolean[] seen, List<Integer> cells) {
    boolean closed = true;
    Deque<Integer> queue = new ArrayDeque<>();
    queue.add(seed);
    seen[seed] = true;
    while (!queue.isEmpty()) {
      int k = queue.remove();
      cells.add(k);
      int i = k % map.nx();
      int j = k / map.nx();
      for (int[] d : new int[][] {{1, 0}, {-1, 0}, {0, 1}, {0, -1}}) {
        int a = i + d[0];
        int b = j + d[1];
        boolean inside = a >= 0 && b >= 0 && a < map.nx() && b < map.ny();
        int other = inside ? map.grid().index(a, b) : -1;
        if (other < 0 || !map.isOpen(other)) {
          closed = false;
        } else if (!isMetal(other) && !seen[other]) {
          seen[other] = true;
          queue.add(other);
        }
      }
    }
    return closed;
  }
}
