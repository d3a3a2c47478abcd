package org.satline.transfer.planner;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import org.satline.quantity.Atmosphere;
import org.satline.quantity.Length;
import org.satline.quantity.Mass;
import org.satline.quantity.Pressure;
import org.satline.quantity.Temperature;
import org.satline.quantity.Volume;
import org.satline.refrigerant.SafetyGroup;
import org.satline.transfer.hookup.EndFitting;
import org.satline.transfer.hookup.GasOrigin;
import org.satline.transfer.hookup.GasProperties;
import org.satline.transfer.hookup.HookUp;
import org.satline.transfer.hookup.HookUpGas;
import org.satline.transfer.hookup.HookUpState;
import org.satline.transfer.hookup.Joint;
import org.satline.transfer.hookup.Manifold;
import org.satline.transfer.hookup.Opening;
import org.satline.transfer.hookup.ServiceCylinder;
import org.satline.transfer.hookup.ServiceHose;
import org.satline.transfer.hookup.SystemPort;
import org.satline.transfer.hookup.VolumeState;
import org.satline.transfer.simulator.HookUpFixture;

/**
 * Hook-ups that nobody thought of: every temperature, pressure, size, fitting and content drawn by a seed, cold air and warm suction,
 * gases of low and of high pressure, hoses of different ends and of unknown content. The gas is the made-up one of the fixture, its
 * pressure scaled.
 */
final class RandomHookUps {
    private final Random random;
    private final String name;

    private RandomHookUps(long seed) {
        random = new Random(seed * 7919 + 13);
        random.nextDouble();
        name = "seed " + seed;
    }

    /** The hook-up of a seed, before anything is joined. */
    static PlanTrial.Site of(long seed) {
        return new RandomHookUps(seed).site();
    }

    /** The same with its hoses at the ports, full of what stands there, and the hose to a cylinder on it, of any content. */
    static PlanTrial.Site hooked(long seed) {
        RandomHookUps drawn = new RandomHookUps(seed);
        PlanTrial.Site site = drawn.site();
        return new PlanTrial.Site(site.hookUp(), drawn.hangs(site.hookUp(), site.start()), site.name() + " hooked up");
    }

    private double between(double low, double high) {
        return low + random.nextDouble() * (high - low);
    }

    private boolean in(int number) {
        return random.nextInt(number) == 0;
    }

    private <T> T any(T[] all) {
        return all[random.nextInt(all.length)];
    }

    private PlanTrial.Site site() {
        double scale = in(3) ? between(0.15, 0.5) : between(0.5, 1.3);
        GasProperties gas = scaled(scale);
        SafetyGroup[] groups = {
            SafetyGroup.A1,
            SafetyGroup.A1,
            SafetyGroup.A2L,
            SafetyGroup.A2L,
            SafetyGroup.A3,
            SafetyGroup.B2L,
            SafetyGroup.B1
        };
        double around = between(-20, 46);
        boolean running = !in(4);
        double evaporating = running ? between(-35, 20) : around;
        double condensing = running ? Math.max(around + between(3, 22), evaporating + 8) : around;
        double subcooling = in(5) ? 0 : between(0, Math.max(0.1, condensing - around));
        List<SystemPort> ports = new ArrayList<>();
        ports.add(
                port(SystemPort.Role.LOW_SIDE, gas, evaporating, evaporating + (running ? between(0, 15) : 0), in(25)));
        if (!in(8)) {
            boolean discharge = in(10);
            ports.add(
                    discharge
                            ? port(SystemPort.Role.DISCHARGE, gas, condensing, condensing + between(0, 40), false)
                            : port(SystemPort.Role.LIQUID_LINE, gas, condensing, condensing - subcooling, !in(8)));
        }
        Optional<Manifold> manifold = in(4)
                ? Optional.empty()
                : Optional.of(new Manifold(in(3) ? 4 : 2, in(4) ? 2 : 1, Volume.ofLitres(between(0.004, 0.016))));
        boolean pump = !in(3);
        boolean machine = in(4);
        List<ServiceHose> hoses = new ArrayList<>();
        if (manifold.isPresent()) {
            EndFitting atPorts = any(EndFitting.values());
            hoses.add(hose("low-hose", in(3) ? any(EndFitting.values()) : atPorts, EndFitting.PLAIN_FLARE));
            hoses.add(hose("high-hose", atPorts, in(6) ? any(EndFitting.values()) : EndFitting.PLAIN_FLARE));
        }
        hoses.add(hose(
                manifold.isPresent() ? "centre-hose" : "direct-hose",
                any(EndFitting.values()),
                any(EndFitting.values())));
        if (pump && manifold.isPresent() && !in(3)) {
            hoses.add(hose("pump-hose", EndFitting.PLAIN_FLARE, any(EndFitting.values())));
        }
        if (machine && !in(4)) {
            hoses.add(hose(HookUp.OUTLET_HOSE, EndFitting.PLAIN_FLARE, any(EndFitting.values())));
        }
        Atmosphere air = in(3) ? Atmosphere.measured(Pressure.ofBars(between(0.65, 1.04))) : Atmosphere.standard();
        HookUp hookUp = new HookUp(
                new HookUpGas(any(groups), in(4), false, gas),
                running,
                ports,
                manifold,
                hoses,
                List.of(
                        new ServiceCylinder(
                                HookUpFixture.RECOVERY,
                                ServiceCylinder.Use.RECEIVER,
                                in(5) ? ServiceCylinder.Valves.ONE : ServiceCylinder.Valves.VAPOUR_AND_LIQUID,
                                Volume.ofLitres(between(5, 60))),
                        new ServiceCylinder(
                                HookUpFixture.SOURCE,
                                in(2) ? ServiceCylinder.Use.DISPOSABLE : ServiceCylinder.Use.SOURCE,
                                any(ServiceCylinder.Valves.values()),
                                Volume.ofLitres(between(5, 60)))),
                pump,
                machine,
                air,
                Temperature.ofCelsius(around));
        return new PlanTrial.Site(hookUp, start(hookUp, around), name + told(hookUp));
    }

