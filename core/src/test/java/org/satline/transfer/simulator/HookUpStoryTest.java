package org.satline.transfer.simulator;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.satline.transfer.simulator.HookUpFixture.LIQUID_PORT;
import static org.satline.transfer.simulator.HookUpFixture.LOW_PORT;
import static org.satline.transfer.simulator.HookUpFixture.RECOVERY;
import static org.satline.transfer.simulator.HookUpFixture.RECOVERY_VAPOUR;
import static org.satline.transfer.simulator.HookUpFixture.SOURCE;
import static org.satline.transfer.simulator.HookUpFixture.SOURCE_VALVE;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.satline.measurement.Reading;
import org.satline.quantity.Atmosphere;
import org.satline.quantity.Length;
import org.satline.quantity.Mass;
import org.satline.quantity.Pressure;
import org.satline.quantity.Temperature;
import org.satline.quantity.Volume;
import org.satline.refrigerant.Catalogue;
import org.satline.refrigerant.SafetyGroup;
import org.satline.saturation.SaturationCurve;
import org.satline.saturation.SaturationCurves;
import org.satline.transfer.ConnectionPoint;
import org.satline.transfer.Flow;
import org.satline.transfer.FlowCheck;
import org.satline.transfer.PointKind;
import org.satline.transfer.hookup.Act;
import org.satline.transfer.hookup.Act.Kind;
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
import org.satline.transfer.hookup.VolumeContent;
import org.satline.transfer.simulator.HookUpFixture.Play;

/** Whole sequences as the trade does them break nothing. Common practice, no source. */
class HookUpStoryTest {
    private final HookUpFixture fixture = new HookUpFixture();

