package lastinch.solver.casting;

/** Shape of the cross-section of a piece. */
public enum SectionForm {
  /** Same thickness across the width. */
  FLAT,
  /** Two shallow arcs: thick in the middle, thin at the rim. */
  LENS,
  /** Round or oval. */
  ROUND
}
