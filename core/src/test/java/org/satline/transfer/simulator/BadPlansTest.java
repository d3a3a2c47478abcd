package org.satline.transfer.simulator;

import static org.assertj.core.api.Assertions.assertThat;
import static org.satline.transfer.simulator.HookUpFixture.LIQUID_PORT;
import static org.satline.transfer.simulator.HookUpFixture.LOW_PORT;
import static org.satline.transfer.simulator.HookUpFixture.RECOVERY;
import static org.satline.transfer.simulator.HookUpFixture.RECOVERY_VAPOUR;
import static org.satline.transfer.simulator.HookUpFixture.SOURCE;
import static org.satline.transfer.simulator.HookUpFixture.SOURCE_VALVE;

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
import org.satline.transfer.hookup.Opening;
import org.satline.transfer.hookup.SystemPort;
import org.satline.transfer.simulator.HookUpFixture.Play;

/** Mistakes of the trade, each caught with its invariant at the act that makes it and at none before. Common practice, no source. */
class BadPlansTest {
    private final HookUpFixture fixture = new HookUpFixture();

    private static void caughtAtTheEnd(Play play, Invariant... invariants) {
        assertThat(play.outcomes.subList(0, play.outcomes.size() - 1))
                .allSatisfy(
                        outcome -> assertThat(outcome.effects().violations()).isEmpty());
        assertThat(play.broken()).containsExactlyInAnyOrder(invariants);
    }

    @Test
    void cylinderOpenedOnAHoseFullOfAir() {
        caughtAtTheEnd(
                fixture.hookedUp()
                        .connect(Kind.CONNECT_TIGHT, "centre-hose.system", Manifold.CENTRE)
                        .connect(Kind.CONNECT_TIGHT, "centre-hose.cylinder", RECOVERY_VAPOUR)
                        .act(Kind.OPEN, "centre-hose.cylinder")
                        .act(Kind.OPEN, Manifold.HIGH_VALVE)
                        .act(Kind.OPEN_SHORT, RECOVERY_VAPOUR),
                Invariant.AIR_INTO_CYLINDER);
    }

    @Test
    void evacuatedCylinderOpenedBehindALooseJoint() {
        fixture.recoveryKilograms = 0;
        caughtAtTheEnd(
                fixture.hookedUp().centreTo(RECOVERY_VAPOUR).act(Kind.CRACK, RECOVERY_VAPOUR),
                Invariant.AIR_INTO_CYLINDER);
    }

    @Test
    void hoseFullOfAirOnALowSideBelowTheAtmosphere() {
        fixture.lowBars = 0.7;
        fixture.lowFitting = SystemPort.Fitting.STEM;
        caughtAtTheEnd(
                fixture.play()
                        .connect(Kind.CONNECT_TIGHT, "low-hose.cylinder", Manifold.LOW)
                        .connect(Kind.CONNECT_TIGHT, "low-hose.system", LOW_PORT)
                        .act(Kind.CRACK, LOW_PORT),
                Invariant.AIR_INTO_SYSTEM);
    }

    @Test
    void airChargedWithTheSource() {
        caughtAtTheEnd(
                fixture.hookedUp()
                        .connect(Kind.CONNECT_TIGHT, "centre-hose.system", Manifold.CENTRE)
                        .connect(Kind.CONNECT_TIGHT, "centre-hose.cylinder", SOURCE_VALVE)
                        .act(Kind.OPEN, "centre-hose.cylinder")
                        .act(Kind.OPEN, SOURCE_VALVE)
                        .act(Kind.OPEN_SHORT, Manifold.LOW_VALVE),
                Invariant.AIR_INTO_SYSTEM);
    }

    @Test
    void recoveryCylinderOpenedToTheSuction() {
        // the hose stood at suction below the cylinder: opened, it is mixed; the low valve then lets it into the system
        Play play = fixture.readyToRecover().act(Kind.OPEN, RECOVERY_VAPOUR);
        assertThat(play.broken()).containsExactly(Invariant.FOREIGN_GAS_INTO_HOSE);
        play.act(Kind.OPEN_SHORT, Manifold.LOW_VALVE);
        // the low hose, clean until then, is on the way
        assertThat(play.broken())
                .containsExactlyInAnyOrder(Invariant.FOREIGN_GAS_INTO_HOSE, Invariant.FOREIGN_GAS_INTO_SYSTEM);
        assertThat(play.moved(RECOVERY, LOW_PORT)).isPositive();
    }

