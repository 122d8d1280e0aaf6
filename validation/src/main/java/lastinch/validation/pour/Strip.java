package lastinch.validation.pour;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import lastinch.cases.catalogue.Catalogue;
import lastinch.cases.catalogue.MetalKind;
import lastinch.cases.catalogue.Ramming;
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
import lastinch.solver.casting.Side;
import lastinch.solver.casting.Station;
import lastinch.solver.casting.gating.Cup;
import lastinch.solver.casting.gating.Gating;
import lastinch.solver.casting.gating.Sprue;
import lastinch.solver.casting.gating.Vent;
import lastinch.solver.filling.RunObserver;
import lastinch.solver.material.Alloy;
import lastinch.solver.material.Band;
import lastinch.solver.run.DryPour;
import lastinch.validation.Celsius;

/**
 * A strip of tin bronze poured by hand into oil-bonded sand, with the catalogue's own figures.
 *
 * @param celsius in the crucible
 * @param mould [degC]
 * @param thickness [m]
 * @param sprue [m]
 * @param rate [kg/s]
 */
record Strip(double celsius, double mould, double thickness, double sprue, double rate) {
  static final Strip USUAL = new Strip(1150.0, 20.0, 2e-3, 0.12, 0.4);

  double reach(double length) {
    return 1e3 * DryPour.run(job(length), RunObserver.NONE, () -> false).reach();
  }

  PourCase job(double length) {
    Catalogue catalogue = Catalogue.builtIn();
    Alloy alloy = catalogue.alloy("tin bronze");
    Limb limb =
        new Limb(
            Limb.ONLY,
            List.of(
                new Station(0.0, 30e-3, thickness, OptionalDouble.empty()),
                new Station(length, 30e-3, thickness, OptionalDouble.empty())),
            SectionForm.FLAT,
            "",
            "",
            0.0);
    return new PourCase(
        "strip",
        new Piece(List.of(limb), Optional.empty()),
        new Mould(
            catalogue.medium("oil-bonded sand", MetalKind.COPPER, Ramming.FIRM),
            Band.typed(mould + Celsius.ZERO),
            0.0,
            Optional.empty(),
            Orientation.FLAT,
            5e-5,
            101325.0),
        new Gating(
            new Cup(45e-3, 30e-3),
            new Sprue(sprue, 18e-3, 14e-3, Optional.of(new Place.Into(Limb.ONLY))),
            Optional.empty(),
            Optional.empty(),
            List.of(),
            List.of(new Vent("tip vent", new Place.At(Limb.ONLY, length, Side.TIP), 3e-3)),
            List.of(),
            List.of()),
        new Metal(
            alloy,
            2.0,
            Band.typed(celsius + Celsius.ZERO),
            Band.typed(10.0),
            catalogue.commonFigures().coolingRate(),
            catalogue.commonFigures().lipLoss()),
        new Pour.AtRate(Band.typed(rate)),
        Checking.NONE);
  }
}
