package org.satline.transfer.planner;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.TreeSet;
import org.satline.quantity.Pressure;
import org.satline.transfer.hookup.EndFitting;
import org.satline.transfer.hookup.HookUp;
import org.satline.transfer.hookup.HookUpPractice;
import org.satline.transfer.hookup.HookUpState;
import org.satline.transfer.hookup.Manifold;
import org.satline.transfer.hookup.ServiceCylinder;
import org.satline.transfer.hookup.ServiceHose;
import org.satline.transfer.hookup.SystemPort;
import org.satline.transfer.hookup.VolumeState;

/** The parts of a hook-up as the planner sees them: numbered, with a few levels of pressure. Immutable. */
final class PlanParts {
    /** What is behind a connection. */
    enum Behind {
        PORT,
        VOLUME,
        CYLINDER,
        PUMP
    }

    static final int NONE = -1;

    final HookUp hookUp;
    final List<ServiceHose> hoses;
    final List<String> ends;
    final List<String> connections;
    final List<String> valves;
    final List<String> volumes = new ArrayList<>();
    final List<SystemPort> ports;
    final List<ServiceCylinder> cylinders;
    /** For each hose end its hand valve, for each connection its valve, or {@link #NONE}. */
    final int[] endValve;

    final int[] connectionValve;
    final Behind[] behind;
    final int[] behindIndex;
    final double[] litres;
    /** Pressures that occur, rising, Pa. */
    final double[] levels;

    final int airLevel;
    final int[] portLevel;
    final boolean[] portCold;
    /** The pressure that each cylinder's contents have once it holds liquid, and the least that certainly feeds it, Pa. */
    final int[] restLevel;

    final double[] feedsPa;
    /** Saturation pressure at the temperature of the air around, Pa. */
    final double ambientPa;

    /** From here up liquid that comes from the system certainly does not flash, Pa. */
    final double staysLiquidPa;

    final boolean ventable;
    final int low;
    final int high;
    /** The volume of each hose, and of chambers {@link #CHAMBER_LOW} to {@link #CHAMBER_CENTRE}, or {@link #NONE}. */
    final int[] hoseVolume;

    final int[] chamber;
    final boolean[] isHose;
    /** The sides of the recovery machine, or {@link #NONE}. */
    final int machineInlet;

    final int machineOutlet;
    final int lowValve;
    final int highValve;
    /** Valves that may stay open while a phase ends: of ports, hose ends and the charging connection. */
    final boolean[] mayStayOpen;
    /** For each valve the hose end that has it, or {@link #NONE}. */
    final int[] valveEnd;
    /** The connection of each port. */
    final int[] portConnection;

    static final int CHAMBER_LOW = 0;
    static final int CHAMBER_HIGH = 1;
    static final int CHAMBER_CENTRE = 2;

    PlanParts(HookUp hookUp, HookUpState state) {
        this.hookUp = hookUp;
        hoses = hookUp.hoses();
        ends = hookUp.hoseEnds();
        connections = hookUp.connections();
        valves = hookUp.valves();
        ports = hookUp.ports();
        cylinders = hookUp.cylinders();
        hookUp.volumes().keySet().stream()
                .filter(name -> hookUp.cylinder(name).isEmpty())
                .forEach(volumes::add);
        litres = volumes.stream().mapToDouble(name -> hookUp.size(name) * 1000).toArray();
        endValve = ends.stream().mapToInt(valves::indexOf).toArray();
        behind = new Behind[connections.size()];
        behindIndex = new int[connections.size()];
        connectionValve = new int[connections.size()];
        for (int i = 0; i < connections.size(); i++) {
            place(i, connections.get(i));
        }
        ventable = hookUp.gas().mayBeVented();
        ambientPa = hookUp.gas().properties().bubblePressurePa(hookUp.ambient().kelvins());
        low = port(SystemPort.Role.LOW_SIDE);
        high = Math.max(port(SystemPort.Role.LIQUID_LINE), port(SystemPort.Role.DISCHARGE));
        hoseVolume =
                hoses.stream().mapToInt(hose -> volumes.indexOf(hose.name())).toArray();
        chamber = List.of(Manifold.LOW_CHAMBER, Manifold.HIGH_CHAMBER, Manifold.CENTRE_CHAMBER).stream()
                .mapToInt(volumes::indexOf)
                .toArray();
        isHose = new boolean[volumes.size()];
        Arrays.stream(hoseVolume).forEach(volume -> isHose[volume] = true);
        machineInlet = volumes.indexOf(HookUp.MACHINE_INLET);
        machineOutlet = volumes.indexOf(HookUp.MACHINE_OUTLET);
        lowValve = valves.indexOf(Manifold.LOW_VALVE);
        highValve = valves.indexOf(Manifold.HIGH_VALVE);
        mayStayOpen = new boolean[valves.size()];
        for (int i = 0; i < mayStayOpen.length; i++) {
            String name = valves.get(i);
            mayStayOpen[i] =
                    ends.contains(name) || hookUp.port(name).isPresent() || name.equals(Manifold.CHARGING_VALVE);
        }
        valveEnd = valves.stream().mapToInt(ends::indexOf).toArray();
        portConnection = ports.stream()
                .mapToInt(port -> connections.indexOf(port.name()))
                .toArray();
        double coldest = hookUp.ports().stream()
                .filter(SystemPort::liquid)
                .mapToDouble(port -> port.temperature().kelvins())
                .reduce(hookUp.ambient().kelvins(), Math::min);
        staysLiquidPa = hookUp.gas().properties().bubblePressurePa(coldest) + HookUp.certainPa();
        levels = levels(state);
        airLevel = level(hookUp.atmosphere().pressure().pascals());
        portLevel = ports.stream()
                .mapToInt(port -> level(port.pressure().pascals()))
                .toArray();
        portCold = new boolean[ports.size()];
        for (int i = 0; i < portCold.length; i++) {
            portCold[i] = ports.get(i).temperature().compareTo(hookUp.ambient()) < 0;
        }
        restLevel = cylinders.stream()
                .mapToInt(each -> level(saturationPa(state.volume(each.name()), 0)))
                .toArray();
        feedsPa = cylinders.stream()
                .mapToDouble(each -> feedsPa(state.volume(each.name())))
                .toArray();
    }