    @Test
    void systemLetIntoTheSource() {
        fixture.liquidBars = 27;
        caughtAtTheEnd(
                fixture.readyToCharge()
                        .act(Kind.SET_UPRIGHT, SOURCE)
                        .act(Kind.OPEN, Manifold.HIGH_VALVE)
                        .act(Kind.OPEN, SOURCE_VALVE),
                Invariant.FOREIGN_GAS_INTO_CYLINDER);
    }

    @Test
    void liquidShutInAcrossAWait() {
        caughtAtTheEnd(
                fixture.readyToRecover()
                        .act(Kind.OPEN, Manifold.HIGH_VALVE)
                        .act(Kind.OPEN_SHORT, RECOVERY_VAPOUR)
                        .act(Kind.CLOSE, Manifold.HIGH_VALVE)
                        .act(Kind.WAIT, "system"),
                Invariant.LIQUID_SHUT_IN);
    }

    @Test
    void liquidShutInAtTheEndOfThePlan() {
        Play play = fixture.readyToRecover().act(Kind.OPEN, Manifold.HIGH_VALVE).act(Kind.CLOSE, Manifold.HIGH_VALVE);
        assertThat(play.broken()).isEmpty();
        assertThat(play.violations()).extracting(Violation::invariant).containsOnly(Invariant.LIQUID_SHUT_IN);
    }

    @Test
    void lowValveOpenedWideOnAnInvertedSource() {
        caughtAtTheEnd(
                fixture.readyToCharge().act(Kind.OPEN, SOURCE_VALVE).act(Kind.OPEN, Manifold.LOW_VALVE),
                Invariant.UNMETERED_LIQUID_INTO_SUCTION);
    }

    @Test
    void crackedLowValveLeftOpenOnAnInvertedSource() {
        caughtAtTheEnd(
                fixture.readyToCharge()
                        .act(Kind.OPEN, SOURCE_VALVE)
                        .act(Kind.CRACK, Manifold.LOW_VALVE)
                        .act(Kind.READ_SCALE, "scale"),
                Invariant.UNMETERED_LIQUID_INTO_SUCTION);
    }

    @Test
    void liquidIntoTheSuctionAtRest() {
        fixture.running = false;
        fixture.lowBars = 3;
        fixture.liquidBars = 3;
        HookUp hookUp = fixture.hookUp();
        Temperature warm = Temperature.ofCelsius(28);
        Pressure own = Pressure.ofPascals(HookUpFixture.GAS.bubblePressurePa(warm.kelvins()));
        HookUpState joined = fixture.start()
                .withJoint("low-hose.system", new Joint(LOW_PORT, true))
                .withJoint("low-hose.cylinder", new Joint(Manifold.LOW, true))
                .withVolume("low-hose", hookUp.vapour("low-hose", Pressure.ofBars(3), GasOrigin.SYSTEM))
                .withVolume("low-chamber", hookUp.vapour("low-chamber", Pressure.ofBars(3), GasOrigin.SYSTEM))
                .withJoint("centre-hose.system", new Joint(Manifold.CENTRE, true))
                .withJoint("centre-hose.cylinder", new Joint(SOURCE_VALVE, true))
                .withValve("centre-hose.cylinder", Opening.OPEN)
                .withValve(SOURCE_VALVE, Opening.OPEN)
                .withVolume("centre-hose", hookUp.liquid("centre-hose", own, warm, GasOrigin.SOURCE))
                .withVolume("centre-chamber", hookUp.liquid("centre-chamber", own, warm, GasOrigin.SOURCE));
        caughtAtTheEnd(
                new Play(new HookUpSimulator(hookUp), joined)
                        .act(Kind.INVERT, SOURCE)
                        .act(Kind.OPEN_SHORT, Manifold.LOW_VALVE),
                Invariant.UNMETERED_LIQUID_INTO_SUCTION);
    }

    @Test
    void hoseTakenOffFullOfLiquid() {
        caughtAtTheEnd(
                fixture.hookedUp().act(Kind.LOOSEN, "high-hose.system"),
                Invariant.JOINT_LOOSENED_ON_LIQUID,
                Invariant.VENTED_ABOVE_LEAST);
    }

