package lastinch.solver.material;

/** Whether an oxide film rides on the leading metal. */
public enum FilmForming {
  NO,
  MILD,
  YES
}
