package lastinch.validation.benchmark;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import lastinch.cases.catalogue.Catalogue;
import lastinch.cases.catalogue.CatalogueMaterials;
import lastinch.cases.plan.CaseReader;
import lastinch.cases.plan.OwnedThings;
import lastinch.cases.plan.Plan;
import lastinch.cases.plan.ReadResult;
import lastinch.cases.units.DisplayUnits;
import lastinch.solver.levers.Lever;
import lastinch.solver.levers.Levers;

/**
 * A plan of the demo folder, read once.
 *
 * @param plan the plan
 * @param levers what can be moved in it
 */
record DemoPlan(Plan plan, List<Lever> levers) {
  private static final Path DEMO = Path.of("cases", "demo");

  static DemoPlan read(String file) {
    Path path = demo().resolve(file);
    CatalogueMaterials materials = new CatalogueMaterials(Catalogue.builtIn());
    ReadResult read = CaseReader.read(path, materials);
    if (!(read instanceof ReadResult.Sound sound)) {
      throw new IllegalStateException(path + ": " + read);
    }
    Plan plan = sound.plan();
    return new DemoPlan(
        plan, Levers.of(plan.pourCase(), OwnedThings.of(plan, materials, DisplayUnits.METRIC)));
  }

  Lever lever(String key) {
    return Levers.find(levers, key, "").orElseThrow();
  }

  /** The demo folder, from wherever in the project this was started. */
  private static Path demo() {
    Path folder = Path.of("").toAbsolutePath();
    while (folder != null && !Files.isDirectory(folder.resolve(DEMO))) {
      folder = folder.getParent();
    }
    if (folder == null) {
      throw new IllegalStateException("no " + DEMO + " above the working folder");
    }
    return folder.resolve(DEMO);
  }
}