    private static String told(HookUp hookUp) {
        StringBuilder text = new StringBuilder(String.format(
                Locale.ROOT,
                " %s%s %s %.1f C",
                hookUp.gas().group(),
                hookUp.gas().glide() ? " glide" : "",
                hookUp.running() ? "running" : "at rest",
                hookUp.ambient().celsius()));
        hookUp.ports()
                .forEach(port -> text.append(String.format(
                        Locale.ROOT,
                        ", %s %s %.2f bar %.1f C%s",
                        port.role(),
                        port.fitting(),
                        port.pressure().bars(),
                        port.temperature().celsius(),
                        port.liquid() ? " liquid" : "")));
        text.append(hookUp.manifold().map(it -> ", " + it.valves() + " valves").orElse(", direct"));
        hookUp.hoses()
                .forEach(hose -> text.append(", ")
                        .append(hose.name())
                        .append(' ')
                        .append(hose.systemEnd())
                        .append('/')
                        .append(hose.cylinderEnd()));
        text.append(hookUp.pump() ? ", pump" : "").append(hookUp.machine() ? ", machine" : "");
        return text.toString();
    }

    private static GasProperties scaled(double factor) {
        return new GasProperties() {
            @Override
            public double vapourDensity(double pressurePa) {
                return HookUpFixture.GAS.vapourDensity(pressurePa);
            }

            @Override
            public double liquidDensity(double temperatureK) {
                return HookUpFixture.GAS.liquidDensity(temperatureK);
            }

            @Override
            public double bubblePressurePa(double temperatureK) {
                return factor * HookUpFixture.GAS.bubblePressurePa(temperatureK);
            }
        };
    }

    private SystemPort port(
            SystemPort.Role role, GasProperties gas, double saturation, double temperature, boolean liquid) {
        return new SystemPort(
                role,
                any(SystemPort.Fitting.values()),
                Pressure.ofPascals(
                        gas.bubblePressurePa(Temperature.ofCelsius(saturation).kelvins())),
                Temperature.ofCelsius(temperature),
                liquid);
    }

    private ServiceHose hose(String hose, EndFitting system, EndFitting cylinder) {
        return new ServiceHose(
                hose,
                system,
                cylinder,
                Length.ofMillimetres(between(3.5, in(5) ? 9.5 : 6)),
                Length.ofMetres(between(0.5, 3)));
    }

