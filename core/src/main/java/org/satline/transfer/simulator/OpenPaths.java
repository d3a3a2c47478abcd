package org.satline.transfer.simulator;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Deque;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.satline.transfer.hookup.EndFitting;
import org.satline.transfer.hookup.HookUp;
import org.satline.transfer.hookup.HookUpState;
import org.satline.transfer.hookup.Joint;
import org.satline.transfer.hookup.Manifold;
import org.satline.transfer.hookup.Opening;
import org.satline.transfer.hookup.ServiceCylinder;
import org.satline.transfer.hookup.SystemPort;

/**
 * What is open to what. Small volumes (chambers, hoses, sides of the machine) and joints that leak are nodes through which gas passes;
 * ports, cylinders, the pump and the open air are where a path ends. A leaking joint is a node of its own without volume, so that what
 * enters at the joint that leaks does not count as having gone through the hose. Immutable.
 */
final class OpenPaths {
    /** One opening; {@code connection} names the connection where the far node is an end of paths. */
    record Edge(String node, String other, String connection, boolean throttled) {
        String from(String here) {
            return here.equals(node) ? other : node;
        }
    }

    /** Nodes open to each other, in a fixed order, and the ends that they are open to. */
    record Group(Set<String> nodes, List<Edge> ends) {}

    private static final String JOINT = "joint ";

    private final Layout parts;
    private final HookUpState state;
    private final Map<String, Opening> valves;
    private final Map<String, List<Edge>> edges = new LinkedHashMap<>();
    private final Set<String> wideLeaks = new HashSet<>();

    OpenPaths(Layout parts, HookUpState state, Map<String, Opening> valves) {
        this.parts = parts;
        this.state = state;
        this.valves = valves;
        parts.sizes.keySet().stream()
                .filter(name -> parts.cylinder(name).isEmpty())
                .forEach(this::node);
        Map<String, String> taken = new HashMap<>();
        state.joints().forEach((end, joint) -> taken.put(joint.at(), end));
        parts.hoseEnds.forEach(this::hoseEnd);
        for (String connection : parts.connections) {
            if (!taken.containsKey(connection)
                    && !state.capped().contains(connection)
                    && !connection.equals(HookUp.PUMP)
                    && passes(connection, false)) {
                String leak = leak(connection, true);
                open(leak, volume(connection), connection, cracked(connection));
            }
        }
        if (parts.hookUp.manifold().isPresent()) {
            chambers(Manifold.LOW_CHAMBER, Manifold.LOW_VALVE);
            chambers(Manifold.HIGH_CHAMBER, Manifold.HIGH_VALVE);
        }
    }

    static boolean isJoint(String node) {
        return node.startsWith(JOINT);
    }

    /**
     * Whether that leak is the end of a hose that hangs free: some twenty times a loosened joint, and nobody screws it on in two seconds.
     */
    boolean isOffEnd(String leak) {
        return wideLeaks.contains(leak) && parts.hoseEnds.contains(leak.substring(JOINT.length()));
    }

    /** Whether the air can wander into that joint against no flow: an end or connection that is off. */
    boolean isWide(String leak) {
        return wideLeaks.contains(leak);
    }

    private void hoseEnd(String end) {
        String hose = parts.hose(end).orElseThrow().name();
        EndFitting fitting = parts.fitting(end, state);
        Optional<Joint> joint = state.joint(end);
        boolean tight = joint.map(Joint::tight).orElse(false);
        boolean endPasses = endPasses(fitting, end, tight);
        boolean throttled = fitting == EndFitting.OPEN_CLOSE_VALVE && cracked(end);
        if (tight) {
            String at = joint.orElseThrow().at();
            if (endPasses && passes(at, true)) {
                open(hose, volume(at), at, throttled || cracked(at));
            }
            return;
        }
        boolean otherPasses = joint.map(loose -> passes(loose.at(), false)).orElse(false);
        if (endPasses || otherPasses) {
            String leak = leak(end, joint.isEmpty());
            if (endPasses) {
                open(hose, leak, "", throttled);
            }
            if (otherPasses) {
                String at = joint.orElseThrow().at();
                open(leak, volume(at), at, cracked(at));
            }
        }
    }

    private boolean endPasses(EndFitting fitting, String end, boolean tight) {
        return switch (fitting) {
            case PLAIN_FLARE -> true;
            case OPEN_CLOSE_VALVE -> isOpen(end);
            case SELF_SEALING -> tight;
        };
    }

    /** Whether a hose end lets through what is in the hose once its joint is loose. */
    boolean endPassesLoose(String end) {
        return endPasses(parts.fitting(end, state), end, /* tight= */ false);
    }

