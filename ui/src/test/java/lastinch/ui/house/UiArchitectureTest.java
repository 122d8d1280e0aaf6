package lastinch.ui.house;

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

/** What the parts that people see may know and touch. */
@AnalyzeClasses(packages = "lastinch.ui", importOptions = ImportOption.DoNotIncludeTests.class)
class UiArchitectureTest {
  @ArchTest
  static final ArchRule NO_CYCLES =
      slices()
          .matching("lastinch.ui.(*)..")
          .should()
          .beFreeOfCycles()
          .because("nothing points back up");

  @ArchTest
  static final ArchRule ONLY_THE_COMMAND_LINE_PRINTS =
      noClasses()
          .that()
          .resideOutsideOfPackage("lastinch.ui.cli..")
          .should(ACCESS_STANDARD_STREAMS)
          .orShould()
          .callMethod(Throwable.class, "printStackTrace")
          .because("one place decides what a person at a terminal sees");

  @ArchTest
  static final ArchRule ONLY_THE_COMMAND_LINE_EXITS =
      noClasses()
          .that()
          .resideOutsideOfPackage("lastinch.ui.cli..")
          .should()
          .callMethod(System.class, "exit", int.class)
          .orShould()
          .callMethod(Runtime.class, "halt", int.class)
          .because("one place decides the exit code");

  @ArchTest
  static final ArchRule ONLY_CHARTS_KNOW_THE_CHART_LIBRARY =
      noClasses()
          .that()
          .resideOutsideOfPackage("lastinch.ui.chart..")
          .should()
          .dependOnClassesThat()
          .resideInAnyPackage("org.jfree..", "org.apache.batik..")
          .because("a chart is one class, the same for command line, report and desktop");

  @ArchTest
  static final ArchRule RUNS_GO_THROUGH_THE_FACADE =
      noClasses()
          .should()
          .dependOnClassesThat()
          .resideInAnyPackage(
              "lastinch.validation..",
              "lastinch.solver.numerics..",
              "lastinch.solver.physics..",
              "lastinch.solver.wall..",
              "lastinch.solver.inlet..",
              "lastinch.solver.network..",
              "lastinch.solver.plane..",
              "lastinch.solver.solidification..")
          .because("there is one way to run a case");

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
  static void theScanSawTheUi(JavaClasses seen) {
    assertThat(seen).hasSizeGreaterThan(20);
    assertThat(seen).anyMatch(c -> c.getPackageName().equals("lastinch.ui.cli"));
  }
}
