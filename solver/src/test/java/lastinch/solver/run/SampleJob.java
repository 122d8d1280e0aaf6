package lastinch.solver.run;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import lastinch.solver.casting.Boss;
import lastinch.solver.casting.Checking;
import lastinch.solver.casting.Flask;
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
import lastinch.solver.casting.gating.Well;
import lastinch.solver.material.Alloy;
import lastinch.solver.material.Band;
import lastinch.solver.material.MouldMedium;

/** Puts jobs for checks together: a plain strip to begin with, changed word by word. */
public final class SampleJob {
  /** Kelvin of 0 degC. */
  public static final double ZERO = 273.15;

  private final List<Station> stations = new ArrayList<>();
  private SectionForm section = SectionForm.FLAT;
  private Optional<Boss> boss = Optional.empty();
  private Orientation attitude = Orientation.FLAT;
  private MouldMedium medium = SampleFoundry.roundMould(1000.0);
  private double mouldTemperature = 500.0 + ZERO;
  private double shell;
  private double crack;
  private Optional<Flask> flask = Optional.empty();
  private Cup cup = new Cup(0.05, 0.05);
  private Sprue sprue = new Sprue(0.1, 0.02, 0.02, Optional.empty());
  private Optional<Well> well = Optional.empty();
  private Optional<Runner> runner = Optional.empty();
  private final List<Gate> gates = new ArrayList<>();
  private final List<Vent> vents = new ArrayList<>();
  private Alloy alloy = SampleFoundry.roundBronze();
  private double melted = 50.0;
  private double reading = 1150.0 + ZERO;
  private double waiting;
  private double lip;
  private Pour pour = new Pour.AtRate(Band.typed(1.0));
  private Checking checking = Checking.NONE;

  private SampleJob() {}

  /** A strip of even section, lying flat, its one end at the inlet. */
  public static SampleJob strip(double length, double width, double thickness) {
    return new SampleJob().station(0.0, width, thickness).station(length, width, thickness);
  }

  /** A piece that still has no stations. */
  public static SampleJob empty() {
    return new SampleJob();
  }

  /**
   * A strip 2 m wide whose area over its perimeter is that of an endless plate of the thickness:
   * the side faces are made up for by 0.1 % of thickness.
   */
  public static SampleJob plate(double length, double thickness) {
    double width = 2.0;
    return strip(length, width, thickness * width / (width - thickness));
  }

  /** An invented tapered feather, 320 mm long with a boss, by its five stations. */
  public static SampleJob feather() {
    SampleJob job = new SampleJob();
    double[] at = {0.0, 0.08, 0.16, 0.24, 0.32};
    double[] wide = {34e-3, 28.5e-3, 23e-3, 17.5e-3, 12e-3};
    double[] thick = {6e-3, 4.8e-3, 3.6e-3, 2.4e-3, 1.2e-3};
    for (int i = 0; i < at.length; i++) {
      job.station(at[i], wide[i], thick[i]);
    }
    return job.section(SectionForm.LENS)
        .boss(0.04, 0.022, 0.018)
        .alloy(SampleFoundry.tinBronze())
        .melted(1.1)
        .waits(40.0, 15.0);
  }

  /** The feather flat in cold sand through runner and end gate, with a vent near its tip. */
  public static SampleJob featherInSand(double emptiesIn) {
    return feather()
        .medium(SampleFoundry.sand())
        .mouldAt(293.15)
        .crack(0.05e-3)
        .cup(0.045, 0.03)
        .sprue(0.12, 0.018, 0.014)
        .well(0.025, 0.015)
        .runner(0.06, 0.015, 0.012)
        .gateIntoBoss(0.02, 0.003, 0.015)
        .vent(0.315, 0.003)
        .empties(emptiesIn);
  }

  /** The feather tip down under its boss in a hot gypsum mould. */
  public static SampleJob featherInGypsum(double emptiesIn) {
    return feather()
        .medium(SampleFoundry.gypsum())
        .mouldAt(620.0 + ZERO)
        .attitude(Orientation.UPRIGHT_TIP_DOWN)
        .cup(0.05, 0.035)
        .sprueIntoBoss(0.025, 0.014, 0.014)
        .vent(0.318, 0.002)
        .melted(1.0)
        .empties(emptiesIn);
  }