    @Test
    void outTooMuchBackInAndOff() {
        fixture.highPortEnd = EndFitting.SELF_SEALING;
        fixture.liquidFitting = SystemPort.Fitting.CORE_TOOL;
        // a self-sealing end is no leak: the high hose is swept to its loose joint at the manifold instead, out of the
        // closed core tool
        Play play = fixture.play()
                .connect(Kind.CONNECT_TIGHT, "low-hose.cylinder", Manifold.LOW)
                .connect(Kind.CONNECT_TIGHT, "low-hose.system", LOW_PORT)
                .connect(Kind.CONNECT_LOOSE, "high-hose.cylinder", Manifold.HIGH)
                .act(Kind.OPEN, Manifold.HIGH_VALVE)
                .act(Kind.CRACK, Manifold.LOW_VALVE)
                .act(Kind.CLOSE, Manifold.LOW_VALVE)
                .act(Kind.CLOSE, Manifold.HIGH_VALVE)
                .act(Kind.TAKE_OFF, "high-hose.cylinder")
                .act(Kind.TURN_ROUND, "high-hose")
                .connect(Kind.CONNECT_TIGHT, "high-hose.cylinder", Manifold.HIGH)
                .connect(Kind.CONNECT_LOOSE, "high-hose.system", LIQUID_PORT)
                .act(Kind.OPEN, Manifold.HIGH_VALVE)
                .act(Kind.CRACK, Manifold.LOW_VALVE)
                .act(Kind.CLOSE, Manifold.LOW_VALVE)
                .act(Kind.TIGHTEN, "high-hose.system")
                .act(Kind.CLOSE, Manifold.HIGH_VALVE)
                .act(Kind.OPEN, LIQUID_PORT);
        assertThat(play.violations()).isEmpty();
        play.centreTo(RECOVERY_VAPOUR)
                .act(Kind.CRACK, Manifold.LOW_VALVE)
                .act(Kind.TIGHTEN, "centre-hose.cylinder")
                .act(Kind.CLOSE, Manifold.LOW_VALVE)
                .act(Kind.OPEN, Manifold.HIGH_VALVE)
                .act(Act.of(Kind.OPEN_SHORT, RECOVERY_VAPOUR).until(Mass.ofGrams(150)))
                .act(Kind.WAIT, "system")
                .act(Act.of(Kind.OPEN_SHORT, RECOVERY_VAPOUR).until(Mass.ofGrams(150)))
                .act(Kind.WAIT, "system")
                .act(Kind.READ_SCALE, "scale");
        assertThat(play.violations()).isEmpty();
        double recovered = play.volume(RECOVERY).refrigerant().kilograms() - fixture.recoveryKilograms;
        // by the scale, and the hose's vapour of the sweep
        assertThat(recovered).isCloseTo(0.3, within(0.0015));

        // change over
        play.act(Kind.CLOSE, Manifold.HIGH_VALVE)
                .act(Kind.CRACK, Manifold.LOW_VALVE)
                .act(Kind.CLOSE, Manifold.LOW_VALVE)
                .act(Kind.CLOSE, "centre-hose.cylinder")
                .act(Kind.TAKE_OFF, "centre-hose.cylinder")
                .connect(Kind.CONNECT_LOOSE, "centre-hose.cylinder", SOURCE_VALVE)
                .act(Kind.CRACK, SOURCE_VALVE)
                .act(Kind.TIGHTEN, "centre-hose.cylinder")
                .act(Kind.CLOSE, SOURCE_VALVE)
                .act(Kind.INVERT, SOURCE)
                .act(Kind.ZERO_SCALE, "scale")
                .act(Kind.OPEN, SOURCE_VALVE)
                .act(Kind.OPEN, "centre-hose.cylinder");
        assertThat(play.violations()).isEmpty();
        double before = play.volume(SOURCE).refrigerant().kilograms();
        play.act(Act.of(Kind.OPEN_SHORT, Manifold.LOW_VALVE).until(Mass.ofGrams(80)))
                .act(Kind.WAIT, "system")
                .act(Kind.CRACK, Manifold.LOW_VALVE)
                .act(Kind.CLOSE, SOURCE_VALVE)
                .act(Kind.CLOSE, Manifold.LOW_VALVE)
                .act(Kind.CLOSE, "centre-hose.cylinder")
                .act(Kind.SET_UPRIGHT, SOURCE)
                .act(Kind.TAKE_OFF, "centre-hose.cylinder");
        assertThat(play.violations()).isEmpty();
        assertThat(before - play.volume(SOURCE).refrigerant().kilograms()).isBetween(0.08, 0.13);

        // end of job
        play.act(Kind.OPEN, Manifold.HIGH_VALVE)
                .act(Kind.CLOSE, LIQUID_PORT)
                .act(Kind.OPEN_SHORT, Manifold.LOW_VALVE)
                .act(Kind.CLOSE, Manifold.HIGH_VALVE)
                .act(Kind.TAKE_OFF, "low-hose.system")
                .act(Kind.TAKE_OFF, "high-hose.system")
                .act(Kind.CAP, LOW_PORT)
                .act(Kind.CAP, LIQUID_PORT);
        assertThat(play.violations()).isEmpty();
    }

    @Test
    void toxicGasIsHookedUpBehindShutStemsAndAPump() {
        fixture.group = SafetyGroup.B2L;
        fixture.lowFitting = SystemPort.Fitting.STEM;
        fixture.liquidFitting = SystemPort.Fitting.STEM;
        fixture.manifoldValves = 4;
        Play play = fixture.play()
                .connect(Kind.CONNECT_TIGHT, "low-hose.cylinder", Manifold.LOW)
                .connect(Kind.CONNECT_TIGHT, "low-hose.system", LOW_PORT)
                .connect(Kind.CONNECT_TIGHT, "high-hose.cylinder", Manifold.HIGH)
                .connect(Kind.CONNECT_TIGHT, "high-hose.system", LIQUID_PORT)
                .connect(Kind.CONNECT_TIGHT, "pump-hose.system", Manifold.VACUUM)
                .connect(Kind.CONNECT_TIGHT, "pump-hose.cylinder", HookUp.PUMP)
                .act(Kind.OPEN, Manifold.LOW_VALVE)
                .act(Kind.OPEN, Manifold.HIGH_VALVE)
                .act(Kind.START, HookUp.PUMP)
                .act(Kind.OPEN, Manifold.VACUUM_VALVE)
                .act(Kind.CLOSE, Manifold.VACUUM_VALVE)
                .act(Kind.STOP, HookUp.PUMP)
                .act(Kind.CLOSE, Manifold.LOW_VALVE)
                .act(Kind.CLOSE, Manifold.HIGH_VALVE)
                .act(Kind.CRACK, LOW_PORT)
                .act(Kind.CRACK, LIQUID_PORT);
        assertThat(play.violations()).isEmpty();
        assertThat(play.volume("low-hose").content()).isEqualTo(VolumeContent.VAPOUR);
        assertThat(play.volume("high-hose").content()).isEqualTo(VolumeContent.LIQUID);
    }

