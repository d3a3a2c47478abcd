package org.satline.fleet;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

class WindowReadingsTest {
    private static final long START = 20_600L * 86_400 + 12 * 3600;
    private static final SimulatedUnit UNIT = new SimulatedUnit(FleetPlan.usual(3), 4);

    /** Doubled readings, and two that contradict each other for one minute. */
    @Test
    void orderAndRepetitionDoNotMatter() {
        List<UnitReading> readings = new ArrayList<>();
        for (int minute = 0; minute < WindowReadings.MINUTES; minute++) {
            long second = START + 60L * minute;
            readings.add(new UnitReading(4, UNIT.model(), second, UNIT.values(second, 1)));
        }
        readings.addAll(readings.subList(2, 5));
        readings.add(new UnitReading(4, UNIT.model(), START + 60, UNIT.values(START + 61, 1)));
        WindowReadings expected = gathered(readings);
        assertThat(expected.count()).isEqualTo(WindowReadings.MINUTES);
        Random random = new Random(11);
        for (int i = 0; i < 50; i++) {
            Collections.shuffle(readings, random);
            WindowReadings halves = gathered(readings.subList(0, 7));
            halves.addAll(gathered(readings.subList(7, readings.size())));
            assertThat(gathered(readings)).usingRecursiveComparison().isEqualTo(expected);
            assertThat(halves).usingRecursiveComparison().isEqualTo(expected);
        }
    }

    @Test
    void aUnitThatStandsStillGetsAVerdictAndOneThatRestsNone() {
        WindowReadings window = new WindowReadings();
        WindowReadings rest = new WindowReadings();
        for (int minute = 0; minute < WindowReadings.MINUTES; minute++) {
            long second = START + 60L * minute;
            float[] values = ExampleReadings.steady(UnitModel.ROOF);
            window.add(new UnitReading(4, UnitModel.ROOF, second, values));
            float[] resting = values.clone();
            resting[Channel.LIQUID_KPA.index()] = resting[Channel.SUCTION_KPA.index()];
            rest.add(new UnitReading(4, UnitModel.ROOF, second, resting));
        }
        SettledWindow said = WindowJudge.judge(window).orElseThrow();
        assertThat(said.outcome).isEqualTo(Outcome.ON_TARGET);
        assertThat(said.probability).isGreaterThan(0.95);
        assertThat(said.alike).isTrue();
        // the rated charge was simulated; linear interpolation is exact at a node of the table
        assertThat(said.chargeError).isCloseTo(0, org.assertj.core.api.Assertions.within(1e-4));
        assertThat(WindowJudge.judge(rest)).isEmpty();
    }

    @Test
    void aSensorThatShowsTheImpossibleIsACauseOfItsOwn() {
        WindowReadings window = new WindowReadings();
        for (int minute = 0; minute < WindowReadings.MINUTES; minute++) {
            float[] values = ExampleReadings.steady(UnitModel.ROOF);
            values[Channel.LIQUID_LINE_C.index()] = 5;
            window.add(new UnitReading(4, UnitModel.ROOF, START + 60L * minute, values));
        }
        SettledWindow said = WindowJudge.judge(window).orElseThrow();
        assertThat(said.outcome).isEqualTo(Outcome.IMPLAUSIBLE);
        assertThat(said.cause).isEqualTo(Cause.SENSOR);
    }

    private static WindowReadings gathered(List<UnitReading> readings) {
        WindowReadings window = new WindowReadings();
        readings.forEach(window::add);
        return window;
    }
}
