package org.satline.transfer.simulator;

import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.satline.transfer.hookup.EndFitting;
import org.satline.transfer.hookup.HookUp;
import org.satline.transfer.hookup.HookUpState;
import org.satline.transfer.hookup.ServiceCylinder;
import org.satline.transfer.hookup.ServiceHose;
import org.satline.transfer.hookup.SystemPort;

/** The parts of a hook-up by name, looked up once. Immutable. */
final class Layout {
    private static final String SYSTEM_END = ".system";

    final HookUp hookUp;
    final List<String> hoseEnds;
    final Set<String> connections;
    final Set<String> valves;
    final boolean fourValves;
    /** Sizes of all volumes, m3, in the order of the hook-up. */
    final Map<String, Double> sizes = new LinkedHashMap<>();

    private final Map<String, SystemPort> ports = new HashMap<>();
    private final Map<String, ServiceHose> hoses = new HashMap<>();
    private final Map<String, ServiceCylinder> cylinders = new HashMap<>();

    Layout(HookUp hookUp) {
        this.hookUp = hookUp;
        hoseEnds = List.copyOf(hookUp.hoseEnds());
        connections = new LinkedHashSet<>(hookUp.connections());
        valves = Set.copyOf(hookUp.valves());
        fourValves = hookUp.manifold().map(parts -> parts.valves() == 4).orElse(false);
        hookUp.volumes().forEach((name, size) -> sizes.put(name, size.cubicMetres()));
        hookUp.ports().forEach(port -> ports.put(port.name(), port));
        for (ServiceHose hose : hookUp.hoses()) {
            hoses.put(hose.name(), hose);
            hose.ends().forEach(end -> hoses.put(end, hose));
        }
        for (ServiceCylinder cylinder : hookUp.cylinders()) {
            cylinders.put(cylinder.name(), cylinder);
            cylinder.connections().forEach(connection -> cylinders.put(connection, cylinder));
        }
    }

    Optional<SystemPort> port(String name) {
        return Optional.ofNullable(ports.get(name));
    }

    /** By its name or one of its ends. */
    Optional<ServiceHose> hose(String name) {
        return Optional.ofNullable(hoses.get(name));
    }

    /** By its name or one of its connections. */
    Optional<ServiceCylinder> cylinder(String name) {
        return Optional.ofNullable(cylinders.get(name));
    }

    EndFitting fitting(String end, HookUpState state) {
        ServiceHose hose = hose(end).orElseThrow();
        boolean first = end.endsWith(SYSTEM_END);
        return first != state.turned().contains(hose.name()) ? hose.systemEnd() : hose.cylinderEnd();
    }
}
