package lastinch.cases.mesh;

/** A file that cannot be read as a model; the message is a sentence for the person. */
final class MeshError extends Exception {
  private static final long serialVersionUID = 1L;

  MeshError(String sentence) {
    super(sentence);
  }
}
