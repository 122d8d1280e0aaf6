package lastinch.validation.flow;

import java.util.Optional;
import lastinch.solver.physics.AirEscape;
import lastinch.solver.physics.DryAir;
import lastinch.validation.Rows;
import lastinch.validation.Study;
import lastinch.validation.StudyKind;

/** Air through a vent, through a porous wall, and shut in. */
public final class AirStudy implements Study {
  private final double discharge;

  /** The study as it should be. */
  public AirStudy() {
    this(AirEscape.SLIT_DISCHARGE);
  }

  private AirStudy(double discharge) {
    this.discharge = discharge;
  }

  @Override
  public String title() {
    return "Air through a vent and through a porous wall";
  }

  @Override
  public StudyKind kind() {
    return StudyKind.EXACT;
  }

  @Override
  public String source() {
    return "White, Fluid Mechanics (from memory): isentropic nozzle, Darcy flow of an ideal gas. Viscosity of air: U.S. Standard Atmosphere 1976, from memory";
  }

  @Override
  public String setting() {
    return "1 mm hole, discharge 0.8, gas 700 degC; wall 1e-13 m2, 20 mm, 50 cm2, viscosity 4.2e-5 Pa s; air outside 101325 Pa";
  }

  @Override
  public String note() {
    return "1e-6; viscosity to 0.02 %. Without a discharge coefficient the hole passes 25 % more.";
  }

  @Override
  public void compare(Rows rows) {
    double hot = 973.15;
    double cool = DryAir.SHOP;
    double opening = discharge * Math.PI * 0.25e-6;
    double[] pressure = {102000.0, 105000.0, 110000.0, 200000.0};
    double[] flow = {1.39005838e-5, 3.24003747e-5, 4.96922923e-5, 1.62802652e-4};
    for (int i = 0; i < pressure.length; i++) {
      double got = AirEscape.orificeFlow(opening, pressure[i], hot, DryAir.OPEN_AIR, cool);
      rows.share("hole at " + pressure[i] + " Pa", "kg/s", flow[i], got, 1e-6);
    }
    rows.within("choking ratio", "", 0.528281788, AirEscape.CHOKING_RATIO, 1e-9);
    double shape = 50e-4 / 0.020;
    double scale = DryAir.viscosity(hot) / 4.2e-5;
    double mass = AirEscape.mouldFlow(1e-13, shape, DryAir.OPEN_AIR + 5000.0, hot, DryAir.OPEN_AIR);
    double volume = scale * mass / DryAir.density(DryAir.OPEN_AIR + 5000.0, hot);
    rows.share("wall at 5 kPa, inlet volume", "m3/s", 2.90621186e-6, volume, 1e-6);
    rows.share("viscosity at 15 degC", "Pa s", 1.7894e-5, DryAir.viscosity(288.15), 2e-4);
    double shut =
        1.0 - DryAir.density(DryAir.OPEN_AIR, hot) / DryAir.density(DryAir.OPEN_AIR + 5000.0, hot);
    rows.within("shut pocket under 5 kPa gives up", "", 0.0470256290, shut, 1e-9);
  }

  @Override
  public Optional<Study> spoiled() {
    return Optional.of(new AirStudy(1.0));
  }
}
