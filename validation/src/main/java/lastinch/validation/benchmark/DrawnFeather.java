package lastinch.validation.benchmark;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import lastinch.solver.casting.Checking;
import lastinch.solver.casting.GapGrid;
import lastinch.solver.casting.GapMap;
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
import lastinch.solver.geometry.cavity.CavityMap;
import lastinch.solver.material.Alloy;
import lastinch.solver.material.Band;
import lastinch.solver.material.Curve;
import lastinch.solver.material.FilmForming;
import lastinch.solver.material.FreezingCurve;
import lastinch.solver.material.MouldFamily;
import lastinch.solver.material.MouldMedium;
import lastinch.validation.Celsius;

/**
 * An invented feather, 320 mm long and 34 mm wide at most, with a rib down its middle and a boss
 * near its thick end, drawn by formulas; flat, one end gate of 4 x 2 mm under 80 mm of metal. Round
 * figures without bands, not recommended data: made to compare speeds of calculation.
 */
final class DrawnFeather {
  private static final double LONG = 0.32;
  private static final double WIDE = 0.04;
  private static final double GATE_WIDE = 4e-3;
  private static final double GATE_THICK = 2e-3;
  private static final double HEAD = 0.08;
  private static final int FINE = 8;

  /** Share of a square below which it is left out [-]. */
  private static final double SLIVER = 0.15;

  private DrawnFeather() {}

  /** Half width at a distance from the gated end, both in millimetres. */
  private static double halfWidth(double x) {
    double bulge = (60.0 - x) / 60.0;
    double half =
        x < 60.0
            ? 6.0 + 11.0 * Math.sqrt(Math.max(0.0, 1.0 - bulge * bulge))
            : 17.0 - 13.0 * Math.pow((x - 60.0) / 260.0, 1.5);
    double tip = (x - 316.0) / 4.0;
    return x > 316.0 ? half * Math.sqrt(Math.max(0.0, 1.0 - tip * tip)) : half;
  }

  /** Gap [m] at a place [m], 0 outside. */
  static double gap(double alongMetres, double acrossMetres) {
    double x = 1e3 * alongMetres;
    double y = Math.abs(1e3 * acrossMetres);
    if (x < 0.0 || x > 320.0) {
      return 0.0;
    }
    double half = halfWidth(x);
    double b = 0.0;
    if (y < half) {
      double middle = 2.2 - 1.2 * x / 320.0;
      double vane = (middle - 0.8) * (1.0 - y * y / (half * half));
      b = 0.8 + vane + 3.0 * (1.0 - x / 320.0) * Math.exp(-y * y / 6.25);
    }
    double r = Math.hypot(x - 35.0, y);
    if (r < 13.0 && y < half + 4.0) {
      b = Math.max(b, 18.0 * Math.sqrt(1.0 - r * r / 169.0));
    }
    return 1e-3 * b;
  }

  /** The map on squares of an edge [m]. */
  static GapMap map(double cell) {
    int nx = (int) Math.rint(LONG / cell);
    int ny = (int) Math.rint(WIDE / cell);
    GapMap.Draft draft = new GapMap.Draft(new GapGrid(0.0, -0.5 * WIDE, cell, nx, ny));
    for (int j = 0; j < ny; j++) {
      for (int i = 0; i < nx; i++) {
        open(draft, i, j, cell);
        draft.faceX(i, j, section(i * cell, j * cell - 0.5 * WIDE, 0.0, cell));
        draft.faceY(i, j, section(i * cell, j * cell - 0.5 * WIDE, cell, 0.0));
      }
    }
    List<GapMap.Part> parts = List.of(new GapMap.Part(GapMap.Kind.PIECE, Limb.ONLY));
    return draft.fix(parts, mouth(cell, ny), List.of());
  }

  private static void open(GapMap.Draft draft, int i, int j, double cell) {
    double volume = 0.0;
    int hits = 0;
    for (int a = 0; a < FINE; a++) {
      for (int b = 0; b < FINE; b++) {
        double x = (i + (a + 0.5) / FINE) * cell;
        double y = (j + (b + 0.5) / FINE) * cell - 0.5 * WIDE;
        double gap = gap(x, y);
        volume += gap * cell * cell / (FINE * FINE);
        hits += gap > 0.0 ? 1 : 0;
      }
    }
    double share = (double) hits / (FINE * FINE);
    if (share >= SLIVER) {
      int c = draft.grid().index(i, j);
      draft.open(c, 0, volume, share, 2.0 * share * cell * cell);
      draft.place(c, 0.0, (i + 0.5) * cell);
    }
  }

