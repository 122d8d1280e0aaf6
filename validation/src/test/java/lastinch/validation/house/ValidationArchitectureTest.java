package lastinch.validation.house;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchRule;

/** What the published comparisons may know. */
@AnalyzeClasses(
    packages = "lastinch.validation",
    importOptions = ImportOption.DoNotIncludeTests.class)
class ValidationArchitectureTest {
  @ArchTest
  static final ArchRule KNOWS_NO_SCREEN =
      noClasses()
          .should()
          .dependOnClassesThat()
          .resideInAnyPackage("lastinch.ui..")
          .because("a comparison judges the solver, not how it is shown");

  @ArchTest
  static void theScanSawTheComparisons(JavaClasses seen) {
    assertThat(seen).hasSizeGreaterThan(15);
  }
}
