package org.satline.fleet;

import java.util.Arrays;
import java.util.function.Consumer;

/**
 * What a fleet watches on each unit from window to window: days are summed up, then held against what was learned. The
 * memory is {@link UnitState}; stateless itself.
 */
public final class ChargeWatch {
    /** Days in a row after which a cause other than a leak raises an alarm, and after which it is gone; our choice. */
    private static final int DAYS_IN_A_ROW = 3;
    /** Mean probabilities of a day above which a cause counts as present and below which as absent; our choice. */
    private static final double PRESENT = 0.5, ABSENT = 0.2;
    /** Fewest windows of evidence that make a day. */
    private static final int FEWEST_WINDOWS = 1;
    /** Days in a row with the charge back at the baseline after which a leak counts as repaired. */
    private static final int BACK_DAYS = 5;

    private final LeakRule rule;
    private final LeakTest leakTest;

    /**
     * Makes a watch.
     *
     * @param rule of the test for leaks
     */
    public ChargeWatch(LeakRule rule) {
        this.rule = rule;
        this.leakTest = new LeakTest(rule);
    }

    /**
     * Takes up a window. Those of one unit come in the order of time.
     *
     * @param state memory of the unit, changed here
     * @param window what the window says
     * @param alarms receives alarms of days that are over
     * @param days receives days that are over
     */
    public void accept(UnitState state, SettledWindow window, Consumer<Alarm> alarms, Consumer<UnitDay> days) {
        int day = (int) Math.floorDiv(window.start, 86_400L);
        state.model = window.model;
        if (day != state.day) {
            if (state.windows > 0) {
                close(state, window.unit, window.model, alarms, days);
            }
            open(state, day);
        }
        state.latest = window.start;
        state.windows++;
        state.superheatK += window.superheatK;
        state.subcoolingK += window.subcoolingK;
        state.causes[window.cause.index()] += window.cause == Cause.NONE ? 0 : window.causeProbability;
        if (window.alike) {
            state.alike++;
            state.chargeErrors += window.chargeError;
            state.outdoorC += window.outdoorC;
        }
    }

    /**
     * Closes the last day of a unit that is about to be forgotten.
     *
     * @param state memory of the unit, changed here
     * @param unit its number
     * @param model its model
     * @param alarms receives alarms of the day
     * @param days receives the day
     */
    public void finish(UnitState state, long unit, UnitModel model, Consumer<Alarm> alarms, Consumer<UnitDay> days) {
        if (state.windows > 0) {
            close(state, unit, model, alarms, days);
            open(state, state.day);
        }
    }

    private static void open(UnitState state, int day) {
        state.day = day;
        state.windows = 0;
        state.alike = 0;
        state.chargeErrors = 0;
        state.outdoorC = 0;
        state.superheatK = 0;
        state.subcoolingK = 0;
        Arrays.fill(state.causes, 0);
    }

    private void close(UnitState state, long unit, UnitModel model, Consumer<Alarm> alarms, Consumer<UnitDay> days) {
        UnitDay over = new UnitDay();
        over.unit = unit;
        over.model = model;
        over.day = state.day;
        over.windows = state.windows;
        over.alike = state.alike;
        over.superheatK = state.superheatK / state.windows;
        over.subcoolingK = state.subcoolingK / state.windows;
        if (state.alike >= FEWEST_WINDOWS) {
            over.change = leak(state, unit, model, alarms);
        }
        over.evidence = state.evidence;
        for (Cause cause : Cause.values()) {
            double mean = state.causes[cause.index()] / state.windows;
            if (mean > over.probability) {
                over.probability = mean;
                over.cause = cause;
            }
            if (cause != Cause.NONE && cause != Cause.LEAK) {
                cause(state, unit, model, cause, mean, alarms);
            }
        }
        days.accept(over);
    }

    /** Change of the charge against the baseline. */
    private double leak(UnitState state, long unit, UnitModel model, Consumer<Alarm> alarms) {
        double error = state.chargeErrors / state.alike;
        double x = (state.outdoorC / state.alike - 30) / 10;
        if (state.baselineDays < rule.baselineDays()) {
            leakTest.learn(state, x, error);
            return 0;
        }
        double change = error - (state.intercept + state.slope * x);
        leakTest.weigh(state, change);
        if (stands(state, Cause.LEAK)) {
            standing(state, unit, model, change, alarms);
        } else if (state.evidence > rule.limit()) {
            state.standing |= 1 << Cause.LEAK.index();
            state.rateTold = false;
            state.backDays = 0;
            alarms.accept(leakAlarm(state, unit, model, change, Alarm.News.RAISED));
        }
        return change;
    }

    private void standing(UnitState state, long unit, UnitModel model, double change, Consumer<Alarm> alarms) {
        state.backDays = change > -rule.allowance() / 2 ? state.backDays + 1 : 0;
        if (state.backDays >= BACK_DAYS) {
            leakTest.restart(state);
            state.standing &= ~(1 << Cause.LEAK.index());
            alarms.accept(alarm(state, unit, model, Cause.LEAK, Alarm.News.GONE));
        } else if (!state.rateTold && LeakFigures.isKnown(state)) {
            state.rateTold = true;
            alarms.accept(leakAlarm(state, unit, model, change, Alarm.News.RATE_KNOWN));
        }
    }

    private Alarm leakAlarm(UnitState state, long unit, UnitModel model, double change, Alarm.News news) {
        Alarm alarm = alarm(state, unit, model, Cause.LEAK, news);
        alarm.firstDay = Math.min(state.climbFrom, state.day);
        alarm.evidence = state.evidence;
        alarm.limit = rule.limit();
        alarm.lost = -change;
        LeakFigures.fill(alarm, state);
        return alarm;
    }

    /** A leak that was raised explains that refrigerant is short: no second alarm for it. */
    private static void cause(
            UnitState state, long unit, UnitModel model, Cause cause, double mean, Consumer<Alarm> alarms) {
        int i = cause.index();
        state.present[i] = mean > PRESENT ? (byte) Math.min(100, state.present[i] + 1) : 0;
        state.absent[i] = mean < ABSENT ? (byte) Math.min(100, state.absent[i] + 1) : 0;
        boolean explained = cause == Cause.UNDERCHARGE && stands(state, Cause.LEAK);
        boolean raise = !stands(state, cause) && state.present[i] >= DAYS_IN_A_ROW && !explained;
        boolean gone = stands(state, cause) && state.absent[i] >= DAYS_IN_A_ROW;
        if (raise || gone) {
            state.standing ^= 1 << i;
            Alarm alarm = alarm(state, unit, model, cause, raise ? Alarm.News.RAISED : Alarm.News.GONE);
            alarm.firstDay = state.day - DAYS_IN_A_ROW + 1;
            alarm.evidence = mean;
            alarm.limit = raise ? PRESENT : ABSENT;
            alarms.accept(alarm);
        }
    }

    private static boolean stands(UnitState state, Cause cause) {
        return (state.standing & 1 << cause.index()) != 0;
    }

    private static Alarm alarm(UnitState state, long unit, UnitModel model, Cause cause, Alarm.News news) {
        Alarm alarm = new Alarm();
        alarm.unit = unit;
        alarm.model = model;
        alarm.cause = cause;
        alarm.news = news;
        alarm.day = state.day;
        alarm.firstDay = state.day;
        return alarm;
    }
}
