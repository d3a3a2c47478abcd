package org.satline.transfer.planner;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.satline.transfer.hookup.GasOrigin;
import org.satline.transfer.hookup.HookUp;
import org.satline.transfer.hookup.HookUpState;
import org.satline.transfer.hookup.Joint;
import org.satline.transfer.hookup.Manifold;
import org.satline.transfer.hookup.Opening;
import org.satline.transfer.hookup.PlanTask;
import org.satline.transfer.hookup.SystemPort;
import org.satline.transfer.simulator.HookUpFixture;

/**
 * Where the planner gives a reason, every act that a hand could try is tried in the simulator, up to 14 acts deep or a number of states. It
 * starts with the hoses at the ports on and clean, so that 14 acts are enough.
 */
final class BlindTrial {
    /** Of so many sites the steps that are planned are searched for too: that shows that the search finds what is there. */
    private static final int SITES_WITH_STEPS = 60;

    final List<String> found = new ArrayList<>();
    int searched;
    /** Steps that the planner finds, and those of them that the search finds too. */
    final int[] steps = new int[2];

    private final int mostStates;
    private final boolean searchesSteps;

    private BlindTrial(int mostStates, boolean searchesSteps) {
        this.mostStates = mostStates;
        this.searchesSteps = searchesSteps;
    }

    /** Tries hook-ups, on as many processors as there are. */
    static BlindTrial of(List<HookUpCases.Case> sites, int mostStates) {
        List<BlindTrial> each = IntStream.range(0, sites.size())
                .parallel()
                .mapToObj(i -> {
                    BlindTrial trial = new BlindTrial(mostStates, i < SITES_WITH_STEPS);
                    trial.site(sites.get(i));
                    return trial;
                })
                .toList();
        BlindTrial all = new BlindTrial(mostStates, true);
        for (BlindTrial trial : each) {
            all.found.addAll(trial.found);
            all.searched += trial.searched;
            all.steps[0] += trial.steps[0];
            all.steps[1] += trial.steps[1];
        }
        return all;
    }

    private void site(HookUpCases.Case site) {
        HookUp hookUp = site.hookUp();
        String hose = site.kit() == HookUpCases.Kit.DIRECT ? "direct-hose" : "centre-hose";
        HookUpState hooked = hookedUp(hookUp, site.start());
        HookUpState ready = onCylinder(hookUp, hooked, hose, HookUpFixture.RECOVERY_VAPOUR);
        HookUpState source = onCylinder(hookUp, hooked, hose, HookUpFixture.SOURCE_VALVE);
        ask(site, hookUp, ready, PlanTask.of(PlanTask.Kind.STEP_OUT, HookUpFixture.RECOVERY));
        ask(site, hookUp, source, PlanTask.of(PlanTask.Kind.STEP_IN, HookUpFixture.SOURCE));
        ask(site, hookUp, hooked, PlanTask.of(PlanTask.Kind.END_OF_JOB, ""));
        ask(site, hookUp, hooked, PlanTask.of(PlanTask.Kind.CONNECT_AND_PURGE, HookUpFixture.RECOVERY));
        ask(site, hookUp, hooked, PlanTask.of(PlanTask.Kind.CONNECT_AND_PURGE, HookUpFixture.SOURCE));
    }

    private void ask(HookUpCases.Case site, HookUp hookUp, HookUpState start, PlanTask task) {
        boolean step = task.kind() == PlanTask.Kind.STEP_OUT || task.kind() == PlanTask.Kind.STEP_IN;
        boolean planned = HookUpPlanner.attempt(hookUp, start, task).isPresent();
        if (planned && step && searchesSteps) {
            steps[0]++;
            steps[1] += new BlindSearch(hookUp, start, task, mostStates).run().isPresent() ? 1 : 0;
        }
        if (!planned) {
            searched++;
            new BlindSearch(hookUp, start, task, mostStates)
                    .run()
                    .ifPresent(acts ->
                            found.add(task.kind() + " " + task.cylinder() + " " + site + " " + PlanTrial.names(acts)));
        }
    }

    /** The hoses at the ports on and full of what stands there. */
    private static HookUpState hookedUp(HookUp hookUp, HookUpState start) {
        HookUpState state = start;
        if (hookUp.manifold().isEmpty()) {
            return state;
        }
        state = side(hookUp, state, "low-hose", hookUp.ports().get(0), Manifold.LOW, Manifold.LOW_CHAMBER);
        state = side(hookUp, state, "high-hose", hookUp.ports().get(1), Manifold.HIGH, Manifold.HIGH_CHAMBER);
        return state.withVolume(
                Manifold.CENTRE_CHAMBER,
                hookUp.vapour(Manifold.CENTRE_CHAMBER, hookUp.ports().get(0).pressure(), GasOrigin.SYSTEM));
    }

    private static HookUpState side(
            HookUp hookUp, HookUpState start, String hose, SystemPort port, String connection, String chamber) {
        HookUpState state = start.withJoint(hose + ".system", new Joint(port.name(), true))
                .withJoint(hose + ".cylinder", new Joint(connection, true));
        if (hookUp.valves().contains(hose + ".system")) {
            state = state.withValve(hose + ".system", Opening.OPEN);
        }
        if (port.hasValve()) {
            state = state.withValve(port.name(), Opening.OPEN);
        }
        for (String volume : List.of(hose, chamber)) {
            state = state.withVolume(
                    volume,
                    port.liquid()
                            ? hookUp.liquid(volume, port.pressure(), port.temperature(), GasOrigin.SYSTEM)
                            : hookUp.vapour(volume, port.pressure(), GasOrigin.SYSTEM));
        }
        return state;
    }

    private static HookUpState onCylinder(HookUp hookUp, HookUpState start, String hose, String valve) {
        boolean direct = hookUp.manifold().isEmpty();
        boolean out = valve.equals(HookUpFixture.RECOVERY_VAPOUR);
        SystemPort port = hookUp.ports().get(direct && out ? 1 : 0);
        HookUpState state = start.withJoint(hose + ".cylinder", new Joint(valve, true))
                .withJoint(hose + ".system", new Joint(direct ? port.name() : Manifold.CENTRE, true));
        for (String end : List.of(hose + ".system", hose + ".cylinder", Manifold.CHARGING_VALVE)) {
            if (hookUp.valves().contains(end)) {
                state = state.withValve(end, Opening.OPEN);
            }
        }
        if (direct && port.hasValve()) {
            state = state.withValve(port.name(), Opening.OPEN);
        }
        return state.withVolume(
                hose,
                direct && port.liquid()
                        ? hookUp.liquid(hose, port.pressure(), port.temperature(), GasOrigin.SYSTEM)
                        : hookUp.vapour(hose, port.pressure(), GasOrigin.SYSTEM));
    }
}
