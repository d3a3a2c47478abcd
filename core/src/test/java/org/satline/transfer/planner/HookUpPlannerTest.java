package org.satline.transfer.planner;

import static org.assertj.core.api.Assertions.assertThat;
import static org.satline.transfer.simulator.HookUpFixture.RECOVERY;
import static org.satline.transfer.simulator.HookUpFixture.RECOVERY_VAPOUR;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.satline.quantity.Mass;
import org.satline.quantity.Pressure;
import org.satline.refrigerant.SafetyGroup;
import org.satline.transfer.hookup.EndFitting;
import org.satline.transfer.hookup.GasOrigin;
import org.satline.transfer.hookup.HookUpPlan.Phase;
import org.satline.transfer.hookup.HookUpState;
import org.satline.transfer.hookup.PlanPart;
import org.satline.transfer.hookup.PlanReason;
import org.satline.transfer.hookup.SystemPort;
import org.satline.transfer.simulator.HookUpFixture;

/** What the practice of the trade asks for as hoses go on comes out of the search, row by row. Common practice, no source. */
class HookUpPlannerTest extends PlannedActs {
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
}
