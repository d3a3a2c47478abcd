package org.satline.transfer.planner;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.satline.transfer.simulator.HookUpFixture.RECOVERY;
import static org.satline.transfer.simulator.HookUpFixture.RECOVERY_VAPOUR;
import static org.satline.transfer.simulator.HookUpFixture.SOURCE;
import static org.satline.transfer.simulator.HookUpFixture.SOURCE_VALVE;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.satline.quantity.Mass;
import org.satline.quantity.Pressure;
import org.satline.refrigerant.SafetyGroup;
import org.satline.transfer.HoseState;
import org.satline.transfer.hookup.Act;
import org.satline.transfer.hookup.EndFitting;
import org.satline.transfer.hookup.GasOrigin;
import org.satline.transfer.hookup.HookUp;
import org.satline.transfer.hookup.HookUpPlan;
import org.satline.transfer.hookup.HookUpPlan.NoPlan;
import org.satline.transfer.hookup.HookUpPlan.Phase;
import org.satline.transfer.hookup.HookUpPlan.Planned;
import org.satline.transfer.hookup.HookUpState;
import org.satline.transfer.hookup.Manifold;
import org.satline.transfer.hookup.Opening;
import org.satline.transfer.hookup.PlanPart;
import org.satline.transfer.hookup.PlanReason;
import org.satline.transfer.hookup.PlanTask;
import org.satline.transfer.hookup.SystemPort;
import org.satline.transfer.simulator.HookUpFixture;
import org.satline.transfer.simulator.HookUpSimulator;

/** What the practice of the trade asks for comes out of the search, row by row. Common practice, no source. */
class HookUpPlannerTest {
    private final HookUpFixture fixture = new HookUpFixture();

    HookUpPlannerTest() {
        // the least that lets a liquid port go again
        fixture.highPortEnd = EndFitting.OPEN_CLOSE_VALVE;
    }

    private static PlanTask task(PlanTask.Kind kind, String cylinder) {
        return PlanTask.of(kind, cylinder);
    }

    private static final PlanTask TO_RECOVERY = task(PlanTask.Kind.CONNECT_AND_PURGE, RECOVERY);
    private static final PlanTask TO_SOURCE = task(PlanTask.Kind.CONNECT_AND_PURGE, SOURCE);
    private static final PlanTask OUT = task(PlanTask.Kind.STEP_OUT, RECOVERY);
    private static final PlanTask IN = task(PlanTask.Kind.STEP_IN, SOURCE);
    private static final PlanTask END = task(PlanTask.Kind.END_OF_JOB, "");

    private HookUpPlan plan(HookUpState state, PlanTask task) {
        return HookUpPlanner.plan(fixture.hookUp(), state, task);
    }

    /** Plans a task, plays it without a violation, and gives the state after it. */
    private HookUpState after(HookUpState state, PlanTask task) {
        List<HookUpSimulator.Outcome> outcomes = new HookUpSimulator(fixture.hookUp())
                .play(state, planned(state, task).acts());
        assertThat(HookUpSimulator.violations(outcomes))
                .as(() -> planned(state, task).acts().stream()
                        .map(HookUpPlannerTest::name)
                        .toList()
                        .toString())
                .isEmpty();
        return outcomes.isEmpty() ? state : outcomes.get(outcomes.size() - 1).state();
    }

    private Planned planned(HookUpState state, PlanTask task) {
        HookUpPlan plan = plan(state, task);
        assertThat(plan).isInstanceOf(Planned.class);
        return (Planned) plan;
    }

    private List<String> acts(HookUpState state, PlanTask task, Phase.Kind kind) {
        after(state, task);
        return planned(state, task).phases().stream()
                .filter(phase -> phase.kind() == kind)
                .flatMap(phase -> phase.acts().stream())
                .map(HookUpPlannerTest::name)
                .toList();
    }

    private static String name(Act act) {
        return act.kind().code() + " " + act.target()
                + act.to().map(to -> " " + to).orElse("");
    }

    private void refused(HookUpState state, PlanTask task, PlanReason reason, PlanPart... parts) {
        assertThat(plan(state, task)).isEqualTo(new NoPlan(reason, List.of(parts)));
    }

    // ---- first hook-up