  /** Section over a side of a square that starts at a place and runs along one axis [m2]. */
  private static double section(double x, double y, double alongX, double alongY) {
    double sum = 0.0;
    for (int a = 0; a < FINE; a++) {
      double at = (a + 0.5) / FINE;
      sum += gap(x + at * alongX, y + at * alongY) * (alongX + alongY) / FINE;
    }
    return sum;
  }

  /** The gate, by what of its width lies in each square. */
  private static List<GapMap.Opening> mouth(double cell, int ny) {
    List<GapMap.Opening> cells = new ArrayList<>();
    for (int j = 0; j < ny; j++) {
      double low = Math.max(-0.5 * GATE_WIDE, j * cell - 0.5 * WIDE);
      double high = Math.min(0.5 * GATE_WIDE, (j + 1) * cell - 0.5 * WIDE);
      if (high - low > 1e-9) {
        int nx = (int) Math.rint(LONG / cell);
        cells.add(new GapMap.Opening(CavityMap.MOUTH, j * nx, (high - low) * GATE_THICK));
      }
    }
    return cells;
  }

  /** The pour into a mould of a name: sand or investment. */
  static PourCase job(String mould) {
    boolean sand = "sand".equals(mould);
    MouldMedium medium =
        sand
            ? medium(MouldFamily.SAND, 0.8, 1500.0, 1500.0)
            : medium(MouldFamily.INVESTMENT, 0.6, 1700.0, 1000.0);
    double celsius = sand ? 25.0 : 550.0;
    Limb limb =
        new Limb(Limb.ONLY, List.of(station(0.0), station(LONG)), SectionForm.FLAT, "", "", 0.0);
    return new PourCase(
        "drawn feather",
        new Piece(List.of(limb), Optional.empty()),
        new Mould(
            medium,
            Band.typed(celsius + Celsius.ZERO),
            0.0,
            Optional.empty(),
            Orientation.FLAT,
            0.0,
            101325.0),
        new Gating(
            new Cup(0.05, 0.05),
            new Sprue(HEAD, 0.02, 0.02, Optional.of(new Place.Into(Limb.ONLY))),
            Optional.empty(),
            Optional.empty(),
            List.of(),
            List.of(),
            List.of(),
            List.of()),
        new Metal(
            metal(),
            10.0,
            Band.typed(1100.0 + Celsius.ZERO),
            Band.typed(0.0),
            Band.typed(0.0),
            Band.typed(0.0)),
        new Pour.AtRate(Band.typed(1.0)),
        options());
  }

  private static Station station(double at) {
    return new Station(at, 0.02, 2e-3, OptionalDouble.empty());
  }

  private static Alloy metal() {
    return new Alloy(
        "round bronze",
        new FreezingCurve.Straight(1010.0 + Celsius.ZERO, 830.0 + Celsius.ZERO),
        Band.typed(190e3),
        Band.typed(480.0),
        Band.typed(480.0),
        Band.typed(60.0),
        Band.typed(60.0),
        Band.typed(8000.0),
        0.0,
        Band.typed(8000.0),
        Band.typed(0.004),
        Band.typed(1.2),
        Band.typed(Math.acos(-0.8)),
        Band.typed(1.0),
        FilmForming.NO,
        Band.typed(0.35),
        Band.typed(0.05),
        Band.typed(1373.15));
  }

  private static MouldMedium medium(
      MouldFamily family, double conductivity, double density, double contact) {
    return new MouldMedium(
        "round mould",
        family,
        Curve.constant(conductivity),
        Band.typed(1.0),
        Curve.constant(1000.0),
        Band.typed(density),
        0.4,
        Band.typed(1e-10),
        Band.typed(contact),
        Band.typed(contact),
        Band.typed(0.4),
        Band.typed(0.9),
        Band.typed(1773.15));
  }

  /** All solid rides along, entry loss 1, the head held; all else as in any pour. */
  private static Checking options() {
    return new Checking(
        false,
        OptionalDouble.empty(),
        OptionalDouble.empty(),
        OptionalDouble.of(1.0),
        true,
        true,
        OptionalDouble.of(HEAD),
        OptionalDouble.empty(),
        List.of(),
        Checking.Fluid.METAL,
        OptionalDouble.empty(),
        OptionalDouble.empty(),
        OptionalDouble.empty(),
        OptionalDouble.of(1.0),
        false,
        false,
        false,
        true);
  }
}
