package lastinch.ui.chart.study;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import lastinch.solver.diagnosis.HeatLossBudget;
import lastinch.ui.chart.paper.Labels;
import lastinch.ui.chart.paper.Look;
import lastinch.ui.chart.paper.Paper;
import lastinch.ui.chart.paper.Pens;
import lastinch.ui.chart.paper.Picture;
import lastinch.ui.chart.paper.View;
import lastinch.ui.chart.pour.DrawnBar;
import lastinch.ui.chart.pour.MouldLayout;
import lastinch.ui.words.Figures;
import lastinch.ui.words.PlainLetters;
import lastinch.ui.words.Sentences;
import lastinch.ui.words.pour.Explained;
import lastinch.ui.words.study.WhyText;

/**
 * Blocks of heat standing on the places that ate it: the way of the leading metal pulled straight,
 * edge on and to scale, each block as long as its place and as large as the heat. What came from
 * the metal behind hangs below.
 */
public final class HeatBlocks {
  private static final double HIGHEST = 170.0;
  private static final double NAMES = 60.0;
  private static final double FOOT = 36.0;
  private static final double LOOSE = 46.0;
  private static final double GAP = 12.0;
  private static final double BELOW = 6.0;
  private static final double FITS_WIDE = 26.0;
  private static final double FITS_TALL = 17.0;
  private static final double KEY_DEGREES = 10.0;
  private static final int SLICES = 24;

  private final Explained why;
  private final Sentences sentences;
  private final Figures figures;
  private final Map<String, DrawnBar> bars = new LinkedHashMap<>();
  private final List<HeatLossBudget.Line> loose = new ArrayList<>();
  private final List<HeatLossBudget.Line> places = new ArrayList<>();
  private final double kept;
  private final double scale;
  private final double perDegree;
  private final double half;
  private final double hang;

  private HeatBlocks(Explained why, Sentences sentences, Figures figures) {
    this.why = why;
    this.sentences = sentences;
    this.figures = figures;
    MouldLayout layout = MouldLayout.of(why.plan().pourCase());
    bars.putAll(layout.gating());
    bars.putAll(layout.piece());
    double behind = 0.0;
    double length = 0.0;
    double deep = 0.0;
    for (HeatLossBudget.Line line : why.account().lines()) {
      if (line.kind() == HeatLossBudget.Kind.FROM_BEHIND) {
        behind -= line.degrees();
      } else if (line.to() > line.from()) {
        places.add(line);
        length += line.to() - line.from();
        deep = Math.max(deep, thick(line, 0.0));
      } else {
        loose.add(line);
      }
    }
    kept = behind;
    scale = (Paper.INNER - loose.size() * (LOOSE + GAP) - GAP) / Math.max(1e-3, length);
    half = scale * deep;
    double densest = loose.stream().mapToDouble(l -> l.degrees() / LOOSE).max().orElse(0.0);
    double warmest = 0.0;
    for (HeatLossBudget.Line line : places) {
      densest = Math.max(densest, line.degrees() / wide(line));
      warmest = Math.max(warmest, line.kept() / wide(line));
    }
    perDegree = HIGHEST / Math.max(1e-9, densest);
    hang = warmest * perDegree;
  }

  public static Picture of(Explained why, Sentences sentences, Figures figures) {
    HeatBlocks blocks = new HeatBlocks(why, sentences, figures);
    return new Picture(
        sentences.say("chart.blocks.heading"),
        blocks.message(),
        sentences.say(
            why.account().tellsWarmth() ? "chart.blocks.caption" : "chart.blocks.caption.net"),
        NAMES + HIGHEST + 2 * BELOW + 2 * blocks.half + blocks.hang + FOOT + blocks.side(),
        blocks::draw);
  }

  private String message() {
    Optional<HeatLossBudget.Line> most =
        Stream.concat(loose.stream(), places.stream())
            .max(Comparator.comparingDouble(HeatLossBudget.Line::degrees));
    return most.map(
            l ->
                PlainLetters.of(
                    sentences.say(
                        "chart.says.blocks",
                        "place",
                        new WhyText(sentences, figures).place(why, l),
                        "degrees",
                        figures.degrees(l.degrees()))))
        .orElse("");
  }

