package org.satline;

import static com.tngtech.archunit.base.DescribedPredicate.not;
import static com.tngtech.archunit.core.domain.JavaAccess.Predicates.target;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAPackage;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAnyPackage;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.type;
import static com.tngtech.archunit.core.domain.properties.HasName.Predicates.nameMatching;
import static com.tngtech.archunit.core.domain.properties.HasOwner.Predicates.With.owner;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.fields;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.domain.JavaModifier;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/** The order of the packages, as the table in DEVELOPERS.md states it, and the few bans that hold everywhere in core. */
class ArchitectureTest {
    /** Each package imports only those before it. */
    private static final List<String> ORDER = List.of(
            "quantity",
            "explanation",
            "resource",
            "refrigerant",
            "safety",
            "equation",
            "equilibrium",
            "saturation",
            "measurement",
            "filling",
            "cylinder",
            "duty",
            "transfer.hookup",
            "transfer.simulator",
            "transfer.transition",
            "transfer.planner",
            "transfer",
            "ledger",
            "charge.margin",
            "charge.belief",
            "charge",
            "step",
            "simulation",
            "visit",
            "visit.file",
            "audit.answer",
            "audit.cause",
            "audit",
            "json",
            "wording");

    private static final JavaClasses CORE = CoreClasses.all();

    @TestFactory
    Stream<DynamicTest> eachPackageImportsOnlyThoseAboveIt() {
        return IntStream.range(0, ORDER.size())
                .mapToObj(i -> DynamicTest.dynamicTest(
                        ORDER.get(i),
                        () -> noClasses()
                                .that()
                                .resideInAPackage("org.satline." + ORDER.get(i))
                                .should()
                                .dependOnClassesThat(resideInAnyPackage(later(i)))
                                .allowEmptyShould(true)
                                .check(CORE)));
    }

    @Test
    void everyPackageHasItsPlaceInTheOrder() {
        Set<String> rooms = new TreeSet<>();
        for (JavaClass type : CORE) {
            if (!type.getPackageName().equals("org.satline")) {
                rooms.add(type.getPackageName().replaceFirst("^org\\.satline\\.?", ""));
            }
        }
        assertThat(ORDER).containsAll(rooms);
    }

    @Test
    void theRoomInTheCylinderReachesChargeAsAMassOnly() {
        noClasses()
                .that()
                .resideInAnyPackage(tree("charge"), tree("step"))
                .should()
                .dependOnClassesThat(resideInAnyPackage(tree("cylinder"), tree("transfer")))
                .allowEmptyShould(true)
                .check(CORE);
    }

    /** Texts may read every room but the forms; no room knows that there are texts. */
    @Test
    void wordsComeLastAndKnowNoForms() {
        noClasses()
                .that()
                .resideInAPackage(tree("wording"))
                .should()
                .dependOnClassesThat(resideInAnyPackage(tree("json"), tree("simulation"), "com.fasterxml.."))
                .check(CORE);
    }

    /** The search for plans and the simulator that proves them share no code but the network. */
    @Test
    void plannerAndSimulatorDoNotKnowEachOther() {
        noClasses()
                .that()
                .resideInAnyPackage("org.satline.transfer.planner", "org.satline.transfer.transition")
                .should()
                .dependOnClassesThat(resideInAPackage("org.satline.transfer.simulator"))
                .check(CORE);
    }

    /** What nobody outside of a room uses is not public there; a room is a package with those below it. */
    @TestFactory
    Stream<DynamicTest> fewTypesOfTheNewRoomsArePublic() {
        return Stream.of("charge", "cylinder", "transfer", "step", "visit")
                .map(room -> DynamicTest.dynamicTest(room, () -> {
                    List<JavaClass> types = CORE.stream()
                            .filter(type -> (type.getPackageName() + ".").startsWith("org.satline." + room + "."))
                            .filter(type -> type.getEnclosingClass().isEmpty()
                                    && !type.getSimpleName().equals("package-info"))
                            .toList();
                    long open = types.stream()
                            .filter(type -> type.getModifiers().contains(JavaModifier.PUBLIC))
                            .count();
                    assertThat(open).as("public of " + types.size()).isLessThanOrEqualTo(60L * types.size() / 100);
                }));
    }

