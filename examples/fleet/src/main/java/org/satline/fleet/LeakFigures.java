package org.satline.fleet;

import org.satline.duty.LeakCheckInterval;
import org.satline.duty.LeakRate;
import org.satline.quantity.Mass;

/**
 * Rate of a leak with its doubt, what it does to the climate, and how it stands to the thresholds of the law that the
 * library knows.
 */
final class LeakFigures {
    private static final double YEAR_D = 365;

    private LeakFigures() {}

    /** A rate is known when its standard uncertainty is below this share of it. */
    private static final double KNOWN = 0.2;

    /** Fills in what the climb of the evidence so far says. */
    static void fill(Alarm alarm, UnitState state) {
        ModelKnowledge knowledge = ModelKnowledge.of(alarm.model);
        double rated = knowledge.ratedCharge().kilograms();
        int days = Math.max(1, alarm.day - alarm.firstDay + 1);
        double perDay = Math.max(0, slope(state));
        LeakRate rate = LeakRate.annualised(
                Mass.ofKilograms(perDay * days * rated), knowledge.ratedCharge(), Math.min(days, (int) YEAR_D));
        alarm.percentPerYear = 100 * perDay * YEAR_D;
        alarm.uncertainty = 100 * YEAR_D * slopeUncertainty(state);
        alarm.tonnesPerYear = perDay * YEAR_D * rated * knowledge.gwp() / 1000;
        rate.against(LeakRate.Rule.HFC_AND_SUBSTITUTES, LeakRate.Use.COMFORT_COOLING_AND_OTHER)
                .ifPresent(trigger -> stand(alarm, trigger));
        alarm.checkMonths = LeakCheckInterval.byCarbonDioxideEquivalent(knowledge.ratedCharge(), knowledge.gwp(), false)
                .months()
                .orElse(0);
    }

    static boolean isKnown(UnitState state) {
        return slopeUncertainty(state) < KNOWN * slope(state);
    }

    private static void stand(Alarm alarm, LeakRate.Trigger trigger) {
        alarm.triggerPercent = trigger.triggerPercent();
        double over = alarm.percentPerYear - trigger.triggerPercent();
        boolean sure = Math.abs(over) > 2 * alarm.uncertainty;
        alarm.stand = !sure ? Alarm.Stand.OPEN : trigger.exceeded() ? Alarm.Stand.ABOVE : Alarm.Stand.BELOW;
    }

    /** Share of the charge lost a day, least squares over the days of the climb. */
    private static double slope(UnitState state) {
        double tt = spreadOfDays(state);
        return tt > 0 ? (state.climbTy - state.climbT * state.climbY / state.climbN) / tt : 0;
    }

    private static double slopeUncertainty(UnitState state) {
        double tt = spreadOfDays(state);
        return tt > 0 ? state.spread / Math.sqrt(tt) : 1 / YEAR_D;
    }

    private static double spreadOfDays(UnitState state) {
        return state.climbN > 1 ? state.climbTt - state.climbT * state.climbT / state.climbN : 0;
    }
}
