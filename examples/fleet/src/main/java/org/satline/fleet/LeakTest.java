package org.satline.fleet;

/** Baseline and cumulative sum of {@link LeakRule} on the memory of one unit. */
final class LeakTest {
    /**
     * Standard deviation of the baseline's slope beforehand, share of the charge for 10 K of outdoor air, over that of
     * a day: a line of few days in like weather stays level.
     */
    private static final double SLOPE_RIDGE = 2;
    /** Spread of a day beforehand, share of the charge, and the days that it counts for. */
    private static final double SPREAD = 0.010;

    private static final double SPREAD_DAYS = 10;
    /** A single day counts at most for this many spreads, so that one odd day raises no alarm. */
    private static final double MOST = 3;

    private final LeakRule rule;

    LeakTest(LeakRule rule) {
        this.rule = rule;
    }

    void learn(UnitState state, double x, double y) {
        state.baselineDays++;
        state.sumX += x;
        state.sumXx += x * x;
        state.sumY += y;
        state.sumXy += x * y;
        state.sumYy += y * y;
        if (state.baselineDays == rule.baselineDays()) {
            double n = state.baselineDays;
            double xx = state.sumXx - state.sumX * state.sumX / n;
            double xy = state.sumXy - state.sumX * state.sumY / n;
            double yy = state.sumYy - state.sumY * state.sumY / n;
            state.slope = xy / (xx + SLOPE_RIDGE);
            state.intercept = (state.sumY - state.slope * state.sumX) / n;
            double rest = Math.max(0, yy - state.slope * xy);
            state.spread = Math.sqrt((rest + SPREAD_DAYS * SPREAD * SPREAD) / (n - 2 + SPREAD_DAYS));
            restart(state);
        }
    }

    void weigh(UnitState state, double change) {
        double step = (-change - rule.allowance()) / state.spread;
        state.evidence += Math.max(-MOST, Math.min(MOST, step));
        if (!(state.evidence > 0)) {
            restart(state);
            return;
        }
        double t = state.day - state.climbFrom;
        state.climbN++;
        state.climbT += t;
        state.climbTt += t * t;
        state.climbY -= change;
        state.climbTy -= t * change;
    }

    void restart(UnitState state) {
        state.evidence = 0;
        state.climbFrom = state.day + 1;
        state.climbN = 0;
        state.climbT = 0;
        state.climbTt = 0;
        state.climbY = 0;
        state.climbTy = 0;
    }
}
