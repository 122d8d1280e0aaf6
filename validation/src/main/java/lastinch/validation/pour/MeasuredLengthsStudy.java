package lastinch.validation.pour;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
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
import lastinch.solver.material.Band;
import lastinch.solver.run.DryPour;
import lastinch.solver.uncertainty.UncertainInput;
import lastinch.validation.Celsius;
import lastinch.validation.Rows;
import lastinch.validation.Study;
import lastinch.validation.StudyCurve;
import lastinch.validation.StudyKind;

/**
 * Lengths that were measured, row by row, against the length this program gives: the one thing that
 * exact checks cannot show.
 */
public final class MeasuredLengthsStudy implements Study {
  /** Draws of what is not known of a set-up, a row; 1 in 20 lies beyond either end. */
  private static final int DRAWS = 60;

  private static final int END = DRAWS / 20;

  /** Loss at the mouth, in speed heads [-]: a clean sharp inlet to a basin with sprue and bend. */
  private static final double LEAST_LOSS = 0.5;

  private static final double MOST_LOSS = 6.0;

  /** Longer than any metal here runs [m]; chosen. */
  private static final double LONG = 4.0;

  /** Sand as it stands in the shop [degC]. */
  private static final double SAND = 20.0;

  /** Every row that metals and moulds of the catalogue can pour. */
  private static final List<MeasuredLength> LENGTHS =
      List.of(
          row("red brass, sand spiral", "red brass", 1150, "green sand", SAND, 7.5, 7.5, 400, 400),
          row("tin bronze, the same", "tin bronze", 1150, "green sand", SAND, 7.5, 7.5, 450, 450),
          row("tin bronze, 8 x 8 mm", "tin bronze", 1040, "green sand", SAND, 8, 8, 420, 420),
          row("bronze plate", "tin bronze", 1150, "green sand", SAND, 100, 3.2, 100, 180),
          row("A356 plate", "A356", 720, "green sand", SAND, 100, 3.2, 100, 200),
          row("silumin as A356, 8 x 8 mm", "A356", 700, "steel", 300, 8, 8, 700, 800),
          new MeasuredLength(
              "A356, stainless tube",
              "A356",
              650,
              "steel",
              20,
              6.5e-3,
              6.5e-3,
              0.2,
              0.5,
              130,
              130));

  private static MeasuredLength row(
      String name,
      String alloy,
      double celsius,
      String medium,
      double mould,
      double width,
      double thickness,
      double from,
      double to) {
    return new MeasuredLength(
        name, alloy, celsius, medium, mould, 1e-3 * width, 1e-3 * thickness, 0.03, 0.15, from, to);
  }

  @Override
  public String title() {
    return "Lengths that were measured";
  }

  @Override
  public StudyKind kind() {
    return StudyKind.TREND;
  }

  @Override
  public String source() {
    return "Spirals of red brass and tin bronze: a foundry's table, its section from memory, its head"
        + " not given; 8 x 8 mm channels: foundry textbooks, from memory, head not given; plates of"
        + " 3.2 mm: common practice, no source, with a margin in them; tube: Bang, Kwon, Chung, Kim"
        + " and Kim, Metals 12, 1986 (2022), abstract, its bore and suction not given";
  }

  @Override
  public String setting() {
    return "Catalogue metals and moulds; a long level channel of the section, vented at its end; what"
        + " a source does not say is drawn: head 30 to 150 mm (suction as 200 to 500 mm), loss at"
        + " the mouth 0.5 to 6 speed heads, all figures of metal and mould from their ranges";
  }

  @Override
  public String note() {
    return "Nothing is held against these rows yet: they show how true a length is, where all other"
        + " studies show how exactly the equations are solved. Factor: computed over measured. Grey"
        + " iron, steel and magnesium rows of the same sources are not poured: the catalogue has no"
        + " such metals. Suction into an upright tube is poured as a head on a level one.";
  }

