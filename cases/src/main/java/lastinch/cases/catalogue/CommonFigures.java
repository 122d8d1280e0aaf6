package lastinch.cases.catalogue;

import java.util.Objects;
import lastinch.solver.material.Band;

/**
 * Figures that hold for every pour until a case says otherwise.
 *
 * @param skinFrees solid share at the wall above which the skin begins to draw away [-]
 * @param gapOpen solid share at the wall at which the gap is fully open [-]
 * @param rangeRatioScale freezing range over the drop through the skin at which half of the new
 *     solid rides along as mush [-]
 * @param partingCrack width of the leak along the parting outline [m]
 * @param ventDischarge orifice coefficient of a vent [-]
 * @param emissivity of hot surfaces [-]
 * @param crucibleCooling lost from the reading to the lip [K/s]
 * @param lipLoss lost over the lip and in the stream [K]
 * @param airConvection heat passed from an outer surface to still air [W/(m2 K)]
 */
public record CommonFigures(
    Band skinFrees,
    Band gapOpen,
    Band rangeRatioScale,
    Band partingCrack,
    Band ventDischarge,
    Band emissivity,
    Band crucibleCooling,
    Band lipLoss,
    Band airConvection) {
  public CommonFigures {
    Objects.requireNonNull(skinFrees, "skinFrees");
    Objects.requireNonNull(gapOpen, "gapOpen");
    Objects.requireNonNull(rangeRatioScale, "rangeRatioScale");
    Objects.requireNonNull(partingCrack, "partingCrack");
    Objects.requireNonNull(ventDischarge, "ventDischarge");
    Objects.requireNonNull(emissivity, "emissivity");
    Objects.requireNonNull(crucibleCooling, "crucibleCooling");
    Objects.requireNonNull(lipLoss, "lipLoss");
    Objects.requireNonNull(airConvection, "airConvection");
  }
}