  public SampleJob station(double at, double width, double thickness) {
    stations.add(new Station(at, width, thickness, OptionalDouble.empty()));
    return this;
  }

  /** A station whose rim was measured too. */
  public SampleJob station(double at, double width, double thickness, double edge) {
    stations.add(new Station(at, width, thickness, OptionalDouble.of(edge)));
    return this;
  }

  public SampleJob section(SectionForm form) {
    section = form;
    return this;
  }

  public SampleJob boss(double length, double width, double depth) {
    boss = Optional.of(new Boss(length, width, depth));
    return this;
  }

  public SampleJob attitude(Orientation stands) {
    attitude = stands;
    return this;
  }

  public SampleJob medium(MouldMedium madeOf) {
    medium = madeOf;
    return this;
  }

  /** Mould temperature [K]. */
  public SampleJob mouldAt(double temperature) {
    mouldTemperature = temperature;
    return this;
  }

  public SampleJob shell(double wall) {
    shell = wall;
    return this;
  }

  public SampleJob crack(double width) {
    crack = width;
    return this;
  }

  public SampleJob flask(Flask can) {
    flask = Optional.of(can);
    return this;
  }

  public SampleJob cup(double across, double depth) {
    cup = new Cup(across, depth);
    return this;
  }

  public SampleJob sprue(double tall, double top, double foot) {
    sprue = new Sprue(tall, top, foot, Optional.empty());
    return this;
  }

  public SampleJob sprueIntoBoss(double tall, double top, double foot) {
    sprue = new Sprue(tall, top, foot, Optional.of(new Place.Into("boss")));
    return this;
  }

  /** Sprue straight into the piece: at the tip, or at the thick end. */
  public SampleJob sprueAt(double tall, double top, double foot, Side side) {
    double distance = side == Side.TIP ? length() : 0.0;
    sprue = new Sprue(tall, top, foot, Optional.of(new Place.At(Limb.ONLY, distance, side)));
    return this;
  }

  public SampleJob well(double across, double depth) {
    well = Optional.of(new Well(across, depth));
    return this;
  }

  public SampleJob runner(double length, double width, double depth) {
    runner = Optional.of(new Runner.Straight(length, width, depth, 0.0));
    return this;
  }

  public SampleJob gateIntoBoss(double width, double thickness, double length) {
    gates.add(new Gate("gate", new Place.Into("boss"), width, thickness, length));
    return this;
  }

  public SampleJob gateAt(Side side, double width, double thickness, double length) {
    double distance = side == Side.TIP ? length() : 0.0;
    Place place = new Place.At(Limb.ONLY, distance, side);
    gates.add(new Gate("gate", place, width, thickness, length));
    return this;
  }

  public SampleJob gate(Gate opening) {
    gates.add(opening);
    return this;
  }

  public SampleJob vent(double at, double across) {
    vents.add(new Vent("vent", new Place.At(Limb.ONLY, at, Side.TIP), across));
    return this;
  }

  public SampleJob alloy(Alloy metal) {
    alloy = metal;
    return this;
  }

  public SampleJob melted(double mass) {
    melted = mass;
    return this;
  }

  /** Reading in the crucible [K]. */
  public SampleJob reads(double temperature) {
    reading = temperature;
    return this;
  }

  /** Lost between reading and cup [K]. */
  public SampleJob waits(double cooling, double overLip) {
    waiting = cooling;
    lip = overLip;
    return this;
  }

  public SampleJob empties(double seconds) {
    pour = new Pour.Empties(Band.typed(seconds));
    return this;
  }

  public SampleJob pour(Pour hand) {
    pour = hand;
    return this;
  }

  public SampleJob checking(Checking options) {
    checking = options;
    return this;
  }

  public SampleJob checking(Options options) {
    checking = options.build();
    return this;
  }

  private double length() {
    return stations.get(stations.size() - 1).at();
  }

