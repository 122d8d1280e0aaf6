package lastinch.cases.mesh;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import javax.xml.stream.XMLStreamConstants;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamReader;

/**
 * 3MF by its core specification 1.3 (3MF Consortium): meshes, components, build items, transforms
 * and the unit. What other specifications add is passed over.
 */
final class ThreeMfReader {
  private static final int MOST_DEPTH = 16;

  /** Most points of all parts as they are placed; a piece needs a tenth of it. */
  private static final int MOST_PLACED = 1_000_000;

  private static final int MOST_USES = 10_000;
  private static final double[] IDENTITY = {1, 0, 0, 0, 1, 0, 0, 0, 1, 0, 0, 0};

  /** A use of an object, turned and moved. */
  private static final class Use {
    private final String object;
    private final double[] transform;

    Use(String object, double[] transform) {
      this.object = object;
      this.transform = transform;
    }

    String object() {
      return object;
    }

    double[] transform() {
      return transform;
    }
  }

  private final Map<String, TriangleSoup> meshes = new LinkedHashMap<>();
  private final Map<String, List<Use>> assemblies = new LinkedHashMap<>();
  private final List<Use> items = new ArrayList<>();
  private MeshUnit unit = MeshUnit.MILLIMETRE;
  private int uses;
  private int points;

  private ThreeMfReader() {}

  static Mesh read(Path path) throws IOException, MeshError {
    return ZipPackage.read(path, xml -> new ThreeMfReader().model(xml));
  }

  private Mesh model(XMLStreamReader xml) throws XMLStreamException, MeshError {
    String object = "";
    while (xml.hasNext()) {
      if (xml.next() != XMLStreamConstants.START_ELEMENT) {
        continue;
      }
      switch (xml.getLocalName()) {
        case "model" -> unit = unit(xml.getAttributeValue(null, "unit"));
        case "object" -> object = needed(xml, "id");
        case "vertex" -> vertex(xml, object);
        case "triangle" -> triangle(xml, object);
        case "component" ->
            assemblies.computeIfAbsent(object, k -> new ArrayList<>()).add(use(xml));
        case "item" -> items.add(use(xml));
        default -> {}
      }
    }
    if (items.isEmpty()) {
      throw new MeshError("wrong.3mfFilePlacesNothing");
    }
    TriangleSoup whole = new TriangleSoup();
    for (Use item : items) {
      place(item, IDENTITY, 0, whole);
    }
    return whole.weld(Optional.of(unit));
  }

  private void vertex(XMLStreamReader xml, String object) throws MeshError {
    if (++points > TriangleSoup.MOST_TRIANGLES) {
      throw new MeshError("wrong.modelMoreThan2");
    }
    meshes
        .computeIfAbsent(object, k -> new TriangleSoup())
        .point(number(needed(xml, "x")), number(needed(xml, "y")), number(needed(xml, "z")));
  }

  private void triangle(XMLStreamReader xml, String object) throws MeshError {
    meshes
        .computeIfAbsent(object, k -> new TriangleSoup())
        .triangle(index(xml, "v1"), index(xml, "v2"), index(xml, "v3"));
  }

  private static Use use(XMLStreamReader xml) throws MeshError {
    String transform = xml.getAttributeValue(null, "transform");
    return new Use(needed(xml, "objectid"), transform == null ? IDENTITY : matrix(transform));
  }

  private void place(Use use, double[] outer, int depth, TriangleSoup whole) throws MeshError {
    if (depth > MOST_DEPTH || ++uses > MOST_USES) {
      throw new MeshError("wrong.parts3mfFileNested");
    }
    double[] m = product(use.transform(), outer);
    TriangleSoup mesh = meshes.get(use.object());
    List<Use> parts = assemblies.get(use.object());
    if (mesh == null && parts == null) {
      throw new MeshError("wrong.3mfFilePlacesPart");
    }
    if (mesh != null) {
      copy(mesh, m, whole);
    }
    if (parts != null) {
      for (Use part : parts) {
        place(part, m, depth + 1, whole);
      }
    }
  }

  private static void copy(TriangleSoup mesh, double[] m, TriangleSoup whole) throws MeshError {
    int first = whole.points();
    if (first + mesh.points() > MOST_PLACED) {
      throw new MeshError("wrong.parts3mfFileRepeat");
    }
    for (int p = 0; p < mesh.points(); p++) {
      double x = mesh.at(p, 0);
      double y = mesh.at(p, 1);
      double z = mesh.at(p, 2);
      whole.point(
          x * m[0] + y * m[3] + z * m[6] + m[9],
          x * m[1] + y * m[4] + z * m[7] + m[10],
          x * m[2] + y * m[5] + z * m[8] + m[11]);
    }
    boolean mirrored = determinant(m) < 0.0;
    for (int t = 0; t < mesh.triangles(); t++) {
      int a = first + mesh.corner(t, 0);
      int b = first + mesh.corner(t, 1);
      int c = first + mesh.corner(t, 2);
      whole.triangle(a, mirrored ? c : b, mirrored ? b : c);
    }
  }

  private static double determinant(double[] m) {
    return m[0] * (m[4] * m[8] - m[5] * m[7])
        - m[1] * (m[3] * m[8] - m[5] * m[6])
        + m[2] * (m[3] * m[7] - m[4] * m[6]);
  }

  /** First {@code inner}, then {@code outer}; row vectors as in the specification. */
  private static double[] product(double[] inner, double[] outer) {
    double[] m = new double[12];
    for (int row = 0; row < 4; row++) {
      for (int column = 0; column < 3; column++) {
        double sum = row == 3 ? outer[9 + column] : 0.0;
        for (int k = 0; k < 3; k++) {
          sum += inner[3 * row + k] * outer[3 * k + column];
        }
        m[3 * row + column] = sum;
      }
    }
    return m;
  }

  private static double[] matrix(String text) throws MeshError {
    String[] words = text.strip().split("\\s+", 13);
    if (words.length != 12) {
      throw new MeshError("wrong.part3mfFilePlaced");
    }
    double[] m = new double[12];
    for (int k = 0; k < 12; k++) {
      m[k] = number(words[k]);
    }
    return m;
  }

  private static double number(String text) throws MeshError {
    byte[] bytes = text.getBytes(java.nio.charset.StandardCharsets.ISO_8859_1);
    Words words = new Words(bytes);
    words.next();
    return words.number();
  }

  private static int index(XMLStreamReader xml, String name) throws MeshError {
    try {
      return Integer.parseInt(needed(xml, name).strip());
    } catch (NumberFormatException e) {
      throw new MeshError("wrong.face3mfFileNames");
    }
  }

  private static String needed(XMLStreamReader xml, String name) throws MeshError {
    String value = xml.getAttributeValue(null, name);
    if (value == null) {
      throw new MeshError("wrong.3mfFileNoWritten", xml.getLocalName(), name);
    }
    return value;
  }

  private static MeshUnit unit(String word) throws MeshError {
    if (word == null) {
      return MeshUnit.MILLIMETRE;
    }
    return switch (word) {
      case "micron" -> MeshUnit.MICRON;
      case "millimeter" -> MeshUnit.MILLIMETRE;
      case "centimeter" -> MeshUnit.CENTIMETRE;
      case "inch" -> MeshUnit.INCH;
      case "foot" -> MeshUnit.FOOT;
      case "meter" -> MeshUnit.METRE;
      default -> throw new MeshError("wrong.3mfFileUnitNot");
    };
  }
}
