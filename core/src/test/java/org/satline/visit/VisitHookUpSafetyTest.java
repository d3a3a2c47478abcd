package org.satline.visit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.satline.visit.VisitSafetyTest.movesNothing;

import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import org.satline.explanation.Severity;
import org.satline.transfer.TransferCode;
import org.satline.visit.file.AVisit;

/** Hook-ups beside which no refrigerant may move; common practice, no source. */
class VisitHookUpSafetyTest {
    static Stream<Arguments> hookUps() {
        AVisit out = AVisit.overcharged();
        AVisit in = AVisit.shortOfCharge();
        return Stream.of(
                Arguments.of("nothing connected", out.withoutCylinder(), "noCylinder"),
                Arguments.of("no source connected", AVisit.overcharged().low().withoutCylinder(), "noCylinder"),
                Arguments.of("a receiver where charge is wanted", out.low(), "otherCylinderNeeded"),
                Arguments.of("a source where charge is too much", out.withSource(), "otherCylinderNeeded"),
                Arguments.of(
                        "nothing known of a hose",
                        out.without("cylinder.hoses").without("manifold"),
                        "hoseUnknown notGiven"),
                Arguments.of("air in the hose", out.withAirInTheHose(), "hoseNotPurged"),
                Arguments.of("air in the hose of a source", in.withAirInTheHose(), "hoseNotPurged"),
                Arguments.of("air in the manifold", out.with("manifold.holds", "air"), "hoseNotPurged"),
                Arguments.of(
                        "air shut in between self-sealing ends",
                        in.hoseAt("low-side")
                                .with("cylinder.hoses[0].cylinderEnd", "self-sealing")
                                .withAirInTheHose(),
                        "hoseCannotBePurged"),
                Arguments.of("a blend at the vapour valve", in.with("cylinder.valve", "source-vapour"), "wrongPhase"),
                Arguments.of(
                        "a source colder than the system",
                        in.gauged("").with("cylinder.temperature", "20 degF"),
                        "backflow"),
                Arguments.of(
                        "a receiver warmer than the system",
                        out.gauged("").with("cylinder.temperature", "125 degF"),
                        "backflow"),
                Arguments.of("a hose at the low side", out.hoseAt("low-side"), "wrongPort"),
                Arguments.of("a source's hose at the liquid line", in.hoseAt("high-side-liquid"), "wrongPort"),
                Arguments.of(
                        "a cylinder not at rest",
                        out.with("cylinder.atRest", false).gauged("300 psig"),
                        "notAtRest"),
                Arguments.of(
                        "a hose that holds more than the step",
                        out.with("cylinder.hoses[0].length", "60 ft").with("cylinder.hoses[0].bore", "19 mm"),
                        "trappedLiquid"),
                Arguments.of("no full charge known", out.without("system.fullCharge"), "notGiven"));
    }

    @ParameterizedTest(name = "{0}: {2}")
    @MethodSource("hookUps")
    void suchAHookUpIsPreparedFirst(String name, AVisit visit, String codes) {
        movesNothing(visit, ActionKind.PREPARE, codes);
    }

    @Test
    void whatAHoseHoldsOfUnknownOriginIsNotCalledReady() {
        VisitReport report =
                AVisit.overcharged().without("cylinder.hoses[0].contentsFrom").report();
        assertThat(report.action().kind()).isEqualTo(ActionKind.PREPARE);
        assertThat(AVisit.because(report)).containsAnyOf("hoseNotPurged", "hoseCannotBePurged");
    }

    /** The pressures of the two are the same within what the gauges show. */
    @Test
    void pressuresTooCloseToCallRefuse() {
        movesNothing(
                AVisit.shortOfCharge().gauged("").with("cylinder.temperature", "41 degF"),
                ActionKind.PREPARE,
                "tooCloseToCall");
    }

    @Test
    void anEmptyCylinderNeedsItsPressure() {
        AVisit unread = AVisit.overcharged().evacuated().gauged("");
        movesNothing(unread, ActionKind.PREPARE, "notGiven");
        assertThat(unread.report().ask()).containsExactly("cylinder.pressure");
    }

    @Test
    void anEvacuatedCylinderIsFilledSlowly() {
        VisitReport report = AVisit.overcharged().evacuated().report();
        assertThat(report.action().kind()).isEqualTo(ActionKind.TAKE_OUT);
        assertThat(AVisit.codes(report, Severity.CAUTION)).contains(TransferCode.FAST_INTO_VACUUM);
    }
}
