package org.satline.transfer.hookup;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;

/** The names of the parts of a hook-up: acts and states go by them, so each has its own. */
final class HookUpNames {
    private static final List<String> TAKEN = List.of(
            HookUp.AIR,
            HookUp.PUMP,
            HookUp.MACHINE,
            Manifold.LOW_CHAMBER,
            Manifold.HIGH_CHAMBER,
            Manifold.CENTRE_CHAMBER);

    private HookUpNames() {}

    static void requireDifferent(List<SystemPort> ports, List<ServiceHose> hoses, List<ServiceCylinder> cylinders) {
        Set<String> known = new HashSet<>(TAKEN);
        Stream.of(
                        ports.stream().map(SystemPort::name),
                        hoses.stream().map(ServiceHose::name),
                        cylinders.stream().map(ServiceCylinder::name))
                .flatMap(names -> names)
                .filter(name -> !known.add(name))
                .findFirst()
                .ifPresent(name -> {
                    throw new IllegalArgumentException(
                            "two parts of the hook-up are called \"" + name + "\"; give each its own name");
                });
    }
}
