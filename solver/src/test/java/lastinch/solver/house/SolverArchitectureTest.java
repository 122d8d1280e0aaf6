package lastinch.solver.house;

import static com.tngtech.archunit.base.DescribedPredicate.describe;
import static com.tngtech.archunit.core.domain.JavaAccess.Predicates.targetOwner;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.belongToAnyOf;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.equivalentTo;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.fields;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.members;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.GeneralCodingRules.ACCESS_STANDARD_STREAMS;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;
import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.core.domain.JavaAccess;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.domain.JavaField;
import com.tngtech.archunit.core.domain.JavaModifier;
import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchCondition;
import com.tngtech.archunit.lang.ArchRule;
import com.tngtech.archunit.lang.ConditionEvents;
import com.tngtech.archunit.lang.SimpleConditionEvent;
import java.util.List;
import java.util.Map;
import java.util.Set;
import lastinch.solver.material.Citation;

/** Who may know whom inside the solver, and what none of it may touch. */
@AnalyzeClasses(packages = "lastinch.solver", importOptions = ImportOption.DoNotIncludeTests.class)
class SolverArchitectureTest {
  private static final String ROOT = "lastinch.solver.";
  private static final Set<String> SEEN_BY_DECISIONS =
      Set.of(
          "casting",
          "material",
          "shop",
          "run",
          "filling",
          "result",
          "study",
          "levers",
          "search",
          "uncertainty",
          "diagnosis");

  /** Exact to the last bit on every machine, so harmless. */
  private static final Set<String> EXACT_MATH =
      Set.of(
          "abs",
          "ceil",
          "clamp",
          "copySign",
          "floor",
          "floorDiv",
          "floorMod",
          "fma",
          "getExponent",
          "max",
          "min",
          "multiplyExact",
          "addExact",
          "subtractExact",
          "nextDown",
          "nextUp",
          "rint",
          "round",
          "scalb",
          "signum",
          "sqrt",
          "toIntExact",
          "toRadians",
          "toDegrees",
          "ulp");

  @ArchTest
  static final ArchRule NUMERICS_KNOWS_THE_JDK_ONLY =
      classes()
          .that()
          .resideInAPackage("lastinch.solver.numerics..")
          .should()
          .onlyDependOnClassesThat()
          .resideInAnyPackage("java..", "lastinch.solver.numerics..")
          .because("kernels work on arrays and know no foundry word");

  @ArchTest
  static final ArchRule NETWORK_DOES_NOT_KNOW_PLANE =
      noClasses()
          .that()
          .resideInAPackage("lastinch.solver.network..")
          .should()
          .dependOnClassesThat()
          .resideInAPackage("lastinch.solver.plane..")
          .because("the two solvers check each other only while they share no code of their own");

  @ArchTest
  static final ArchRule PLANE_DOES_NOT_KNOW_NETWORK =
      noClasses()
          .that()
          .resideInAPackage("lastinch.solver.plane..")
          .should()
          .dependOnClassesThat()
          .resideInAPackage("lastinch.solver.network..")
          .because("the two solvers check each other only while they share no code of their own");

  @ArchTest
  static final ArchRule DECISIONS_SEE_RUNS_AND_RESULTS_ONLY =
      noClasses()
          .that()
          .resideInAnyPackage(
              "lastinch.solver.study..",
              "lastinch.solver.levers..",
              "lastinch.solver.search..",
              "lastinch.solver.uncertainty..",
              "lastinch.solver.diagnosis..")
          .should()
          .dependOnClassesThat(
              describe(
                  "solver packages under the facade",
                  SolverArchitectureTest::isHiddenFromDecisions))
          .because("a decision runs a case through the facade, whichever solver answers");

  @ArchTest
  static final ArchRule NO_CYCLES =
      slices()
          .matching("lastinch.solver.(*)..")
          .should()
          .beFreeOfCycles()
          .because("nothing points back up");

  @ArchTest
  static final ArchRule SAME_BITS_ON_EVERY_MACHINE =
      noClasses()
          .should()
          .accessTargetWhere(
              targetOwner(equivalentTo(Math.class))
                  .and(describe("not exact", access -> !isExact(access))))
          .because("Math may differ in the last bit between machines, StrictMath may not");

  @ArchTest
  static final ArchRule NO_CHANCE =
      noClasses()
          .should()
          .dependOnClassesThat(
              belongToAnyOf(
                      java.util.Random.class,
                      java.util.SplittableRandom.class,
                      java.util.concurrent.ThreadLocalRandom.class,
                      java.util.UUID.class)
                  .or(
                      describe(
                          "java.util.random",
                          c -> c.getPackageName().startsWith("java.util.random"))))
          .because("the same case gives the same answer; samples come from fixed sequences");

  @ArchTest
  static final ArchRule NO_CLOCK =
      noClasses()
          .should()
          .callMethod(System.class, "currentTimeMillis")
          .orShould()
          .callMethod(System.class, "nanoTime")
          .orShould()
          .dependOnClassesThat()
          .resideInAPackage("java.time..")
          .because("time in the solver is the time of the pour");

