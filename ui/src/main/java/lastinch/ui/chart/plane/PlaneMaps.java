package lastinch.ui.chart.plane;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.DoubleFunction;
import java.util.function.IntPredicate;
import java.util.function.IntToDoubleFunction;
import java.util.stream.IntStream;
import lastinch.solver.casting.GapMap;
import lastinch.solver.result.PlaneField;
import lastinch.ui.chart.paper.GlowScale;
import lastinch.ui.chart.paper.Look;
import lastinch.ui.chart.paper.Paper;
import lastinch.ui.chart.paper.Pens;
import lastinch.ui.chart.paper.Picture;
import lastinch.ui.words.Figures;
import lastinch.ui.words.PlainLetters;
import lastinch.ui.words.PouredPlan;
import lastinch.ui.words.Sentences;

/** Maps of a pour over the plane, square by square. */
public final class PlaneMaps {
  /** Standard gravity [m/s2], third general conference on weights and measures, 1901. */
  private static final double GRAVITY = 9.80665;

  private static final double KEY = 46.0;
  private static final double PATCH = 7.0;
  private static final int PATCHES = 60;
  private static final int SHADES = 48;

  /** Share of squares at either end that the scale of a map does not reach to; our choice. */
  private static final double FEW = 0.02;

  private static final Color FAINT = new Color(0xF1, 0xE3, 0xC4);
  private static final Color DARK = new Color(0x2C, 0x1D, 0x14);

  private final PouredPlan plan;
  private final PlaneField field;
  private final PlaneSheet sheet;
  private final Sentences sentences;
  private final Figures figures;

  private PlaneMaps(PouredPlan plan, PlaneField field, Sentences sentences, Figures figures) {
    this.plan = plan;
    this.field = field;
    this.sentences = sentences;
    this.figures = figures;
    sheet = new PlaneSheet(field.map(), plan.pourCase().mould().attitude());
  }

  /** All maps of a pour by the names of their files. */
  public static Map<String, Picture> of(
      PouredPlan plan, PlaneField field, Sentences sentences, Figures figures) {
    PlaneMaps maps = new PlaneMaps(plan, field, sentences, figures);
    Map<String, Picture> all = new LinkedHashMap<>();
    all.put("arrival-heat", maps.heat());
    all.put("arrival-time", maps.time());
    all.put("gap", maps.gap());
    all.put("pressure", maps.pressure());
    if (field.gates().size() > 1) {
      all.put("gates-of-origin", maps.origin());
    }
    return all;
  }

  /** Colours for the heat of metal in a pour, from where it stops to how it goes in. */
  static GlowScale glow(PouredPlan plan, PlaneField field) {
    double coldest = plan.result().entered();
    for (int k = 0; k < field.map().grid().size(); k++) {
      coldest = field.reached(k) ? Math.min(coldest, field.temperature(k)) : coldest;
    }
    return new GlowScale(
        Math.min(coldest, plan.result().entered() - 10.0), plan.result().entered());
  }

  private Picture heat() {
    GlowScale glow = glow(plan, field);
    return picture(
            "chart.plane.heat",
            field::reached,
            field::temperature,
            new double[] {glow.coldest(), glow.hottest()},
            glow::color,
            figures::heat,
            Map.of())
        .saying(sentences.say("chart.plane.heat.says", "coldest", figures.heat(glow.coldest())));
  }

  private Picture time() {
    return picture(
            "chart.plane.time",
            field::reached,
            field::time,
            most(field::reached, field::time),
            inks(most(field::reached, field::time)),
            v -> figures.fixed(v, 2) + " s",
            Map.of())
        .saying(
            sentences.say(
                "chart.plane.time.says",
                "last",
                figures.seconds(range(field::reached, field::time)[1])));
  }

  private Picture gap() {
    IntPredicate all = field.map()::isOpen;
    double[] range = range(all, field.map()::gap);
    range[0] = 0.0;
    return picture(
            "chart.plane.gap",
            all,
            field.map()::gap,
            range,
            inks(range),
            figures::calipers,
            Map.of())
        .saying(sentences.say("chart.plane.gap.says", "thickest", figures.calipers(range[1])));
  }

  /** The moment when half of what will be full is full. */
  private PlaneField.Moment halfWay() {
    List<PlaneField.Moment> moments = field.moments();
    double end = held(moments.get(moments.size() - 1));
    for (PlaneField.Moment m : moments) {
      if (held(m) >= 0.5 * end) {
        return m;
      }
    }
    return moments.get(moments.size() - 1);
  }

  private double held(PlaneField.Moment m) {
    double sum = 0.0;
    for (int k = 0; k < field.map().grid().size(); k++) {
      sum += m.fill(k) * field.map().volume(k);
    }
    return sum;
  }

  private Picture pressure() {
    PlaneField.Moment m = halfWay();
    IntPredicate wet = k -> m.fill(k) >= 0.5;
    double[] range = most(k -> wet.test(k) && !m.stopped(k), m::pressure);
    range[0] = Math.max(0.0, range[0]);
    double weight = plan.pourCase().metal().alloy().densityLiquid().value() * GRAVITY;
    return picture(
            "chart.plane.pressure",
            wet,
            k -> Math.max(range[0], Math.min(range[1], m.pressure(k))),
            range,
            inks(range),
            v -> figures.ruler(v / weight),
            Map.of("time", figures.fixed(m.time(), 2)))
        .saying(
            sentences.say("chart.plane.pressure.says", "head", figures.ruler(range[1] / weight)));
  }