    /** Whether a connection lets through what is behind it. */
    boolean passes(String connection, boolean tight) {
        Optional<SystemPort> port = parts.port(connection);
        if (port.isPresent()) {
            return port.get().hasValve() ? isOpen(connection) : tight;
        }
        return switch (connection) {
            case Manifold.CENTRE -> !parts.fourValves || isOpen(Manifold.CHARGING_VALVE);
            case Manifold.VACUUM -> isOpen(Manifold.VACUUM_VALVE);
            case Manifold.LOW, Manifold.HIGH, Manifold.CENTRE_2, HookUp.PUMP -> true;
            default -> isOpen(connection);
        };
    }

    private boolean cracked(String connection) {
        String valve = switch (connection) {
            case Manifold.CENTRE -> Manifold.CHARGING_VALVE;
            case Manifold.VACUUM -> Manifold.VACUUM_VALVE;
            default -> connection;
        };
        return valves.get(valve) == Opening.CRACKED;
    }

    private boolean isOpen(String valve) {
        return valves.getOrDefault(valve, Opening.SHUT) != Opening.SHUT;
    }

    /** The volume behind a connection; a pump that stands still is open to the air. */
    String volume(String connection) {
        return switch (connection) {
            case Manifold.LOW -> Manifold.LOW_CHAMBER;
            case Manifold.HIGH -> Manifold.HIGH_CHAMBER;
            case Manifold.CENTRE, Manifold.CENTRE_2, Manifold.VACUUM -> Manifold.CENTRE_CHAMBER;
            case HookUp.PUMP -> state.running().contains(HookUp.PUMP) ? HookUp.PUMP : HookUp.AIR;
            default -> parts.cylinder(connection).map(ServiceCylinder::name).orElse(connection);
        };
    }

    private void chambers(String chamber, String valve) {
        if (isOpen(valve)) {
            open(chamber, Manifold.CENTRE_CHAMBER, "", cracked(valve));
        }
    }

    private String leak(String place, boolean wide) {
        String leak = JOINT + place;
        if (!edges.containsKey(leak)) {
            open(leak, HookUp.AIR, HookUp.AIR, false);
            if (wide) {
                wideLeaks.add(leak);
            }
        }
        return leak;
    }

    private List<Edge> at(String node) {
        return edges.getOrDefault(node, List.of());
    }

    private List<Edge> node(String name) {
        return edges.computeIfAbsent(name, key -> new ArrayList<>());
    }

    private void open(String node, String other, String connection, boolean throttled) {
        Edge edge = new Edge(node, other, connection, throttled);
        node(node).add(edge);
        if (!isEnd(other)) {
            node(other).add(edge);
        }
    }

    boolean isEnd(String name) {
        return name.equals(HookUp.AIR)
                || name.equals(HookUp.PUMP)
                || parts.port(name).isPresent()
                || parts.cylinder(name).isPresent();
    }

    Set<String> nodes() {
        return edges.keySet();
    }

    List<Group> groups() {
        List<Group> groups = new ArrayList<>();
        Set<String> seen = new HashSet<>();
        for (String start : edges.keySet()) {
            if (!seen.contains(start)) {
                Set<String> nodes = new LinkedHashSet<>(order(List.of(start), edges.keySet()));
                seen.addAll(nodes);
                List<Edge> ends = nodes.stream()
                        .flatMap(node -> at(node).stream())
                        .filter(edge -> isEnd(edge.other()))
                        .toList();
                groups.add(new Group(nodes, ends));
            }
        }
        return groups;
    }

    /** The nodes reached from some, nearest first. */
    List<String> order(Collection<String> starts, Set<String> within) {
        Set<String> seen = new LinkedHashSet<>(starts);
        Deque<String> next = new ArrayDeque<>(starts);
        while (!next.isEmpty()) {
            String here = next.remove();
            for (Edge edge : at(here)) {
                String there = edge.from(here);
                if (!isEnd(there) && within.contains(there) && seen.add(there)) {
                    next.add(there);
                }
            }
        }
        return List.copyOf(seen);
    }

    /** The shortest way from the node of one end to that of another: first and last edge are the ends' own. */
    List<Edge> path(Edge first, Edge last) {
        Map<String, Edge> came = new HashMap<>();
        Deque<String> next = new ArrayDeque<>(List.of(first.node()));
        Set<String> seen = new HashSet<>(next);
        while (!next.isEmpty()) {
            String here = next.remove();
            for (Edge edge : at(here)) {
                String there = edge.from(here);
                if (!isEnd(there) && seen.add(there)) {
                    came.put(there, edge);
                    next.add(there);
                }
            }
        }
        List<Edge> way = new ArrayList<>(List.of(last));
        String at = last.node();
        while (!at.equals(first.node())) {
            Edge edge = came.get(at);
            if (edge == null) {
                throw new IllegalStateException("no way from " + first + " to " + last);
            }
            way.add(0, edge);
            at = edge.from(at);
        }
        way.add(0, first);
        return way;
    }
}
