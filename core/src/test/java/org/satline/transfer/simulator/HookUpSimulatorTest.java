package org.satline.transfer.simulator;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.satline.transfer.simulator.HookUpFixture.LIQUID_PORT;
import static org.satline.transfer.simulator.HookUpFixture.LOW_PORT;
import static org.satline.transfer.simulator.HookUpFixture.RECOVERY;
import static org.satline.transfer.simulator.HookUpFixture.RECOVERY_VAPOUR;

import org.junit.jupiter.api.Test;
import org.satline.quantity.Mass;
import org.satline.quantity.Pressure;
import org.satline.quantity.Temperature;
import org.satline.refrigerant.SafetyGroup;
import org.satline.transfer.hookup.Act;
import org.satline.transfer.hookup.Act.Kind;
import org.satline.transfer.hookup.EndFitting;
import org.satline.transfer.hookup.GasOrigin;
import org.satline.transfer.hookup.HookUp;
import org.satline.transfer.hookup.HookUpState;
import org.satline.transfer.hookup.Joint;
import org.satline.transfer.hookup.Manifold;
import org.satline.transfer.hookup.SystemPort;
import org.satline.transfer.hookup.VolumeContent;
import org.satline.transfer.simulator.HookUpFixture.Play;

/** What parts and valves do, one behaviour at a time. Common practice of the trade, no source; masses by hand from volume times density. */
class HookUpSimulatorTest {
    /** 1.5 m of 5 mm bore, m3. */
    private static final double HOSE = Math.PI * 0.0025 * 0.0025 * 1.5;

    private static final double CHAMBER = 10e-6;

    private final HookUpFixture fixture = new HookUpFixture();

    @Test
    void firstHookUpIsSweptByLowSideVapourThroughTheLooseHighHose() {
        Play play = fixture.hookedUp();
        assertThat(play.violations()).isEmpty();
        Effects sweep = play.outcomes.get(5).effects();
        assertThat(sweep.swept()).contains("low-hose", "low-chamber", "centre-chamber", "high-chamber", "high-hose");
        // three volumes of 2 hoses and 3 chambers at 9 bar, 36 kg/m3, and what had pressed the air of low hose and
        // chamber together
        double before = (HOSE + CHAMBER) * (1 - 1.01325 / 9) * 36;
        assertThat(sweep.ventedVapour().kilograms())
                .isCloseTo(3 * (2 * HOSE + 3 * CHAMBER) * 36 + before, within(1e-8));
        assertThat(play.volume("low-hose").content()).isEqualTo(VolumeContent.VAPOUR);
        assertThat(play.volume("centre-chamber").air().kilograms()).isLessThan(1e-8);
        assertThat(play.volume("high-hose").content()).isEqualTo(VolumeContent.LIQUID);
        assertThat(play.volume("high-hose").origin()).isEqualTo(GasOrigin.SYSTEM);
        assertThat(play.volume("high-chamber").pressure().bars()).isCloseTo(27, within(1e-9));
        assertThat(play.volume("low-chamber").pressure().bars()).isCloseTo(9, within(1e-9));
    }

    @Test
    void aShortOpeningSweepsAndAJointLeftLooseAfterwardsDrawsAirAtTheSecondAct() {
        Play play = fixture.hookedUp().centreTo(RECOVERY_VAPOUR).act(Kind.OPEN_SHORT, Manifold.LOW_VALVE);
        assertThat(play.volume("centre-hose").content()).isEqualTo(VolumeContent.VAPOUR);
        Play tightened = new Play(play.simulator, play.state()).act(Kind.TIGHTEN, "centre-hose.cylinder");
        assertThat(tightened.volume("centre-hose").content()).isEqualTo(VolumeContent.VAPOUR);
        play.act(Kind.READ_SCALE, "scale");
        assertThat(play.volume("centre-hose").content()).isEqualTo(VolumeContent.AIR);
        assertThat(play.last().airEntered()).contains("centre-hose", "centre-chamber");
    }

