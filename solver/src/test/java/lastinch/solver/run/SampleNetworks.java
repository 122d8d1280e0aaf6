package lastinch.solver.run;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import lastinch.solver.casting.Boss;
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
import lastinch.solver.casting.gating.Gate;
import lastinch.solver.casting.gating.Gating;
import lastinch.solver.casting.gating.Runner;
import lastinch.solver.casting.gating.Sprue;
import lastinch.solver.casting.gating.Vent;
import lastinch.solver.material.Band;

/** Invented pieces with several gates or limbs, in cold sand. */
public final class SampleNetworks {
  private static final String HUB = "boss";

  private SampleNetworks() {}

  /** A tapered strip that stands on its tip under a boss, three gates along a runner beside it. */
  public static PourCase uprightThreeGates() {
    Limb limb =
        new Limb(
            Limb.ONLY,
            List.of(station(0.0, 34e-3, 6e-3), station(0.32, 12e-3, 1.2e-3)),
            SectionForm.LENS,
            "",
            "",
            0.0);
    List<Gate> gates =
        List.of(
            new Gate("low", new Place.At(Limb.ONLY, 0.27, Side.LEFT), 25e-3, 2.5e-3, 25e-3),
            new Gate("middle", new Place.At(Limb.ONLY, 0.15, Side.LEFT), 25e-3, 3e-3, 25e-3),
            new Gate("top", new Place.Into(HUB), 20e-3, 4e-3, 25e-3));
    Gating gating =
        new Gating(
            new Cup(0.045, 0.03),
            new Sprue(0.4, 20e-3, 14e-3, Optional.empty()),
            Optional.empty(),
            Optional.of(
                new Runner.Alongside(Side.LEFT, 25e-3, 14e-3, 12e-3, Runner.FedFrom.BOTTOM, 0.0)),
            gates,
            List.of(new Vent("boss vent", new Place.Into(HUB), 3e-3)),
            List.of(),
            List.of());
    Piece piece = new Piece(List.of(limb), Optional.of(new Boss(0.04, 0.022, 0.018)));
    return job(piece, Orientation.UPRIGHT_TIP_DOWN, gating, 2.1, 4.0);
  }

  /** Two rims and a spoke that leave a hub and meet at the far end, flat, one gate. */
  public static PourCase trivet() {
    List<Limb> limbs =
        List.of(
            even("left rim", 0.19, 9e-3, 4e-3, "", 0.6),
            even("right rim", 0.19, 9e-3, 4e-3, "left rim", -0.6),
            even("spoke", 0.15, 7e-3, 3e-3, "left rim", 0.0));
    Gating gating =
        new Gating(
            new Cup(0.045, 0.03),
            new Sprue(0.11, 18e-3, 14e-3, Optional.empty()),
            Optional.empty(),
            Optional.empty(),
            List.of(new Gate("hub gate", new Place.Into(HUB), 20e-3, 4e-3, 12e-3)),
            List.of(new Vent("rim vent", new Place.At("left rim", 0.188, Side.TIP), 2e-3)),
            List.of(),
            List.of());
    Piece piece = new Piece(limbs, Optional.of(new Boss(0.03, 0.024, 0.009)));
    return job(piece, Orientation.FLAT, gating, 1.0, 3.0);
  }

  private static Station station(double at, double width, double thickness) {
    return new Station(at, width, thickness, OptionalDouble.empty());
  }

  private static Limb even(
      String name, double length, double width, double thickness, String to, double heading) {
    return new Limb(
        name,
        List.of(station(0.0, width, thickness), station(length, width, thickness)),
        SectionForm.FLAT,
        HUB,
        to,
        heading);
  }

  private static PourCase job(
      Piece piece, Orientation attitude, Gating gating, double melted, double seconds) {
    Mould mould =
        new Mould(
            SampleFoundry.sand(),
            Band.typed(293.15),
            0.0,
            Optional.empty(),
            attitude,
            5e-5,
            101325.0);
    Metal metal =
        new Metal(
            SampleFoundry.tinBronze(),
            melted,
            Band.typed(1160.0 + SampleJob.ZERO),
            Band.typed(40.0),
            Band.typed(1.0),
            Band.typed(15.0));
    return new PourCase(
        "several ways",
        piece,
        mould,
        gating,
        metal,
        new Pour.Empties(Band.typed(seconds)),
        Checking.NONE);
  }
}
