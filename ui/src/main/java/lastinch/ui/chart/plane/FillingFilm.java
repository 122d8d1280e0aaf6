package lastinch.ui.chart.plane;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.geom.Rectangle2D;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import javax.imageio.IIOImage;
import javax.imageio.ImageIO;
import javax.imageio.ImageTypeSpecifier;
import javax.imageio.ImageWriteParam;
import javax.imageio.ImageWriter;
import javax.imageio.metadata.IIOMetadata;
import javax.imageio.metadata.IIOMetadataNode;
import javax.imageio.stream.ImageOutputStream;
import lastinch.solver.result.PlaneField;
import lastinch.ui.chart.paper.GlowScale;
import lastinch.ui.chart.paper.Look;
import lastinch.ui.chart.paper.Paper;
import lastinch.ui.words.Figures;
import lastinch.ui.words.PlainLetters;
import lastinch.ui.words.PouredPlan;
import lastinch.ui.words.Sentences;

/** The filling moment by moment: single frames, and all of them as one moving picture. */
public final class FillingFilm {
  private static final double HEAD = 34.0;
  private static final double FOOT = 56.0;
  private static final int SHADES = 60;
  private static final int CENTISECONDS = 10;
  private static final int LAST = 200;
  private static final String FORMAT = "javax_imageio_gif_image_1.0";
  private static final String STREAM_BLOCK = "NETSCAPE";

  private final PlaneField field;
  private final PlaneSheet sheet;
  private final GlowScale glow;
  private final String title;
  private final Sentences sentences;
  private final Figures figures;

  /** A film of a plan that was poured over the plane. */
  public FillingFilm(PouredPlan plan, PlaneField field, Sentences sentences, Figures figures) {
    this.field = field;
    title = PlainLetters.of(plan.pourCase().title());
    this.sentences = sentences;
    this.figures = figures;
    sheet = new PlaneSheet(field.map(), plan.pourCase().mould().attitude());
    glow = PlaneMaps.glow(plan, field);
  }

  /** Number of frames. */
  public int size() {
    return field.moments().size();
  }

  /** Name of a frame's file. */
  public static String name(int frame) {
    return String.format(Locale.ROOT, "filling-%04d.png", frame + 1);
  }

  /** Writes one frame. */
  public void png(int frame, Path file) throws IOException {
    if (!ImageIO.write(image(frame), "png", file.toFile())) {
      throw new IOException("no writer for PNG");
    }
  }

  private Color ink(PlaneField.Moment m, int k) {
    if (m.fill(k) < 0.5) {
      return Look.PAPER;
    }
    if (m.stopped(k)) {
      return Look.FAINT_INK;
    }
    double span = glow.hottest() - glow.coldest();
    double share = (m.temperature(k) - glow.coldest()) / span;
    return glow.color(glow.coldest() + span * Math.rint(share * SHADES) / SHADES);
  }

  private BufferedImage image(int frame) {
    PlaneField.Moment m = field.moments().get(frame);
    int wide = (int) Paper.WIDE;
    int tall = (int) Math.ceil(HEAD + sheet.tall() + FOOT);
    BufferedImage image = new BufferedImage(wide, tall, BufferedImage.TYPE_INT_RGB);
    Graphics2D g = image.createGraphics();
    g.setPaint(Look.PAPER);
    g.fillRect(0, 0, wide, tall);
    g.setRenderingHint(
        RenderingHints.KEY_TEXT_ANTIALIASING, RenderingHints.VALUE_TEXT_ANTIALIAS_ON);
    Rectangle2D area =
        new Rectangle2D.Double(0.5 * (Paper.WIDE - Paper.INNER), HEAD, Paper.INNER, tall);
    sheet.inside(g, area, k -> ink(m, k));
    sheet.ruler(g, area, figures);
    double[] range = {glow.coldest(), glow.hottest()};
    PlaneMaps.key(g, area, sheet, range, glow::color, figures::heat);
    float left = (float) (area.getX() + PlaneSheet.LEFT);
    g.setFont(Look.LABEL);
    g.setPaint(Look.INK);
    String time = sentences.say("film.time", "time", figures.fixed(m.time(), 2));
    g.drawString(title + ": " + time, left, 22.0f);
    g.setFont(Look.TICK);
    g.drawString(sentences.say("film.key"), left, (float) (HEAD + sheet.tall() + 48.0));
    g.dispose();
    return image;
  }

  /** Writes all frames as one animated GIF that runs for ever and rests on its last frame. */
  public void gif(Path file) throws IOException {
    ImageWriter writer = ImageIO.getImageWritersByFormatName("gif").next();
    try (ImageOutputStream out = ImageIO.createImageOutputStream(file.toFile())) {
      writer.setOutput(out);
      writer.prepareWriteSequence(null);
      for (int i = 0; i < size(); i++) {
        BufferedImage image = image(i);
        ImageWriteParam param = writer.getDefaultWriteParam();
        IIOMetadata data =
            writer.getDefaultImageMetadata(
                ImageTypeSpecifier.createFromRenderedImage(image), param);
        timed(data, i + 1 == size() ? LAST : CENTISECONDS, i == 0);
        writer.writeToSequence(new IIOImage(image, List.of(), data), param);
      }
      writer.endWriteSequence();
    } finally {
      writer.dispose();
    }
  }

  private static void timed(IIOMetadata data, int centiseconds, boolean first) throws IOException {
    IIOMetadataNode root = (IIOMetadataNode) data.getAsTree(FORMAT);
    IIOMetadataNode control = new IIOMetadataNode("GraphicControlExtension");
    control.setAttribute("disposalMethod", "none");
    control.setAttribute("userInputFlag", "FALSE");
    control.setAttribute("transparentColorFlag", "FALSE");
    control.setAttribute("transparentColorIndex", "0");
    control.setAttribute("delayTime", Integer.toString(centiseconds));
    org.w3c.dom.NodeList old = root.getElementsByTagName("GraphicControlExtension");
    if (old.getLength() > 0) {
      root.replaceChild(control, old.item(0));
    } else {
      root.appendChild(control);
    }
    if (first) {
      IIOMetadataNode extensions = new IIOMetadataNode("ApplicationExtensions");
      IIOMetadataNode loop = new IIOMetadataNode("ApplicationExtension");
      loop.setAttribute("applicationID", STREAM_BLOCK);
      loop.setAttribute("authenticationCode", "2.0");
      loop.setUserObject(new byte[] {1, 0, 0});
      extensions.appendChild(loop);
      root.appendChild(extensions);
    }
    data.setFromTree(FORMAT, root);
  }
}
