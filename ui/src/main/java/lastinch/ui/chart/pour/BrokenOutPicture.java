package lastinch.ui.chart.pour;

import java.awt.Graphics2D;
import java.awt.Shape;
import java.awt.geom.AffineTransform;
import java.awt.geom.Area;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import lastinch.solver.casting.Limb;
import lastinch.solver.casting.Station;
import lastinch.solver.result.EdgeStretch;
import lastinch.solver.result.Meeting;
import lastinch.solver.result.Outcome;
import lastinch.solver.result.Stop;
import lastinch.ui.chart.paper.Frame;
import lastinch.ui.chart.paper.Labels;
import lastinch.ui.chart.paper.Look;
import lastinch.ui.chart.paper.Messages;
import lastinch.ui.chart.paper.Paper;
import lastinch.ui.chart.paper.Pens;
import lastinch.ui.chart.paper.Picture;
import lastinch.ui.chart.paper.View;
import lastinch.ui.words.Figures;
import lastinch.ui.words.PlainLetters;
import lastinch.ui.words.PouredPlan;
import lastinch.ui.words.Sentences;
import lastinch.ui.words.pour.PourText;

/** The casting as it would come out of the mould: from above and edge on, to one scale. */
public final class BrokenOutPicture {
  private static final double MOST_TALL = 420.0;
  private static final double HEAD = 20.0;
  private static final double NOTES = 30.0;
  private static final double RULER = 34.0;
  private static final double THIN = 3e-3;
  private static final double STRETCHED = 5.0;

  private final PouredPlan plan;
  private final Sentences sentences;
  private final Figures figures;
  private final Map<String, DrawnBar> bars;
  private final Bodies bodies;
  private final LapStrokes laps;
  private final double scale;
  private final boolean thin;

  private BrokenOutPicture(PouredPlan plan, Sentences sentences, Figures figures) {
    this.plan = plan;
    this.sentences = sentences;
    this.figures = figures;
    bars = MouldLayout.of(plan.pourCase()).piece();
    bodies = Bodies.of(plan.pourCase(), plan.result(), bars);
    laps = new LapStrokes(plan.result(), bars);
    Rectangle2D face = bounds(View.FACE, 1.0);
    scale =
        Math.min(
            (Paper.INNER - 20.0) / face.getWidth(), MOST_TALL / Math.max(1e-3, face.getHeight()));
    thin = leastThickness() < THIN;
  }

  public static Picture of(PouredPlan plan, Sentences sentences, Figures figures) {
    BrokenOutPicture picture = new BrokenOutPicture(plan, sentences, figures);
    return new Picture(
        sentences.say("chart.broken.heading"),
        new Messages(plan, sentences, figures).brokenOut(picture.bodies),
        picture.caption(),
        picture.tall(),
        picture::draw);
  }

  /** What marks mean, of those that are drawn. */
  private String caption() {
    List<String> marks = new ArrayList<>();
    if (isMissing()) {
      marks.add(sentences.say("chart.broken.caption.missing"));
    }
    if (hasLaps()) {
      marks.add(sentences.say("chart.broken.caption.laps"));
    }
    bowed(plan, sentences).ifPresent(marks::add);
    return String.join(" ", marks);
  }

  private boolean isMissing() {
    return !(plan.result().outcome() instanceof Outcome.Filled)
        || plan.result().edges().stream().anyMatch(e -> e.state() != EdgeStretch.State.FULL);
  }

  private boolean hasLaps() {
    return plan.result().laps().stream().anyMatch(l -> bars.containsKey(l.passage()));
  }

  /** What pictures to scale say besides where limbs join others by their tips. */
  static Optional<String> bowed(PouredPlan plan, Sentences sentences) {
    boolean meet = plan.pourCase().piece().limbs().stream().anyMatch(limb -> !limb.to().isEmpty());
    return meet ? Optional.of(sentences.say("chart.limbs.bowed")) : Optional.empty();
  }

  /** The view from above alone, without a word on how it is seen. */
  public static Picture fromAbove(PouredPlan plan, Sentences sentences, Figures figures) {
    BrokenOutPicture picture = new BrokenOutPicture(plan, sentences, figures);
    return new Picture(
        sentences.say("chart.broken.heading"),
        new Messages(plan, sentences, figures).brokenOut(picture.bodies),
        picture.caption(),
        NOTES + picture.scale * picture.bounds(View.FACE, 1.0).getHeight() + RULER,
        (g, area) -> picture.row(g, area, area.getY() - HEAD, View.FACE, 1.0, ""));
  }

  private double leastThickness() {
    double least = Double.POSITIVE_INFINITY;
    for (Limb limb : plan.pourCase().piece().limbs()) {
      for (Station s : limb.stations()) {
        least = Math.min(least, s.thickness());
      }
    }
    return least;
  }

  private double tall() {
    double all = HEAD + NOTES + scale * bounds(View.FACE, 1.0).getHeight() + RULER;
    all += HEAD + scale * bounds(View.EDGE, 1.0).getHeight() + NOTES;
    return thin ? all + HEAD + scale * bounds(View.EDGE, STRETCHED).getHeight() : all;
  }

