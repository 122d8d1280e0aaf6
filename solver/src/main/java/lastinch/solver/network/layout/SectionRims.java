package lastinch.solver.network.layout;

import lastinch.solver.casting.SectionForm;

/**
 * The two rims of a section, taken together, which freeze before its middle and hold the metal back
 * more. The middle loses heat through its two faces only; all the rest of the wall is theirs.
 *
 * @param area of both [m2]; 0 where a section has none
 * @param perimeter of their wall, ends included [m]
 * @param join thickness where each of them meets the middle [m]
 * @param breadth of each [m]
 */
public record SectionRims(double area, double perimeter, double join, double breadth) {
  /** A section that is not parted. */
  public static final SectionRims NONE = new SectionRims(0.0, 0.0, 0.0, 0.0);

  /**
   * How far in from the edge a rim of an even section reaches [m]; our own figure, about one
   * thickness of thin work. Under a head of 60 mm it moves the stop of strips 12 x 2, 20 x 2 and 40
   * x 3 mm by -9, -6 and -3 % where halved, by +6, +12 and +7 % where doubled; the plane resolved
   * to 1 mm says 5 % less, the same and as much.
   */
  static final double BREADTH = 2e-3;

  /**
   * The most of the width that each rim takes, and all of it where a section thins out towards its
   * edge [-]; our own figure, half the width for both. With 0.3 a lens 23 x 3.6 mm stops 1.4 %
   * farther.
   */
  static final double MOST = 0.25;

  /** A section less flat than this has no rims of its own, width over thickness [-]; ours. */
  public static final double FLAT = 1.5;

  /** Rims of a typed section; a round has none. */
  static SectionRims of(SectionForm form, double width, double thickness, double perimeter) {
    double breadth = Math.min(BREADTH, MOST * width);
    return switch (form) {
      case FLAT ->
          new SectionRims(
              2.0 * breadth * thickness, 4.0 * breadth + 2.0 * thickness, thickness, breadth);
      case LENS -> thinning(width, thickness, perimeter, 2.0);
      case ROUND -> NONE;
    };
  }

  /**
   * Rims of a section as thick as {@code t (1 - |s|^n)} at a share {@code s} of its half width.
   *
   * @param n as above [-]; 2 for a lens
   */
  static SectionRims thinning(double width, double thickness, double perimeter, double n) {
    double breadth = MOST * width;
    double s = 1.0 - 2.0 * breadth / width;
    double power = StrictMath.pow(s, n);
    double area = width * thickness * ((1.0 - s) - (1.0 - power * s) / (n + 1.0));
    double faces = perimeter - 2.0 * (width - 2.0 * breadth);
    return new SectionRims(area, faces, thickness * (1.0 - power), breadth);
  }

  boolean areThere() {
    return area > 0.0;
  }
}
