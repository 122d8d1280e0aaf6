package lastinch.cases.mesh;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.util.Locale;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;

/** A box 4 x 2 x 1 in all the ways it can be written. */
final class ModelText {
  static final double[][] CORNERS = {
    {0, 0, 0}, {4, 0, 0}, {4, 2, 0}, {0, 2, 0}, {0, 0, 1}, {4, 0, 1}, {4, 2, 1}, {0, 2, 1}
  };
  static final int[][] FACES = {
    {0, 2, 1}, {0, 3, 2}, {4, 5, 6}, {4, 6, 7}, {0, 1, 5}, {0, 5, 4},
    {1, 2, 6}, {1, 6, 5}, {2, 3, 7}, {2, 7, 6}, {3, 0, 4}, {3, 4, 7}
  };

  private ModelText() {}

  static byte[] binary(String head) {
    ByteBuffer out = ByteBuffer.allocate(84 + 50 * FACES.length).order(ByteOrder.LITTLE_ENDIAN);
    out.put(head.getBytes(StandardCharsets.US_ASCII));
    out.putInt(80, FACES.length);
    int at = 84;
    for (int[] face : FACES) {
      for (int k = 0; k < 3; k++) {
        for (int axis = 0; axis < 3; axis++) {
          out.putFloat(at + 12 + 12 * k + 4 * axis, (float) CORNERS[face[k]][axis]);
        }
      }
      at += 50;
    }
    return out.array();
  }

  static String ascii(String lineEnd) {
    StringBuilder text = new StringBuilder("solid box" + lineEnd);
    for (int[] face : FACES) {
      text.append("  facet normal 0 0 0").append(lineEnd).append("    outer loop").append(lineEnd);
      for (int k = 0; k < 3; k++) {
        double[] p = CORNERS[face[k]];
        text.append(
            String.format(Locale.ROOT, "      vertex %e %e %e%s", p[0], p[1], p[2], lineEnd));
      }
      text.append("    endloop").append(lineEnd).append("  endfacet").append(lineEnd);
    }
    return text.append("endsolid box").append(lineEnd).toString();
  }

  static String obj() {
    StringBuilder text = new StringBuilder("# a box\n");
    for (double[] p : CORNERS) {
      text.append("v ").append(p[0]).append(' ').append(p[1]).append(' ').append(p[2]).append('\n');
    }
    text.append("f 1/1 4/2 3/3 2/4\nf 5//1 6//1 7//1 8//1\nf -8 -7 -3 -4\n");
    return text.append("f 2 3 7 6\nf 3 4 8 \\\n 7\nf 4 1 5 8\n").toString();
  }

  static String meshXml() {
    StringBuilder text = new StringBuilder("<mesh><vertices>");
    for (double[] p : CORNERS) {
      text.append(String.format(Locale.ROOT, "<vertex x='%s' y='%s' z='%s'/>", p[0], p[1], p[2]));
    }
    text.append("</vertices><triangles>");
    for (int[] f : FACES) {
      text.append(
          String.format(Locale.ROOT, "<triangle v1='%d' v2='%d' v3='%d'/>", f[0], f[1], f[2]));
    }
    return text.append("</triangles></mesh>").toString();
  }

  /** A model part round some resources and a build. */
  static String model(String unit, String resources, String build) {
    return "<?xml version='1.0' encoding='UTF-8'?><model unit='"
        + unit
        + "' xmlns='http://schemas.microsoft.com/3dmanufacturing/core/2015/02'><resources>"
        + resources
        + "</resources><build>"
        + build
        + "</build></model>";
  }

  static byte[] packed(String model) {
    return packed("3D/3dmodel.model", model.getBytes(StandardCharsets.UTF_8));
  }

  static byte[] packed(String name, byte[] content) {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    try (ZipOutputStream zip = new ZipOutputStream(bytes)) {
      zip.putNextEntry(new ZipEntry(name));
      zip.write(content);
      zip.closeEntry();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return bytes.toByteArray();
  }
}