    @Test
    void firstHookUpSweepsLowHoseManifoldAndHighHoseToItsLooseJoint() {
        assertThat(acts(fixture.start(), TO_RECOVERY, Phase.Kind.HOOK_UP))
                .containsExactly(
                        "connectTight low-hose.cylinder manifold.low",
                        "connectTight high-hose.cylinder manifold.high",
                        "connectLoose high-hose.system liquid-line",
                        "connectTight low-hose.system low-side",
                        "open high-hose.system",
                        "open high-valve",
                        "crack low-valve",
                        "close high-valve",
                        "tighten high-hose.system",
                        "close low-valve");
    }

    @Test
    void firstHookUpWithASelfSealingEndAtTheHighPortEvacuatesBeforeItGoesOn() {
        fixture.highPortEnd = EndFitting.SELF_SEALING;
        List<String> acts = acts(fixture.start(), TO_RECOVERY, Phase.Kind.HOOK_UP);
        assertThat(acts.indexOf("start pump")).isBetween(0, acts.indexOf("connectTight high-hose.system liquid-line"));
    }

    @Test
    void aPlainEndOnTheCoreOfALiquidPortIsNotBegun() {
        fixture.highPortEnd = EndFitting.PLAIN_FLARE;
        refused(fixture.start(), TO_RECOVERY, PlanReason.PLAIN_END_ON_CORE, PlanPart.SHUT_OFF_AT_PORT);
    }

    // ---- the hose to the cylinder

    @Test
    void aHandValveAtTheCylinderIsSweptWithLowSideVapourToTheLooseJoint() {
        assertThat(acts(fixture.start(), TO_RECOVERY, Phase.Kind.PURGE))
                .containsExactly(
                        "connectTight centre-hose.system manifold.centre",
                        "connectLoose centre-hose.cylinder " + RECOVERY_VAPOUR,
                        "open centre-hose.cylinder",
                        "crack low-valve",
                        "tighten centre-hose.cylinder",
                        "close low-valve");
    }

    @Test
    void aPlainEndAtTheCylinderIsSweptTheSameWay() {
        fixture.centreCylinderEnd = EndFitting.PLAIN_FLARE;
        assertThat(acts(fixture.start(), TO_RECOVERY, Phase.Kind.PURGE))
                .containsSubsequence("crack low-valve", "tighten centre-hose.cylinder", "close low-valve");
    }

    @Test
    void aSelfSealingEndAtACylinderWithContentsIsTurnedRound() {
        fixture.centreCylinderEnd = EndFitting.SELF_SEALING;
        assertThat(acts(fixture.start(), TO_RECOVERY, Phase.Kind.PURGE))
                .startsWith("turnRound centre-hose")
                .containsSubsequence("crack low-valve", "tighten centre-hose.cylinder");
    }

    @Test
    void aSelfSealingEndAtAnEvacuatedCylinderIsTurnedRound() {
        fixture.recoveryKilograms = 0;
        fixture.centreCylinderEnd = EndFitting.SELF_SEALING;
        assertThat(acts(fixture.start(), TO_RECOVERY, Phase.Kind.PURGE)).startsWith("turnRound centre-hose");
    }

    @Test
    void aHoseThatSealsAtBothEndsIsEvacuated() {
        bothSeal();
        assertThat(acts(fixture.start(), TO_RECOVERY, Phase.Kind.PURGE)).contains("start pump");
    }

    @Test
    void aHoseThatSealsAtBothEndsHasNoPlanWithoutAPump() {
        bothSeal();
        fixture.pump = false;
        refused(fixture.start(), TO_RECOVERY, PlanReason.BOTH_ENDS_SELF_SEALING, PlanPart.VACUUM_PUMP);
    }

    @Test
    void aHoseChargedWithThisSystemsVapourNeedsNoSweep() {
        bothSeal();
        fixture.pump = false;
        fixture.known.put("centre-hose", fixture.hookUp().vapour("centre-hose", Pressure.ofBars(9), GasOrigin.SYSTEM));
        assertThat(acts(fixture.start(), TO_RECOVERY, Phase.Kind.PURGE))
                .containsExactly(
                        "connectTight centre-hose.system manifold.centre",
                        "connectTight centre-hose.cylinder " + RECOVERY_VAPOUR);
    }

    private void bothSeal() {
        fixture.centreSystemEnd = EndFitting.SELF_SEALING;
        fixture.centreCylinderEnd = EndFitting.SELF_SEALING;
    }

