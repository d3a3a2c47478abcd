package org.satline.program;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;
import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.satline.program.file.BadInputException;
import org.satline.program.file.CsvAnswer;
import org.satline.program.file.CsvRow;
import org.satline.program.file.Shown;

class ProgramArchitectureTest {
    private static final JavaClasses PROGRAM = new ClassFileImporter()
            .withImportOption(ImportOption.Predefined.DO_NOT_INCLUDE_TESTS)
            .withImportOption(location -> !location.contains("-test/"))
            .importPackages("org.satline.program");

    /** Classes of the room of files that read and write none, with which rooms without libraries may work. */
    private static final Set<String> ROWS = Set.of(
            CsvRow.class.getName(),
            CsvAnswer.class.getName(),
            Shown.class.getName(),
            BadInputException.class.getName());

    /** A browser has no desktop, no file system and none of these libraries. */
    @Test
    void pagesExercisesAuditsAndPicturesCarryNoLibraryThatABrowserLacks() {
        noClasses()
                .that()
                .resideInAnyPackage(
                        "org.satline.program.page..",
                        "org.satline.program.exercise..",
                        "org.satline.program.audit..",
                        "org.satline.program.drawing..",
                        "org.satline.program.pictures..")
                .should()
                .dependOnClassesThat()
                .resideInAnyPackage(
                        "picocli..", "com.fasterxml..", "org.apache..", "java.awt..", "javax.xml..", "java.nio.file..")
                .check(PROGRAM);
        PROGRAM.stream()
                .filter(each -> each.getPackageName()
                        .matches("org\\.satline\\.program\\.(page|exercise|audit|drawing|pictures)"))
                .flatMap(each -> each.getDirectDependenciesFromSelf().stream())
                .map(dependency -> dependency.getTargetClass())
                .filter(target -> target.getPackageName().equals("org.satline.program.file"))
                .map(JavaClass::getName)
                .forEach(name -> assertThat(ROWS).contains(name));
    }

    /** Machines of another build say something about the verdict only while nothing of it is in them. */
    @Test
    void machinesOfAnotherBuildKnowNothingOfTheVerdictNorOfTheOtherSimulation() {
        noClasses()
                .that()
                .resideInAPackage("org.satline.program.mapped..")
                .should()
                .dependOnClassesThat()
                .resideInAnyPackage(
                        "org.satline.charge..",
                        "org.satline.step..",
                        "org.satline.simulation..",
                        "org.satline.visit..",
                        "org.satline.program.proof..")
                .check(PROGRAM);
    }

    @Test
    void eachLibraryHasOneRoom() {
        classes()
                .that()
                .resideOutsideOfPackage("org.satline.program.print..")
                .should()
                .onlyDependOnClassesThat()
                .resideOutsideOfPackages("org.apache.pdfbox..", "java.awt..")
                .check(PROGRAM);
        noClasses()
                .that()
                .resideOutsideOfPackage("org.satline.program.ask..")
                .should()
                .dependOnClassesThat()
                .resideInAnyPackage("org.jline..")
                .check(PROGRAM);
        noClasses()
                .that()
                .resideOutsideOfPackage("org.satline.program.file..")
                .should()
                .dependOnClassesThat()
                .resideInAnyPackage("com.fasterxml..")
                .check(PROGRAM);
        noClasses()
                .that()
                .resideOutsideOfPackage("org.satline.program")
                .should()
                .dependOnClassesThat()
                .resideInAnyPackage("picocli..", "org.satline.program")
                .check(PROGRAM);
    }

    @Test
    void roomsDependInOneDirection() {
        slices().matching("org.satline.program.(*)..").should().beFreeOfCycles().check(PROGRAM);
    }
}
