package org.satline.visit;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.satline.cylinder.CylinderCode;
import org.satline.cylinder.Room;
import org.satline.explanation.Severity;
import org.satline.filling.FillingCode;
import org.satline.visit.file.AVisit;

/**
 * What must not lead to refrigerant moving. Basis: heat flows from warm to cold (physics); contents = gross - tare (arithmetic); gauge,
 * weight and label of a cylinder have to agree: R-410A at 84 degF saturates at about 252 psig, its vapour weighs about 4.6 lb/ft3 and its
 * liquid about 64 lb/ft3 there (from memory of trade charts), and a cylinder of 47.7 lb of water has 0.76 ft3; 49 CFR 173.301a(c),
 * 173.304(b), 180.205(c) (the last from memory); 40 CFR 82 subpart F; the rest common practice, no source.
 */
class VisitSafetyTest {
    /** Without these two nothing here could fail. */
    @Test
    void asTheyStandBothVisitsMove() {
        assertThat(AVisit.overcharged().report().action().movesNow()).isTrue();
        assertThat(AVisit.shortOfCharge().report().action().movesNow()).isTrue();
    }

    static void movesNothing(AVisit visit, ActionKind kind, String codes) {
        VisitReport report = visit.report();
        assertThat(report.action().movesNow()).isFalse();
        assertThat(report.action().kind()).isEqualTo(kind);
        assertThat(String.join(" ", AVisit.because(report))).isEqualTo(codes);
    }

    @ParameterizedTest(name = "recovery cylinder, gross {0}: {2}")
    @CsvSource({
        "62 lb, MAKE_SAFE, overfilled",
        "74.4 lb, MAKE_SAFE, overfilled",
        "75 lb, MAKE_SAFE, overfilled",
        "90 lb, MAKE_SAFE, liquidFull overfilled",
        "20 lb, PREPARE, belowTare",
        "26 lb, PREPARE, belowTare",
        "60.6 lb, PREPARE, full noRoomForStep",
        "27.4 lb, PREPARE, weightMisfitsPressure wrongContents",
        "30 lb, PREPARE, weightMisfitsPressure wrongContents",
        "'', PREPARE, notGiven"
    })
    void aRecoveryCylinderOfSuchAWeightIsNotFilled(String gross, ActionKind kind, String codes) {
        AVisit visit = AVisit.overcharged().weighing(gross);
        movesNothing(visit, kind, codes);
        assertThat(visit.report().connected().orElseThrow().room().filter(Room.Left.class::isInstance))
                .isEmpty();
    }

    @ParameterizedTest(name = "source cylinder, gross {0}: {2}")
    @CsvSource({
        "20 lb, PREPARE, belowTare sourceSpent",
        "27.4 lb, PREPARE, nothingToGive sourceSpent weightMisfitsPressure wrongContents",
        "28 lb, PREPARE, nothingToGive sourceSpent weightMisfitsPressure wrongContents",
        "80 lb, MAKE_SAFE, liquidFull overfilled",
        "90 lb, MAKE_SAFE, liquidFull overfilled",
        "'', PREPARE, notGiven"
    })
    void aSourceOfSuchAWeightIsNotDrawnFrom(String gross, ActionKind kind, String codes) {
        movesNothing(AVisit.shortOfCharge().weighing(gross), kind, codes);
    }

    /** No vessel of the world holds 62.6 lb of R-410A in 47.7 lb of water: what it weighs is an error, and what it holds is not told. */
    @Test
    void anImpossibleWeightGivesNoPressureAndNoFittingLabel() {
        var cylinder =
                AVisit.overcharged().weighing("90 lb").report().connected().orElseThrow();
        assertThat(cylinder.vessel()).isEmpty();
        assertThat(cylinder.byPressure()).isEmpty();
    }

    @ParameterizedTest(name = "recovery cylinder of \"{0}\" at {1}, {2}, {3}: {5}")
    @CsvSource({
        "'', 84 degF, 500 micron, 41.35 lb, PREPARE, notEmpty notGiven wrongContents",
        "'', 84 degF, 0 psig, 27.4 lb, PREPARE, airInEmpty wrongContents",
        "R-410A, 84 degF, 0 psig, 41.35 lb, PREPARE, pressureMisfitsLabel wrongContents",
        "R-410A, 84 degF, 330 psig, 41.35 lb, PREPARE, pressureMisfitsLabel wrongContents",
        "R-410A, 84 degF, 150 psig, 38.4 lb, PREPARE, pressureMisfitsLabel wrongContents",
        "R-410A, 150 degF, '', 41.35 lb, MAKE_SAFE, overPressure",
        "R-22, 84 degF, '', 41.35 lb, PREPARE, mixing"
    })
    void aRecoveryCylinderWhoseFactsContradictIsNotFilled(
            String holding, String temperature, String pressure, String gross, ActionKind kind, String codes) {
        movesNothing(cylinder(AVisit.overcharged(), holding, temperature, pressure, gross), kind, codes);
    }

