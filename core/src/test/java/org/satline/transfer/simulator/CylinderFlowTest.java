package org.satline.transfer.simulator;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.satline.transfer.simulator.HookUpFixture.LIQUID_PORT;
import static org.satline.transfer.simulator.HookUpFixture.LOW_PORT;
import static org.satline.transfer.simulator.HookUpFixture.RECOVERY;
import static org.satline.transfer.simulator.HookUpFixture.RECOVERY_VAPOUR;
import static org.satline.transfer.simulator.HookUpFixture.SOURCE;
import static org.satline.transfer.simulator.HookUpFixture.SOURCE_VALVE;

import org.junit.jupiter.api.Test;
import org.satline.quantity.Mass;
import org.satline.transfer.hookup.Act;
import org.satline.transfer.hookup.Act.Kind;
import org.satline.transfer.hookup.EndFitting;
import org.satline.transfer.hookup.GasOrigin;
import org.satline.transfer.hookup.HookUp;
import org.satline.transfer.hookup.HookUpState;
import org.satline.transfer.hookup.Joint;
import org.satline.transfer.hookup.Manifold;
import org.satline.transfer.hookup.Medium;
import org.satline.transfer.hookup.Opening;
import org.satline.transfer.hookup.SystemPort;
import org.satline.transfer.hookup.VolumeContent;
import org.satline.transfer.simulator.HookUpFixture.Play;

/** Cylinders, a pump and a recovery machine at the end of the hose: which way it flows; by hand from the pressures. */
class CylinderFlowTest {
    private final HookUpFixture fixture = new HookUpFixture();

    @Test
    void aCylinderAboveSuctionEmptiesIntoTheSystemThroughTheLowValve() {
        Play play = fixture.readyToCharge().act(Kind.OPEN, SOURCE_VALVE).act(Kind.OPEN_SHORT, Manifold.LOW_VALVE);
        assertThat(play.violations()).isEmpty();
        assertThat(play.moved(SOURCE, LOW_PORT)).isGreaterThan(0.04);
        assertThat(play.last().transfers())
                .anySatisfy(transfer -> assertThat(transfer.medium()).isEqualTo(Medium.LIQUID));
        // the source shut while the low valve is cracked, the running system draws the hose to suction
        play.act(Kind.CRACK, Manifold.LOW_VALVE).act(Kind.CLOSE, SOURCE_VALVE).act(Kind.CLOSE, Manifold.LOW_VALVE);
        assertThat(play.violations()).isEmpty();
        assertThat(play.volume("centre-hose").content()).isEqualTo(VolumeContent.VAPOUR);
        assertThat(play.volume("centre-hose").pressure().bars()).isCloseTo(9, within(1e-9));
    }

    @Test
    void liquidFromASourceAsWarmAsTheAirMayBeShutInForOneAct() {
        fixture.ambientCelsius = 28;
        Play play = fixture.readyToCharge()
                .act(Kind.OPEN, SOURCE_VALVE)
                .act(Kind.OPEN_SHORT, Manifold.LOW_VALVE)
                .act(Kind.CLOSE, SOURCE_VALVE)
                .act(Kind.OPEN_SHORT, Manifold.LOW_VALVE);
        assertThat(play.violations()).isEmpty();
        assertThat(play.volume("centre-hose").content()).isEqualTo(VolumeContent.VAPOUR);
    }

    @Test
    void uprightTheSourceGivesVapour() {
        Play play = fixture.readyToCharge().act(Kind.SET_UPRIGHT, SOURCE).act(Kind.OPEN, SOURCE_VALVE);
        assertThat(play.volume("centre-hose").content()).isEqualTo(VolumeContent.VAPOUR);
        play.act(Kind.OPEN_SHORT, Manifold.LOW_VALVE);
        assertThat(play.violations()).isEmpty();
        assertThat(play.moved(SOURCE, LOW_PORT)).isLessThan(0.01);
    }

