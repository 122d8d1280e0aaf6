package lastinch.validation.wall;

import java.util.Optional;
import lastinch.solver.material.MetalTable;
import lastinch.validation.Rows;
import lastinch.validation.Study;
import lastinch.validation.StudyCurve;
import lastinch.validation.StudyKind;

/** An alloy that freezes over a range, on a wall that stays at its heat. */
public final class FreezingRangeStudy implements Study {
  private final double latent;

  /** The study as it should be. */
  public FreezingRangeStudy() {
    this(190e3);
  }

  private FreezingRangeStudy(double latent) {
    this.latent = latent;
  }

  @Override
  public String title() {
    return "Freezing over a range: both fronts and the profile after 10 s";
  }

  @Override
  public StudyKind kind() {
    return StudyKind.EXACT;
  }

  @Override
  public String source() {
    return "Cho and Sunderland 1969 (three regions, solid share straight in temperature); figures"
        + " computed from the similarity solution";
  }

  @Override
  public String setting() {
    return "8000 kg/m3; solid 70 W/(m K) and 420 J/(kg K), mush 60 and 440, liquid 40 and 480; 190"
        + " kJ/kg from 1000 to 850 degC; start 1050, wall 500 degC";
  }

  @Override
  public String note() {
    return "1 % of the fronts, 3 K of 550 K; half the latent heat is 8 % and more off.";
  }

  @Override
  public void compare(Rows rows) {
    DeepMetal deep = DeepMetal.onFixedWall(metal(), 8000.0, 500.0, 80e-3, 800, 1050.0);
    deep.run(10.0, 4000);
    rows.share("fully frozen to", "mm", 11.8447687, deep.depthOf(850.0), 0.01);
    rows.share("freezing begun to", "mm", 21.8636697, deep.depthOf(1000.0), 0.01);
    double[] depth = {2.0, 5.0, 10.0, 20.0, 30.0};
    double[] celsius = {562.331592, 654.531510, 800.107381, 989.394188, 1035.49412};
    StudyCurve curve = rows.curve("Heat in the metal after 10 s", "depth [mm]", "degC");
    for (int i = 0; i < depth.length; i++) {
      curve.point(depth[i], celsius[i], deep.celsiusAt(depth[i]));
      rows.within(depth[i] + " mm deep", "degC", celsius[i], deep.celsiusAt(depth[i]), 3.0);
    }
  }

  private MetalTable metal() {
    double solid = 440.0 * 150.0 + latent;
    return MetalTable.byPoints(
        new double[] {-solid - 420.0 * 450.0, -solid, -solid, 0.0, 0.0, 480.0 * 100.0},
        new double[] {
          400.0 + Bench.ICE,
          850.0 + Bench.ICE,
          850.0 + Bench.ICE,
          1000.0 + Bench.ICE,
          1000.0 + Bench.ICE,
          1100.0 + Bench.ICE
        },
        new double[] {1.0, 1.0, 1.0, 0.0, 0.0, 0.0},
        new double[] {70.0, 70.0, 60.0, 60.0, 40.0, 40.0},
        solid / 4000.0);
  }

  @Override
  public Optional<Study> spoiled() {
    return Optional.of(new FreezingRangeStudy(95e3));
  }
}
