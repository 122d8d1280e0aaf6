package lastinch.cases.mesh;

import java.util.Locale;
import java.util.Optional;

/** What one unit in a model file is. */
public enum MeshUnit {
  MICRON("micron", 1e-6),
  MILLIMETRE("mm", 1e-3),
  CENTIMETRE("cm", 1e-2),
  INCH("in", 0.0254),
  FOOT("ft", 0.3048),
  METRE("m", 1.0);

  private final String word;
  private final double metres;

  MeshUnit(String word, double metres) {
    this.word = word;
    this.metres = metres;
  }

  /** The word in case files and on the command line. */
  public String word() {
    return word;
  }

  /** Length of one unit [m]. */
  public double metres() {
    return metres;
  }

  /** By the word in case files. */
  public static Optional<MeshUnit> of(String word) {
    for (MeshUnit u : values()) {
      if (u.word.equals(word.strip().toLowerCase(Locale.ROOT))) {
        return Optional.of(u);
      }
    }
    return Optional.empty();
  }

  /** The unit that makes a longest size plausible for a cast piece, 20 mm to 1.5 m. */
  public static Optional<MeshUnit> plausible(double longest) {
    for (MeshUnit u : new MeshUnit[] {MILLIMETRE, INCH, CENTIMETRE, METRE}) {
      double size = longest * u.metres;
      if (size >= 0.02 && size <= 1.5) {
        return Optional.of(u);
      }
    }
    return Optional.empty();
  }
}
