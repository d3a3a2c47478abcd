package org.satline.transfer;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.satline.quantity.Density;
import org.satline.quantity.Length;
import org.satline.refrigerant.SafetyGroup;
import org.satline.transfer.PurgePlanner.Purpose;

class PurgePlannerTest {
    private static final Density VAPOUR = Density.ofKilogramsPerCubicMetre(40);

    private static Hose hose(EndFitting system, EndFitting cylinder) {
        return new Hose(system, cylinder, Length.ofMillimetres(4.8), Length.ofMetres(1.5));
    }

    private static PurgePlan plan(Hose hose, Purpose purpose, VesselState system, VesselState cylinder) {
        return PurgePlanner.plan(hose, purpose, system, cylinder, SafetyGroup.A1, VAPOUR);
    }

    private record Setting(Hose hose, Purpose purpose, VesselState system, VesselState cylinder) {}

    /** All 3 x 3 fittings, 3 x 3 pressures and both purposes. */
    private static List<Setting> all() {
        List<Setting> settings = new ArrayList<>();
        for (EndFitting a : EndFitting.values()) {
            for (EndFitting b : EndFitting.values()) {
                for (VesselState system : VesselState.values()) {
                    for (VesselState cylinder : VesselState.values()) {
                        for (Purpose purpose : Purpose.values()) {
                            settings.add(new Setting(hose(a, b), purpose, system, cylinder));
                        }
                    }
                }
            }
        }
        return settings;
    }

    @Test
    void everyPlanSweepsTheHoseWithoutDrawingAirIn() {
        int plans = 0;
        for (Setting it : all()) {
            if (plan(it.hose(), it.purpose(), it.system(), it.cylinder()) instanceof PurgePlan.Purge purge) {
                plans++;
                GasSimulator simulator = new GasSimulator(it.hose(), it.system(), it.cylinder());
                simulator.play(purge.actions());
                assertThat(simulator.airInHose()).as("%s leaves air", it).isFalse();
                assertThat(simulator.airReachedAVessel())
                        .as("%s lets air in", it)
                        .isFalse();
                assertThat(simulator.gasPassedASealedEnd())
                        .as("%s through a sealed end", it)
                        .isFalse();
                assertThat(simulator.everythingIsShut()).as("%s ends shut", it).isTrue();
            }
        }
        // a plan needs one vessel above the atmosphere (5 of 9 pairs) and one end that passes when loose (8 of 9
        // pairs), twice
        assertThat(plans).isEqualTo(5 * 8 * 2);
    }

    /** Where the planner gives up, no order of purging by hand works either: the simulator tries each way. */
    @Test
    void whatIsCalledImpossibleIsImpossible() {
        for (Setting it : all()) {
            if (plan(it.hose(), it.purpose(), it.system(), it.cylinder()) instanceof PurgePlan.Impossible impossible) {
                assertThat(impossible.reasons()).hasSize(4);
                for (HoseSide from : HoseSide.values()) {
                    for (boolean turned : new boolean[] {false, true}) {
                        GasSimulator simulator = new GasSimulator(it.hose(), it.system(), it.cylinder());
                        simulator.play(byHand(from, turned));
                        assertThat(simulator.airInHose() || simulator.airReachedAVessel())
                                .as("%s from %s", it, from)
                                .isTrue();
                    }
                }
            }
        }
    }

    private static List<PurgeAction> byHand(HoseSide from, boolean turned) {
        List<PurgeAction> actions = new ArrayList<>();
        if (turned) {
            actions.add(PurgeAction.of(PurgeAction.Kind.TURN_HOSE));
        }
        actions.add(PurgeAction.at(PurgeAction.Kind.CONNECT_TIGHT, from));
        actions.add(PurgeAction.at(PurgeAction.Kind.CONNECT_LOOSE, from.other()));
        actions.add(PurgeAction.at(PurgeAction.Kind.CRACK_VESSEL_VALVE, from));
        actions.add(PurgeAction.at(PurgeAction.Kind.TIGHTEN, from.other()));
        actions.add(PurgeAction.at(PurgeAction.Kind.CLOSE_AFTER_PURGE, from));
        return actions;
    }

