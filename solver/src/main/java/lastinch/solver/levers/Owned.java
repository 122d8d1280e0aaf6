package lastinch.solver.levers;

import java.util.List;
import java.util.Objects;
import java.util.OptionalDouble;
import lastinch.solver.material.Alloy;
import lastinch.solver.material.Band;
import lastinch.solver.material.MouldMedium;

/**
 * What there is to choose from and what the shop has, as values; where they come from is somebody
 * else's business.
 *
 * @param marks what the person's instruments show
 * @param gateCutters widths [m]
 * @param spruePins round pins
 * @param strips runner sections
 * @param largestCrucible weight of this metal it holds full [kg]
 * @param hottestInvestment that the powder's maker allows [K]
 * @param metals alloys worth considering instead, with the mould as it meets each
 * @param moulds mould materials worth considering instead, as each meets the metal of the job
 */
public record Owned(
    Marks marks,
    List<Double> gateCutters,
    List<Pin> spruePins,
    List<Strip> strips,
    OptionalDouble largestCrucible,
    OptionalDouble hottestInvestment,
    List<OtherMetal> metals,
    List<OtherMould> moulds) {
  public Owned {
    Objects.requireNonNull(marks, "marks");
    gateCutters = List.copyOf(gateCutters);
    spruePins = List.copyOf(spruePins);
    strips = List.copyOf(strips);
    Objects.requireNonNull(largestCrucible, "largestCrucible");
    Objects.requireNonNull(hottestInvestment, "hottestInvestment");
    metals = List.copyOf(metals);
    moulds = List.copyOf(moulds);
  }

  /** A shop of which nothing is known. */
  public static Owned nothing(Marks marks) {
    return new Owned(
        marks,
        List.of(),
        List.of(),
        List.of(),
        OptionalDouble.empty(),
        OptionalDouble.empty(),
        List.of(),
        List.of());
  }

  /** A pin; {@code top} and {@code foot} are diameters [m]. */
  public record Pin(double top, double foot) {}

  /** A runner section [m]. */
  public record Strip(double wide, double deep) {}

  /** A metal, and the mould material as it meets that metal. */
  public record OtherMetal(Alloy alloy, MouldMedium medium) {
    public OtherMetal {
      Objects.requireNonNull(alloy, "alloy");
      Objects.requireNonNull(medium, "medium");
    }
  }

  /**
   * A mould material.
   *
   * @param name as a person says it
   * @param medium as it meets the metal of the job
   * @param usualHeat at which it is poured [K]
   * @param wall thickness of a shell [m], 0 for others
   * @param partingCrack between its halves [m], 0 for others
   */
  public record OtherMould(
      String name, MouldMedium medium, Band usualHeat, Band wall, Band partingCrack) {
    public OtherMould {
      Objects.requireNonNull(name, "name");
      Objects.requireNonNull(medium, "medium");
      Objects.requireNonNull(usualHeat, "usualHeat");
      Objects.requireNonNull(wall, "wall");
      Objects.requireNonNull(partingCrack, "partingCrack");
    }
  }
}
