package lastinch.ui.chart;

import java.awt.Dimension;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.geom.Rectangle2D;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.io.Writer;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.function.Consumer;
import javax.imageio.ImageIO;
import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.parsers.ParserConfigurationException;
import lastinch.cases.mesh.ModelLook;
import lastinch.ui.chart.model.GapPicture;
import lastinch.ui.chart.paper.Look;
import lastinch.ui.chart.paper.Paper;
import lastinch.ui.chart.paper.Picture;
import lastinch.ui.chart.plane.PlaneBrokenOut;
import lastinch.ui.chart.plane.PlaneMaps;
import lastinch.ui.chart.pour.BrokenOutPicture;
import lastinch.ui.chart.pour.FrontChart;
import lastinch.ui.chart.pour.GateChart;
import lastinch.ui.chart.pour.HeatChart;
import lastinch.ui.chart.pour.LapChart;
import lastinch.ui.chart.pour.ManyFrontsChart;
import lastinch.ui.chart.pour.MouldPicture;
import lastinch.ui.chart.pour.RaceChart;
import lastinch.ui.words.Figures;
import lastinch.ui.words.PouredPlan;
import lastinch.ui.words.Sentences;
import lastinch.ui.words.ShapeText;
import lastinch.ui.words.pour.PourText;
import org.apache.batik.svggen.SVGGeneratorContext;
import org.apache.batik.svggen.SVGGraphics2D;
import org.jfree.chart.text.TextUtils;
import org.w3c.dom.Document;
import org.w3c.dom.Element;

/** All charts of a poured plan, to be written as PNG and SVG. */
public final class ChartFiles {
  private static final int SHARP = 2;
  private static final String SVG = "http://www.w3.org/2000/svg";

  private final Map<String, Picture> pictures = new LinkedHashMap<>();

  private final String title;
  private final String answer;

  public ChartFiles(PouredPlan plan, Sentences sentences, Figures figures) {
    // Otherwise words along an upright axis would be outlines, not text.
    TextUtils.setUseDrawRotatedStringWorkaround(false);
    title = plan.pourCase().title();
    answer = new PourText(sentences, figures).headline(plan);
    pictures.put(
        "broken-out",
        plan.field()
            .map(field -> PlaneBrokenOut.of(plan, field, sentences, figures))
            .orElseGet(() -> BrokenOutPicture.of(plan, sentences, figures)));
    plan.field().ifPresent(field -> pictures.putAll(PlaneMaps.of(plan, field, sentences, figures)));
    if (plan.field().isPresent()) {
      // no course of cup and sprue is kept, and fronts in two directions have no one way to follow
      pictures.put("race", RaceChart.of(plan, sentences, figures));
      GateChart.of(plan, sentences, figures).ifPresent(p -> pictures.put("gates", p));
      return;
    }
    pictures.put("mould", MouldPicture.of(plan, sentences, figures));
    boolean many = ManyFrontsChart.suits(plan.pourCase());
    pictures.put(
        "front",
        many
            ? ManyFrontsChart.of(plan, sentences, figures)
            : FrontChart.of(plan, sentences, figures));
    pictures.put("race", RaceChart.of(plan, sentences, figures));
    HeatChart.of(plan, sentences, figures).ifPresent(p -> pictures.put("heat", p));
    LapChart.of(plan, sentences, figures).ifPresent(p -> pictures.put("laps", p));
    GateChart.of(plan, sentences, figures).ifPresent(p -> pictures.put("gates", p));
  }

  /** Pictures that share a title and an answer, by name. */
  ChartFiles(String title, String answer, Map<String, Picture> pictures) {
    this.title = title;
    this.answer = answer;
    this.pictures.putAll(pictures);
  }

  /** The same pictures and one more. */
  ChartFiles with(String name, Picture picture) {
    Map<String, Picture> more = new LinkedHashMap<>(pictures);
    more.put(name, picture);
    return new ChartFiles(title, answer, more);
  }

