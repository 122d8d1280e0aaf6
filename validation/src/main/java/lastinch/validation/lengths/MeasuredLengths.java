package lastinch.validation.lengths;

import java.util.List;
import java.util.Optional;
import lastinch.cases.catalogue.Catalogue;
import lastinch.cases.catalogue.MetalKind;
import lastinch.cases.catalogue.Ramming;
import lastinch.solver.casting.Metal;
import lastinch.solver.casting.ModelCoefficients;
import lastinch.solver.casting.Mould;
import lastinch.solver.casting.Orientation;
import lastinch.solver.material.Alloy;
import lastinch.solver.material.Band;
import lastinch.solver.material.Basis;
import lastinch.solver.material.Citation;
import lastinch.solver.material.MouldMedium;
import lastinch.validation.Celsius;

/** Every length that somebody measured or reports and that can be poured here. */
final class MeasuredLengths {
  private static final Catalogue CATALOGUE = Catalogue.builtIn();

  private static final MouldMedium SAND = sand(MetalKind.COPPER);
  private static final MouldMedium SAND_FOR_ALUMINIUM = sand(MetalKind.ALUMINIUM);
  private static final MouldMedium STEEL =
      CATALOGUE.medium("steel", MetalKind.ALUMINIUM, Ramming.FIRM);

  /** Stainless steel conducts 14 to 20 W/(m K) where the catalogue's mould steel conducts 40. */
  private static final MouldMedium STAINLESS =
      STEEL.with(MouldMedium.Figure.CONDUCTIVITY_FACTOR, setUp(0.42, 0.35, 0.5));

  /** Sand as it lies in the shop, and tubes that nobody warmed [degC]. */
  private static final double COLD = 20.0;

  /** Head over a spiral [m]: what a small moulding box allows; its middle by ratio. */
  private static final Band HEAD = setUp(0.067, 0.03, 0.15);

  /** Suction on a tube as metal above its mouth [m], less what it climbs; middle by ratio. */
  private static final Band SUCTION = setUp(0.32, 0.2, 0.5);

  /** From a basin through sprue and bend, in speed heads [-]; least: a sharp inlet alone. */
  private static final Band BASIN = setUp(2.0, 0.5, 6.0);

  /** Into a tube that dips into the melt, in speed heads [-]: sharp to re-entrant. */
  private static final Band DIPPED = setUp(0.7, 0.5, 1.0);

  /** Section from memory or assumed: factor on its sides [-]. */
  private static final Band ROUGHLY = setUp(1.0, 0.87, 1.15);

  /** Section as the source gives it: a moulder's accuracy on 3 to 8 mm [-]. */
  private static final Band GIVEN = setUp(1.0, 0.96, 1.04);

  /** Litres a second of a careful hand [m3/s]: 0.04 to 0.08, common practice, no source. */
  private static final Band HAND = setUp(5.7e-5, 4e-5, 8e-5);

  private static final MeasuredLength.Drive BY_BASIN = new MeasuredLength.Drive.Held(HEAD, BASIN);
  private static final MeasuredLength.Drive SUCKED = new MeasuredLength.Drive.Held(SUCTION, DIPPED);
  private static final MeasuredLength.Drive BY_HAND = new MeasuredLength.Drive.ByHand(HAND);

  private static final MeasuredLength.Channel SPIRAL = channel(7.5, 7.5, ROUGHLY);
  private static final MeasuredLength.Channel IRON_SPIRAL = channel(7.1, 7.1, ROUGHLY);
  private static final MeasuredLength.Channel EIGHT = channel(8.0, 8.0, GIVEN);
  private static final MeasuredLength.Channel PLATE = channel(100.0, 3.2, GIVEN);

  /** A round bore has the modulus of a square as wide; 6 to 7 mm, assumed. */
  private static final MeasuredLength.Channel TUBE = channel(6.5, 6.5, setUp(1.0, 0.92, 1.08));

  /** A shop's table of spirals of copper alloys in sand, on the web. */
  private static List<MeasuredLength> spirals() {
    return List.of(
        row("red brass, spiral", alloy("red brass"), 1150, SAND, SPIRAL, 400, 400),
        row("Cu-10Sn-1P, spiral", alloy("tin bronze"), 1150, SAND, SPIRAL, 450, 450));
  }

  /** What the trade says of thin plates; common practice, no source, with a margin in it. */
  private static List<MeasuredLength> plates() {
    return List.of(
        plate("bronze, plate by hand", "tin bronze", 1150, SAND, 100, 180),
        plate("A356, plate by hand", "A356", 720, SAND_FOR_ALUMINIUM, 100, 200));
  }

  /**
   * Tubes: Bang, Kwon, Chung, Kim and Kim, Metals 12, 1986 (2022), abstract. The two lengths at
   * given suction are left out: 5 kPa cannot lift the metal as far as the abstract says.
   */
  private static List<MeasuredLength> tubes() {
    return List.of(
        tube("A356, quartz tube, 650 degC", 650, StudyMaterials.quartz(), 260),
        tube("A356, quartz tube, 730 degC", 730, StudyMaterials.quartz(), 360),
        tube("A356, stainless tube", 650, STAINLESS, 130));
  }

