package org.standoff.architecture;

import static com.tngtech.archunit.base.DescribedPredicate.describe;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.methods;

import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import net.jqwik.api.Property;
import org.junit.jupiter.api.Test;

class SeededPropertiesTest {
  @Test
  void everyPropertyHasASeedSoThatABuildDoesNotHangOnChance() {
    methods()
        .that()
        .areAnnotatedWith(Property.class)
        .should()
        .beAnnotatedWith(
            describe(
                "a property with a seed",
                annotation ->
                    annotation
                        .tryGetExplicitlyDeclaredProperty("seed")
                        .filter(seed -> !seed.equals(Property.SEED_NOT_SET))
                        .isPresent()))
        .check(
            new ClassFileImporter()
                .withImportOption(ImportOption.Predefined.ONLY_INCLUDE_TESTS)
                .importPackages("org.standoff"));
  }
}