    @ParameterizedTest(name = "source of \"{0}\" at {1}, {2}, {3}: {5}")
    @CsvSource({
        "R-410A, 84 degF, 150 psig, 41.35 lb, PREPARE, pressureMisfitsLabel wrongContents",
        "R-410A, 84 degF, 330 psig, 41.35 lb, PREPARE, pressureMisfitsLabel wrongContents",
        "R-410A, 140 degF, 550 psig, 41.35 lb, MAKE_SAFE, overPressure",
        "R-22, 84 degF, '', 41.35 lb, PREPARE, mixing",
        "R-410A, 84 degF, '', 28 lb, PREPARE, backflow nothingToGive sourceSpent",
        "'', 84 degF, 500 micron, 27.4 lb, PREPARE, backflow mixing nothingToGive sourceSpent"
    })
    void aSourceWhoseFactsContradictIsNotDrawnFrom(
            String holding, String temperature, String pressure, String gross, ActionKind kind, String codes) {
        movesNothing(cylinder(AVisit.shortOfCharge(), holding, temperature, pressure, gross), kind, codes);
    }

    private static AVisit cylinder(AVisit visit, String holding, String temperature, String pressure, String gross) {
        return visit.holding(holding)
                .with("cylinder.temperature", temperature)
                .gauged(pressure)
                .weighing(gross);
    }

    /** 11 lb of R-410A in 0.76 ft3 keep liquid at 84 degF, so 150 psig is not R-410A, however the scale was used. */
    @Test
    void aMislabelledCylinderIsRefusedHoweverTheScaleWasZeroed() {
        movesNothing(
                AVisit.overcharged()
                        .gauged("150 psig")
                        .with("cylinder.grossBefore", "27.4 lb")
                        .with("cylinder.scaleReading", "11 lb"),
                ActionKind.PREPARE,
                "pressureMisfitsLabel wrongContents");
    }

    /** 0.76 ft3 of saturated vapour weigh about 3.55 lb: 3.52 lb are within what scale, gauge and thermometer resolve. */
    @ParameterizedTest
    @CsvSource({"30.92 lb, 252 psig", "29.4 lb, 158 psig", "41.35 lb, ''", "41.35 lb, 252 psig"})
    void whatFitsWithinTheDoubtOfTheInstrumentsIsNoContradiction(String gross, String pressure) {
        VisitReport report =
                AVisit.overcharged().weighing(gross).gauged(pressure).report();
        assertThat(report.action().movesNow()).isTrue();
        assertThat(report.connected().orElseThrow().isUsable()).isTrue();
    }

    /** R-744 ends at 30.98 degC (from memory); 47.7 lb of water are 0.76 ft3, in which 45 lb make 950 kg/m3. */
    @ParameterizedTest(name = "{0} at {1}, {2}")
    @CsvSource({
        "72.4 lb, 87 degF, ''",
        "72.4 lb, 88.5 degF, ''",
        "72.4 lb, 88.5 degF, 900 psig",
        "72.4 lb, 120 degF, ''"
    })
    void aCylinderFullOfCarbonDioxideIsLiquidFullOnBothSidesOfTheCriticalTemperature(
            String gross, String warm, String read) {
        for (AVisit visit : List.of(AVisit.overcharged(), AVisit.shortOfCharge())) {
            VisitReport report = visit.carbonDioxide(gross, warm, read).report();
            assertThat(report.action().kind()).isEqualTo(ActionKind.MAKE_SAFE);
            assertThat(AVisit.codes(report, Severity.DANGER_NOW)).contains(CylinderCode.LIQUID_FULL);
        }
    }

    /** 2 lb in 0.76 ft3 make 42 kg/m3. */
    @ParameterizedTest(name = "{0}, {1}")
    @CsvSource({"100 degF, ''", "100 degF, 320 psig", "88 degF, ''"})
    void aCylinderWarmerThanTheCriticalTemperatureIsAnsweredAsAState(String warm, String read) {
        for (AVisit visit : List.of(AVisit.overcharged(), AVisit.shortOfCharge())) {
            VisitReport report = visit.carbonDioxide("29.4 lb", warm, read).report();
            assertThat(report.action().kind()).isEqualTo(ActionKind.PREPARE);
            assertThat(AVisit.because(report)).contains("aboveCritical", "mixing");
            assertThat(report.connected()
                            .orElseThrow()
                            .vessel()
                            .orElseThrow()
                            .now()
                            .liquidVolumeFraction())
                    .isEmpty();
        }
    }

