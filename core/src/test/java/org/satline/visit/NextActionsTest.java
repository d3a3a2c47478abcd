package org.satline.visit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.satline.explanation.Severity;
import org.satline.quantity.Mass;
import org.satline.step.StepCode;
import org.satline.transfer.PointKind;
import org.satline.transfer.hookup.Medium;
import org.satline.visit.file.AVisit;

/**
 * One action for one visit, and which one where several could be named: a danger, another fault, reading again, preparing, one step, done.
 * The order is our choice; that a danger comes first and that a fault is mended before refrigerant moves is common practice, no source.
 */
class NextActionsTest {
    private static final Map<String, Object> OVERFULL = Map.of(
            "name", "cylinder no. 5",
            "valve", "recovery-vapour",
            "specification", "DOT-4BW400",
            "tare", "27.4 lb",
            "waterCapacity", "47.7 lb",
            "retestDue", "2029-04-30",
            "holding", "R-410A",
            "temperature", "84 degF",
            "scaleReading", "75 lb");

    private static AVisit warmSuctionLine(AVisit visit) {
        return visit.with("readings.suctionLine", "90 degF");
    }

    private static AVisit justStarted(AVisit visit) {
        return visit.with("conditions.running", "5 min");
    }

    static Stream<Arguments> precedence() {
        AVisit high = AVisit.overcharged();
        return Stream.of(
                Arguments.of("a danger before done", AVisit.onTarget().weighing("75 lb"), ActionKind.MAKE_SAFE),
                Arguments.of(
                        "a danger before another fault", warmSuctionLine(high.weighing("75 lb")), ActionKind.MAKE_SAFE),
                Arguments.of(
                        "a danger before reading again", justStarted(high.weighing("75 lb")), ActionKind.MAKE_SAFE),
                Arguments.of(
                        "a danger before preparing", high.weighing("75 lb").withAirInTheHose(), ActionKind.MAKE_SAFE),
                Arguments.of("a danger beside the connected cylinder", high.withBeside(OVERFULL), ActionKind.MAKE_SAFE),
                Arguments.of(
                        "a danger in heating",
                        high.weighing("75 lb").with("system.mode", "heating"),
                        ActionKind.MAKE_SAFE),
                Arguments.of(
                        "another fault before preparing",
                        warmSuctionLine(high.withoutCylinder()),
                        ActionKind.MEND_FIRST),
                Arguments.of(
                        "another fault before a gate that was not read",
                        warmSuctionLine(high.without("conditions.running")),
                        ActionKind.MEND_FIRST),
                Arguments.of(
                        "reading again before preparing", justStarted(high.withoutCylinder()), ActionKind.READ_AGAIN),
                Arguments.of("reading again in heating", high.with("system.mode", "heating"), ActionKind.READ_AGAIN),
                Arguments.of("reading again before done", justStarted(AVisit.onTarget()), ActionKind.READ_AGAIN),
                Arguments.of("preparing before a step out", high.withoutCylinder(), ActionKind.PREPARE),
                Arguments.of(
                        "preparing before a step in", AVisit.shortOfCharge().withAirInTheHose(), ActionKind.PREPARE),
                Arguments.of(
                        "preparing before a gate that was not read",
                        high.withoutCylinder().without("conditions.running"),
                        ActionKind.PREPARE),
                Arguments.of("a step out", high, ActionKind.TAKE_OUT),
                Arguments.of("a step in", AVisit.shortOfCharge(), ActionKind.PUT_IN),
                Arguments.of("done", AVisit.onTarget(), ActionKind.DONE),
                Arguments.of("done, with nothing hooked up", AVisit.onTarget().withoutCylinder(), ActionKind.DONE));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("precedence")
    void oneActionComesFirst(String name, AVisit visit, ActionKind kind) {
        NextAction action = visit.report().action();
        assertThat(action.kind()).isEqualTo(kind);
        assertThat(action.movesNow()).isEqualTo(kind == ActionKind.TAKE_OUT || kind == ActionKind.PUT_IN);
    }

    /** What is dangerous is the whole of it: nothing is asked, and no permit is asked for. */
    @Test
    void aDangerIsNamedAlone() {
        VisitReport report = AVisit.overcharged().withBeside(OVERFULL).report();
        assertThat(report.action().because())
                .isNotEmpty()
                .allSatisfy(each -> assertThat(each.severity()).isEqualTo(Severity.DANGER_NOW))
                .allSatisfy(each -> assertThat(each.subject().name()).isEqualTo("cylinder no. 5"));
        assertThat(report.ask()).isEmpty();
        assertThat(report.permit()).isEmpty();
    }

    /** R-134a at 345 psig condenses at about 77 degC (from memory), above what high-pressure controls allow. */
    @Test
    void aSystemFarBeyondItsControlsIsMadeSafe() {
        VisitReport report = AVisit.overcharged()
                .with("system.refrigerant", "R-134a")
                .with("readings.suctionPressure", "45 psig")
                .with("readings.liquidPressure", "350 psig")
                .with("readings.liquidLine", "150 degF")
                .withoutCylinder()
                .report();
        assertThat(report.action().kind()).isEqualTo(ActionKind.MAKE_SAFE);
        assertThat(AVisit.because(report)).containsExactly("systemOverPressure");
    }

    @ParameterizedTest(name = "without {0}")
    @CsvSource({"conditions.running", "conditions.settled", "readings.outdoorAir"})
    void aGateThatWasNotReadAsksAndBlocksMovingButNotBeingDone(String field) {
        for (AVisit moving : List.of(AVisit.overcharged(), AVisit.shortOfCharge())) {
            VisitReport report = moving.without(field).report();
            assertThat(report.action().kind()).isEqualTo(ActionKind.READ_AGAIN);
            assertThat(report.ask()).containsExactly(field);
            assertThat(report.level()).isPresent();
        }
        assertThat(AVisit.onTarget().without(field).report().action().kind()).isEqualTo(ActionKind.DONE);
    }

    @Test
    void whatIsMissingIsAskedAtOnce() {
        VisitReport report = AVisit.overcharged()
                .without("cylinder.scaleReading")
                .without("cylinder.hoses")
                .without("manifold")
                .without("system.fullCharge")
                .without("conditions.running")
                .report();
        assertThat(report.action().kind()).isEqualTo(ActionKind.PREPARE);
        assertThat(report.ask())
                .containsExactlyInAnyOrder(
                        "cylinder.scaleReading", "cylinder.hoses", "system.fullCharge", "conditions.running");
    }

    @Test
    void aStepOutEndsAtAReadingOfTheScaleWithinTheRoom() {
        StepOrder step = order(AVisit.overcharged());
        // by hand: the gross weight rises by the step
        assertThat(step.stopReading().value().pounds())
                .isCloseTo(41.35 + step.amount().pounds(), within(1e-9));
        assertThat(step.neverPass()).isGreaterThan(step.stopReading().value());
        assertThat(step.port()).isEqualTo(PointKind.HIGH_SIDE_LIQUID_PORT);
        assertThat(step.valve()).isEqualTo(PointKind.RECOVERY_CYLINDER_VAPOUR_VALVE);
        assertThat(step.phase()).isEqualTo(Medium.LIQUID);
        assertThat(step.settling()).isPositive();
        // 6 degF = 3.4 K too much; at 34 K less a tenth for the whole charge of 3.2 kg that were 3.4 / 30.6 x 3.2 kg
        assertThat(step.amount().kilograms()).isBetween(0.05, 0.36);
    }

    @Test
    void aStepInLowersTheWeightOfTheSource() {
        StepOrder step = order(AVisit.shortOfCharge());
        assertThat(step.stopReading().value().pounds())
                .isCloseTo(41.35 - step.amount().pounds(), within(1e-9));
        // by hand: the tare remains
        assertThat(step.neverPass().pounds()).isCloseTo(27.4, within(1e-9));
        assertThat(step.port()).isEqualTo(PointKind.LOW_SIDE_PORT);
        assertThat(step.valve()).isEqualTo(PointKind.SOURCE_CYLINDER_LIQUID_VALVE);
        assertThat(step.phase()).isEqualTo(Medium.LIQUID);
    }

    /** A scale zeroed with the source on it shows less than nothing as refrigerant leaves. */
    @Test
    void aScaleZeroedOnTheSourceShowsBelowZero() {
        StepOrder step = order(AVisit.shortOfCharge()
                .with("cylinder.grossBefore", "41.35 lb")
                .with("cylinder.scaleReading", "-0.55 lb"));
        assertThat(step.stopReading().value().pounds())
                .isCloseTo(-0.55 - step.amount().pounds(), within(1e-9));
        assertThat(step.neverPass().pounds()).isCloseTo(27.4 - 41.35, within(1e-9));
    }

    private static StepOrder order(AVisit visit) {
        return ((NextAction.Move) visit.report().action()).step();
    }

    @Test
    void whatThePersonTookOutIsGivenBackAndIsNoLeak() {
        AVisit taken = AVisit.shortOfCharge().moved("-0.5 lb", List.of(AVisit.earlier("0 lb", "12 degF")));
        assertThat(codes(AVisit.shortOfCharge()))
                .contains(VisitCode.LEAK_LIKELY)
                .doesNotContain(VisitCode.OWN_REMOVAL);
        assertThat(codes(taken)).contains(VisitCode.OWN_REMOVAL).doesNotContain(VisitCode.LEAK_LIKELY);
    }

    /**
     * Below the atmosphere a leak draws air in, behind whatever valve the hose hangs: common practice, no source. What the person took out
     * came from a tight system and goes back.
     */
    @ParameterizedTest
    @ValueSource(strings = {"-1 psig", "-8 psig", "-14 psig"})
    void nothingIsAddedToASystemThatLeaksBelowTheAtmosphere(String suction) {
        AVisit visit = AVisit.shortOfCharge()
                .with("system.refrigerant", "R-407C")
                .holding("R-407C")
                .gauged("170 psig")
                .with("readings.liquidPressure", "270 psig")
                .with("readings.liquidLine", "112 degF")
                .with("ports.low-side.fitting", "core-tool");
        assertThat(visit.with("readings.suctionPressure", "60 psig")
                        .report()
                        .action()
                        .kind())
                .isEqualTo(ActionKind.PUT_IN);
        AVisit leaks = visit.with("readings.suctionPressure", suction);
        assertThat(leaks.report().action().kind()).isEqualTo(ActionKind.MEND_FIRST);
        assertThat(codes(leaks)).first().isEqualTo(VisitCode.AIR_DRAWN_IN);
        AVisit own = leaks.moved("-0.5 lb", List.of(AVisit.earlier("0 lb", "12 degF")));
        // a suction of -14 psig is as good as evacuated: no compressor is fed on that, whoever emptied it
        assertThat(codes(own).contains(VisitCode.AIR_DRAWN_IN)).isEqualTo(suction.equals("-14 psig"));
    }

    private static List<Object> codes(AVisit visit) {
        return visit.report().action().because().stream()
                .<Object>map(each -> each.code())
                .toList();
    }

    @Test
    void aChargeThatDoesNotAnswerIsNotTheFault() {
        VisitReport report = AVisit.overcharged()
                .withGoodThermometers()
                .moved("-0.6 kg", List.of(AVisit.earlier("0 kg", "16 degF"), AVisit.earlier("-0.3 kg", "16 degF")))
                .report();
        assertThat(report.action().kind()).isEqualTo(ActionKind.MEND_FIRST);
        assertThat(AVisit.because(report)).containsExactly("noAnswer");
    }

    /** The right cylinder hangs there already, so nothing must be brought before the step. */
    @Test
    void aStepThatTurnsRoundNeedsNothingMoreWhereTheRightCylinderHangs() {
        VisitReport report = AVisit.overcharged()
                .moved("0.227 kg", List.of(AVisit.earlier("0 kg", "4 degF")))
                .report();
        assertThat(report.action().kind()).isEqualTo(ActionKind.TAKE_OUT);
        assertThat(report.action().because())
                .anySatisfy(each -> assertThat(each.code()).isEqualTo(StepCode.TURNS_ROUND))
                .allSatisfy(each -> assertThat(each.severity()).isEqualTo(Severity.CAUTION));
    }

    @Test
    void anActionWithoutItsPartsIsRefused() {
        assertThatThrownBy(() -> new NextAction.MakeSafe(List.of())).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new NextAction.Hold(ActionKind.DONE, List.of()))
                .isInstanceOf(IllegalArgumentException.class);
        StepOrder step = order(AVisit.overcharged());
        assertThatThrownBy(() -> new NextAction.Move(ActionKind.PREPARE, step, List.of()))
                .isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new StepOrder(
                        Mass.ZERO,
                        step.stopReading(),
                        step.neverPass(),
                        step.port(),
                        step.valve(),
                        step.phase(),
                        step.settling()))
                .isInstanceOf(IllegalArgumentException.class);
    }
}
