package lastinch.validation.pour;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import lastinch.solver.casting.Checking;
import lastinch.solver.casting.Limb;
import lastinch.solver.casting.Metal;
import lastinch.solver.casting.Mould;
import lastinch.solver.casting.Orientation;
import lastinch.solver.casting.Piece;
import lastinch.solver.casting.Place;
import lastinch.solver.casting.Pour;
import lastinch.solver.casting.PourCase;
import lastinch.solver.casting.SectionForm;
import lastinch.solver.casting.Station;
import lastinch.solver.casting.gating.Cup;
import lastinch.solver.casting.gating.Gating;
import lastinch.solver.casting.gating.Sprue;
import lastinch.solver.material.Alloy;
import lastinch.solver.material.Band;
import lastinch.solver.material.Curve;
import lastinch.solver.material.FilmForming;
import lastinch.solver.material.FreezingCurve;
import lastinch.solver.material.MouldFamily;
import lastinch.solver.material.MouldMedium;
import lastinch.validation.Celsius;

/** An even, flat channel with round figures, fed as a check asks; not recommended data. */
final class Rig {
  /** Zero of the Celsius scale [K]. */
  static final double ICE = Celsius.ZERO;

  /** Wide enough that the two rims take a thousandth of the heat [m]. */
  private static final double WIDE = 2.0;

  private Rig() {}

  /** Bronze-like metal: 8000 kg/m3, 450 J/(kg K) throughout, the given freezing and stop. */
  static Alloy metal(double start, double end, double latent, double stop) {
    Band huge = Band.typed(1e9);
    return new Alloy(
        "round bronze",
        new FreezingCurve.Straight(start + ICE, end + ICE),
        Band.typed(latent),
        Band.typed(450.0),
        Band.typed(450.0),
        huge,
        huge,
        Band.typed(8000.0),
        0.0,
        Band.typed(8000.0),
        Band.typed(3e-3),
        Band.typed(1.2),
        Band.typed(Math.PI),
        Band.typed(1.0),
        FilmForming.NO,
        Band.typed(stop),
        Band.typed(0.05),
        Band.typed(start + 100.0 + ICE));
  }

  /** Mould like block investment with a contact [W/(m2 K)] and a conductivity [W/(m K)]. */
  static MouldMedium mould(double contact, double conductivity) {
    return mould(contact, conductivity, 1e-8);
  }

  /** The same that lets air through as a permeability [m2] allows. */
  static MouldMedium mould(double contact, double conductivity, double permeability) {
    return new MouldMedium(
        "round mould",
        MouldFamily.SAND,
        Curve.constant(conductivity),
        Band.typed(1.0),
        Curve.constant(1000.0),
        Band.typed(1500.0),
        0.4,
        Band.typed(permeability),
        Band.typed(contact),
        Band.typed(Math.min(contact, 100.0)),
        Band.typed(0.99),
        Band.typed(1.0),
        Band.typed(1773.15));
  }

  /** A channel of one thickness [m] and length [m], lying flat. */
  static PourCase channel(
      Alloy alloy,
      MouldMedium medium,
      double mouldCelsius,
      double pourCelsius,
      double thickness,
      double length,
      Checking checking) {
    Limb limb =
        new Limb(
            Limb.ONLY,
            List.of(
                new Station(0.0, WIDE, thickness, OptionalDouble.empty()),
                new Station(length, WIDE, thickness, OptionalDouble.empty())),
            SectionForm.FLAT,
            "",
            "",
            0.0);
    return new PourCase(
        "channel of one thickness",
        new Piece(List.of(limb), Optional.empty()),
        new Mould(
            medium,
            Band.typed(mouldCelsius + ICE),
            0.0,
            Optional.empty(),
            Orientation.FLAT,
            0.0,
            101325.0),
        new Gating(
            new Cup(0.5, 0.5),
            new Sprue(0.1, 0.05, 0.05, Optional.of(new Place.Into(Limb.ONLY))),
            Optional.empty(),
            Optional.empty(),
            List.of(),
            List.of(),
            List.of(),
            List.of()),
        new Metal(
            alloy,
            1000.0,
            Band.typed(pourCelsius + ICE),
            Band.typed(0.0),
            Band.typed(0.0),
            Band.typed(0.0)),
        new Pour.AtRate(Band.typed(100.0)),
        checking);
  }

  /** Options of a check; what is not named here is switched off. */
  static Checking options(
      boolean mouldStays,
      OptionalDouble friction,
      OptionalDouble head,
      OptionalDouble speed,
      Checking.Fluid fluid,
      double cell,
      boolean perfectContact) {
    return new Checking(
        mouldStays,
        friction,
        OptionalDouble.of(0.0),
        OptionalDouble.of(0.0),
        false,
        true,
        head,
        speed,
        List.of(),
        fluid,
        OptionalDouble.of(cell),
        OptionalDouble.empty(),
        OptionalDouble.of(2e-3),
        OptionalDouble.of(1.0),
        perfectContact,
        false,
        false,
        false);
  }
}