    @Test
    void anEvacuatedCylinderDrawsWhateverIsAtItsValve() {
        fixture.recoveryKilograms = 0;
        Play play = fixture.readyToRecover();
        assertThat(play.volume(RECOVERY).content()).isEqualTo(VolumeContent.NOTHING);
        play.act(Kind.OPEN, Manifold.HIGH_VALVE).act(Kind.OPEN_SHORT, RECOVERY_VAPOUR);
        assertThat(play.violations()).isEmpty();
        assertThat(play.volume(RECOVERY).origin()).isEqualTo(GasOrigin.SYSTEM);
    }

    @Test
    void aCylinderAtOrAboveTheLiquidLineGivesInsteadOfTaking() {
        fixture.recoveryCelsius = 50;
        Play play = fixture.readyToRecover().act(Kind.OPEN, Manifold.HIGH_VALVE).act(Kind.OPEN_SHORT, RECOVERY_VAPOUR);
        assertThat(play.moved(RECOVERY, LIQUID_PORT)).isPositive();
        assertThat(play.broken()).contains(Invariant.FOREIGN_GAS_INTO_SYSTEM);
    }

    @Test
    void withoutCertainFlowTowardsTheCylinderTheHoseIsMixed() {
        // 0.3 bar above the cylinder: less than both readings' errors
        fixture.liquidBars = fixture.start().volume(RECOVERY).pressure().bars() + 0.3;
        Play play = fixture.readyToRecover().act(Kind.OPEN, Manifold.HIGH_VALVE).act(Kind.OPEN_SHORT, RECOVERY_VAPOUR);
        assertThat(play.volume("centre-hose").origin()).isEqualTo(GasOrigin.RECOVERED);
        assertThat(play.broken()).contains(Invariant.FOREIGN_GAS_INTO_HOSE);
    }

    @Test
    void aCylinderSweepsTowardsTheManifoldAndMarksTheHose() {
        fixture.centreCylinderEnd = EndFitting.SELF_SEALING;
        Play play = fixture.hookedUp()
                .connect(Kind.CONNECT_TIGHT, "centre-hose.cylinder", RECOVERY_VAPOUR)
                .connect(Kind.CONNECT_LOOSE, "centre-hose.system", Manifold.CENTRE)
                .act(Kind.CRACK, RECOVERY_VAPOUR)
                .act(Kind.TIGHTEN, "centre-hose.system")
                .act(Kind.CLOSE, RECOVERY_VAPOUR);
        assertThat(play.volume("centre-hose").content()).isEqualTo(VolumeContent.VAPOUR);
        assertThat(play.volume("centre-hose").origin()).isEqualTo(GasOrigin.RECOVERED);
        assertThat(play.volume("centre-chamber").origin()).isEqualTo(GasOrigin.RECOVERED);
    }

    @Test
    void aCylinderThatMayHoldAirLeavesAirInTheHose() {
        fixture.recoveryMayHoldAir = true;
        Play play = fixture.hookedUp()
                .connect(Kind.CONNECT_TIGHT, "centre-hose.cylinder", RECOVERY_VAPOUR)
                .connect(Kind.CONNECT_LOOSE, "centre-hose.system", Manifold.CENTRE)
                .act(Kind.OPEN, "centre-hose.cylinder")
                .act(Kind.CRACK, RECOVERY_VAPOUR);
        assertThat(play.volume("centre-hose").content()).isEqualTo(VolumeContent.AIR);
    }

    @Test
    void aSweepNeedsMoreThanALittleAboveTheAtmosphere() {
        fixture.lowBars = 1.2;
        Play play = fixture.hookedUp();
        assertThat(play.volume("low-hose").content()).isEqualTo(VolumeContent.AIR);
    }

