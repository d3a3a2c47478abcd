package org.satline.transfer.planner;

import static org.assertj.core.api.Assertions.assertThat;
import static org.satline.transfer.simulator.HookUpFixture.RECOVERY;
import static org.satline.transfer.simulator.HookUpFixture.RECOVERY_VAPOUR;
import static org.satline.transfer.simulator.HookUpFixture.SOURCE_VALVE;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.satline.quantity.Mass;
import org.satline.refrigerant.SafetyGroup;
import org.satline.transfer.hookup.EndFitting;
import org.satline.transfer.hookup.HookUp;
import org.satline.transfer.hookup.HookUpPlan;
import org.satline.transfer.hookup.HookUpPlan.Phase;
import org.satline.transfer.hookup.HookUpState;
import org.satline.transfer.hookup.PlanPart;
import org.satline.transfer.hookup.PlanReason;
import org.satline.transfer.hookup.SystemPort;

/**
 * A recovery machine against pressure, and a source's vapour where the low side drives nothing out: swept or evacuated in order, cylinder
 * open
 * before start, inlet shut, self-purge, stop, cylinder shut. Common practice, no source.
 */
class MachinePlansTest extends PlannedActs {
    MachinePlansTest() {
        fixture.recoveryCelsius = 50;
        fixture.outletHose = true;
    }

    @Test
    void bothSidesOfTheMachineAreEvacuatedBeforeItsHoseGoesToTheCylinder() {
        List<String> acts = acts(fixture.start(), TO_RECOVERY, Phase.Kind.PURGE);
        assertThat(acts)
                .containsSubsequence(
                        "start pump",
                        "open machine.inlet",
                        "close machine.inlet",
                        "open machine.outlet",
                        "close machine.outlet",
                        "stop pump",
                        "tighten outlet-hose.cylinder",
                        "connectTight centre-hose.system manifold.centre",
                        "connectLoose centre-hose.cylinder machine.inlet",
                        "crack low-valve",
                        "tighten centre-hose.cylinder");
    }

    @Test
    void aStepGoesAgainstPressureWithTheCylinderOpenBeforeTheStart() {
        HookUpState ready = after(fixture.start(), TO_RECOVERY);
        assertThat(acts(ready, OUT.until(Mass.ofGrams(150)), Phase.Kind.STEP))
                .containsExactly(
                        "open high-valve",
                        "open " + RECOVERY_VAPOUR,
                        "open machine.outlet",
                        "start machine",
                        "openShort machine.inlet",
                        "selfPurge machine",
                        "stop machine",
                        "close machine.outlet",
                        "close " + RECOVERY_VAPOUR,
                        "wait system",
                        "readScale scale");
        HookUpState stepped = after(ready, OUT.until(Mass.ofGrams(150)));
        double gained = stepped.volume(RECOVERY).refrigerant().grams()
                - ready.volume(RECOVERY).refrigerant().grams();
        // the step, and what stands in the inlet side of the machine as it is shut: 20 mL of liquid of 0.96 g/mL
        assertThat(gained).isBetween(150.0, 170.0);
        assertThat(acts(stepped, END, Phase.Kind.LEAVE))
                .containsSubsequence(
                        "start machine",
                        "close high-hose.system",
                        "open machine.inlet",
                        "close machine.inlet",
                        "selfPurge machine",
                        "stop machine");
        after(stepped, END);
    }

    @Test
    void aToxicGasIsEmptiedByTheMachineAndNothingIsVented() {
        fixture.group = SafetyGroup.B2L;
        fixture.lowFitting = SystemPort.Fitting.STEM;
        fixture.liquidFitting = SystemPort.Fitting.STEM;
        fixture.lowPortEnd = EndFitting.OPEN_CLOSE_VALVE;
        fixture.known.put(HookUp.MACHINE_INLET, fixture.hookUp().evacuated());
        fixture.known.put(HookUp.MACHINE_OUTLET, fixture.hookUp().evacuated());
        HookUpState stepped = after(after(fixture.start(), TO_RECOVERY), OUT);
        for (HookUpPlan.Planned plan : List.of(planned(fixture.start(), TO_RECOVERY), planned(stepped, END))) {
            assertThat(plan.phases())
                    .allSatisfy(phase -> assertThat(phase.vented()).isEqualTo(Mass.ZERO));
        }
        after(stepped, END);
    }

    @Test
    void whatTheMachineHoldsIsTheLastJobsAndNeedsAPump() {
        fixture.pump = false;
        refused(fixture.start(), TO_RECOVERY, PlanReason.UNKNOWN_CONTENTS, PlanPart.VACUUM_PUMP);
    }

    @Test
    void aCylinderThatIsFedByPressureNeedsNoMachine() {
        fixture.recoveryCelsius = 25;
        assertThat(planned(fixture.start(), TO_RECOVERY).acts())
                .noneMatch(act -> act.target().startsWith(HookUp.MACHINE));
    }

    @Test
    void aSourcesVapourSweepsManifoldAndHosesWhereTheLowSideIsBelowTheAtmosphere() {
        fixture.lowBars = 0.7;
        fixture.pump = false;
        fixture.lowFitting = SystemPort.Fitting.STEM;
        fixture.liquidFitting = SystemPort.Fitting.STEM;
        assertThat(acts(fixture.start(), TO_SOURCE, Phase.Kind.HOOK_UP))
                .containsSubsequence(
                        "connectLoose low-hose.system low-side",
                        "crack " + SOURCE_VALVE,
                        "tighten low-hose.system",
                        "open high-valve",
                        "tighten high-hose.system",
                        "close " + SOURCE_VALVE);
        after(after(after(fixture.start(), TO_SOURCE), IN), END);
    }
}