    @Test
    void aHoseOfUnknownContentIsEvacuated() {
        fixture.centreCylinderEnd = EndFitting.OPEN_CLOSE_VALVE;
        fixture.centreSystemEnd = EndFitting.SELF_SEALING;
        fixture.known.put("centre-hose", fixture.hookUp().vapour("centre-hose", Pressure.ofBars(4), GasOrigin.UNKNOWN));
        assertThat(acts(fixture.start(), TO_RECOVERY, Phase.Kind.PURGE)).contains("start pump");
        fixture.pump = false;
        refused(fixture.start(), TO_RECOVERY, PlanReason.UNKNOWN_CONTENTS, PlanPart.VACUUM_PUMP);
    }

    // ---- low side below the atmosphere, toxic and flammable gases

    @Test
    void aLowSideBelowTheAtmosphereIsHookedUpBehindAStemAndEvacuated() {
        fixture.lowBars = 0.7;
        fixture.lowFitting = SystemPort.Fitting.STEM;
        fixture.liquidFitting = SystemPort.Fitting.STEM;
        List<String> acts = acts(fixture.start(), TO_RECOVERY, Phase.Kind.HOOK_UP);
        assertThat(acts.indexOf("start pump")).isBetween(0, acts.indexOf("open low-side"));
    }

    @Test
    void aLowSideBelowTheAtmosphereHasNoPlanOnABareCore() {
        fixture.lowBars = 0.7;
        refused(fixture.start(), TO_RECOVERY, PlanReason.LOW_SIDE_BELOW_ATMOSPHERE, PlanPart.CORE_TOOL);
    }

    @Test
    void toxicAndClassThreeGasesNeedShutOffsAndEvacuationAndNothingIsVented() {
        for (SafetyGroup group : List.of(SafetyGroup.A3, SafetyGroup.B2L)) {
            fixture.group = group;
            fixture.lowFitting = SystemPort.Fitting.VALVE_CORE;
            fixture.liquidFitting = SystemPort.Fitting.VALVE_CORE;
            refused(
                    fixture.start(),
                    TO_RECOVERY,
                    group.isToxic() ? PlanReason.TOXIC_NEEDS_MACHINE : PlanReason.FLAMMABLE_NEEDS_EVACUATION,
                    PlanPart.CORE_TOOL,
                    PlanPart.SHUT_OFF_AT_PORT);
            fixture.lowFitting = SystemPort.Fitting.STEM;
            fixture.liquidFitting = SystemPort.Fitting.STEM;
            // a plain end at the port would let the hose's vapour go
            refused(
                    fixture.start(),
                    TO_RECOVERY,
                    group.isToxic() ? PlanReason.TOXIC_NEEDS_MACHINE : PlanReason.FLAMMABLE_NEEDS_EVACUATION,
                    PlanPart.SHUT_OFF_AT_PORT);
            fixture.lowPortEnd = EndFitting.SELF_SEALING;
            assertThat(planned(fixture.start(), TO_RECOVERY).phases())
                    .allSatisfy(phase -> assertThat(phase.vented()).isEqualTo(Mass.ZERO));
            assertThat(acts(fixture.start(), TO_RECOVERY, Phase.Kind.HOOK_UP)).contains("start pump");
            fixture.lowPortEnd = EndFitting.PLAIN_FLARE;
        }
    }

    @Test
    void classTwoLIsSweptLikeClassOne() {
        List<String> acts = acts(fixture.start(), TO_RECOVERY, Phase.Kind.HOOK_UP);
        fixture.group = SafetyGroup.A2L;
        assertThat(acts(fixture.start(), TO_RECOVERY, Phase.Kind.HOOK_UP)).isEqualTo(acts);
    }

    // ---- pressures

    @Test
    void aCylinderAtOrAboveTheLiquidLineTakesNothing() {
        fixture.recoveryCelsius = 50;
        refused(fixture.start(), TO_RECOVERY, PlanReason.PRESSURE_NOT_BELOW, PlanPart.COLD_CYLINDER);
        // two kelvins apart count as equal
        fixture.recoveryCelsius = 38;
        fixture.liquidBars = HookUpFixture.GAS.bubblePressurePa(313.15) / 1e5;
        refused(fixture.start(), TO_RECOVERY, PlanReason.PRESSURE_NOT_BELOW, PlanPart.COLD_CYLINDER);
    }