    @Test
    void aHoseSealedAtBothEndsIsEvacuatedAtAConnectionOfItsOwn() {
        fixture.centreSystemEnd = EndFitting.SELF_SEALING;
        fixture.centreCylinderEnd = EndFitting.SELF_SEALING;
        Play play = fixture.hookedUp()
                .connect(Kind.CONNECT_TIGHT, "centre-hose.cylinder", HookUp.PUMP)
                .act(Kind.START, HookUp.PUMP)
                .act(Kind.TAKE_OFF, "centre-hose.cylinder")
                .act(Kind.STOP, HookUp.PUMP)
                .connect(Kind.CONNECT_TIGHT, "centre-hose.system", Manifold.CENTRE)
                .connect(Kind.CONNECT_TIGHT, "centre-hose.cylinder", RECOVERY_VAPOUR)
                .act(Kind.OPEN, Manifold.HIGH_VALVE)
                .act(Kind.OPEN_SHORT, RECOVERY_VAPOUR);
        assertThat(play.violations()).isEmpty();
    }

    @Test
    void aMixedHoseIsCleanedByLiquidIntoTheCylinderAndNotByDraining() {
        fixture.known.put(
                "centre-hose", fixture.hookUp().vapour("centre-hose", Pressure.ofBars(9), GasOrigin.RECOVERED));
        Play play = fixture.hookedUp();
        HookUpState joined = play.state()
                .withVolume(
                        "centre-hose", fixture.hookUp().vapour("centre-hose", Pressure.ofBars(9), GasOrigin.RECOVERED))
                .withJoint("centre-hose.system", new Joint(Manifold.CENTRE, true))
                .withJoint("centre-hose.cylinder", new Joint(RECOVERY_VAPOUR, true))
                .withValve("centre-hose.cylinder", Opening.OPEN);
        Play cleaned = new Play(play.simulator, joined)
                .act(Kind.OPEN, Manifold.HIGH_VALVE)
                .act(Kind.OPEN_SHORT, RECOVERY_VAPOUR);
        assertThat(cleaned.violations()).isEmpty();
        assertThat(cleaned.volume("centre-hose").origin()).isEqualTo(GasOrigin.SYSTEM);
        Play drained = new Play(play.simulator, joined)
                .act(Kind.OPEN, Manifold.HIGH_VALVE)
                .act(Kind.CLOSE, Manifold.HIGH_VALVE)
                .act(Kind.CRACK, Manifold.LOW_VALVE);
        assertThat(drained.broken()).contains(Invariant.FOREIGN_GAS_INTO_SYSTEM);
    }

    @Test
    void aSourceColderThanTheEvaporationTakesFromTheSystem() {
        fixture.lowBars = 14;
        fixture.known.put(
                SOURCE,
                fixture.hookUp()
                        .cylinder(
                                SOURCE,
                                Mass.ofKilograms(9),
                                Temperature.ofCelsius(10),
                                GasOrigin.SOURCE,
                                Optional.empty(),
                                false));
        Play play = fixture.readyToCharge().act(Kind.OPEN, SOURCE_VALVE).act(Kind.OPEN_SHORT, Manifold.LOW_VALVE);
        assertThat(play.moved(LOW_PORT, SOURCE)).isPositive();
        assertThat(play.broken()).contains(Invariant.FOREIGN_GAS_INTO_CYLINDER);
    }

