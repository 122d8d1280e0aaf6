package lastinch.solver.network.layout;

import java.util.List;
import lastinch.solver.casting.Limb;
import lastinch.solver.casting.SectionForm;
import lastinch.solver.casting.Station;
import lastinch.solver.geometry.gating.LimbProfile;
import lastinch.solver.physics.Friction;

/**
 * Figures of a cross-section from its full width and thickness.
 *
 * @param width [m]
 * @param thickness [m]
 * @param area [m2]
 * @param perimeter wetted by metal [m]
 * @param laminarProduct Darcy factor times Reynolds number in slow flow, on the hydraulic diameter
 *     [-]
 * @param rims of a limb; none of other passages
 */
public record SectionShape(
    double width,
    double thickness,
    double area,
    double perimeter,
    double laminarProduct,
    SectionRims rims) {

  /**
   * Laminar f Re of a parabolic gap [-], derived: mean of b^3 over mean of b is 24/35 t^2 against
   * (2/3 t)^2 of its mean gap.
   */
  private static final double LENS_LAMINAR = 96.0 * (4.0 / 9.0) / (24.0 / 35.0);

  /** Section of a limb at a place of its ruler, straight between its stations. */
  static SectionShape of(Limb limb, double at) {
    List<Station> stations = limb.stations();
    Station p = stations.get(LimbProfile.stretch(stations, at));
    Station q = stations.get(LimbProfile.stretch(stations, at) + 1);
    double width = LimbProfile.widthAt(stations, at);
    double thickness = LimbProfile.thicknessAt(stations, at);
    if (p.cut().isPresent() && q.cut().isPresent()) {
      double share = (at - p.at()) / (q.at() - p.at());
      Station.Cut a = p.cut().get();
      Station.Cut b = q.cut().get();
      double area = a.area() + share * (b.area() - a.area());
      double perimeter = a.perimeter() + share * (b.perimeter() - a.perimeter());
      return cut(width, thickness, area, perimeter);
    }
    return of(limb.section(), width, thickness);
  }

  static SectionShape of(SectionForm form, double width, double thickness) {
    return switch (form) {
      case FLAT -> flat(width, thickness).with(form);
      case LENS -> lens(width, thickness).with(form);
      case ROUND -> ellipse(width, thickness);
    };
  }

  private SectionShape with(SectionForm form) {
    SectionRims its = SectionRims.of(form, width, thickness, perimeter);
    return new SectionShape(width, thickness, area, perimeter, laminarProduct, its);
  }

  public static SectionShape flat(double width, double thickness) {
    double aspect = Math.min(width, thickness) / Math.max(width, thickness);
    return new SectionShape(
        width,
        thickness,
        width * thickness,
        2.0 * (width + thickness),
        Friction.laminarProductRectangle(aspect),
        SectionRims.NONE);
  }

  private static SectionShape lens(double width, double thickness) {
    double slender = thickness / width;
    double perimeter = 2.0 * width * (1.0 + 2.0 / 3.0 * slender * slender);
    return new SectionShape(
        width, thickness, 2.0 / 3.0 * width * thickness, perimeter, LENS_LAMINAR, SectionRims.NONE);
  }

  /**
   * A section cut through a drawn shape. Slow flow follows from how full it is: the gap is taken as
   * {@code t (1 - |s|^n)} across, with n from the share of width times thickness that is filled, so
   * that a lens (2/3) and a plate (1) come out as they do by themselves.
   */
  static SectionShape cut(double width, double thickness, double area, double perimeter) {
    double full = Math.max(0.3, Math.min(0.995, area / (width * thickness)));
    double n = full / (1.0 - full);
    double cube = 1.0 - 3.0 / (n + 1.0) + 3.0 / (2.0 * n + 1.0) - 1.0 / (3.0 * n + 1.0);
    double aspect = Math.min(width, thickness) / Math.max(width, thickness);
    double boxy = Math.max(0.0, Math.min(1.0, 3.0 * full - 2.0));
    double plate = 96.0 + boxy * (Friction.laminarProductRectangle(aspect) - 96.0);
    double laminar = plate * full * full * full / cube;
    SectionRims drawn = SectionRims.thinning(width, thickness, perimeter, n);
    double fits = area / (full * width * thickness);
    SectionRims rims =
        new SectionRims(fits * drawn.area(), drawn.perimeter(), drawn.join(), drawn.breadth());
    return new SectionShape(width, thickness, area, perimeter, laminar, rims);
  }

  /** Perimeter by Ramanujan's first approximation; laminar flow exact (Shah and London 1978). */
  public static SectionShape ellipse(double width, double thickness) {
    double a = width / 2.0;
    double b = thickness / 2.0;
    double area = Math.PI * a * b;
    double perimeter = Math.PI * (3.0 * (a + b) - Math.sqrt((3.0 * a + b) * (a + 3.0 * b)));
    double hydraulic = 4.0 * area / perimeter;
    double laminar = 8.0 * hydraulic * hydraulic * (a * a + b * b) / (a * a * b * b);
    return new SectionShape(width, thickness, area, perimeter, laminar, SectionRims.NONE);
  }

  double hydraulicDiameter() {
    return 4.0 * area / perimeter;
  }
}