    @Test
    void atRestNothingPushesUnlessTheCylinderIsColdOrEvacuated() {
        rest();
        fixture.recoveryCelsius = 30;
        refused(fixture.start(), TO_RECOVERY, PlanReason.AT_REST, PlanPart.RECOVERY_MACHINE);
        fixture.recoveryKilograms = 0;
        HookUpState ready = after(fixture.start(), TO_RECOVERY);
        HookUpState stepped = after(ready, OUT);
        assertThat(stepped.volume(RECOVERY).refrigerant().grams()).isPositive();
        after(stepped, END);
    }

    private void rest() {
        fixture.running = false;
        fixture.ambientCelsius = 30;
        fixture.lowBars = HookUpFixture.GAS.bubblePressurePa(303.15) / 1e5;
        fixture.liquidBars = fixture.lowBars;
    }

    @Test
    void aSourceNoWarmerThanTheEvaporatingTemperatureGivesNothing() {
        fixture.lowBars = 17.5;
        refused(fixture.start(), TO_SOURCE, PlanReason.SOURCE_NOT_ABOVE, PlanPart.WARM_SOURCE);
    }

    @Test
    void atRestNothingIsPutInByLiquid() {
        rest();
        refused(fixture.start(), TO_SOURCE, PlanReason.AT_REST, PlanPart.RUNNING_SYSTEM);
    }

    // ---- steps

    @Test
    void aStepOutOpensTheHighValveAndThenTheCylinderInShortOpenings() {
        HookUpState ready = after(fixture.start(), TO_RECOVERY);
        PlanTask step = OUT.until(Mass.ofGrams(150));
        assertThat(acts(ready, step, Phase.Kind.STEP))
                .containsExactly("open high-valve", "openShort " + RECOVERY_VAPOUR, "wait system", "readScale scale");
        HookUpState waiting = after(ready, step);
        // cylinder shut, high open, low shut: nothing is shut in and the high gauge reads the line
        assertThat(waiting.valve(RECOVERY_VAPOUR)).isEqualTo(Opening.SHUT);
        assertThat(waiting.valve(Manifold.HIGH_VALVE)).isEqualTo(Opening.OPEN);
        assertThat(waiting.valve(Manifold.LOW_VALVE)).isEqualTo(Opening.SHUT);
        assertThat(waiting.volume("high-chamber").pressure().bars()).isEqualTo(fixture.liquidBars);
        // the next step is one valve
        assertThat(acts(waiting, step, Phase.Kind.STEP))
                .containsExactly("openShort " + RECOVERY_VAPOUR, "wait system", "readScale scale");
    }

    @Test
    void anEvacuatedCylinderTakesASmallStepByTheLowValveWhereThereIsNoLiquidPort() {
        fixture.recoveryKilograms = 0;
        fixture.onlyLowPort = true;
        HookUpState ready = after(fixture.start(), TO_RECOVERY);
        assertThat(acts(ready, OUT, Phase.Kind.STEP)).contains("crack low-valve", "openShort " + RECOVERY_VAPOUR);
        fixture.glide = true;
        assertThat(plan(ready, OUT)).isInstanceOf(NoPlan.class);
    }

    @Test
    void oneServicePortOnlyHasNoStepIntoACylinderWithContents() {
        fixture.onlyLowPort = true;
        refused(fixture.start(), TO_RECOVERY, PlanReason.PRESSURE_NOT_BELOW, PlanPart.COLD_CYLINDER);
    }

    @Test
    void theLiquidValveOfTheRecoveryCylinderIsNeverPartOfAStepOut() {
        HookUpState ready = after(fixture.start(), TO_RECOVERY);
        assertThat(planned(ready, OUT).acts()).noneMatch(act -> act.target().equals(RECOVERY + ".liquid"));
    }

    @Test
    void aStepInInvertsZeroesTheScaleOpensTheSourceAndMetersByTheLowValve() {
        HookUpState ready = after(fixture.start(), TO_SOURCE);
        assertThat(acts(ready, IN, Phase.Kind.STEP))
                .containsExactly(
                        "invert " + SOURCE,
                        "zeroScale scale",
                        "open " + SOURCE_VALVE,
                        "openShort low-valve",
                        "wait system",
                        "readScale scale");
    }

    // ---- change-over and end

    @Test
    void changeOverShutsTheHighValveAndTheNextActCracksTheLow() {
        HookUpState stepped = after(after(fixture.start(), TO_RECOVERY), OUT);
        PlanTask over = task(PlanTask.Kind.CHANGE_OVER, SOURCE);
        assertThat(acts(stepped, over, Phase.Kind.LEAVE)).startsWith("close high-valve", "crack low-valve");
        assertThat(acts(stepped, over, Phase.Kind.LEAVE))
                .containsSubsequence("close centre-hose.cylinder", "takeOff centre-hose.cylinder");
        HookUpState source = after(stepped, over);
        HookUpState given = after(source, IN);
        HookUpState back = after(given, task(PlanTask.Kind.CHANGE_OVER, RECOVERY));
        after(after(back, OUT), END);
    }

