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
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import lastinch.solver.casting.Flask;
import lastinch.solver.result.FillHistory;
import lastinch.solver.result.PassageRecord;
import lastinch.solver.result.Stop;
import lastinch.solver.result.StopReason;
import lastinch.ui.chart.paper.Frame;
import lastinch.ui.chart.paper.Labels;
import lastinch.ui.chart.paper.Look;
import lastinch.ui.chart.paper.Messages;
import lastinch.ui.chart.paper.Paper;
import lastinch.ui.chart.paper.Pens;
import lastinch.ui.chart.paper.Picture;
import lastinch.ui.chart.paper.Spot3;
import lastinch.ui.chart.paper.Swatches;
import lastinch.ui.chart.paper.View;
import lastinch.ui.words.Figures;
import lastinch.ui.words.PlainLetters;
import lastinch.ui.words.PouredPlan;
import lastinch.ui.words.Reasons;
import lastinch.ui.words.Sentences;

/** The mould to scale as it stands, gravity down, with what it holds at the end of the pour. */
public final class MouldPicture {
  private static final double SAND = 14e-3;
  private static final double MOST_TALL = 560.0;
  private static final double MOST_TALL_UPRIGHT = 760.0;

  /** Length of the plug of mush on the paper. */
  private static final double PLUG = 12.0;

  private static final double NAMES = 70.0;
  private static final double BETWEEN = 26.0;

  private final PouredPlan plan;
  private final Sentences sentences;
  private final Figures figures;
  private final MouldLayout layout;
  private final Swatches swatches;
  private final Map<String, PassageRecord> records = new LinkedHashMap<>();
  private final double scale;
  private final List<Sight> sights = new ArrayList<>();

  /** One way to look at the mould. */
  private record Sight(View view, AffineTransform turn, Rectangle2D bounds, String words) {}

  private MouldPicture(PouredPlan plan, Sentences sentences, Figures figures) {
    this.plan = plan;
    this.sentences = sentences;
    this.figures = figures;
    layout = MouldLayout.of(plan.pourCase());
    swatches = new Swatches(plan.pourCase(), plan.result().entered(), sentences, figures);
    plan.result().passages().forEach(p -> records.put(p.name(), p));
    addSights();
    double wide = 0.0;
    double tall = 0.0;
    for (Sight s : sights) {
      wide = Math.max(wide, s.bounds().getWidth());
      tall += s.bounds().getHeight();
    }
    double names = layout.upright() ? 2.6 * NAMES : 0.0;
    double most = layout.upright() ? MOST_TALL_UPRIGHT : MOST_TALL;
    scale = Math.min((Paper.INNER - names) / wide, most / tall);
  }

  public static Picture of(PouredPlan plan, Sentences sentences, Figures figures) {
    MouldPicture picture = new MouldPicture(plan, sentences, figures);
    double tall = Swatches.TALL + BETWEEN;
    for (Sight s : picture.sights) {
      tall += picture.scale * s.bounds().getHeight() + BETWEEN;
    }
    return new Picture(
        sentences.say("chart.mould.heading"),
        new Messages(plan, sentences, figures).mould(),
        sentences.say("chart.mould.caption")
            + BrokenOutPicture.bowed(plan, sentences).map(b -> " " + b).orElse(""),
        tall,
        picture::draw);
  }

  private void addSights() {
    double angle = plan.pourCase().mould().attitude().angle();
    if (layout.upright()) {
      double tip = layout.up().x();
      addSight(View.FACE, Frame.turned(0.0, -tip, tip, 0.0), "chart.mould.upright");
      return;
    }
    double c = Math.cos(angle);
    double s = Math.sin(angle);
    addSight(View.EDGE, Frame.turned(c, -s, s, c), "chart.mould.side");
    boolean aside =
        plan.pourCase().piece().limbs().size() > 1
            || plan.pourCase().gating().gates().size() > 1
            || layout.gating().values().stream().anyMatch(b -> b.isEndOn(View.EDGE));
    if (aside) {
      addSight(View.FACE, Frame.turned(1.0, 0.0, 0.0, 1.0), "chart.mould.above");
    }
  }

  private void addSight(View view, AffineTransform turn, String words) {
    Rectangle2D bounds = null;
    for (DrawnBar bar : all()) {
      Rectangle2D b =
          turn.createTransformedShape(bar.outline(view, 0.0, bar.length())).getBounds2D();
      bounds = bounds == null ? b : bounds.createUnion(b);
    }
    Rectangle2D box = bounds == null ? new Rectangle2D.Double(0, 0, 1, 1) : bounds;
    sights.add(new Sight(view, turn, block(box), sentences.say(words)));
  }

  /** The mould round its cavity: the flask where there is one, else some sand. */
  private Rectangle2D block(Rectangle2D box) {
    Optional<Flask> flask = plan.pourCase().mould().flask();
    if (flask.isPresent() && layout.upright()) {
      double wide = Math.max(box.getWidth() + SAND, flask.get().inside());
      double tall = Math.max(box.getHeight() + SAND, flask.get().tall());
      return new Rectangle2D.Double(box.getCenterX() - 0.5 * wide, box.getY(), wide, tall);
    }
    return new Rectangle2D.Double(
        box.getX() - SAND, box.getY(), box.getWidth() + 2 * SAND, box.getHeight() + SAND);
  }

