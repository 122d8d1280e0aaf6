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
import javax.imageio.ImageIO;
import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.parsers.ParserConfigurationException;
import lastinch.ui.words.Figures;
import lastinch.ui.words.PouredPlan;
import lastinch.ui.words.Sentences;
import org.apache.batik.svggen.SVGGeneratorContext;
import org.apache.batik.svggen.SVGGraphics2D;
import org.jfree.chart.JFreeChart;
import org.jfree.chart.text.TextUtils;
import org.w3c.dom.Document;
import org.w3c.dom.Element;

/** All charts of a poured plan, to be written as PNG and SVG. */
public final class ChartFiles {
  private static final int WIDE = 900;
  private static final int TALL = 560;
  private static final int SHARP = 2;
  private static final String SVG = "http://www.w3.org/2000/svg";

  private final Map<String, JFreeChart> charts = new LinkedHashMap<>();

  public ChartFiles(PouredPlan plan, Sentences sentences, Figures figures) {
    // Otherwise words along an upright axis would be outlines, not text.
    TextUtils.setUseDrawRotatedStringWorkaround(false);
    charts.put("front", FrontChart.of(plan, sentences, figures));
    charts.put("race", RaceChart.of(plan, sentences, figures));
  }

  /** Names of the charts; files are named so with {@code .png} and {@code .svg}. */
  public Iterable<String> names() {
    return charts.keySet();
  }

  /** Writes one chart at twice its size in dots. */
  public void png(String name, Path file) throws IOException {
    if (!ImageIO.write(image(name), "png", file.toFile())) {
      throw new IOException("no writer for PNG");
    }
  }

  /** One chart at twice its size in dots. */
  BufferedImage image(String name) {
    BufferedImage image = new BufferedImage(WIDE * SHARP, TALL * SHARP, BufferedImage.TYPE_INT_RGB);
    Graphics2D g = image.createGraphics();
    g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
    g.setRenderingHint(
        RenderingHints.KEY_TEXT_ANTIALIASING, RenderingHints.VALUE_TEXT_ANTIALIAS_ON);
    g.setRenderingHint(
        RenderingHints.KEY_FRACTIONALMETRICS, RenderingHints.VALUE_FRACTIONALMETRICS_ON);
    g.scale(SHARP, SHARP);
    charts.get(name).draw(g, new Rectangle2D.Double(0, 0, WIDE, TALL));
    g.dispose();
    return image;
  }

  /** Writes one chart with its text as text. */
  public void svg(String name, Path file) throws IOException {
    try (Writer out = Files.newBufferedWriter(file, StandardCharsets.UTF_8)) {
      svg(name, out);
    }
  }

  void svg(String name, Writer out) throws IOException {
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
    g.setSVGCanvasSize(new Dimension(WIDE, TALL));
    charts.get(name).draw(g, new Rectangle2D.Double(0, 0, WIDE, TALL));
    Element root = g.getRoot();
    root.setAttribute("viewBox", "0 0 " + WIDE + " " + TALL);
    g.stream(root, out, true, false);
    g.dispose();
  }
}
