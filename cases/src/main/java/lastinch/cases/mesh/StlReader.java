package lastinch.cases.mesh;

import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.util.Optional;

/**
 * STL, binary or text. A binary file is told by its length, not by its first word: many of them
 * begin with "solid".
 */
final class StlReader {
  private static final int HEAD = 84;
  private static final int FACE = 50;

  private StlReader() {}

  static boolean isBinary(byte[] bytes) {
    return bytes.length >= HEAD && bytes.length == HEAD + FACE * count(bytes);
  }

  private static long count(byte[] bytes) {
    return ByteBuffer.wrap(bytes).order(ByteOrder.LITTLE_ENDIAN).getInt(80) & 0xFFFFFFFFL;
  }

  static boolean looksLikeText(byte[] bytes) {
    Words words = new Words(bytes);
    return words.next() && words.is("solid");
  }

  static Mesh read(byte[] bytes) throws MeshError {
    if (isBinary(bytes)) {
      return binary(bytes, (int) count(bytes));
    }
    boolean zero = false;
    for (int i = 0; i < Math.min(bytes.length, 1024); i++) {
      zero |= bytes[i] == 0;
    }
    if (looksLikeText(bytes) && !zero) {
      return text(bytes);
    }
    if (bytes.length < HEAD) {
      throw new MeshError("wrong.stlFileTooShort");
    }
    if (bytes.length > HEAD + FACE * count(bytes) && count(bytes) > 0) {
      // some programs write a remark behind the last face
      return binary(bytes, (int) Math.min(count(bytes), TriangleSoup.MOST_TRIANGLES + 1L));
    }
    throw new MeshError("wrong.stlFileCutShort", count(bytes), (bytes.length - HEAD) / FACE);
  }

  private static Mesh binary(byte[] bytes, int faces) throws MeshError {
    ByteBuffer in = ByteBuffer.wrap(bytes).order(ByteOrder.LITTLE_ENDIAN);
    TriangleSoup soup = new TriangleSoup();
    for (int f = 0; f < faces; f++) {
      int at = HEAD + FACE * f + 12;
      int first = soup.points();
      for (int k = 0; k < 3; k++) {
        int p = at + 12 * k;
        soup.point(in.getFloat(p), in.getFloat(p + 4), in.getFloat(p + 8));
      }
      soup.triangle(first, first + 1, first + 2);
    }
    return soup.weld(Optional.empty());
  }

  private static Mesh text(byte[] bytes) throws MeshError {
    Words words = new Words(bytes);
    TriangleSoup soup = new TriangleSoup();
    int inFace = 0;
    int first = 0;
    boolean any = false;
    while (words.next()) {
      if (words.startsLine() && (words.is("solid") || words.is("endsolid"))) {
        words.skipLine();
      } else if (words.is("vertex")) {
        double x = coordinate(words);
        double y = coordinate(words);
        double z = coordinate(words);
        int p = soup.point(x, y, z);
        first = inFace == 0 ? p : first;
        inFace++;
        if (inFace > 3) {
          throw new MeshError("wrong.faceStlFileMore");
        }
      } else if (words.is("endloop")) {
        if (inFace != 3) {
          throw new MeshError("wrong.faceStlFileFewer");
        }
        soup.triangle(first, first + 1, first + 2);
        inFace = 0;
        any = true;
      }
    }
    if (inFace != 0 || !any) {
      throw new MeshError("wrong.stlFileCutShort2");
    }
    return soup.weld(Optional.empty());
  }

  private static double coordinate(Words words) throws MeshError {
    if (!words.next()) {
      throw new MeshError("wrong.stlFileCutShort2");
    }
    return words.number();
  }
}