  /**
   * Grey iron in the usual spiral: regression L [cm] = 37.846 CF + 0.228 T [degC] - 389.6, CF = C +
   * Si/4 + P/2, AFS about 1952 from memory; read in two pages that use it.
   */
  private static List<MeasuredLength> ironSpirals() {
    return List.of(
        ferrous("grey iron, CF 3.6, spiral", iron(3.6, 0.39), 1300, IRON_SPIRAL, 430),
        ferrous("grey iron, CF 4.0, spiral", iron(4.0, 0.45), 1400, IRON_SPIRAL, 810),
        ferrous("grey iron, CF 4.26, spiral", iron(4.26, 0.49), 1300, IRON_SPIRAL, 680));
  }

  /** Spirals of 8 x 8 mm in foundry textbooks, from memory; heads are not given. */
  private static List<MeasuredLength> textbook() {
    return List.of(
        row("gunmetal, 8 x 8 mm", alloy("gunmetal"), 1040, SAND, EIGHT, 420, 420),
        ferrous("grey iron, C + Si 4.2, 8 x 8 mm", iron(3.3, 0.34), 1300, EIGHT, 600),
        ferrous("grey iron, C + Si 5.9, 8 x 8 mm", iron(4.2, 0.48), 1300, EIGHT, 1300),
        row(
            "magnesium alloy, 8 x 8 mm",
            StudyMaterials.magnesium(),
            700,
            SAND_FOR_ALUMINIUM,
            EIGHT,
            400,
            600),
        ferrous("steel of 0.4 C, 8 x 8 mm", StudyMaterials.steel(), 1640, EIGHT, 200),
        new MeasuredLength(
            "silumin, 8 x 8 mm, metal mould",
            metal(StudyMaterials.silumin(), kelvin(700, 20), lip()),
            mould(STEEL, 300),
            EIGHT,
            BY_BASIN,
            700,
            800));
  }

  private MeasuredLengths() {}

  /** The laws of every plan. */
  static ModelCoefficients laws() {
    return CATALOGUE.commonFigures().laws();
  }

  /** What the catalogue says of liquid bronze and sand [W/(m2 K)]. */
  static double contactWithSand() {
    return SAND.contactLiquid().value();
  }

  /** All rows. */
  static List<MeasuredLength> all() {
    return List.of(spirals(), plates(), tubes(), ironSpirals(), textbook()).stream()
        .flatMap(List::stream)
        .toList();
  }

  private static MeasuredLength row(
      String name,
      Alloy alloy,
      double celsius,
      MouldMedium medium,
      MeasuredLength.Channel channel,
      double from,
      double to) {
    return new MeasuredLength(
        name,
        metal(alloy, kelvin(celsius, 0.0), lip()),
        mould(medium, COLD),
        channel,
        BY_BASIN,
        from,
        to);
  }

  private static MeasuredLength ferrous(
      String name, Alloy alloy, double celsius, MeasuredLength.Channel channel, double length) {
    return new MeasuredLength(
        name,
        metal(alloy, kelvin(celsius, 0.0), glowing(celsius)),
        mould(StudyMaterials.hotter(SAND, celsius + Celsius.ZERO), COLD),
        channel,
        BY_BASIN,
        length,
        length);
  }

  private static MeasuredLength plate(
      String name, String alloy, double celsius, MouldMedium medium, double from, double to) {
    return new MeasuredLength(
        name,
        metal(alloy(alloy), kelvin(celsius, 0.0), lip()),
        mould(medium, COLD),
        PLATE,
        BY_HAND,
        from,
        to);
  }

  private static MeasuredLength tube(
      String name, double celsius, MouldMedium medium, double length) {
    return new MeasuredLength(
        name,
        metal(alloy("A356"), kelvin(celsius, 0.0), Band.typed(0.0)),
        mould(medium, COLD),
        TUBE,
        SUCKED,
        length,
        length);
  }

  /** What any hand pour loses over the lip here. */
  private static Band lip() {
    return CATALOGUE.commonFigures().lipLoss();
  }

  /**
   * The same for iron and steel: the loss of bronze at 1150 degC, with the fourth power of the
   * absolute temperature, as glow goes.
   */
  private static Band glowing(double celsius) {
    double ratio = (celsius + Celsius.ZERO) / (1150.0 + Celsius.ZERO);
    return lip().times(ratio * ratio * ratio * ratio);
  }

  private static Alloy alloy(String name) {
    return CATALOGUE.alloy(name);
  }

  /** Stop shares derived from the slopes of the regression itself, give or take a tenth. */
  private static Alloy iron(double carbon, double stop) {
    return StudyMaterials.greyIron(
        carbon,
        new Band(stop, stop - 0.1, stop + 0.1, new Citation(Basis.DERIVED, "regression", "")));
  }

  private static MouldMedium sand(MetalKind kind) {
    return CATALOGUE.medium("green sand", kind, Ramming.FIRM);
  }

  private static Metal metal(Alloy alloy, Band reading, Band lip) {
    return new Metal(alloy, 50.0, reading, Band.typed(0.0), Band.typed(0.0), lip);
  }

  private static Mould mould(MouldMedium medium, double celsius) {
    return new Mould(
        medium, kelvin(celsius, 0.0), 0.0, Optional.empty(), Orientation.FLAT, 0.0, 101325.0);
  }

  private static MeasuredLength.Channel channel(double width, double thickness, Band size) {
    return new MeasuredLength.Channel(1e-3 * width, 1e-3 * thickness, size);
  }

  private static Band kelvin(double celsius, double halfWidth) {
    return Band.typed(celsius + Celsius.ZERO, halfWidth);
  }

  /** A figure of the set-up that the source leaves out; nine in ten inside. */
  private static Band setUp(double best, double low, double high) {
    return new Band(best, low, high, new Citation(Basis.ESTIMATE, "set-up not given", ""));
  }
}