    @Test
    void airAtADeadEndStays() {
        Play play = fixture.play()
                .connect(Kind.CONNECT_TIGHT, "low-hose.cylinder", Manifold.LOW)
                .connect(Kind.CONNECT_TIGHT, "centre-hose.system", Manifold.CENTRE)
                .connect(Kind.CONNECT_TIGHT, "low-hose.system", LOW_PORT)
                .act(Kind.CRACK, Manifold.LOW_VALVE);
        assertThat(play.volume("centre-hose").content()).isEqualTo(VolumeContent.AIR);
        assertThat(play.volume("centre-hose").pressure().bars()).isCloseTo(9, within(1e-9));
        assertThat(play.volume("low-hose").content()).isEqualTo(VolumeContent.AIR);
    }

    @Test
    void aSelfSealingEndIsNeverTheLeakOfASweep() {
        fixture.centreCylinderEnd = EndFitting.SELF_SEALING;
        Play play = fixture.hookedUp().centreTo(RECOVERY_VAPOUR).act(Kind.CRACK, Manifold.LOW_VALVE);
        assertThat(play.last().ventedVapour().kilograms()).isZero();
        assertThat(play.volume("centre-hose").content()).isEqualTo(VolumeContent.AIR);
    }

    @Test
    void turnedRoundTheSelfSealingHoseIsSwept() {
        fixture.centreCylinderEnd = EndFitting.SELF_SEALING;
        Play play = fixture.hookedUp()
                .act(Kind.TURN_ROUND, "centre-hose")
                .centreTo(RECOVERY_VAPOUR)
                .act(Kind.CRACK, Manifold.LOW_VALVE)
                .act(Kind.TIGHTEN, "centre-hose.cylinder");
        assertThat(play.violations()).isEmpty();
        assertThat(play.volume("centre-hose").content()).isEqualTo(VolumeContent.VAPOUR);
    }

    @Test
    void aSelfSealingHoseKeepsItsVapourAndSpillsACouplingOnly() {
        fixture.centreSystemEnd = EndFitting.SELF_SEALING;
        Play play = fixture.readyToRecover().act(Kind.CLOSE, "centre-hose.cylinder");
        Mass held = play.volume("centre-hose").refrigerant();
        play.act(Kind.TAKE_OFF, "centre-hose.cylinder").act(Kind.TAKE_OFF, "centre-hose.system");
        assertThat(play.volume("centre-hose").content()).isEqualTo(VolumeContent.VAPOUR);
        // two couplings of 0.5 mL at 36 kg/m3
        assertThat(held.minus(play.volume("centre-hose").refrigerant()).kilograms())
                .isCloseTo(2 * 0.5e-6 * 36, within(1e-9));
    }

    @Test
    void aPlainEndLetsGoOfTheHoseAndTakesAir() {
        Play play = fixture.hookedUp().act(Kind.TAKE_OFF, "low-hose.system");
        assertThat(play.volume("low-hose").content()).isEqualTo(VolumeContent.AIR);
        // hose and chamber at 9 bar, and 0.5 mL at the core
        assertThat(play.last().ventedVapour().kilograms()).isCloseTo((HOSE + CHAMBER + 0.5e-6) * 36, within(1e-8));
        assertThat(play.broken()).isEmpty();
    }

    @Test
    void highValveFillsTheHoseWithLiquidAndTheCylinderTakesIt() {
        Play play = fixture.readyToRecover().act(Kind.OPEN, Manifold.HIGH_VALVE);
        assertThat(play.volume("centre-hose").content()).isEqualTo(VolumeContent.LIQUID);
        // 1062 - 6.5 * 15 = 964.5 kg/m3 at 40 degC
        assertThat(play.volume("centre-hose").refrigerant().kilograms()).isCloseTo(HOSE * 964.5, within(1e-9));
        play.act(Act.of(Kind.OPEN_SHORT, RECOVERY_VAPOUR).until(Mass.ofGrams(200)));
        assertThat(play.moved(LIQUID_PORT, RECOVERY)).isCloseTo(0.2, within(1e-12));
        assertThat(play.volume("centre-hose").origin()).isEqualTo(GasOrigin.SYSTEM);
        assertThat(play.violations()).isEmpty();
        // step done: high valve open, nothing shut in, the high gauge reads the line
        assertThat(play.last().liquidShutIn()).isEmpty();
        assertThat(play.volume("high-chamber").pressure().bars()).isCloseTo(27, within(1e-9));
    }

