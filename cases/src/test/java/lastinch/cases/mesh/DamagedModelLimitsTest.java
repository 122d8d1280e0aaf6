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
import lastinch.cases.format.Problems;
import lastinch.solver.shape.Pose;
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
        ModelLook.of(mesh.get(), unit, 1.0, Pose.Wish.NONE, COARSE, "x", problems);
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
