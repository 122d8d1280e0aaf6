package lastinch.cases.catalogue;

import java.util.Objects;
import lastinch.solver.material.Band;

/**
 * What a flask is made of.
 *
 * @param name as printed
 * @param conductivity [W/(m K)]
 * @param density [kg/m3]
 * @param specificHeat [J/(kg K)]
 * @param expansion growth per length and degree, mean up to the heat of a burnout [1/K]
 */
public record FlaskSteel(
    String name, Band conductivity, Band density, Band specificHeat, Band expansion) {
  public FlaskSteel {
    Objects.requireNonNull(name, "name");
    Objects.requireNonNull(conductivity, "conductivity");
    Objects.requireNonNull(density, "density");
    Objects.requireNonNull(specificHeat, "specificHeat");
    Objects.requireNonNull(expansion, "expansion");
  }
}
