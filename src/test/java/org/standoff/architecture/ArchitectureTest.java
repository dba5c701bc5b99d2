package org.standoff.architecture;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;

import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.FieldSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Which package may see which. An import goes down the house, never up. */
class ArchitectureTest {

  private static final String ROOT = "org.standoff.";

  /** The calculating core from bottom to top; each sees those before it. */
  static final List<String> CORE =
      List.of("acoustics", "chain", "pairs", "floor", "linecheck", "advice", "plan");

  /** The one library in the core: the aim search is a real optimisation, not one of our own. */
  private static final Map<String, String> CORE_LIBRARIES = Map.of("floor", "org.hipparchus..");

  /** What each package above the core may see besides the core. */
  private static final Map<String, List<String>> ABOVE_THE_CORE =
      Map.of(
          "catalogue", List.of(),
          "kit", List.of("catalogue"),
          "answers", List.of("kit", "catalogue"),
          "session", List.of("answers", "kit", "catalogue"),
          "rest", List.of("answers", "kit", "session", "catalogue"),
          "launch", List.of());

  static final List<String> HOUSE =
      Stream.concat(CORE.stream(), ABOVE_THE_CORE.keySet().stream().sorted()).toList();

  private static final JavaClasses CLASSES =
      new ClassFileImporter()
          .withImportOption(ImportOption.Predefined.DO_NOT_INCLUDE_TESTS)
          .importPackages("org.standoff");

  @ParameterizedTest
  @FieldSource("CORE")
  void theCoreIsPlainJava(String name) {
    classes()
        .that()
        .resideInAPackage(within(name))
        .should()
        .onlyDependOnClassesThat()
        .resideInAnyPackage(
            Stream.of(
                    Stream.of("java..", "org.jspecify.annotations.."),
                    Stream.ofNullable(CORE_LIBRARIES.get(name)),
                    CORE.subList(0, CORE.indexOf(name) + 1).stream().map(ArchitectureTest::within))
                .flatMap(parts -> parts)
                .toArray(String[]::new))
        .allowEmptyShould(true)
        .because("physics is not read from clocks, files, settings or frameworks")
        .check(CLASSES);
  }

  @ParameterizedTest
  @FieldSource("HOUSE")
  void importsGoDownTheHouseAndNeverUp(String name) {
    List<String> allowed =
        CORE.contains(name)
            ? CORE.subList(0, CORE.indexOf(name) + 1)
            : Stream.of(CORE.stream(), ABOVE_THE_CORE.get(name).stream(), Stream.of(name))
                .flatMap(parts -> parts)
                .toList();
    String[] forbidden =
        HOUSE.stream()
            .filter(other -> !allowed.contains(other))
            .map(ArchitectureTest::within)
            .toArray(String[]::new);
    noClasses()
        .that()
        .resideInAPackage(within(name))
        .should()
        .dependOnClassesThat()
        .resideInAnyPackage(forbidden)
        .allowEmptyShould(true)
        .check(CLASSES);
  }

  @Test
  void everyClassLivesInAPackageOfTheHouse() {
    classes()
        .should()
        .resideInAnyPackage(HOUSE.stream().map(ArchitectureTest::within).toArray(String[]::new))
        .check(CLASSES);
  }

  @Test
  void nothingOutsideRestSeesJakartaRest() {
    onlySeenFrom("jakarta.ws.rs..", "rest");
  }

  @Test
  void nothingOutsideKitAndSessionSeesThePersistence() {
    onlySeenFrom("jakarta.persistence..", "kit", "session");
    onlySeenFrom("io.quarkus.hibernate..", "kit", "session");
  }

  @Test
  void noPackagesDependOnEachOtherInACircle() {
    slices().matching("org.standoff.(**)").should().beFreeOfCycles().check(CLASSES);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {"util", "utils", "common", "helper", "helpers", "impl", "dto", "service", "misc"})
  void noPackageIsAGrabBag(String name) {
    noClasses().should().resideInAPackage(".." + name + "..").check(CLASSES);
  }

  @Test
  void noClassIsAManager() {
    noClasses().should().haveSimpleNameEndingWith("Manager").check(CLASSES);
  }

  private static void onlySeenFrom(String library, String... packages) {
    noClasses()
        .that()
        .resideOutsideOfPackages(
            Arrays.stream(packages).map(ArchitectureTest::within).toArray(String[]::new))
        .should()
        .dependOnClassesThat()
        .resideInAPackage(library)
        .check(CLASSES);
  }

  private static String within(String name) {
    return ROOT + name + "..";
  }
}