  private static AffineTransform turn(double stretched) {
    return Frame.turned(1.0, 0.0, 0.0, stretched);
  }

  /** Parts drawn in a view: a block would dwarf the rest where thickness is stretched. */
  private List<DrawnBar> shown(double stretched) {
    List<DrawnBar> shown = new ArrayList<>(bars.values());
    shown.removeIf(b -> stretched > 1.0 && "boss".equals(b.name()));
    return shown;
  }

  private Rectangle2D bounds(View view, double stretched) {
    Rectangle2D all = null;
    for (DrawnBar bar : shown(stretched)) {
      Rectangle2D b =
          turn(stretched)
              .createTransformedShape(bar.outline(view, 0.0, bar.length()))
              .getBounds2D();
      all = all == null ? b : all.createUnion(b);
    }
    return all == null ? new Rectangle2D.Double(0, 0, 1, 1) : all;
  }

  private void draw(Graphics2D g, Rectangle2D area) {
    double y = area.getY();
    y = row(g, area, y, View.FACE, 1.0, "chart.broken.above");
    y = row(g, area, y, View.EDGE, 1.0, "chart.broken.edge");
    if (thin) {
      row(g, area, y, View.EDGE, STRETCHED, "chart.broken.stretched");
    }
  }

  private double row(
      Graphics2D g, Rectangle2D area, double top, View view, double stretched, String words) {
    Rectangle2D box = bounds(view, stretched);
    double tall = scale * box.getHeight();
    g.setFont(Look.NAME);
    g.setPaint(Look.FAINT_INK);
    String seen = words.isEmpty() ? "" : sentences.say(words);
    g.drawString(seen, (float) area.getX(), (float) (top + 12.0));
    boolean face = view == View.FACE;
    double start = top + HEAD + (face ? NOTES : 0.0);
    Rectangle2D whole = bounds(View.FACE, 1.0);
    double left = area.getCenterX() + scale * (box.getMinX() - whole.getCenterX());
    Rectangle2D part = new Rectangle2D.Double(left, start, scale * box.getWidth(), tall);
    Frame frame = Frame.fit(turn(stretched), box, part, scale);
    piece(g, view, frame, shown(stretched));
    if (face) {
      marks(
          g, frame, new Rectangle2D.Double(area.getX(), top, area.getWidth(), tall + HEAD + NOTES));
      ruler(g, frame, start + tall + 8.0);
      return start + tall + RULER;
    }
    return start + tall + NOTES;
  }

  private void piece(Graphics2D g, View view, Frame frame, List<DrawnBar> shown) {
    for (DrawnBar bar : shown) {
      Shape all = frame.place(bar.outline(view, 0.0, bar.length()));
      Pens.line(g, all, Look.FAINT_INK, Look.DASHED);
    }
    List<EdgeStretch> edges = plan.result().edges();
    Area metal = new Area();
    List<Shape> outlines = new ArrayList<>();
    for (Body body : bodies.list()) {
      if (!shown.contains(body.bar())) {
        continue;
      }
      Area shape = new Area(frame.place(body.outline(view, edges)));
      ragged(shape, body, view, frame);
      metal.add(shape);
      outlines.add(shape);
    }
    g.setPaint(Look.FROZEN);
    g.fill(metal);
    Pens.hatch(g, metal, Look.RULE, Pens.FINE);
    laps.draw(g, view, frame, metal);
    boolean whole =
        plan.result().meetings().stream().noneMatch(m -> m.kind() == Meeting.Kind.COLD_SHUT);
    if (whole) {
      Pens.line(g, metal, Look.INK, Look.OUTLINE);
    } else {
      outlines.forEach(o -> Pens.line(g, o, Look.INK, Look.OUTLINE));
    }
    meetings(g, view, frame);
  }

  private static void ragged(Area shape, Body body, View view, Frame frame) {
    if (body.high() == Pens.Lip.RAGGED) {
      shape.subtract(new Area(frame.place(body.teeth(view, true))));
    }
    if (body.low() == Pens.Lip.RAGGED) {
      shape.subtract(new Area(frame.place(body.teeth(view, false))));
    }
  }

  private void meetings(Graphics2D g, View view, Frame frame) {
    for (Meeting m : plan.result().meetings()) {
      DrawnBar bar = bars.get(m.passage());
      if (bar == null || bar.isEndOn(view)) {
        continue;
      }
      double half = bar.half(view, m.at());
      Path2D across = new Path2D.Double();
      double[] a = bar.beside(view, m.at(), half);
      double[] b = bar.beside(view, m.at(), -half);
      across.moveTo(a[0], a[1]);
      across.lineTo(b[0], b[1]);
      Shape line = frame.place(across);
      switch (m.kind()) {
        case JOINED -> Pens.line(g, line, Look.FAINT_INK, Look.DASHED);
        case LAP -> Pens.line(g, line, Look.INK, Look.PLAIN_LAP);
        case COLD_SHUT -> {
          Pens.line(g, line, Look.INK, Look.SHUT);
          Pens.line(g, line, Look.PAPER, Look.SHUT_GAP);
        }
      }
    }
  }

