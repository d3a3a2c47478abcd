package org.satline.fleet;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.Consumer;

/** Finds the limit of the leak test on units and seeds that no report is made with. */
final class Calibration {
    private static final List<Double> ALLOWANCES = List.of(0.004, 0.006, 0.008, 0.010, 0.0125, 0.015);
    private static final List<Integer> BASELINES = List.of(14, 21, 28);
    private static final List<Double> LIMITS =
            List.of(2.0, 3.0, 4.0, 5.0, 6.0, 7.0, 8.0, 10.0, 12.0, 15.0, 20.0, 30.0, 60.0);
    /** Aim, false alarms for each unit-year. */
    static final double AIM = 0.1;

    private Calibration() {}

    static void print(long seed, int units, Consumer<String> out) {
        FleetPlan sound = StudyTable.plan(seed, 0);
        FleetPlan leaking = StudyTable.plan(seed + 1, 1);
        List<LeakStudy.Series> without = new ArrayList<>();
        List<LeakStudy.Series> with = new ArrayList<>();
        for (long unit = 0; unit < units; unit++) {
            without.add(new LeakStudy.Series(sound, unit));
            with.add(new LeakStudy.Series(leaking, unit));
        }
        out.accept("baseline_days,allowance,limit,false_alarms_per_unit_year,found_share,median_days");
        for (int baseline : BASELINES) {
            for (double allowance : ALLOWANCES) {
                for (double limit : LIMITS) {
                    LeakRule rule = new LeakRule(baseline, allowance, limit);
                    double alarms = without.stream()
                                    .mapToInt(series ->
                                            LeakStudy.watch(series, rule).alarms())
                                    .sum()
                            / (double) units;
                    if (alarms <= AIM) {
                        int[] days = with.stream()
                                .mapToInt(
                                        series -> LeakStudy.watch(series, rule).daysToAlarm())
                                .filter(found -> found >= 0)
                                .sorted()
                                .toArray();
                        out.accept(String.format(
                                Locale.ROOT,
                                "%d,%.4f,%.0f,%.4f,%.3f,%d",
                                baseline,
                                allowance,
                                limit,
                                alarms,
                                days.length / (double) units,
                                days.length == 0 ? -1 : days[days.length / 2]));
                        break;
                    }
                }
            }
        }
    }
}
