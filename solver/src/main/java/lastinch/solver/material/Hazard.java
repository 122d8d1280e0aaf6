package lastinch.solver.material;

/** What a metal or a mould gives off that hurts whoever pours it or breaks it out. */
public enum Hazard {
  /** White fume of zinc, metal fume fever. */
  ZINC_FUME,

  /** Lead in fume, dross and dust. */
  LEAD_FUME,

  /** Water in the mould that boils as metal meets it. */
  STEAM,

  /** Sulphur dioxide of gypsum that is heated too far. */
  SULPHUR_FUME,

  /** Smoke of wax or print while the mould is burnt out. */
  BURNOUT_FUME,

  /** Smoke of the binder as metal meets it. */
  BINDER_SMOKE,

  /** Fine silica in the air when the mould is mixed and broken. */
  SILICA_DUST
}