    @Test
    void theRootOfAllPackagesKnowsNone() {
        noClasses()
                .that()
                .resideInAPackage("org.satline")
                .should()
                .dependOnClassesThat(resideInAnyPackage(later(-1)))
                .check(CORE);
    }

    /** A broken file and a question without an answer are nobody's argument and nobody's state; all others are one of them. */
    @Test
    void everyPublicExceptionHasTheRootAndTheClassThatAProgramExpects() {
        List<JavaClass> exceptions = CORE.stream()
                .filter(type -> type.isAssignableTo(Throwable.class))
                .filter(type -> type.getModifiers().contains(JavaModifier.PUBLIC))
                .toList();
        assertThat(exceptions)
                .hasSizeGreaterThanOrEqualTo(15)
                .allMatch(type -> type.isAssignableTo(SatlineException.class), "has the root");
        assertThat(exceptions.stream()
                        .filter(type -> !type.isAssignableTo(IllegalArgumentException.class)
                                && !type.isAssignableTo(IllegalStateException.class))
                        .map(JavaClass::getSimpleName))
                .containsExactlyInAnyOrder("ResourceFormatException", "ConvergenceException", "NoSteadyStateException");
    }

    @Test
    void dutiesKnowNeitherTransferNorChargeAndTheLedgerNoCharge() {
        noClasses()
                .that()
                .resideInAPackage(tree("duty"))
                .should()
                .dependOnClassesThat(resideInAnyPackage(tree("transfer"), tree("ledger"), tree("charge")))
                .check(CORE);
        noClasses()
                .that()
                .resideInAPackage(tree("ledger"))
                .should()
                .dependOnClassesThat(resideInAnyPackage(tree("charge"), "com.fasterxml.."))
                .check(CORE);
    }

    @Test
    void filesAreTouchedByTheResourceReaderAndTheLedgerAlone() {
        noClasses()
                .that(not(resideInAnyPackage(tree("resource"), tree("ledger"))))
                .should()
                .dependOnClassesThat(resideInAPackage("java.nio.file.."))
                .orShould()
                .dependOnClassesThat()
                .haveNameMatching(
                        "java\\.io\\.(File|FileInputStream|FileOutputStream|FileReader|FileWriter|RandomAccessFile)")
                .check(CORE);
    }

    @Test
    void nothingStaticIsMutable() {
        fields().that().areStatic().should().beFinal().allowEmptyShould(true).check(CORE);
    }

    @Test
    void thereIsNoLoggingNoDesktopAndNoConsole() {
        noClasses()
                .should()
                .dependOnClassesThat(resideInAnyPackage(
                        "java.util.logging..",
                        "org.slf4j..",
                        "java.sql..",
                        // the packages of java.desktop, which Android lacks
                        "java.applet..",
                        "java.awt..",
                        "java.beans..",
                        "javax.accessibility..",
                        "javax.imageio..",
                        "javax.print..",
                        "javax.sound..",
                        "javax.swing.."))
                .orShould()
                .accessField(System.class, "out")
                .orShould()
                .accessField(System.class, "err")
                .check(CORE);
    }

    /** So that a program without Jackson gets everything but JSON. */
    @Test
    void jacksonIsUsedByTheJsonFormsAlone() {
        noClasses()
                .that(not(resideInAPackage(tree("json"))))
                .should()
                .dependOnClassesThat(resideInAPackage("com.fasterxml.."))
                .check(CORE);
    }

    /** So that the rest runs unchanged where reflection is restricted, as behind a shrinker. */
    @Test
    void reflectionIsUsedByTheJsonFormsAlone() {
        noClasses()
                .that(not(resideInAPackage(tree("json"))))
                .should()
                .dependOnClassesThat(resideInAPackage("java.lang.reflect.."))
                .orShould()
                .callMethodWhere(target(owner(type(Class.class)))
                        .and(target(nameMatching("forName|newInstance|get(Declared|Record|Permitted)\\w+"))))
                .check(CORE);
    }

    private static String[] later(int i) {
        return Stream.concat(
                        ORDER.subList(i + 1, ORDER.size()).stream().map(room -> "org.satline." + room),
                        Stream.of(
                                "org.satline.tables..",
                                "org.satline.examples..",
                                "org.satline.program..",
                                "org.satline.benchmarks.."))
                .toArray(String[]::new);
    }

    private static String tree(String room) {
        return "org.satline." + room + "..";
    }
}
