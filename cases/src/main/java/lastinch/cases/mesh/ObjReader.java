package lastinch.cases.mesh;

import java.util.Optional;

/** OBJ: points and flat faces; everything else is passed over. */
final class ObjReader {
  private static final int MOST_CORNERS = 10_000;

  private ObjReader() {}

  static Mesh read(byte[] bytes) throws MeshError {
    Words words = new Words(bytes);
    TriangleSoup soup = new TriangleSoup();
    boolean more = words.next();
    while (more) {
      if (words.startsLine() && words.is("v")) {
        double[] p = new double[3];
        for (int k = 0; k < 3; k++) {
          if (!words.next() || words.startsLine()) {
            throw new MeshError("wrong.pointObjFileFewer");
          }
          p[k] = words.number();
        }
        soup.point(p[0], p[1], p[2]);
        words.skipLine();
        more = words.next();
      } else if (words.startsLine() && words.is("f")) {
        more = face(words, soup);
      } else {
        words.skipLine();
        more = words.next();
      }
    }
    return soup.weld(Optional.empty());
  }

  /** Reads the corners of a face as a fan; leaves the reader on the word behind it. */
  private static boolean face(Words words, TriangleSoup soup) throws MeshError {
    int first = 0;
    int before = 0;
    int corners = 0;
    boolean more = words.next();
    while (more && !words.startsLine()) {
      if (words.is("\\")) {
        more = words.next();
        if (!more) {
          break;
        }
      }
      if (words.text().startsWith("#")) {
        words.skipLine();
        more = words.next();
        continue;
      }
      int p = index(words, soup.points());
      if (corners >= 2) {
        soup.triangle(first, before, p);
      } else if (corners == 0) {
        first = p;
      }
      before = p;
      corners++;
      if (corners > MOST_CORNERS) {
        throw new MeshError("wrong.faceObjFileMore");
      }
      more = words.next();
    }
    if (corners < 3) {
      throw new MeshError("wrong.faceObjFileFewer");
    }
    return more;
  }

  private static int index(Words words, int points) throws MeshError {
    String text = words.text();
    int slash = text.indexOf('/');
    String number = slash < 0 ? text : text.substring(0, slash);
    try {
      int i = Integer.parseInt(number);
      return i < 0 ? points + i : i - 1;
    } catch (NumberFormatException e) {
      throw new MeshError("wrong.faceObjFileNames");
    }
  }
}
