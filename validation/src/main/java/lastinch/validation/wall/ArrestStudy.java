package lastinch.validation.wall;

import java.util.Optional;
import lastinch.solver.material.MetalTable;
import lastinch.validation.Rows;
import lastinch.validation.Study;
import lastinch.validation.StudyKind;

/** An alloy of which a third freezes in an arrest at the end of its range. */
public final class ArrestStudy implements Study {
  private static final double ARREST = 0.3;
  private final double latent;

  /** The study as it should be. */
  public ArrestStudy() {
    this(190e3);
  }

  private ArrestStudy(double latent) {
    this.latent = latent;
  }

  @Override
  public String title() {
    return "Freezing over a range with 30 % left for the arrest at its end";
  }

  @Override
  public StudyKind kind() {
    return StudyKind.EXACT;
  }

  @Override
  public String source() {
    return "Similarity solution for a solid share straight in temperature, computed for these"
        + " figures; beside it Tien and Geiger, J. Heat Transfer 89, 1967 (from memory), whose"
        + " solid share is straight in distance";
  }

  @Override
  public String setting() {
    return "8000 kg/m3; solid 70 W/(m K) and 420 J/(kg K), mush 60 and 440; 190 kJ/kg, 70 % of it"
        + " between 1000 and 850 degC, the rest at 850; liquid at 1000, wall at 500 degC; 10 s";
  }

  @Override
  public String note() {
    return "1 % of the fronts. Tien and Geiger's own assumption differs, which puts their front"
        + " 0.8 % off: 2 % for it. Half the latent heat is 8 % and more off.";
  }

  @Override
  public void compare(Rows rows) {
    DeepMetal deep = DeepMetal.onFixedWall(metal(), 8000.0, 500.0, 90e-3, 900, 1000.0);
    deep.run(10.0, 4000);
    double front = deep.frozenThrough(ARREST);
    rows.share("fully frozen to", "mm", 12.6178646, front, 0.01);
    double fivePercent = 1000.0 - 150.0 * 0.05 / (1.0 - ARREST);
    rows.share("5 % frozen to", "mm", 25.4218413, deep.depthOf(fivePercent), 0.01);
    rows.share("fully frozen to, by Tien and Geiger", "mm", 12.5164099, front, 0.02);
  }

  private MetalTable metal() {
    double mush = 440.0 * 150.0 + latent * (1.0 - ARREST);
    double solid = mush + latent * ARREST;
    double ice = Bench.ICE;
    return MetalTable.byPoints(
        new double[] {-solid - 420.0 * 450.0, -solid, -mush, -mush, 0.0, 0.0, 480.0 * 100.0},
        new double[] {
          400.0 + ice,
          850.0 + ice,
          850.0 + ice,
          850.0 + ice,
          1000.0 + ice,
          1000.0 + ice,
          1100.0 + ice
        },
        new double[] {1.0, 1.0, 1.0 - ARREST, 1.0 - ARREST, 0.0, 0.0, 0.0},
        new double[] {70.0, 70.0, 70.0, 60.0, 60.0, 40.0, 40.0},
        mush / 4000.0);
  }

  @Override
  public Optional<Study> spoiled() {
    return Optional.of(new ArrestStudy(95e3));
  }
}
