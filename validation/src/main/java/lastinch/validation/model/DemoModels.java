package lastinch.validation.model;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDateTime;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;

/**
 * Writes the demo models: the tail feather without its boss, a ginkgo leaf for a wall hook, a
 * trivet with thin spokes that meet. All are made up.
 */
public final class DemoModels {
  private static final double DEGREE = Math.PI / 180.0;

  /** Stations of the feather: from the quill, wide and thick [mm]. */
  private static final double[] AT = {0.0, 40.0, 64.0, 108.0, 200.0, 272.0, 304.0, 320.0};

  private static final double[] WIDE = {10.0, 14.0, 27.0, 34.0, 32.0, 26.0, 17.0, 8.0};
  private static final double[] THICK = {6.0, 4.4, 4.0, 3.6, 2.6, 1.9, 1.5, 1.3};

  private DemoModels() {}

  /** Writes all models into a folder. */
  public static void main(String[] args) throws IOException {
    Path folder = Path.of(args.length > 0 ? args[0] : "cases/demo/models");
    Files.createDirectories(folder);
    Files.write(folder.resolve("feather.stl"), feather(80, 24).stl("tail feather, mm"));
    Files.write(folder.resolve("ginkgo-leaf.stl"), leaf().stl("ginkgo leaf, mm"));
    Files.write(folder.resolve("trivet.3mf"), trivet());
  }

  /** The feather in some 250 000 faces, as an STL file; for timing. */
  public static byte[] fineFeather() {
    return feather(640, 98).stl("fine feather, mm");
  }

  /** The feather of the demo cases by its stations: quill, widest at a third, rounded tip; lens. */
  static Surface feather(int along, int across) {
    return new Surface()
        .patch(
            along,
            across,
            (u, v) -> {
              double at = 320.0 * u;
              return new double[] {
                at, 0.5 * v * between(WIDE, at), between(THICK, at) * (1.0 - v * v)
              };
            });
  }

  private static double between(double[] figures, double at) {
    int i = 0;
    while (i < AT.length - 2 && at > AT[i + 1]) {
      i++;
    }
    return figures[i] + (figures[i + 1] - figures[i]) * (at - AT[i]) / (AT[i + 1] - AT[i]);
  }

  /** A stalk that opens into a fan with a notch and a wavy rim. */
  static Surface leaf() {
    double spread = 72.0 * DEGREE;
    double root = 3.2;
    return new Surface()
        .patch(
            48,
            64,
            (u, v) -> {
              double angle = spread * v;
              double x = root * StrictMath.cos(angle);
              double y = root * StrictMath.sin(angle);
              if (u <= 0.25) {
                double s = 4.0 * u;
                return new double[] {-45.0 + s * (45.0 + x), 3.0 * v + s * (y - 3.0 * v), 5.0};
              }
              double s = (u - 0.25) / 0.75;
              double notch = angle / (5.0 * DEGREE);
              double radius =
                  72.0
                      * (1.0 - 0.45 * StrictMath.exp(-notch * notch))
                      * (1.0 + 0.02 * StrictMath.cos(16.0 * angle));
              double r = root + s * (radius - root);
              double thick = 1.6 + 3.4 * (1.0 - s) * (1.0 - s);
              return new double[] {r * StrictMath.cos(angle), r * StrictMath.sin(angle), thick};
            });
  }

  /** Ring, hub and one spoke that is used six times. */
  static byte[] trivet() throws IOException {
    Surface ring = new Surface().ring(72.0, 80.0, 5.0, 144);
    Surface hub = new Surface().ring(0.0, 12.0, 5.0, 72);
    Surface spoke =
        new Surface().patch(8, 2, (u, v) -> new double[] {8.0 + 68.0 * u, 2.0 * v, 3.0});
    StringBuilder parts = new StringBuilder();
    for (int k = 0; k < 6; k++) {
      double c = StrictMath.cos(60.0 * k * DEGREE);
      double s = StrictMath.sin(60.0 * k * DEGREE);
      parts
          .append("<component objectid=\"3\" transform=\"")
          .append(c + " " + s + " 0 " + -s + " " + c + " 0 0 0 1 0 0 0\"/>\n");
    }
    String model =
        "<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n"
            + "<model unit=\"millimeter\" xml:lang=\"en\""
            + " xmlns=\"http://schemas.microsoft.com/3dmanufacturing/core/2015/02\">\n<resources>\n"
            + object(1, ring.mesh())
            + object(2, hub.mesh())
            + object(3, spoke.mesh())
            + object(
                4,
                "<components><component objectid=\"1\"/>\n<component objectid=\"2\"/>\n"
                    + parts
                    + "</components>")
            + "</resources>\n<build><item objectid=\"4\"/></build>\n</model>\n";
    Map<String, String> files = new LinkedHashMap<>();
    files.put(
        "[Content_Types].xml",
        "<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n"
            + "<Types xmlns=\"http://schemas.openxmlformats.org/package/2006/content-types\">"
            + "<Default Extension=\"rels\""
            + " ContentType=\"application/vnd.openxmlformats-package.relationships+xml\"/>"
            + "<Default Extension=\"model\""
            + " ContentType=\"application/vnd.ms-package.3dmanufacturing-3dmodel+xml\"/></Types>\n");
    files.put(
        "_rels/.rels",
        "<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n"
            + "<Relationships"
            + " xmlns=\"http://schemas.openxmlformats.org/package/2006/relationships\">"
            + "<Relationship Target=\"/3D/3dmodel.model\" Id=\"rel0\""
            + " Type=\"http://schemas.microsoft.com/3dmanufacturing/2013/01/3dmodel\"/>"
            + "</Relationships>\n");
    files.put("3D/3dmodel.model", model);
    return zip(files);
  }

  private static String object(int id, String content) {
    return "<object id=\"" + id + "\" type=\"model\">" + content + "</object>\n";
  }

  private static byte[] zip(Map<String, String> files) throws IOException {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    try (ZipOutputStream zip = new ZipOutputStream(bytes)) {
      for (Map.Entry<String, String> file : files.entrySet()) {
        ZipEntry entry = new ZipEntry(file.getKey());
        entry.setTimeLocal(LocalDateTime.of(2000, 1, 1, 0, 0));
        zip.putNextEntry(entry);
        zip.write(file.getValue().getBytes(StandardCharsets.UTF_8));
        zip.closeEntry();
      }
    }
    return bytes.toByteArray();
  }
}
