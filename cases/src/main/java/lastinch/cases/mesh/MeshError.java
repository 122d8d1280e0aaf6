package lastinch.cases.mesh;

import lastinch.cases.units.Saying;

/** A file that cannot be read as a model; with what the person is told. */
final class MeshError extends Exception {
  private static final long serialVersionUID = 1L;

  private final transient Saying said;

  MeshError(String key, Object... values) {
    super(key);
    this.said = Saying.of(key, values);
  }

  Saying said() {
    return said;
  }
}
