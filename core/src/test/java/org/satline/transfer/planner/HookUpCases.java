package org.satline.transfer.planner;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
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
import org.satline.transfer.hookup.HookUp;
import org.satline.transfer.hookup.HookUpGas;
import org.satline.transfer.hookup.HookUpState;
import org.satline.transfer.hookup.Manifold;
import org.satline.transfer.hookup.ServiceCylinder;
import org.satline.transfer.hookup.ServiceHose;
import org.satline.transfer.hookup.SystemPort;
import org.satline.transfer.hookup.VolumeState;
import org.satline.transfer.simulator.HookUpFixture;

/**
 * Hook-ups as data: what stands on site in a van and on a roof, every kind with every other. Pressures are of the size of R-410A (from
 * memory); the sub-atmospheric low side is that of a deep-freezing unit.
 */
final class HookUpCases {
    enum Kit {
        TWO_VALVES,
        TWO_VALVES_TWO_CENTRES,
        FOUR_VALVES,
        DIRECT
    }

    enum Held {
        EVACUATED,
        RECOVERED_COOL,
        OWN_COOL,
        RECOVERED_HOT,
        WITH_AIR
    }

    enum Gas {
        A1(SafetyGroup.A1, false),
        A2L(SafetyGroup.A2L, false),
        A3(SafetyGroup.A3, false),
        B2L(SafetyGroup.B2L, false),
        CARBON_DIOXIDE(SafetyGroup.A1, true);

        final SafetyGroup group;
        final boolean carbonDioxide;

        Gas(SafetyGroup group, boolean carbonDioxide) {
            this.group = group;
            this.carbonDioxide = carbonDioxide;
        }
    }

    /** One hook-up. */
    record Case(
            Kit kit,
            EndFitting system,
            EndFitting cylinder,
            EndFitting port,
            SystemPort.Fitting fitting,
            Held held,
            boolean running,
            Gas gas,
            boolean lowBelowAtmosphere,
            boolean pump) {
        HookUp hookUp() {
            double rest = HookUpFixture.GAS.bubblePressurePa(303.15) / 1e5;
            double low = running ? lowBelowAtmosphere ? 0.7 : 9 : rest;
            double high = running ? 27 : rest;
            boolean direct = kit == Kit.DIRECT;
            List<ServiceHose> hoses = new ArrayList<>();
            if (!direct) {
                hoses.add(hose("low-hose", port, EndFitting.PLAIN_FLARE));
                hoses.add(hose("high-hose", port, EndFitting.PLAIN_FLARE));
            }
            hoses.add(hose(direct ? "direct-hose" : "centre-hose", system, cylinder));
            if (pump && !direct) {
                hoses.add(hose("pump-hose", EndFitting.PLAIN_FLARE, EndFitting.OPEN_CLOSE_VALVE));
            }
            List<SystemPort> ports = List.of(
                    new SystemPort(
                            SystemPort.Role.LOW_SIDE,
                            fitting,
                            Pressure.ofBars(low),
                            Temperature.ofCelsius(running ? 15 : 30),
                            false),
                    new SystemPort(
                            SystemPort.Role.LIQUID_LINE,
                            fitting,
                            Pressure.ofBars(high),
                            Temperature.ofCelsius(running ? 40 : 30),
                            true));
            return new HookUp(
                    new HookUpGas(gas.group, false, gas.carbonDioxide, HookUpFixture.GAS),
                    running,
                    ports,
                    direct
                            ? Optional.empty()
                            : Optional.of(new Manifold(
                                    kit == Kit.FOUR_VALVES ? 4 : 2,
                                    kit == Kit.TWO_VALVES_TWO_CENTRES ? 2 : 1,
                                    Volume.ofLitres(0.010))),
                    hoses,
                    List.of(
                            new ServiceCylinder(
                                    HookUpFixture.RECOVERY,
                                    ServiceCylinder.Use.RECEIVER,
                                    ServiceCylinder.Valves.VAPOUR_AND_LIQUID,
                                    Volume.ofLitres(12)),
                            new ServiceCylinder(
                                    HookUpFixture.SOURCE,
                                    ServiceCylinder.Use.DISPOSABLE,
                                    ServiceCylinder.Valves.ONE,
                                    Volume.ofLitres(13))),
                    pump,
                    false,
                    Atmosphere.standard(),
                    Temperature.ofCelsius(30));
        }

        HookUpState start() {
            HookUp hookUp = hookUp();
            Map<String, VolumeState> volumes = new HashMap<>();
            boolean own = held == Held.OWN_COOL;
            volumes.put(
                    HookUpFixture.RECOVERY,
                    hookUp.cylinder(
                            HookUpFixture.RECOVERY,
                            Mass.ofKilograms(held == Held.EVACUATED ? 0 : 3),
                            Temperature.ofCelsius(held == Held.RECOVERED_HOT ? 48 : 25),
                            own ? GasOrigin.SYSTEM : GasOrigin.RECOVERED,
                            Optional.empty(),
                            held == Held.WITH_AIR));
            volumes.put(
                    HookUpFixture.SOURCE,
                    hookUp.cylinder(
                            HookUpFixture.SOURCE,
                            Mass.ofKilograms(9),
                            Temperature.ofCelsius(31),
                            GasOrigin.SOURCE,
                            Optional.empty(),
                            false));
            return hookUp.before(volumes);
        }
    }

    private HookUpCases() {}

    private static ServiceHose hose(String name, EndFitting system, EndFitting cylinder) {
        return new ServiceHose(name, system, cylinder, Length.ofMillimetres(5), Length.ofMetres(1.5));
    }

    /** Some of them, drawn by a seed. */
    static List<Case> some(long seed, int number) {
        List<Case> drawn = all();
        Collections.shuffle(drawn, new Random(seed));
        return drawn.subList(0, Math.min(number, drawn.size()));
    }

    /** All of them, in a fixed order. */
    static List<Case> all() {
        List<Case> all = new ArrayList<>();
        for (Kit kit : Kit.values()) {
            for (EndFitting system : EndFitting.values()) {
                for (EndFitting cylinder : EndFitting.values()) {
                    for (EndFitting port :
                            kit == Kit.DIRECT ? new EndFitting[] {EndFitting.PLAIN_FLARE} : EndFitting.values()) {
                        for (SystemPort.Fitting fitting : SystemPort.Fitting.values()) {
                            for (Held held : Held.values()) {
                                for (Gas gas : Gas.values()) {
                                    site(all, kit, system, cylinder, port, fitting, held, gas);
                                }
                            }
                        }
                    }
                }
            }
        }
        return all;
    }

    /** Common gases in four situations; those that need more care in one, running and with a pump. */
    private static void site(
            List<Case> all,
            Kit kit,
            EndFitting system,
            EndFitting cylinder,
            EndFitting port,
            SystemPort.Fitting fitting,
            Held held,
            Gas gas) {
        all.add(new Case(kit, system, cylinder, port, fitting, held, true, gas, false, true));
        if (gas == Gas.A1 || gas == Gas.A2L) {
            all.add(new Case(kit, system, cylinder, port, fitting, held, true, gas, false, false));
            all.add(new Case(kit, system, cylinder, port, fitting, held, true, gas, true, true));
            all.add(new Case(kit, system, cylinder, port, fitting, held, false, gas, false, true));
        }
    }
}
