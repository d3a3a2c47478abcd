package org.satline.fleet;

import java.io.Serializable;

/**
 * The sequential test for a slow leak: days of evidence are held against a baseline that the unit itself has taught,
 * and what is missing beyond an allowance is summed up (cumulative sum; Page 1954, Continuous inspection schemes,
 * Biometrika 41:100-115, from memory). Immutable.
 *
 * @param baselineDays days of evidence from which the baseline is learned
 * @param allowance share of the charge that may be missing without being evidence: what drifting sensors look like
 * @param limit cumulative sum, in spreads of a day, at which the alarm is raised
 */
public record LeakRule(int baselineDays, double allowance, double limit) implements Serializable {
    /** Refuses what cannot be tested. */
    public LeakRule {
        if (!(baselineDays >= 5 && allowance > 0 && allowance < 0.2 && limit > 0)) {
            throw new IllegalArgumentException("baseline of " + baselineDays + " days, allowance " + allowance
                    + " and limit " + limit + " must be at least 5, in ]0, 0.2[ and above 0");
        }
    }

    /**
     * Returns the rule for one false alarm in ten unit-years, calibrated on simulated units without leaks whose seeds
     * are not those of the report in the README.
     *
     * @return the rule
     */
    public static LeakRule usual() {
        return new LeakRule(21, 0.0125, 3);
    }
}
