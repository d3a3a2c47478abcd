package org.satline.visit;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.satline.transfer.HoseState;
import org.satline.transfer.hookup.HookUpPlan;
import org.satline.visit.file.AVisit;

/** The hook-up of a visit as the planner sees it. That a hose is swept before use: common practice, no source. */
class HookUpModelTest {
    static Stream<Arguments> hoses() {
        AVisit out = AVisit.overcharged();
        AVisit in = AVisit.shortOfCharge();
        return Stream.of(
                Arguments.of("swept with the system's own", out, HoseState.READY),
                Arguments.of(
                        "evacuated",
                        out.withAirInTheHose().with("cylinder.hoses[0].holds", "evacuated"),
                        HoseState.READY),
                Arguments.of(
                        "recovered, to a receiver",
                        out.with("cylinder.hoses[0].contentsFrom", "recovered"),
                        HoseState.READY),
                Arguments.of(
                        "recovered, to the system",
                        in.with("cylinder.hoses[0].contentsFrom", "recovered"),
                        HoseState.NOT_PURGED),
                Arguments.of(
                        "of the source itself", in.with("cylinder.hoses[0].contentsFrom", "source"), HoseState.READY),
                Arguments.of("air", out.withAirInTheHose(), HoseState.NOT_PURGED),
                Arguments.of("air in the manifold", out.with("manifold.holds", "air"), HoseState.NOT_PURGED),
                Arguments.of(
                        "a centre hose, of its manifold nothing said", out.without("manifold"), HoseState.NOT_PURGED),
                Arguments.of(
                        "air between two ends that seal",
                        in.hoseAt("low-side").withAirInTheHose().with("cylinder.hoses[0].cylinderEnd", "self-sealing"),
                        HoseState.CANNOT_BE_PURGED),
                Arguments.of("nothing said", out.without("cylinder.hoses").without("manifold"), HoseState.UNKNOWN),
                Arguments.of("no cylinder", out.withoutCylinder(), HoseState.UNKNOWN));
    }

    @ParameterizedTest(name = "{0}: {2}")
    @MethodSource("hoses")
    void theStateOfTheHose(String name, AVisit visit, HoseState state) {
        assertThat(visit.report().hose()).isEqualTo(state);
    }

    private static List<HookUpPlan.Phase.Kind> phases(AVisit visit) {
        HookUpPlan plan = visit.report().plan().orElseThrow();
        assertThat(plan).isInstanceOf(HookUpPlan.Planned.class);
        return ((HookUpPlan.Planned) plan)
                .phases().stream().map(HookUpPlan.Phase::kind).toList();
    }

    @Test
    void aReadyHoseIsPlannedForTheStepAloneAndAnotherIsPurgedFirst() {
        assertThat(phases(AVisit.overcharged())).containsExactly(HookUpPlan.Phase.Kind.STEP);
        assertThat(phases(AVisit.shortOfCharge())).containsExactly(HookUpPlan.Phase.Kind.STEP);
        assertThat(phases(AVisit.overcharged().withAirInTheHose()))
                .contains(HookUpPlan.Phase.Kind.PURGE)
                .doesNotContain(HookUpPlan.Phase.Kind.STEP);
        assertThat(phases(AVisit.overcharged().withAirInTheHose().with("manifold.holds", "air")))
                .containsExactly(HookUpPlan.Phase.Kind.HOOK_UP, HookUpPlan.Phase.Kind.PURGE);
    }

    /** A danger, a cylinder for the other direction or none at all: no order of valves is given for that. */
    @Test
    void thereIsNoPlanForAHookUpThatMustNotBe() {
        assertThat(AVisit.overcharged().weighing("75 lb").report().plan()).isEmpty();
        assertThat(AVisit.overcharged().low().report().plan()).isEmpty();
        assertThat(AVisit.overcharged().withoutCylinder().report().plan()).isEmpty();
        assertThat(AVisit.overcharged()
                        .without("cylinder.hoses")
                        .without("manifold")
                        .report()
                        .plan())
                .isEmpty();
    }

    /** Two valves or four: the pump's and the reclaim connection add nothing to a step. */
    @ParameterizedTest
    @CsvSource({"2", "4"})
    void bothManifoldsServe(int valves) {
        assertThat(phases(AVisit.overcharged().with("manifold.valves", valves))).isNotEmpty();
    }