  private double wide(HeatLossBudget.Line line) {
    return scale * (line.to() - line.from());
  }

  /** Half the thickness at a share of the way along a place [m]. */
  private double thick(HeatLossBudget.Line line, double share) {
    DrawnBar bar = bars.get(line.passage());
    if (bar == null) {
      return 0.0;
    }
    double s = line.from() + share * (line.to() - line.from());
    return bar.half(View.EDGE, Math.max(0.0, Math.min(bar.length(), s)));
  }

  private void draw(Graphics2D g, Rectangle2D area) {
    double ground = area.getY() + NAMES + HIGHEST;
    Labels labels =
        new Labels(
            new Rectangle2D.Double(area.getX(), area.getY(), area.getWidth(), area.getHeight()));
    List<Rectangle2D> blocks = new ArrayList<>();
    double x = area.getX();
    for (HeatLossBudget.Line line : loose) {
      double tall = perDegree * Math.max(0.0, line.degrees()) / LOOSE;
      blocks.add(new Rectangle2D.Double(x, ground - tall, LOOSE, tall));
      x += LOOSE + GAP;
    }
    double start = x + GAP;
    x = start;
    for (HeatLossBudget.Line line : places) {
      double tall = perDegree * Math.max(0.0, line.degrees()) / wide(line);
      blocks.add(new Rectangle2D.Double(x, ground - tall, wide(line), tall));
      x += wide(line);
    }
    blocks.forEach(labels::keepOff);
    List<HeatLossBudget.Line> all = new ArrayList<>(loose);
    all.addAll(places);
    for (int i = 0; i < all.size(); i++) {
      block(g, labels, all.get(i), blocks.get(i));
    }
    double looseEnd = area.getX() + loose.size() * (LOOSE + GAP) - GAP;
    Pens.line(g, new Line2D.Double(area.getX(), ground, looseEnd, ground), Look.INK, Look.OUTLINE);
    way(g, start, ground + BELOW + half);
    if (why.account().tellsWarmth()) {
      warmth(g, start, ground + 2 * (BELOW + half));
    }
    foot(g, area, ground + 2 * (BELOW + half) + hang + FOOT - 8.0);
  }

  private void block(Graphics2D g, Labels labels, HeatLossBudget.Line line, Rectangle2D block) {
    boolean piece = line.kind() == HeatLossBudget.Kind.PIECE;
    boolean channel = line.kind() == HeatLossBudget.Kind.CHANNEL;
    g.setPaint(ground(line.kind()));
    g.fill(block);
    if (piece) {
      Pens.hatch(g, block, Look.FAINT_INK, Pens.FINE);
    }
    Pens.line(g, block, Look.INK, Look.OUTLINE);
    String number = figures.degrees(line.degrees());
    boolean inside = block.getWidth() > FITS_WIDE && block.getHeight() > FITS_TALL;
    if (inside) {
      number(g, number, block);
    }
    String name = channel ? line.passage() : new WhyText(sentences, figures).place(why, line);
    labels.write(
        g,
        PlainLetters.of(
            inside ? name : sentences.say("chart.blocks.name", "name", name, "degrees", number)),
        Look.NAME,
        Look.INK,
        block.getCenterX(),
        block.getMinY(),
        0.0,
        -1.0);
  }

  private static Color ground(HeatLossBudget.Kind kind) {
    return switch (kind) {
      case WAITING, LIP -> Look.BAND;
      case CHANNEL -> Look.RULE;
      case PIECE, FROM_BEHIND -> Look.PAPER;
    };
  }

  /** Degrees' worth on a slip in the middle of its block. */
  private static void number(Graphics2D g, String number, Rectangle2D block) {
    double wide = Paper.wide(number, Look.LABEL);
    double x = block.getCenterX() - 0.5 * wide;
    double y = block.getCenterY() + 5.0;
    g.setPaint(Look.PAPER);
    g.fill(new Rectangle2D.Double(x - 2.0, y - 12.0, wide + 4.0, 15.0));
    g.setFont(Look.LABEL);
    g.setPaint(Look.INK);
    g.drawString(number, (float) x, (float) y);
  }