  private List<DrawnBar> all() {
    List<DrawnBar> all = new ArrayList<>(layout.piece().values());
    all.addAll(layout.gating().values());
    all.addAll(layout.open().values());
    return all;
  }

  private void draw(Graphics2D g, Rectangle2D area) {
    double y = area.getMinY();
    for (Sight sight : sights) {
      double tall = scale * sight.bounds().getHeight();
      Rectangle2D part = new Rectangle2D.Double(area.getX(), y + 18.0, area.getWidth(), tall);
      g.setFont(Look.NAME);
      g.setPaint(Look.FAINT_INK);
      g.drawString(sight.words(), (float) area.getX(), (float) (y + 11.0));
      Frame frame = Frame.fit(sight.turn(), sight.bounds(), part, scale);
      double wide = scale * sight.bounds().getWidth();
      Rectangle2D block =
          new Rectangle2D.Double(part.getCenterX() - 0.5 * wide, part.getY(), wide, tall);
      g.setPaint(Look.BAND);
      g.fill(block);
      mould(g, sight, frame);
      names(g, sight, frame, part);
      y += tall + BETWEEN;
    }
    ruler(g, area, y - 4.0);
    Rectangle2D foot =
        new Rectangle2D.Double(area.getX(), y + 12.0, area.getWidth(), Swatches.TALL);
    swatches.draw(g, foot);
  }

  private void mould(Graphics2D g, Sight sight, Frame frame) {
    List<DrawnBar> bars = all();
    if (sight.view() == View.FACE) {
      // From above the sprue and the cup stand over the rest.
      bars.removeIf(b -> b.isEndOn(View.FACE) && !"sprue".equals(b.name()));
    }
    Area cavity = new Area();
    for (DrawnBar bar : bars) {
      Shape shape = frame.place(bar.outline(sight.view(), 0.0, bar.length()));
      cavity.add(new Area(shape));
    }
    g.setPaint(Look.PAPER);
    g.fill(cavity);
    Area frozen = new Area();
    for (DrawnBar bar : bars) {
      metal(g, sight, frame, bar, frozen);
    }
    for (Stop stop : plugs(sight.view())) {
      Shape plug = plug(sight, frame, stop);
      g.setPaint(Look.PAPER);
      g.fill(plug);
      frozen.add(new Area(plug));
    }
    cup(g, sight, frame);
    g.setPaint(Look.FROZEN);
    g.fill(frozen);
    Pens.hatch(g, frozen, Look.INK, Pens.FINE);
    Pens.line(g, cavity, Look.INK, Look.OUTLINE);
    for (DrawnBar bar : bars) {
      if (bar.name().endsWith(" way")) {
        Pens.line(g, centre(sight, frame, bar), Look.FAINT_INK, Look.DASHED);
      }
    }
  }

  /** Stops at which the leading metal turned to mush or froze shut. */
  private List<Stop> plugs(View view) {
    return plan.result().stops().stream()
        .filter(s -> s.reason() == StopReason.SLUSH || s.reason() == StopReason.SKIN)
        .filter(s -> bar(s.passage()).filter(b -> !b.isEndOn(view)).isPresent())
        .toList();
  }

  private Optional<DrawnBar> bar(String name) {
    return all().stream().filter(b -> b.name().equals(name)).findFirst();
  }

  /** The last of the metal before a stop: it is what holds the rest back. */
  private Shape plug(Sight sight, Frame frame, Stop stop) {
    DrawnBar bar = bar(stop.passage()).orElseThrow();
    PassageRecord record = records.get(stop.passage());
    double at = stop.at() * bar.length() / record.length();
    double long0 = Math.min(PLUG / frame.scale(), bar.length());
    double step = record.length() / Math.max(1, record.size());
    int below = (int) Math.floor(stop.at() / step - 1.0);
    boolean up = below < 0 || record.reached(Math.min(below, record.size() - 1));
    double from = up ? Math.max(0.0, at - long0) : at;
    double to = up ? at : Math.min(bar.length(), at + long0);
    return frame.place(bar.outline(sight.view(), from, to));
  }

  private static Shape centre(Sight sight, Frame frame, DrawnBar bar) {
    Path2D path = new Path2D.Double();
    Spot3 a = bar.at(0.0);
    Spot3 b = bar.at(bar.length());
    path.moveTo(a.u(), a.v(sight.view()));
    path.lineTo(b.u(), b.v(sight.view()));
    return frame.place(path);
  }