    private HookUpState start(HookUp hookUp, double around) {
        Map<String, VolumeState> volumes = new HashMap<>();
        for (ServiceCylinder cylinder : hookUp.cylinders()) {
            boolean receives = cylinder.use() == ServiceCylinder.Use.RECEIVER;
            GasOrigin origin = receives
                    ? in(3) ? GasOrigin.SYSTEM : in(8) ? GasOrigin.UNKNOWN : GasOrigin.RECOVERED
                    : in(10) ? GasOrigin.RECOVERED : GasOrigin.SOURCE;
            double share = receives && in(3) ? 0 : in(6) ? between(0, 0.02) : between(0.05, 0.75);
            volumes.put(
                    cylinder.name(),
                    hookUp.cylinder(
                            cylinder.name(),
                            Mass.ofKilograms(
                                    900 * share * cylinder.waterCapacity().cubicMetres()),
                            Temperature.ofCelsius(around + (in(2) ? between(-12, 15) : between(-1, 1))),
                            origin,
                            Optional.empty(),
                            receives && in(8)));
        }
        for (ServiceHose hose : hookUp.hoses()) {
            if (in(5)) {
                volumes.put(hose.name(), content(hookUp, hose.name()));
            }
        }
        if (hookUp.machine() && in(2)) {
            volumes.put(HookUp.MACHINE_INLET, hookUp.evacuated());
            volumes.put(HookUp.MACHINE_OUTLET, hookUp.evacuated());
        }
        return hookUp.before(volumes);
    }

    private VolumeState content(HookUp hookUp, String hose) {
        double saturation =
                hookUp.gas().properties().bubblePressurePa(hookUp.ambient().kelvins());
        GasOrigin[] origins = {GasOrigin.SYSTEM, GasOrigin.SOURCE, GasOrigin.RECOVERED, GasOrigin.UNKNOWN};
        return in(3)
                ? hookUp.evacuated()
                : hookUp.vapour(hose, Pressure.ofPascals(saturation * between(0.1, 0.99)), any(origins));
    }

    private HookUpState hangs(HookUp hookUp, HookUpState start) {
        HookUpState state = start;
        boolean direct = hookUp.manifold().isEmpty();
        if (!direct) {
            state = side(hookUp, state, "low-hose", hookUp.ports().get(0), Manifold.LOW, Manifold.LOW_CHAMBER);
            if (hookUp.ports().size() > 1) {
                state = side(hookUp, state, "high-hose", hookUp.ports().get(1), Manifold.HIGH, Manifold.HIGH_CHAMBER);
            }
            state = state.withVolume(Manifold.CENTRE_CHAMBER, low(hookUp, Manifold.CENTRE_CHAMBER));
        }
        String hose = direct ? "direct-hose" : "centre-hose";
        ServiceCylinder cylinder = hookUp.cylinders().get(random.nextInt(2));
        boolean out = cylinder.use() == ServiceCylinder.Use.RECEIVER;
        List<String> valves = cylinder.connections();
        SystemPort port = hookUp.ports().get(out ? hookUp.ports().size() - 1 : 0);
        state = state.withJoint(hose + ".cylinder", new Joint(valves.get(out ? 0 : valves.size() - 1), true))
                .withJoint(hose + ".system", new Joint(direct ? port.name() : Manifold.CENTRE, true));
        for (String valve : List.of(hose + ".system", hose + ".cylinder", Manifold.CHARGING_VALVE)) {
            state = hookUp.valves().contains(valve) ? state.withValve(valve, Opening.OPEN) : state;
        }
        if (direct) {
            state = port.hasValve() ? state.withValve(port.name(), Opening.OPEN) : state;
            return state.withVolume(hose, at(hookUp, hose, port));
        }
        return state.withVolume(hose, in(3) ? content(hookUp, hose) : low(hookUp, hose));
    }

    private static VolumeState low(HookUp hookUp, String volume) {
        return hookUp.vapour(volume, hookUp.ports().get(0).pressure(), GasOrigin.SYSTEM);
    }

    private static VolumeState at(HookUp hookUp, String volume, SystemPort port) {
        return port.liquid()
                ? hookUp.liquid(volume, port.pressure(), port.temperature(), GasOrigin.SYSTEM)
                : hookUp.vapour(volume, port.pressure(), GasOrigin.SYSTEM);
    }

    private static HookUpState side(
            HookUp hookUp, HookUpState start, String hose, SystemPort port, String connection, String chamber) {
        HookUpState state = start.withJoint(hose + ".system", new Joint(port.name(), true))
                .withJoint(hose + ".cylinder", new Joint(connection, true));
        for (String valve : List.of(hose + ".system", hose + ".cylinder", port.name())) {
            state = hookUp.valves().contains(valve) ? state.withValve(valve, Opening.OPEN) : state;
        }
        return state.withVolume(hose, at(hookUp, hose, port)).withVolume(chamber, at(hookUp, chamber, port));
    }
}
