package org.satline.transfer.planner;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import org.satline.transfer.hookup.Act;
import org.satline.transfer.hookup.GasOrigin;
import org.satline.transfer.hookup.HookUp;
import org.satline.transfer.hookup.HookUpPlan;
import org.satline.transfer.hookup.HookUpState;
import org.satline.transfer.hookup.Joint;
import org.satline.transfer.hookup.Manifold;
import org.satline.transfer.hookup.Opening;
import org.satline.transfer.hookup.PlanTask;
import org.satline.transfer.hookup.SystemPort;
import org.satline.transfer.simulator.Effects;
import org.satline.transfer.simulator.HookUpActs;
import org.satline.transfer.simulator.HookUpFixture;
import org.satline.transfer.simulator.HookUpSimulator;

/**
 * Where the planner gives a reason, every act that a hand could try is tried in the simulator, breadth first and with no idea of practice,
 * up to 14 acts deep or a number of states. It starts with the hoses at the ports on and clean, so that 14 acts are enough.
 */
final class BlindTrial {
    private static final int DEEPEST = 14;

    final List<String> found = new ArrayList<>();
    int searched;
    private final int mostStates;

    BlindTrial(int mostStates) {
        this.mostStates = mostStates;
    }

    private record Node(HookUpState state, int depth, boolean moved, List<String> acts) {}

    void site(HookUpCases.Case site) {
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
        HookUpPlan plan = HookUpPlanner.plan(hookUp, start, task);
        if (plan instanceof HookUpPlan.NoPlan none) {
            searched++;
            search(hookUp, start, task)
                    .ifPresent(node -> found.add(none.reason() + " " + task.kind() + " " + task.cylinder() + " " + site
                            + " " + node.acts()));
        }
    }

    private Optional<Node> search(HookUp hookUp, HookUpState start, PlanTask task) {
        HookUpSimulator simulator = new HookUpSimulator(hookUp);
        Deque<Node> queue = new ArrayDeque<>(List.of(new Node(start, 0, false, List.of())));
        Set<Object> seen = new HashSet<>(List.of(key(start, false)));
        while (!queue.isEmpty() && seen.size() < mostStates) {
            Node node = queue.remove();
            if (node.depth() == DEEPEST) {
                continue;
            }
            for (Act act : HookUpActs.possible(simulator, hookUp, node.state())) {
                if (isIdle(act, task)) {
                    continue;
                }
                HookUpSimulator.Outcome outcome = simulator.apply(node.state(), act);
                boolean moved = node.moved() || moves(hookUp, start, outcome.effects(), task);
                if (outcome.effects().violations().isEmpty() && seen.add(key(outcome.state(), moved))) {
                    List<String> acts = new ArrayList<>(node.acts());
                    acts.add(act.kind() + " " + act.target()
                            + act.to().map(to -> ">" + to).orElse(""));
                    Node next = new Node(outcome.state(), node.depth() + 1, moved, acts);
                    if (isDone(hookUp, start, next, task)) {
                        return Optional.of(next);
                    }
                    queue.add(next);
                }
            }
        }
        return Optional.empty();
    }

    /** Acts that move nothing; caps count as on. */
    private static boolean isIdle(Act act, PlanTask task) {
        return switch (act.kind()) {
            case READ_SCALE, ZERO_SCALE, WAIT, UNCAP -> true;
            case CAP -> task.kind() != PlanTask.Kind.END_OF_JOB || !act.target().equals(Manifold.CENTRE);
            default -> false;
        };
    }

    /** Reached, and not begun without an end. */
    private static boolean isDone(HookUp hookUp, HookUpState start, Node node, PlanTask task) {
        HookUpState state = node.state();
        HookUpState capped = state;
        if (task.kind() == PlanTask.Kind.END_OF_JOB) {
            Set<String> caps = new HashSet<>(state.capped());
            hookUp.ports().forEach(port -> caps.add(port.name()));
            capped = new HookUpState(
                    state.valves(),
                    state.joints(),
                    state.turned(),
                    state.inverted(),
                    caps,
                    state.running(),
                    state.volumes(),
                    state.liquidShutIn());
        }
        if (!PlanTrial.isReached(hookUp, start, capped, task)) {
            return false;
        }
        boolean step = task.kind() == PlanTask.Kind.STEP_OUT || task.kind() == PlanTask.Kind.STEP_IN;
        if (task.kind() == PlanTask.Kind.CONNECT_AND_PURGE) {
            boolean out = task.cylinder().equals(HookUpFixture.RECOVERY);
            return HookUpPlanner.plan(
                            hookUp,
                            state,
                            PlanTask.of(out ? PlanTask.Kind.STEP_OUT : PlanTask.Kind.STEP_IN, task.cylinder()))
                    instanceof HookUpPlan.Planned;
        }
        return !step
                || (node.moved()
                        && HookUpPlanner.plan(hookUp, state, PlanTask.of(PlanTask.Kind.END_OF_JOB, ""))
                                instanceof HookUpPlan.Planned);
    }

    /** A step goes from port to cylinder, or from source to low side, as one flow; a hose emptied by itself is none. */
    private static boolean moves(HookUp hookUp, HookUpState before, Effects effects, PlanTask task) {
        // no step is begun on a difference that both gauges' errors may make
        double cylinder = before.volume(task.cylinder().isEmpty() ? HookUpFixture.SOURCE : task.cylinder())
                .pressure()
                .pascals();
        boolean certain = hookUp.ports().stream()
                .anyMatch(port -> Math.abs(port.pressure().pascals() - cylinder) > HookUp.certainPa());
        boolean out = task.kind() == PlanTask.Kind.STEP_OUT;
        return certain
                && effects.transfers().stream()
                        .anyMatch(transfer -> out
                                ? hookUp.port(transfer.from()).isPresent()
                                        && transfer.to().equals(task.cylinder())
                                : transfer.from().equals(task.cylinder())
                                        && transfer.to().equals(HookUpFixture.LOW_PORT));
    }

    private static Object key(HookUpState state, boolean moved) {
        TreeMap<String, Object> volumes = new TreeMap<>();
        state.volumes()
                .forEach((name, volume) -> volumes.put(
                        name,
                        List.of(
                                volume.content(),
                                volume.origin(),
                                Math.round(volume.pressure().bars() * 2))));
        return List.of(
                state.valves(),
                state.joints(),
                state.turned(),
                state.inverted(),
                state.capped(),
                state.running(),
                volumes,
                state.liquidShutIn(),
                moved);
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