  @ArchTest
  static final ArchRule NO_ORDER_BY_HASH =
      noClasses()
          .should()
          .dependOnClassesThat(belongToAnyOf(java.util.HashMap.class, java.util.HashSet.class))
          .orShould()
          .accessTargetWhere(
              describe("unordered immutable maps and sets", SolverArchitectureTest::isUnordered))
          .because("their order may change from run to run; use lists, enum maps, linked maps");

  @ArchTest
  static final ArchRule NO_FILES =
      noClasses()
          .should()
          .dependOnClassesThat(
              describe(
                  "files and nets",
                  c ->
                      c.getPackageName().startsWith("java.nio.file")
                          || c.getPackageName().startsWith("java.net")
                          || c.getFullName().startsWith("java.io.File")))
          .because("the solver knows no files");

  @ArchTest
  static final ArchRule NO_LOCAL_UNITS =
      members()
          .should()
          .haveNameNotMatching(".*[a-z](Mm|Cm|DegC|DegF|Inch|Percent)([A-Z0-9].*)?")
          .because("SI and kelvin inside; other units end at the boundary");

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
  static final ArchRule CLOSURES_ARE_FINAL_AND_NAME_THEIR_SOURCE =
      classes()
          .that()
          .resideInAPackage("lastinch.solver.physics..")
          .and()
          .areTopLevelClasses()
          .and()
          .doNotHaveSimpleName("package-info")
          .should()
          .haveModifier(JavaModifier.FINAL)
          .andShould(nameTheirSource())
          .because("every law is one small class that says where it comes from");

  @ArchTest
  static final ArchRule NOTHING_IS_PRINTED =
      noClasses()
          .should(ACCESS_STANDARD_STREAMS)
          .orShould()
          .callMethod(Throwable.class, "printStackTrace")
          .orShould()
          .dependOnClassesThat()
          .resideInAnyPackage("java.util.logging..", "org.slf4j..", "java.lang.System$Logger")
          .because("facts go into the result; sentences are made at the boundary");

  @ArchTest
  static final ArchRule DESCRIPTIONS_DO_NOT_CHANGE =
      fields()
          .that()
          .areDeclaredInClassesThat()
          .resideInAnyPackage(
              "lastinch.solver.casting..", "lastinch.solver.material..", "lastinch.solver.result..")
          .and()
          .areDeclaredInClassesThat()
          .haveSimpleNameNotEndingWith("Table")
          .and()
          .areDeclaredInClassesThat()
          .haveSimpleNameNotEndingWith("Builder")
          .should()
          .beFinal()
          .because(
              "what describes a job or its result is immutable; a table may count its use, a"
                  + " builder is not the thing it builds");

  @ArchTest
  static final ArchRule NO_ARRAY_LEAVES_A_DESCRIPTION =
      fields()
          .that()
          .areDeclaredInClassesThat()
          .resideInAnyPackage(
              "lastinch.solver.casting..", "lastinch.solver.material..", "lastinch.solver.result..")
          .and(describe("arrays", (JavaField f) -> f.getRawType().isArray()))
          .should()
          .bePrivate()
          .because("an array that is handed out can be written to");

  @ArchTest
  static void theScanSawTheSolver(JavaClasses seen) {
    assertThat(seen).hasSizeGreaterThan(70);
    for (String part : List.of("casting", "material", "physics", "result", "run", "numerics")) {
      assertThat(seen).as(part).anyMatch(c -> c.getPackageName().equals("lastinch.solver." + part));
    }
  }

  private static boolean isExact(JavaAccess<?> access) {
    return EXACT_MATH.contains(access.getName()) || access.getName().equals("PI");
  }

  private static boolean isUnordered(JavaAccess<?> access) {
    JavaClass owner = access.getTargetOwner();
    boolean made = access.getName().equals("of") || access.getName().startsWith("copyOf");
    boolean collected = Set.of("toMap", "toSet", "groupingBy").contains(access.getName());
    return (made && (owner.isEquivalentTo(Map.class) || owner.isEquivalentTo(Set.class)))
        || (collected && owner.isEquivalentTo(java.util.stream.Collectors.class));
  }

  private static ArchCondition<JavaClass> nameTheirSource() {
    return new ArchCondition<>("have a constant of type Citation") {
      @Override
      public void check(JavaClass type, ConditionEvents events) {
        boolean found =
            type.getFields().stream()
                .anyMatch(
                    f ->
                        f.getRawType().isEquivalentTo(Citation.class)
                            && f.getModifiers()
                                .containsAll(Set.of(JavaModifier.STATIC, JavaModifier.FINAL)));
        events.add(
            new SimpleConditionEvent(
                type, found, type.getSimpleName() + " names no source (static final Citation)"));
      }
    };
  }

  private static boolean isHiddenFromDecisions(JavaClass type) {
    String name = type.getPackageName();
    return name.startsWith(ROOT)
        && SEEN_BY_DECISIONS.stream()
            .noneMatch(p -> name.equals(ROOT + p) || name.startsWith(ROOT + p + "."));
  }
}
