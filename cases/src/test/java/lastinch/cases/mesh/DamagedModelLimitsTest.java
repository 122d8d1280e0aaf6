package lastinch.cases.mesh;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.SplittableRandom;
import lastinch.cases.Told;
import lastinch.cases.format.Problems;
import lastinch.solver.geometry.solid.PartOrientation;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Files damaged by a seeded hand: each ends in a look or in words, never in a fault. */
class DamagedModelLimitsTest {
  /** A coarse map is enough to reach every part of the way. */
  private static final OptionalDouble COARSE = OptionalDouble.of(2e-3);

  private static final String LETTERS = "0-.9eE, \n";

  @TempDir private Path folder;

  @Test
  void fiveHundredDamagedFilesEndInAnAnswer() throws IOException {
    assertThat(answers(500, 20260711L)).isEqualTo(500);
  }

  @Test
  @Tag("nightly")
  void tenThousandDamagedFilesEndInAnAnswer() throws IOException {
    assertThat(answers(10_000, 7L)).isEqualTo(10_000);
  }

  @Test
  void partsThatRepeatEachOtherAMillionTimesAreRefused() throws IOException {
    StringBuilder points = new StringBuilder("<mesh><vertices>");
    for (int k = 0; k < 1000; k++) {
      points.append("<vertex x='").append(k).append("' y='").append(k % 7).append("' z='0'/>");
    }
    points.append("</vertices><triangles><triangle v1='0' v2='1' v3='2'/></triangles></mesh>");
    StringBuilder resources = new StringBuilder("<object id='1'>" + points + "</object>");
    resources.append("<object id='2'><components>");
    resources.append("<component objectid='1'/>".repeat(1001)).append("</components></object>");
    Path file =
        Files.write(
            folder.resolve("x.3mf"),
            ModelText.packed(
                ModelText.model("millimeter", resources.toString(), "<item objectid='2'/>")));
    assertThat(trouble(file)).contains("repeat each other").contains("place fewer of them");
  }

  @Test
  void bodiesPiledUpByTheHundredAreRefusedBeforeTheyTakeMinutes() throws IOException {
    assertThat(trouble(boxes(400, 100.0, 100.0, 2.0)))
        .contains("lie over one another")
        .contains("unite its bodies or make it coarser");
    assertThat(isAnswered(boxes(2, 100.0, 20.0, 2.0))).isTrue();
  }

  @Test
  void modelThickerThanAnyPieceIsAskedForItsUnit() throws IOException {
    assertThat(trouble(boxes(1, 300.0, 300.0, 300.0)))
        .contains("This model is 300 mm thick at one place, and a piece may be 200 mm");
  }

  /** The only thing to put right in a model in millimetres. */
  private static String trouble(Path file) {
    Problems problems = new Problems();
    MeshFile.read(file, problems)
        .ifPresent(
            mesh ->
                ModelLook.of(
                    mesh,
                    MeshUnit.MILLIMETRE,
                    1.0,
                    PartOrientation.Wish.NONE,
                    OptionalDouble.empty(),
                    "x",
                    problems));
    assertThat(problems.errors()).hasSize(1);
    return Told.sentence(problems.errors().get(0));
  }

  /** Boxes that lie in each other, each a little higher than the one before. */
  private Path boxes(int count, double long_, double wide, double thick) throws IOException {
    StringBuilder obj = new StringBuilder();
    for (int k = 0; k < count; k++) {
      for (int corner = 0; corner < 8; corner++) {
        obj.append("v ")
            .append((corner & 1) * long_)
            .append(' ')
            .append((corner >> 1 & 1) * wide)
            .append(' ')
            .append((corner >> 2 & 1) * thick + 1e-3 * k)
            .append('\n');
      }
    }
    int[][] faces = {
      {1, 3, 4, 2}, {5, 6, 8, 7}, {1, 2, 6, 5}, {3, 7, 8, 4}, {1, 5, 7, 3}, {2, 4, 8, 6}
    };
    for (int k = 0; k < count; k++) {
      for (int[] face : faces) {
        obj.append('f');
        for (int corner : face) {
          obj.append(' ').append(8 * k + corner);
        }
        obj.append('\n');
      }
    }
    return Files.writeString(folder.resolve("boxes.obj"), obj);
  }

  private int answers(int count, long seed) throws IOException {
    SplittableRandom random = new SplittableRandom(seed);
    String resources = "<object id='1'>" + ModelText.meshXml() + "</object>";
    String model = ModelText.model("centimeter", resources, "<item objectid='1'/>");
    byte[][] sound = {
      ModelText.binary("solid"),
      ModelText.ascii("\r\n").getBytes(StandardCharsets.UTF_8),
      ModelText.obj().getBytes(StandardCharsets.UTF_8),
      ModelText.packed(model),
      model.getBytes(StandardCharsets.UTF_8)
    };
    String[] ends = {".stl", ".stl", ".obj", ".3mf", ".xml"};
    int answered = 0;
    for (int k = 0; k < count; k++) {
      int kind = random.nextInt(sound.length);
      byte[] bytes = damaged(sound[kind], random);
      if (kind == 4) {
        bytes = ModelText.packed("3D/3dmodel.model", bytes);
      }
      Path file = Files.write(folder.resolve("x" + (kind == 4 ? ".3mf" : ends[kind])), bytes);
      answered += isAnswered(file) ? 1 : 0;
    }
    return answered;
  }

  /** Either a look whose figures are numbers, or at least one sentence. */
  private static boolean isAnswered(Path file) {
    Problems problems = new Problems();
    Optional<Mesh> mesh = MeshFile.read(file, problems);
    if (mesh.isEmpty()) {
      return !problems.isEmpty();
    }
    MeshUnit unit = mesh.get().unit().orElse(MeshUnit.CENTIMETRE);
    Optional<ModelLook> look =
        ModelLook.of(mesh.get(), unit, 1.0, PartOrientation.Wish.NONE, COARSE, "x", problems);
    return look.isPresent()
        ? Double.isFinite(look.get().survey().volume()) && look.get().drawn().length() > 0.0
        : !problems.isEmpty();
  }

  private static byte[] damaged(byte[] sound, SplittableRandom random) {
    byte[] bytes = sound.clone();
    int hits = 1 + random.nextInt(4);
    for (int h = 0; h < hits && bytes.length > 0; h++) {
      int at = random.nextInt(bytes.length);
      switch (random.nextInt(5)) {
        case 0 -> bytes[at] = (byte) random.nextInt(256);
        case 1 -> bytes = Arrays.copyOf(bytes, at);
        case 2 -> bytes[at] ^= (byte) (1 << random.nextInt(8));
        case 3 -> {
          int length = Math.min(bytes.length - at, 1 + random.nextInt(60));
          System.arraycopy(sound, random.nextInt(sound.length - length + 1), bytes, at, length);
        }
        default -> {
          byte[] longer = Arrays.copyOf(bytes, bytes.length + 1);
          System.arraycopy(bytes, at, longer, at + 1, bytes.length - at);
          longer[at] = (byte) LETTERS.charAt(random.nextInt(LETTERS.length()));
          bytes = longer;
        }
      }
    }
    return bytes;
  }
}