    /** A hose from port to cylinder with nothing between, and the gas read from a saturation curve. */
    private static Play direct(SystemPort.Role role, SystemPort.Fitting fitting, boolean liquid, double bars) {
        SaturationCurve curve = SaturationCurves.of(Catalogue.standard().find("R-32"));
        HookUp hookUp = new HookUp(
                new HookUpGas(SafetyGroup.A2L, false, false, GasProperties.of(curve)),
                true,
                List.of(new SystemPort(
                        role, fitting, Pressure.ofBars(bars), Temperature.ofCelsius(liquid ? 38 : 12), liquid)),
                Optional.empty(),
                List.of(new ServiceHose(
                        "hose",
                        EndFitting.PLAIN_FLARE,
                        EndFitting.OPEN_CLOSE_VALVE,
                        Length.ofMillimetres(5),
                        Length.ofMetres(1.5))),
                List.of(new ServiceCylinder(
                        RECOVERY,
                        ServiceCylinder.Use.RECEIVER,
                        ServiceCylinder.Valves.VAPOUR_AND_LIQUID,
                        Volume.ofLitres(12))),
                false,
                false,
                Atmosphere.standard(),
                Temperature.ofCelsius(30));
        return new Play(new HookUpSimulator(hookUp), hookUp.before(Map.of()))
                .connect(Kind.CONNECT_LOOSE, "hose.cylinder", RECOVERY_VAPOUR)
                .act(Kind.OPEN, "hose.cylinder");
    }

    @Test
    void aDirectHoseAtTheVapourPortIsSweptAtTheCylinderEnd() {
        Play play = direct(SystemPort.Role.LOW_SIDE, SystemPort.Fitting.VALVE_CORE, false, 9.5)
                .connect(Kind.CONNECT_TIGHT, "hose.system", LOW_PORT)
                .act(Kind.TIGHTEN, "hose.cylinder")
                .act(Kind.OPEN_SHORT, RECOVERY_VAPOUR)
                .act(Kind.CLOSE, "hose.cylinder")
                .act(Kind.TAKE_OFF, "hose.system");
        assertThat(play.violations()).isEmpty();
        assertThat(play.volume(RECOVERY).origin()).isEqualTo(GasOrigin.SYSTEM);
        // R-32, saturated vapour at 9.5 bar: 25.98 kg/m3 from memory of tables; three hose volumes
        double vented = play.outcomes.get(2).effects().ventedVapour().kilograms();
        assertThat(vented).isCloseTo(3 * Math.PI * 0.0025 * 0.0025 * 1.5 * 26, within(0.0003));
    }

    @Test
    void aDirectHoseAtTheLiquidPortComesOffOnlyBehindACoreTool() {
        Play bare = direct(SystemPort.Role.LIQUID_LINE, SystemPort.Fitting.VALVE_CORE, true, 25);
        bare.connect(Kind.CONNECT_TIGHT, "hose.system", LIQUID_PORT);
        assertThat(bare.broken()).contains(Invariant.VENTED_ABOVE_LEAST);
        assertThat(bare.last().ventedLiquid().grams()).isGreaterThan(10);
    }

    @Test
    void whichWayItFlowsIsWhatTheFlowCheckSays() {
        for (double celsius = 0; celsius <= 60; celsius += 4) {
            fixture.recoveryCelsius = celsius;
            Play play = fixture.readyToRecover().act(Kind.OPEN, Manifold.HIGH_VALVE);
            Pressure cylinder = play.volume(RECOVERY).pressure();
            Flow flow = FlowCheck.between(
                    point(PointKind.HIGH_SIDE_LIQUID_PORT, Pressure.ofBars(fixture.liquidBars)),
                    point(PointKind.RECOVERY_CYLINDER_VAPOUR_VALVE, cylinder));
            play.act(Kind.OPEN_SHORT, RECOVERY_VAPOUR);
            boolean out = ((Flow.OneWay) flow).from().kind() == PointKind.HIGH_SIDE_LIQUID_PORT;
            assertThat(play.moved(LIQUID_PORT, RECOVERY) > 0)
                    .as("%s degC", celsius)
                    .isEqualTo(out);
            assertThat(play.moved(RECOVERY, LIQUID_PORT) > 0)
                    .as("%s degC", celsius)
                    .isEqualTo(!out);
        }
    }

    private static ConnectionPoint point(PointKind kind, Pressure pressure) {
        return ConnectionPoint.byVacuumGauge(kind, Reading.exact(pressure));
    }
}
