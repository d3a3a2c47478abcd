package org.satline.fleet;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * How long leaks stay unseen and how often there is a false alarm, on simulated units with known truth. Windows are
 * simulated as they settle (means of fifteen readings, four a day), then go through the very code of the job, {@link
 * WindowJudge} without its verdict and {@link ChargeWatch}.
 */
public final class LeakStudy {
    private static final long[] HOURS = {10, 12, 14, 16};
    /** Days before the year of the study in which the unit is sound and its baseline is learned. */
    static final int BEFORE_D = 60;

    static final int YEAR_D = 365;

    private LeakStudy() {}

    /**
     * One unit-year.
     *
     * @param model model of the unit
     * @param percentPerYear true leak rate; 0 for none
     * @param daysToAlarm days from the begin of the leak, or of the year where nothing leaks, to the first alarm
     *     within it; -1 for none
     * @param alarmsBefore alarms in the days before
     * @param alarms leak alarms within the year
     * @param foundPercent rate that was told once it was known; 0 where it was not
     * @param foundUncertainty its standard uncertainty
     * @param runningDays days of the year with evidence
     */
    public record UnitYear(
            UnitModel model,
            double percentPerYear,
            int daysToAlarm,
            int alarmsBefore,
            int alarms,
            double foundPercent,
            double foundUncertainty,
            int runningDays) {}

    /**
     * Simulates one unit for a year and the days before.
     *
     * @param plan of the fleet; its leaks begin with the year of the study
     * @param unit number of the unit
     * @param rule of the test
     * @return what was found
     */
    public static UnitYear of(FleetPlan plan, long unit, LeakRule rule) {
        return watch(new Series(plan, unit), rule);
    }

    /** The settled windows of a unit, to be held against several rules. */
    static final class Series {
        final SimulatedUnit truth;
        final int begin;
        final List<SettledWindow> windows = new ArrayList<>();

        Series(FleetPlan plan, long unit) {
            truth = new SimulatedUnit(plan, unit);
            begin = truth.leakDay();
            double noise = 1 / Math.sqrt(WindowReadings.MINUTES);
            for (int day = begin - BEFORE_D; day < begin + YEAR_D; day++) {
                for (long hour : HOURS) {
                    long second = day * 86_400L + hour * 3600 + 600;
                    if (truth.runs(second)) {
                        windows.add(WindowJudge.evidence(unit, truth.model(), second, truth.values(second, noise)));
                    }
                }
            }
        }
    }

    static UnitYear watch(Series series, LeakRule rule) {
        ChargeWatch watch = new ChargeWatch(rule);
        UnitState state = new UnitState();
        List<Alarm> alarms = new ArrayList<>();
        int[] days = {0};
        for (SettledWindow window : series.windows) {
            watch.accept(
                    state,
                    window,
                    alarm -> {
                        if (alarm.cause == Cause.LEAK && alarm.news != Alarm.News.GONE) {
                            alarms.add(alarm);
                        }
                    },
                    day -> days[0] += day.alike > 0 && day.day >= series.begin ? 1 : 0);
        }
        List<Alarm> within = alarms.stream()
                .filter(alarm -> alarm.day >= series.begin && alarm.news == Alarm.News.RAISED)
                .toList();
        Optional<Alarm> rate = alarms.stream()
                .filter(alarm -> alarm.day >= series.begin && alarm.news == Alarm.News.RATE_KNOWN)
                .findFirst();
        long before = alarms.stream()
                .filter(alarm -> alarm.day < series.begin && alarm.news == Alarm.News.RAISED)
                .count();
        return new UnitYear(
                series.truth.model(),
                100 * series.truth.leakPerYear(),
                within.isEmpty() ? -1 : within.get(0).day - series.begin,
                (int) before,
                within.size(),
                rate.map(alarm -> alarm.percentPerYear).orElse(0.0),
                rate.map(alarm -> alarm.uncertainty).orElse(0.0),
                days[0]);
    }
}
