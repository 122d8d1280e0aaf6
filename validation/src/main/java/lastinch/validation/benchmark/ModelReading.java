package lastinch.validation.benchmark;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.OptionalDouble;
import java.util.concurrent.TimeUnit;
import lastinch.cases.format.Problems;
import lastinch.cases.mesh.Mesh;
import lastinch.cases.mesh.MeshFile;
import lastinch.cases.mesh.MeshUnit;
import lastinch.cases.mesh.ModelLook;
import lastinch.solver.geometry.solid.PartOrientation;
import lastinch.validation.model.DemoModels;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Level;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.TearDown;

/**
 * A model of some 250 000 faces from file to map and stations, once in a fresh process, as a person
 * meets it: at most 3 s and 600 MiB are asked for.
 */
@State(Scope.Thread)
@BenchmarkMode(Mode.SingleShotTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Fork(value = 5, jvmArgsAppend = "-Xmx600m")
public class ModelReading {
  private Path file;

  /** Writes the model. */
  @Setup(Level.Trial)
  public void write() throws IOException {
    file = Files.createTempFile("model", ".stl");
    Files.write(file, DemoModels.fineFeather());
  }

  /** Takes it away. */
  @TearDown(Level.Trial)
  public void clear() throws IOException {
    Files.deleteIfExists(file);
  }

  /** Reads it and looks it over. */
  @Benchmark
  public ModelLook look() {
    Problems problems = new Problems();
    Mesh mesh = MeshFile.read(file, problems).orElseThrow();
    return ModelLook.of(
            mesh,
            MeshUnit.MILLIMETRE,
            1.0,
            PartOrientation.Wish.NONE,
            OptionalDouble.empty(),
            "model",
            problems)
        .orElseThrow();
  }
}
