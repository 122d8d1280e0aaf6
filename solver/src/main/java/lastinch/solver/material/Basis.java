package lastinch.solver.material;

/** How well a figure is known, best first. */
public enum Basis {
  /** Read in a published source. */
  OPENED,
  /** Computed from published figures; the formula stands in the note. */
  DERIVED,
  /** A handbook figure given from memory; check before citing. */
  MEMORY,
  /** Common practice, no source. */
  PRACTICE,
  /** Estimate, no source found. */
  ESTIMATE,
  /** Typed by the person in a case, shop or materials file. */
  TYPED
}