  /** Channels and piece edge on, one after the other. */
  private void way(Graphics2D g, double start, double middle) {
    double x = start;
    for (HeatLossBudget.Line line : places) {
      Path2D shape = new Path2D.Double();
      for (int i = 0; i <= SLICES; i++) {
        double share = (double) i / SLICES;
        double y = middle - scale * thick(line, share);
        if (i == 0) {
          shape.moveTo(x, y);
        } else {
          shape.lineTo(x + share * wide(line), y);
        }
      }
      for (int i = SLICES; i >= 0; i--) {
        double share = (double) i / SLICES;
        shape.lineTo(x + share * wide(line), middle + scale * thick(line, share));
      }
      shape.closePath();
      g.setPaint(Look.FROZEN);
      g.fill(shape);
      Pens.line(g, shape, Look.INK, Look.OUTLINE);
      x += wide(line);
    }
  }

  /** Warmth from behind, hanging below its places. */
  private void warmth(Graphics2D g, double start, double top) {
    double x = start;
    for (HeatLossBudget.Line line : places) {
      double tall = perDegree * line.kept() / wide(line);
      Rectangle2D block = new Rectangle2D.Double(x, top, wide(line), tall);
      if (tall > 0.5) {
        Pens.line(g, block, Look.INK, Look.DASHED);
      }
      String number = figures.degrees(-line.kept());
      if (wide(line) > FITS_WIDE && tall > FITS_TALL) {
        number(g, number, block);
      } else if (tall > 0.5) {
        g.setFont(Look.TICK);
        g.setPaint(Look.INK);
        double left = block.getCenterX() - 0.5 * Paper.wide(number, Look.TICK);
        g.drawString(number, (float) left, (float) (block.getMaxY() + 13.0));
      }
      x += wide(line);
    }
    double end = start + 0.5 * (x - start);
    String words = sentences.say("chart.blocks.behind", "degrees", figures.degrees(kept));
    g.setFont(Look.NAME);
    g.setPaint(Look.INK);
    g.drawString(
        words, (float) (end - 0.5 * Paper.wide(words, Look.NAME)), (float) (top + hang + 16.0));
  }

  /** Side of a square as large as ten degrees' worth. */
  private double side() {
    return Math.sqrt(KEY_DEGREES * perDegree);
  }

  /** How large ten degrees' worth is, and a length to compare with. */
  private void foot(Graphics2D g, Rectangle2D area, double top) {
    double side = side();
    Rectangle2D key = new Rectangle2D.Double(area.getX(), top, side, side);
    g.setPaint(Look.BAND);
    g.fill(key);
    Pens.line(g, key, Look.INK, Look.OUTLINE);
    g.setFont(Look.TICK);
    g.setPaint(Look.INK);
    double middle = top + 0.5 * side + 4.0;
    g.drawString(
        sentences.say("chart.blocks.key", "degrees", figures.degrees(KEY_DEGREES)),
        (float) (area.getX() + side + 8.0),
        (float) middle);
    double metres = figures.lengthUnit().equals("mm") ? 0.05 : 0.0508;
    double right = area.getMaxX() - 6.0;
    double left = right - scale * metres;
    double y = middle - 4.0;
    Pens.line(g, new Line2D.Double(left, y, right, y), Look.INK, Look.OUTLINE);
    Pens.line(g, new Line2D.Double(left, y - 4, left, y + 4), Look.INK, Look.OUTLINE);
    Pens.line(g, new Line2D.Double(right, y - 4, right, y + 4), Look.INK, Look.OUTLINE);
    String words = figures.ruler(metres);
    g.setFont(Look.TICK);
    g.drawString(words, (float) (left - Paper.wide(words, Look.TICK) - 8.0), (float) middle);
  }
}
