package lastinch.cases.mesh;

import java.nio.file.Path;
import java.util.Optional;

/** Somebody who may know what one unit is where neither the model nor the case file says it. */
@FunctionalInterface
public interface UnitAnswer {
  /** Nobody to ask. */
  UnitAnswer NOBODY = (file, mesh) -> Optional.empty();

  /**
   * Asks.
   *
   * @param file the model
   * @param mesh what it holds, in units of the file
   */
  Optional<MeshUnit> of(Path file, Mesh mesh);
}
