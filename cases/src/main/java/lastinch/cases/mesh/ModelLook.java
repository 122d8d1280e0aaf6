package lastinch.cases.mesh;

import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;
import lastinch.cases.format.Problem;
import lastinch.cases.format.Problems;
import lastinch.cases.units.Saying;
import lastinch.solver.casting.GapGrid;
import lastinch.solver.casting.Station;
import lastinch.solver.geometry.solid.CellSize;
import lastinch.solver.geometry.solid.PartOrientation;
import lastinch.solver.geometry.solid.ShapeReport;
import lastinch.solver.geometry.solid.SlicedPart;
import lastinch.solver.geometry.solid.UndercutAnalysis;

/**
 * A model looked over: checked, laid into the mould, mapped and cut.
 *
 * @param checks what is the matter with its surface; its points are in metres, scale counted in
 * @param unit what one unit of the file was taken for
 * @param wish how it was to lie
 * @param pose how it lies
 * @param survey its map, sizes and stations
 * @param cell size of the cells of the map [m]
 */
public record ModelLook(
    MeshChecks checks,
    MeshUnit unit,
    PartOrientation.Wish wish,
    PartOrientation pose,
    ShapeReport survey,
    double cell) {
  /** More lines than this share that do not close leave the gap unknown; our choice. */
  public static final double MOST_TORN = 0.005;

  private static final double LEAST = 5e-3;
  private static final double MOST = 5.0;

  /** Boxes and faces that are looked at in some 10 s, at 20 ns each as measured; our choice. */
  private static final double MOST_LOOKS = 5e8;

  public ModelLook {
    Objects.requireNonNull(checks, "checks");
    Objects.requireNonNull(unit, "unit");
  }

  /**
   * Looks a model over.
   *
   * @param mesh as read
   * @param unit what one unit is
   * @param scale larger or smaller than drawn [-]
   * @param wish how it is to lie
   * @param wantedCell size of the cells of the map [m]; the usual one when absent
   * @param file its name for what has to be put right
   * @param problems takes what stands in the way
   */
  public static Optional<ModelLook> of(
      Mesh mesh,
      MeshUnit unit,
      double scale,
      PartOrientation.Wish wish,
      OptionalDouble wantedCell,
      String file,
      Problems problems) {
    double factor = unit.metres() * scale;
    double longest = mesh.longest() * factor;
    if (!(longest >= LEAST && longest <= MOST)) {
      Saying sentence = Saying.of("wrong.longestSideModelWould", millimetres(longest));
      problems.add(Problem.ofFile(file, sentence));
      return Optional.empty();
    }
    MeshChecks checks = MeshChecks.of(mesh.scaled(factor));
    PartOrientation pose =
        PartOrientation.of(checks.mesh().points(), checks.mesh().corners(), wish);
    double cell = wantedCell.orElse(CellSize.usual(pose.solid().high(0)));
    if (ShapeReport.cells(pose.solid(), cell) > GapGrid.MOST_CELLS) {
      String usual = millimetres(CellSize.usual(pose.solid().high(0)));
      Saying sentence = Saying.of("wrong.squaresMmTooFine", millimetres(cell), usual);
      problems.add(Problem.ofFile(file, sentence));
      return Optional.empty();
    }
    if (ShapeReport.looks(pose.solid(), cell) > MOST_LOOKS) {
      problems.add(Problem.ofFile(file, "wrong.soManyFacesModel"));
      return Optional.empty();
    }
    Optional<ShapeReport> survey = ShapeReport.of(pose.solid(), cell);
    if (survey.isEmpty()) {
      problems.add(Problem.ofFile(file, "wrong.noInsideModelNo"));
      return Optional.empty();
    }
    double thickest = survey.get().thickest().value();
    if (thickest > Station.MOST_THICK) {
      problems.add(
          Problem.ofFile(
              file,
              "wrong.modelMmThickOne",
              millimetres(thickest),
              millimetres(Station.MOST_THICK)));
      return Optional.empty();
    }
    return Optional.of(new ModelLook(checks, unit, wish, pose, survey.get(), cell));
  }

  /** Its stations. */
  public SlicedPart drawn() {
    return survey.drawn();
  }

  /** Whether its surface has holes that leave the gap unknown. */
  public boolean isTorn() {
    return survey.torn() > MOST_TORN || !(survey.volume() > 0.0);
  }

  /** Whether faces are missing, so that weight and thickness near them are not to be trusted. */
  public boolean isOpen() {
    return checks.openEdges() > 0;
  }

  /** Volume of the solid [m3]; by the map where the surface is open. */
  public double volume() {
    return isOpen() ? survey.map().totalVolume() : survey.volume();
  }

  /** Whether the parting plane that was asked for lies above the piece. */
  public boolean isPartedOutside() {
    return wish.parting().isPresent()
        && wish.parting().getAsDouble() > pose.height() * (1.0 + 1e-6);
  }

  /** Where it locks a mould of two halves, square by square of its map. */
  public UndercutAnalysis locking() {
    return UndercutAnalysis.of(pose.solid(), survey.map().grid());
  }

  private static String millimetres(double metres) {
    double mm = metres * 1e3;
    return mm >= 10.0 ? Long.toString(Math.round(mm)) : Double.toString(Math.round(mm * 1e2) / 1e2);
  }
}