    static Stream<Arguments> stamps() {
        AVisit source = AVisit.shortOfCharge();
        AVisit strong = source.with("cylinder.specification", "DOT-4BA400");
        return Stream.of(
                Arguments.of(source.with("cylinder.specification", "DOT-4BA240"), "pressureTooLow"),
                Arguments.of(
                        strong.with("cylinder.servicePressure", "240 psig"),
                        "pressureTooLow servicePressureMisfitsMark"),
                Arguments.of(strong.with("cylinder.testPressure", "300 psig"), "testBelowService"),
                Arguments.of(AVisit.overcharged().with("cylinder.retestDue", "2020-01-01"), "retestPast"),
                Arguments.of(AVisit.overcharged().without("date"), "notGiven"));
    }

    @ParameterizedTest(name = "{1}")
    @MethodSource("stamps")
    void stampsThatAreTooWeakContradictoryOrOverdueRefuse(AVisit visit, String codes) {
        movesNothing(visit, ActionKind.PREPARE, codes);
    }

    @ParameterizedTest
    @ValueSource(strings = {"R-22", "R-134a", "R-404A", "R-407C", "R-410A"})
    void theUsualNonRefillableSourceIsFit(String refrigerant) {
        VisitReport report = AVisit.shortOfCharge()
                .holding(refrigerant)
                .gauged("")
                .with("cylinder.tare", "7 lb")
                .with("cylinder.waterCapacity", "30 lb")
                .with("cylinder.specification", "DOT-39")
                .without("cylinder.retestDue")
                .weighing("20 lb")
                .report();
        assertThat(report.connected().orElseThrow().of(Severity.FORBIDS))
                .allSatisfy(each -> assertThat(each.code()).isEqualTo(FillingCode.MIXING));
        assertThat(report.action().movesNow()).isEqualTo(refrigerant.equals("R-410A"));
    }

    /** 49 CFR 180.205(c), from memory: what was filled before the date may be used up. */
    @Test
    void anOverdueSourceIsUsedUpWithACaution() {
        VisitReport overdue =
                AVisit.shortOfCharge().with("cylinder.retestDue", "2020-01-01").report();
        assertThat(overdue.action().movesNow()).isTrue();
        assertThat(AVisit.codes(overdue, Severity.CAUTION)).contains(FillingCode.RETEST_PAST);
        VisitReport undated = AVisit.shortOfCharge().without("date").report();
        assertThat(undated.action().movesNow()).isTrue();
        assertThat(AVisit.codes(undated, Severity.CAUTION)).contains(FillingCode.RETEST_NOT_CHECKED);
    }

    static Stream<Arguments> belongings() {
        AVisit used = AVisit.shortOfCharge().with("cylinder.provenance", "recovered");
        return Stream.of(
                Arguments.of("another owner's", used.with("cylinder.owner", "the rowing club"), "otherOwner"),
                Arguments.of("an unknown owner's", used.without("cylinder.owner"), "notGiven otherOwner"),
                Arguments.of("for an unknown owner", used.without("system.owner"), "notGiven otherOwner"),
                Arguments.of(
                        "two unknown owners",
                        used.without("system.owner").without("cylinder.owner"),
                        "notGiven otherOwner"),
                Arguments.of(
                        "mixed",
                        AVisit.shortOfCharge().with("cylinder.provenance", "mixed-recovered"),
                        "mixedRecovered mixing"),
                Arguments.of("of unknown origin", AVisit.shortOfCharge().without("cylinder.provenance"), "notGiven"));
    }

    /** 40 CFR 82.154(d). */
    @ParameterizedTest(name = "{0}")
    @MethodSource("belongings")
    void whatMayNotGoIntoThisSystemStaysInTheCylinder(String name, AVisit visit, String codes) {
        movesNothing(visit, ActionKind.PREPARE, codes);
    }

    @Test
    void anOwnerWhoIsNotStatedIsAskedFor() {
        AVisit used = AVisit.shortOfCharge().with("cylinder.provenance", "recovered");
        assertThat(used.without("system.owner")
                        .without("cylinder.owner")
                        .report()
                        .ask())
                .containsExactlyInAnyOrder("system.owner", "cylinder.owner");
        assertThat(used.report().ask()).isEmpty();
    }

    @Test
    void theOwnersOwnRecoveredRefrigerantGoesBackOnCondition() {
        VisitReport report =
                AVisit.shortOfCharge().with("cylinder.provenance", "recovered").report();
        assertThat(report.action().kind()).isEqualTo(ActionKind.PUT_IN);
        assertThat(report.findings()).anyMatch(each -> each.code().word().equals("otherOwner"));
    }
}
