package lastinch.solver.run;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Random;
import java.util.TreeSet;
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
import lastinch.solver.casting.gating.Feeder;
import lastinch.solver.casting.gating.Gate;
import lastinch.solver.casting.gating.Gating;
import lastinch.solver.casting.gating.Overflow;
import lastinch.solver.casting.gating.Runner;
import lastinch.solver.casting.gating.Sprue;
import lastinch.solver.casting.gating.Vent;
import lastinch.solver.casting.gating.Well;
import lastinch.solver.material.Band;
import lastinch.solver.material.MouldMedium;

/**
 * Branched jobs, each wholly set by its number: strips, spokes, rings and rings with a spoke, one
 * to four gates at the ends, along the sides and into the boss, runners straight or alongside that
 * may run on, wells, overflows, feeders and vents or none, every attitude, sand, gypsum and steel,
 * pours that fill and pours that freeze on the way.
 */
public final class SeededNetworks {
  private static final String[] STANDS = {"flat", "tipUp", "tipDown", "uprightDown", "uprightUp"};
  private static final String[] MOULDS = {"sand", "gypsum", "steel"};
  private static final SectionForm[] FORMS = {
    SectionForm.FLAT, SectionForm.LENS, SectionForm.ROUND
  };
  private final int number;
  private final Random chance;
  private final List<Limb> limbs = new ArrayList<>();
  private Optional<Boss> boss = Optional.empty();
  private double length;
  private double width;
  private double thick;
  private double thin;

  private SeededNetworks(int number) {
    this.number = number;
    this.chance = new Random(104729L * number + 31L);
  }

  /** The job with a number. */
  public static PourCase job(int number) {
    return new SeededNetworks(number).make();
  }

  /** In a few words. */
  public static String words(int number) {
    return "network " + number + ", " + STANDS[number % 5] + ", " + MOULDS[number / 5 % 3];
  }

  private double between(double low, double high) {
    return low + (high - low) * chance.nextDouble();
  }

  /** Evenly over the ratio. */
  private double spread(double low, double high) {
    return low * StrictMath.pow(high / low, chance.nextDouble());
  }

  private boolean once(double share) {
    return chance.nextDouble() < share;
  }

  private PourCase make() {
    length = spread(0.06, 0.35);
    width = spread(0.01, 0.05);
    thick = Math.min(0.8 * width, spread(1.8e-3, 7e-3));
    thin = Math.max(0.9e-3, thick * between(0.3, 1.0));
    if (once(0.5)) {
      boss =
          Optional.of(
              new Boss(
                  between(0.015, 0.05),
                  width * between(0.6, 1.2),
                  Math.min(0.025, thick * between(1.5, 3.0))));
    }
    addLimbs();
    List<Gate> gates = gates();
    Orientation attitude = attitude();
    Optional<Runner> runner = runner(attitude, gates.size());
    Gating gating =
        new Gating(
            new Cup(spread(0.03, 0.07), between(0.02, 0.05)),
            sprue(attitude),
            once(0.5) ? Optional.of(new Well(between(0.012, 0.025), 0.015)) : Optional.empty(),
            runner,
            gates,
            vents(),
            overflows(),
            feeders());
    return new PourCase(
        "network " + number,
        new Piece(limbs, boss),
        mould(attitude),
        gating,
        metal(),
        hand(),
        Checking.NONE);
  }

  private void addLimbs() {
    SectionForm form = FORMS[chance.nextInt(FORMS.length)];
    String start = boss.isPresent() ? "boss" : "start";
    limbs.add(limb("a", length, form, "", "", 0.0));
    int kind = chance.nextInt(5);
    double angle = between(0.2, 1.0);
    if (kind == 2) {
      limbs.add(limb("b", length * between(0.5, 1.2), form, start, "", angle));
      if (once(0.5)) {
        limbs.add(limb("c", length * between(0.5, 1.2), form, start, "", -angle));
      }
    } else if (kind >= 3) {
      limbs.add(limb("b", length * between(1.05, 1.6), form, start, "a", angle));
      if (kind == 4) {
        limbs.add(limb("c", length * between(1.05, 1.6), form, start, "a", -angle));
      }
      if (once(0.3)) {
        limbs.add(limb("tail", length * between(0.2, 0.6), form, "a", "", 0.0));
      }
    }
  }

  private Limb limb(
      String name, double long_, SectionForm form, String from, String to, double heading) {
    boolean round = form == SectionForm.ROUND;
    double end = round ? thin : Math.max(1.2 * thin, width * between(0.4, 1.0));
    double begin = round ? thick : Math.max(end, width);
    double middle = long_ * between(0.3, 0.7);
    double part = between(0.0, 1.0);
    List<Station> stations =
        List.of(
            new Station(0.0, begin, thick, OptionalDouble.empty()),
            new Station(
                middle,
                begin + part * (end - begin),
                thick + part * (thin - thick),
                OptionalDouble.empty()),
            new Station(long_, end, thin, OptionalDouble.empty()));
    return new Limb(name, stations, form, from, to, heading);
  }

