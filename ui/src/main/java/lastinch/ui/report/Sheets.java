package lastinch.ui.report;

import java.util.ArrayList;
import java.util.List;
import lastinch.cases.catalogue.Catalogue;
import lastinch.cases.catalogue.MaterialSheet;
import lastinch.cases.plan.Materials;
import lastinch.solver.casting.Flask;
import lastinch.solver.casting.PourCase;

/** Sheets of the materials that a case uses. */
public final class Sheets {
  private Sheets() {}

  /** Metal, mould material and the figures that hold for every pour. */
  public static List<MaterialSheet> of(PourCase job, Catalogue catalogue) {
    List<MaterialSheet> sheets = new ArrayList<>();
    catalogue
        .findAlloy(job.metal().alloy().name())
        .ifPresent(name -> sheets.add(catalogue.alloySheet(name)));
    catalogue
        .findMedium(job.mould().medium().name())
        .ifPresent(name -> sheets.add(catalogue.mediumSheet(name)));
    if (job.mould().flask().isPresent()) {
      catalogue.steelNames().stream()
          .filter(name -> isOf(catalogue.steel(name), job.mould().flask().get()))
          .findFirst()
          .ifPresent(name -> sheets.add(catalogue.steelSheet(name)));
    }
    sheets.add(catalogue.commonSheet());
    return sheets;
  }

  /** A case keeps the figures of its steel, not the name. */
  private static boolean isOf(Materials.FlaskSteel steel, Flask flask) {
    return steel.density() == flask.steelDensity()
        && steel.specificHeat() == flask.steelSpecificHeat();
  }
}
