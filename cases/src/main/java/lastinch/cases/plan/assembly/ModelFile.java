package lastinch.cases.plan.assembly;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.Optional;
import java.util.OptionalDouble;
import lastinch.cases.format.Problem;
import lastinch.cases.format.Problems;
import lastinch.cases.format.SourceText;
import lastinch.cases.format.Span;
import lastinch.cases.mesh.Mesh;
import lastinch.cases.mesh.MeshFile;
import lastinch.cases.mesh.MeshUnit;
import lastinch.cases.mesh.ModelLook;
import lastinch.cases.mesh.UnitAnswer;
import lastinch.cases.units.Saying;
import lastinch.solver.geometry.solid.CellSize;
import lastinch.solver.geometry.solid.PartOrientation;
import lastinch.solver.geometry.solid.SlicedPart;

/**
 * A drawn piece as a case names it, laid into the mould in its drawn size.
 *
 * @param mesh points in metres, scale counted in
 * @param wish how it is laid
 * @param drawn stations cut in the drawn size
 * @param file what the file holds, as one number
 */
public record ModelFile(Mesh mesh, PartOrientation.Wish wish, SlicedPart drawn, SourceText file) {
  /** Reads the model that the piece names; what is wrong becomes problems of the case. */
  public static Optional<ModelFile> of(Fields model, UnitAnswer answer, Problems problems) {
    Optional<Path> name = model.compound("file", Path.class);
    if (name.isEmpty()) {
      return Optional.empty();
    }
    Span span = model.span("file");
    Path path = span.source().path();
    Path folder = path.getParent();
    Path file = folder == null ? name.get() : folder.resolve(name.get());
    Problems own = new Problems();
    Optional<Mesh> mesh = MeshFile.read(file, own);
    for (Problem p : own.errors()) {
      problems.add(span, p.said());
    }
    Optional<MeshUnit> asked =
        mesh.filter(m -> m.unit().isEmpty() && !model.has("unit")).flatMap(m -> answer.of(file, m));
    Optional<MeshUnit> unit = asked.or(() -> mesh.flatMap(m -> unit(m, model, span, problems)));
    if (mesh.isEmpty() || unit.isEmpty()) {
      return Optional.empty();
    }
    PartOrientation.Wish wish =
        new PartOrientation.Wish(
            model.word("up").filter(u -> !u.equals("as found")),
            model.word("thick end").filter(PartOrientation.DIRECTIONS::contains),
            model.word("thick end").orElse("as found").equals("other end"),
            model.si("parting at"));
    Optional<ModelLook> look =
        ModelLook.of(
            mesh.get(),
            unit.get(),
            model.si("scale").orElse(1.0),
            wish,
            OptionalDouble.empty(),
            file.toString(),
            own);
    for (Problem p : own.errors()) {
      problems.add(model.has("unit") ? model.span("unit") : span, p.said());
    }
    if (look.isPresent() && look.get().isTorn()) {
      problems.add(span, "wrong.surfaceModelHolesClose");
      return Optional.empty();
    }
    if (look.isPresent() && look.get().isOpen()) {
      problems.note(span, "wrong.facesMissingSurfaceModel", look.get().checks().openEdges());
    }
    if (look.isPresent() && look.get().isPartedOutside()) {
      problems.add(
          model.span("parting at"),
          "wrong.abovePieceWhichMm",
          Math.round(look.get().pose().height() * 1e4) / 10.0);
      return Optional.empty();
    }
    return look.map(l -> new ModelFile(l.checks().mesh(), wish, l.drawn(), number(file, asked)));
  }

  private static Optional<MeshUnit> unit(Mesh mesh, Fields model, Span span, Problems problems) {
    Optional<MeshUnit> typed = model.word("unit").flatMap(MeshUnit::of);
    if (mesh.unit().isPresent()) {
      if (typed.isPresent() && !typed.equals(mesh.unit())) {
        problems.add(model.span("unit"), "wrong.fileItselfSays", mesh.unit().get().word());
        return Optional.empty();
      }
      return mesh.unit();
    }
    if (typed.isEmpty()) {
      Optional<MeshUnit> likely = MeshUnit.plausible(mesh.longest());
      Saying sentence = Saying.of("wrong.kindFileDoesNot");
      if (likely.isPresent()) {
        problems.add(span, sentence, "unit: " + likely.get().word());
      } else {
        problems.add(span, "wrong.writeUnitMmBeside", sentence);
      }
    }
    return typed;
  }

  /** The file and the unit that was asked for, so that the plan's own number changes with them. */
  private static SourceText number(Path file, Optional<MeshUnit> asked) {
    String text = sha(file);
    return SourceText.of(file, asked.map(u -> text + " " + u.word()).orElse(text));
  }

  private static String sha(Path file) {
    try {
      MessageDigest sha = MessageDigest.getInstance("SHA-256");
      return HexFormat.of().formatHex(sha.digest(Files.readAllBytes(file)));
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException("every Java platform has SHA-256", e);
    } catch (IOException gone) {
      return "gone";
    }
  }

  /** The piece as the cavity has it. */
  SlicedPart cavity(CavitySizes sizes) {
    if (sizes.factor() == 1.0 && sizes.perFace() == 0.0) {
      return drawn;
    }
    Mesh larger = mesh.scaled(sizes.factor()).thickened(sizes.perFace());
    PartOrientation.Wish same = wish.larger(sizes.factor(), sizes.perFace());
    PartOrientation pose = PartOrientation.of(larger.points(), larger.corners(), same);
    return SlicedPart.of(pose.solid(), CellSize.usual(pose.solid().high(0)));
  }
}
