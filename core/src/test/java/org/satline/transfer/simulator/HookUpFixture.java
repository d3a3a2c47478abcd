package org.satline.transfer.simulator;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.satline.quantity.Atmosphere;
import org.satline.quantity.Length;
import org.satline.quantity.Mass;
import org.satline.quantity.Pressure;
import org.satline.quantity.Temperature;
import org.satline.quantity.Volume;
import org.satline.refrigerant.SafetyGroup;
import org.satline.transfer.hookup.Act;
import org.satline.transfer.hookup.Act.Kind;
import org.satline.transfer.hookup.EndFitting;
import org.satline.transfer.hookup.GasOrigin;
import org.satline.transfer.hookup.GasProperties;
import org.satline.transfer.hookup.HookUp;
import org.satline.transfer.hookup.HookUpGas;
import org.satline.transfer.hookup.HookUpState;
import org.satline.transfer.hookup.Manifold;
import org.satline.transfer.hookup.ServiceCylinder;
import org.satline.transfer.hookup.ServiceHose;
import org.satline.transfer.hookup.SystemPort;
import org.satline.transfer.hookup.VolumeState;

/**
 * A made-up unit beside which the simulator is tried: 9 bar suction, 27 bar liquid line at 40 degC, 30 degC around, a recovery cylinder
 * with contents and a disposable source. The gas is made up too, of the size of R-410A (orders of magnitude from memory).
 */
public final class HookUpFixture {
    public static final String LOW_PORT = SystemPort.Role.LOW_SIDE.code();
    public static final String LIQUID_PORT = SystemPort.Role.LIQUID_LINE.code();
    public static final String RECOVERY = "recovery-cylinder";
    public static final String SOURCE = "source-cylinder";
    public static final String SOURCE_VALVE = SOURCE + ".valve";
    public static final String RECOVERY_VAPOUR = RECOVERY + ".vapour";

    /** Clausius-Clapeyron through 16.5 bar at 25 degC, vapour in proportion to pressure, liquid falling by a straight line. */
    public static final GasProperties GAS = new GasProperties() {
        @Override
        public double vapourDensity(double pressurePa) {
            return 40e-6 * pressurePa;
        }

        @Override
        public double liquidDensity(double temperatureK) {
            return 1062 - 6.5 * (temperatureK - Temperature.ofCelsius(25).kelvins());
        }

        @Override
        public double bubblePressurePa(double temperatureK) {
            return 16.5e5 * Math.exp(2371 * (1 / Temperature.ofCelsius(25).kelvins() - 1 / temperatureK));
        }
    };

    public EndFitting centreSystemEnd = EndFitting.PLAIN_FLARE;
    public EndFitting centreCylinderEnd = EndFitting.OPEN_CLOSE_VALVE;
    public EndFitting highPortEnd = EndFitting.PLAIN_FLARE;
    public SystemPort.Fitting lowFitting = SystemPort.Fitting.VALVE_CORE;
    public SystemPort.Fitting liquidFitting = SystemPort.Fitting.VALVE_CORE;
    public SafetyGroup group = SafetyGroup.A1;
    public boolean carbonDioxide;
    public boolean running = true;
    public double lowBars = 9;
    public double liquidBars = 27;
    public double liquidCelsius = 40;
    public double ambientCelsius = 30;
    public int manifoldValves = 2;
    public double recoveryKilograms = 3;
    public double recoveryCelsius = 25;
    public GasOrigin recoveryOrigin = GasOrigin.RECOVERED;
    public boolean recoveryMayHoldAir;
    public EndFitting lowPortEnd = EndFitting.PLAIN_FLARE;
    public boolean pump = true;
    public boolean glide;
    public boolean onlyLowPort;
    public boolean outletHose;
    public final Map<String, VolumeState> known = new HashMap<>();

    public HookUp hookUp() {
        return new HookUp(
                new HookUpGas(group, glide, carbonDioxide, GAS),
                running,
                ports(),
                Optional.of(new Manifold(manifoldValves, 1, Volume.ofLitres(0.010))),
                hoses(),
                List.of(
                        new ServiceCylinder(
                                RECOVERY,
                                ServiceCylinder.Use.RECEIVER,
                                ServiceCylinder.Valves.VAPOUR_AND_LIQUID,
                                Volume.ofLitres(12)),
                        new ServiceCylinder(
                                SOURCE,
                                ServiceCylinder.Use.DISPOSABLE,
                                ServiceCylinder.Valves.ONE,
                                Volume.ofLitres(13))),
                pump,
                true,
                Atmosphere.standard(),
                Temperature.ofCelsius(ambientCelsius));
    }

    private List<ServiceHose> hoses() {
        List<ServiceHose> hoses = new ArrayList<>(List.of(
                hose("low-hose", lowPortEnd, EndFitting.PLAIN_FLARE),
                hose("high-hose", highPortEnd, EndFitting.PLAIN_FLARE),
                hose("centre-hose", centreSystemEnd, centreCylinderEnd),
                hose("pump-hose", EndFitting.PLAIN_FLARE, EndFitting.PLAIN_FLARE)));
        if (outletHose) {
            hoses.add(hose(HookUp.OUTLET_HOSE, EndFitting.PLAIN_FLARE, EndFitting.OPEN_CLOSE_VALVE));
        }
        return hoses;
    }