    @Test
    void noActOfAPlanTouchesWhatIsNotThere() {
        HookUpPlan.Planned plan = (HookUpPlan.Planned)
                AVisit.overcharged().withAirInTheHose().report().plan().orElseThrow();
        assertThat(plan.acts())
                .isNotEmpty()
                .allSatisfy(act -> assertThat(act.target())
                        .matches("(low|high|centre|charging|vacuum|cylinder|liquid-line|low-side).*|"));
    }

    /** Gas of unknown origin counts as mixed. */
    @Test
    void contentsThatNobodyVouchesForAreNotReady() {
        assertThat(AVisit.overcharged()
                        .without("cylinder.hoses[0].contentsFrom")
                        .report()
                        .hose())
                .isNotEqualTo(HoseState.READY);
    }

    private static Map<String, Object> source() {
        Map<String, Object> source = new HashMap<>();
        source.put("name", "cylinder no. 7");
        source.put("valve", "source-liquid");
        source.put("specification", "DOT-39");
        source.put("tare", "6 lb");
        source.put("waterCapacity", "30 lb");
        source.put("holding", "R-410A");
        source.put("temperature", "84 degF");
        source.put("pressure", "252 psig");
        source.put("scaleReading", "20 lb");
        source.put("provenance", "new");
        return source;
    }

    private static List<String> acts(VisitReport report) {
        return report.actsNow().orElseThrow().acts().stream()
                .map(act -> act.kind().code() + " " + act.target())
                .toList();
    }

    /** The hose leaves the recovery cylinder and goes to the source beside it; the source is then the one that is connected. */
    @Test
    void shortOfChargeOnTheRecoveryCylinderTheHoseGoesToTheSourceBesideIt() {
        VisitReport report = AVisit.overcharged().low().withBeside(source()).report();
        assertThat(report.action().kind()).isEqualTo(ActionKind.PREPARE);
        assertThat(report.hose()).isEqualTo(HoseState.NOT_PURGED);
        assertThat(report.ask()).contains("connected");
        assertThat(phases(AVisit.overcharged().low().withBeside(source())))
                .containsExactly(HookUpPlan.Phase.Kind.LEAVE, HookUpPlan.Phase.Kind.PURGE);
        assertThat(acts(report)).contains("connectLoose centre-hose.cylinder");
    }

    /** What stands in the way of the other cylinder holds before the hose goes there. */
    @Test
    void theHoseGoesToNoCylinderThatMayNotGive() {
        Map<String, Object> bad = source();
        bad.put("holding", "R-22");
        assertThat(AVisit.overcharged().low().withBeside(bad).report().actsNow())
                .isEmpty();
        Map<String, Object> used = source();
        used.put("specification", "DOT-4BW400");
        used.put("retestDue", "2029-04-30");
        used.put("provenance", "mixed-recovered");
        assertThat(AVisit.overcharged().low().withBeside(used).report().actsNow())
                .isEmpty();
    }

    /** After a step the high valve stands open and the hose is full: that is shut first, then the low valve is cracked. */
    @Test
    void aHoseFullOfLiquidIsLeftBehindAShutHighValve() {
        AVisit full = AVisit.overcharged().with("cylinder.hoses[0].holds", "liquid");
        assertThat(acts(full.low().withBeside(source()).report())).startsWith("close high-valve", "crack low-valve");
        assertThat(acts(full.report())).first().isEqualTo("openShort cylinder.vapour");
    }

    @Test
    void whatIsDoneComesOffAndIsCapped() {
        VisitReport report = AVisit.onTarget().report();
        assertThat(report.action().kind()).isEqualTo(ActionKind.DONE);
        assertThat(phases(AVisit.onTarget())).containsExactly(HookUpPlan.Phase.Kind.TAKE_OFF);
        assertThat(acts(report))
                .containsSubsequence("close high-hose.system", "crack low-valve", "takeOff low-hose.system")
                .contains("cap low-side", "cap liquid-line");
        assertThat(AVisit.onTarget().withAirInTheHose().report().actsNow()).isEmpty();
    }
}
