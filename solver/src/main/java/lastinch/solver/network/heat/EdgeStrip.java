package lastinch.solver.network.heat;

import java.util.List;
import java.util.OptionalDouble;
import lastinch.solver.casting.Limb;
import lastinch.solver.casting.SectionForm;
import lastinch.solver.casting.Station;
import lastinch.solver.charge.MeltProperties;
import lastinch.solver.geometry.gating.LimbProfile;
import lastinch.solver.physics.Capillary;

/**
 * The outer strip of a limb's rim at one place, where it is thinner than the middle.
 *
 * @param thickness 2 mm in from the rim [m]
 * @param gap volume over the area of one face, as the tables of heat want it [m]
 * @param wallPerMass wetted wall over mass of metal [m2/kg]
 * @param mushShare share of new solid that rides along in it [-]
 * @param needed push that it asks for [Pa]
 */
public record EdgeStrip(
    double thickness, double gap, double wallPerMass, double mushShare, double needed) {
  /** Stands where a rim is no thinner than the middle. */
  static final EdgeStrip NONE = new EdgeStrip(0.0, 0.0, 0.0, 0.0, 0.0);

  /** How far in from the rim a strip reaches [m]; chosen. */
  static final double BREADTH = 4e-3;

  /** Where in from the rim its thickness is taken [m]: the middle of the strip. */
  private static final double INSET = 2e-3;

  /** A rim less than this much thinner than the middle is none [-]; numerical, over rounding. */
  private static final double SAME = 1e-9;

  /**
   * Thickness of the rim at a distance from the first station [m]; empty where it is no thinner.
   */
  public static OptionalDouble thickness(Limb limb, double at) {
    List<Station> stations = limb.stations();
    OptionalDouble typed = LimbProfile.edgeAt(stations, at);
    double width = LimbProfile.widthAt(stations, at);
    double middle = LimbProfile.thicknessAt(stations, at);
    double edge = typed.orElse(byShape(limb.section(), width, middle));
    return edge < middle * (1.0 - SAME) ? OptionalDouble.of(edge) : OptionalDouble.empty();
  }

  public boolean isThere() {
    return thickness > 0.0;
  }

  private static double byShape(SectionForm section, double width, double middle) {
    double in = Math.min(INSET, width / 4.0) / width;
    return switch (section) {
      case FLAT -> middle;
      case LENS -> middle * 4.0 * in * (1.0 - in);
      case ROUND -> middle * 2.0 * Math.sqrt(in * (1.0 - in));
    };
  }

  /** The strip of a limb at a distance from its first station [m]. */
  static EdgeStrip of(Limb limb, double at, double thickness, double mould, MeltProperties melt) {
    double breadth = Math.min(BREADTH, LimbProfile.widthAt(limb.stations(), at) / 2.0);
    // a lens or a round has no face at its rim
    double face = limb.section() == SectionForm.FLAT ? thickness : 0.0;
    double wall = 2.0 * breadth + face;
    double area = breadth * thickness;
    double gap = 2.0 * area / wall;
    return new EdgeStrip(
        thickness,
        gap,
        wall / (melt.density * area),
        melt.mushShare(gap, mould),
        Capillary.push(melt.capillaryStrength, thickness, Double.POSITIVE_INFINITY));
  }
}
