package lastinch.cases.mesh;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Optional;
import lastinch.cases.format.Problem;
import lastinch.cases.format.Problems;

/** Reads a model file by what is in it, its name only a hint. */
public final class MeshFile {
  /** Largest file that is read [bytes]. */
  static final long MOST_BYTES = 160L << 20;

  private MeshFile() {}

  /**
   * Reads a model. Whatever the file holds, this ends with a mesh or with problems.
   *
   * @param path STL, OBJ or 3MF
   * @param problems takes what stands in the way
   */
  public static Optional<Mesh> read(Path path, Problems problems) {
    try {
      return Optional.of(read(path));
    } catch (MeshError e) {
      problems.add(Problem.ofFile(path.toString(), e.said()));
    } catch (NoSuchFileException e) {
      problems.add(Problem.ofFile(path.toString(), "wrong.noSuchFile"));
    } catch (IOException e) {
      problems.add(Problem.ofFile(path.toString(), "wrong.fileCannotReadWhole"));
    }
    return Optional.empty();
  }

  private static Mesh read(Path path) throws IOException, MeshError {
    if (Files.isDirectory(path)) {
      throw new MeshError("wrong.folderNameFile");
    }
    if (Files.size(path) > MOST_BYTES) {
      throw new MeshError("wrong.fileLargerThan160");
    }
    byte[] bytes = Files.readAllBytes(path);
    if (bytes.length == 0) {
      throw new MeshError("wrong.fileEmpty");
    }
    String name = path.getFileName().toString().toLowerCase(Locale.ROOT);
    if (bytes.length > 3 && bytes[0] == 'P' && bytes[1] == 'K') {
      return ThreeMfReader.read(path);
    }
    if (name.endsWith(".3mf")) {
      throw new MeshError("wrong.not3mfFileNot");
    }
    if (name.endsWith(".obj")) {
      return ObjReader.read(bytes);
    }
    if (name.endsWith(".stl") || StlReader.isBinary(bytes) || StlReader.looksLikeText(bytes)) {
      return StlReader.read(bytes);
    }
    throw new MeshError("wrong.noModelCanRead");
  }
}
