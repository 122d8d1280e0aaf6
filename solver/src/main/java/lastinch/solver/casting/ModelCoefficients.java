package lastinch.solver.casting;

import java.util.Objects;
import lastinch.solver.material.Band;
import lastinch.solver.material.Basis;
import lastinch.solver.material.Checks;
import lastinch.solver.material.Citation;

/**
 * Figures in the laws themselves. They belong to every pour, whatever its metal and mould.
 *
 * @param spreading factor on how heat spreads along the flowing metal [-]
 * @param rangeRatio freezing range over the temperature drop across a growing skin at which half of
 *     the new solid rides along as mush [-]
 * @param turns factor on what is lost on entry and where metal turns [-]
 * @param ventDischarge discharge coefficient of a vent [-]
 * @param airConvection heat passed from the outside of a shell to still air [W/(m2 K)]
 * @param glow emissivity of the outside of a shell [-]
 */
public record ModelCoefficients(
    Band spreading,
    Band rangeRatio,
    Band turns,
    Band ventDischarge,
    Band airConvection,
    Band glow) {
  /** What is taken when nothing else is said: order-of-magnitude models, with that much leeway. */
  public static final ModelCoefficients USUAL =
      new ModelCoefficients(
          estimate(1.0, 0.0, 2.0, "dispersion of Taylor and Aris at a moving front, or none"),
          estimate(3.0, 1.0, 9.0, "separation times or divided by 3"),
          estimate(1.0, 0.7, 4.0, "times the losses of water in pipes"),
          memory(0.8, 0.6, 0.9, "orifice coefficient, White"),
          memory(10.0, 5.0, 20.0, "still air, without radiation"),
          memory(0.8, 0.6, 0.95, "hot ceramic"));

  public ModelCoefficients {
    Objects.requireNonNull(spreading, "spreading");
    Objects.requireNonNull(rangeRatio, "rangeRatio");
    Checks.within("spreading", spreading.value(), 0.0, 100.0, "-");
    Checks.within("rangeRatio", rangeRatio.value(), 1e-3, 1e3, "-");
    Checks.within("turns", turns.value(), 0.0, 100.0, "-");
    Checks.within("ventDischarge", ventDischarge.value(), 0.05, 1.0, "-");
    Checks.within("airConvection", airConvection.value(), 0.0, 1000.0, "W/(m2 K)");
    Checks.within("glow", glow.value(), 0.0, 1.0, "-");
  }

  private static Band estimate(double value, double low, double high, String note) {
    return new Band(value, low, high, new Citation(Basis.ESTIMATE, "estimate", note));
  }

  private static Band memory(double value, double low, double high, String note) {
    return new Band(value, low, high, new Citation(Basis.MEMORY, "from memory", note));
  }

  /** The same with another factor on dispersion. */
  public ModelCoefficients withSpreading(Band other) {
    return new ModelCoefficients(other, rangeRatio, turns, ventDischarge, airConvection, glow);
  }

  /** The same with another range ratio. */
  public ModelCoefficients withRangeRatio(Band other) {
    return new ModelCoefficients(spreading, other, turns, ventDischarge, airConvection, glow);
  }

  /** The same with another factor on losses where metal enters and turns. */
  public ModelCoefficients withTurns(Band other) {
    return new ModelCoefficients(spreading, rangeRatio, other, ventDischarge, airConvection, glow);
  }
}