    private List<SystemPort> ports() {
        SystemPort low = new SystemPort(
                SystemPort.Role.LOW_SIDE, lowFitting, Pressure.ofBars(lowBars), Temperature.ofCelsius(15), false);
        SystemPort liquid = new SystemPort(
                SystemPort.Role.LIQUID_LINE,
                liquidFitting,
                Pressure.ofBars(liquidBars),
                Temperature.ofCelsius(liquidCelsius),
                running);
        return onlyLowPort ? List.of(low) : List.of(low, liquid);
    }

    private static ServiceHose hose(String name, EndFitting system, EndFitting cylinder) {
        return new ServiceHose(name, system, cylinder, Length.ofMillimetres(5), Length.ofMetres(1.5));
    }

    public HookUpState start() {
        HookUp hookUp = hookUp();
        Map<String, VolumeState> volumes = new HashMap<>();
        volumes.put(
                RECOVERY,
                hookUp.cylinder(
                        RECOVERY,
                        Mass.ofKilograms(recoveryKilograms),
                        Temperature.ofCelsius(recoveryCelsius),
                        recoveryOrigin,
                        Optional.empty(),
                        recoveryMayHoldAir));
        volumes.put(
                SOURCE,
                hookUp.cylinder(
                        SOURCE,
                        Mass.ofKilograms(9),
                        Temperature.ofCelsius(28),
                        GasOrigin.SOURCE,
                        Optional.empty(),
                        false));
        volumes.putAll(known);
        return hookUp.before(volumes);
    }

    public Play play() {
        return new Play(new HookUpSimulator(hookUp()), start());
    }

    /** Both hoses on and swept by low-side vapour, nothing at the centre. */
    public Play hookedUp() {
        return play().connect(Kind.CONNECT_TIGHT, "low-hose.cylinder", Manifold.LOW)
                .connect(Kind.CONNECT_TIGHT, "high-hose.cylinder", Manifold.HIGH)
                .connect(Kind.CONNECT_LOOSE, "high-hose.system", LIQUID_PORT)
                .connect(Kind.CONNECT_TIGHT, "low-hose.system", LOW_PORT)
                .act(Kind.OPEN, Manifold.HIGH_VALVE)
                .act(Kind.CRACK, Manifold.LOW_VALVE)
                .act(Kind.CLOSE, Manifold.HIGH_VALVE)
                .act(Kind.TIGHTEN, "high-hose.system")
                .act(Kind.CLOSE, Manifold.LOW_VALVE);
    }

    /** The same, with the centre hose swept to the recovery cylinder's joint, tight and at suction pressure. */
    public Play readyToRecover() {
        return hookedUp()
                .centreTo(RECOVERY_VAPOUR)
                .act(Kind.CRACK, Manifold.LOW_VALVE)
                .act(Kind.TIGHTEN, "centre-hose.cylinder")
                .act(Kind.CLOSE, Manifold.LOW_VALVE);
    }

    /** The centre hose swept with low-side vapour to the source's joint, tight there. */
    public Play readyToCharge() {
        return hookedUp()
                .centreTo(SOURCE_VALVE)
                .act(Kind.CRACK, Manifold.LOW_VALVE)
                .act(Kind.TIGHTEN, "centre-hose.cylinder")
                .act(Kind.CLOSE, Manifold.LOW_VALVE)
                .act(Kind.INVERT, SOURCE);
    }

    /** A plan as it grows. */
    public static final class Play {
        public final HookUpSimulator simulator;
        public final List<HookUpSimulator.Outcome> outcomes = new ArrayList<>();
        private HookUpState state;

        public Play(HookUpSimulator simulator, HookUpState start) {
            this.simulator = simulator;
            this.state = start;
        }

        public Play act(Act act) {
            HookUpSimulator.Outcome outcome = simulator.apply(state, act);
            outcomes.add(outcome);
            state = outcome.state();
            return this;
        }

        public Play act(Kind kind, String target) {
            return act(Act.of(kind, target));
        }

        public Play connect(Kind kind, String end, String to) {
            return act(Act.connect(kind, end, to));
        }

        public Play centreTo(String connection) {
            Play play = connect(Kind.CONNECT_TIGHT, "centre-hose.system", Manifold.CENTRE)
                    .connect(Kind.CONNECT_LOOSE, "centre-hose.cylinder", connection);
            return play.simulator.isPossible(state, Act.of(Kind.OPEN, "centre-hose.cylinder"))
                    ? play.act(Kind.OPEN, "centre-hose.cylinder")
                    : play;
        }

        public HookUpState state() {
            return state;
        }

        public VolumeState volume(String name) {
            return state.volume(name);
        }

        public Effects last() {
            return outcomes.get(outcomes.size() - 1).effects();
        }

        public List<Violation> violations() {
            return HookUpSimulator.violations(outcomes);
        }

        /** The invariants that the last act broke. */
        public List<Invariant> broken() {
            return last().violations().stream()
                    .map(Violation::invariant)
                    .distinct()
                    .toList();
        }

        public double moved(String from, String to) {
            return last().transfers().stream()
                    .filter(transfer ->
                            transfer.from().equals(from) && transfer.to().equals(to))
                    .mapToDouble(transfer -> transfer.refrigerant().kilograms())
                    .sum();
        }
    }
}