  private List<Gate> gates() {
    List<Gate> gates = new ArrayList<>();
    TreeSet<String> used = new TreeSet<>();
    int count = 1 + chance.nextInt(4);
    for (int k = 0; k < count; k++) {
      Place place = place(k);
      while (!used.add(place.toString())) {
        place = place(1);
      }
      gates.add(
          new Gate(
              "gate " + (k + 1),
              place,
              Math.max(0.004, width * between(0.3, 0.9)),
              Math.max(1e-3, thin * between(0.5, 1.5)),
              between(0.004, 0.03)));
    }
    return gates;
  }

  private Place place(int k) {
    if (k == 0 && once(0.5)) {
      return boss.isPresent() ? new Place.Into("boss") : new Place.At("a", 0.0, Side.THICK_END);
    }
    Limb limb = limbs.get(chance.nextInt(limbs.size()));
    int tenth = 1 + chance.nextInt(10);
    return tenth == 10
        ? new Place.At(limb.name(), limb.length(), Side.TIP)
        : new Place.At(limb.name(), limb.length() * tenth / 10.0, Side.LEFT);
  }

  private Orientation attitude() {
    return switch (number % 5) {
      case 0 -> Orientation.FLAT;
      case 1 -> Orientation.tilted(between(0.02, 0.6));
      case 2 -> Orientation.tilted(-between(0.02, 0.6));
      case 3 -> Orientation.UPRIGHT_TIP_DOWN;
      default -> Orientation.UPRIGHT_TIP_UP;
    };
  }

  private Sprue sprue(Orientation attitude) {
    double foot = spread(0.008, 0.016);
    double over = once(0.85) ? 1.7 * length * Math.abs(attitude.rise()) : 0.0;
    return new Sprue(between(0.04, 0.25) + over, foot * between(1.0, 1.6), foot, Optional.empty());
  }

  private Optional<Runner> runner(Orientation attitude, int gates) {
    double runsOn = once(0.4) ? between(0.01, 0.04) : 0.0;
    double wide = between(0.008, 0.018);
    double deep = between(0.006, 0.014);
    if (gates > 1 && once(0.6)) {
      boolean first = once(0.5);
      Runner.FedFrom end =
          attitude.upright()
              ? (first ? Runner.FedFrom.BOTTOM : Runner.FedFrom.TOP)
              : (first ? Runner.FedFrom.TIP : Runner.FedFrom.THICK_END);
      return Optional.of(new Runner.Alongside(Side.LEFT, 0.02, wide, deep, end, runsOn));
    }
    return once(0.6)
        ? Optional.of(new Runner.Straight(between(0.02, 0.1), wide, deep, runsOn))
        : Optional.empty();
  }

  private List<Vent> vents() {
    if (once(0.4)) {
      return List.of();
    }
    List<Vent> vents = new ArrayList<>();
    vents.add(new Vent("vent", new Place.At("a", length, Side.TIP), spread(1e-3, 3e-3)));
    if (boss.isPresent() && once(0.3)) {
      vents.add(new Vent("boss vent", new Place.Into("boss"), spread(1e-3, 3e-3)));
    }
    return vents;
  }

  private List<Overflow> overflows() {
    if (once(0.7)) {
      return List.of();
    }
    Place place = new Place.At("a", length * between(0.5, 0.99), Side.RIGHT);
    return List.of(
        new Overflow("overflow", place, 0.006, Math.max(1e-3, thin), spread(3e-7, 5e-6)));
  }

  private List<Feeder> feeders() {
    if (once(0.75)) {
      return List.of();
    }
    Place place =
        boss.isPresent()
            ? new Place.Into("boss")
            : new Place.At("a", length * between(0.2, 0.6), Side.RIGHT);
    double across = between(0.012, 0.025);
    return List.of(
        new Feeder("feeder", place, across, between(0.02, 0.05), 0.5 * across, once(0.6), false));
  }

  private Mould mould(Orientation attitude) {
    MouldMedium medium =
        switch (number / 5 % 3) {
          case 0 -> SampleFoundry.sand();
          case 1 -> SampleFoundry.gypsum();
          default -> SampleFoundry.steel();
        };
    double temperature =
        switch (number / 5 % 3) {
          case 0 -> 293.15;
          case 1 -> between(650.0, 1000.0);
          default -> between(350.0, 700.0);
        };
    double crack = once(0.5) ? spread(2e-5, 1e-4) : 0.0;
    return new Mould(
        medium, Band.typed(temperature), 0.0, Optional.empty(), attitude, crack, 101325.0);
  }

  private Metal metal() {
    return new Metal(
        once(0.1) ? SampleFoundry.pureMetal() : SampleFoundry.tinBronze(),
        spread(0.3, 4.0),
        Band.typed(between(1060.0, 1220.0) + SampleJob.ZERO),
        Band.typed(between(0.0, 30.0)),
        Band.typed(1.0),
        Band.typed(between(10.0, 20.0)));
  }

  private Pour hand() {
    return once(0.3)
        ? new Pour.CupFull(Band.typed(between(1.0, 5.0)))
        : new Pour.Empties(Band.typed(between(1.0, 7.0)));
  }
}
