package org.satline.fleet;

import java.io.Serializable;

/**
 * What happens to a simulated fleet, at random but repeatable from the seed. Immutable.
 *
 * @param seed everything random comes from it
 * @param firstDay first day, days since 1970
 * @param leakShare share of the units that leak; [0, 1]
 * @param leastLeak slowest leak, share of the rated charge a year
 * @param mostLeak fastest leak, share of the rated charge a year
 * @param leakFrom first day on which a leak may begin, days after the first
 * @param leakTo last day on which one may begin
 * @param faultShare share of the units on which a fault comes and goes, once each half-year; [0, 1]
 */
public record FleetPlan(
        long seed,
        int firstDay,
        double leakShare,
        double leastLeak,
        double mostLeak,
        int leakFrom,
        int leakTo,
        double faultShare)
        implements Serializable {
    /** Refuses shares and leaks that make no sense. */
    public FleetPlan {
        if (!(leakShare >= 0 && leakShare <= 1 && faultShare >= 0 && faultShare <= 1)) {
            throw new IllegalArgumentException("shares of leaks " + leakShare + " and faults " + faultShare
                    + " must lie in [0, 1]; give shares of the units");
        }
        if (!(leastLeak > 0 && leastLeak <= mostLeak && mostLeak <= 5 && leakFrom <= leakTo)) {
            throw new IllegalArgumentException("leaks from " + leastLeak + " to " + mostLeak
                    + " of the charge a year, beginning on day " + leakFrom + " to " + leakTo
                    + ", are no interval in ]0, 5]; give the slower and the earlier first");
        }
    }

    /**
     * Returns a fleet in which a third leaks from within the first two months on and a fifth has other faults.
     *
     * @param seed everything random comes from it
     * @return the plan, from 2026-01-01
     */
    public static FleetPlan usual(long seed) {
        return new FleetPlan(seed, 20_454, 0.33, 0.05, 0.5, 30, 60, 0.2);
    }
}
