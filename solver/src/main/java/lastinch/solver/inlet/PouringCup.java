package lastinch.solver.inlet;

import java.util.OptionalDouble;
import lastinch.solver.casting.Pour;
import lastinch.solver.casting.gating.Cup;
import lastinch.solver.physics.Gravity;

/**
 * The hand, the crucible and the pouring cup: what is poured, what the cup holds, what runs over
 * its rim and what stays in the crucible. Shared by every solver.
 *
 * <p>Metal that arrives while the cup stands at its rim stays in the crucible, because the hand
 * sees the cup, unless the pour is given as a measured rate: then it spills.
 */
public final class PouringCup {
  /** A cup with less metal than this over its floor is empty [m]; numerical, over rounding. */
  private static final double DRY = 1e-12;

  private final Pour pour;
  private final Cup cup;
  private final double density;
  private final double melted;
  private final double massToRim;
  private final double sprueArea;
  private final double entryLoss;
  private double level;
  private double left;
  private double spilled;
  private double poured;
  private double pouredNow;
  private double fullAt = Double.NaN;

  /**
   * An empty cup.
   *
   * @param pour what the hand does
   * @param cup its size
   * @param density of the metal [kg/m3]
   * @param melted in the crucible [kg]
   * @param massToRim metal that fills mould, gating and cup [kg]
   * @param sprueArea mouth of the sprue in the cup's floor [m2]
   * @param entryLoss loss coefficient of that mouth [-]
   */
  public PouringCup(
      Pour pour,
      Cup cup,
      double density,
      double melted,
      double massToRim,
      double sprueArea,
      double entryLoss) {
    this.pour = pour;
    this.cup = cup;
    this.density = density;
    this.melted = melted;
    this.massToRim = massToRim;
    this.sprueArea = sprueArea;
    this.entryLoss = entryLoss;
    this.left = melted;
  }

  /** Lets the hand pour for a step [s] that starts at {@code time} [s]; returns the mass [kg]. */
  public double pour(double time, double dt) {
    double rate = pour.rateAt(time + 0.5 * dt, melted, massToRim);
    double mass = Math.min(left, Math.max(0.0, rate) * dt);
    double room = (cup.depth() - level) * cup.area() * density;
    double kept = Math.max(0.0, room);
    if (pour.spills()) {
      spilled += Math.max(0.0, mass - kept);
    } else {
      mass = Math.min(mass, kept);
    }
    left -= mass;
    poured += mass;
    pouredNow = mass;
    level += Math.min(mass, kept) / (density * cup.area());
    if (Double.isNaN(fullAt) && isFull()) {
      fullAt = time + dt;
    }
    return mass;
  }

  /** Speed of metal falling into an unfilled sprue at a level [m] over its mouth [m/s]. */
  private double mouthSpeed(double head) {
    return Math.sqrt(2.0 * Gravity.G * Math.max(0.0, head) / (1.0 + entryLoss));
  }

  /**
   * Drains into an unfilled sprue for a step [s], implicitly; returns the volume that left [m3].
   */
  public double drainFree(double dt) {
    double area = cup.area();
    double b = dt * sprueArea * Math.sqrt(2.0 * Gravity.G / (1.0 + entryLoss));
    double c = area * level;
    double root = 2.0 * c / (b + Math.sqrt(b * b + 4.0 * area * c));
    double lower = root * root;
    double volume = (level - lower) * area;
    if (lower < DRY) {
      volume = level * area;
      lower = 0.0;
    }
    level = lower;
    return Math.max(0.0, volume);
  }

  /** Speed with which drained metal leaves the mouth [m/s]. */
  public double leavingSpeed() {
    return mouthSpeed(level);
  }

  /** Takes a volume [m3] out of the cup, negative puts back; what rises over the rim spills. */
  public void draw(double volume) {
    level -= volume / cup.area();
    if (level > cup.depth()) {
      spilled += (level - cup.depth()) * cup.area() * density;
      level = cup.depth();
    }
    if (level < 0.0) {
      level = 0.0;
    }
  }

  /** Height of metal over the mouth [m]. */
  public double level() {
    return level;
  }

  /** Room for metal up to the rim [m3]. */
  public double room() {
    return cup.depth() * cup.area();
  }

  /** Metal in the cup [m3]. */
  public double volume() {
    return level * cup.area();
  }

  /** Wall and floor wetted now over all there is [-]. */
  public double wettedShare() {
    return level <= 0.0 ? 0.0 : wallBelow(level) / wallBelow(cup.depth());
  }

  /** Wall and floor [m2]. */
  public double wall() {
    return wallBelow(cup.depth());
  }

  /** A mouth as wide as the cup leaves no floor. */
  private double wallBelow(double height) {
    return Math.max(0.0, cup.area() - sprueArea) + Math.PI * cup.across() * height;
  }

  /** Whether the hand has nothing left to give. */
  public boolean crucibleEmpty() {
    return left <= 1e-9 * melted;
  }

  /** Whether the cup stands at its rim. */
  public boolean isFull() {
    return level >= cup.depth() * (1.0 - 1e-6);
  }

  /** When the cup first stood at its rim [s]; empty if it never has. */
  public OptionalDouble fullAt() {
    return Double.isNaN(fullAt) ? OptionalDouble.empty() : OptionalDouble.of(fullAt);
  }

  /** Poured in the last step [kg]. */
  public double pouredNow() {
    return pouredNow;
  }

  /** Poured so far [kg]. */
  public double poured() {
    return poured;
  }

  /** Over the rim so far [kg]. */
  public double spilled() {
    return spilled;
  }

  /** In the crucible [kg]. */
  public double left() {
    return left;
  }
}