  /** Maps of a model. */
  public static ChartFiles ofModel(
      String file, ModelLook look, Sentences sentences, Figures figures) {
    TextUtils.setUseDrawRotatedStringWorkaround(false);
    Map<String, Picture> maps = new LinkedHashMap<>();
    maps.put("thickness", GapPicture.gap(look, sentences, figures));
    maps.put("freezes-last", GapPicture.last(look, sentences, figures));
    return new ChartFiles(file, new ShapeText(sentences, figures).headline(look), maps);
  }

  /** Names of the charts; files are named so with {@code .png} and {@code .svg}. */
  public Iterable<String> names() {
    return pictures.keySet();
  }

  /** How many there are. */
  public int count() {
    return pictures.size();
  }

  /** Writes one chart at twice its size in dots. */
  public void png(String name, Path file) throws IOException {
    if (!ImageIO.write(image(name), "png", file.toFile())) {
      throw new IOException("no writer for PNG");
    }
  }

  /** One chart at twice its size in dots. */
  BufferedImage image(String name) {
    Paper paper = paper(name);
    int wide = (int) (Paper.WIDE * SHARP);
    int tall = (int) Math.ceil(paper.tall() * SHARP);
    BufferedImage image = new BufferedImage(wide, tall, BufferedImage.TYPE_INT_RGB);
    Graphics2D g = image.createGraphics();
    g.setPaint(Look.PAPER);
    g.fillRect(0, 0, wide, tall);
    g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
    g.setRenderingHint(
        RenderingHints.KEY_TEXT_ANTIALIASING, RenderingHints.VALUE_TEXT_ANTIALIAS_ON);
    g.setRenderingHint(
        RenderingHints.KEY_FRACTIONALMETRICS, RenderingHints.VALUE_FRACTIONALMETRICS_ON);
    g.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
    g.scale(SHARP, SHARP);
    paper.draw(g);
    g.dispose();
    return image;
  }

  private Paper paper(String name) {
    return new Paper(title, answer, pictures.get(name));
  }

  /** Writes one chart with its text as text. */
  public void svg(String name, Path file) throws IOException {
    try (Writer out = Files.newBufferedWriter(file, StandardCharsets.UTF_8)) {
      svg(name, out);
    }
  }

  void svg(String name, Writer out) throws IOException {
    Paper paper = paper(name);
    svg(out, Paper.WIDE, paper.tall(), paper::draw);
  }

  /** What a picture shows, in a few words. */
  public String heading(String name) {
    return pictures.get(name).heading();
  }

  /** What a picture says of this plan, in one sentence; empty where the verdict says it. */
  public String message(String name) {
    return pictures.get(name).message();
  }

  /** What marks in a picture mean that carry no words themselves; may be empty. */
  public String caption(String name) {
    return pictures.get(name).caption();
  }

  /** Writes a picture without its title and caption, for a page that has both. */
  public void body(String name, Writer out) throws IOException {
    Picture picture = pictures.get(name);
    Rectangle2D area = new Rectangle2D.Double(0, 0, Paper.INNER, picture.tall());
    svg(out, Paper.INNER, picture.tall(), g -> picture.body().draw(g, area));
  }

  private static void svg(Writer out, double wide, double tall, Consumer<Graphics2D> pen)
      throws IOException {
    Document document;
    try {
      document =
          DocumentBuilderFactory.newInstance()
              .newDocumentBuilder()
              .getDOMImplementation()
              .createDocument(SVG, "svg", null);
    } catch (ParserConfigurationException e) {
      throw new IOException(e);
    }
    SVGGeneratorContext context = SVGGeneratorContext.createDefault(document);
    context.setComment("Last Inch");
    SVGGraphics2D g = new SVGGraphics2D(context, false);
    int right = (int) Math.ceil(wide);
    int bottom = (int) Math.ceil(tall);
    g.setSVGCanvasSize(new Dimension(right, bottom));
    pen.accept(g);
    Element root = g.getRoot();
    root.setAttribute("viewBox", "0 0 " + right + " " + bottom);
    g.stream(root, out, true, false);
    g.dispose();
  }
}