  private void metal(Graphics2D g, Sight sight, Frame frame, DrawnBar bar, Area frozen) {
    PassageRecord record = records.get(bar.name());
    if (record == null || (bar.isEndOn(sight.view()) && sight.view() == View.FACE)) {
      return;
    }
    double flowStop = plan.pourCase().metal().alloy().flowStop().value();
    double stretch = bar.length() / record.length();
    double over = 0.6 / frame.scale();
    for (Stretch s : Stretch.of(record, plan.result().course(), flowStop)) {
      double from = s.from() * stretch;
      double to = Math.min(bar.length(), s.to() * stretch + (s.flows() ? over : 0.0));
      Shape shape = frame.place(bar.outline(sight.view(), from, to));
      if (s.flows()) {
        g.setPaint(swatches.scale().color(s.kelvin()));
        g.fill(shape);
      } else {
        frozen.add(new Area(shape));
      }
    }
  }

  private void cup(Graphics2D g, Sight sight, Frame frame) {
    FillHistory course = plan.result().course();
    DrawnBar cup = layout.open().get("cup");
    if (course.size() == 0 || cup.isEndOn(sight.view())) {
      return;
    }
    int last = course.size() - 1;
    double from = cup.length() * (1.0 - course.cupFill(last));
    g.setPaint(swatches.scale().color(course.cupTemperature(last)));
    g.fill(frame.place(cup.outline(sight.view(), from, cup.length())));
  }

  private void names(Graphics2D g, Sight sight, Frame frame, Rectangle2D part) {
    Rectangle2D room =
        new Rectangle2D.Double(part.getX(), part.getY(), part.getWidth(), part.getHeight() + 8.0);
    Labels labels = new Labels(room);
    for (DrawnBar bar : all()) {
      labels.keepOff(frame.place(bar.outline(sight.view(), 0.0, bar.length())));
    }
    for (Stop stop : plugs(sight.view())) {
      Rectangle2D plug = plug(sight, frame, stop).getBounds2D();
      labels.write(
          g,
          sentences.say("chart.mould.plug." + Reasons.key(stop.reason())),
          Look.LABEL_SMALL,
          Look.INK,
          List.of(
              new Labels.Anchor(plug.getCenterX(), plug.getMinY(), 0.0, -1.0),
              new Labels.Anchor(plug.getMinX(), plug.getCenterY(), -1.0, 0.0),
              new Labels.Anchor(plug.getMaxX(), plug.getCenterY(), 1.0, 0.0)));
    }
    for (DrawnBar bar : all()) {
      boolean nameless =
          bar.name().endsWith(" way") || bar.name().endsWith(" neck") || bar.name().equals("foot");
      if (nameless || (sight.view() == View.FACE && bar.isEndOn(View.FACE))) {
        continue;
      }
      nameOf(g, sight, frame, bar, labels);
    }
  }

  /**
   * Writes the name beside the rim that faces up, or right; beside the other where that is full.
   */
  private void nameOf(Graphics2D g, Sight sight, Frame frame, DrawnBar bar, Labels labels) {
    View view = sight.view();
    double s = (layout.piece().containsKey(bar.name()) ? 0.65 : 0.5) * bar.length();
    double[] way = bar.way(view, s);
    Point2D across = frame.way(-way[1], way[0]);
    boolean level = Math.abs(across.getY()) > Math.abs(across.getX());
    double first = (level ? -across.getY() : across.getX()) < 0.0 ? -1.0 : 1.0;
    List<Labels.Anchor> anchors = new ArrayList<>();
    for (double side : new double[] {first, -first}) {
      double[] rim = bar.beside(view, s, side * bar.half(view, s));
      Point2D at = frame.place(rim[0], rim[1]);
      anchors.add(
          new Labels.Anchor(at.getX(), at.getY(), side * across.getX(), side * across.getY()));
    }
    labels.write(g, PlainLetters.of(bar.name()), Look.NAME, Look.INK, anchors);
  }

  /** A length to compare with, and which way is down. */
  private void ruler(Graphics2D g, Rectangle2D area, double y) {
    double metres = figures.lengthUnit().equals("mm") ? 0.05 : 0.0508;
    double right = area.getMaxX() - 6.0;
    double left = right - scale * metres;
    Pens.line(g, new Line2D.Double(left, y, right, y), Look.INK, Look.OUTLINE);
    Pens.line(g, new Line2D.Double(left, y - 4, left, y + 4), Look.INK, Look.OUTLINE);
    Pens.line(g, new Line2D.Double(right, y - 4, right, y + 4), Look.INK, Look.OUTLINE);
    g.setFont(Look.TICK);
    g.setPaint(Look.INK);
    String words = figures.ruler(metres);
    double wide = Paper.wide(words, Look.TICK);
    g.drawString(words, (float) (left - wide - 8.0), (float) (y + 4.0));
    double arrow = left - wide - 30.0;
    Pens.line(g, new Line2D.Double(arrow, y - 10, arrow, y + 6), Look.INK, Look.OUTLINE);
    Pens.line(g, new Line2D.Double(arrow, y + 6, arrow - 4, y), Look.INK, Look.OUTLINE);
    Pens.line(g, new Line2D.Double(arrow, y + 6, arrow + 4, y), Look.INK, Look.OUTLINE);
    String down = sentences.say("chart.mould.down");
    g.drawString(down, (float) (arrow - 8.0 - Paper.wide(down, Look.TICK)), (float) (y + 4.0));
  }
}
