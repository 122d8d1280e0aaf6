package lastinch.cases.plan;

import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;
import lastinch.solver.material.Band;

/**
 * What a shop owns; answers are rounded to it. Lengths [m], masses [kg], temperatures [K].
 *
 * @param crucibles in the file's order
 * @param spruePins in the file's order
 * @param gateCutters widths
 * @param runnerStrips sections
 * @param flasks cans for investment
 * @param kiln inside of the kiln
 * @param thermocouple how the heat is read
 * @param mostLifted what one person lifts
 * @param investmentCeiling hottest the powder's maker allows
 * @param usualSkim from reading to first metal, usually [s]
 */
public record ShopFile(
    List<Crucible> crucibles,
    List<SpruePin> spruePins,
    List<Double> gateCutters,
    List<Strip> runnerStrips,
    List<Can> flasks,
    Optional<Kiln> kiln,
    Optional<Thermocouple> thermocouple,
    OptionalDouble mostLifted,
    OptionalDouble investmentCeiling,
    OptionalDouble usualSkim) {
  public ShopFile {
    crucibles = List.copyOf(crucibles);
    spruePins = List.copyOf(spruePins);
    gateCutters = List.copyOf(gateCutters);
    runnerStrips = List.copyOf(runnerStrips);
    flasks = List.copyOf(flasks);
    Objects.requireNonNull(kiln, "kiln");
    Objects.requireNonNull(thermocouple, "thermocouple");
  }

  /** A crucible and the weight of a metal it holds full. */
  public record Crucible(String name, double holds, String metal) {}

  /** A pin to form a sprue; {@code top} and {@code foot} are diameters. */
  public record SpruePin(double top, double foot) {}

  /** A strip to form a runner. */
  public record Strip(double wide, double deep) {}

  /** An investment flask. */
  public record Can(double inside, double tall, double wall) {}

  /** The inside of a kiln. */
  public record Kiln(double wide, double deep, double tall) {}

  /** How the heat is read and how much too high it reads [K difference]. */
  public record Thermocouple(String kind, Band readsHighBy) {}
}
