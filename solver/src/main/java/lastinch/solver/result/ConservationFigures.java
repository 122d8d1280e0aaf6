package lastinch.solver.result;

/**
 * Books of the whole run, made by a class that does not see the solver's fluxes.
 *
 * @param metalError imbalance over metal poured [-]
 * @param heatError imbalance over heat brought in [-]
 * @param airError imbalance over air at the start [-]
 * @param workError imbalance of mechanical work over the work done [-]
 * @param poured [kg] out of the crucible
 * @param spilled [kg] over the cup rim
 * @param left [kg] in the crucible
 * @param heatIn brought in by the metal, above mould temperature [J]
 * @param heatInMetal [J]
 * @param heatInMould [J]
 * @param heatToAir [J]
 */
public record ConservationFigures(
    double metalError,
    double heatError,
    double airError,
    double workError,
    double poured,
    double spilled,
    double left,
    double heatIn,
    double heatInMetal,
    double heatInMould,
    double heatToAir) {}