    @Test
    void bothManifoldValvesOpen() {
        Play play = fixture.hookedUp().act(Kind.CRACK, Manifold.LOW_VALVE).act(Kind.CRACK, Manifold.HIGH_VALVE);
        assertThat(play.broken()).contains(Invariant.HIGH_AND_LOW_JOINED);
    }

    @Test
    void sweepGoesOnAfterTheHoseIsClean() {
        caughtAtTheEnd(
                fixture.hookedUp()
                        .centreTo(RECOVERY_VAPOUR)
                        .act(Kind.CRACK, Manifold.LOW_VALVE)
                        .act(Kind.READ_SCALE, "scale"),
                Invariant.VENTED_ABOVE_LEAST);
    }

    @Test
    void sweptWithLiquid() {
        Play play = fixture.hookedUp().centreTo(RECOVERY_VAPOUR).act(Kind.CRACK, Manifold.HIGH_VALVE);
        assertThat(play.broken()).containsExactly(Invariant.VENTED_ABOVE_LEAST);
        assertThat(play.last().ventedLiquid().grams()).isGreaterThan(20);
    }

    @Test
    void liquidInTheHoseSweptOutByVapour() {
        Play play = fixture.readyToRecover();
        HookUpState filled = play.state()
                .withVolume(
                        "centre-hose",
                        fixture.hookUp()
                                .liquid(
                                        "centre-hose",
                                        Pressure.ofBars(27),
                                        Temperature.ofCelsius(40),
                                        GasOrigin.SYSTEM))
                .withJoint("centre-hose.cylinder", new Joint(RECOVERY_VAPOUR, false))
                .withValve("centre-hose.cylinder", Opening.OPEN);
        Play swept = new Play(play.simulator, filled).act(Kind.CRACK, Manifold.LOW_VALVE);
        assertThat(swept.broken()).containsExactly(Invariant.VENTED_ABOVE_LEAST);
        assertThat(swept.last().ventedLiquid().grams()).isGreaterThan(20);
    }

    @Test
    void hoseLiquidDrainedThroughAWideOpenLowValve() {
        caughtAtTheEnd(
                fixture.readyToRecover()
                        .act(Kind.OPEN, Manifold.HIGH_VALVE)
                        .act(Kind.CLOSE, Manifold.HIGH_VALVE)
                        .act(Kind.OPEN, Manifold.LOW_VALVE),
                Invariant.UNMETERED_LIQUID_INTO_SUCTION);
    }

    @Test
    void toxicGasSwept() {
        fixture.group = SafetyGroup.B2L;
        fixture.lowFitting = SystemPort.Fitting.STEM;
        fixture.liquidFitting = SystemPort.Fitting.STEM;
        Play play = fixture.play()
                .connect(Kind.CONNECT_TIGHT, "low-hose.cylinder", Manifold.LOW)
                .connect(Kind.CONNECT_TIGHT, "low-hose.system", LOW_PORT)
                .connect(Kind.CONNECT_TIGHT, "high-hose.cylinder", Manifold.HIGH)
                .connect(Kind.CONNECT_LOOSE, "high-hose.system", LIQUID_PORT)
                .act(Kind.OPEN, Manifold.LOW_VALVE)
                .act(Kind.OPEN, Manifold.HIGH_VALVE)
                .act(Kind.CRACK, LOW_PORT);
        caughtAtTheEnd(play, Invariant.VENTED_FORBIDDEN_GROUP);
    }

    @Test
    void classThreeCoreOpenedByAHoseEnd() {
        fixture.group = SafetyGroup.A3;
        caughtAtTheEnd(
                fixture.play()
                        .connect(Kind.CONNECT_TIGHT, "low-hose.cylinder", Manifold.LOW)
                        .connect(Kind.CONNECT_TIGHT, "low-hose.system", LOW_PORT),
                Invariant.VENTED_FORBIDDEN_GROUP);
    }

    @Test
    void unknownGasBlownOut() {
        fixture.known.put("low-hose", fixture.hookUp().vapour("low-hose", Pressure.ofBars(4), GasOrigin.UNKNOWN));
        caughtAtTheEnd(fixture.play().act(Kind.CAP, LOW_PORT), Invariant.VENTED_ABOVE_LEAST);
    }