  @Override
  public void compare(Rows rows) {
    StudyCurve curve =
        rows.curve("Computed length by measured length", "measured [mm]", "length [mm]");
    double sum = 0.0;
    double squares = 0.0;
    int inside = 0;
    for (MeasuredLength length : LENGTHS) {
      double best = reach(job(length, middle(length), 0.5 * (LEAST_LOSS + MOST_LOSS)));
      double[] drawn = drawn(length);
      double low = drawn[END];
      double high = drawn[DRAWS - 1 - END];
      double factor = best / length.measured();
      sum += Math.log(factor);
      squares += Math.log(factor) * Math.log(factor);
      inside += low <= length.to() && high >= length.from() ? 1 : 0;
      curve.point(length.measured(), length.measured(), best);
      rows.told(
          length.name()
              + String.format(Locale.ROOT, ", %.0f degC: measured ", length.celsius())
              + range(length.from(), length.to()),
          String.format(
              Locale.ROOT,
              "%.0f mm (9 in 10: %.0f to %.0f), factor %.2f",
              best,
              low,
              high,
              factor));
    }
    int n = LENGTHS.size();
    double mean = sum / n;
    rows.told(
        "geometric mean of the factors, and their spread as a factor",
        String.format(
            Locale.ROOT,
            "%.2f, spread %.2f",
            StrictMath.exp(mean),
            StrictMath.exp(Math.sqrt(Math.max(0.0, squares / n - mean * mean)))));
    rows.told(
        "rows whose measured length lies inside the range computed",
        String.format(Locale.ROOT, "%d of %d", inside, n));
  }

  private static String range(double from, double to) {
    return from == to
        ? String.format(Locale.ROOT, "%.0f mm", from)
        : String.format(Locale.ROOT, "%.0f to %.0f mm", from, to);
  }

  private static double middle(MeasuredLength length) {
    return Math.sqrt(length.leastHead() * length.mostHead());
  }

  /** Lengths of all draws, shortest first [mm]. */
  private static double[] drawn(MeasuredLength length) {
    double[] found = new double[DRAWS];
    for (int k = 0; k < DRAWS; k++) {
      double head =
          length.leastHead()
              * StrictMath.pow(length.mostHead() / length.leastHead(), halton(k + 1, 2));
      double loss = LEAST_LOSS + (MOST_LOSS - LEAST_LOSS) * halton(k + 1, 3);
      PourCase job = job(length, head, loss);
      int base = 0;
      for (UncertainInput input : UncertainInput.openIn(job)) {
        double share = 2.0 * halton(k + 1, PRIMES[base % PRIMES.length]) - 1.0;
        base++;
        job = input.set(job, input.towards(job, share > 0.0, Math.abs(share)));
      }
      found[k] = reach(job);
    }
    Arrays.sort(found);
    return found;
  }

  private static final int[] PRIMES = {
    5, 7, 11, 13, 17, 19, 23, 29, 31, 37, 41, 43, 47, 53, 59, 61, 67, 71, 73, 79
  };

  /** Number of a sequence that fills 0 to 1 evenly: Halton 1960. */
  private static double halton(int index, int base) {
    double sum = 0.0;
    double part = 1.0 / base;
    for (int i = index; i > 0; i /= base) {
      sum += part * (i % base);
      part /= base;
    }
    return sum;
  }

  private static double reach(PourCase job) {
    return 1e3 * DryPour.run(job, RunObserver.NONE, () -> false).reach();
  }

  private static PourCase job(MeasuredLength length, double head, double loss) {
    Catalogue catalogue = Catalogue.builtIn();
    MetalKind kind = length.alloy().equals("A356") ? MetalKind.ALUMINIUM : MetalKind.COPPER;
    Limb limb =
        new Limb(
            Limb.ONLY,
            List.of(
                new Station(0.0, length.width(), length.thickness(), OptionalDouble.empty()),
                new Station(LONG, length.width(), length.thickness(), OptionalDouble.empty())),
            SectionForm.FLAT,
            "",
            "",
            0.0);
    return new PourCase(
        length.name(),
        new Piece(List.of(limb), Optional.empty()),
        new Mould(
            catalogue.medium(length.medium(), kind, Ramming.FIRM),
            Band.typed(length.mould() + Celsius.ZERO),
            0.0,
            Optional.empty(),
            Orientation.FLAT,
            5e-5,
            101325.0),
        new Gating(
            new Cup(60e-3, 40e-3),
            new Sprue(0.1, 20e-3, 16e-3, Optional.of(new Place.Into(Limb.ONLY))),
            Optional.empty(),
            Optional.empty(),
            List.of(),
            List.of(new Vent("end vent", new Place.At(Limb.ONLY, LONG, Side.TIP), 6e-3)),
            List.of(),
            List.of()),
        new Metal(
            catalogue.alloy(length.alloy()),
            50.0,
            Band.typed(length.celsius() + Celsius.ZERO),
            Band.typed(0.0),
            Band.typed(0.0),
            Band.typed(0.0)),
        new Pour.AtRate(Band.typed(10.0)),
        held(head, loss));
  }

  /** The usual laws, fed from a head that is held. */
  private static Checking held(double head, double loss) {
    return Checking.NONE
        .with(Checking.Figure.ENTRY_LOSS, loss)
        .with(Checking.Figure.CUP_KEPT_AT, head);
  }

  @Override
  public Optional<Study> spoiled() {
    return Optional.empty();
  }
}
