package org.satline.transfer.planner;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.PriorityQueue;
import java.util.Set;
import org.satline.transfer.hookup.Act;
import org.satline.transfer.hookup.Act.Kind;
import org.satline.transfer.hookup.HookUp;
import org.satline.transfer.hookup.HookUpPlan;
import org.satline.transfer.hookup.HookUpState;
import org.satline.transfer.hookup.Joint;
import org.satline.transfer.hookup.Manifold;
import org.satline.transfer.hookup.Opening;
import org.satline.transfer.hookup.PlanTask;
import org.satline.transfer.hookup.ServiceCylinder;
import org.satline.transfer.hookup.ServiceHose;
import org.satline.transfer.hookup.VolumeContent;
import org.satline.transfer.hookup.VolumeState;
import org.satline.transfer.simulator.Effects;
import org.satline.transfer.simulator.HookUpFixture;
import org.satline.transfer.simulator.HookUpSimulator;

/**
 * Tries every act of a hand in the simulator, up to 14 deep, with no idea of practice: what is nearest to the end of the task first, each
 * state once. Two states are one where nothing that matters differs: pressures within half a bar. Of acts that lead to the same state the
 * first is kept; acts that move nothing are left out.
 */
final class BlindSearch {
    private static final int DEEPEST = 14;
    /** How much nearer to the end outweighs one act more. */
    private static final int PULL = 2;

    private final HookUp hookUp;
    private final HookUpSimulator simulator;
    private final HookUpState start;
    private final PlanTask task;
    private final int mostStates;
    private final List<String> valves;
    private final List<String> ends;
    private final List<String> connections;
    private final List<String> volumes;
    private long made;

    BlindSearch(HookUp hookUp, HookUpState start, PlanTask task, int mostStates) {
        this.hookUp = hookUp;
        this.start = start;
        this.task = task;
        this.mostStates = mostStates;
        simulator = new HookUpSimulator(hookUp);
        valves = hookUp.valves();
        ends = hookUp.hoseEnds();
        connections = hookUp.connections();
        volumes = List.copyOf(hookUp.volumes().keySet());
    }

    private record Node(HookUpState state, int depth, boolean moved, List<Act> acts, int rank, long number)
            implements Comparable<Node> {
        @Override
        public int compareTo(Node other) {
            return rank == other.rank ? Long.compare(number, other.number) : Integer.compare(rank, other.rank);
        }
    }

    /** Acts that reach what the task asks and break nothing, where there are any. */
    Optional<List<Act>> run() {
        PriorityQueue<Node> queue = new PriorityQueue<>();
        queue.add(node(start, 0, false, List.of()));
        Set<String> seen = new HashSet<>(List.of(key(start, false)));
        while (!queue.isEmpty() && seen.size() < mostStates) {
            Node node = queue.remove();
            if (node.depth() == DEEPEST) {
                continue;
            }
            for (Act act : acts(node.state())) {
                HookUpSimulator.Outcome outcome = simulator.apply(node.state(), act);
                boolean moved = node.moved() || moves(outcome.effects());
                if (outcome.effects().violations().isEmpty() && seen.add(key(outcome.state(), moved))) {
                    List<Act> acts = new ArrayList<>(node.acts());
                    acts.add(act);
                    if (isDone(outcome.state(), moved)) {
                        return Optional.of(acts);
                    }
                    queue.add(node(outcome.state(), node.depth() + 1, moved, acts));
                }
            }
        }
        return Optional.empty();
    }

    private Node node(HookUpState state, int depth, boolean moved, List<Act> acts) {
        return new Node(state, depth, moved, acts, depth + PULL * far(state, moved), made++);
    }

    /** How many things are not yet as they are at the end. */
    private int far(HookUpState state, boolean moved) {
        int far = state.liquidShutIn().isEmpty() ? 0 : 1;
        far += (int)
                state.joints().values().stream().filter(joint -> !joint.tight()).count();
        far += state.running().size();
        boolean end = task.kind() == PlanTask.Kind.END_OF_JOB;
        boolean connects = task.kind() == PlanTask.Kind.CONNECT_AND_PURGE;
        if (end) {
            for (Joint joint : state.joints().values()) {
                far += hookUp.cylinder(joint.at()).isPresent()
                                || hookUp.port(joint.at()).isPresent()
                        ? 1
                        : 0;
            }
            for (String name : volumes) {
                far += hookUp.cylinder(name).isEmpty() && state.volume(name).content() == VolumeContent.LIQUID ? 3 : 0;
            }
        } else {
            for (String valve : hookUp.cylinder(task.cylinder()).orElseThrow().connections()) {
                far += state.valve(valve) == Opening.SHUT ? 0 : 1;
            }
            far += connects || moved ? 0 : 2;
        }
        return connects ? far + farFromJoined(state) : far;
    }

    private int farFromJoined(HookUpState state) {
        int far = 4;
        for (ServiceHose hose : hookUp.hoses()) {
            int own = state.volume(hose.name()).content() == VolumeContent.AIR ? 1 : 0;
            boolean at = false;
            for (String end : hose.ends()) {
                Optional<Joint> joint = state.joint(end);
                own += joint.isPresent() ? 0 : 1;
                at |= joint.flatMap(each -> hookUp.cylinder(each.at()))
                        .filter(each -> each.name().equals(task.cylinder()))
                        .isPresent();
            }
            far = Math.min(far, own + (at ? 0 : 1));
        }
        return far;
    }

    private static String partner(String end) {
        return end.replace(".cylinder", ".system");
    }