  private void marks(Graphics2D g, Frame frame, Rectangle2D room) {
    Labels labels = new Labels(room);
    for (DrawnBar bar : bars.values()) {
      labels.keepOff(frame.place(bar.outline(View.FACE, 0.0, bar.length())));
    }
    double seen = Paper.wide(sentences.say("chart.broken.above"), Look.NAME);
    labels.keepOff(new Rectangle2D.Double(room.getX(), room.getY(), seen, 18.0));
    boolean several = bars.size() > 2;
    for (Stop stop : plan.result().stops()) {
      note(g, labels, frame, stop.passage(), stop.at(), ending(stop));
    }
    for (Meeting m : plan.result().meetings()) {
      note(
          g, labels, frame, m.passage(), m.at(), sentences.say("chart.meeting." + m.kind().name()));
    }
    notesOnSurface(g, labels, frame);
    if (several) {
      for (DrawnBar bar : bars.values()) {
        note(g, labels, frame, bar.name(), 0.5 * bar.length(), PlainLetters.of(bar.name()));
      }
    }
  }

  private void notesOnSurface(Graphics2D g, Labels labels, Frame frame) {
    plan.result().edges().stream()
        .filter(e -> e.state() == EdgeStretch.State.ROUNDED)
        .findFirst()
        .ifPresent(
            e ->
                note(
                    g,
                    labels,
                    frame,
                    e.passage(),
                    0.5 * (e.from() + e.to()),
                    sentences.say("chart.broken.rounded")));
    plan.result().laps().stream()
        .filter(l -> bars.containsKey(l.passage()))
        .max(Comparator.comparingDouble(l -> l.to() - l.from()))
        .ifPresent(
            l ->
                note(
                    g,
                    labels,
                    frame,
                    l.passage(),
                    0.5 * (l.from() + l.to()),
                    sentences.say("chart.broken.laps")));
  }

  private String ending(Stop stop) {
    boolean only = plan.result().stops().size() == 1;
    return only
        ? new PourText(sentences, figures).ending(plan)
        : sentences.say("chart.broken.stop", "place", figures.ruler(stop.at()));
  }

  private void note(
      Graphics2D g, Labels labels, Frame frame, String part, double at, String words) {
    DrawnBar bar = bars.get(part);
    if (bar == null) {
      return;
    }
    double s = Math.max(0.0, Math.min(bar.length(), at));
    double[] way = bar.way(View.FACE, s);
    double up = way[0] >= 0.0 ? 1.0 : -1.0;
    List<Labels.Anchor> anchors = new ArrayList<>();
    for (double side : bars.size() > 2 ? new double[] {up, -up} : new double[] {up}) {
      double[] rim = bar.beside(View.FACE, s, side * bar.half(View.FACE, s));
      Point2D p = frame.place(rim[0], rim[1]);
      Point2D across = frame.way(-side * way[1], side * way[0]);
      anchors.add(new Labels.Anchor(p.getX(), p.getY(), across.getX(), across.getY()));
    }
    labels.write(g, words, Look.LABEL_SMALL, Look.INK, anchors);
  }

  /** Distances along a piece of one limb; else a length to compare with. */
  private void ruler(Graphics2D g, Frame frame, double y) {
    g.setFont(Look.TICK);
    g.setPaint(Look.INK);
    List<Limb> limbs = plan.pourCase().piece().limbs();
    boolean metric = figures.lengthUnit().equals("mm");
    if (limbs.size() > 1) {
      double metres = metric ? 0.05 : 0.0508;
      double left = frame.place(bounds(View.FACE, 1.0).getMinX(), 0.0).getX();
      tickedLine(g, left, left + scale * metres, y);
      g.drawString(figures.ruler(metres), (float) (left + scale * metres + 8.0), (float) (y + 4.0));
      return;
    }
    double length = limbs.get(0).length();
    double step = metric ? 0.02 : 0.0254;
    while (length / step > 18.0) {
      step *= 2.0;
    }
    double left = frame.place(0.0, 0.0).getX();
    double right = frame.place(length, 0.0).getX();
    Pens.line(g, new Line2D.Double(left, y, right, y), Look.INK, Look.THIN);
    for (double s = 0.0; s < length + 1e-9; s += step) {
      double x = frame.place(s, 0.0).getX();
      Pens.line(g, new Line2D.Double(x, y, x, y + 4.0), Look.INK, Look.THIN);
      String text = figures.rulerBare(s);
      String shown = s == 0.0 ? text + " " + figures.lengthUnit() : text;
      g.drawString(shown, (float) (x - 0.5 * Paper.wide(text, Look.TICK)), (float) (y + 16.0));
    }
  }

  private static void tickedLine(Graphics2D g, double left, double right, double y) {
    Pens.line(g, new Line2D.Double(left, y, right, y), Look.INK, Look.OUTLINE);
    Pens.line(g, new Line2D.Double(left, y - 4, left, y + 4), Look.INK, Look.OUTLINE);
    Pens.line(g, new Line2D.Double(right, y - 4, right, y + 4), Look.INK, Look.OUTLINE);
  }
}
