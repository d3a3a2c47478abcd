package org.satline.fleet;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;

import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import org.junit.jupiter.api.Test;

/** Nothing below the fleet knows it; what a reading means knows no engine. */
class FleetArchitectureTest {
    private static final JavaClasses ALL = new ClassFileImporter()
            .withImportOption(new ImportOption.DoNotIncludeTests())
            .importPackages("org.satline");

    @Test
    void nothingElseKnowsTheFleetOrItsEngine() {
        noClasses()
                .that()
                .resideOutsideOfPackage("org.satline.fleet..")
                .should()
                .dependOnClassesThat()
                .resideInAnyPackage("org.satline.fleet..", "org.apache.flink..")
                .check(ALL);
    }

    @Test
    void whatAReadingMeansKnowsNoEngine() {
        noClasses()
                .that()
                .haveNameMatching("org\\.satline\\.fleet\\.(Window(Judge|Verdict|Readings)|ChargeWatch|Leak.*|Model.*|"
                        + "Response.*|Simulated.*|Unit(State|Day|Fault|Model)|Alarm|SettledWindow|SummaryPage).*")
                .should()
                .dependOnClassesThat()
                .resideInAnyPackage("org.apache.flink..")
                .check(ALL);
    }

    @Test
    void onlyThePageKnowsTheProgram() {
        noClasses()
                .that()
                .resideInAPackage("org.satline.fleet..")
                .and()
                .doNotHaveSimpleName("SummaryPage")
                .should()
                .dependOnClassesThat()
                .resideInAnyPackage("org.satline.program..")
                .check(ALL);
    }
}
