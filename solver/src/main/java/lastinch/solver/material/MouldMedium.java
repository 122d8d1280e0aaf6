package lastinch.solver.material;

import java.util.Objects;

/**
 * What the mould is made of.
 *
 * @param name as printed
 * @param family kind of mould, decides which words of a case apply
 * @param conductivity [W/(m K)] against temperature [K]
 * @param conductivityFactor band on the whole conductivity curve [-], best 1
 * @param specificHeat [J/(kg K)] against temperature [K]
 * @param density bulk [kg/m3]
 * @param porosity [-], 0 to 1
 * @param permeability [m2], 0 for a tight mould
 * @param contactLiquid heat passed per degree while the metal is liquid at the wall [W/(m2 K)]
 * @param contactGap the same once a frozen skin has drawn back [W/(m2 K)]
 * @param skinFrees largest solid share at which contact is still that of liquid [-]
 * @param gapOpen solid share at which the gap is fully open [-]
 * @param ceiling hottest the medium is used at [K]
 */
public record MouldMedium(
    String name,
    MouldFamily family,
    Curve conductivity,
    Band conductivityFactor,
    Curve specificHeat,
    Band density,
    double porosity,
    Band permeability,
    Band contactLiquid,
    Band contactGap,
    Band skinFrees,
    Band gapOpen,
    Band ceiling) {

  public MouldMedium {
    Objects.requireNonNull(name, "name");
    Objects.requireNonNull(family, "family");
    Objects.requireNonNull(conductivity, "conductivity");
    Objects.requireNonNull(specificHeat, "specificHeat");
    Checks.within("conductivityFactor", conductivityFactor.value(), 0.05, 20.0, "-");
    Checks.within("density", density.value(), 100.0, 25000.0, "kg/m3");
    Checks.within("porosity", porosity, 0.0, 1.0, "-");
    Checks.within("permeability", permeability.value(), 0.0, 1e-6, "m2");
    Checks.within("contactLiquid", contactLiquid.value(), 1.0, 1e9, "W/(m2 K)");
    Checks.within("contactGap", contactGap.value(), 0.0, contactLiquid.value(), "W/(m2 K)");
    Checks.within("skinFrees", skinFrees.value(), 0.0, 1.0, "-");
    Checks.within("gapOpen", gapOpen.value(), skinFrees.value(), 1.0, "-");
    Checks.within("ceiling", ceiling.value(), 300.0, 3000.0, "K");
  }
}