    @Test
    void liquidMayBeShutInForTheOneActThatOpensIt() {
        Play play = fixture.readyToRecover()
                .act(Kind.OPEN, Manifold.HIGH_VALVE)
                .act(Kind.OPEN_SHORT, RECOVERY_VAPOUR)
                .act(Kind.CLOSE, Manifold.HIGH_VALVE);
        assertThat(play.last().liquidShutIn()).containsExactlyInAnyOrder("centre-chamber", "centre-hose");
        assertThat(play.broken()).isEmpty();
        play.act(Kind.CRACK, Manifold.LOW_VALVE);
        assertThat(play.violations()).isEmpty();
        assertThat(play.volume("centre-hose").content()).isEqualTo(VolumeContent.VAPOUR);
        assertThat(play.volume("centre-hose").pressure().bars()).isCloseTo(9, within(1e-9));
        assertThat(play.moved("centre-hose", LOW_PORT)).isCloseTo(HOSE * (964.5 - 36), within(1e-9));
    }

    @Test
    void liquidColderThanItsSurroundingsIsNotShutInForOneActEither() {
        fixture.ambientCelsius = 45;
        Play play = fixture.readyToRecover().act(Kind.OPEN, Manifold.HIGH_VALVE).act(Kind.CLOSE, Manifold.HIGH_VALVE);
        assertThat(play.broken()).containsExactly(Invariant.LIQUID_SHUT_IN);
    }

    @Test
    void aHoseLeftOpenToTheCylinderStaysPartlyLiquidUntilItIsWarmer() {
        Play play = fixture.readyToRecover()
                .act(Kind.OPEN, Manifold.HIGH_VALVE)
                .act(Kind.CLOSE, Manifold.HIGH_VALVE)
                .act(Kind.OPEN, RECOVERY_VAPOUR);
        double part = play.volume("centre-hose").refrigerant().kilograms() / (HOSE * 964.5);
        assertThat(part).isBetween(1.0 / 3, 0.5);
        play.act(Kind.WAIT, "hoses");
        assertThat(play.volume("centre-hose").content()).isEqualTo(VolumeContent.VAPOUR);
        assertThat(play.volume("centre-hose").origin()).isEqualTo(GasOrigin.RECOVERED);
    }

    @Test
    void aColderHoseLeftOpenToTheCylinderFills() {
        fixture.recoveryCelsius = 38;
        fixture.recoveryOrigin = GasOrigin.SYSTEM;
        Play play = fixture.readyToRecover().act(Kind.OPEN, RECOVERY_VAPOUR).act(Kind.WAIT, "hoses");
        assertThat(play.volume("centre-hose").content()).isEqualTo(VolumeContent.LIQUID);
    }

    @Test
    void coreToolAndStemShutThePortBehindATightHose() {
        fixture.lowFitting = SystemPort.Fitting.STEM;
        Play play = fixture.play()
                .connect(Kind.CONNECT_TIGHT, "low-hose.cylinder", Manifold.LOW)
                .connect(Kind.CONNECT_TIGHT, "low-hose.system", LOW_PORT);
        assertThat(play.volume("low-hose").pressure().bars()).isLessThan(1.1);
        play.act(Kind.CRACK, LOW_PORT);
        assertThat(play.volume("low-hose").pressure().bars()).isCloseTo(9, within(1e-9));
        play.act(Kind.CLOSE, LOW_PORT).act(Kind.TAKE_OFF, "low-hose.system");
        assertThat(play.violations()).isEmpty();
    }