    @Test
    void aSelfSealingEndAtTheCylinderMeansTurningTheHose() {
        Hose hose = hose(EndFitting.PLAIN_FLARE, EndFitting.SELF_SEALING);
        PurgePlan plan = plan(hose, Purpose.RECOVERY, VesselState.PRESSURISED, VesselState.EVACUATED);
        assertThat(plan).isInstanceOfSatisfying(PurgePlan.Purge.class, purge -> {
            assertThat(purge.turned()).isTrue();
            assertThat(purge.from()).isEqualTo(HoseSide.SYSTEM);
            assertThat(purge.looseJoint()).isEqualTo(HoseSide.CYLINDER);
            assertThat(purge.actions()).extracting(PurgeAction::kind).contains(PurgeAction.Kind.TURN_HOSE);
            assertThat(purge.actions())
                    .allSatisfy(action -> assertThat(action.instruction()).doesNotContain("%"));
        });
    }

    @Test
    void twoSelfSealingEndsCannotBePurgedAndTheReasonsSayWhy() {
        Hose hose = hose(EndFitting.SELF_SEALING, EndFitting.SELF_SEALING);
        PurgePlan plan = plan(hose, Purpose.RECOVERY, VesselState.PRESSURISED, VesselState.EVACUATED);
        assertThat(plan).isInstanceOfSatisfying(PurgePlan.Impossible.class, impossible -> {
            assertThat(impossible.reasons()).anyMatch(reason -> reason.contains("self-sealing end"));
            assertThat(impossible.reasons()).anyMatch(reason -> reason.contains("pull air in"));
            assertThat(impossible.instead()).contains("vacuum pump");
        });
    }

    /** Hand calculation: bore 4.8 mm, length 1.5 m: pi/4 x 0.0048^2 x 1.5 = 2.7143e-5 m3; three times 40 kg/m3 of it is 3.257 g. */
    @Test
    void estimatesTheReleaseFromTheVolumeOfTheHose() {
        Hose hose = hose(EndFitting.PLAIN_FLARE, EndFitting.PLAIN_FLARE);
        assertThat(hose.volume().cubicMetres()).isCloseTo(2.7143e-5, within(5e-10)); // half of the last printed digit
        PurgePlan plan = plan(hose, Purpose.CHARGING, VesselState.PRESSURISED, VesselState.PRESSURISED);
        assertThat(plan).isInstanceOfSatisfying(PurgePlan.Purge.class, purge -> {
            assertThat(purge.released().grams()).isCloseTo(3.257, within(0.0005)); // half of the last printed digit
            assertThat(purge.from()).isEqualTo(HoseSide.CYLINDER);
            assertThat(purge.cautions()).anyMatch(caution -> caution.basis().equals("40 CFR 82.154(a)"));
        });
    }

    @Test
    void flammableAndToxicGasGetTheirOwnCautions() {
        Hose hose = hose(EndFitting.PLAIN_FLARE, EndFitting.PLAIN_FLARE);
        PurgePlan plan = PurgePlanner.plan(
                hose, Purpose.RECOVERY, VesselState.PRESSURISED, VesselState.EVACUATED, SafetyGroup.B2L, VAPOUR);
        assertThat(plan.cautions()).anyMatch(caution -> caution.text().contains("flammable"));
        assertThat(plan.cautions()).anyMatch(caution -> caution.text().contains("toxic"));
    }

    @Test
    void refusesAHoseOfImpossibleSize() {
        assertThatThrownBy(() -> new Hose(
                        EndFitting.PLAIN_FLARE, EndFitting.PLAIN_FLARE, Length.ofMetres(4.8), Length.ofMetres(1.5)))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("(0, 50] mm");
    }
}
