package lastinch.ui.words;

/** Units that people see. */
public enum UnitChoice {
  /** mm, degC, g and kg. */
  MM,
  /** Inches by the sixteenth, degF, oz and lb. */
  IN
}