    private void place(int i, String name) {
        connectionValve[i] = valves.indexOf(name);
        switch (name) {
            case Manifold.LOW -> volume(i, Manifold.LOW_CHAMBER);
            case Manifold.HIGH -> volume(i, Manifold.HIGH_CHAMBER);
            case Manifold.CENTRE_2 -> volume(i, Manifold.CENTRE_CHAMBER);
            case Manifold.CENTRE -> {
                volume(i, Manifold.CENTRE_CHAMBER);
                connectionValve[i] = valves.indexOf(Manifold.CHARGING_VALVE);
            }
            case Manifold.VACUUM -> {
                volume(i, Manifold.CENTRE_CHAMBER);
                connectionValve[i] = valves.indexOf(Manifold.VACUUM_VALVE);
            }
            case HookUp.PUMP -> behind[i] = Behind.PUMP;
            case HookUp.MACHINE_INLET, HookUp.MACHINE_OUTLET -> volume(i, name);
            default -> {
                boolean port = hookUp.port(name).isPresent();
                behind[i] = port ? Behind.PORT : Behind.CYLINDER;
                behindIndex[i] = port
                        ? ports.indexOf(hookUp.port(name).orElseThrow())
                        : cylinders.indexOf(hookUp.cylinder(name).orElseThrow());
            }
        }
    }

    private void volume(int i, String name) {
        behind[i] = Behind.VOLUME;
        behindIndex[i] = volumes.indexOf(name);
    }

    private int port(SystemPort.Role role) {
        for (int i = 0; i < ports.size(); i++) {
            if (ports.get(i).role() == role) {
                return i;
            }
        }
        return NONE;
    }

    private double[] levels(HookUpState state) {
        TreeSet<Double> all =
                new TreeSet<>(List.of(0.0, hookUp.atmosphere().pressure().pascals()));
        ports.forEach(port -> all.add(port.pressure().pascals()));
        state.volumes().values().forEach(volume -> all.add(volume.pressure().pascals()));
        cylinders.forEach(each -> all.add(saturationPa(state.volume(each.name()), 0)));
        List<Double> apart = new ArrayList<>();
        for (double pascals : all) {
            // gauges do not tell less than a few hundred pascals apart
            if (apart.isEmpty() || pascals - apart.get(apart.size() - 1) > 300) {
                apart.add(pascals);
            }
        }
        return apart.stream().mapToDouble(Double::doubleValue).toArray();
    }

    int level(double pascals) {
        int at = Arrays.binarySearch(levels, pascals);
        int below = at >= 0 ? at : -at - 2;
        return Math.max(below, 0);
    }

    private double saturationPa(VolumeState cylinder, double warmerK) {
        return hookUp.gas().properties().bubblePressurePa(cylinder.temperature().kelvins() + warmerK);
    }

    /** What stands above a cylinder's pressure in spite of errors of the gauges and of less than 3 K. */
    private double feedsPa(VolumeState cylinder) {
        double own = cylinder.pressure().pascals();
        double apart = HookUp.certainPa();
        if (cylinder.refrigerant().kilograms() > 0) {
            double three =
                    saturationPa(cylinder, HookUpPractice.EQUAL_TEMPERATURES_K.value()) - saturationPa(cylinder, 0);
            apart = Math.max(apart, three);
        }
        return own + apart;
    }

    boolean certain(int above, int below) {
        return levels[above] - levels[below] > HookUp.certainPa();
    }

    boolean sweeps(int level) {
        double more = Pressure.ofBars(HookUpPractice.SWEEP_ABOVE_ATMOSPHERE_BAR.value())
                .pascals();
        return levels[level] - levels[airLevel] > more;
    }

    double vapourGrams(double litres, int level) {
        return litres * hookUp.gas().properties().vapourDensity(levels[level]);
    }

    EndFitting fitting(int end, boolean turned) {
        ServiceHose hose = hoses.get(end / 2);
        return (end % 2 == 0) != turned ? hose.systemEnd() : hose.cylinderEnd();
    }
}