    @Test
    void machineStartedAgainstAShutCylinder() {
        caughtAtTheEnd(
                fixture.play()
                        .connect(Kind.CONNECT_TIGHT, "pump-hose.cylinder", HookUp.MACHINE_INLET)
                        .act(Kind.START, HookUp.MACHINE),
                Invariant.MACHINE_MISUSED);
    }

    @Test
    void pumpOpenedToTheSystem() {
        Play play = fixture.hookedUp()
                .connect(Kind.CONNECT_TIGHT, "centre-hose.system", Manifold.CENTRE)
                .connect(Kind.CONNECT_TIGHT, "centre-hose.cylinder", HookUp.PUMP)
                .act(Kind.START, HookUp.PUMP)
                .act(Kind.OPEN, "centre-hose.cylinder")
                .act(Act.of(Kind.CRACK, Manifold.LOW_VALVE).until(Mass.ofGrams(10)));
        caughtAtTheEnd(play, Invariant.MACHINE_MISUSED);
    }

    @Test
    void hoseBlownThroughAPumpThatStandsStill() {
        Play play = fixture.play()
                .connect(Kind.CONNECT_TIGHT, "centre-hose.system", SOURCE_VALVE)
                .connect(Kind.CONNECT_TIGHT, "centre-hose.cylinder", HookUp.PUMP)
                .act(Kind.OPEN, "centre-hose.cylinder")
                .act(Kind.OPEN_SHORT, SOURCE_VALVE);
        caughtAtTheEnd(play, Invariant.MACHINE_MISUSED);
    }

    @Test
    void hoseSweptOutOfAnEndThatHangsFree() {
        fixture.centreCylinderEnd = EndFitting.PLAIN_FLARE;
        Play play = fixture.hookedUp()
                .connect(Kind.CONNECT_TIGHT, "centre-hose.system", Manifold.CENTRE)
                .act(Kind.CRACK, Manifold.LOW_VALVE);
        caughtAtTheEnd(play, Invariant.VENTED_ABOVE_LEAST);
    }

    @Test
    void carbonDioxideFromASourceWithoutARegulator() {
        fixture.carbonDioxide = true;
        Play play = fixture.play()
                .connect(Kind.CONNECT_TIGHT, "centre-hose.system", SOURCE_VALVE)
                .connect(Kind.CONNECT_LOOSE, "centre-hose.cylinder", Manifold.CENTRE)
                .act(Kind.OPEN, "centre-hose.cylinder")
                .act(Kind.CRACK, SOURCE_VALVE);
        caughtAtTheEnd(play, Invariant.UNREGULATED_CARBON_DIOXIDE);
    }

    @Test
    void machinePurgedWithItsInletOpen() {
        fixture.outletHose = true;
        fixture.known.put(HookUp.MACHINE_INLET, fixture.hookUp().evacuated());
        fixture.known.put(HookUp.MACHINE_OUTLET, fixture.hookUp().evacuated());
        fixture.known.put(HookUp.OUTLET_HOSE, fixture.hookUp().evacuated());
        Play play = fixture.hookedUp()
                .connect(Kind.CONNECT_TIGHT, HookUp.OUTLET_HOSE + ".system", HookUp.MACHINE_OUTLET)
                .connect(Kind.CONNECT_TIGHT, HookUp.OUTLET_HOSE + ".cylinder", RECOVERY_VAPOUR)
                .act(Kind.OPEN, HookUp.OUTLET_HOSE + ".cylinder")
                .centreTo(HookUp.MACHINE_INLET)
                .act(Kind.CRACK, Manifold.LOW_VALVE)
                .act(Kind.TIGHTEN, "centre-hose.cylinder")
                .act(Kind.CLOSE, Manifold.LOW_VALVE)
                .act(Kind.OPEN, RECOVERY_VAPOUR)
                .act(Kind.OPEN, HookUp.MACHINE_OUTLET)
                .act(Kind.START, HookUp.MACHINE)
                .act(Kind.OPEN, HookUp.MACHINE_INLET)
                .act(Kind.SELF_PURGE, HookUp.MACHINE);
        caughtAtTheEnd(play, Invariant.MACHINE_MISUSED);
    }
}
