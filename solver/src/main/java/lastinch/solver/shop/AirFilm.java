package lastinch.solver.shop;

/** Heat passed from a hot standing surface to the air and walls round it. */
@FunctionalInterface
interface AirFilm {
  /**
   * Film coefficient, convection and radiation together [W/(m2 K)].
   *
   * @param surface temperature of the surface [K]
   * @param air temperature of air and walls [K]
   */
  double coefficient(double surface, double air);

  /**
   * Still air along an upright surface, radiation to walls of air temperature.
   *
   * <p>Convection by the short forms for air at 1 atm, the larger of {@code 1.42 (dT/L)^(1/4)}
   * (laminar) and {@code 1.31 dT^(1/3)} (turbulent): W. H. McAdams, Heat Transmission, 3rd ed.
   * 1954, ch. 7, from memory.
   *
   * @param tall height of the surface [m]
   * @param emissivity [-]
   */
  static AirFilm still(double tall, double emissivity) {
    return (surface, air) -> {
      double difference = Math.max(0.0, surface - air);
      double laminar = 1.42 * StrictMath.pow(difference / tall, 0.25);
      double turbulent = 1.31 * StrictMath.cbrt(difference);
      return Math.max(laminar, turbulent) + radiation(surface, air, emissivity);
    };
  }

  /**
   * Still air over a surface that faces up, radiation to walls of air temperature.
   *
   * <p>Convection by the short form for air at 1 atm, {@code 1.52 dT^(1/3)} (turbulent, whatever
   * the size): W. H. McAdams, Heat Transmission, 3rd ed. 1954, ch. 7, from memory.
   *
   * @param emissivity [-]
   */
  static AirFilm facingUp(double emissivity) {
    return (surface, air) ->
        1.52 * StrictMath.cbrt(Math.max(0.0, surface - air)) + radiation(surface, air, emissivity);
  }

  private static double radiation(double surface, double air, double emissivity) {
    return emissivity * 5.670374419e-8 * (surface * surface + air * air) * (surface + air);
  }
}
