package org.satline.transfer.hookup;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.satline.quantity.Atmosphere;
import org.satline.quantity.Mass;
import org.satline.quantity.Parts;
import org.satline.quantity.Pressure;
import org.satline.quantity.Temperature;
import org.satline.quantity.Volume;

/**
 * The parts on site. How they are joined and what they hold is a {@link HookUpState}. Parts, connections, valves and volumes go by names:
 * a port by that of its role; {@link Manifold} lists its own; a hose, its two ends ({@link ServiceHose#ends()}), where a hand valve has the
 * name of its end; a cylinder, its connections, where each valve has the name of its connection; {@code pump}; {@code machine},
 * {@code machine.inlet} and {@code machine.outlet}; {@code air}. Immutable, thread-safe.
 *
 * @param gas the refrigerant
 * @param running whether the system runs, in cooling and settled
 * @param ports its service ports, each role once
 * @param manifold the manifold; empty where a hose goes from port to cylinder
 * @param hoses the hoses
 * @param cylinders the cylinders
 * @param pump whether a vacuum pump is there
 * @param machine whether a recovery machine is there
 * @param atmosphere the air around
 * @param ambient the temperature around the hoses
 */
public record HookUp(
        HookUpGas gas,
        boolean running,
        List<SystemPort> ports,
        Optional<Manifold> manifold,
        List<ServiceHose> hoses,
        List<ServiceCylinder> cylinders,
        boolean pump,
        boolean machine,
        Atmosphere atmosphere,
        Temperature ambient) {
    /** The open air. */
    public static final String AIR = "air";
    /** The vacuum pump and its connection. */
    public static final String PUMP = "pump";
    /** The recovery machine. */
    public static final String MACHINE = "machine";
    /** The inlet of the recovery machine: connection, valve and volume. */
    public static final String MACHINE_INLET = "machine.inlet";
    /** The outlet of the recovery machine: connection, valve and volume. */
    public static final String MACHINE_OUTLET = "machine.outlet";

    /** The hose from the outlet of the recovery machine to the cylinder. */
    public static final String OUTLET_HOSE = "outlet-hose";

    /** {@inheritDoc} */
    public HookUp {
        Parts.required("gas manifold atmosphere ambient", gas, manifold, atmosphere, ambient);
        ports = Parts.list("ports", ports);
        hoses = Parts.list("hoses", hoses);
        cylinders = Parts.list("cylinders", cylinders);
        HookUpNames.requireDifferent(ports, hoses, cylinders);
    }

    /**
     * Returns every place to which a hose end may be joined.
     *
     * @return their names, in a fixed order
     */
    public List<String> connections() {
        List<String> names = new ArrayList<>();
        ports.forEach(port -> names.add(port.name()));
        manifold.ifPresent(parts -> names.addAll(parts.connections()));
        cylinders.forEach(cylinder -> names.addAll(cylinder.connections()));
        if (pump) {
            names.add(PUMP);
        }
        if (machine) {
            names.add(MACHINE_INLET);
            names.add(MACHINE_OUTLET);
        }
        return names;
    }

    /**
     * Returns every hose end.
     *
     * @return their names, in a fixed order
     */
    public List<String> hoseEnds() {
        return hoses.stream().flatMap(hose -> hose.ends().stream()).toList();
    }

    /**
     * Returns every valve that a hand may turn; a hose end that may come to have a hand valve as the hose is turned counts.
     *
     * @return their names, in a fixed order
     */
    public List<String> valves() {
        List<String> names = new ArrayList<>();
        ports.stream().filter(SystemPort::hasValve).forEach(port -> names.add(port.name()));
        manifold.ifPresent(parts -> names.addAll(parts.valveNames()));
        for (ServiceHose hose : hoses) {
            if (hose.systemEnd() == EndFitting.OPEN_CLOSE_VALVE || hose.cylinderEnd() == EndFitting.OPEN_CLOSE_VALVE) {
                names.addAll(hose.ends());
            }
        }
        cylinders.forEach(cylinder -> names.addAll(cylinder.connections()));
        if (machine) {
            names.add(MACHINE_INLET);
            names.add(MACHINE_OUTLET);
        }
        return names;
    }

    /**
     * Returns every volume of which the content is followed: chambers, hoses, cylinders, the sides of the recovery machine.
     *
     * @return each with its size, in a fixed order
     */
    public Map<String, Volume> volumes() {
        Map<String, Volume> sizes = new LinkedHashMap<>();
        manifold.ifPresent(parts -> {
            sizes.put(Manifold.LOW_CHAMBER, parts.chamber());
            sizes.put(Manifold.HIGH_CHAMBER, parts.chamber());
            sizes.put(Manifold.CENTRE_CHAMBER, parts.chamber());
        });
        hoses.forEach(hose -> sizes.put(hose.name(), hose.volume()));
        cylinders.forEach(cylinder -> sizes.put(cylinder.name(), cylinder.waterCapacity()));
        if (machine) {
            Volume side = Volume.ofLitres(HookUpPractice.MACHINE_SIDE_ML.value() / 1000);
            sizes.put(MACHINE_INLET, side);
            sizes.put(MACHINE_OUTLET, side);
        }
        return sizes;
    }

    /**
     * Finds a hose.
     *
     * @param end the name of one of its ends, or its own
     * @return the hose, if there is one of that name
     */
    public Optional<ServiceHose> hose(String end) {
        return hoses.stream()
                .filter(hose -> hose.name().equals(end) || hose.ends().contains(end))
                .findFirst();
    }

    /**
     * Finds a cylinder.
     *
     * @param name its name or one of its connections
     * @return the cylinder, if there is one of that name
     */
    public Optional<ServiceCylinder> cylinder(String name) {
        return cylinders.stream()
                .filter(cylinder ->
                        cylinder.name().equals(name) || cylinder.connections().contains(name))
                .findFirst();
    }

    /**
     * Finds a port.
     *
     * @param name the code word of its role
     * @return the port, if there is one of that name
     */
    public Optional<SystemPort> port(String name) {
        return ports.stream().filter(port -> port.name().equals(name)).findFirst();
    }

    /**
     * Returns the fitting at a hose end.
     *
     * @param end the hose end
     * @param state tells which hoses are turned round
     * @return its fitting as the hose hangs now
     * @throws IllegalArgumentException if there is no such hose end
     */
    public EndFitting fitting(String end, HookUpState state) {
        ServiceHose hose = hose(end)
                .orElseThrow(() ->
                        new IllegalArgumentException("no hose end is called \"" + end + "\"; known are " + hoseEnds()));
        boolean first = hose.end(HoseSide.SYSTEM).equals(end);
        return first != state.turned().contains(hose.name()) ? hose.systemEnd() : hose.cylinderEnd();
    }

    /**
     * The state before anything is joined: valves shut, hoses off, manifold capped. What is not given holds air; a cylinder, nothing; a
     * recovery machine, vapour of unknown origin.
     *
     * @param known what is known of the volumes
     * @return the state
     */
    public HookUpState before(Map<String, VolumeState> known) {
        Map<String, VolumeState> filled = new HashMap<>();
        for (String name : volumes().keySet()) {
            VolumeState preset = name.equals(MACHINE_INLET) || name.equals(MACHINE_OUTLET)
                    ? vapour(name, atmosphere.pressure(), GasOrigin.UNKNOWN)
                    : cylinder(name).isPresent() ? evacuated() : air(name);
            filled.put(name, known.getOrDefault(name, preset));
        }
        Map<String, Opening> shut = new HashMap<>();
        valves().forEach(valve -> shut.put(valve, Opening.SHUT));
        Set<String> caps =
                manifold.map(parts -> Set.copyOf(parts.connections())).orElse(Set.of());
        return new HookUpState(shut, Map.of(), Set.of(), Set.of(), caps, Set.of(), filled, Set.of());
    }

    /**
     * A volume full of the air around.
     *
     * @param name the volume
     * @return its content
     */
    public VolumeState air(String name) {
        double air = law().airKg(atmosphere.pressure().pascals(), size(name));
        return new VolumeState(
                VolumeContent.AIR, atmosphere.pressure(), GasOrigin.NONE, ambient, Mass.ZERO, Mass.ofKilograms(air));
    }

    /**
     * An evacuated volume.
     *
     * @return its content
     */
    public VolumeState evacuated() {
        return new VolumeState(VolumeContent.NOTHING, Pressure.ZERO, GasOrigin.NONE, ambient, Mass.ZERO, Mass.ZERO);
    }

    /**
     * A hose or chamber full of vapour.
     *
     * @param name the volume
     * @param pressure its pressure
     * @param origin whose refrigerant
     * @return its content
     */
    public VolumeState vapour(String name, Pressure pressure, GasOrigin origin) {
        double held = law().vapourDensity(pressure.pascals()) * size(name);
        return new VolumeState(VolumeContent.VAPOUR, pressure, origin, ambient, Mass.ofKilograms(held), Mass.ZERO);
    }

    /**
     * A hose or chamber full of liquid.
     *
     * @param name the volume
     * @param pressure its pressure
     * @param temperature its temperature
     * @param origin whose refrigerant
     * @return its content
     */
    public VolumeState liquid(String name, Pressure pressure, Temperature temperature, GasOrigin origin) {
        double held = law().liquidDensity(temperature.kelvins()) * size(name);
        return new VolumeState(VolumeContent.LIQUID, pressure, origin, temperature, Mass.ofKilograms(held), Mass.ZERO);
    }

    /**
     * A cylinder with contents at rest.
     *
     * @param name the cylinder
     * @param held what it holds
     * @param temperature its temperature
     * @param origin whose refrigerant
     * @param gauge its pressure where a gauge was read; what is above that of the refrigerant is air
     * @param mayHoldAir whether it may hold air where no gauge shows it
     * @return its content; {@link VolumeContent#AIR} where it holds air
     */
    public VolumeState cylinder(
            String name,
            Mass held,
            Temperature temperature,
            GasOrigin origin,
            Optional<Pressure> gauge,
            boolean mayHoldAir) {
        double excess = gauge.map(
                        read -> read.pascals() - law().pressure(held.kilograms(), 0, size(name), temperature.kelvins()))
                .filter(above -> above > certainPa())
                .orElse(
                        mayHoldAir
                                ? Pressure.ofBars(HookUpPractice.SUSPECTED_AIR_BAR.value())
                                        .pascals()
                                : 0.0);
        return new CylinderAtRest(law(), size(name), held, temperature).with(excess, origin);
    }

    /**
     * A difference of pressure that is certain in spite of the errors of both readings.
     *
     * @return Pa
     */
    public static double certainPa() {
        return Pressure.ofBars(HookUpPractice.CERTAIN_DIFFERENCE_BAR.value()).pascals();
    }

    /**
     * Size of a volume.
     *
     * @param volume its name
     * @return m3
     * @throws IllegalArgumentException if no volume has that name
     */
    public double size(String volume) {
        Volume size = volumes().get(volume);
        if (size == null) {
            throw new IllegalArgumentException("no volume is called \"" + volume + "\"; known are "
                    + volumes().keySet());
        }
        return size.cubicMetres();
    }

    /**
     * The law that its gas follows.
     *
     * @return for every pressure that occurs in it
     */
    public GasLaw law() {
        double highest = ports.stream()
                .mapToDouble(port -> port.pressure().pascals())
                .max()
                .orElse(0);
        return new GasLaw(gas, ambient, Math.max(highest, atmosphere.pressure().pascals()));
    }
}
