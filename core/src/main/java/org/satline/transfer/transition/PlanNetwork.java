package org.satline.transfer.transition;

import java.util.Arrays;
import java.util.List;
import org.satline.transfer.hookup.EndFitting;
import org.satline.transfer.hookup.HookUp;
import org.satline.transfer.hookup.Manifold;
import org.satline.transfer.hookup.ServiceCylinder;
import org.satline.transfer.hookup.ServiceHose;
import org.satline.transfer.hookup.SystemPort;

/** The parts of a hook-up by numbers: each hose has the ends 2 n and 2 n + 1; what is not there is {@link PlanParts#NONE}. Immutable. */
abstract class PlanNetwork {
    final HookUp hookUp;
    final List<ServiceHose> hoses;
    final List<String> ends;
    final List<String> connections;
    final List<String> valves;
    final List<String> volumes;
    final List<SystemPort> ports;
    final List<ServiceCylinder> cylinders;
    final int[] endValve;
    final int[] connectionValve;
    final PlanParts.Behind[] behind;
    final int[] behindIndex;
    final double[] litres;
    final boolean ventable;
    final int low;
    final int high;
    final int[] hoseVolume;
    final int[] chamber;
    final boolean[] isHose;
    final int machineInlet;
    final int machineOutlet;
    final int lowValve;
    final int highValve;
    final boolean[] mayStayOpen;
    /** For each valve the hose end that has it. */
    final int[] valveEnd;

    final int[] portConnection;
    // where each kind of number begins in the row of a state, and how long that is
    final int valve0;
    final int volume0;
    final int cylinder0;
    final int turned0;
    final int coupling0;
    final int cap0;
    final int run0;
    final int rowLength;

    PlanNetwork(HookUp hookUp) {
        this.hookUp = hookUp;
        hoses = hookUp.hoses();
        ends = hookUp.hoseEnds();
        connections = List.copyOf(hookUp.connections());
        valves = List.copyOf(hookUp.valves());
        ports = hookUp.ports();
        cylinders = hookUp.cylinders();
        volumes = hookUp.volumes().keySet().stream()
                .filter(name -> hookUp.cylinder(name).isEmpty())
                .toList();
        litres = volumes.stream().mapToDouble(name -> hookUp.size(name) * 1000).toArray();
        endValve = ends.stream().mapToInt(valves::indexOf).toArray();
        behind = new PlanParts.Behind[connections.size()];
        behindIndex = new int[connections.size()];
        connectionValve = new int[connections.size()];
        for (int i = 0; i < connections.size(); i++) {
            place(i, connections.get(i));
        }
        ventable = hookUp.gas().mayBeVented();
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
        valve0 = ends.size();
        volume0 = valve0 + valves.size();
        cylinder0 = volume0 + PlanState.OF_VOLUME * volumes.size();
        turned0 = cylinder0 + PlanState.OF_VOLUME * cylinders.size();
        coupling0 = turned0 + hoses.size();
        cap0 = coupling0 + ends.size();
        run0 = cap0 + connections.size();
        rowLength = run0 + 3;
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
            case HookUp.PUMP -> behind[i] = PlanParts.Behind.PUMP;
            case HookUp.MACHINE_INLET, HookUp.MACHINE_OUTLET -> volume(i, name);
            default -> {
                boolean port = hookUp.port(name).isPresent();
                behind[i] = port ? PlanParts.Behind.PORT : PlanParts.Behind.CYLINDER;
                behindIndex[i] = port
                        ? ports.indexOf(hookUp.port(name).orElseThrow())
                        : cylinders.indexOf(hookUp.cylinder(name).orElseThrow());
            }
        }
    }

    private void volume(int i, String name) {
        behind[i] = PlanParts.Behind.VOLUME;
        behindIndex[i] = volumes.indexOf(name);
    }

    private int port(SystemPort.Role role) {
        for (int i = 0; i < ports.size(); i++) {
            if (ports.get(i).role() == role) {
                return i;
            }
        }
        return PlanParts.NONE;
    }

    EndFitting fitting(int end, boolean turned) {
        ServiceHose hose = hoses.get(end / 2);
        return (end % 2 == 0) != turned ? hose.systemEnd() : hose.cylinderEnd();
    }

    /** {@return the hook-up itself} */
    public HookUp hookUp() {
        return hookUp;
    }

    /** {@return its hoses} */
    public List<ServiceHose> hoses() {
        return hoses;
    }

    /** {@return its hose ends} */
    public List<String> ends() {
        return ends;
    }

    /** {@return every place for a hose end} */
    public List<String> connections() {
        return connections;
    }

    /** {@return its valves} */
    public List<String> valves() {
        return valves;
    }

    /** {@return hoses, chambers and sides of a recovery machine} */
    public List<String> volumes() {
        return volumes;
    }

    /** {@return its ports} */
    public List<SystemPort> ports() {
        return ports;
    }

    /** {@return its cylinders} */
    public List<ServiceCylinder> cylinders() {
        return cylinders;
    }

    /** {@return whether the least of its gas may be vented} */
    public boolean ventable() {
        return ventable;
    }

    /** {@return the port of the low side} */
    public int low() {
        return low;
    }

    /** {@return the port of the liquid line or the discharge} */
    public int high() {
        return high;
    }

    /** {@return the valve between low and centre} */
    public int lowValve() {
        return lowValve;
    }

    /** {@return the valve between high and centre} */
    public int highValve() {
        return highValve;
    }

    /** {@return the volume at the inlet of the recovery machine} */
    public int machineInlet() {
        return machineInlet;
    }

    /** {@return the volume at its outlet} */
    public int machineOutlet() {
        return machineOutlet;
    }

    /**
     * {@return its hand valve}
     *
     * @param end a hose end
     */
    public int endValve(int end) {
        return endValve[end];
    }

    /**
     * {@return its valve}
     *
     * @param connection a connection
     */
    public int connectionValve(int connection) {
        return connectionValve[connection];
    }

    /**
     * {@return what stands behind it}
     *
     * @param connection a connection
     */
    public PlanParts.Behind behind(int connection) {
        return behind[connection];
    }

    /**
     * {@return the number of the port, volume or cylinder behind it}
     *
     * @param connection a connection
     */
    public int behindIndex(int connection) {
        return behindIndex[connection];
    }

    /**
     * {@return the volume of it}
     *
     * @param hose a hose
     */
    public int hoseVolume(int hose) {
        return hoseVolume[hose];
    }

    /**
     * {@return the volume of it}
     *
     * @param which {@link PlanParts#CHAMBER_LOW}, {@link PlanParts#CHAMBER_HIGH} or {@link PlanParts#CHAMBER_CENTRE}
     */
    public int chamber(int which) {
        return chamber[which];
    }

    /**
     * {@return whether it is that of a hose}
     *
     * @param volume a volume
     */
    public boolean isHose(int volume) {
        return isHose[volume];
    }

    /**
     * {@return whether it may be open as a phase ends: one of a port, a hose end or the charging connection}
     *
     * @param valve a valve
     */
    public boolean mayStayOpen(int valve) {
        return mayStayOpen[valve];
    }

    /**
     * {@return the connection of it}
     *
     * @param port a port
     */
    public int portConnection(int port) {
        return portConnection[port];
    }
}
