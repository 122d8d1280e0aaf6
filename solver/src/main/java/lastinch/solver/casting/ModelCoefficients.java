package lastinch.solver.casting;

import java.util.Objects;
import lastinch.solver.material.Band;
import lastinch.solver.material.Basis;
import lastinch.solver.material.Checks;
import lastinch.solver.material.Citation;

/**
 * Figures in the laws of the sum itself that nobody has measured for metal in a thin mould. They
 * belong to every pour, whatever its metal and mould.
 *
 * @param spreading factor on how heat spreads along the flowing metal [-]
 * @param rangeRatio freezing range over the temperature drop across a growing skin at which half of
 *     the new solid rides along as mush [-]
 */
public record ModelCoefficients(Band spreading, Band rangeRatio) {
  /** What is taken when nothing else is said: order-of-magnitude models, with that much leeway. */
  public static final ModelCoefficients USUAL =
      new ModelCoefficients(
          new Band(
              1.0,
              0.5,
              2.0,
              new Citation(
                  Basis.ESTIMATE, "estimate", "dispersion of Taylor and Aris at a moving front")),
          new Band(
              3.0,
              1.0,
              9.0,
              new Citation(Basis.ESTIMATE, "estimate", "separation times or divided by 3")));

  public ModelCoefficients {
    Objects.requireNonNull(spreading, "spreading");
    Objects.requireNonNull(rangeRatio, "rangeRatio");
    Checks.within("spreading", spreading.value(), 0.0, 100.0, "-");
    Checks.within("rangeRatio", rangeRatio.value(), 1e-3, 1e3, "-");
  }
}
