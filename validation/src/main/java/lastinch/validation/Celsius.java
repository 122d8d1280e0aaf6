package lastinch.validation;

import lastinch.cases.units.Dimension;

/** The scale in which studies state their heats. */
public final class Celsius {
  /** Zero of the scale [K]. */
  public static final double ZERO = Dimension.HEAT.unit("degC").orElseThrow().toSi(0.0);

  private Celsius() {}
}
