package org.satline.visit;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
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
}
