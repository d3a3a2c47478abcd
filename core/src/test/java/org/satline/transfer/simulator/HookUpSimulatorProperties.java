package org.satline.transfer.simulator;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.satline.refrigerant.SafetyGroup;
import org.satline.transfer.hookup.Act;
import org.satline.transfer.hookup.EndFitting;
import org.satline.transfer.hookup.GasLaw;
import org.satline.transfer.hookup.GasOrigin;
import org.satline.transfer.hookup.HookUp;
import org.satline.transfer.hookup.HookUpState;
import org.satline.transfer.hookup.SystemPort;
import org.satline.transfer.hookup.VolumeContent;
import org.satline.transfer.hookup.VolumeState;

/** What holds whatever a hand does: nothing appears or vanishes, and no pressure leaves what feeds it. */
class HookUpSimulatorProperties {
    private static final Set<Act.Kind> OPENS = EnumSet.of(Act.Kind.OPEN, Act.Kind.CRACK, Act.Kind.OPEN_SHORT);
    private static final int ACTS = 40;

    private static final double MADE_UP_GAS_AT_65_DEGC_PA = 45e5;

    @Property(tries = 60)
    void everyGramIsBooked(
            @ForAll long seed,
            @ForAll EndFitting systemEnd,
            @ForAll EndFitting cylinderEnd,
            @ForAll SystemPort.Fitting fitting,
            @ForAll SafetyGroup group,
            @ForAll boolean running,
            @ForAll @DoubleRange(min = 0.3, max = 12) double lowBars) {
        HookUpFixture fixture = new HookUpFixture();
        fixture.centreSystemEnd = systemEnd;
        fixture.centreCylinderEnd = cylinderEnd;
        fixture.lowFitting = fitting;
        fixture.liquidFitting = fitting;
        fixture.group = group;
        fixture.running = running;
        fixture.lowBars = lowBars;
        fixture.liquidBars = running ? 27 : lowBars;
        Random random = new Random(seed);
        fixture.manifoldValves = random.nextBoolean() ? 2 : 4;
        fixture.recoveryKilograms = random.nextInt(3) * 4;
        fixture.recoveryMayHoldAir = random.nextBoolean();
        HookUp hookUp = fixture.hookUp();
        HookUpSimulator simulator = new HookUpSimulator(hookUp);
        HookUpState state = fixture.start();
        double pushed = MADE_UP_GAS_AT_65_DEGC_PA;
        for (int i = 0; i < ACTS; i++) {
            List<Act> acts = HookUpActs.possible(simulator, hookUp, state);
            // as often a valve as a hose, or a random hand never gets anything to flow
            List<Act> chosen = new ArrayList<>(acts);
            boolean valve = random.nextInt(3) > 0;
            chosen.removeIf(act -> OPENS.contains(act.kind()) != valve);
            Act act = chosen.get(random.nextInt(chosen.size()));
            HookUpSimulator.Outcome outcome = simulator.apply(state, act);
            booked(state, outcome);
            pushed = Math.max(pushed, highestWithin(hookUp, state, outcome));
            bounded(hookUp, outcome.state(), pushed);
            state = outcome.state();
        }
    }

    private static void booked(HookUpState before, HookUpSimulator.Outcome outcome) {
        Map<String, Double> refrigerant = new HashMap<>();
        Map<String, Double> air = new HashMap<>();
        double vented = 0;
        for (Transfer transfer : outcome.effects().transfers()) {
            refrigerant.merge(transfer.from(), -transfer.refrigerant().kilograms(), Double::sum);
            refrigerant.merge(transfer.to(), transfer.refrigerant().kilograms(), Double::sum);
            air.merge(transfer.from(), -transfer.air().kilograms(), Double::sum);
            air.merge(transfer.to(), transfer.air().kilograms(), Double::sum);
            if (transfer.to().equals(HookUp.AIR) || transfer.to().equals(HookUp.PUMP)) {
                vented += transfer.refrigerant().kilograms();
            }
        }
        // rounding of sums of some kilograms
        outcome.state().volumes().forEach((name, after) -> {
            VolumeState was = before.volume(name);
            assertThat(after.refrigerant().kilograms() - was.refrigerant().kilograms())
                    .as("%s after %s", name, outcome.act())
                    .isCloseTo(refrigerant.getOrDefault(name, 0.0), within(1e-9));
            assertThat(after.air().kilograms() - was.air().kilograms())
                    .as("air in %s after %s", name, outcome.act())
                    .isCloseTo(air.getOrDefault(name, 0.0), within(1e-9));
        });
        double said = outcome.effects().ventedVapour().kilograms()
                + outcome.effects().ventedLiquid().kilograms();
        // what is below the negligible is not counted as vented
        assertThat(said).isCloseTo(vented, within(1e-7));
    }

    /**
     * Air packed into a cylinder by a machine, or shut in over warming liquid, pushes on each hose that is open to it, at any moment of an
     * act: a short opening lets things flow twice. No volume ever stands above the pressure that all it held before and all that came in
     * would have in it at the warmest it was: pressure rises with each of the three.
     */
    private static double highestWithin(HookUp hookUp, HookUpState before, HookUpSimulator.Outcome outcome) {
        Map<String, Double> refrigerant = new HashMap<>();
        Map<String, Double> air = new HashMap<>();
        for (Transfer transfer : outcome.effects().transfers()) {
            refrigerant.merge(transfer.to(), transfer.refrigerant().kilograms(), Double::sum);
            air.merge(transfer.to(), transfer.air().kilograms(), Double::sum);
        }
        GasLaw law = hookUp.law();
        double highest = 0;
        for (Map.Entry<String, VolumeState> volume : before.volumes().entrySet()) {
            String name = volume.getKey();
            VolumeState was = volume.getValue();
            double kelvins = Math.max(
                    law.ambientK(),
                    Math.max(
                            was.temperature().kelvins(),
                            outcome.state().volume(name).temperature().kelvins()));
            double all = was.air().kilograms() + air.getOrDefault(name, 0.0);
            double held = was.refrigerant().kilograms() + refrigerant.getOrDefault(name, 0.0);
            highest = all > 0 ? Math.max(highest, law.pressure(held, all, hookUp.size(name), kelvins)) : highest;
        }
        // rounding of the sums
        return highest * (1 + 1e-9);
    }

    private static void bounded(HookUp hookUp, HookUpState state, double pushed) {
        state.volumes().forEach((name, volume) -> {
            assertThat(volume.pressure().pascals()).as(name).isBetween(0.0, pushed);
            assertThat(volume.content() == VolumeContent.NOTHING)
                    .isEqualTo(volume.origin() == GasOrigin.NONE && volume.air().kilograms() <= 1e-8);
            double held = volume.refrigerant().kilograms();
            assertThat(held).as(name).isLessThanOrEqualTo(hookUp.size(name) * 1300);
        });
    }

    @Property(tries = 10)
    void anActThatTouchesNothingOpenMovesNothing(@ForAll long seed) {
        HookUpFixture fixture = new HookUpFixture();
        HookUpFixture.Play play = fixture.hookedUp();
        HookUpState before = play.state();
        Random random = new Random(seed);
        String valve = random.nextBoolean() ? HookUpFixture.RECOVERY_VAPOUR : HookUpFixture.SOURCE_VALVE;
        play.act(Act.Kind.CLOSE, valve);
        assertThat(play.state()).isEqualTo(before);
        assertThat(play.last().transfers()).isEmpty();
    }
}