  public PourCase build() {
    Piece piece = new Piece(List.of(new Limb(Limb.ONLY, stations, section, "", "", 0.0)), boss);
    Mould mould =
        new Mould(medium, Band.typed(mouldTemperature), shell, flask, attitude, crack, 101325.0);
    Gating gating = new Gating(cup, sprue, well, runner, gates, vents, List.of(), List.of());
    Metal metal =
        new Metal(
            alloy,
            melted,
            Band.typed(reading),
            Band.typed(waiting),
            Band.typed(waiting > 0.0 ? 1.0 : 0.0),
            Band.typed(lip));
    return new PourCase("sample", piece, mould, gating, metal, pour, checking);
  }

  /** Checking options by name, all off to begin with except what a test against algebra needs. */
  public static final class Options {
    private boolean mouldStays;
    private OptionalDouble friction = OptionalDouble.empty();
    private OptionalDouble spreading = OptionalDouble.of(0.0);
    private OptionalDouble entryLoss = OptionalDouble.of(0.0);
    private boolean pushesBack;
    private OptionalDouble cupAt = OptionalDouble.empty();
    private OptionalDouble speed = OptionalDouble.empty();
    private Checking.Fluid fluid = Checking.Fluid.METAL;
    private OptionalDouble cell = OptionalDouble.empty();
    private OptionalDouble courant = OptionalDouble.empty();
    private OptionalDouble heatStep = OptionalDouble.empty();
    private OptionalDouble mush = OptionalDouble.of(1.0);
    private List<Checking.StartsWet> startsWet = List.of();
    private boolean perfect;
    private boolean curved;
    private boolean cools;
    private boolean rims;

    /**
     * No spreading, no entry loss, nothing pushes back, all solid rides along, flat walls, whole
     * sections.
     */
    public static Options bare() {
      return new Options();
    }

    /** An ordinary dry pour. */
    public static Options ordinary() {
      Options options = new Options();
      options.spreading = OptionalDouble.empty();
      options.entryLoss = OptionalDouble.empty();
      options.mush = OptionalDouble.empty();
      options.pushesBack = true;
      options.curved = true;
      options.cools = true;
      options.rims = true;
      return options;
    }

    public Options mouldStays() {
      mouldStays = true;
      return this;
    }

    public Options friction(double darcy) {
      friction = OptionalDouble.of(darcy);
      return this;
    }

    public Options spreading(double factor) {
      spreading = OptionalDouble.of(factor);
      return this;
    }

    public Options entryLoss(double coefficient) {
      entryLoss = OptionalDouble.of(coefficient);
      return this;
    }

    public Options pushesBack() {
      pushesBack = true;
      return this;
    }

    public Options cupKeptAt(double height) {
      cupAt = OptionalDouble.of(height);
      return this;
    }

    public Options entersAt(double metresPerSecond) {
      speed = OptionalDouble.of(metresPerSecond);
      return this;
    }

    public Options water() {
      fluid = Checking.Fluid.WATER;
      return this;
    }

    public Options cell(double longest) {
      cell = OptionalDouble.of(longest);
      return this;
    }

    public Options courant(double share) {
      courant = OptionalDouble.of(share);
      return this;
    }

    public Options heatStep(double longest) {
      heatStep = OptionalDouble.of(longest);
      return this;
    }

    public Options mush(double share) {
      mush = OptionalDouble.of(share);
      return this;
    }

    public Options startsWet(List<Checking.StartsWet> metal) {
      startsWet = metal;
      return this;
    }

    public Options perfectContact() {
      perfect = true;
      return this;
    }

    public Options rims() {
      rims = true;
      return this;
    }

    public Options wholeSections() {
      rims = false;
      return this;
    }

    public Checking build() {
      return new Checking(
          mouldStays,
          friction,
          spreading,
          entryLoss,
          pushesBack,
          false,
          cupAt,
          speed,
          startsWet,
          fluid,
          cell,
          courant,
          heatStep,
          mush,
          perfect,
          curved,
          cools,
          rims);
    }
  }
}
