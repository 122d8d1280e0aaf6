package lastinch.cases.mesh;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import lastinch.cases.Told;
import lastinch.cases.format.Problems;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Every way of writing a box gives the same box; what is no model is refused in words. */
class MeshFileExactSolutionTest {
  private static final Locale BEFORE = Locale.getDefault();

  @TempDir private Path folder;

  @AfterEach
  void restoreLocale() {
    Locale.setDefault(BEFORE);
  }

  private Path file(String name, byte[] bytes) {
    try {
      return Files.write(folder.resolve(name), bytes);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private Mesh read(String name, byte[] bytes) {
    Problems problems = new Problems();
    Optional<Mesh> mesh = MeshFile.read(file(name, bytes), problems);
    assertThat(problems.errors()).isEmpty();
    return mesh.orElseThrow();
  }

  private String refused(String name, byte[] bytes) {
    Problems problems = new Problems();
    assertThat(MeshFile.read(file(name, bytes), problems)).isEmpty();
    assertThat(problems.errors()).hasSize(1);
    return Told.sentence(problems.errors().get(0));
  }

  private static byte[] text(String text) {
    return text.getBytes(StandardCharsets.UTF_8);
  }

  private static void isTheBox(Mesh mesh, double scale) {
    assertThat(mesh.size()).isEqualTo(8);
    assertThat(mesh.triangles()).isEqualTo(12);
    assertThat(List.of(mesh.extent(0), mesh.extent(1), mesh.extent(2)))
        .isEqualTo(List.of(4 * scale, 2 * scale, scale));
    MeshChecks checks = MeshChecks.of(mesh);
    assertThat(checks.openEdges()).isZero();
    assertThat(checks.turnedFaces()).isZero();
    assertThat(checks.insideOut()).isFalse();
    assertThat(checks.bodies()).isOne();
  }

  @Test
  void binaryIsReadEvenWhenItBeginsWithSolid() {
    isTheBox(read("a.stl", ModelText.binary("made by hand")), 1.0);
    isTheBox(read("b.stl", ModelText.binary("solid box")), 1.0);
    isTheBox(read("no-ending", ModelText.binary("solid box")), 1.0);
  }

  @Test
  void textIsReadWhateverTheLineEndsAndTheLanguageOfTheMachine() {
    isTheBox(read("a.stl", text(ModelText.ascii("\n"))), 1.0);
    isTheBox(read("b.stl", text(ModelText.ascii("\r\n"))), 1.0);
    Locale.setDefault(Locale.forLanguageTag("tr-TR"));
    isTheBox(read("c.STL", text(ModelText.ascii("\r\n").toUpperCase(Locale.ROOT))), 1.0);
    Locale.setDefault(Locale.GERMANY);
    isTheBox(read("d.stl", text(ModelText.ascii("\n").replace('.', ','))), 1.0);
    isTheBox(read("e.obj", text(ModelText.obj())), 1.0);
  }

  @Test
  void aFileWithLettersOfAnyLanguageInItsNameIsFound() {
    isTheBox(read("Bl\u00e4tter \u9280\u674f.stl", ModelText.binary("x")), 1.0);
  }

  @Test
  void partsPlacedTwiceAndTurnedCountTwice() {
    String resources =
        "<object id='1'>"
            + ModelText.meshXml()
            + "</object><object id='2'><components>"
            + "<component objectid='1'/>"
            + "<component objectid='1' transform='0 1 0 -1 0 0 0 0 1 20 0 0'/>"
            + "</components></object>";
    Mesh two =
        read(
            "two.3mf",
            ModelText.packed(
                ModelText.model(
                    "inch",
                    resources,
                    "<item objectid='2' transform='1 0 0 0 1 0 0 0 1 0 0 5'/>")));
    assertThat(two.unit()).contains(MeshUnit.INCH);
    assertThat(MeshChecks.of(two).bodies()).isEqualTo(2);
    assertThat(two.triangles()).isEqualTo(24);
    assertThat(two.extent(0)).isEqualTo(20.0);
    assertThat(two.extent(1)).isEqualTo(4.0);
  }

  @Test
  void aMirroredPartKeepsItsOutsideOutside() {
    String resources = "<object id='1'>" + ModelText.meshXml() + "</object>";
    Mesh mirrored =
        read(
            "m.3mf",
            ModelText.packed(
                ModelText.model(
                    "millimeter",
                    resources,
                    "<item objectid='1' transform='-1 0 0 0 1 0 0 0 1 0 0 0'/>")));
    isTheBox(mirrored, 1.0);
  }

  @Test
  void facesInsideOutAreFoundAndTurned() {
    Mesh box = read("a.stl", ModelText.binary("x"));
    int[] one = box.corners();
    int swap = one[0];
    one[0] = one[1];
    one[1] = swap;
    MeshChecks single = MeshChecks.of(box.withCorners(one));
    assertThat(single.turnedFaces()).isOne();
    assertThat(single.insideOut()).isFalse();
    int[] all = box.corners();
    for (int t = 0; t < all.length; t += 3) {
      swap = all[t];
      all[t] = all[t + 1];
      all[t + 1] = swap;
    }
    assertThat(MeshChecks.of(box.withCorners(all)).insideOut()).isTrue();
    assertThat(MeshChecks.of(MeshChecks.of(box.withCorners(all)).mesh()).insideOut()).isFalse();
  }

  @Test
  void aMissingFaceLeavesThreeOpenEdges() {
    Mesh box = read("a.stl", ModelText.binary("x"));
    int[] fewer = Arrays.copyOf(box.corners(), 33);
    assertThat(MeshChecks.of(box.withCorners(fewer)).openEdges()).isEqualTo(3);
  }

  @Test
  void theUnitIsGuessedFromTheSize() {
    assertThat(MeshUnit.plausible(320.0)).contains(MeshUnit.MILLIMETRE);
    assertThat(MeshUnit.plausible(12.6)).contains(MeshUnit.INCH);
    assertThat(MeshUnit.plausible(0.32)).contains(MeshUnit.METRE);
    assertThat(MeshUnit.plausible(1e7)).isEmpty();
  }

  @Test
  void whatIsNoModelIsRefusedInWords() {
    assertThat(refused("a.stl", new byte[0])).contains("empty");
    assertThat(refused("b.txt", text("hello"))).contains("STL, OBJ or 3MF");
    assertThat(refused("c.stl", text("solid x\nendsolid x\n"))).contains("cut short");
    byte[] nan = ModelText.binary("x");
    ByteBuffer.wrap(nan).order(ByteOrder.LITTLE_ENDIAN).putFloat(96, Float.NaN);
    assertThat(refused("d.stl", nan)).contains("not a number");
    byte[] huge = ModelText.binary("x");
    huge[83] = 0x7f;
    assertThat(refused("e.stl", huge)).contains("promises");
    assertThat(refused("f.stl", text(ModelText.ascii("\n").replace("4.000000e+00", "NaN"))))
        .contains("NaN");
    assertThat(refused("g.obj", text("v 0 0 0\nv 1 0 0\nf 1 2 99\n"))).contains("not there");
    assertThat(refused("h.3mf", text("no zip"))).contains("3MF");
  }

  @Test
  void tricksWithPackedFilesAreRefused() {
    String resources = "<object id='1'>" + ModelText.meshXml() + "</object>";
    String item = "<item objectid='1'/>";
    String sound = ModelText.model("millimeter", resources, item);
    String entity = sound.replace("?><model", "?><!DOCTYPE model [<!ENTITY a 'aaaa'>]><model");
    assertThat(refused("a.3mf", ModelText.packed(entity))).contains("refused");
    String outside =
        sound.replace("?><model", "?><!DOCTYPE model SYSTEM 'file:///etc/passwd'><model");
    assertThat(refused("b.3mf", ModelText.packed(outside))).contains("refused");
    byte[] blanks = new byte[60 << 20];
    Arrays.fill(blanks, (byte) ' ');
    assertThat(refused("c.3mf", ModelText.packed("3D/3dmodel.model", blanks)))
        .contains("far more than a model needs");
    String loop = "<object id='1'><components><component objectid='1'/></components></object>";
    assertThat(refused("d.3mf", ModelText.packed(ModelText.model("inch", loop, item))))
        .contains("nested");
    assertThat(refused("e.3mf", ModelText.packed("readme.txt", new byte[3])))
        .contains("no model in this 3MF");
  }

  @Test
  void aMissingFileIsSaid() {
    Problems problems = new Problems();
    MeshFile.read(folder.resolve("none.stl"), problems);
    assertThat(problems.errors())
        .extracting(Told::sentence)
        .containsExactly("There is no such file");
  }
}