    @Test
    void aPumpEvacuatesAndAStandingPumpLetsAirBack() {
        fixture.manifoldValves = 4;
        Play play = fixture.play()
                .connect(Kind.CONNECT_TIGHT, "low-hose.cylinder", Manifold.LOW)
                .connect(Kind.CONNECT_LOOSE, "pump-hose.system", Manifold.VACUUM)
                .act(Kind.TIGHTEN, "pump-hose.system")
                .connect(Kind.CONNECT_TIGHT, "pump-hose.cylinder", HookUp.PUMP)
                .act(Kind.START, HookUp.PUMP)
                .act(Kind.OPEN, Manifold.VACUUM_VALVE);
        assertThat(play.volume("pump-hose").content()).isEqualTo(VolumeContent.NOTHING);
        assertThat(play.volume("centre-chamber").content()).isEqualTo(VolumeContent.NOTHING);
        assertThat(play.volume("low-chamber").content()).isEqualTo(VolumeContent.AIR);
        play.act(Kind.CLOSE, Manifold.VACUUM_VALVE).act(Kind.STOP, HookUp.PUMP);
        assertThat(play.volume("pump-hose").content()).isEqualTo(VolumeContent.AIR);
        assertThat(play.volume("centre-chamber").content()).isEqualTo(VolumeContent.NOTHING);
    }

    @Test
    void aRecoveryMachineMovesAgainstThePressureDifference() {
        fixture.known.put(HookUp.MACHINE_INLET, fixture.hookUp().evacuated());
        fixture.known.put(HookUp.MACHINE_OUTLET, fixture.hookUp().evacuated());
        fixture.known.put("pump-hose", fixture.hookUp().evacuated());
        fixture.known.put("centre-hose", fixture.hookUp().evacuated());
        fixture.lowFitting = SystemPort.Fitting.CORE_TOOL;
        HookUpState joined = fixture.start()
                .withJoint("pump-hose.system", new Joint(LOW_PORT, true))
                .withJoint("pump-hose.cylinder", new Joint(HookUp.MACHINE_INLET, true))
                .withJoint("centre-hose.system", new Joint(HookUp.MACHINE_OUTLET, true))
                .withJoint("centre-hose.cylinder", new Joint(RECOVERY_VAPOUR, true))
                .withValve("centre-hose.cylinder", Opening.OPEN);
        Play play = new Play(new HookUpSimulator(fixture.hookUp()), joined)
                .act(Kind.OPEN, HookUp.MACHINE_OUTLET)
                .act(Kind.OPEN, HookUp.MACHINE_INLET)
                .act(Kind.OPEN, RECOVERY_VAPOUR)
                .act(Kind.OPEN, LOW_PORT);
        double before = play.volume(RECOVERY).refrigerant().kilograms();
        play.act(Act.of(Kind.START, HookUp.MACHINE).until(Mass.ofGrams(300)));
        assertThat(play.violations()).isEmpty();
        // the scale shows what stood in the hoses alike
        assertThat(play.volume(RECOVERY).refrigerant().kilograms() - before).isCloseTo(0.3, within(1e-9));
        assertThat(play.moved(LOW_PORT, RECOVERY)).isBetween(0.29, 0.3);
        play.act(Kind.CLOSE, LOW_PORT).act(Kind.SELF_PURGE, HookUp.MACHINE).act(Kind.CLOSE, RECOVERY_VAPOUR);
        assertThat(play.volume("pump-hose").content()).isEqualTo(VolumeContent.NOTHING);
        assertThat(play.volume("centre-hose").origin()).isEqualTo(GasOrigin.RECOVERED);
    }

    @Test
    void aMachineOfUnknownContentSpoilsTheCylinder() {
        HookUpState joined = fixture.start()
                .withJoint("centre-hose.system", new Joint(HookUp.MACHINE_OUTLET, true))
                .withJoint("centre-hose.cylinder", new Joint(RECOVERY_VAPOUR, true))
                .withValve("centre-hose.cylinder", Opening.OPEN)
                .withVolume("centre-hose", fixture.hookUp().evacuated())
                .withValve(RECOVERY_VAPOUR, Opening.OPEN)
                .withValve(HookUp.MACHINE_OUTLET, Opening.OPEN);
        Play play = new Play(new HookUpSimulator(fixture.hookUp()), joined).act(Kind.START, HookUp.MACHINE);
        assertThat(play.broken()).contains(Invariant.FOREIGN_GAS_INTO_CYLINDER);
    }
}
