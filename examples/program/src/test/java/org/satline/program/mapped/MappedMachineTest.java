package org.satline.program.mapped;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.function.ToDoubleFunction;
import org.junit.jupiter.api.Test;
import org.satline.refrigerant.Catalogue;
import org.satline.saturation.SaturationCurve;
import org.satline.saturation.SaturationCurves;

/** The machines answer in the directions that were measured on real ones; each check names where. */
class MappedMachineTest {
    private static final Air AIR = new Air(35, 26.7, 19.4);
    private static final int MACHINES = 60;

    private static List<MappedMachine> machines(boolean valve) {
        SaturationCurve curve = SaturationCurves.of(Catalogue.standard().find("R-410A"));
        Random random = new Random(11);
        List<MappedMachine> found = new ArrayList<>();
        while (found.size() < MACHINES) {
            MappedMachine.drawn(random, curve)
                    .filter(each -> each.valve() == valve)
                    .ifPresent(found::add);
        }
        return found;
    }

    private static double medianChange(boolean valve, double share, Trouble trouble, ToDoubleFunction<Running> what) {
        double[] changes = machines(valve).stream()
                .map(machine -> {
                    Optional<Running> sound = machine.at(1, AIR, Trouble.NONE);
                    Optional<Running> now = machine.at(share, AIR, trouble);
                    return sound.isPresent() && now.isPresent()
                            ? Optional.of(what.applyAsDouble(now.get()) - what.applyAsDouble(sound.get()))
                            : Optional.<Double>empty();
                })
                .flatMap(Optional::stream)
                .mapToDouble(Double::doubleValue)
                .sorted()
                .toArray();
        assertThat(changes).hasSizeGreaterThan(MACHINES / 2);
        return changes[changes.length / 2];
    }

    /**
     * Rossi and Braun 1997, HVAC&R Research 3(1):19-37, rule table of a fixed orifice: superheat and subcooling by
     * fault.
     */
    @Test
    void capillaryAnswersAsTheRuleTableSays() {
        assertThat(medianChange(false, 0.85, Trouble.NONE, Running::superheatK)).isPositive();
        assertThat(medianChange(false, 0.85, Trouble.NONE, Running::subcoolingK))
                .isNegative();
        Trouble restricted = new Trouble(0, 0, 8e5, 0, 0);
        assertThat(medianChange(false, 1, restricted, Running::superheatK)).isPositive();
        assertThat(medianChange(false, 1, restricted, Running::subcoolingK)).isPositive();
        Trouble fouled = new Trouble(0.4, 0, 0, 0, 0);
        assertThat(medianChange(false, 1, fouled, Running::superheatK)).isNegative();
        assertThat(medianChange(false, 1, fouled, Running::liquidPa)).isPositive();
        Trouble leaking = new Trouble(0, 0, 0, 0.3, 0);
        assertThat(medianChange(false, 1, leaking, Running::suctionPa)).isPositive();
        assertThat(medianChange(false, 1, leaking, Running::liquidPa)).isNegative();
        Trouble starved = new Trouble(0, 0.4, 0, 0, 0);
        assertThat(medianChange(false, 1, starved, Running::suctionPa)).isNegative();
        assertThat(medianChange(false, 1, starved, Running::supplyK)).isNegative();
    }

    /**
     * A student laboratory, R-12 with a capillary and a weak condenser fan: superheat falls by 11 K; with a valve by
     * 0.7 K.
     */
    @Test
    void weakCondenserFanTakesTheSuperheatOfACapillaryAndLeavesThatOfAValve() {
        Trouble fan = new Trouble(0.4, 0, 0, 0, 0);
        assertThat(medianChange(false, 1, fan, Running::superheatK)).isLessThan(-2);
        assertThat(medianChange(true, 1, fan, Running::superheatK)).isBetween(-1.5, 1.5);
    }

    /**
     * Student laboratory, R-22 with a valve and 55 % of the airflow: superheat -0.1 K, subcooling -0.6 K, evaporating
     * -3 K, split +4 K.
     */
    @Test
    void halfTheAirflowHardlyMovesSuperheatAndSubcoolingOfAValve() {
        Trouble low = new Trouble(0, 0.45, 0, 0, 0);
        assertThat(medianChange(true, 1, low, Running::superheatK)).isBetween(-1.0, 1.0);
        assertThat(medianChange(true, 1, low, Running::subcoolingK)).isBetween(-2.0, 1.0);
        assertThat(medianChange(true, 1, low, Running::suctionPa)).isLessThan(-4e4);
        assertThat(medianChange(true, 1, low, Running::supplyK)).isLessThan(-2);
    }

    @Test
    void sameSeedSameMachine() {
        Running one = machines(true).get(0).at(1, AIR, Trouble.NONE).orElseThrow();
        assertThat(machines(true).get(0).at(1, AIR, Trouble.NONE)).contains(one);
    }

    /**
     * Balances: what is found at the rated charge in the rated air is the rating point itself, save for what the
     * lines add.
     */
    @Test
    void ratedChargeGivesTheRatedSubcooling() {
        for (MappedMachine machine : machines(true)) {
            Running found = machine.at(1, AIR, Trouble.NONE).orElseThrow();
            assertThat(found.subcoolingK())
                    .isBetween(machine.ratedSubcoolingK() - 1.5, machine.ratedSubcoolingK() + 1.5);
        }
    }
}