  private double[] range(IntPredicate shown, IntToDoubleFunction value) {
    double low = Double.POSITIVE_INFINITY;
    double high = Double.NEGATIVE_INFINITY;
    for (int k = 0; k < field.map().grid().size(); k++) {
      if (field.map().isOpen(k) && shown.test(k)) {
        low = Math.min(low, value.applyAsDouble(k));
        high = Math.max(high, value.applyAsDouble(k));
      }
    }
    return low < high ? new double[] {low, high} : new double[] {0.0, 1.0};
  }

  /** Range that all but the least and the most {@link #FEW} of the squares lie in. */
  private double[] most(IntPredicate shown, IntToDoubleFunction value) {
    double[] all =
        IntStream.range(0, field.map().grid().size())
            .filter(k -> field.map().isOpen(k) && shown.test(k))
            .mapToDouble(value)
            .sorted()
            .toArray();
    if (all.length == 0) {
      return new double[] {0.0, 1.0};
    }
    int few = (int) (FEW * all.length);
    double low = all[few];
    double high = all[all.length - 1 - few];
    return low < high ? new double[] {low, high} : new double[] {low, low + 1.0};
  }

  private static DoubleFunction<Color> inks(double[] range) {
    return v -> ink((v - range[0]) / (range[1] - range[0]));
  }

  /** Darker is more. */
  private static Color ink(double share) {
    double s = Math.rint(SHADES * Math.max(0.0, Math.min(1.0, share))) / SHADES;
    return new Color(
        (int) (FAINT.getRed() + s * (DARK.getRed() - FAINT.getRed())),
        (int) (FAINT.getGreen() + s * (DARK.getGreen() - FAINT.getGreen())),
        (int) (FAINT.getBlue() + s * (DARK.getBlue() - FAINT.getBlue())));
  }

  private Picture picture(
      String name,
      IntPredicate shown,
      IntToDoubleFunction value,
      double[] range,
      DoubleFunction<Color> ink,
      DoubleFunction<String> words,
      Map<String, String> more) {
    List<String> caption = new ArrayList<>();
    more.forEach(
        (k, v) -> {
          caption.add(k);
          caption.add(v);
        });
    return new Picture(
        sentences.say(name + ".heading"),
        sentences.say(name + ".caption", caption.toArray(String[]::new)),
        sheet.tall() + KEY,
        (g, area) -> {
          sheet.inside(
              g,
              area,
              k ->
                  shown.test(k) ? ink.apply(quantised(value.applyAsDouble(k), range)) : Look.PAPER);
          sheet.ruler(g, area, figures);
          key(g, area, sheet, range, ink, words);
        });
  }

  private static double quantised(double value, double[] range) {
    double step = (range[1] - range[0]) / SHADES;
    return range[0] + step * Math.rint((value - range[0]) / step);
  }

  /** A scale under a map. */
  static void key(
      Graphics2D g,
      Rectangle2D area,
      PlaneSheet sheet,
      double[] range,
      DoubleFunction<Color> ink,
      DoubleFunction<String> words) {
    double left = area.getX() + PlaneSheet.LEFT;
    double top = area.getY() + sheet.tall() + 4.0;
    for (int i = 0; i < PATCHES; i++) {
      double v = range[0] + (range[1] - range[0]) * (i + 0.5) / PATCHES;
      g.setPaint(ink.apply(v));
      g.fill(new Rectangle2D.Double(left + i * PATCH, top, PATCH + 0.5, 12.0));
    }
    Pens.line(
        g, new Rectangle2D.Double(left, top, PATCHES * PATCH, 12.0), Look.FAINT_INK, Look.THIN);
    g.setFont(Look.TICK);
    g.setPaint(Look.INK);
    for (int i = 0; i <= 4; i++) {
      String text = words.apply(range[0] + (range[1] - range[0]) * i / 4.0);
      double at = left + i * PATCHES * PATCH / 4.0;
      double shift = i == 0 ? 0.0 : 0.5 * Paper.wide(text, Look.TICK);
      g.drawString(text, (float) (at - shift), (float) (top + 28.0));
    }
  }

  private Picture origin() {
    int n = field.gates().size();
    return new Picture(
            sentences.say("chart.plane.origin.heading"),
            sentences.say("chart.plane.origin.caption"),
            sheet.tall() + KEY,
            (g, area) -> {
              sheet.inside(g, area, k -> shade(k, n));
              sheet.ruler(g, area, figures);
              double left = area.getX() + PlaneSheet.LEFT;
              double top = area.getY() + sheet.tall() + 4.0;
              g.setFont(Look.TICK);
              for (int gate = 0; gate < n; gate++) {
                String name = PlainLetters.of(field.gates().get(gate));
                Rectangle2D patch = new Rectangle2D.Double(left, top, 26.0, 12.0);
                g.setPaint(ink((gate + 0.5) / n));
                g.fill(patch);
                Pens.line(g, patch, Look.FAINT_INK, Look.THIN);
                g.setPaint(Look.INK);
                g.drawString(name, (float) (left + 32.0), (float) (top + 11.0));
                left += 52.0 + Paper.wide(name, Look.TICK);
              }
            })
        .saying(
            sentences.say("chart.plane.origin.says", "count", figures.whole(field.gates().size())));
  }

  private Color shade(int k, int gates) {
    boolean there = field.fill(k) >= 0.5 && field.gate(k) != PlaneField.NO_GATE;
    return there ? ink((field.gate(k) + 0.5) / gates) : Look.PAPER;
  }

  /** Middle of a cell on paper. */
  static Point2D middle(PlaneSheet sheet, Rectangle2D area, int k) {
    GapMap map = sheet.map;
    int row = k / map.nx();
    return sheet.at(area, k % map.nx() + 0.5, row + 0.5);
  }
}
