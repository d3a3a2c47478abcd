package org.satline.fleet;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;

/** The study of the README on few units; the aims stand there. */
class LeakStudyTest {
    private static final int UNITS = 120;
    private static final long SEED = 77;

    /**
     * At the aim of 0.1 a year 12 alarms are expected; Poisson's law gives more than 20 with a chance below 1 in 100.
     */
    @Test
    void falseAlarmsStayWithinTheAim() {
        int alarms = LongStream.range(0, UNITS)
                .mapToInt(unit -> LeakStudy.of(StudyTable.plan(SEED, 0), unit, LeakRule.usual())
                        .alarms())
                .sum();
        assertThat(alarms).isLessThanOrEqualTo(20);
    }

    /**
     * At the aim of 99 % one unit of 120 is missed; the binomial law gives more than 5 with a chance below 1 in 500.
     */
    @Test
    void leaksAreFoundWithinTheYear() {
        long missed = LongStream.range(0, UNITS)
                .filter(unit -> LeakStudy.of(StudyTable.plan(SEED + 1, 1), unit, LeakRule.usual())
                                .daysToAlarm()
                        < 0)
                .count();
        assertThat(missed).isLessThanOrEqualTo(5);
    }

    @Test
    void theCatalogueOfModelsHasOneUnderTheRuleOnLeakRates() {
        Alarm alarm = new Alarm();
        alarm.model = UnitModel.ROOF;
        UnitState state = new UnitState();
        state.spread = 0.01;
        LeakFigures.fill(alarm, state);
        // 40 CFR 84.106: 10 % a year for comfort cooling with at least 15 lb, as core's duty has it
        assertThat(alarm.triggerPercent).isEqualTo(10);
        assertThat(alarm.stand).isEqualTo(Alarm.Stand.OPEN);
    }
}
