package org.satline.transfer.planner;

import static org.assertj.core.api.Assertions.assertThat;
import static org.satline.transfer.simulator.HookUpFixture.RECOVERY;
import static org.satline.transfer.simulator.HookUpFixture.SOURCE;

import java.util.List;
import org.satline.transfer.hookup.Act;
import org.satline.transfer.hookup.EndFitting;
import org.satline.transfer.hookup.HookUpPlan;
import org.satline.transfer.hookup.HookUpPlan.NoPlan;
import org.satline.transfer.hookup.HookUpPlan.Phase;
import org.satline.transfer.hookup.HookUpPlan.Planned;
import org.satline.transfer.hookup.HookUpState;
import org.satline.transfer.hookup.PlanPart;
import org.satline.transfer.hookup.PlanReason;
import org.satline.transfer.hookup.PlanTask;
import org.satline.transfer.simulator.HookUpFixture;
import org.satline.transfer.simulator.HookUpSimulator;

/** Plans asked on one hook-up, played without a violation, and their acts by name. */
abstract class PlannedActs {
    final HookUpFixture fixture = new HookUpFixture();

    PlannedActs() {
        // the least that lets a liquid port go again
        fixture.highPortEnd = EndFitting.OPEN_CLOSE_VALVE;
    }

    static PlanTask task(PlanTask.Kind kind, String cylinder) {
        return PlanTask.of(kind, cylinder);
    }

    static final PlanTask TO_RECOVERY = task(PlanTask.Kind.CONNECT_AND_PURGE, RECOVERY);
    static final PlanTask TO_SOURCE = task(PlanTask.Kind.CONNECT_AND_PURGE, SOURCE);
    static final PlanTask OUT = task(PlanTask.Kind.STEP_OUT, RECOVERY);
    static final PlanTask IN = task(PlanTask.Kind.STEP_IN, SOURCE);
    static final PlanTask END = task(PlanTask.Kind.END_OF_JOB, "");

    HookUpPlan plan(HookUpState state, PlanTask task) {
        return HookUpPlanner.plan(fixture.hookUp(), state, task);
    }

    /** Plans a task, plays it without a violation, and gives the state after it. */
    HookUpState after(HookUpState state, PlanTask task) {
        List<HookUpSimulator.Outcome> outcomes = new HookUpSimulator(fixture.hookUp())
                .play(state, planned(state, task).acts());
        assertThat(HookUpSimulator.violations(outcomes))
                .as(() -> planned(state, task).acts().stream()
                        .map(PlannedActs::name)
                        .toList()
                        .toString())
                .isEmpty();
        return outcomes.isEmpty() ? state : outcomes.get(outcomes.size() - 1).state();
    }

    Planned planned(HookUpState state, PlanTask task) {
        HookUpPlan plan = plan(state, task);
        assertThat(plan).isInstanceOf(Planned.class);
        return (Planned) plan;
    }

    List<String> acts(HookUpState state, PlanTask task, Phase.Kind kind) {
        after(state, task);
        return planned(state, task).phases().stream()
                .filter(phase -> phase.kind() == kind)
                .flatMap(phase -> phase.acts().stream())
                .map(PlannedActs::name)
                .toList();
    }

    static String name(Act act) {
        return act.kind().code() + " " + act.target()
                + act.to().map(to -> " " + to).orElse("");
    }

    void refused(HookUpState state, PlanTask task, PlanReason reason, PlanPart... parts) {
        assertThat(plan(state, task)).isEqualTo(new NoPlan(reason, List.of(parts)));
    }

    void rest() {
        fixture.running = false;
        fixture.ambientCelsius = 30;
        fixture.lowBars = HookUpFixture.GAS.bubblePressurePa(303.15) / 1e5;
        fixture.liquidBars = fixture.lowBars;
    }
}