    /** Every act that can be made and may move something; caps count as on, and one of the centre belongs to the end of a job. */
    private List<Act> acts(HookUpState state) {
        List<Act> acts = new ArrayList<>();
        Set<String> taken = new HashSet<>();
        state.joints().values().forEach(joint -> taken.add(joint.at()));
        for (String end : ends) {
            Optional<Joint> joint = state.joint(end);
            if (joint.isPresent()) {
                acts.add(Act.of(joint.get().tight() ? Kind.LOOSEN : Kind.TIGHTEN, end));
                acts.add(Act.of(Kind.TAKE_OFF, end));
            } else if (!(end.endsWith(".cylinder") && state.joint(partner(end)).isEmpty())) {
                // of a hose that is off at both ends the system end goes first: the other order leads to the same
                for (String to : connections) {
                    if (!taken.contains(to)) {
                        acts.add(Act.connect(Kind.CONNECT_TIGHT, end, to));
                        acts.add(Act.connect(Kind.CONNECT_LOOSE, end, to));
                    }
                }
            }
        }
        for (String valve : valves) {
            if (state.valve(valve) == Opening.SHUT) {
                // a hand valve of a hose meters only where no other valve does
                boolean meters = hookUp.manifold().isEmpty() || !ends.contains(valve);
                for (Kind kind : meters ? List.of(Kind.OPEN, Kind.CRACK, Kind.OPEN_SHORT) : List.of(Kind.OPEN)) {
                    acts.add(Act.of(kind, valve));
                }
            } else {
                acts.add(Act.of(Kind.CLOSE, valve));
            }
        }
        if (task.kind() == PlanTask.Kind.END_OF_JOB) {
            acts.add(Act.of(Kind.CAP, Manifold.CENTRE));
        }
        for (ServiceHose hose : hookUp.hoses()) {
            if (hose.systemEnd() != hose.cylinderEnd()) {
                acts.add(Act.of(Kind.TURN_ROUND, hose.name()));
            }
        }
        for (ServiceCylinder cylinder : hookUp.cylinders()) {
            boolean over = state.inverted().contains(cylinder.name());
            acts.add(Act.of(over ? Kind.SET_UPRIGHT : Kind.INVERT, cylinder.name()));
        }
        for (String part : List.of(HookUp.PUMP, HookUp.MACHINE)) {
            acts.add(Act.of(state.running().contains(part) ? Kind.STOP : Kind.START, part));
        }
        acts.removeIf(act -> !simulator.isPossible(state, act));
        return acts;
    }

    /** Reached, and not begun without an end. */
    private boolean isDone(HookUpState state, boolean moved) {
        boolean end = task.kind() == PlanTask.Kind.END_OF_JOB;
        boolean connects = task.kind() == PlanTask.Kind.CONNECT_AND_PURGE;
        if (!(end || connects || moved) || !PlanTrial.isReached(hookUp, start, end ? capped(state) : state, task)) {
            return false;
        }
        boolean out = task.cylinder().equals(HookUpFixture.RECOVERY);
        PlanTask then = connects
                ? PlanTask.of(out ? PlanTask.Kind.STEP_OUT : PlanTask.Kind.STEP_IN, task.cylinder())
                : PlanTask.of(PlanTask.Kind.END_OF_JOB, "");
        return end
                || HookUpPlanner.attempt(hookUp, state, then)
                        .filter(phases -> runs(state, phases))
                        .isPresent();
    }

    private boolean runs(HookUpState from, List<HookUpPlan.Phase> phases) {
        HookUpState state = from;
        for (HookUpPlan.Phase phase : phases) {
            for (Act act : phase.acts()) {
                HookUpSimulator.Outcome outcome = simulator.apply(state, act);
                if (!outcome.effects().violations().isEmpty()) {
                    return false;
                }
                state = outcome.state();
            }
        }
        return true;
    }

    private HookUpState capped(HookUpState state) {
        Set<String> caps = new HashSet<>(state.capped());
        hookUp.ports().forEach(port -> caps.add(port.name()));
        return new HookUpState(
                state.valves(),
                state.joints(),
                state.turned(),
                state.inverted(),
                caps,
                state.running(),
                state.volumes(),
                state.liquidShutIn());
    }

    /** A step goes from port to cylinder, or from source to low side, as one flow; a hose emptied by itself is none. */
    private boolean moves(Effects effects) {
        // no step is begun on a difference that both gauges' errors may make
        double cylinder = start.volume(task.cylinder().isEmpty() ? HookUpFixture.SOURCE : task.cylinder())
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

    /** The state in one row of letters. */
    @SuppressWarnings("EnumOrdinal") // a letter for each constant, within one run of the search
    private String key(HookUpState state, boolean moved) {
        StringBuilder key = new StringBuilder(128).append(moved ? 'm' : '-');
        valves.forEach(name -> key.append((char) ('a' + state.valve(name).ordinal())));
        Map<String, Joint> joints = new HashMap<>(state.joints());
        for (String end : ends) {
            Joint joint = joints.get(end);
            key.append(joint == null ? '.' : (char) ('A' + connections.indexOf(joint.at())))
                    .append(joint != null && !joint.tight() ? 'l' : 't');
        }
        for (ServiceHose hose : hookUp.hoses()) {
            key.append(state.turned().contains(hose.name()) ? '1' : '0');
        }
        for (ServiceCylinder cylinder : hookUp.cylinders()) {
            key.append(state.inverted().contains(cylinder.name()) ? '1' : '0');
        }
        connections.forEach(name -> key.append(state.capped().contains(name) ? '1' : '0'));
        key.append(state.running().size());
        for (String name : volumes) {
            VolumeState volume = state.volume(name);
            key.append((char) ('a' + volume.content().ordinal()))
                    .append((char) ('a' + volume.origin().ordinal()))
                    .append((char) Math.round(volume.pressure().bars() * 2))
                    .append(state.liquidShutIn().contains(name) ? '!' : ' ');
        }
        return key.toString();
    }
}
