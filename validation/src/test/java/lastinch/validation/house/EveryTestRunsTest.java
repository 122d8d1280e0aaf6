package lastinch.validation.house;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.methods;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.GeneralCodingRules.ACCESS_STANDARD_STREAMS;
import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.base.DescribedPredicate;
import com.tngtech.archunit.core.domain.JavaAccess;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.domain.JavaCodeUnit;
import com.tngtech.archunit.core.domain.JavaMethod;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.lang.ArchCondition;
import com.tngtech.archunit.lang.ArchRule;
import com.tngtech.archunit.lang.ConditionEvents;
import com.tngtech.archunit.lang.SimpleConditionEvent;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Disabled;
import org.junit.jupiter.api.Test;
import org.junit.platform.commons.annotation.Testable;

/** Tests of all four modules: each one is run, asserts something and prints nothing. */
class EveryTestRunsTest {
  private static final List<String> MODULES = List.of("solver", "cases", "ui", "validation");

  private static final DescribedPredicate<JavaMethod> ARE_TESTS =
      DescribedPredicate.describe("are tests", m -> m.isMetaAnnotatedWith(Testable.class));

  private static JavaClasses tests;

  @BeforeAll
  static void readAllTests() {
    tests = tests();
  }

  @Test
  void classesWithTestsHaveTheNameThatIsRun() {
    ArchRule rule =
        methods()
            .that(ARE_TESTS)
            .should(
                hold(
                    "be in a class named *Test",
                    m -> outermost(m.getOwner()).getSimpleName().endsWith("Test")))
            .because("the build runs classes named *Test and passes others by in silence");
    rule.check(tests);
  }

  @Test
  void everyTestAsserts() {
    ArchRule rule =
        methods()
            .that(ARE_TESTS)
            .should(hold("assert something", m -> asserts(m, new HashSet<>())))
            .because("a test that asserts nothing cannot fail");
    rule.check(tests);
  }

  @Test
  void noTestPrintsOrIsSwitchedOff() {
    ArchRule silent =
        noClasses()
            .should(ACCESS_STANDARD_STREAMS)
            .because("what a test has to say is its verdict");
    silent.check(tests);
    ArchRule on =
        methods()
            .that(ARE_TESTS)
            .should(
                hold(
                    "be switched on",
                    m ->
                        !m.isAnnotatedWith(Disabled.class)
                            && !m.getOwner().isAnnotatedWith(Disabled.class)))
            .because("a test that is switched off looks green");
    on.check(tests);
  }

  private static JavaClasses tests() {
    List<Path> paths =
        MODULES.stream().map(m -> Path.of("..", m, "target", "test-classes")).toList();
    for (Path path : paths) {
      assertThat(Files.isDirectory(path))
          .as("%s is there; this test needs the whole house built: mvn verify", path)
          .isTrue();
    }
    JavaClasses found = new ClassFileImporter().importPaths(paths);
    assertThat(found).as("an empty scan must not pass").hasSizeGreaterThan(45);
    return found;
  }

  private static JavaClass outermost(JavaClass type) {
    return type.getEnclosingClass().map(EveryTestRunsTest::outermost).orElse(type);
  }

  /** Whether a method, or one of our test methods it calls, calls an assertion. */
  private static boolean asserts(JavaCodeUnit unit, Set<String> seen) {
    if (!seen.add(unit.getFullName())) {
      return false;
    }
    for (JavaAccess<?> access : unit.getAccessesFromSelf()) {
      String owner = access.getTargetOwner().getFullName();
      if (owner.startsWith("org.assertj.core.api.")
          || (owner.startsWith("com.tngtech.archunit.lang.") && access.getName().equals("check"))) {
        return true;
      }
      if (isTestCode(access.getTargetOwner()) && calls(access, seen)) {
        return true;
      }
    }
    return false;
  }

  private static boolean isTestCode(JavaClass type) {
    return type.getSource()
        .map(s -> s.getUri().toString().contains("/test-classes/"))
        .orElse(false);
  }

  private static boolean calls(JavaAccess<?> access, Set<String> seen) {
    return access.getTargetOwner().getCodeUnits().stream()
        .filter(u -> u.getName().equals(access.getName()))
        .anyMatch(u -> asserts(u, seen));
  }

  private static ArchCondition<JavaMethod> hold(
      String what, java.util.function.Predicate<JavaMethod> condition) {
    return new ArchCondition<>(what) {
      @Override
      public void check(JavaMethod method, ConditionEvents events) {
        events.add(
            new SimpleConditionEvent(
                method, condition.test(method), method.getFullName() + " should " + what));
      }
    };
  }
}
