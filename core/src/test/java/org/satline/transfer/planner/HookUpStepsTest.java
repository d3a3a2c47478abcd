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
import org.satline.transfer.HoseState;
import org.satline.transfer.hookup.EndFitting;
import org.satline.transfer.hookup.HookUp;
import org.satline.transfer.hookup.HookUpPlan;
import org.satline.transfer.hookup.HookUpPlan.NoPlan;
import org.satline.transfer.hookup.HookUpPlan.Phase;
import org.satline.transfer.hookup.HookUpState;
import org.satline.transfer.hookup.Joint;
import org.satline.transfer.hookup.Manifold;
import org.satline.transfer.hookup.Opening;
import org.satline.transfer.hookup.PlanPart;
import org.satline.transfer.hookup.PlanReason;
import org.satline.transfer.hookup.PlanTask;
import org.satline.transfer.hookup.SystemPort;

/** Steps, change-over and end of job, row by row. Common practice, no source. */
class HookUpStepsTest extends PlannedActs {
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

    // ---- weighing in

    /** The hoses were evacuated with the system. */
    private HookUpState evacuatedSystem() {
        fixture.running = false;
        // as warm as the source: what is in the hoses does not boil back into it
        fixture.ambientCelsius = 28;
        fixture.lowBars = 0;
        fixture.liquidBars = 0;
        // no hose comes off a bare core below the atmosphere
        fixture.lowFitting = SystemPort.Fitting.CORE_TOOL;
        fixture.liquidFitting = SystemPort.Fitting.CORE_TOOL;
        HookUp hookUp = fixture.hookUp();
        for (String name :
                List.of("low-hose", "high-hose", "centre-hose", "low-chamber", "high-chamber", "centre-chamber")) {
            fixture.known.put(name, hookUp.evacuated());
        }
        return fixture.start()
                .withJoint("low-hose.system", new Joint("low-side", true))
                .withJoint("low-hose.cylinder", new Joint(Manifold.LOW, true))
                .withJoint("high-hose.system", new Joint("liquid-line", true))
                .withJoint("high-hose.cylinder", new Joint(Manifold.HIGH, true))
                .withJoint("centre-hose.system", new Joint(Manifold.CENTRE, true))
                .withJoint("centre-hose.cylinder", new Joint(SOURCE_VALVE, true))
                .withValve("low-side", Opening.OPEN)
                .withValve("liquid-line", Opening.OPEN)
                .withValve("high-hose.system", Opening.OPEN)
                .withValve("centre-hose.cylinder", Opening.OPEN);
    }

    @Test
    void atRestLiquidIsWeighedInByTheLiquidPortAlone() {
        HookUpState ready = evacuatedSystem();
        assertThat(planned(ready, TO_SOURCE).phases()).isEmpty();
        List<String> acts = acts(ready, IN.until(Mass.ofGrams(500)), Phase.Kind.STEP);
        assertThat(acts)
                .containsExactly(
                        "invert " + SOURCE,
                        "zeroScale scale",
                        "open " + SOURCE_VALVE,
                        "openShort high-valve",
                        "wait system",
                        "readScale scale");
        HookUpState given = after(ready, IN.until(Mass.ofGrams(500)));
        assertThat(ready.volume(SOURCE).refrigerant().grams()
                        - given.volume(SOURCE).refrigerant().grams())
                .isGreaterThan(450);
        assertThat(acts(given, END, Phase.Kind.TAKE_OFF)).contains("setUpright " + SOURCE);
    }
}