    @Test
    void theEndOfTheJobDrawsBothHosesToSuctionBehindASelfSealingEnd() {
        fixture.highPortEnd = EndFitting.SELF_SEALING;
        HookUp hookUp = fixture.hookUp();
        Pressure suction = Pressure.ofBars(fixture.lowBars);
        Pressure line = Pressure.ofBars(fixture.liquidBars);
        Temperature warm = Temperature.ofCelsius(fixture.liquidCelsius);
        HookUpState working = fixture.start()
                .withJoint("low-hose.system", new Joint(LOW_PORT, true))
                .withJoint("low-hose.cylinder", new Joint(Manifold.LOW, true))
                .withJoint("high-hose.system", new Joint(LIQUID_PORT, true))
                .withJoint("high-hose.cylinder", new Joint(Manifold.HIGH, true))
                .withVolume("low-hose", hookUp.vapour("low-hose", suction, GasOrigin.SYSTEM))
                .withVolume("low-chamber", hookUp.vapour("low-chamber", suction, GasOrigin.SYSTEM))
                .withVolume("centre-chamber", hookUp.vapour("centre-chamber", suction, GasOrigin.SYSTEM))
                .withVolume("high-chamber", hookUp.liquid("high-chamber", line, warm, GasOrigin.SYSTEM))
                .withVolume("high-hose", hookUp.liquid("high-hose", line, warm, GasOrigin.SYSTEM));
        Play play = new Play(new HookUpSimulator(hookUp), working)
                .act(Kind.OPEN, Manifold.HIGH_VALVE)
                .act(Kind.TAKE_OFF, "high-hose.system");
        assertThat(play.last().liquidShutIn()).contains("high-hose");
        play.act(Kind.CRACK, Manifold.LOW_VALVE)
                .act(Kind.CLOSE, Manifold.HIGH_VALVE)
                .act(Kind.CLOSE, Manifold.LOW_VALVE)
                .act(Kind.TAKE_OFF, "low-hose.system");
        assertThat(play.violations()).isEmpty();
        assertThat(play.volume("high-hose").content()).isEqualTo(VolumeContent.VAPOUR);
    }

    @Test
    void carbonDioxideIsNotShutInForOneAct() {
        fixture.carbonDioxide = true;
        Play play = fixture.readyToRecover().act(Kind.OPEN, Manifold.HIGH_VALVE).act(Kind.CLOSE, Manifold.HIGH_VALVE);
        assertThat(play.broken()).containsExactly(Invariant.LIQUID_SHUT_IN);
    }

    @Test
    void atRestLiquidIsNotDrawnFromTheHose() {
        fixture.running = false;
        double rest =
                HookUpFixture.GAS.bubblePressurePa(Temperature.ofCelsius(30).kelvins());
        fixture.lowBars = rest / 1e5;
        fixture.liquidBars = rest / 1e5;
        HookUp hookUp = fixture.hookUp();
        HookUpState state = fixture.start()
                .withJoint("low-hose.system", new Joint(LOW_PORT, true))
                .withJoint("low-hose.cylinder", new Joint(Manifold.LOW, true))
                .withVolume(
                        "low-chamber",
                        hookUp.liquid("low-chamber", Pressure.ofPascals(rest), hookUp.ambient(), GasOrigin.SOURCE))
                .withVolume(
                        "low-hose",
                        hookUp.liquid("low-hose", Pressure.ofPascals(rest), hookUp.ambient(), GasOrigin.SOURCE));
        Play play = new Play(new HookUpSimulator(hookUp), state).act(Kind.READ_SCALE, "scale");
        assertThat(play.volume("low-hose").content()).isEqualTo(VolumeContent.LIQUID);
        assertThat(play.last().transfers()).isEmpty();
    }

    @Test
    void flammablesOfClassTwoLAreSweptAndClassThreeIsNot() {
        fixture.group = SafetyGroup.A2L;
        assertThat(fixture.hookedUp().violations()).isEmpty();
        fixture.group = SafetyGroup.A3;
        assertThat(fixture.hookedUp().violations()).anyMatch(v -> v.invariant() == Invariant.VENTED_FORBIDDEN_GROUP);
    }

    @Test
    void whatCannotBeDoneIsRefused() {
        Play play = fixture.play();
        assertThatThrownBy(() -> play.act(Kind.TIGHTEN, "low-hose.system"))
                .isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> play.act(Kind.INVERT, RECOVERY)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> play.act(Kind.OPEN, "low-hose.system")).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> Act.of(Kind.CONNECT_TIGHT, "low-hose.system"))
                .isInstanceOf(IllegalArgumentException.class);
    }
}