    @Test
    void addingIsDoneTheSourceShutAndTheHoseDrawnToSuction() {
        HookUpState given = after(after(fixture.start(), TO_SOURCE), IN);
        List<String> acts = acts(given, END, Phase.Kind.TAKE_OFF);
        assertThat(acts).containsSubsequence("close " + SOURCE_VALVE, "takeOff centre-hose.cylinder");
        assertThat(acts.indexOf("crack low-valve")).isLessThan(acts.indexOf("takeOff centre-hose.cylinder"));
    }

    @Test
    void endOfJobShutsTheHighEndThenCracksTheLowThenTakesOffAndCaps() {
        HookUpState stepped = after(after(fixture.start(), TO_RECOVERY), OUT);
        assertThat(acts(stepped, END, Phase.Kind.TAKE_OFF))
                .startsWith("close high-hose.system", "crack low-valve")
                .containsSubsequence(
                        "close high-valve",
                        "takeOff high-hose.system",
                        "takeOff low-hose.system",
                        "cap low-side",
                        "cap liquid-line",
                        "readScale scale");
    }

    @Test
    void endOfJobWithASelfSealingEndUnscrewsItBeforeTheLowValveIsCracked() {
        fixture.highPortEnd = EndFitting.SELF_SEALING;
        HookUpState stepped = after(after(fixture.start(), TO_RECOVERY), OUT);
        assertThat(acts(stepped, END, Phase.Kind.TAKE_OFF)).startsWith("takeOff high-hose.system", "crack low-valve");
    }

    @Test
    void endOfJobWithAPlainEndOnACoreHasNoPlan() {
        HookUpState stepped = after(after(fixture.start(), TO_RECOVERY), OUT);
        fixture.highPortEnd = EndFitting.PLAIN_FLARE;
        refused(stepped, END, PlanReason.PLAIN_END_ON_CORE, PlanPart.SHUT_OFF_AT_PORT);
    }

    // ----

    @Test
    void carbonDioxideHasNoPlanAboveItsCriticalPressureNorWithLiquidThatMustBeShutIn() {
        fixture.carbonDioxide = true;
        refused(fixture.start(), TO_RECOVERY, PlanReason.CARBON_DIOXIDE_LIQUID, PlanPart.RECOVERY_MACHINE);
        refused(fixture.start(), TO_SOURCE, PlanReason.CARBON_DIOXIDE_LIQUID);
        fixture.liquidBars = 90;
        refused(fixture.start(), TO_RECOVERY, PlanReason.TRANSCRITICAL);
    }

    // ---- what it answers

    @Test
    void hoseStateFollowsFromThePlan() {
        HookUp hookUp = fixture.hookUp();
        HookUpState start = fixture.start();
        assertThat(HoseState.of(hookUp, start, Optional.empty())).isEqualTo(HoseState.UNKNOWN);
        assertThat(HoseState.of(hookUp, start, Optional.of(plan(start, TO_RECOVERY))))
                .isEqualTo(HoseState.NOT_PURGED);
        HookUpState ready = after(start, TO_RECOVERY);
        assertThat(HoseState.of(hookUp, ready, Optional.of(plan(ready, TO_RECOVERY))))
                .isEqualTo(HoseState.READY);
        fixture.highPortEnd = EndFitting.PLAIN_FLARE;
        assertThat(HoseState.of(hookUp, start, Optional.of(plan(start, TO_RECOVERY))))
                .isEqualTo(HoseState.CANNOT_BE_PURGED);
        assertThat(HoseState.READY.word()).isEqualTo("ready");
    }

    @Test
    void aCylinderThatIsNotThereIsRefused() {
        assertThatThrownBy(() -> plan(fixture.start(), task(PlanTask.Kind.STEP_IN, "none")))
                .isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void theSamePlanComesOutEveryTime() {
        List<HookUpPlan> plans = new ArrayList<>();
        for (int i = 0; i < 3; i++) {
            plans.add(plan(fixture.start(), TO_RECOVERY));
        }
        assertThat(plans).containsOnly(plans.get(0));
    }
}
