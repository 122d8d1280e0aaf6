package lastinch.cases.house;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.GeneralCodingRules.ACCESS_STANDARD_STREAMS;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;
import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchRule;

/** What the case files' side may know and touch. */
@AnalyzeClasses(packages = "lastinch.cases", importOptions = ImportOption.DoNotIncludeTests.class)
class CasesArchitectureTest {
  @ArchTest
  static final ArchRule NO_CYCLES =
      slices()
          .matching("lastinch.cases.(*)..")
          .should()
          .beFreeOfCycles()
          .because("nothing points back up");

  @ArchTest
  static final ArchRule KNOWS_DESCRIPTIONS_NOT_PHYSICS =
      noClasses()
          .should()
          .dependOnClassesThat()
          .resideInAnyPackage(
              "lastinch.ui..",
              "lastinch.validation..",
              "lastinch.solver.numerics..",
              "lastinch.solver.physics..",
              "lastinch.solver.wall..",
              "lastinch.solver.inlet..",
              "lastinch.solver.network..",
              "lastinch.solver.plane..",
              "lastinch.solver.solidification..")
          .because("cases describe a job in foundry words; how it is computed is not theirs");

  @ArchTest
  static final ArchRule NOTHING_IS_PRINTED =
      noClasses()
          .should(ACCESS_STANDARD_STREAMS)
          .orShould()
          .callMethod(Throwable.class, "printStackTrace")
          .because("problems are collected and handed up; the command line prints them");

  @ArchTest
  static final ArchRule NO_CLOCK_NO_CHANCE =
      noClasses()
          .should()
          .callMethod(System.class, "currentTimeMillis")
          .orShould()
          .callMethod(System.class, "nanoTime")
          .orShould()
          .dependOnClassesThat()
          .areAssignableTo(java.util.Random.class)
          .because("the same file always means the same job");

  @ArchTest
  static final ArchRule NO_DRAWER_CLASSES =
      classes()
          .should()
          .haveSimpleNameNotEndingWith("Utils")
          .andShould()
          .haveSimpleNameNotEndingWith("Util")
          .andShould()
          .haveSimpleNameNotEndingWith("Helper")
          .andShould()
          .haveSimpleNameNotEndingWith("Manager")
          .andShould()
          .haveSimpleNameNotStartingWith("Abstract")
          .because("a class is named after what it is");

  @ArchTest
  static void theScanSawTheCases(JavaClasses seen) {
    assertThat(seen).hasSizeGreaterThan(20);
    assertThat(seen).anyMatch(c -> c.getPackageName().equals("lastinch.cases.units"));
    assertThat(seen).anyMatch(c -> c.getPackageName().equals("lastinch.cases.format"));
  }
}
